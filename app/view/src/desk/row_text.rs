//! A row of the plan as somebody would type it.
use domain::MassUnit;
use domain::prescription::LoadWish;

/// The load that follows from the last time, as a plan writes it.
pub(super) const DUE: &str = "due";

/// A rest as somebody would type it; `None` where there is none, or one of odd seconds.
pub(super) fn rest_text(rest_s: Option<u32>) -> Option<String> {
    rest_s.filter(|s| s % 60 == 0).map(|s| (s / 60).to_string())
}

/// A load as somebody would type it: in the lifter's unit, unless the other has fewer digits.
pub(super) fn load_text(load: LoadWish, unit: MassUnit) -> String {
    let mass = match load {
        LoadWish::Mass(mass) => mass,
        LoadWish::OfBest(share) => {
            let percent = domain::decimal::write_rounded(share.into(), 100, 2);
            return format!("{percent} %");
        }
        // Rows with these are told, not typed anew.
        LoadWish::Due => return DUE.to_owned(),
        LoadWish::OfTraining(_) | LoadWish::OfTop(_) | LoadWish::More(_) => {
            return String::new();
        }
    };
    let other = match unit {
        MassUnit::Kg => MassUnit::Lb,
        MassUnit::Lb => MassUnit::Kg,
    };
    let (own, other) = (mass.exact(unit), mass.exact(other));
    if other.len() < own.len() { other } else { own }
}
