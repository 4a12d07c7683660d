//! What can be typed at the desk, and how a number is read.
//!
//! Refuses: values that cannot be read; whether they make sense, the files' checker says.
use super::place::{Kind, What};
use super::wish::{Edit, Key};
use domain::{Length, Mass, MassUnit};

impl Kind {
    pub(super) const fn units(self) -> &'static [&'static str] {
        match self {
            Self::Length => &["mm", "in"],
            Self::Mass => &["kg", "lb"],
            Self::Load => &["kg", "lb", "%"],
            Self::Percent => &["%"],
            Self::Count => &[],
        }
    }

    /// What was typed, as a file has it; `None` when it cannot be read.
    pub(super) fn read(self, text: &str, unit: &str) -> Option<String> {
        let whole = format!("{text} {unit}");
        let percent = || domain::decimal::read(text, 100, 100_000).is_ok();
        let fits = match self {
            Self::Length => Length::read(&whole).is_ok(),
            Self::Count => return text.parse::<u16>().ok().map(|n| n.to_string()),
            Self::Mass | Self::Load | Self::Percent if unit == "%" => percent(),
            Self::Mass | Self::Load | Self::Percent => Mass::read(&whole).is_ok(),
        };
        fits.then_some(whole)
    }
}

impl What {
    /// Masses stand first in this unit.
    pub(crate) fn first_in(mut self, in_unit: MassUnit) -> Self {
        if let Self::Value { unit, .. } = &mut self {
            *unit = usize::from(in_unit == MassUnit::Lb);
        }
        self
    }

    /// It is one more of a list.
    pub(crate) fn one_more(mut self) -> Self {
        if let Self::Value { more, .. } = &mut self {
            *more = true;
        }
        self
    }

    /// Of what kind it is, where it is a number.
    pub(super) fn kind(&self) -> Option<Kind> {
        match self {
            Self::Value { kind, .. } | Self::Field { kind, .. } => Some(*kind),
            Self::Code(_) | Self::PageCode | Self::Name(_) => None,
        }
    }

    pub(super) fn first_page(&self) -> usize {
        match self {
            Self::Value { unit, .. } => *unit,
            Self::Field {
                form,
                kind: Kind::Mass | Kind::Load,
                ..
            } => usize::from(form.unit() == MassUnit::Lb),
            Self::Field { .. } | Self::Code(_) | Self::PageCode | Self::Name(_) => 0,
        }
    }
}

/// A value of an entry of a file, to be typed.
pub(crate) fn value(
    title: String,
    kind: Kind,
    file: &'static str,
    entry: (&'static str, &str),
    path: &[Key],
) -> What {
    What::Value {
        title,
        kind,
        unit: 0,
        more: false,
        edit: Edit {
            file,
            entry: Some((entry.0, entry.1.to_owned())),
            path: path.to_vec(),
            value: String::new(),
        },
    }
}
