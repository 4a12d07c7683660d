//! The order of rounds: against the rule written anew, against every permutation, by hand.
use domain::meet_order::{Claim, Listed, order, reckoned, spread};
use domain::{Mass, MassUnit};
use proptest::prelude::*;

fn kg(kg: i64) -> Mass {
    Mass::of(MassUnit::Kg, kg * 1_000)
}

/// The rule as a sentence: the lighter one; of two alike the lower lot, and whoever has a lot
/// before whoever has none; else whoever came first before. IPF Technical Rules ("lowest lot number
/// first"), from memory.
fn goes_first(a: &Claim, b: &Claim) -> bool {
    if a.load != b.load {
        return a.load < b.load;
    }
    match (a.lot, b.lot) {
        (Some(mine), Some(other)) if mine != other => mine < other,
        (Some(_), None) => true,
        (None, Some(_)) => false,
        _ => a.place < b.place,
    }
}

/// Few weights and few lots, so that many are alike.
fn any_claims(most: usize) -> impl Strategy<Value = Vec<Claim>> {
    let one = (80..84_i64, prop::option::of(1..5_u16));
    prop::collection::vec(one, 0..most).prop_map(|all| {
        let claim = |(place, (load, lot))| Claim {
            load: kg(load),
            lot,
            place,
        };
        all.into_iter().enumerate().map(claim).collect()
    })
}

fn permutations(count: usize) -> Vec<Vec<usize>> {
    (0..count).fold(vec![Vec::new()], |all, next| {
        let with = |before: &Vec<usize>| {
            let before = before.clone();
            (0..=before.len()).map(move |at| {
                let mut one = before.clone();
                one.insert(at, next);
                one
            })
        };
        all.iter().flat_map(with).collect()
    })
}

/// Five of one flight, by hand: 100 kg before 102.5 kg whatever the lots; at 100 kg lot 3 before
/// lot 11, no lot after both.
#[test]
fn lighter_first_then_the_lower_lot() {
    let claim = |load, lot, place| Claim {
        load: Mass::of(MassUnit::Kg, load),
        lot,
        place,
    };
    let flight = [
        claim(102_500, Some(1), 0),
        claim(100_000, None, 1),
        claim(100_000, Some(11), 2),
        claim(100_000, Some(3), 3),
        claim(97_500, Some(20), 4),
    ];
    assert_eq!(order(&flight), [4, 3, 2, 1, 0]);
    // Two with the same lot, and two with none: as they came before.
    let alike = [
        claim(100_000, Some(7), 1),
        claim(100_000, Some(7), 0),
        claim(100_000, None, 3),
        claim(100_000, None, 2),
    ];
    assert_eq!(order(&alike), [1, 0, 3, 2]);
}

proptest! {
    /// Everybody has as many before them as go first by the rule.
    #[test]
    fn everybody_has_before_them_who_goes_first(claims in any_claims(40)) {
        let order = order(&claims);
        prop_assert_eq!(order.len(), claims.len());
        for (place, at) in order.iter().enumerate() {
            let first = claims.iter().filter(|other| goes_first(other, &claims[*at])).count();
            prop_assert_eq!(first, place);
        }
    }

    /// Of all permutations one alone obeys the rule, and that is it.
    #[test]
    fn no_other_permutation_obeys(claims in any_claims(7)) {
        let obeys = |one: &Vec<usize>| {
            one.windows(2).all(|two| goes_first(&claims[two[0]], &claims[two[1]]))
        };
        let mut all = permutations(claims.len());
        all.retain(obeys);
        prop_assert_eq!(all, vec![order(&claims)]);
    }

    /// Whoever declares more never comes sooner, and nobody else changes places with another.
    #[test]
    fn more_never_comes_sooner(
        claims in any_claims(20),
        at in 0..20_usize,
        more in 0..5_i64,
    ) {
        prop_assume!(at < claims.len());
        let before = order(&claims);
        let mut raised = claims;
        raised[at].load = raised[at].load + kg(more);
        let after = order(&raised);
        let place = |order: &[usize]| order.iter().position(|one| *one == at);
        prop_assert!(place(&after) >= place(&before));
        let others = |order: &[usize]| -> Vec<usize> {
            order.iter().copied().filter(|one| *one != at).collect()
        };
        prop_assert_eq!(others(&before), others(&after));
    }

    /// A list as the table reads it out keeps its order whatever is reckoned, and what was told
    /// stays to the gram.
    #[test]
    fn a_list_keeps_its_order(
        mut told in prop::collection::vec((60..200_i64, prop::option::of(1..9_u16)), 1..8),
        gaps in prop::collection::vec(0..6_usize, 8),
    ) {
        told.sort_by_key(|(load, lot)| (*load, lot.unwrap_or(u16::MAX)));
        let mut list: Vec<Listed> = Vec::new();
        for ((load, lot), gap) in told.iter().zip(&gaps) {
            list.extend((0..*gap).map(|_| None));
            list.push(Some((kg(*load), *lot)));
        }
        list.extend((0..gaps[7]).map(|_| None));
        let all = reckoned(&list);
        let claims = all.iter().enumerate();
        let claims: Vec<Claim> = claims
            .map(|(place, (load, lot))| Claim { load: *load, lot: *lot, place })
            .collect();
        prop_assert_eq!(order(&claims), (0..list.len()).collect::<Vec<_>>());
        for (listed, reckoned) in list.iter().zip(&all) {
            if let Some(told) = listed {
                prop_assert_eq!(told, reckoned);
            }
            prop_assert!(reckoned.0 > Mass::ZERO);
        }
    }
}

/// Three unknown between 100 and 140 kg, one before and one after: 110, 120, 130; halfway from
/// three quarters of 100, and to five quarters of 140.
#[test]
fn unknown_openers_stand_evenly_between_their_neighbours() {
    let told = |load| Some((kg(load), None));
    let list = [None, told(100), None, None, None, told(140), None];
    let loads: Vec<String> = reckoned(&list)
        .iter()
        .map(|(load, _)| load.number(MassUnit::Kg))
        .collect();
    assert_eq!(loads, ["87.5", "100", "110", "120", "130", "140", "157.5"]);
    assert_eq!(reckoned(&[None, None]), [(Mass::ZERO, None); 2]);
    assert_eq!(reckoned(&[]), []);
}

/// A list that contradicts its own weights: the lighter one of those told has the earlier of their
/// places.
#[test]
fn a_list_against_its_own_weights_is_put_right() {
    let told = |load| Some((kg(load), None));
    let all = reckoned(&[told(140), None, told(100)]);
    assert_eq!([all[0].0, all[2].0], [kg(100), kg(140)]);
    assert_eq!(all[1].0, kg(120));
}

/// All ways in which so many others can stand among ours are alike: the mean of those below each of
/// ours, counted one after the other, is what is reckoned, rounded down.
#[test]
fn where_only_the_number_is_known_the_mean_of_all_ways_counts() {
    for ours in 1..=4_usize {
        for others in 0..=6_usize {
            let (mut ways, mut below) = (0, vec![0; ours]);
            for way in 0..1_u32 << (ours + others) {
                if way.count_ones() as usize != ours {
                    continue;
                }
                ways += 1;
                let places = (0..ours + others).filter(|at| way >> at & 1 == 1);
                for (rank, place) in places.enumerate() {
                    below[rank] += place - rank;
                }
            }
            let told: Vec<(Mass, Option<u16>)> =
                (0..ours).map(|n| (kg(100 + 10 * n as i64), None)).collect();
            let list = spread(&told, u16::try_from(others).expect("few"));
            assert_eq!(list.len(), ours + others);
            let places = list.iter().enumerate().filter(|(_, one)| one.is_some());
            for (rank, (place, _)) in places.enumerate() {
                assert_eq!(
                    place - rank,
                    below[rank] / ways,
                    "{ours} of ours, {others} others"
                );
            }
        }
    }
}
