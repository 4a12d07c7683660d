//! A simulated finger on simulated faces: two taps are never two entries, a deliberate one always
//! counts.
use view::entry::{Entry, Pad};
use view::guard::{BOUNCE_MS, FILL_MS, SAVING_MS};
use view::stop::Stop;
use view::{Frame, Guard, Language, Look, Numbering, Place, Screen, Tap, Weight};

/// What the simulated kiosk shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Shown {
    /// The main button enters a set, others open a pad or take back.
    Bar,
    /// Numbers, and leaving a rung out where the button to the pad was.
    Pad,
    /// The main button goes to the bar.
    Rest,
}

/// A button: what it says, how heavy, where its middle is, pixels of the reference panel.
type Button = (Tap, Weight, (f32, f32));

/// As the real screens have them: the main answer at the bottom right, undo at the bottom left.
fn buttons(shown: Shown) -> Vec<Button> {
    let main = (Tap::Main, Weight::Main, (1_030.0, 720.0));
    let undo = (Tap::Undo, Weight::Entry, (119.0, 720.0));
    match shown {
        Shown::Bar => vec![
            main,
            undo,
            (Tap::OtherReps, Weight::Entry, (479.0, 720.0)),
            (Tap::BackMoved, Weight::Entry, (680.0, 720.0)),
        ],
        Shown::Pad => vec![
            undo,
            (Tap::Skip, Weight::Entry, (500.0, 720.0)),
            (Tap::Number(3), Weight::Entry, (300.0, 300.0)),
        ],
        Shown::Rest => vec![main, undo],
    }
}

/// A kiosk with its window and its guard, reduced to what a tap does.
struct World {
    now: u64,
    shown: Shown,
    rung: u32,
    /// Everything that was done, entries and ways alike.
    deeds: Vec<(u64, Tap)>,
    guard: Guard,
    numbering: Numbering,
    /// How long the disk takes, and the answer that is on its way.
    disk_ms: u64,
    answer: Option<(u64, u64)>,
    answered: u64,
    /// When the clock changes the face by itself.
    change_at: Option<u64>,
}

impl World {
    /// A face that has been there for long.
    fn new(shown: Shown, disk_ms: u64) -> Self {
        let mut world = Self {
            now: 0,
            shown,
            rung: 0,
            deeds: Vec::new(),
            guard: Guard::default(),
            numbering: Numbering::default(),
            disk_ms,
            answer: None,
            answered: 0,
            change_at: None,
        };
        world.draw();
        world.pass(10_000);
        world
    }

    fn frame(&mut self) -> Frame {
        let name = format!("{:?} {}", self.shown, self.rung);
        let screen = match self.shown {
            Shown::Bar | Shown::Rest => Screen::Stop(Stop {
                headline: name,
                set: String::new(),
                advice: String::new(),
                ladder: Vec::new(),
                main: "on".into(),
                go_on: String::new(),
            }),
            Shown::Pad => Screen::Entry(Entry {
                pad: Pad::Reps,
                question: name,
                numbers: vec![3],
                planned: 3,
                through: String::new(),
                through_on: false,
            }),
        };
        let mut frame = Frame {
            turn: String::new(),
            language: Language::English,
            look: Look::Dim,
            lifter: "Hamza".into(),
            lift: "rack pull".into(),
            clock: self.now.to_string(),
            chips: Vec::new(),
            undo: "undo".into(),
            undo_detail: String::new(),
            notice: String::new(),
            screen,
            beside: None,
            number: 0,
            answers: self.answered,
            asleep: false,
            shift: (0, 0),
        };
        frame.number = self.numbering.number(&frame);
        frame
    }

    fn draw(&mut self) {
        let frame = self.frame();
        self.guard.shown(self.now, &frame);
    }

    /// Time goes by; the owner of state does one thing after another.
    fn pass(&mut self, ms: u64) {
        for _ in 0..ms {
            self.now += 1;
            if let Some((_, id)) = self.answer.filter(|(at, _)| *at <= self.now) {
                self.answer = None;
                self.answered = id;
                self.draw();
            }
            if self.change_at.is_some_and(|at| at <= self.now) && self.answer.is_none() {
                self.change_at = None;
                self.rung += 1;
                self.shown = if self.shown == Shown::Rest {
                    Shown::Bar
                } else {
                    self.shown
                };
                self.draw();
            }
        }
    }

    /// A finger at a place, on whatever is drawn there, for so long.
    fn tap(&mut self, at: (f32, f32), held_ms: u64) {
        let under = |shown| {
            let mut all = buttons(shown).into_iter();
            all.find(|(_, _, (x, y))| (x - at.0).abs() <= 64.0 && (y - at.1).abs() <= 64.0)
        };
        let Some((_, weight, _)) = under(self.shown) else {
            self.pass(held_ms);
            return;
        };
        let counts = self
            .guard
            .down(self.now, 0, weight, Place::pixels(at.0, at.1));
        self.pass(held_ms);
        // The button that is drawn there by now speaks, if the same one still stands.
        if let Some((tap, _, _)) = under(self.shown)
            && counts
            && self.guard.up(self.now, 0)
        {
            let meant = self.guard.send(self.now, tap);
            let number = self.frame().number;
            if meant.number == number {
                self.does(meant.tap);
            }
            self.answer = Some((self.now + self.disk_ms, meant.id));
        }
    }

    fn does(&mut self, tap: Tap) {
        (self.shown, self.rung) = match (self.shown, &tap) {
            (Shown::Bar, Tap::Main) => (Shown::Rest, self.rung + 1),
            (Shown::Bar, Tap::OtherReps | Tap::BackMoved) => (Shown::Pad, self.rung),
            (Shown::Pad, Tap::Undo) => (Shown::Bar, self.rung),
            (Shown::Pad, _) => (Shown::Rest, self.rung + 1),
            (Shown::Rest, Tap::Main) => (Shown::Bar, self.rung),
            (_, Tap::Undo) => (self.shown, self.rung + 1),
            other => panic!("no such button: {other:?}"),
        };
        self.deeds.push((self.now, tap));
    }
}

const ALL: [Shown; 3] = [Shown::Bar, Shown::Pad, Shown::Rest];
const DISKS: [u64; 5] = [1, 8, 120, 700, 2_500];

#[test]
fn two_taps_in_one_place_are_never_two_deeds() {
    let mut tried = 0;
    for shown in ALL {
        for (tap, _, at) in buttons(shown) {
            for disk_ms in DISKS {
                for gap in (40..=1_200).step_by(20) {
                    let mut world = World::new(shown, disk_ms);
                    world.tap(at, 30);
                    world.pass(gap - 30);
                    world.tap((at.0 + 40.0, at.1 - 30.0), 30);
                    world.pass(6_000);
                    let told = format!("{shown:?}, {tap:?}, disk {disk_ms} ms, gap {gap} ms");
                    assert_eq!(world.deeds.len(), 1, "{told}: {:?}", world.deeds);
                    tried += 1;
                }
            }
        }
    }
    assert!(tried > 2_000, "{tried}");
}

#[test]
fn however_often_the_impatient_tap_it_is_one_deed_until_they_stop() {
    for shown in ALL {
        for (tap, _, at) in buttons(shown) {
            for disk_ms in DISKS {
                for (times, gap) in (3..=8).zip((120..=1_440).step_by(220).cycle()).chain([
                    (3, 800),
                    (3, 1_200),
                    (5, 400),
                    (8, 300),
                ]) {
                    let mut world = World::new(shown, disk_ms);
                    for _ in 0..times {
                        world.tap(at, 30);
                        world.pass(gap - 30);
                    }
                    let told = format!("{shown:?}, {tap:?}, disk {disk_ms} ms, {times} x {gap} ms");
                    assert_eq!(world.deeds.len(), 1, "{told}: {:?}", world.deeds);
                    world.pass(disk_ms + FILL_MS);
                    world.tap(buttons(world.shown).remove(0).2, 30);
                    assert_eq!(world.deeds.len(), 2, "{told}: then one that is meant");
                }
            }
        }
    }
}

#[test]
fn a_clock_that_changes_the_face_under_two_taps_lets_one_count_at_most() {
    for shown in [Shown::Bar, Shown::Rest] {
        let (_, _, at) = buttons(shown)[0].clone();
        for change in (0..=1_300).step_by(10) {
            for gap in (40..=1_200).step_by(40) {
                let mut world = World::new(shown, 8);
                world.change_at = Some(world.now + change);
                world.tap(at, 30);
                world.pass(gap - 30);
                world.tap(at, 30);
                world.pass(6_000);
                let told = format!("{shown:?}, change after {change} ms, gap {gap} ms");
                assert!(world.deeds.len() <= 1, "{told}: {:?}", world.deeds);
            }
        }
    }
}

#[test]
fn a_tap_that_began_on_the_face_before_does_nothing() {
    for held in [20, 80, 300, 2_000] {
        let mut world = World::new(Shown::Rest, 8);
        world.change_at = Some(world.now + held / 2);
        world.tap((1_030.0, 720.0), held);
        world.pass(3_000);
        assert_eq!(world.deeds, [], "down for {held} ms");
    }
}

#[test]
fn any_number_of_taps_on_a_slow_disk_is_one_deed() {
    for disk_ms in [200, 900, 3_000, 20_000] {
        for gap in (40..=disk_ms.min(1_200)).step_by(35) {
            let mut world = World::new(Shown::Bar, disk_ms);
            let began = world.now;
            // Until just before the face changes, and over it.
            while world.now < began + disk_ms + 1_200 {
                world.tap((1_030.0, 720.0), 25);
                world.pass(gap);
            }
            assert_eq!(world.deeds.len(), 1, "disk {disk_ms} ms, gap {gap} ms");
        }
    }
}

#[test]
fn a_deliberate_tap_after_the_fill_always_counts() {
    for shown in ALL {
        for (_, _, first) in buttons(shown) {
            for disk_ms in DISKS {
                let mut world = World::new(shown, disk_ms);
                world.tap(first, 30);
                world.pass(disk_ms + FILL_MS);
                for nth in 0..6 {
                    let all = buttons(world.shown);
                    let (tap, _, at) = all[nth % all.len()].clone();
                    let before = world.deeds.len();
                    world.tap(at, 30);
                    let told = format!("{tap:?} on {:?}, disk {disk_ms} ms", world.shown);
                    assert_eq!(world.deeds.len(), before + 1, "{told}");
                    world.pass(disk_ms + FILL_MS);
                }
            }
        }
    }
}

#[test]
fn elsewhere_a_tap_counts_as_soon_as_a_finger_gets_there() {
    let mut world = World::new(Shown::Bar, 8);
    world.tap((479.0, 720.0), 30);
    world.pass(BOUNCE_MS);
    world.tap((300.0, 300.0), 30);
    assert_eq!(
        world.deeds.iter().map(|deed| &deed.1).collect::<Vec<_>>(),
        [&Tap::OtherReps, &Tap::Number(3)]
    );
    world.pass(BOUNCE_MS);
    world.tap((119.0, 720.0), 30);
    assert_eq!(world.deeds.len(), 3, "what was wrong is taken back at once");
}

#[test]
fn what_is_not_answered_is_told_and_takes_nothing() {
    let mut world = World::new(Shown::Bar, 4_000);
    world.tap((1_030.0, 720.0), 30);
    world.pass(SAVING_MS - 1);
    assert!(
        !world.guard.is_saving(world.now),
        "a quick disk says nothing"
    );
    world.pass(1);
    assert!(world.guard.is_saving(world.now));
    for weight in [Weight::Main, Weight::Entry, Weight::Quick] {
        let takes = world
            .guard
            .takes(world.now, weight, &Place::pixels(20.0, 20.0));
        assert!(!takes, "{weight:?}");
    }
    world.pass(4_000);
    assert!(!world.guard.is_saving(world.now), "the answer ends it");
    let quick = world
        .guard
        .takes(world.now, Weight::Quick, &Place::pixels(20.0, 20.0));
    assert!(quick);
}

#[test]
fn an_answer_ends_the_wait_also_when_nothing_changed() {
    let mut guard = Guard::default();
    let mut world = World::new(Shown::Bar, 1);
    let mut frame = world.frame();
    guard.shown(0, &frame);
    assert!(guard.act(5_000, Weight::Main, Place::Key("x".into())));
    let meant = guard.send(5_000, Tap::Main);
    guard.shown(5_100, &frame);
    let place = Place::pixels(1.0, 1.0);
    assert!(!guard.takes(9_000, Weight::Main, &place), "no answer yet");
    frame.answers = meant.id;
    guard.shown(9_000, &frame);
    assert!(guard.takes(9_000, Weight::Main, &place));
}

#[test]
fn a_sleeping_screen_takes_one_touch_to_wake() {
    let mut world = World::new(Shown::Bar, 1);
    let mut frame = world.frame();
    frame.asleep = true;
    let mut guard = Guard::default();
    guard.shown(0, &frame);
    let at = || Place::pixels(1_030.0, 720.0);
    assert!(!guard.down(9_000, 0, Weight::Main, at()));
    assert!(guard.wake(9_000, at()));
    let meant = guard.send(9_000, Tap::Wake);
    assert!(!guard.wake(9_010, at()), "once");
    let woken = Frame {
        asleep: false,
        answers: meant.id,
        ..frame
    };
    guard.shown(9_020, &woken);
    for gap in (40..=1_200).step_by(20) {
        for weight in [Weight::Main, Weight::Entry, Weight::Quick] {
            assert!(!guard.takes(9_000 + gap, weight, &at()), "{weight:?} {gap}");
        }
    }
    assert!(guard.takes(9_020 + FILL_MS, Weight::Main, &at()));
}

#[test]
fn clocks_leave_the_number_as_it_is() {
    let mut world = World::new(Shown::Bar, 1);
    let before = world.frame().number;
    world.pass(70_000);
    assert_eq!(world.frame().number, before);
    world.rung += 1;
    assert_eq!(world.frame().number, before + 1);
}
