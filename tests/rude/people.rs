//! The people of one evening: each step somebody does something, often not what is shown next.
//! They know only what is drawn.
use super::plates::{Bars, Sleeves, Stuck, Task};
use super::{Dice, Outcome, faces, say};
use domain::believed::{BelievedBar, Disc};
use kiosk::rehearse::{Answer, Line, Rehearsal};
use view::Deed;

/// Steps of an evening at most.
const STEPS: usize = 90;

/// One evening under way.
#[derive(Debug)]
pub(crate) struct People {
    pub(super) rehearsal: Rehearsal,
    pub(super) dice: Dice,
    pub(super) bars: Bars,
    pub(super) lifters: Vec<String>,
    pub(super) face: Answer,
    /// The number of the face before the last line.
    pub(super) number: u64,
    /// What somebody read off the screen a while ago and has not built yet.
    pub(super) read: Option<Task>,
    /// What was on that bar when it was read.
    pub(super) was_at: Sleeves,
    pub(super) out: Outcome,
}

impl People {
    pub(crate) fn new(rehearsal: Rehearsal, dice: Dice, lifters: Vec<String>) -> Self {
        let face = rehearsal.face();
        Self {
            bars: Bars::of(rehearsal.kiosk().gym()),
            rehearsal,
            dice,
            lifters,
            face,
            number: 0,
            read: None,
            was_at: Sleeves::default(),
            out: Outcome::default(),
        }
    }

    pub(crate) fn run(mut self) -> Outcome {
        for who in self.lifters.clone() {
            // Some come late.
            if !self.dice.chance(25) {
                self.begin(&who);
            }
        }
        for _ in 0..STEPS {
            if !self.out.faults.is_empty() {
                break;
            }
            self.step();
            if let Err(fault) = faces::sound(&self.face, self.rehearsal.frame()) {
                self.fault(format!("{fault}: {:?}", self.face));
            }
        }
        self.out
    }

    pub(super) fn fault(&mut self, what: String) {
        self.out.faults.push(what);
    }

    pub(super) fn note(&mut self, kind: &'static str, what: impl Into<String>) {
        *self.out.deeds.entry(kind).or_default() += 1;
        self.out.log.push(format!("{kind}: {}", what.into()));
    }

    /// A line that logs no set, and takes none back.
    pub(super) fn line(&mut self, line: &Line) {
        let before = self.face.sets_logged;
        self.hear(line);
        let now = self.face.sets_logged;
        if now != before {
            let face = &self.face;
            self.out.faults.push(format!(
                "{line:?} made {before} sets {now}, and nobody did one: {face:?}"
            ));
        }
    }

    /// Any line. Over a long time the kiosk's clock is looked at less often.
    pub(super) fn hear(&mut self, line: &Line) {
        let long = matches!(line, Line::Wait(ms) if *ms >= 5_000);
        self.rehearsal.tick_every(if long { 10_000 } else { 500 });
        self.number = self.rehearsal.frame().number;
        let known = self.rehearsal.kiosk().state().bars.clone();
        let day = self.rehearsal.kiosk().date();
        self.face = say(&mut self.rehearsal, line);
        if self.rehearsal.kiosk().date() != day {
            // Another day: bars of which nobody has said anything.
            self.bars.all_misled();
            self.read = None;
        }
        // A true word that is taken back leaves its plates on, and nobody can know of them.
        let bars = &self.rehearsal.kiosk().state().bars;
        for (bar, now) in bars {
            let taken_back = known.get(bar).is_some_and(|was| was.before.is_some());
            if taken_back && now.before.is_none() && now.doubted {
                self.bars.misled(bar);
            }
        }
    }

    pub(super) fn tap(&mut self, label: &str) -> bool {
        self.line(&Line::tap(label));
        self.face.refused.is_none()
    }

    pub(super) fn press(&mut self, deed: Deed) -> bool {
        let Some(label) = self.face.button(deed).map(str::to_owned) else {
            return false;
        };
        self.tap(&label)
    }

    pub(super) fn begin(&mut self, who: &str) {
        self.note("come", who);
        self.tap("all lifters");
        if self.tap(who) && self.face.screen == "setup" {
            self.press(Deed::Start);
        }
    }

    fn step(&mut self) {
        let asleep = self.face.buttons.iter().all(|button| !button.enabled);
        if asleep && let Some(any) = self.face.buttons.first().map(|b| b.label.clone()) {
            self.note("wake", any.clone());
            self.tap(&any);
            return;
        }
        match self.dice.roll(100) {
            0..=38 => self.lift(),
            39..=47 => self.someone_else(),
            48..=51 => self.pass_time(),
            52..=54 => self.undo(),
            55..=60 => self.of_turn(),
            61..=63 => self.half(),
            64..=65 => self.reads(),
            66..=67 => self.builds_late(),
            68..=71 => self.say_bar(),
            72..=73 => self.says_wrong(),
            74..=75 => self.logs_by_mistake(),
            76..=78 => self.restart(),
            79 => self.cut_in_tap(),
            80..=82 => self.clock(),
            83..=88 => self.twice(),
            89..=91 => self.floor(),
            92 => self.slow_disk(),
            93..=94 => self.last_moment(),
            95..=96 => self.wander(),
            97 => self.back_moves(),
            _ => self.other_reps(),
        }
    }

    /// Whoever is shown lifts, or goes now, or waits.
    fn lift(&mut self) {
        if self.face.button(Deed::Done).is_some() {
            self.set(1, 0);
            return;
        }
        for deed in [Deed::Go, Deed::Mine, Deed::Start, Deed::Next] {
            if self.face.button(deed).is_some() && self.dice.chance(60) {
                self.note("go", deed.word());
                self.press(deed);
                return;
            }
        }
        match self.face.screen {
            "settle" => self.choose(),
            "stop" => self.after_stop(),
            "choose" | "end" => self.someone_else(),
            "rest" => self.line(&Line::Wait(20_000)),
            _ => drop(self.tap("back") || self.tap("all lifters")),
        }
    }

    /// The bar is loaded as shown: whether it could be.
    pub(super) fn load(&mut self, face: &Answer) -> bool {
        let Some(task) = Task::of(face) else {
            self.fault(format!(
                "a set can be logged and no plates are told: {face:?}"
            ));
            return false;
        };
        if !task.elsewhere.is_empty() {
            self.note("lacks", format!("{:?}", task.elsewhere));
            if self.dice.chance(50) {
                self.someone_else();
                return false;
            }
        }
        for (plate, bar) in &task.elsewhere {
            self.bars.take_from(bar, plate);
        }
        self.build(&task)
    }

    /// Whether the bar could be loaded. What does not hang free is fetched from wherever it is, or
    /// they wait.
    pub(super) fn build(&mut self, task: &Task) -> bool {
        let fetches = self.dice.chance(60);
        loop {
            match self.bars.obey(task) {
                Ok(()) => return true,
                Err(Stuck::Missing { plate, told }) => {
                    self.note("missing", told);
                    let from = fetches.then(|| self.bars.rob(&task.bar, &plate)).flatten();
                    let Some(from) = from else {
                        self.someone_else();
                        return false;
                    };
                    self.note("fetched", format!("{plate} from {from}"));
                }
                Err(Stuck::Fault(fault)) => {
                    let known = self.known();
                    self.fault(format!("{fault}; {known}; {task:?}; {:?}", self.face));
                    return false;
                }
            }
        }
    }

    /// What the kiosk knows of the bars, for a fault.
    fn known(&self) -> String {
        let bars = self.rehearsal.kiosk().state().bars.iter();
        let words = |disc: &Disc| {
            let mark = disc.mark.as_deref().unwrap_or("unmarked");
            format!("{} {mark}", disc.face.mass.words(disc.face.unit))
        };
        let one = |(name, known): (&String, &BelievedBar)| {
            let left: Vec<String> = known.holds.left.iter().map(words).collect();
            format!(
                "{name} of {} is known to hold {left:?}, doubted {}",
                known.date, known.doubted
            )
        };
        bars.map(one).collect::<Vec<_>>().join("; ")
    }

    /// Whether a tap was lost because the face changed under the finger: then people look again.
    pub(super) fn looks_again(&mut self, sets: usize) -> bool {
        let changed = self.rehearsal.frame().number != self.number;
        let lost = changed && self.face.sets_logged == sets;
        if lost {
            self.note("again", "the face changed under the finger");
        }
        lost
    }

    /// The bar is loaded as shown, lifted, and entered by so many taps.
    pub(super) fn set(&mut self, times: u32, gap_ms: u64) {
        let face = self.face.clone();
        let Some(label) = face.button(Deed::Done).map(str::to_owned) else {
            return;
        };
        if !self.load(&face) {
            return;
        }
        let who = face.lifter.clone().unwrap_or_default();
        self.note("set", format!("{who} {:?} {:?}", face.load, face.believed));
        let doubt = face.believed.as_ref().is_some_and(|b| b.in_doubt);
        self.out.in_doubt += usize::from(doubt);
        self.hear(&Line::Tap {
            label,
            times,
            gap_ms: gap_ms.max(1),
        });
        self.logged_once(&face, face.reps);
    }

    /// One set was logged: that of the face, with so many reps; or none, where the face changed
    /// under the finger.
    pub(super) fn logged_once(&mut self, face: &Answer, reps: Option<u8>) {
        if self.looks_again(face.sets_logged) {
            return;
        }
        self.out.sets += 1;
        let (before, now) = (face.sets_logged, self.face.sets_logged);
        if now != before + 1 {
            let after = &self.face;
            self.out.faults.push(format!(
                "one set made {before} sets {now}: {face:?}, then {after:?}"
            ));
        }
        self.said(face);
        let who = face.lifter.clone().unwrap_or_default();
        if let Err(fault) = faces::belongs(&self.rehearsal, &who, face, reps) {
            self.fault(fault);
        }
    }

    pub(super) fn someone_else(&mut self) {
        let Some(who) = self.dice.pick(&self.lifters).cloned() else {
            return;
        };
        let chip = format!("switch to {who}");
        if self.face.buttons.iter().any(|b| b.label == chip) {
            self.note("switch", who);
            self.tap(&chip);
        } else {
            self.begin(&who);
        }
    }

    fn undo(&mut self) {
        self.note("undo", "");
        self.undo_by(1, 0);
    }

    /// An undo takes one set back at most, and no plate.
    pub(super) fn undo_by(&mut self, times: u32, gap_ms: u64) {
        let Some(label) = self.face.button(Deed::Undo).map(str::to_owned) else {
            return;
        };
        let before = self.face.sets_logged;
        self.hear(&Line::Tap {
            label,
            times,
            gap_ms: gap_ms.max(1),
        });
        let now = self.face.sets_logged;
        if now > before || now + 1 < before {
            self.fault(format!("an undo made {before} sets {now}: {:?}", self.face));
        }
    }

    /// One of the work loads that are offered, or the plan's.
    fn choose(&mut self) {
        let offered = self.face.buttons.iter();
        let offered = offered.filter(|b| b.enabled && b.does == Deed::Choose.word());
        let offered: Vec<String> = offered.map(|b| b.label.clone()).collect();
        if let Some(load) = self.dice.pick(&offered).cloned() {
            self.note("choose", load.clone());
            self.tap(&load);
        }
    }
}
