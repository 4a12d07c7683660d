//! A decision in one sentence, with its figures. Refuses: more than one.
use super::went::Went;
use super::{Decision, Verdict, Why};
use crate::mass::MassUnit;
use alloc::format;
use alloc::string::String;

impl Decision {
    /// "182.5 kg, up 2.5 kg: all reps with the back held", in the lifter's unit.
    #[must_use]
    pub fn sentence(&self, unit: MassUnit) -> String {
        if self.due().is_none() {
            return format!("nothing due: {}", self.because(unit));
        }
        let load = self.load.words(unit);
        let by = self.load.apart(self.from).words(unit);
        let change = match self.verdict {
            Verdict::Raise => format!("{load}, up {by}"),
            Verdict::Repeat if self.load == self.from => format!("{load} again"),
            _ if self.load == self.from => format!("{load} again, the least there is"),
            Verdict::Repeat | Verdict::Drop | Verdict::Reset | Verdict::Ease => {
                format!("{load}, down {by}")
            }
        };
        format!("{change}: {}", self.because(unit))
    }

    fn because(&self, unit: MassUnit) -> String {
        let went = self.went_words();
        match self.why {
            Why::Well => went,
            Why::Back => format!("{went}, on the way back"),
            Why::NoStep => format!("{went}, but the next load that can be made is too far up"),
            Why::Light => format!("{went}, on a day lighter than was due"),
            Why::Cut => went,
            Why::TryAgain => format!("{went}, try {} of {}", self.nth, self.tries),
            Why::OutOfTries if self.tries <= 1 => went,
            Why::OutOfTries => format!("{went}, try {} of {}", self.nth, self.tries),
            Why::TooMuch => format!("{went}, too early to try {} again", self.from.words(unit)),
            Why::Stuck => format!("{went}, stuck again without a new best; ask the coach"),
            Why::Coach => String::from("the coach ruled so"),
            Why::Hard => format!("{went}, harder than asked"),
            Why::Range => format!("{went}, not yet the top of the range in every set"),
            Why::Waiting => format!("{went}; waits for the coach's word"),
            Why::Away => format!("{} days away beyond the plan", self.away_days),
            Why::Anew => {
                let days = self.away_days;
                format!("{days} days away beyond the plan; begin anew with the coach")
            }
            Why::Ill => format!("ill, {} days counted as a break", self.away_days),
            Why::Family => String::from("the back moved in another pull since"),
            Why::OverReaching => String::from("one pull after the other went wrong; ask the coach"),
            Why::LongAgo => String::from("long ago, while other pulls went on"),
            Why::Week => String::from("a week's rise is used up"),
            Why::Hurt => {
                String::from("hurt: nothing until the coach rules; stop and see a clinician")
            }
        }
    }

    fn went_words(&self) -> String {
        let of_sets = |set: u8| {
            if self.sets == 1 {
                String::new()
            } else {
                format!(" in set {set}")
            }
        };
        match self.went {
            Went::Well => String::from("all reps with the back held"),
            Went::Short { set, reps } => format!("{reps} of {} reps{}", self.reps, of_sets(set)),
            Went::Moved { set, rep } => format!("the back moved at rep {rep}{}", of_sets(set)),
            Went::MovedWarm => String::from("the back moved in a warm-up"),
            Went::Cut { done } => format!("{done} of {} sets done, and those well", self.sets),
        }
    }
}
