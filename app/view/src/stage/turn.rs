//! What somebody says about their turn and about the bar.
use super::{Due, PadOpen, Stage};
use crate::aside::Aside;
use crate::holds::holds;
use crate::scene::Scene;
use crate::tap::{HoldsTap, Tap, TurnTap};
use crate::turn_pad::turn_pad;
use domain::Command;
use domain::attendance::LONGER_MOST_S;
use domain::believed::{BarWord, Said, Stacks};
use domain::contradicted::contradicted;
use domain::decide::word_of;
use domain::order::plates_at;
use domain::state::LiftRun;

/// How much longer one tap asks for, seconds. Common practice, no source.
const LONGER_S: u16 = 60;
/// The most plates that are said for one side.
const PLATES_MOST: usize = 16;

impl Stage {
    /// What somebody says about the bar or about their turn.
    pub(super) fn said(&mut self, scene: &Scene<'_>, due: Due<'_>, tap: &Tap) -> Option<Command> {
        if let Tap::Hold(said) = tap {
            return self.hold(scene, due, *said);
        }
        if let Tap::Turn(said) = tap {
            return self.turn(scene, &due, *said);
        }
        if let Tap::Answer(at) = tap {
            let tap = answer_tap(scene, &due, *at)?;
            return self.tap(scene, &tap);
        }
        if *tap == Tap::Loaded {
            return self.loaded(scene, &due);
        }
        if *tap == Tap::Holds {
            self.open_holds(&due);
        } else {
            self.open_turn(scene, &due);
        }
        None
    }

    /// Leaves out the rung of now.
    pub(super) fn skip(&mut self, due: &Due<'_>) -> Option<Command> {
        let Due::Pad(run, Some(rung), _) = due else {
            return None;
        };
        self.pad = None;
        self.early = None;
        Some(Command::SkipRung {
            no: run.no,
            rung: *rung,
        })
    }

    /// The bar is loaded as the screen says.
    pub(super) fn loaded(&self, scene: &Scene<'_>, due: &Due<'_>) -> Option<Command> {
        let (Due::Bar(run, rung) | Due::Rest(run, rung, _)) = due else {
            return None;
        };
        if !scene.is_turn(run) {
            return None;
        }
        let to = scene.order(run, *rung).to;
        Some(say_bar(scene, run, to, Said::Loaded(run.no)))
    }

    /// Opens the page on which it is said what the bar holds.
    pub(super) fn open_holds(&mut self, due: &Due<'_>) {
        if matches!(due, Due::Bar(..) | Due::Rest(..)) {
            self.pad = Some(PadOpen::Holds(Vec::new()));
        }
    }

    /// Something about what the bar holds.
    pub(super) fn hold(
        &mut self,
        scene: &Scene<'_>,
        due: Due<'_>,
        said: HoldsTap,
    ) -> Option<Command> {
        let Due::Pad(run, Some(rung), PadOpen::Holds(mut plates)) = due else {
            return None;
        };
        let order = scene.order(run, rung);
        let holds = match said {
            HoldsTap::Empty => Stacks::default(),
            HoldsTap::Wanted => order.to,
            HoldsTap::Before => order.believed.holds,
            HoldsTap::Plate(plate) => {
                if plates.len() < PLATES_MOST && can_add(scene, run, &plates, plate) {
                    plates.push(plate);
                }
                self.pad = Some(PadOpen::Holds(plates));
                return None;
            }
            HoldsTap::TakeLast => {
                plates.pop();
                self.pad = Some(PadOpen::Holds(plates));
                return None;
            }
            HoldsTap::Save if plates.is_empty() => return None,
            HoldsTap::Save => stated(scene, run, &plates)?,
        };
        self.pad = None;
        Some(say_bar(scene, run, holds, Said::Stated))
    }

    /// The lift whose turn can be spoken of from here: from every screen of a lifter under way, so
    /// that nobody has to go back first.
    pub(crate) fn with_turn<'a>(&self, scene: &Scene<'a>, due: &Due<'a>) -> Option<&'a LiftRun> {
        let run = match due {
            Due::Bar(run, _)
            | Due::Rest(run, ..)
            | Due::Stop(run)
            | Due::Settle(run, _)
            | Due::SetUp(run) => *run,
            Due::Pad(run, _, pad) if *pad != PadOpen::Turn => *run,
            Due::Aside if matches!(self.aside, Some(Aside::History(_))) => {
                scene.run(self.lifter.as_ref()?)?
            }
            Due::Pad(..) | Due::Aside | Due::All | Due::Floor | Due::Fresh(_) | Due::End(_) => {
                return None;
            }
        };
        run.next_rung().is_some().then_some(run)
    }

    /// Whether a set is shown that was begun before its rest was over: undo goes back to the rest.
    /// It stays so when the rest ends meanwhile, so that what a finger comes down on stays too.
    pub(crate) fn is_early(&self, scene: &Scene<'_>) -> bool {
        let Due::Bar(run, rung) = self.due(scene) else {
            return false;
        };
        // Whoever asked for their turn when rested goes back to nothing.
        let early = run.attendance.claimed || self.early == Some((run.no, rung));
        early && !run.was_rested()
    }

    /// Whether undo takes back "go now" of that lift: not while something that somebody else entered
    /// brought up this face.
    pub(crate) fn takes_back_go(&self, scene: &Scene<'_>, run: &LiftRun) -> bool {
        self.shows(run) && self.is_early(scene)
    }

    /// Whether undo takes back what brought up this face: that somebody put their turn off.
    pub(crate) fn undoes_said(&self, run: &LiftRun) -> bool {
        self.entered == Some(run.no) && run.attendance.said().is_some()
    }

    /// Whether undo asks for the load again: the plan's own was kept a while ago, in this rest.
    pub(crate) fn asks_load_again(&self, scene: &Scene<'_>, run: &LiftRun) -> bool {
        let rests = scene.rest_left(run).is_some();
        self.shows(run)
            && self.kept_load() == Some((run.no, false))
            && rests
            && scene.choices(run).is_some()
    }

    /// Opens later, skip, longer, leave.
    pub(crate) fn open_turn(&mut self, scene: &Scene<'_>, due: &Due<'_>) {
        if self.with_turn(scene, due).is_some() {
            self.aside = None;
            self.setup_again = false;
            self.pad = Some(PadOpen::Turn);
        }
    }

    /// One of them.
    pub(super) fn turn(
        &mut self,
        scene: &Scene<'_>,
        due: &Due<'_>,
        said: TurnTap,
    ) -> Option<Command> {
        let (Due::Pad(run, ..) | Due::Rest(run, ..)) = due else {
            return None;
        };
        self.pad = None;
        self.early = None;
        let no = run.no;
        Some(match said {
            TurnTap::Later => Command::Defer(no),
            TurnTap::Longer => Command::Lengthen {
                no,
                seconds: longer(scene.rest_left(run)),
            },
            TurnTap::Leave => Command::Leave(no),
            TurnTap::Mine => {
                self.early = run.next_rung().map(|rung| (no, rung));
                Command::Claim(no)
            }
            TurnTap::Back => Command::Return(no),
        })
    }
}

/// A minute beyond the rest that is left, as far as can be asked for at once, seconds from now.
fn longer(left: Option<u32>) -> u16 {
    let until = left.unwrap_or(0).saturating_add(LONGER_S.into());
    u16::try_from(until).map_or(LONGER_MOST_S, |until| until.min(LONGER_MOST_S))
}

/// What an answer of the page that is shown says.
pub(super) fn answer_tap(scene: &Scene<'_>, due: &Due<'_>, at: usize) -> Option<Tap> {
    match due {
        Due::Pad(run, rung, PadOpen::Turn) => {
            let answer = turn_pad(scene, run, *rung).answers.into_iter().nth(at)?;
            Some(answer.tap)
        }
        Due::Pad(run, Some(rung), PadOpen::Holds(plates)) => {
            let page = holds(scene, run, *rung, plates);
            Some(page.answers.into_iter().nth(at)?.tap)
        }
        Due::Pad(..)
        | Due::All
        | Due::Floor
        | Due::Aside
        | Due::Fresh(_)
        | Due::SetUp(_)
        | Due::Stop(_)
        | Due::Settle(..)
        | Due::Rest(..)
        | Due::Bar(..)
        | Due::End(_) => None,
    }
}

/// Whether one more pair of that kind is there, those said so far apart.
fn can_add(scene: &Scene<'_>, run: &LiftRun, plates: &[u16], plate: u16) -> bool {
    let set = plates_at(scene.gym, &run.sheet.rack);
    let kind = set.and_then(|set| set.plates.get(usize::from(plate)));
    let used = plates.iter().filter(|said| **said == plate).count();
    kind.is_some_and(|kind| used < usize::from(kind.pairs))
}

/// Both sides alike, of the plates that were said.
pub(crate) fn stated(scene: &Scene<'_>, run: &LiftRun, plates: &[u16]) -> Option<Stacks> {
    let set = plates_at(scene.gym, &run.sheet.rack)?;
    let face = |plate: &u16| set.plates.get(usize::from(*plate)).map(|kind| kind.face);
    let faces: Option<Vec<_>> = plates.iter().map(face).collect();
    Some(Stacks::alike(&faces?))
}

/// A word about the bar of a lift, with the bars that it contradicts.
pub(super) fn bar_word(scene: &Scene<'_>, run: &LiftRun, holds: Stacks, said: Said) -> BarWord {
    let word = word_of(run, holds, said);
    let contradicts = contradicted(scene.gym, scene.state, &word);
    BarWord {
        contradicts,
        ..word
    }
}

fn say_bar(scene: &Scene<'_>, run: &LiftRun, holds: Stacks, said: Said) -> Command {
    Command::SayBar(Box::new(bar_word(scene, run, holds, said)))
}
