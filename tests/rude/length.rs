//! How long an evening takes where people leave, come late and need longer: with the ways in which
//! they can say so and are passed over, and without.
use super::plates::Task;
use super::{Dice, say};
use kiosk::clock::BenchClock;
use kiosk::rehearse::{Answer, Line, Rehearsal, moment};
use kiosk::{Folder, Kiosk};
use std::path::Path;
use view::{Deed, Screen};

/// They share one bar on that Wednesday of the demo plan.
const FOUR: [&str; 4] = ["Hamza", "Željka", "Ilkka", "Marisol"];
const AT: &str = "2026-12-02T18:00";
/// Nobody waits longer than this for an evening to end, seconds.
const EVENING_MOST_S: i64 = 5 * 3_600;
/// Between two looks at the screen of people who wait, seconds.
const LOOK_S: u64 = 5;
/// A set: getting set, and each rep; a pair of plates on or off; seconds. As the planner has them;
/// common practice, no source.
const GET_SET_S: u64 = 20;
const REP_S: u64 = 4;
const PAIR_S: u64 = 8;
/// Whoever is ready and sees nobody come takes the turn after so long, seconds.
const PATIENCE_S: i64 = 60;

/// One lifter, as the dice have it; the same with the new ways and without.
#[derive(Debug, Clone)]
struct Lifter {
    name: &'static str,
    /// Seconds after the beginning.
    comes_s: i64,
    /// After so many sets away for so many seconds, and whether they say so.
    leaves: Option<(usize, i64, bool)>,
    /// Before the set of that number so many seconds more than planned.
    longer: Option<(usize, i64)>,
    begun: bool,
    sets: usize,
    away_until: Option<i64>,
    not_before: Option<i64>,
    over: bool,
}

fn lifter(name: &'static str, dice: &mut Dice) -> Lifter {
    let mut s = |least: u64, more: u64| i64::try_from(least + dice.roll(more)).unwrap_or(0);
    let (late, soon) = (s(300, 900), s(0, 60));
    let (away, longer) = (s(240, 480), s(60, 120));
    let (leaves_after, longer_at) = (dice.roll(4), dice.roll(5));
    let at = |n: u64| usize::try_from(n).unwrap_or(0);
    Lifter {
        name,
        comes_s: if dice.chance(30) { late } else { soon },
        leaves: dice
            .chance(35)
            .then(|| (1 + at(leaves_after), away, dice.chance(70))),
        longer: dice.chance(30).then(|| (at(longer_at), longer)),
        begun: false,
        sets: 0,
        away_until: None,
        not_before: None,
        over: false,
    }
}

/// An evening under way.
struct Evening {
    rehearsal: Rehearsal,
    face: Answer,
    lifters: Vec<Lifter>,
    new_ways: bool,
    began: i64,
    /// Since when whoever is up does not come.
    nobody_since: Option<i64>,
}

/// Seconds from the beginning to the last set; `None` where it did not end.
pub(crate) fn length_s(seed: u64, folder: &Path, new_ways: bool) -> Option<i64> {
    let mut dice = Dice::new(seed);
    let count = 3 + usize::try_from(dice.roll(2)).unwrap_or(0);
    let lifters: Vec<Lifter> = FOUR[..count].iter().map(|n| lifter(n, &mut dice)).collect();
    let data = Folder::open(Some(folder)).expect("a folder");
    let at = moment(AT).expect("a time");
    if !new_ways {
        drop(Kiosk::open(&data, Box::new(BenchClock::at(at))).expect("it opens"));
        let gym = folder.join("gym.toml");
        let text = std::fs::read_to_string(&gym).expect("the demo gym lies there");
        let text = text.replacen("\n[[rack]]", "\ncalled_for = \"30 min\"\n\n[[rack]]", 1);
        std::fs::write(gym, text).expect("it can be written");
    }
    let mut rehearsal = Rehearsal::open(&data, at).expect("it opens");
    rehearsal.read_texts(false);
    rehearsal.tick_every(5_000);
    let face = rehearsal.face();
    let began = rehearsal.kiosk().now().0;
    let mut evening = Evening {
        rehearsal,
        face,
        lifters,
        new_ways,
        began,
        nobody_since: None,
    };
    while evening.now_s() < EVENING_MOST_S {
        if evening.lifters.iter().all(|lifter| lifter.over) {
            return Some(evening.now_s());
        }
        evening.step();
    }
    None
}

impl Evening {
    fn now_s(&self) -> i64 {
        (self.rehearsal.kiosk().now().0 - self.began) / 1_000
    }

    fn tap(&mut self, label: &str) -> bool {
        self.face = say(&mut self.rehearsal, &Line::tap(label));
        self.face.refused.is_none()
    }

    fn press(&mut self, deed: Deed) -> bool {
        let label = self.face.button(deed).map(str::to_owned);
        label.is_some_and(|label| self.tap(&label))
    }

    fn wait(&mut self, s: u64) {
        self.face = say(&mut self.rehearsal, &Line::Wait(s * 1_000));
    }

    fn to(&mut self, name: &str) -> bool {
        if self.face.lifter.as_deref() == Some(name) && self.face.screen != "end" {
            return true;
        }
        self.tap("all lifters");
        self.tap(name)
    }

    fn step(&mut self) {
        if self.face.buttons.iter().all(|button| !button.enabled) {
            // The first touch only wakes it.
            let any = self.face.buttons.first().map(|b| b.label.clone());
            self.tap(&any.unwrap_or_default());
        }
        let now = self.now_s();
        for at in 0..self.lifters.len() {
            let one = &mut self.lifters[at];
            if one.away_until.is_some_and(|until| until <= now) {
                one.away_until = None;
                let name = one.name;
                if self.new_ways && self.to(name) && self.face.button(Deed::Go).is_some() {
                    self.tap("I am back");
                }
            } else if !one.begun && one.comes_s <= now {
                one.begun = true;
                let name = one.name;
                if self.to(name) {
                    self.press(Deed::Start);
                }
            }
        }
        match self.up() {
            Some(at) if self.lifters[at].away_until.is_none() => {
                self.nobody_since = None;
                self.turn_of(at);
            }
            Some(at) => self.nobody_comes(at),
            None => self.wait(LOOK_S),
        }
    }

    /// Who is up, by the floor.
    fn up(&mut self) -> Option<usize> {
        self.tap("all lifters");
        self.tap("floor");
        let Screen::Floor(floor) = &self.rehearsal.frame().screen else {
            return None;
        };
        let up = floor.racks.first()?.up.as_ref()?;
        self.lifters.iter().position(|one| one.name == up.lifter)
    }

    /// Whoever is up does not come: somebody who is ready takes the turn, or all wait.
    fn nobody_comes(&mut self, up: usize) {
        let now = self.now_s();
        let since = *self.nobody_since.get_or_insert(now);
        if self.new_ways && now - since >= PATIENCE_S {
            for at in 0..self.lifters.len() {
                let one = &self.lifters[at];
                let here = one.begun && !one.over && one.away_until.is_none() && at != up;
                let name = one.name;
                if here && self.to(name) && self.face.rest_s.is_none() && self.press(Deed::Mine) {
                    self.nobody_since = None;
                    self.turn_of(at);
                    return;
                }
            }
        }
        self.wait(LOOK_S);
    }

    /// One look, or one set, of somebody who is there.
    fn turn_of(&mut self, at: usize) {
        let name = self.lifters[at].name;
        if self.face.lifter.as_deref() != Some(name) && !self.to(name) {
            return self.wait(LOOK_S);
        }
        match self.face.screen {
            "settle" => drop(self.press(Deed::Choose)),
            "bar" => self.set(at),
            "rest" => {
                let left = u64::from(self.face.rest_s.unwrap_or(0));
                self.wait(left.clamp(1, LOOK_S));
            }
            _ => self.wait(LOOK_S),
        }
    }

    fn set(&mut self, at: usize) {
        let now = self.now_s();
        let one = &mut self.lifters[at];
        if let Some((set, s)) = one.longer
            && set == one.sets
        {
            one.longer = None;
            one.not_before = Some(now + s);
            if self.new_ways {
                for _ in 0..(s + 59) / 60 {
                    let name = self.lifters[at].name;
                    let asked = self.to(name) && self.tap("later, skip...");
                    if !asked || !self.press(Deed::Longer) {
                        break;
                    }
                }
                return;
            }
        }
        if self.lifters[at].not_before.is_some_and(|until| until > now) {
            return self.wait(LOOK_S);
        }
        let pairs = Task::of(&self.face).map_or(0, |task| task.pairs());
        let reps = u64::from(self.face.reps.unwrap_or(1));
        self.wait(pairs * PAIR_S + GET_SET_S + reps * REP_S);
        let before = self.face.sets_logged;
        self.press(Deed::Done);
        if self.face.sets_logged == before + 1 {
            let name = self.lifters[at].name;
            self.lifters[at].sets += 1;
            self.after_set(at, name);
        }
    }

    /// Whoever has done the last set is done; some leave for a while.
    fn after_set(&mut self, at: usize, name: &str) {
        let date = self.rehearsal.kiosk().date();
        let run = self.rehearsal.kiosk().state().lift_of(name, date);
        let one = &mut self.lifters[at];
        one.over = run.is_some_and(domain::state::LiftRun::is_over);
        let now = (self.rehearsal.kiosk().now().0 - self.began) / 1_000;
        if one.over {
            return;
        }
        if let Some((after, s, says)) = one.leaves
            && after == one.sets
        {
            one.away_until = Some(now + s);
            if self.new_ways && says && self.to(name) && self.tap("later, skip...") {
                self.press(Deed::Leave);
            }
        }
    }
}
