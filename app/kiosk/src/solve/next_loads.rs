//! The loads that next time chooses from: bar, plates, and what they are rounded to.
use super::read::{Fault, Object};
use domain::next::outing::Outing;
use domain::solve::loads::Loads;
use domain::solve::{Equipment, PairKind};
use domain::{Length, Mass, MassUnit};

/// The bar's unit, and the loads of bar and plates up to well over the heaviest of the past, of
/// which only whole steps of `round` count where it is given.
pub(super) fn loads(input: &Object<'_>, past: &[Outing]) -> Result<(MassUnit, Loads), Fault> {
    let (bar, unit) = input.need("bar")?.mass()?;
    let collars = input.get("collars").map(|v| v.mass()).transpose()?;
    let sleeve = input.get("sleeve").map(|v| v.length()).transpose()?;
    let mut plates = Vec::new();
    for value in input.need("plates")?.list()? {
        let plate = value.object()?;
        plate.only(&["mass", "pairs", "thickness", "diameter", "handling_s"])?;
        let handling = plate.get("handling_s");
        let handling = handling.map(|v| v.seconds(PairKind::HANDLING_LIMIT_NS));
        plates.push(PairKind {
            mass: plate.need("mass")?.mass()?.0,
            pairs: plate.need("pairs")?.count()?,
            thickness: match plate.get("thickness") {
                Some(value) => value.length()?.0,
                None => Length::ZERO,
            },
            diameter: Length::ZERO,
            // How long it takes decides no load.
            handling_ns: handling.transpose()?.unwrap_or_default(),
        });
    }
    let big_inside = input.get("big_inside").map(|v| v.flag()).transpose()?;
    let equipment = Equipment {
        bar_and_collars: bar + collars.map_or(Mass::ZERO, |(mass, _)| mass),
        sleeve: sleeve.map(|(length, _)| length),
        big_inside: big_inside.unwrap_or_default(),
        plates,
    };
    equipment.check()?;
    let heaviest = past
        .iter()
        .map(|outing| outing.load)
        .max()
        .unwrap_or_default();
    let plate = equipment.plates.iter().map(|plate| plate.mass).max();
    let quarter = Mass::from_ng(heaviest.ng() / 4);
    let most = heaviest + quarter + plate.unwrap_or_default().times(2);
    let round = input.get("round").map(|v| v.mass()).transpose()?;
    let step = round.map(|(mass, _)| mass);
    Ok((unit, Loads::new(&equipment, most)?.in_steps(step)))
}
