//! What every screen shares: who, which screen, who else is under way, what undo would do.
use crate::generated::{Chip, Frame, KioskWindow, Pace, Stage, Theme};
use crate::rows::Rows;
use slint::{ComponentHandle as _, SharedString};

/// Keeps the chips of the header.
pub(crate) struct FrameFace {
    chips: Rows<Chip>,
    words: Rows<SharedString>,
}

impl FrameFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let (chips, words) = (Rows::new(), Rows::new());
        let to = window.global::<Frame<'_>>();
        to.set_chips(chips.model());
        to.set_chip_words(words.model());
        Self { chips, words }
    }

    pub(crate) fn show(&self, window: &KioskWindow, frame: &view::Frame) {
        // A word that is not bundled stays English; no screen is lost for it.
        drop(slint::select_bundled_translation(frame.language.code()));
        let daylight = frame.look == view::Look::Daylight;
        window.global::<Theme<'_>>().set_daylight(daylight);
        let to = window.global::<Frame<'_>>();
        to.set_lifter(frame.lifter.as_str().into());
        to.set_lift(frame.lift.as_str().into());
        to.set_clock(frame.clock.as_str().into());
        to.set_undo(frame.undo.as_str().into());
        to.set_undo_detail(two_lines(&frame.undo_detail).into());
        to.set_turn(frame.turn.as_str().into());
        to.set_notice(frame.notice.as_str().into());
        // The words first: a chip is never there without its own.
        let words = frame.chips.iter().map(|chip| chip.word.as_str());
        self.words.settle(words.map(SharedString::from));
        let long = |chip: &view::Chip| chip.lifter.chars().count() > CHIP_LETTERS;
        to.set_chips_long(frame.chips.iter().any(long));
        self.chips.settle(frame.chips.iter().map(|chip| Chip {
            lifter: chip.lifter.as_str().into(),
            pace: pace(chip.pace),
            shown: chip.shown,
        }));
        to.set_asleep(frame.asleep);
        to.set_shift_x(frame.shift.0.into());
        to.set_shift_y(frame.shift.1.into());
        to.set_stage(stage(&frame.screen));
    }
}

/// How it stands with a lifter, for the look.
pub(crate) fn pace(pace: view::Pace) -> Pace {
    match pace {
        view::Pace::Fresh => Pace::Fresh,
        view::Pace::Resting => Pace::Resting,
        view::Pace::Ready => Pace::Ready,
        view::Pace::Stopped => Pace::Stopped,
        view::Pace::Away => Pace::Away,
        view::Pace::Done => Pace::Done,
        view::Pace::Blocked => Pace::Blocked,
    }
}

/// Which screen is on.
fn stage(screen: &view::Screen) -> Stage {
    match screen {
        view::Screen::Choose(_) => Stage::Choose,
        view::Screen::SetUp(_) => Stage::Setup,
        view::Screen::Bar(_) => Stage::Bar,
        view::Screen::Entry(_) => Stage::Entry,
        view::Screen::Turn(_) => Stage::Turn,
        view::Screen::Holds(_) => Stage::Holds,
        view::Screen::Rest(_) => Stage::Rest,
        view::Screen::Settle(_) => Stage::Settle,
        view::Screen::Stop(_) => Stage::Stop,
        view::Screen::End(_) => Stage::End,
        view::Screen::Floor(_) => Stage::Floor,
        view::Screen::History(_) => Stage::History,
        view::Screen::Why(_) => Stage::Why,
        view::Screen::Meet(_) => Stage::Meet,
        view::Screen::List(_) => Stage::List,
        view::Screen::Page(_) => Stage::Page,
        view::Screen::Typing(_) => Stage::Typing,
    }
}

/// Letters of a name that a chip takes in its larger type.
const CHIP_LETTERS: usize = 11;

/// Letters under a button's word that fit into one line.
const LINE: usize = 12;

/// "Parvati 42.5 kg × 5" in two lines, the name apart from the set.
fn two_lines(words: &str) -> String {
    let starts_number = |(at, _): &(usize, &str)| {
        let rest = &words[at + 1..];
        rest.starts_with(|c: char| c.is_ascii_digit())
    };
    let space = words.match_indices(' ').find(starts_number);
    match space {
        Some((at, _)) if words.chars().count() > LINE => {
            format!("{}\n{}", &words[..at], &words[at + 1..])
        }
        _ => words.to_owned(),
    }
}

/// Splits "2 reps" into the number, read from afar, and its word.
pub(crate) fn number_and_word(text: &str) -> (&str, &str) {
    text.split_once(' ').unwrap_or((text, ""))
}
