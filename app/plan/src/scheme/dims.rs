//! What stands between times signs: "5 x 3", "140 kg x 5 x 3", and which of it counts what.
//!
//! Refuses: orders of which two could be meant.
use super::{Bare, bare_load};
use crate::fault::{Wrong, quote};
use crate::set_group::{LoadAsk, Reps};
use crate::words::words;
use text::keys::checked as k;

/// One factor.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Dim {
    /// A number without a unit.
    Number(String),
    /// "3-5", "5+" or "AMRAP".
    Reps(Reps),
    /// "5/3/1+": one after the other.
    List(Vec<Reps>),
    /// With a unit or a percent sign.
    Load(LoadAsk),
}

/// The factors told apart.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(super) struct Told {
    pub(super) sets: Option<u8>,
    pub(super) reps: Vec<Reps>,
    pub(super) load: Option<LoadAsk>,
}

/// Most sets and reps.
pub(super) const SETS_MAX: u8 = 20;
pub(super) const REPS_MAX: u8 = 50;
/// A bare number from this on may be a bar's load: the lightest bars of gyms have 15 kg (common
/// practice, no source).
pub(super) const LOAD_LEAST: u8 = 15;

/// A whole number up to the most.
pub(super) fn count(text: &str, most: u8) -> Option<u8> {
    let number = text.parse::<u8>().ok()?;
    (1..=most).contains(&number).then_some(number)
}

impl Dim {
    fn sets(&self) -> Option<u8> {
        match self {
            Self::Number(text) => count(text, SETS_MAX),
            Self::Reps(_) | Self::List(_) | Self::Load(_) => None,
        }
    }

    fn reps(&self) -> Option<Vec<Reps>> {
        match self {
            Self::Number(text) => Some(vec![Reps::just(count(text, REPS_MAX)?)]),
            Self::Reps(reps) => Some(vec![*reps]),
            Self::List(list) => Some(list.clone()),
            Self::Load(_) => None,
        }
    }

    /// Whether a number could be meant as a load.
    fn may_be_load(&self) -> bool {
        match self {
            Self::Number(text) => count(text, LOAD_LEAST - 1).is_none() && text != "0",
            Self::Load(_) => true,
            Self::Reps(_) | Self::List(_) => false,
        }
    }

    fn load(&self, text: &str, bare: Bare) -> Result<Option<LoadAsk>, Wrong> {
        match self {
            Self::Number(number) => bare_load(text, number, bare).map(Some),
            Self::Load(load) => Ok(Some(*load)),
            Self::Reps(_) | Self::List(_) => Ok(None),
        }
    }
}

/// Tells which factor counts what; `has_load` says that the load stands elsewhere.
pub(super) fn tell(text: &str, dims: &[Dim], bare: Bare, has_load: bool) -> Result<Told, Wrong> {
    match dims {
        [a, b] => two(text, (a, b), bare, has_load),
        [a, b, c] if !has_load => three(text, (a, b, c), bare),
        _ => Err(Wrong::value(
            text,
            words!(k::TOO_MANY_NUMBERS_WITH_A),
            words!(k::WRITE_SETS_X_REPS_LOAD),
        )),
    }
}

fn two(text: &str, (a, b): (&Dim, &Dim), bare: Bare, has_load: bool) -> Result<Told, Wrong> {
    let as_sets = a.sets().zip(b.reps());
    if has_load || !a.may_be_load() {
        if let (Dim::Number(reps), Dim::Load(load)) = (a, b) {
            let load = load.to_string();
            let right = words!(
                k::WRITE_OR,
                quote(&format!("1x{reps} @ {load}")),
                quote(&format!("{reps}x1 @ {load}"))
            );
            let what = words!(k::ONE_SET_OF_REPS_OR, reps, reps);
            return Err(Wrong::value(text, words!(k::WHICH_CAN_MEAN, what), right));
        }
        let (sets, reps) = as_sets.ok_or_else(|| out_of_range(text))?;
        return Ok(Told {
            sets: Some(sets),
            reps,
            load: None,
        });
    }
    let as_load = b.reps().zip(a.load(text, bare).ok().flatten());
    match (as_sets, as_load) {
        (Some(_), Some((reps, load))) => {
            let right = words!(
                k::WRITE_OR,
                quote(&format!("1x{} @ {load}", reps[0])),
                quote(&format!("{} sets of {}", shown(a), reps[0]))
            );
            Err(Wrong::value(text, words!(k::WHICH_CAN_MEAN_SO_MANY), right))
        }
        (Some((sets, reps)), None) => Ok(Told {
            sets: Some(sets),
            reps,
            load: None,
        }),
        (None, Some((reps, load))) => Ok(Told {
            sets: None,
            reps,
            load: Some(load),
        }),
        (None, None) => {
            a.load(text, bare)?;
            Err(out_of_range(text))
        }
    }
}

fn three(text: &str, (a, b, c): (&Dim, &Dim, &Dim), bare: Bare) -> Result<Told, Wrong> {
    // Sets x reps x load.
    let rising = match (a.sets(), b.reps(), c.may_be_load()) {
        (Some(sets), Some(reps), true) if !matches!(a, Dim::Load(_)) => {
            let load = c.load(text, bare)?;
            Some(Told {
                sets: Some(sets),
                reps,
                load,
            })
        }
        _ => None,
    };
    // Load first; then sets and reps stand in either order.
    let front = a.may_be_load() && !c_is_load(c);
    match (rising, front) {
        (Some(told), false) => Ok(told),
        (Some(_), true) => Err(either(text, a, b, c)),
        (None, true) => {
            let load = a.load(text, bare)?;
            let told = |sets: &Dim, reps: &Dim| {
                Some(Told {
                    sets: Some(sets.sets()?),
                    reps: reps.reps()?,
                    load,
                })
            };
            match (told(b, c), told(c, b)) {
                (Some(one), Some(other)) if one == other => Ok(one),
                (Some(_), Some(_)) => Err(either(text, a, b, c)),
                (Some(told), None) | (None, Some(told)) => Ok(told),
                (None, None) => Err(out_of_range(text)),
            }
        }
        (None, false) => Err(out_of_range(text)),
    }
}

/// Whether the last factor can be nothing but a load.
fn c_is_load(c: &Dim) -> bool {
    match c {
        Dim::Load(_) => true,
        Dim::Number(text) => count(text, SETS_MAX).is_none() && count(text, REPS_MAX).is_none(),
        Dim::Reps(_) | Dim::List(_) => false,
    }
}

fn shown(dim: &Dim) -> String {
    match dim {
        Dim::Number(text) => text.clone(),
        Dim::Reps(reps) => reps.to_string(),
        Dim::List(list) => {
            let list: Vec<_> = list.iter().map(ToString::to_string).collect();
            list.join("/")
        }
        Dim::Load(load) => load.to_string(),
    }
}

fn either(text: &str, a: &Dim, b: &Dim, c: &Dim) -> Wrong {
    let (a, b, c) = (shown(a), shown(b), shown(c));
    let right = words!(
        k::WRITE_OR,
        quote(&format!("{b}x{c} @ {a}")),
        quote(&format!("{c}x{b} @ {a}"))
    );
    Wrong::value(text, words!(k::IN_WHICH_SETS_AND_REPS), right)
}

fn out_of_range(text: &str) -> Wrong {
    Wrong::value(
        text,
        words!(k::NOT_SETS_X_REPS),
        words!(k::WRITE_1_TO_SETS_X, SETS_MAX, REPS_MAX),
    )
}
