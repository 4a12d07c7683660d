//! One whole face of the kiosk: who, which screen, who else is under way, what undo would do.
use crate::aside::Aside;
use crate::bar::AtTheBar;
use crate::bar::at_the_bar;
use crate::beside::Beside;
use crate::choose::Choose;
use crate::choose::choose;
use crate::desk::Typing;
use crate::end::End;
use crate::end::end;
use crate::entry::Entry;
use crate::entry::pad_of;
use crate::floor::{Floor, floor};
use crate::history::History;
use crate::holds::{Holds, holds};
use crate::language::{Language, p};
use crate::list::{List, Page};
use crate::look::Look;
use crate::meet_day::{MeetPage, can_undo};
use crate::rest::Rest;
use crate::rest::rest;
use crate::scene::Scene;
use crate::settle::{Settle, settle};
use crate::setup::SetUp;
use crate::setup::{fresh, set_up};
use crate::stage::{Due, PadOpen, Stage};
use crate::stop::Stop;
use crate::stop::stop;
use crate::turn_pad::{TurnPad, turn_pad};
use crate::why::Why;
use crate::words;
use domain::attendance::TurnWord;
use domain::rotation::station_of;
use domain::state::{Entered, LiftRun};

/// All that the window shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Frame {
    /// The language of all words.
    pub language: Language,
    /// The look of now.
    pub look: Look,
    /// The lifter shown; empty on the screen of all lifters.
    pub lifter: String,
    /// The lift shown.
    pub lift: String,
    /// Time of day, "18:42".
    pub clock: String,
    /// Who is under way, for switching in one tap; at most four, each always at the same place.
    pub chips: Vec<Chip>,
    /// What the button at the bottom left would do: "undo", "back"; empty when there is nothing.
    pub undo: String,
    /// More about it: "60 kg × 5".
    pub undo_detail: String,
    /// What opens the page on one's turn, "later, skip..."; empty where there is no turn.
    pub turn: String,
    /// A sentence that the lifter must see (something failed), or empty.
    pub notice: String,
    /// The screen itself.
    pub screen: Screen,
    /// Simulated devices drawn beside it, when that is asked for.
    pub beside: Option<Beside>,
    /// Rises whenever what a tap could mean has changed; a tap carries the one that it was meant
    /// for.
    pub number: u64,
    /// The last tap that was answered, by its [`Meant::id`](crate::Meant).
    pub answers: u64,
    /// Nobody has touched it for long: it is dark, and the first touch only wakes it.
    pub asleep: bool,
    /// Asleep: how far all is moved to the right and down, so that nothing burns in; pixels of
    /// the reference panel.
    pub shift: (i8, i8),
}

/// How it stands with a lifter.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pace {
    /// Has not begun.
    Fresh,
    /// Rests; the time left is shown.
    Resting,
    /// Rested: their turn may come.
    Ready,
    /// The back moved; a decision is open.
    Stopped,
    /// Not there.
    Away,
    /// Done for today.
    Done,
    /// Something must be mended first (no plan, no load).
    Blocked,
}

/// Another lifter under way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Chip {
    /// Name.
    pub lifter: String,
    /// "1:40", "ready", "back moved".
    pub word: String,
    /// For the look.
    pub pace: Pace,
    /// Whether it is the lifter whose screen this is.
    pub shown: bool,
}

/// Which screen, with what it shows.
#[derive(Debug, Clone, PartialEq)]
pub enum Screen {
    /// All lifters of the day.
    Choose(Choose),
    /// Rack, pins, gear, cautions, before the first rung.
    SetUp(SetUp),
    /// The rung of now.
    Bar(AtTheBar),
    /// A pad of numbers.
    Entry(Entry),
    /// Later, skip, longer, leave.
    Turn(TurnPad),
    /// What the bar holds, said by hand.
    Holds(Holds),
    /// Between two rungs.
    Rest(Rest),
    /// The back moved: end, or go on.
    Stop(Stop),
    /// Work loads to choose from, after the last warm-up.
    Settle(Settle),
    /// The lift is over.
    End(End),
    /// The turns of all lifters at one glance.
    Floor(Floor),
    /// A lifter's history of one lift.
    History(History),
    /// What stands behind the end of a lift.
    Why(Why),
    /// A meet or test day.
    Meet(MeetPage),
    /// Things to choose from.
    List(List),
    /// A page to read.
    Page(Page),
    /// Something is typed.
    Typing(Typing),
}

/// The most chips.
const CHIPS_MAX: usize = 4;

/// The frame of now.
#[must_use]
pub fn frame(stage: &Stage, scene: &Scene<'_>) -> Frame {
    let due = stage.due(scene);
    let lifter = stage.lifter.clone().unwrap_or_default();
    let (undo, undo_detail) = undo(stage, scene, &due);
    let say = scene.language();
    let turn = stage.with_turn(scene, &due).map(|_| say.say(p::TURN_PAD));
    let aside = stage.aside.as_ref().unwrap_or(&Aside::Panel);
    let lift = match &due {
        Due::All | Due::Floor => String::new(),
        Due::Aside => aside.lift(scene),
        Due::Fresh(entry) => entry.map(|e| say.shipped(&e.lift)).unwrap_or_default(),
        Due::SetUp(run)
        | Due::Pad(run, ..)
        | Due::Stop(run)
        | Due::Settle(run, _)
        | Due::Rest(run, ..)
        | Due::Bar(run, _)
        | Due::End(run) => say.tracked(&run.sheet.lift, run.sheet.track),
    };
    let screen = match due {
        Due::All => Screen::Choose(choose(scene)),
        Due::Floor => Screen::Floor(floor(scene)),
        Due::Aside => aside.screen(scene, &lifter),
        Due::Fresh(entry) => Screen::SetUp(fresh(scene, entry, &lifter)),
        Due::SetUp(run) => Screen::SetUp(SetUp {
            main: say.say(p::BACK_TO_BAR),
            ..set_up(say, &run.sheet, Some(run))
        }),
        Due::Pad(run, rung, pad) => pad_screen(scene, run, rung, &pad),
        Due::Stop(run) => Screen::Stop(stop(say, run)),
        Due::Settle(run, rung) => match scene.choices(run) {
            Some(choices) => Screen::Settle(settle(scene, run, &choices)),
            None => Screen::Rest(rest(scene, run, rung, 0)),
        },
        Due::Rest(run, rung, left) => Screen::Rest(rest(scene, run, rung, left)),
        Due::Bar(run, rung) => Screen::Bar(at_the_bar(scene, run, rung)),
        Due::End(run) => Screen::End(end(scene, run)),
    };
    Frame {
        language: say,
        look: scene.chosen().look(scene.clock),
        chips: chips(scene, &lifter, stage.is_early(scene)),
        lifter,
        lift,
        clock: scene.clock.into(),
        undo,
        undo_detail,
        turn: turn.unwrap_or_default(),
        notice: scene.notice.into(),
        screen,
        beside: None,
        number: 0,
        answers: 0,
        asleep: false,
        shift: (0, 0),
    }
}

/// A pad, for the rung of now; without one only the turn can be spoken of.
fn pad_screen(scene: &Scene<'_>, run: &LiftRun, rung: Option<usize>, pad: &PadOpen) -> Screen {
    match (pad, rung) {
        (PadOpen::Holds(plates), Some(rung)) => Screen::Holds(holds(scene, run, rung, plates)),
        (PadOpen::Reps | PadOpen::Moved { .. } | PadOpen::Effort, Some(rung)) => {
            Screen::Entry(pad_of(scene.language(), run, rung, pad))
        }
        (PadOpen::Turn, _)
        | (PadOpen::Reps | PadOpen::Moved { .. } | PadOpen::Holds(_) | PadOpen::Effort, None) => {
            Screen::Turn(turn_pad(scene, run, rung))
        }
    }
}

fn undo(stage: &Stage, scene: &Scene<'_>, due: &Due<'_>) -> (String, String) {
    let say = scene.language();
    let opened = matches!(stage.settle, Some((_, true)));
    if matches!(due, Due::Pad(..) | Due::SetUp(_) | Due::Aside) || opened {
        let meet = stage.aside == Some(Aside::Meet) && can_undo(scene);
        let word = if meet { p::UNDO } else { p::BACK };
        return (say.say(word), String::new());
    }
    let Some(run) = stage.undoes(scene) else {
        return Default::default();
    };
    let said = run.attendance.said();
    let bar = scene.word_to_undo(run);
    let bar = bar.filter(|_| !stage.undoes_said(run));
    let what = match run.entries.last().map(|e| e.what) {
        _ if bar.is_some() => say.say(p::THE_WORD),
        _ if run.attendance.claimed && run.was_rested() => say.say(p::MINE),
        _ if run.attendance.claimed || stage.takes_back_go(scene, run) => say.say(p::GO_NOW),
        _ if said == Some(TurnWord::Later) => say.say(p::LATER),
        _ if said == Some(TurnWord::Longer) => say.say(p::LONGER),
        _ if said == Some(TurnWord::Leaving) => say.say(p::LEAVE),
        _ if said == Some(TurnWord::Back) => say.say(p::I_AM_BACK),
        _ if stage.asks_load_again(scene, run) => say.say(p::THE_CHOICE),
        None => say.say(p::THE_START),
        Some(Entered::Stopped | Entered::LeftOpen) => say.say(p::THE_END),
        Some(Entered::WentOn) => say.say(p::GOING_ON),
        Some(Entered::Skipped) => say.say(p::THE_SKIP),
        Some(Entered::Settled) => say.say(p::THE_CHOICE),
        Some(Entered::Set { reps, .. }) => {
            let at = run.passed().count().saturating_sub(1);
            run.sheet
                .rungs
                .get(at)
                .map(|r| say.set(r.load, run.sheet.unit, reps))
                .unwrap_or_default()
        }
    };
    // Whoever looks at the bar says what it holds, not its next lifter.
    let whose = bar.as_ref().unwrap_or(&run.sheet.lifter);
    let who = if stage.lifter.as_ref() != Some(&run.sheet.lifter) {
        format!("{whose}: ")
    } else {
        String::new()
    };
    (say.say(p::UNDO), format!("{who}{what}"))
}

/// All who are under way at the shown lifter's bar, the shown one too, in the order in which they
/// began, so that nobody's place changes; elsewhere all who are under way. `early`: the shown one is
/// at the bar before the rest was over.
fn chips(scene: &Scene<'_>, lifter: &str, early: bool) -> Vec<Chip> {
    let mut open: Vec<&LiftRun> = scene.runs().filter(|run| !run.is_over()).collect();
    let own = open
        .iter()
        .find(|run| run.sheet.lifter == lifter)
        .map(|run| station_of(run));
    // Where there is no room for all, those at other bars are left out; nobody's place changes.
    open.sort_by_key(|run| (own.is_some() && own != Some(station_of(run)), run.no));
    open.truncate(CHIPS_MAX);
    open.sort_by_key(|run| run.no);
    if open.len() == 1 && open[0].sheet.lifter == lifter {
        return Vec::new();
    }
    let chip = |run: &LiftRun| {
        let shown = run.sheet.lifter == lifter;
        let (pace, word) = if shown && early {
            (Pace::Ready, scene.language().say(p::UP))
        } else {
            standing(scene, run)
        };
        Chip {
            lifter: run.sheet.lifter.clone(),
            word,
            pace,
            shown,
        }
    };
    open.into_iter().map(chip).collect()
}

/// What a lifter is doing, among those who share the bar: "up", "next", "3rd", "rests 1:10".
fn standing(scene: &Scene<'_>, run: &LiftRun) -> (Pace, String) {
    let say = scene.language();
    let (pace, word) = pace(scene, run);
    let order = scene.state.rotation(&station_of(run));
    let place = order.iter().position(|turn| turn.no == run.no);
    match (pace, place) {
        (Pace::Resting, _) => (pace, say.fill(p::RESTS, &[&word])),
        (Pace::Ready, Some(0)) => (pace, say.say(p::UP)),
        (Pace::Ready, Some(1)) => (pace, say.say(p::NEXT_UP)),
        (Pace::Ready, Some(at)) => (Pace::Fresh, say.place(at + 1)),
        (_, _) => (pace, word),
    }
}

pub(crate) fn pace(scene: &Scene<'_>, run: &LiftRun) -> (Pace, String) {
    let say = scene.language();
    if run.is_over() {
        return (Pace::Done, say.say(p::DONE));
    }
    if run.awaits_decision() {
        return (Pace::Stopped, say.say(p::BACK_MOVED));
    }
    if run.attendance.away {
        return (Pace::Away, say.say(p::AWAY));
    }
    match scene.rest_left(run) {
        Some(left) => (Pace::Resting, words::minutes(left)),
        None => (Pace::Ready, say.say(p::READY)),
    }
}
