//! What back-offs follow where several top sets were lifted at different loads, and which stack a
//! group is loaded from once the group before it has moved.
use crate::fill::{Life, coached};
use crate::groups::{group, row, set, take, warm_up};
use crate::gym::kg;
use domain::day::groups::following;
use domain::prescription::{LoadWish, Role};
use domain::state::LiftRun;
use domain::{Command, LiftNo, Mass};

/// So many top sets at 160 kg and two groups of back-offs, up to the first top set.
fn warmed(tops: u8, shares: [u32; 2]) -> (Life, LiftNo) {
    let mut life = Life::new(coached());
    let back_off = |share| group(1, (5, Some(5)), LoadWish::OfTop(share), Role::BackOff);
    let groups = [
        group(tops, (5, Some(5)), LoadWish::Mass(kg(160)), Role::Top),
        back_off(shares[0]),
        back_off(shares[1]),
    ];
    take(&mut life, row(0, &groups));
    let sheet = life.entries(0).remove(0).outcome.expect("a sheet");
    life.obey(Command::BeginLift(Box::new(sheet)));
    let no = *life.state.lifts.keys().next_back().expect("begun");
    warm_up(&mut life, no);
    (life, no)
}

/// The loads that the back-offs follow to after top sets at `loads`.
fn followed(loads: [i64; 2]) -> Vec<Mass> {
    let (mut life, no) = warmed(2, [9_000, 5_000]);
    set(&mut life, no, 5);
    set(&mut life, no, 5);
    let mut run = life.state.lifts[&no].clone();
    let first = run.sheet.groups[0].rungs().start;
    for (at, load) in (first..).zip(loads) {
        run.sheet.rungs[at].load = kg(load);
    }
    let sets = following(&life.gym, &run);
    sets.iter().map(|settled| settled.load).collect()
}

/// By hand: 90 % of 200 kg are 180 kg and half of it 100 kg, whichever set had them.
#[test]
fn back_offs_follow_the_heaviest_of_several_top_sets() {
    assert_eq!(followed([200, 180]), [180, 100].map(kg));
    assert_eq!(followed([180, 200]), [180, 100].map(kg));
}

/// With the first back-off at its new load already.
fn first_moved(run: &LiftRun, to: &domain::settled::Settled) -> LiftRun {
    let mut run = run.clone();
    for at in run.sheet.groups[1].rungs() {
        run.sheet.rungs[at].load = to.load;
        run.sheet.rungs[at].per_side.clone_from(&to.per_side);
    }
    run
}

/// Whether both groups are moved in one go or one after the other, the second is loaded from the
/// stack on which the first one was really done.
#[test]
fn a_group_is_loaded_from_where_the_group_before_it_has_moved_to() {
    let (mut both, mut elsewhere) = (0, 0);
    for shares in [
        [9_000, 7_000],
        [8_500, 8_000],
        [7_500, 9_500],
        [6_000, 5_000],
    ] {
        let (mut life, no) = warmed(1, shares);
        set(&mut life, no, 5);
        for top in 100..240 {
            let mut run = life.state.lifts[&no].clone();
            let first = run.sheet.groups[0].rungs().start;
            run.sheet.rungs[first].load = kg(top);
            let sets = following(&life.gym, &run);
            let [one, two] = sets.as_slice() else {
                continue;
            };
            both += 1;
            let after = following(&life.gym, &first_moved(&run, one));
            assert_eq!(
                after.as_slice(),
                std::slice::from_ref(two),
                "top {top}, {shares:?}"
            );
            // Loaded from where the first group stood before, it would be another stack.
            let mut stood = run.clone();
            stood.sheet.groups.remove(1);
            let alone = following(&life.gym, &stood);
            let alone = alone.first().expect("it moves alone too");
            elsewhere += usize::from(alone.per_side != two.per_side);
        }
    }
    assert!(both > 100, "{both}");
    assert!(elsewhere > 0, "no load tells the two stacks apart");
}
