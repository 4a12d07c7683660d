//! What people do that nobody planned: out of turn, twice, half, too late, elsewhere.
use super::people::People;
use super::plates::Task;
use domain::Moment;
use domain::attendance::Attendance;
use kiosk::rehearse::{Answer, Line};
use view::Deed;

/// How often somebody taps again whose tap was not heard.
const LOOKS: u32 = 3;

/// What somebody says about a turn.
const OF_TURN: [Deed; 5] = [
    Deed::Later,
    Deed::Longer,
    Deed::Leave,
    Deed::Skip,
    Deed::Mine,
];

impl People {
    /// Later, longer, leave, skip or my turn now, or the end of the lift, from whatever is shown,
    /// by whoever stands there.
    pub(super) fn of_turn(&mut self) {
        let before = self.face.clone();
        if !self.tap("later, skip...") {
            return;
        }
        if self.dice.chance(4) {
            self.note("turn", "ends the lift");
            self.line(&Line::Hold("end the lift".into()));
            return;
        }
        let Some(deed) = self.dice.pick(&OF_TURN).copied() else {
            return;
        };
        let said = self.attendances(before.lifter.as_ref());
        // On a slow disk, or where the face changed under the finger, a tap is not heard: they look.
        for _ in 0..LOOKS {
            if !self.press(deed) {
                self.tap("back");
                return;
            }
            if self.face.screen != "turn" || !self.looks_again(self.face.sets_logged) {
                break;
            }
        }
        self.note("turn", deed.word());
        let own = self.face.lifter == before.lifter;
        let at_bar = own && self.face.screen == "bar";
        // Whoever puts the turn off stays where all others there did so too, or were passed over.
        let stays = deed == Deed::Leave && at_bar;
        let waits = deed == Deed::Mine && !(own && matches!(self.face.screen, "bar" | "settle"));
        let longer = deed == Deed::Longer && at_bar;
        if stays || waits || longer {
            let now = &self.face;
            self.out
                .faults
                .push(format!("{deed:?} led from {before:?} to {now:?}"));
        }
        if deed != Deed::Skip
            && said != self.attendances(before.lifter.as_ref())
            && self.dice.chance(30)
        {
            self.takes_turn_back(&before, deed);
        }
    }

    /// How it stands with the turns of a lifter, by their lifts.
    fn attendances(&self, lifter: Option<&String>) -> Vec<Attendance> {
        let lifts = self.rehearsal.kiosk().state().lifts.values();
        let own = lifts.filter(|run| Some(&run.sheet.lifter) == lifter);
        own.map(|run| run.attendance).collect()
    }

    /// The turn was put off by a slip of the finger, and that is taken back at once, from whatever
    /// is shown now: no set goes with it, and the lifter is shown again.
    fn takes_turn_back(&mut self, before: &Answer, deed: Deed) {
        self.note("turn back", deed.word());
        let sets = self.face.sets_logged;
        for _ in 0..LOOKS {
            self.undo_by(1, 0);
            let here = self.attendances(before.lifter.as_ref());
            let stands = here
                .iter()
                .any(|here| here.claimed || here.said().is_some());
            if !stands || !self.looks_again(sets) {
                break;
            }
        }
        let (own, now) = (self.face.lifter == before.lifter, &self.face);
        // Whoever had gone before the rest was over may be asked for the load again.
        let same = now.load == before.load || now.screen == "settle";
        let back = own && now.sets_logged == sets && same;
        let claims = deed == Deed::Mine && now.sets_logged != sets;
        if (before.screen == "bar" && deed != Deed::Mine && !back) || claims {
            let fault = format!("{deed:?} cannot be taken back: {before:?}, then {now:?}");
            self.fault(fault);
        }
    }

    /// After a moved back.
    pub(super) fn after_stop(&mut self) {
        if self.dice.chance(50) {
            self.press(Deed::End);
        } else {
            self.tap("go on");
        }
    }

    /// Begins to obey, and is called away.
    pub(super) fn half(&mut self) {
        let Some(task) = Task::of(&self.face).filter(|task| task.elsewhere.is_empty()) else {
            return;
        };
        self.note("half", "takes plates off and goes");
        self.bars.begin(&task);
        self.someone_else();
    }

    /// Reads the order, to build it in a while.
    pub(super) fn reads(&mut self) {
        let task = Task::of(&self.face).filter(|task| task.elsewhere.is_empty());
        if let Some(task) = task {
            self.note("read", format!("{task:?}"));
            self.was_at = self.bars.at(&task.bar);
            self.read = Some(task);
        }
    }

    /// Builds what was read a while ago, whatever the screen shows by now; not where somebody has
    /// worked at that bar meanwhile.
    pub(super) fn builds_late(&mut self) {
        let Some(task) = self.read.take() else { return };
        if self.bars.at(&task.bar) != self.was_at {
            return;
        }
        if !self.bars.hang_free(&task) {
            self.note("missing", format!("{task:?}, read a while ago"));
            return;
        }
        self.note("late", format!("{task:?}"));
        self.build(&task);
    }

    /// Two taps where one was meant, or up to five by the impatient, 40 to 1,200 ms apart.
    pub(super) fn twice(&mut self) {
        let gap = 40 + self.dice.roll(1_161);
        let times = if self.dice.chance(60) {
            2
        } else {
            3 + u32::try_from(self.dice.roll(3)).unwrap_or(0)
        };
        let deeds = [
            Deed::Done,
            Deed::Go,
            Deed::Mine,
            Deed::Undo,
            Deed::Start,
            Deed::Next,
            Deed::Lifter,
            Deed::Loaded,
            Deed::Choose,
            Deed::Other,
        ];
        let likely = deeds.iter().copied().take(6);
        let first = likely.clone().find(|d| self.face.button(*d).is_some());
        let any = self.dice.pick(&deeds).copied();
        let deed = if self.dice.chance(60) { first } else { any };
        let Some((deed, label)) =
            deed.and_then(|deed| Some((deed, self.face.button(deed)?.to_owned())))
        else {
            return;
        };
        self.note("twice", format!("{deed:?}, {times} times, {gap} ms apart"));
        if deed == Deed::Done {
            self.set(times, gap);
        } else if deed == Deed::Undo {
            self.undo_by(times, gap);
        } else if deed != Deed::Loaded {
            self.taps(label, times, gap);
        } else {
            let face = self.face.clone();
            if self.load(&face) {
                let before = self.last_word(&face);
                self.taps(label, times, gap);
                // The rest may have ended under the finger: then the new face has heard nothing, and
                // says so.
                let after = self.last_word(&face);
                if after.is_some() && after != before {
                    self.said(&face);
                }
            }
        }
    }

    /// When somebody said something of the bar of a face last.
    fn last_word(&self, face: &Answer) -> Option<Moment> {
        let bars = &self.rehearsal.kiosk().state().bars;
        let bar = face.bar.as_ref().and_then(|bar| bars.get(bar));
        bar.filter(|bar| !bar.doubted).map(|bar| bar.at)
    }

    fn taps(&mut self, label: String, times: u32, gap_ms: u64) {
        self.line(&Line::Tap {
            label,
            times,
            gap_ms,
        });
    }

    /// Looks here and there: any button that says nothing about a set or a bar.
    pub(super) fn wander(&mut self) {
        let harmless = [Deed::Other, Deed::Lifter, Deed::Floor, Deed::Go, Deed::Next];
        let words = harmless.map(Deed::word);
        for _ in 0..3 {
            let open = self.face.buttons.iter();
            let open = open.filter(|b| b.enabled && words.contains(&b.does));
            // They read English, and stay out of the coach's desk.
            let shut = |label: &str| {
                ["language", "coach's desk"]
                    .iter()
                    .any(|w| label.starts_with(w))
            };
            let open = open.filter(|b| !shut(&b.label));
            let open: Vec<String> = open.map(|b| b.label.clone()).collect();
            let Some(label) = self.dice.pick(&open).cloned() else {
                return;
            };
            self.note("wander", label.clone());
            self.tap(&label);
        }
    }

    /// Other reps, with the bar loaded as shown; the number is tapped once or twice.
    pub(super) fn other_reps(&mut self) {
        let face = self.face.clone();
        if face.button(Deed::Done).is_none() || !self.load(&face) || !self.press(Deed::Reps) {
            return;
        }
        self.note("reps", "one rep less");
        let reps = face.reps.unwrap_or(1).saturating_sub(1);
        let times = 1 + u32::from(self.dice.chance(50));
        let gap_ms = 40 + self.dice.roll(1_161);
        self.hear(&Line::Tap {
            label: reps.to_string(),
            times,
            gap_ms,
        });
        self.logged_once(&face, Some(reps));
    }

    /// The back moves in the last rep, with the bar loaded as shown.
    pub(super) fn back_moves(&mut self) {
        let face = self.face.clone();
        if face.button(Deed::Done).is_none() || !self.load(&face) || !self.press(Deed::Moved) {
            return;
        }
        self.note("moved", "the back moved");
        let reps = face.reps.unwrap_or(1);
        self.hear(&Line::tap(reps.to_string()));
        self.logged_once(&face, Some(reps));
    }
}
