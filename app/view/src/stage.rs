//! Which face is shown, and what a tap on it means.
//!
//! What is kept here is only where the eye is (the lifter chosen, a pad that is open); all that
//! counts is in the state. Refuses: changing the state; a tap gives at most one command.
use crate::aside::Aside;
use crate::desk::wish::Wish;
use crate::scene::Scene;
use crate::setup::asks_coach;
use crate::tap::{HoldsTap, Tap};
use domain::Command;
use domain::believed::Said;
use domain::event::{Hold, LiftNo};
use domain::state::LiftRun;

mod due;
mod follow;
mod keep;
mod turn;

pub(crate) use due::Due;
pub(crate) use keep::shown_orders;
use turn::bar_word;
pub(crate) use turn::stated;

/// Where the eye is.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Stage {
    /// The lifter shown; `None` for all.
    pub lifter: Option<String>,
    /// Whether the turns of all lifters are shown.
    pub floor: bool,
    /// What is looked at beside the ladder.
    pub aside: Option<Aside>,
    /// What somebody at the desk wants of the gym's files; whoever keeps them takes it.
    pub wish: Option<Wish>,
    /// The pad that is open.
    pub pad: Option<PadOpen>,
    /// The rung that is begun before its rest is over.
    pub early: Option<(LiftNo, usize)>,
    /// Whether the set-up is looked at again in mid-lift.
    pub setup_again: bool,
    /// The lift whose entry brought up the next lifter: undo takes that entry back.
    pub entered: Option<LiftNo>,
    /// The lift whose choice of work loads was opened (true) or left for the plan (false).
    pub settle: Option<(LiftNo, bool)>,
    /// Whether the end of a lift was seen and the lifter's next lift is shown.
    pub seen_end: Option<LiftNo>,
}

/// A pad.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum PadOpen {
    /// Reps done, back held.
    Reps,
    /// Rep at which the back moved.
    Moved {
        /// All reps were done all the same.
        through: bool,
    },
    /// Later, skip, longer, leave.
    Turn,
    /// How hard the last set was.
    Effort,
    /// What the bar holds: plates of one side said so far, by their place in the plate set.
    Holds(Vec<u16>),
}

impl Stage {
    /// What a tap means: the eye moves, and at most one command follows.
    pub fn tap(&mut self, scene: &Scene<'_>, tap: &Tap) -> Option<Command> {
        let command = self.meaning(scene, tap);
        if command.is_some() {
            // What undo takes back from now on is this.
            self.entered = None;
        }
        command
    }

    fn meaning(&mut self, scene: &Scene<'_>, tap: &Tap) -> Option<Command> {
        if let Some(there) = Self::straight_to(tap) {
            self.go_to(there);
            return None;
        }
        if self.aside.is_some() {
            return self.tap_aside(scene, tap);
        }
        let due = self.due(scene);
        match tap {
            Tap::Lifter(_)
            | Tap::Floor
            | Tap::All
            | Tap::Panel
            | Tap::Row(_)
            | Tap::Sooner
            | Tap::Later
            | Tap::Wake => None,
            Tap::History => {
                self.open_history(scene, &due);
                None
            }
            Tap::Why => {
                self.open_why(scene, &due);
                None
            }
            Tap::Undo => self.undo(scene),
            Tap::Main => self.main(scene, due),
            Tap::OtherReps => self.open(&due, PadOpen::Reps),
            Tap::BackMoved => self.open(&due, PadOpen::Moved { through: false }),
            Tap::Number(n) => self.number(scene, due, *n),
            Tap::WentThrough => {
                if let Some(PadOpen::Moved { through }) = &mut self.pad {
                    *through = !*through;
                }
                None
            }
            Tap::Skip => self.skip(&due),
            Tap::Loaded
            | Tap::Holds
            | Tap::Answer(_)
            | Tap::Hold(_)
            | Tap::TurnPad
            | Tap::Turn(_) => self.said(scene, due, tap),
            Tap::Stop => {
                let (Due::Pad(run, ..) | Due::Stop(run)) = due else {
                    return None;
                };
                self.pad = None;
                Some(Command::StopLift(run.no))
            }
            Tap::GoOn => {
                let Due::Stop(run) = due else { return None };
                Some(Command::GoOn(run.no))
            }
            Tap::Settle => {
                if let Due::Bar(run, _) | Due::Rest(run, ..) = &due
                    && scene.choices(run).is_some()
                {
                    self.settle = Some((run.no, true));
                }
                None
            }
            Tap::Choose(n) => self.choose(scene, &due, *n),
            Tap::SetUp => {
                let from_turn = matches!(due, Due::Pad(_, Some(_), PadOpen::Turn));
                self.setup_again = from_turn || matches!(due, Due::Bar(..) | Due::Rest(..));
                self.pad = None;
                None
            }
        }
    }

    /// Where a tap leads from anywhere, whatever is on the screen.
    fn straight_to(tap: &Tap) -> Option<Self> {
        let mut there = Self::default();
        match tap {
            Tap::Lifter(name) => there.lifter = Some(name.clone()),
            Tap::Floor => there.floor = true,
            Tap::All => {}
            Tap::Panel => there.aside = Some(Aside::Panel),
            Tap::Undo
            | Tap::Main
            | Tap::OtherReps
            | Tap::BackMoved
            | Tap::Number(_)
            | Tap::WentThrough
            | Tap::Skip
            | Tap::Stop
            | Tap::GoOn
            | Tap::SetUp
            | Tap::Settle
            | Tap::Choose(_)
            | Tap::History
            | Tap::Why
            | Tap::Sooner
            | Tap::Later
            | Tap::Loaded
            | Tap::Holds
            | Tap::Hold(_)
            | Tap::Answer(_)
            | Tap::TurnPad
            | Tap::Turn(_)
            | Tap::Row(_)
            | Tap::Wake => return None,
        }
        Some(there)
    }

    /// The lift whose last entry the button at the bottom left would take back: the one that
    /// brought up this face, else the shown lifter's own, else the last one touched.
    pub(crate) fn undoes<'a>(&self, scene: &Scene<'a>) -> Option<&'a LiftRun> {
        if let Some(run) = self.entered.and_then(|no| scene.state.lifts.get(&no)) {
            return Some(run);
        }
        match &self.lifter {
            Some(lifter) => scene
                .run(lifter)
                .filter(|_| !matches!(self.due(scene), Due::Fresh(_))),
            None => scene.runs().max_by_key(|run| last_touched(run)),
        }
    }

    fn shows(&self, run: &LiftRun) -> bool {
        self.lifter.as_ref() == Some(&run.sheet.lifter)
    }

    /// Something was said or entered on this face: what brought it up is no longer what undo takes
    /// back.
    pub const fn answered(&mut self) {
        self.entered = None;
    }

    fn undo(&mut self, scene: &Scene<'_>) -> Option<Command> {
        if self.pad.take().is_some() || self.setup_again {
            self.setup_again = false;
            return None;
        }
        if let Some((no, true)) = self.settle {
            self.settle = Some((no, false));
            return None;
        }
        let run = self.undoes(scene)?;
        if self.undoes_said(run) {
            return Some(Command::UnsayTurn(run.no));
        }
        let early = self.takes_back_go(scene, run);
        self.early = None;
        // A word about the bar before one about the turn: a wrong one that stays would be loaded
        // upon.
        if let Some(bar) = scene.word_to_undo(run) {
            return Some(Command::UndoBarWord(bar));
        }
        if run.attendance.claimed || run.attendance.said().is_some() {
            return Some(Command::UnsayTurn(run.no));
        }
        if early {
            return None;
        }
        if self.asks_load_again(scene, run) {
            self.settle = None;
            return None;
        }
        Some(Command::Undo(run.no))
    }

    fn main(&mut self, scene: &Scene<'_>, due: Due<'_>) -> Option<Command> {
        match due {
            Due::Bar(run, rung) if run.sheet.reps_of(rung).is_open() => {
                self.pad = Some(PadOpen::Reps);
                None
            }
            Due::Pad(_, _, PadOpen::Holds(_)) => self.hold(scene, due, HoldsTap::Save),
            Due::All | Due::Floor | Due::Aside | Due::Pad(..) => None,
            Due::Fresh(entry) => {
                let sheet = match &entry?.outcome {
                    Ok(sheet) => sheet.clone(),
                    Err(why) => {
                        self.aside = asks_coach(why).then(Aside::door);
                        return None;
                    }
                };
                Some(Command::BeginLift(Box::new(sheet)))
            }
            Due::SetUp(_) => {
                self.setup_again = false;
                None
            }
            Due::Stop(run) => Some(Command::StopLift(run.no)),
            Due::Settle(run, _) => {
                self.settle = Some((run.no, false));
                None
            }
            Due::Rest(run, ..) if run.attendance.away => Some(Command::Return(run.no)),
            Due::Rest(run, rung, left) => {
                self.answered();
                // Whoever is rested goes back to nothing.
                self.early = (left > 0).then_some((run.no, rung));
                // Said to all, so that nobody who begins meanwhile takes the bar from them.
                Some(Command::Claim(run.no))
            }
            Due::Bar(run, rung) => {
                let reps = run.sheet.rungs.get(rung)?.reps;
                self.enter(scene, run, rung, (reps, Hold::Kept))
            }
            Due::End(run) => {
                self.seen_end = Some(run.no);
                self.follow(scene, run.no, true);
                if self.lifter.as_ref() != Some(&run.sheet.lifter) {
                    return None;
                }
                if self.lifter.as_ref().and_then(|l| scene.fresh(l)).is_none() {
                    *self = Self::default();
                }
                None
            }
        }
    }

    /// One of the work loads that were offered; the plan's own enters nothing.
    fn choose(&mut self, scene: &Scene<'_>, due: &Due<'_>, n: usize) -> Option<Command> {
        let Due::Settle(run, _) = due else {
            return None;
        };
        let choices = scene.choices(run)?;
        let settled = choices.loads.get(n)?.clone();
        self.settle = Some((run.no, false));
        (settled.load != choices.planned).then_some(Command::SettleLoad {
            no: run.no,
            settled,
        })
    }

    fn open(&mut self, due: &Due<'_>, pad: PadOpen) -> Option<Command> {
        if matches!(due, Due::Bar(..) | Due::Pad(..)) {
            self.pad = Some(pad);
        }
        None
    }

    fn number(&mut self, scene: &Scene<'_>, due: Due<'_>, n: u8) -> Option<Command> {
        let Due::Pad(run, Some(rung), pad) = due else {
            return None;
        };
        let planned = run.sheet.rungs.get(rung)?.reps;
        match pad {
            PadOpen::Reps => self.enter(scene, run, rung, (n, Hold::Kept)),
            PadOpen::Moved { through } => {
                let reps = if through { planned.max(n) } else { n };
                self.enter(scene, run, rung, (reps, Hold::MovedAt(n)))
            }
            PadOpen::Effort => {
                self.pad = None;
                let effort = n.saturating_mul(10);
                Some(Command::SayEffort {
                    no: run.no,
                    rung,
                    effort,
                })
            }
            PadOpen::Turn | PadOpen::Holds(_) => None,
        }
    }

    fn enter(
        &mut self,
        scene: &Scene<'_>,
        run: &LiftRun,
        rung: usize,
        (reps, hold): (u8, Hold),
    ) -> Option<Command> {
        self.pad = None;
        self.early = None;
        let word = bar_word(scene, run, scene.order(run, rung).to, Said::Set(run.no));
        Some(Command::EnterSet {
            no: run.no,
            rung,
            reps,
            hold,
            holds: Some(Box::new(word)),
        })
    }
}

/// When somebody last entered something for `run`.
pub(crate) fn last_touched(run: &LiftRun) -> (domain::Moment, LiftNo) {
    (run.entries.last().map_or(run.begun_at, |e| e.at), run.no)
}
