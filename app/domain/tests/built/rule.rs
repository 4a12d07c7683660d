//! The coach's rule, held over every load of good gyms and over any gym at all.
use crate::gyms::{bar, kilos, mass, pounds};
use crate::{built, gyms};
use domain::gym::{Pattern, PatternStep};
use domain::ladder::{BuiltLadder, WorkSet, build, equipment, shipped_patterns};
use domain::sheet::RungKind;
use domain::solve::loads::Loads;
use domain::{Bar, Length, Mass, MassUnit, PlateSet, Rung};
use proptest::prelude::*;

const LEAST: Mass = Mass::of(MassUnit::Kg, 4_500);

/// What must hold whatever the gym.
pub(crate) fn check(
    ladder: &BuiltLadder,
    (work, pattern): (&WorkSet, &Pattern),
    (bar, plates): (&Bar, &PlateSet),
) {
    let bar_alone = bar.mass + bar.collars;
    let top = ladder.rungs.last().expect("a work set");
    let sets = usize::from(work.sets);
    let warm_ups = ladder.rungs.len() - sets;
    let mut on_bar = Vec::new();
    for (at, rung) in ladder.rungs.iter().enumerate() {
        for face in &rung.take_off {
            assert_eq!(on_bar.pop(), Some(*face));
        }
        on_bar.extend(&rung.put_on);
        assert_eq!(on_bar, rung.per_side);
        let side: Mass = on_bar.iter().map(|face| face.mass).sum();
        assert_eq!(rung.load, bar.mass + bar.collars + side + side);
        let long: Length = on_bar.iter().map(|face| face.thickness).sum();
        assert!(long <= bar.sleeve, "{rung:?}");
        let kind = if at < warm_ups {
            RungKind::WarmUp
        } else {
            RungKind::Work
        };
        assert_eq!(rung.kind, kind);
        for plate in &plates.plates {
            let used = on_bar.iter().filter(|face| **face == plate.face).count();
            let owned = plates.plates.iter().filter(|p| p.face == plate.face);
            let owned: usize = owned.map(|p| usize::from(p.pairs)).sum();
            assert!(used <= owned, "{rung:?}");
        }
        let rises = on_bar.windows(2).any(|pair| pair[0].mass < pair[1].mass);
        assert!(!(plates.big_inside && rises), "{rung:?}");
    }
    let heaviest = pattern
        .steps
        .iter()
        .map(|step| i64::from(step.share) / 10 + 1);
    let heaviest = heaviest.filter(|share| *share <= 1_000).max().unwrap_or(0);
    let last_most = Mass::from_ng(top.load.ng() / 1_000 * heaviest.max(930) + 1_000_000);
    let last = ladder.rungs[..warm_ups].last();
    assert!(
        last.is_none_or(|rung| rung.load <= last_most || rung.load == bar_alone),
        "{last:?}"
    );
    for pair in ladder.rungs[..=warm_ups].windows(2) {
        assert!(pair[1].load - pair[0].load >= LEAST, "{pair:#?}");
    }
    let equipment = equipment(bar, plates);
    let loads = Loads::new(&equipment, Mass::of(MassUnit::Kg, 2_000_000)).expect("few plates");
    assert_eq!(Some(top.load), loads.nearest(work.load));
    assert_eq!(ladder.off, top.load - work.load);
}

/// What a coach would not forgive in a gym with all usual plates; `None` when there is nothing.
fn fault(ladder: &BuiltLadder, bar: &Bar, pattern: &str) -> Option<&'static str> {
    let (work, warm_ups) = ladder.rungs.split_last().expect("a work set");
    let percent = |mass: Mass| mass.ng() / (work.load.ng() / 100);
    let mut before = bar.mass;
    for rung in &ladder.rungs {
        // Three tenths from the empty bar, then not much over a quarter, and a pair and a half of
        // the biggest plates at most.
        let longest = if before == bar.mass { 300 } else { 275 };
        let longest = Mass::from_ng(work.load.ng() / 1_000 * longest + 1_000_000);
        let jump = rung.load - before;
        let short = jump <= Mass::of(MassUnit::Kg, 10_000);
        if jump > Mass::of(MassUnit::Kg, 61_500) || (jump > longest && !short) {
            return Some("a silly jump");
        }
        before = rung.load;
    }
    let light = |rung: &Rung, least: Mass| {
        let small = |mass: Mass| mass < least && (mass + mass).times(18) < work.load;
        rung.per_side.iter().any(|face| small(face.mass))
    };
    let (last, early) = warm_ups.split_last()?;
    if early.iter().any(|rung| light(rung, LEAST)) || light(last, Mass::of(MassUnit::Lb, 5_000)) {
        return Some("small plates on a warm-up");
    }
    if warm_ups.windows(2).any(|pair| pair[1].reps > pair[0].reps) {
        return Some("more reps with more load");
    }
    if last.load == bar.mass {
        return None;
    }
    if last.reps != if pattern == "fives" { 5 } else { 1 } {
        return Some("the last warm-up has not the pattern's reps");
    }
    let off = (last.load - Mass::from_ng(work.load.ng() / 10 * 9))
        .ng()
        .abs();
    let far = percent(Mass::from_ng(off)) > 5 && off > 2 * LEAST.ng();
    far.then_some("the last warm-up is far from nine tenths")
}

#[test]
fn every_load_of_a_good_gym_is_built_as_the_rule_says() {
    let mut faults = Vec::new();
    for (bar, plates, first, step) in [
        (bar("20 kg"), kilos(), "20 kg", "2.5 kg"),
        (bar("15 kg"), kilos(), "15 kg", "2.5 kg"),
        (bar("45 lb"), pounds(), "45 lb", "5 lb"),
    ] {
        for n in 0..130 {
            let asked = mass(first) + mass(step).times(n);
            for pattern in ["fives", "5-3-2-1"] {
                let ladder = built(pattern, &bar, &plates, asked);
                let work = WorkSet {
                    load: asked,
                    sets: 1,
                    reps: 5,
                };
                let written = shipped_patterns().into_iter().find(|p| p.name == pattern);
                let written = written.expect("shipped");
                check(&ladder, (&work, &written), (&bar, &plates));
                if let Some(fault) = fault(&ladder, &bar, pattern) {
                    let asked = asked.words(plates.plates[0].face.unit);
                    faults.push(format!("{fault}: {}", gyms::shown(&asked, &ladder)));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

pub(crate) fn any_set() -> impl Strategy<Value = PlateSet> {
    let masses = [
        "25 kg", "20 kg", "15 kg", "10 kg", "5 kg", "2.5 kg", "1.25 kg", "0.5 kg", "45 lb",
        "35 lb", "25 lb", "10 lb", "5 lb", "2.5 lb", "24.93 kg", "10.07 kg",
    ];
    let plate = (prop::sample::select(masses.to_vec()), 0..5_u16, 5..60_i64);
    (prop::collection::vec(plate, 0..8), any::<bool>()).prop_map(|(plates, big_inside)| PlateSet {
        big_inside,
        ..gyms::set(&plates)
    })
}

pub(crate) fn any_pattern() -> impl Strategy<Value = Pattern> {
    let steps = prop::collection::vec((0..11_000_u32, 0..=50_u8), 0..12);
    (steps, any::<bool>()).prop_map(|(steps, warm)| Pattern {
        name: String::from("own"),
        steps: steps
            .into_iter()
            .map(|(share, reps)| PatternStep { share, reps })
            .collect(),
        already_warm: warm,
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]
    #[test]
    fn any_gym_and_pattern_give_a_rising_ladder(
        plates in any_set(),
        pattern in any_pattern(),
        grams in prop_oneof![0..400_000_i64, Just(0), Just(100_000_000)],
        sets in 1..4_u8,
    ) {
        let work = WorkSet { load: Mass::of(MassUnit::Kg, grams), sets, reps: 5 };
        let bar = bar("20 kg");
        let ladder = build(&work, &pattern, &bar, &plates);
        check(&ladder.expect("within limits"), (&work, &pattern), (&bar, &plates));
    }
}
