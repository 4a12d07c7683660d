//! A load that a plan asks for, in columns of the record and back.
use domain::Mass;
use domain::prescription::LoadWish;

/// A load that a plan asks for as the columns `load_of`, `load_ng` and `share`; [`wish`] is the
/// way back.
pub(super) const fn columns(load: LoadWish) -> (&'static str, Option<Mass>, Option<u32>) {
    match load {
        LoadWish::Mass(mass) => ("mass", Some(mass), None),
        LoadWish::OfBest(share) => ("best", None, Some(share)),
        LoadWish::OfTraining(share) => ("training", None, Some(share)),
        LoadWish::OfTop(share) => ("top", None, Some(share)),
        LoadWish::More(more) => ("more", Some(more), None),
        LoadWish::Due => ("due", None, None),
    }
}

/// The load that the columns `load_of`, `load_ng` and `share` say. A record is made anew where it
/// does not agree with the journal, so what fits none of them is what is due.
pub(super) fn wish(of: &str, load: Option<Mass>, share: Option<u32>) -> LoadWish {
    match (of, load, share) {
        ("mass", Some(load), _) => LoadWish::Mass(load),
        ("more", Some(more), _) => LoadWish::More(more),
        ("best", _, Some(share)) => LoadWish::OfBest(share),
        ("training", _, Some(share)) => LoadWish::OfTraining(share),
        ("top", _, Some(share)) => LoadWish::OfTop(share),
        _ => LoadWish::Due,
    }
}
