//! The people of one evening: each step somebody does something, often not what is shown next.
use super::plates::thousandths;
use super::{Bars, Dice, Outcome, lacks, same_face, say};
use kiosk::rehearse::{Answer, Line, Rehearsal};
use std::collections::BTreeMap;
use view::Deed;

/// Steps of an evening at most.
const STEPS: usize = 90;
/// One evening under way.
#[derive(Debug)]
pub(crate) struct Evening {
    rehearsal: Rehearsal,
    dice: Dice,
    bars: Bars,
    /// What each bar weighs, found from the first load that is built on it; thousandths.
    empty: BTreeMap<String, i64>,
    lifters: Vec<String>,
    face: Answer,
    out: Outcome,
}

/// Who may come, of whom two share the first rack's pounds and six the yard's kilos.
const PEOPLE: [&str; 6] = ["Hamza", "Željka", "Ilkka", "Marisol", "Tevita", "Parvati"];

impl Evening {
    pub(crate) fn new(rehearsal: Rehearsal, mut dice: Dice) -> Self {
        let count = 2 + usize::try_from(dice.roll(5)).unwrap_or(0);
        let from = usize::try_from(dice.roll(6)).unwrap_or(0);
        let lifters = (0..count).map(|at| PEOPLE[(from + at) % PEOPLE.len()].to_owned());
        let face = rehearsal.face();
        Self {
            bars: Bars::of(rehearsal.kiosk().gym()),
            rehearsal,
            dice,
            empty: BTreeMap::new(),
            lifters: lifters.collect(),
            face,
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
            self.step();
            if !self.out.faults.is_empty() {
                break;
            }
        }
        self.out
    }

    fn fault(&mut self, what: String) {
        self.out.faults.push(what);
    }

    fn note(&mut self, kind: &'static str, what: String) {
        *self.out.deeds.entry(kind).or_default() += 1;
        self.out.log.push(what);
    }

    /// A line that logs no set.
    fn line(&mut self, line: &Line) {
        let before = self.face.sets_logged;
        self.face = say(&mut self.rehearsal, line);
        if self.face.sets_logged > before {
            self.fault(format!(
                "{line:?} logged a set that nobody did: {:?}",
                self.face
            ));
        }
    }

    fn tap(&mut self, label: &str) -> bool {
        self.line(&Line::tap(label));
        self.face.refused.is_none()
    }

    fn press(&mut self, deed: Deed) -> bool {
        let Some(label) = self.face.button(deed).map(str::to_owned) else {
            return false;
        };
        self.tap(&label)
    }

    fn begin(&mut self, who: &str) {
        self.note("begin", format!("{who} comes"));
        self.tap("all lifters");
        if self.tap(who) && self.face.screen == "setup" {
            self.press(Deed::Start);
        }
    }

    fn step(&mut self) {
        match self.dice.roll(100) {
            0..=44 => self.lift(),
            45..=52 => self.someone_else(),
            53..=57 => self.rest_out(),
            58..=62 => self.undo(),
            63..=67 => self.of_turn(),
            68..=71 => self.half(),
            72..=75 => self.say_bar(),
            76..=79 => self.restart(),
            80..=82 => self.clock(),
            83..=88 => self.twice(),
            89..=92 => self.floor(),
            93..=95 => self.someone_else(),
            _ => self.other_reps(),
        }
    }

    /// Whoever is shown lifts, or goes now, or waits.
    fn lift(&mut self) {
        if self.face.button(Deed::Done).is_some() {
            self.set(1, 0);
            return;
        }
        let going = [Deed::Go, Deed::Mine, Deed::Start, Deed::Next];
        for deed in going {
            if self.face.button(deed).is_some() && self.dice.chance(60) {
                self.note("go", format!("{deed:?}"));
                self.press(deed);
                return;
            }
        }
        match self.face.screen {
            "settle" => drop(self.press(Deed::Choose)),
            "stop" => drop(self.press(Deed::End)),
            "choose" | "end" => self.someone_else(),
            _ => self.line(&Line::Wait(20_000)),
        }
    }

    /// The bar is loaded as shown, lifted, and entered by so many taps.
    fn set(&mut self, times: u32, gap_ms: u64) {
        let face = self.face.clone();
        if lacks(&face) {
            // The plate hangs on another bar: they wait, or somebody strips that one.
            self.note("lacks", format!("{:?}", face.warnings));
            self.someone_else();
            return;
        }
        let who = face.lifter.clone().unwrap_or_default();
        let said = format!("{who} lifts {:?} by {:?}", face.load, face.believed);
        self.note("set", said);
        if face.believed.as_ref().is_some_and(|b| b.in_doubt) {
            self.out.in_doubt += 1;
        }
        if let Err(fault) = self.bars.obey(&face).and_then(|()| self.weigh(&face)) {
            self.fault(format!("{fault}; {face:?}"));
            return;
        }
        let Some(label) = face.button(Deed::Done).map(str::to_owned) else {
            return;
        };
        let tap = Line::Tap {
            label,
            times,
            gap_ms: gap_ms.max(1),
        };
        self.face = say(&mut self.rehearsal, &tap);
        self.out.sets += 1;
        if self.face.sets_logged != face.sets_logged + 1 {
            let now = self.face.sets_logged;
            let fault = format!("{tap:?}: {} sets became {now}: {face:?}", face.sets_logged);
            self.fault(fault);
        }
        self.belongs(&who, &face);
    }

    /// The set that was logged is that of the lifter who was shown.
    fn belongs(&mut self, who: &str, face: &Answer) {
        let (state, date) = (
            self.rehearsal.kiosk().state(),
            self.rehearsal.kiosk().date(),
        );
        let last = state.lifts_of(who, date).filter_map(|run| {
            let at = run.passed().count().checked_sub(1)?;
            let rung = run.sheet.rungs.get(at)?;
            Some((run.last_set()?.at, rung.load.words(run.sheet.unit)))
        });
        let load = last.max().map(|(_, load)| load);
        if load != face.load {
            self.fault(format!("{who} lifted {:?}, logged is {load:?}", face.load));
        }
    }

    /// What hangs there weighs what is shown; each bar's own mass follows from its first load.
    fn weigh(&mut self, face: &Answer) -> Result<(), String> {
        let bar = face.bar.clone().ok_or("no bar")?;
        let (load, unit) = face
            .load
            .as_deref()
            .and_then(thousandths)
            .ok_or("no load")?;
        let sleeves = self.bars.at(&bar).clone();
        let mut plates = 0;
        for plate in sleeves.left.iter().chain(&sleeves.right) {
            let (mass, of) = thousandths(plate).ok_or("no mass on a plate")?;
            if of != unit {
                return Ok(());
            }
            plates += mass;
        }
        let own = *self
            .empty
            .entry(format!("{bar} {unit}"))
            .or_insert(load - plates);
        if own + plates != load {
            return Err(format!(
                "{load} is shown, {} hangs on the {bar}",
                own + plates
            ));
        }
        Ok(())
    }

    fn someone_else(&mut self) {
        let at = usize::try_from(self.dice.roll(self.lifters.len() as u64)).unwrap_or(0);
        let who = self.lifters[at].clone();
        self.note("switch", format!("{who} presses the name"));
        let chip = format!("switch to {who}");
        if self.face.buttons.iter().any(|b| b.label == chip) {
            self.tap(&chip);
        } else {
            self.begin(&who);
        }
    }

    fn rest_out(&mut self) {
        let s = 10 + self.dice.roll(240);
        self.note("wait", format!("{s} s"));
        self.line(&Line::Wait(s * 1_000));
    }

    fn undo(&mut self) {
        self.note("undo", String::new());
        self.press(Deed::Undo);
    }

    /// Later, longer, leave, skip or my turn now, from whatever is shown.
    fn of_turn(&mut self) {
        if !self.tap("later, skip...") {
            return;
        }
        let deeds = [
            Deed::Later,
            Deed::Longer,
            Deed::Leave,
            Deed::Skip,
            Deed::Mine,
        ];
        let at = usize::try_from(self.dice.roll(5)).unwrap_or(0);
        self.note("turn", format!("{:?}", deeds[at]));
        if !self.press(deeds[at]) {
            self.tap("back");
        }
    }

    /// Begins to obey, and is called away.
    fn half(&mut self) {
        if self.face.button(Deed::Done).is_none() {
            return;
        }
        self.note("half", "takes plates off and goes".into());
        self.bars.begin(&self.face.clone());
        self.someone_else();
    }

    /// Says "loaded" after loading, or what the bar holds.
    fn say_bar(&mut self) {
        let face = self.face.clone();
        if face.button(Deed::Loaded).is_some() && face.left.is_some() && !lacks(&face) {
            self.note("loaded", "loads and says so".into());
            if let Err(fault) = self.bars.obey(&face) {
                self.fault(format!("{fault}; {face:?}"));
            }
            self.press(Deed::Loaded);
        } else if let (Some(bar), true) = (face.bar.clone(), face.button(Deed::Holds).is_some()) {
            self.note("strip", "strips the bar and says so".into());
            *self.bars.at(&bar) = super::plates::Sleeves::default();
            if self.press(Deed::Holds) {
                self.tap("empty");
            }
        }
    }

    fn restart(&mut self) {
        self.note("restart", "restart".into());
        self.out.restarts += 1;
        let before = self.face.clone();
        self.line(&Line::Restart);
        let after = self.face.clone();
        if let Err(fault) = same_face(&before, &after) {
            self.fault(format!("restart: {fault}"));
        }
    }

    fn clock(&mut self) {
        let times = [
            "2026-12-02T17:00",
            "2026-12-02T18:00",
            "2026-12-02T23:59",
            "2026-12-03T00:01",
            "1970-01-01T00:00",
            "2027-06-01T12:00",
        ];
        let at = usize::try_from(self.dice.roll(6)).unwrap_or(0);
        self.note("clock", times[at].into());
        let before = self.face.clone();
        let at = kiosk::rehearse::moment(times[at]).expect("a time");
        self.line(&Line::Clock(at));
        if before.rest_s.unwrap_or(0) + 1 < self.face.rest_s.unwrap_or(0) {
            self.fault(format!("the rest grew: {before:?} to {:?}", self.face));
        }
    }

    /// Two taps where one was meant, 40 to 1,200 ms apart.
    fn twice(&mut self) {
        let gap = 40 + self.dice.roll(1_161);
        let deed = [
            Deed::Done,
            Deed::Go,
            Deed::Mine,
            Deed::Undo,
            Deed::Start,
            Deed::Next,
        ];
        let found = deed
            .into_iter()
            .find(|deed| self.face.button(*deed).is_some());
        let Some(deed) = found else { return };
        self.note("twice", format!("{deed:?} twice in {gap} ms"));
        if deed == Deed::Done {
            self.set(2, gap);
            return;
        }
        let label = self
            .face
            .button(deed)
            .map(str::to_owned)
            .unwrap_or_default();
        self.line(&Line::Tap {
            label,
            times: 2,
            gap_ms: gap,
        });
    }

    /// What the floor says of whoever is up is what their own screen says.
    fn floor(&mut self) {
        self.note("floor", "the floor".into());
        self.tap("all lifters");
        if !self.tap("floor") {
            return;
        }
        let floor = self.face.clone();
        let (Some(load), Some(left)) = (floor.load.clone(), floor.left.clone()) else {
            return;
        };
        let up = floor.buttons.iter().find(|b| b.does == Deed::Lifter.word());
        let Some(up) = up.map(|b| b.label.clone()) else {
            return;
        };
        if !self.tap(&up) {
            return;
        }
        let own = self.face.clone();
        let differs = own.load != Some(load) || own.left != Some(left);
        if matches!(own.screen, "bar" | "rest") && differs {
            self.fault(format!(
                "floor {floor:?} and own screen {own:?} are at odds"
            ));
        }
    }

    /// Other reps, with the bar loaded as shown.
    fn other_reps(&mut self) {
        let face = self.face.clone();
        if face.button(Deed::Done).is_none() || lacks(&face) || !self.press(Deed::Reps) {
            return;
        }
        self.note("reps", "one rep less".into());
        if let Err(fault) = self.bars.obey(&face) {
            self.fault(format!("{fault}; {face:?}"));
            return;
        }
        let reps = face.reps.unwrap_or(1).saturating_sub(1);
        self.face = say(&mut self.rehearsal, &Line::tap(reps.to_string()));
        if self.face.sets_logged != face.sets_logged + 1 {
            self.fault(format!("{reps} reps were not logged once: {:?}", self.face));
        }
    }
}
