//! The edges of what looks wrong beside the record.
use crate::fill::{Life, coached, date};
use crate::groups::{group, row, take};
use crate::gym::kg;
use domain::day::NoSheet;
use domain::event::Hold;
use domain::planned_odd::odd_row;
use domain::plausible::{Odd, REPS_MAX, UNTRIED_MAX, odd, supports};
use domain::prescription::{LoadWish, Role, SetGroup};
use domain::{Gym, Mass, MassUnit, Prescription, State};
use proptest::prelude::*;

fn ng(ng: i64) -> Mass {
    Mass::from_ng(ng)
}

fn lb(lb: i64) -> Mass {
    Mass::of(MassUnit::Lb, lb * 1_000)
}

/// A gym whose lifter has these bests and no others.
fn with(bests: &[(&str, Mass)]) -> Gym {
    let mut gym = coached();
    let own = bests
        .iter()
        .map(|(lift, best)| (String::from(*lift), *best));
    gym.lifters[0].bests = own.collect();
    gym
}

fn looks(gym: &Gym, lift: &str, (reps, load): (u8, Mass)) -> Option<Odd> {
    let state = State::default();
    odd((gym, &state), &gym.lifters[0], lift, (reps, load), date(0))
}

fn at_rack(gym: Gym, groups: &[SetGroup]) -> Option<(Mass, Odd)> {
    let mut life = Life::new(gym);
    take(&mut life, row(0, groups));
    match life.entries(0).remove(0).outcome {
        Err(NoSheet::LooksWrong { load, odd, .. }) => Some((load, odd)),
        _ => None,
    }
}

fn work(load: Mass) -> SetGroup {
    group(1, (5, Some(5)), LoadWish::Mass(load), Role::Work)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]
    /// Exactly 110 % is no fault, a nanogram more is, in either unit and up to ten reps.
    #[test]
    fn a_tenth_over_the_best_is_the_edge(
        tens in 3_i64..40, pounds in any::<bool>(), reps in 1_u8..11,
    ) {
        let best = if pounds { lb(tens * 10) } else { kg(tens * 10) };
        let gym = with(&[("rack pull", best)]);
        let edge = ng(best.ng() / 10 * 11);
        prop_assert_eq!(looks(&gym, "rack pull", (reps, edge)), None);
        let over = Some(Odd::Over(best));
        prop_assert_eq!(looks(&gym, "rack pull", (reps, edge + ng(1))), over);
    }

    /// The unit of a best is of no account, and that of a lifter neither.
    #[test]
    fn a_best_of_another_unit_is_a_mass_as_any(grams in 30_000_i64..400_000, reps in 1_u8..20) {
        let best = Mass::of(MassUnit::Kg, grams);
        let mut gym = with(&[("rack pull", best)]);
        let state = State::default();
        let of = |gym: &Gym| supports((gym, &state), &gym.lifters[0], "rack pull", (reps, date(0)));
        let in_kilos = of(&gym);
        gym.lifters[0].unit = MassUnit::Lb;
        prop_assert_eq!(of(&gym), in_kilos);
        // More reps never support more.
        let more = supports((&gym, &state), &gym.lifters[0], "rack pull", (reps + 1, date(0)));
        prop_assert!(more <= in_kilos, "{more:?} {in_kilos:?}");
    }

    /// Without any record the edge is 225 lb, and nothing is said up to it.
    #[test]
    fn without_a_record_the_edge_is_a_mass(off in -50_000_000_000_i64..50_000_000_000) {
        let gym = with(&[]);
        let load = UNTRIED_MAX + ng(off);
        let told = looks(&gym, "rack pull", (5, load));
        prop_assert_eq!(told, (off > 0).then_some(Odd::Untried));
    }

    /// A lift that was never done has what its like support, a fast one half of it; its own record,
    /// however light, goes before.
    #[test]
    fn a_lift_never_done_has_what_its_like_support(tens in 10_i64..30) {
        let best = kg(tens * 10);
        let gym = with(&[("deadlift", best)]);
        for (lift, supports) in [("rack pull", best), ("power clean", ng(best.ng() / 2))] {
            let edge = ng(supports.ng() / 10 * 11);
            prop_assert_eq!(looks(&gym, lift, (3, edge)), None);
            let over = Some(Odd::Over(supports));
            prop_assert_eq!(looks(&gym, lift, (3, edge + ng(1))), over);
        }
        let gym = with(&[("power clean", best)]);
        prop_assert_eq!(looks(&gym, "deadlift", (3, kg(tens * 22))), None);
        let gym = with(&[("deadlift", best), ("rack pull", kg(50))]);
        let told = looks(&gym, "rack pull", (3, kg(60)));
        prop_assert_eq!(told, Some(Odd::Over(kg(50))));
    }
}

/// Who has a record of a lift of another family is no novice; of a squat it says nothing.
#[test]
fn a_lift_of_another_family_says_nothing() {
    let gym = with(&[("barbell squat", kg(60))]);
    assert_eq!(looks(&gym, "rack pull", (5, kg(300))), None);
    let gym = with(&[]);
    assert_eq!(looks(&gym, "rack pull", (5, kg(300))), Some(Odd::Untried));
}

/// What was lifted counts as what was written does: five at 150 kg support 150 kg for five, and by
/// Epley 150 x 35 / 40 kg for ten.
#[test]
fn one_set_with_the_back_held_is_a_record() {
    let mut life = Life::new(with(&[]));
    life.plan(0, "rack pull", 100);
    life.lift(0, |_, reps| (reps, Hold::Kept));
    let ines = &life.gym.lifters[0];
    let of = |reps| supports((&life.gym, &life.state), ines, "rack pull", (reps, date(1)));
    assert_eq!(of(5), Some(kg(100)));
    assert_eq!(of(10), Some(ng(kg(100).ng() * 35 / 40)));
    // A moved back is none.
    let mut life = Life::new(with(&[]));
    life.plan(0, "rack pull", 100);
    life.lift(0, |_, reps| (reps, Hold::MovedAt(1)));
    let ines = &life.gym.lifters[0];
    let held = supports((&life.gym, &life.state), ines, "rack pull", (5, date(1)));
    assert!(held < Some(kg(100)), "{held:?}");
}

/// A novice at a veteran's load, a back-off heavier than any record, and 20 sets of 50 wait for the
/// coach at the rack.
#[test]
fn what_looks_wrong_is_held_back_at_the_rack() {
    let none = || with(&[]);
    assert_eq!(at_rack(none(), &[work(kg(100))]), None);
    let novice = at_rack(none(), &[work(kg(180))]);
    assert_eq!(novice, Some((kg(180), Odd::Untried)));
    let later = [
        group(1, (5, Some(5)), LoadWish::Mass(kg(150)), Role::Top),
        group(2, (5, Some(5)), LoadWish::Mass(kg(240)), Role::BackOff),
    ];
    let odd = Odd::Over(kg(200));
    assert_eq!(at_rack(coached(), &later), Some((kg(240), odd)));
    let many = [group(
        20,
        (50, Some(50)),
        LoadWish::Mass(kg(60)),
        Role::Work,
    )];
    assert_eq!(at_rack(coached(), &many), Some((kg(60), Odd::Reps(1_000))));
    let edge = [group(
        10,
        (10, Some(10)),
        LoadWish::Mass(kg(60)),
        Role::Work,
    )];
    assert_eq!(u16::from(edge[0].sets) * 10, REPS_MAX);
    assert_eq!(at_rack(coached(), &edge), None);
}

/// 185 lb are 84 kg: beside a best of 200 kg somebody meant 185 kg. A light day in kilos is none.
#[test]
fn a_light_load_in_the_other_unit_is_told_and_not_held_back() {
    let gym = with(&[("rack pull", kg(200))]);
    let slip = Some(Odd::OtherUnit(kg(200)));
    assert_eq!(looks(&gym, "rack pull", (5, lb(185))), slip);
    assert_eq!(looks(&gym, "rack pull", (5, kg(84))), None);
    // 60 lb would be light in either unit.
    assert_eq!(looks(&gym, "rack pull", (5, lb(60))), None);
    assert_eq!(at_rack(gym.clone(), &[work(lb(185))]), None);
    let row = Prescription {
        ..row(0, &[work(lb(185))])
    };
    let told = odd_row(&gym, &State::default(), &row);
    assert_eq!(told, Some((Some(lb(185)), Odd::OtherUnit(kg(200)))));
}
