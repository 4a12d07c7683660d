//! What a plan asks for as it was understood: rows of set groups, each with its load and effort.
//!
//! Refuses: what it means for plates, and what a lifter can do today; that is the domain's.
use chrono::NaiveDate;
use domain::lift::Grip;
use domain::manner::Manner;
use domain::prescription::Role;
use domain::{LengthUnit, Mass, MassUnit, TrackName, decimal};
use std::fmt;

/// What one lifter is to do of one lift on one day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlanRow {
    /// The day.
    pub date: NaiveDate,
    /// The lifter's name, as in the gym's file.
    pub lifter: String,
    /// The lift's name, as in the gym's file.
    pub lift: String,
    /// The name of a track such as "heavy", where one was written.
    pub track: Option<TrackName>,
    /// The sets, in their order; never empty.
    pub groups: Vec<SetGroup>,
    /// Name of the warm-up pattern; `None` for the lifter's own.
    pub ladder: Option<String>,
    /// The bar's name, as in the gym's file; `None` for the one that the lift is done with.
    pub bar: Option<String>,
    /// The coach's words, and the columns that no plan needs.
    pub note: String,
    /// Where it was read.
    pub from: From,
}

/// Where something was read: a cell of a sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct From {
    /// The sheet's name; a text has the file's.
    pub sheet: String,
    /// Whether it is a text, which has no sheets.
    pub is_text: bool,
    /// From 1.
    pub row: usize,
    /// From 0; `None` for the whole row.
    pub column: Option<usize>,
}

/// So many sets of so many reps by one rule of load.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SetGroup {
    /// Work sets, 1 to 20.
    pub sets: u8,
    /// Reps of each.
    pub reps: Reps,
    /// The load, where one was written.
    pub load: Option<LoadAsk>,
    /// RPE in tenths, 10 to 100, where one was written.
    pub effort: Option<u8>,
    /// Rest before each set in seconds, where one was written.
    pub rest_s: Option<u32>,
    /// What they are for.
    pub role: Role,
    /// Where and how they are done, where that was written.
    pub manner: Manner,
}

/// Reps of a set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Reps {
    /// At least so many, 1 to 50.
    pub least: u8,
    /// At most so many; `None` for as many as go.
    pub most: Option<u8>,
}

/// How a plan asks for a load.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LoadAsk {
    /// So much, in the unit that was written.
    Mass(Mass, MassUnit),
    /// So many hundredths of a percent of something.
    Share(u32, ShareOf),
    /// So much more than last time, in the unit that was written.
    More(Mass, MassUnit),
    /// What is due.
    Due,
}

/// What a share is of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ShareOf {
    /// The frozen figure.
    TrainingMax,
    /// The recorded best.
    Best,
    /// Today's top set.
    TopSet,
}

impl Reps {
    /// So many, no more and no less.
    #[must_use]
    pub const fn just(reps: u8) -> Self {
        Self {
            least: reps,
            most: Some(reps),
        }
    }

    /// As many as go.
    pub const OPEN: Self = Self {
        least: 1,
        most: None,
    };
}

impl ShareOf {
    /// "training max", "best" or "top set".
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::TrainingMax => "training max",
            Self::Best => "best",
            Self::TopSet => "top set",
        }
    }
}

/// Hundredths of a percent as "82.5 %".
#[must_use]
pub fn share_text(share: u32) -> String {
    format!("{} %", decimal::write_rounded(share.into(), 100, 2))
}

/// What is said of where and how sets are done, each as it is read back: "hole 6", "no straps".
#[must_use]
pub fn manner_texts(manner: &Manner) -> Vec<String> {
    let gear = |on: Option<bool>, word: &str| {
        on.map(|on| {
            if on {
                word.to_owned()
            } else {
                format!("no {word}")
            }
        })
    };
    let block = |block: domain::Length| match block {
        domain::Length::ZERO => "no blocks".to_owned(),
        block => format!("blocks {}", block.exact(LengthUnit::Mm)),
    };
    let grip = |grip: Grip| match grip {
        Grip::DoubleOverhand => "double overhand".to_owned(),
        Grip::Hook => "hook grip".to_owned(),
    };
    let all = [
        manner.hole.map(|hole| format!("hole {hole}")),
        manner.block.map(block),
        gear(manner.belt, "belt"),
        gear(manner.straps, "straps"),
        manner.grip.map(grip),
        manner.tempo.map(|tempo| format!("tempo {tempo}")),
        manner.pause_s.map(|pause| format!("pause {pause} s")),
    ];
    all.into_iter().flatten().collect()
}

/// Tenths of RPE as "8" or "8.5".
#[must_use]
pub fn effort_text(effort: u8) -> String {
    decimal::write_rounded(effort.into(), 10, 1)
}

impl fmt::Display for Reps {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.least, self.most) {
            (1, None) => f.write_str("AMRAP"),
            (least, None) => write!(f, "{least}+"),
            (least, Some(most)) if least == most => write!(f, "{least}"),
            (least, Some(most)) => write!(f, "{least}-{most}"),
        }
    }
}

impl fmt::Display for LoadAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Mass(mass, unit) => f.write_str(&mass.exact(*unit)),
            Self::Share(share, of) => write!(f, "{} of {}", share_text(*share), of.word()),
            Self::More(mass, unit) => write!(f, "last time +{}", mass.exact(*unit)),
            Self::Due => f.write_str("what is due"),
        }
    }
}

/// "1x5 @ 180 kg, RPE 8, rest 240 s (top)": a form that is read back as it was.
impl fmt::Display for SetGroup {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} x {}", self.sets, self.reps)?;
        if let Some(load) = &self.load {
            write!(f, " @ {load}")?;
        }
        if let Some(effort) = self.effort {
            write!(f, " RPE {}", effort_text(effort))?;
        }
        if let Some(rest) = self.rest_s {
            write!(f, " rest {rest} s")?;
        }
        for said in manner_texts(&self.manner) {
            write!(f, " {said}")?;
        }
        if self.role != Role::Work {
            write!(f, " ({})", self.role.word())?;
        }
        Ok(())
    }
}

/// "Week 1!B3".
impl fmt::Display for From {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let column = self.column.map(crate::plan_faults::letters);
        write!(
            f,
            "{}!{}{}",
            self.sheet,
            column.unwrap_or_default(),
            self.row
        )
    }
}
