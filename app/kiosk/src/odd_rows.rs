//! Rows of a plan that look wrong beside the record, told by name before the plan is taken.
//!
//! Decides nothing: at the rack such a load waits for the coach's word.
use domain::planned_odd::odd_row;
use domain::plausible::Odd;
use domain::{Gym, Mass, MassUnit, Prescription, State};
use plan::{Fault, Weight, words};
use std::collections::BTreeMap;
use text::keys::checked as k;

/// The first row of a kind, its load, what is odd of it, and how many rows there are.
type Line<'r> = (&'r Prescription, Option<Mass>, Odd, usize);

/// One line for each lifter's lift and what is odd of it: its first day, and how many more there
/// are.
#[must_use]
pub fn odd_rows(file: &str, gym: &Gym, state: &State, rows: &[Prescription]) -> Vec<Fault> {
    let mut found: BTreeMap<(&str, &str, u8), Line<'_>> = BTreeMap::new();
    for row in rows {
        let Some((load, odd)) = odd_row(gym, state, row) else {
            continue;
        };
        let kind = match odd {
            Odd::Over(_) => 0,
            Odd::Untried => 1,
            Odd::Reps(_) => 2,
            Odd::OtherUnit(_) => 3,
        };
        let key = (row.lifter.as_str(), row.lift.as_str(), kind);
        let line = found.entry(key).or_insert((row, load, odd, 0));
        line.3 += 1;
    }
    let told = found.into_values();
    told.map(|(row, load, odd, days)| {
        let lifter = gym.lifters.iter().find(|known| known.name == row.lifter);
        let unit = lifter.map_or(MassUnit::Kg, |lifter| lifter.unit);
        fault(file, (row, days), load, (odd, unit))
    })
    .collect()
}

fn fault(
    file: &str,
    (row, days): (&Prescription, usize),
    load: Option<Mass>,
    (odd, unit): (Odd, MassUnit),
) -> Fault {
    let of = format!("{}, {}, {}", row.lifter, row.date, row.lift);
    let load = load.map(|load| load.words(unit)).unwrap_or_default();
    let waits = || words!(k::CHECK_IT_AT_THE_RACK);
    let (read, right) = match odd {
        Odd::Over(supports) => {
            let supports = supports.words(unit);
            let read = words!(k::WHERE_THE_RECORD_SUPPORTS, of, load, supports);
            (read, words!(k::CHECK_THE_LOAD_AND_ITS))
        }
        Odd::Untried => {
            let read = words!(k::WHERE_NOTHING_IS_RECORDED_THAT, of, load);
            (read, words!(k::CHECK_IT_OR_WRITE_A))
        }
        Odd::Reps(reps) => (words!(k::REPS_OF_WORK, of, reps), waits()),
        Odd::OtherUnit(supports) => {
            let supports = supports.words(unit);
            let read = words!(k::LIGHT_AND_ROUND_IN_THE, of, load, supports);
            (read, words!(k::CHECK_THE_UNIT))
        }
    };
    let read = match days {
        1 => read,
        _ => words!(k::AND_MORE_LIKE_IT, read, days - 1),
    };
    Fault {
        weight: Weight::Odd,
        ..Fault::of_file(file, read, right)
    }
}
