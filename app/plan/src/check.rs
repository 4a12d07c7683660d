//! Checks any of the files that people write, by its name, alone or together with others.
//!
//! Refuses: files of other names, and silence about what could not be checked.
use crate::fault::{Fault, Weight, Wrong};
use crate::lifter_file::{self, Names};
use crate::words::{Term, term, words};
use crate::{Source, coach_file, gym_file, kiosk_file, meet_file, programme_file};
use domain::Gym;
use text::keys::checked as k;

/// The kinds of file that are checked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    Gym,
    Lifters,
    Programme,
    Kiosk,
    Meet,
    Plan,
    Other,
}

/// How the names of plans end, in lower case.
pub const PLAN_ENDINGS: [&str; 4] = [".csv", ".tsv", ".xlsx", ".ods"];

fn kind(name: &str) -> Kind {
    let base = name.rsplit(['/', '\\']).next().unwrap_or_default();
    match base.to_lowercase().as_str() {
        "gym.toml" => Kind::Gym,
        "lifters.toml" => Kind::Lifters,
        "programme.toml" => Kind::Programme,
        "kiosk.toml" => Kind::Kiosk,
        "meet.toml" => Kind::Meet,
        base if PLAN_ENDINGS.iter().any(|end| base.ends_with(end)) => Kind::Plan,
        _ => Kind::Other,
    }
}

/// Every fault of one file, by row: gym.toml, lifters.toml, programme.toml, kiosk.toml, meet.toml
/// or a plan. What is merely odd is among them. Names in it are held against `gym`; without one that is told too.
#[must_use]
pub fn check(source: Source<'_>, gym: Option<&Gym>) -> Vec<Fault> {
    let alone = |thing: Term, mut faults: Vec<Fault>| {
        if gym.is_none() {
            faults.push(unheld(source.name, thing));
        }
        faults
    };
    match kind(source.name) {
        Kind::Gym => gym_file::gym_alone(source).2,
        Kind::Lifters => {
            let names = gym.map_or_else(Names::open, Names::of);
            alone(term!(k::LIFTERS), lifter_file::read(source, &names).1)
        }
        Kind::Programme => alone(term!(k::A_PROGRAMME), programme_file::read(source, gym).1),
        Kind::Kiosk => match kiosk_file::kiosk_noted(source, gym) {
            (Some(kiosk), faults) if kiosk.racks.is_none() => faults,
            (_, faults) => alone(term!(k::A_KIOSK), faults),
        },
        Kind::Meet => alone(term!(k::A_MEET), meet_file::read(source, gym).1),
        Kind::Plan => alone(term!(k::A_PLAN), coach_file::read(source, gym, None).1),
        Kind::Other => {
            let right = words!(k::GIVE_GYM_TOML_LIFTERS_TOML);
            let wrong = Wrong::plain(words!(k::A_FILE_OF_A_KIND), right);
            vec![Fault::whole(source.name, wrong)]
        }
    }
}

/// Every fault of several files, in their order. The first gym.toml and the first lifters.toml
/// among them stand before `context`, and the others are held against what they make.
#[must_use]
pub fn check_all(sources: &[Source<'_>], context: Option<&Gym>) -> Vec<Fault> {
    let at = |wanted| {
        sources
            .iter()
            .position(|source| kind(source.name) == wanted)
    };
    let (gym_at, lifters_at) = (at(Kind::Gym), at(Kind::Lifters));
    let (gym, names, gym_faults) = match gym_at {
        Some(at) => {
            let (gym, names, faults) = gym_file::gym_alone(sources[at]);
            (is_whole(&faults).then_some(gym), names, faults)
        }
        None => {
            let names = context.map_or_else(Names::open, Names::of);
            (context.cloned(), names, Vec::new())
        }
    };
    let held = gym_at.is_some() || context.is_some();
    let (lifters, lifter_faults) = match lifters_at {
        Some(at) => {
            let (lifters, mut faults) = lifter_file::read(sources[at], &names);
            let whole = is_whole(&faults);
            if !held {
                faults.push(unheld(sources[at].name, term!(k::LIFTERS)));
            }
            (whole.then_some(lifters), faults)
        }
        None => (context.map(|gym| gym.lifters.clone()), Vec::new()),
    };
    let gym = gym
        .zip(lifters)
        .map(|(gym, lifters)| Gym { lifters, ..gym });
    let mut faults = Vec::new();
    for (number, source) in sources.iter().enumerate() {
        if Some(number) == gym_at {
            faults.extend_from_slice(&gym_faults);
        } else if Some(number) == lifters_at {
            faults.extend_from_slice(&lifter_faults);
        } else {
            faults.extend(check(*source, gym.as_ref()));
        }
    }
    faults
}

fn is_whole(faults: &[Fault]) -> bool {
    !faults.iter().any(Fault::stops)
}

/// Tells that names in a file were not held against anything.
fn unheld(file: &str, thing: Term) -> Fault {
    let read = words!(k::WITHOUT_A_WHOLE_GYM_BESIDE, thing);
    let right = words!(k::CHECK_IT_TOGETHER_WITH_GYM);
    Fault {
        weight: Weight::Odd,
        ..Fault::whole(file, Wrong::plain(read, right))
    }
}
