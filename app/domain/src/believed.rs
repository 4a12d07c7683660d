//! What each bar is believed to hold, and how that is known: from what people said, never from
//! what was planned.
//!
//! Somebody speaks by entering a set (its plates were on), by tapping "loaded", or by stating the
//! stack by hand. An order that was shown and not yet answered may have been obeyed in part; when
//! another one takes its place, or a statement is taken back, the belief is in doubt, and the
//! screen gives the whole stack.
use crate::equipment::PlateFace;
use crate::lift_no::LiftNo;
use crate::mass::Mass;
use crate::moment::Moment;
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// After so long without a word, milliseconds, nobody vouches for a bar any more: two hours.
/// Common practice, no source.
pub const DOUBT_AFTER_MS: i64 = 2 * 60 * 60 * 1_000;

/// One plate on a bar: what it is, and its painted mark where plates were weighed.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Disc {
    /// What it is and looks like.
    pub face: PlateFace,
    /// Its mark; `None` where it has none or nobody knows which of its kind it is.
    pub mark: Option<String>,
}

/// The plates on both sleeves, each from the inside out.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Stacks {
    /// The left sleeve, as the lifter stands.
    pub left: Vec<Disc>,
    /// The right sleeve.
    pub right: Vec<Disc>,
}

impl Stacks {
    /// The same unmarked plates on both sides.
    #[must_use]
    pub fn alike(faces: &[PlateFace]) -> Self {
        let disc = |face: &PlateFace| Disc {
            face: *face,
            mark: None,
        };
        let side: Vec<Disc> = faces.iter().map(disc).collect();
        Self {
            left: side.clone(),
            right: side,
        }
    }

    /// Kinds of the plates of one side. Both sides hold the same kinds in the same order.
    #[must_use]
    pub fn faces(&self) -> Vec<PlateFace> {
        self.left.iter().map(|disc| disc.face).collect()
    }

    /// Whether no plate is on.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.left.is_empty() && self.right.is_empty()
    }

    /// All plates, the left ones first.
    pub fn discs(&self) -> impl Iterator<Item = &Disc> {
        self.left.iter().chain(&self.right)
    }

    /// What the labels of all plates add up to.
    #[must_use]
    pub fn mass(&self) -> Mass {
        self.discs().map(|disc| disc.face.mass).sum()
    }
}

/// Who said what is on a bar.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Said {
    /// A set of this lift was entered: its plates were on.
    Set(LiftNo),
    /// "Loaded" was tapped for the turn of this lift.
    Loaded(LiftNo),
    /// The stack was stated by hand.
    Stated,
}

/// What one bar is believed to hold.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BelievedBar {
    /// The rack that it was at.
    pub rack: String,
    /// What was said to be on it.
    pub holds: Stacks,
    /// Who said so last.
    pub said: Said,
    /// When.
    pub at: Moment,
    /// The training day of that word; on another day the bar is taken as stripped.
    pub date: NaiveDate,
    /// The order that was shown since and that nobody answered, where there is one.
    pub ordered: Option<Stacks>,
    /// Whether something happened since that leaves it open what is on.
    pub doubted: bool,
    /// What was believed before the last word, for taking that word back.
    pub before: Option<Stacks>,
}

/// A word about a bar, as it was recorded.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BarWord {
    /// Name of the rack.
    pub rack: String,
    /// Name of the bar.
    pub bar: String,
    /// The training day.
    pub date: NaiveDate,
    /// What is on it.
    pub holds: Stacks,
    /// Who said so.
    pub said: Said,
    /// Other bars that cannot hold all that was believed of them if this is true.
    pub contradicts: Vec<String>,
}

/// What is known of a bar at one moment.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Belief {
    /// What it is believed to hold.
    pub holds: Stacks,
    /// Whether somebody must look before the next plate is moved.
    pub in_doubt: bool,
}

impl BelievedBar {
    /// After a word about a bar of which `before` was believed.
    #[must_use]
    pub fn after(word: &BarWord, at: Moment, before: Option<Self>) -> Self {
        let before = before.filter(|bar| bar.date == word.date);
        Self {
            rack: word.rack.clone(),
            holds: word.holds.clone(),
            said: word.said,
            at,
            date: word.date,
            ordered: None,
            doubted: false,
            before: before.map(|bar| bar.holds),
        }
    }

    /// A bar of which nobody has said anything on `date`: taken as stripped, and in doubt.
    #[must_use]
    pub fn unknown(rack: &str, at: Moment, date: NaiveDate) -> Self {
        Self {
            rack: rack.into(),
            holds: Stacks::default(),
            said: Said::Stated,
            at,
            date,
            ordered: None,
            doubted: true,
            before: None,
        }
    }

    /// An order was shown: from now on hands may be at work on it.
    pub fn order(&mut self, to: &Stacks) {
        match &self.ordered {
            Some(ordered) if ordered == to => {}
            // It was begun, or not: nobody knows.
            Some(_) => {
                self.doubted = true;
                self.ordered = Some(to.clone());
            }
            None if self.holds == *to => {}
            None => self.ordered = Some(to.clone()),
        }
    }

    /// The last statement ("loaded", or the stack by hand) is taken back.
    pub fn take_back(&mut self) {
        if let Some(before) = self.before.take() {
            self.holds = before;
        }
        self.said = Said::Stated;
        self.doubted = true;
    }

    /// Whether the last word can be taken back by itself: a set is taken back with its entry, and
    /// its plates stay on.
    #[must_use]
    pub const fn can_take_back(&self) -> bool {
        !self.doubted && matches!(self.said, Said::Loaded(_) | Said::Stated)
    }

    /// What is known of it on `date` at `now`.
    #[must_use]
    pub fn belief(&self, date: NaiveDate, now: Moment) -> Belief {
        if self.date != date {
            return Belief::default_doubt();
        }
        let long_ago = now.0.saturating_sub(self.at.0) > DOUBT_AFTER_MS;
        Belief {
            holds: self.holds.clone(),
            in_doubt: self.doubted || long_ago,
        }
    }
}

impl Belief {
    /// Of a bar of which nobody has said anything today.
    #[must_use]
    pub fn default_doubt() -> Self {
        Self {
            holds: Stacks::default(),
            in_doubt: true,
        }
    }
}
