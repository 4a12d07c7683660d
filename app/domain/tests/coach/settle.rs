//! The work load settled on the day: what is offered, what a choice changes, what is refused.
use crate::fill::{Life, coached, date};
use crate::gym::{kg, plate};
use domain::decide::Refusal;
use domain::event::{Hold, LiftNo};
use domain::ladder::equipment;
use domain::rotation::{ask, station_of};
use domain::settle::{CHOICES_LEAST, CHOICES_MAX, Choices, FALL_MOST, Settled, choices};
use domain::sheet::RungKind;
use domain::solve::loads::Loads;
use domain::solve::rotation::{Effort, plan};
use domain::{Command, LiftRun, Mass, MassUnit, Moment, Plate, PlateFace, State, decide};
use proptest::prelude::*;

const NO: LiftNo = LiftNo(1);

/// Ines has begun a deadlift of `sets` fives and done its warm-ups.
fn warmed_up(load: Mass, sets: u8) -> Life {
    let mut life = Life::new(coached());
    // So much that no load of these tests looks wrong beside it.
    life.gym.lifters[0].bests.push(("deadlift".into(), kg(400)));
    plan_of(&mut life, 0, load, sets);
    begin(&mut life, 0);
    warm_up(&mut life, NO);
    life
}

fn plan_of(life: &mut Life, days: u64, load: Mass, sets: u8) {
    life.plan(days, "deadlift", 100);
    let rows = life.state.plan.values_mut().next_back().expect("planned");
    rows[0].first.load = domain::prescription::LoadWish::Mass(load);
    rows[0].first.sets = sets;
    let rows = rows.clone();
    life.obey(Command::TakePlan {
        name: "again.csv".into(),
        rows,
    });
}

fn begin(life: &mut Life, days: u64) {
    let sheet = life.entries(days)[0].outcome.clone().expect("a sheet");
    life.obey(Command::BeginLift(Box::new(sheet)));
}

fn warm_up(life: &mut Life, no: LiftNo) {
    while let Some(rung) = life.state.lifts[&no].next_rung() {
        let asked = &life.state.lifts[&no].sheet.rungs[rung];
        if asked.kind == RungKind::Work {
            break;
        }
        enter(life, no, rung, asked.reps);
    }
}

fn enter(life: &mut Life, no: LiftNo, rung: usize, reps: u8) {
    life.obey(Command::EnterSet {
        no,
        rung,
        reps,
        hold: Hold::Kept,
        holds: None,
    });
}

fn offered(life: &Life) -> Option<Choices> {
    choices(&life.gym, &life.state, &life.state.lifts[&NO])
}

fn settle(settled: &Settled) -> Command {
    Command::SettleLoad {
        no: NO,
        settled: settled.clone(),
    }
}

fn loads(choices: &Choices) -> Vec<i64> {
    let grams = Mass::of(MassUnit::Kg, 100).ng();
    choices.loads.iter().map(|s| s.load.ng() / grams).collect()
}

fn works(run: &LiftRun) -> Vec<Mass> {
    let works = run.sheet.rungs.iter().filter(|r| r.kind == RungKind::Work);
    works.map(|rung| rung.load).collect()
}

#[test]
fn five_loads_a_step_apart_with_the_plan_in_the_middle() {
    let life = warmed_up(kg(140), 1);
    let found = offered(&life).expect("choices");
    // 2.5 % of 140 kg is 3.5 kg; the plates make every 2.5 kg, and 135 kg is one pair quicker
    // from the last warm-up's 125 kg than 137.5 kg.
    assert_eq!(loads(&found), [1_325, 1_350, 1_400, 1_425, 1_475]);
    assert_eq!((found.planned, found.last), (kg(140), None));
}

#[test]
fn the_last_time_s_load_is_among_them() {
    let mut life = Life::new(coached());
    plan_of(&mut life, 0, kg(135), 1);
    life.lift(0, |_, reps| (reps, Hold::Kept));
    plan_of(&mut life, 7, kg(140), 1);
    begin(&mut life, 7);
    let no = LiftNo(2);
    warm_up(&mut life, no);
    let found = choices(&life.gym, &life.state, &life.state.lifts[&no]).expect("choices");
    assert_eq!(loads(&found), [1_300, 1_350, 1_375, 1_400, 1_450]);
    assert_eq!(found.last.expect("a last time").load, kg(135));
}

#[test]
fn only_between_the_last_warm_up_and_the_first_work_set() {
    let mut life = Life::new(coached());
    plan_of(&mut life, 0, kg(140), 2);
    begin(&mut life, 0);
    assert_eq!(offered(&life), None);
    warm_up(&mut life, NO);
    let found = offered(&life).expect("choices");
    let heavier = found.loads.last().expect("some").clone();
    enter(&mut life, NO, found.rung, 5);
    assert_eq!(offered(&life), None);
    let refused = decide(&life.state, settle(&heavier), Moment(9));
    assert_eq!(refused, Err(Refusal::NotTheTimeToSettle));
    life.obey(Command::Undo(NO));
    life.obey(settle(&heavier));
    assert_eq!(offered(&life), None);
    let refused = decide(&life.state, settle(&heavier), Moment(9)).expect_err("once");
    assert_eq!(
        refused.to_string(),
        "the load is settled once, between the last warm-up and the first work set; undo to come \
         back there"
    );
}

#[test]
fn a_choice_gives_all_work_sets_its_load_and_undo_takes_it_back() {
    let mut life = warmed_up(kg(140), 3);
    let before = life.state.clone();
    let found = offered(&life).expect("choices");
    let lighter = found.loads[0].clone();
    life.obey(settle(&lighter));
    let run = &life.state.lifts[&NO];
    assert_eq!(works(run), [lighter.load; 3]);
    let rungs = &run.sheet.rungs[found.rung..];
    assert!(rungs.iter().all(|rung| rung.per_side == lighter.per_side));
    assert!(rungs[1].take_off.is_empty() && rungs[1].put_on.is_empty());
    assert_eq!(&State::replay(&life.events), &life.state);
    enter(&mut life, NO, found.rung, 5);
    life.obey(Command::Undo(NO));
    life.obey(Command::Undo(NO));
    assert_eq!(life.state.lifts, before.lifts);
}

#[test]
fn a_nonsense_load_is_refused_with_its_limit() {
    let life = warmed_up(kg(140), 1);
    let mut settled = offered(&life).expect("choices").loads[0].clone();
    settled.load = kg(1_001);
    let told = decide(&life.state, settle(&settled), Moment(0)).expect_err("too much");
    assert_eq!(
        told.to_string(),
        "1001 kg is out of range; rule from more than nothing to 1000 kg"
    );
    settled.load = Mass::ZERO;
    assert!(decide(&life.state, settle(&settled), Moment(0)).is_err());
}

#[test]
fn the_next_load_follows_from_what_was_chosen() {
    let mut life = warmed_up(kg(140), 1);
    let found = offered(&life).expect("choices");
    life.obey(settle(found.loads.last().expect("some")));
    enter(&mut life, NO, found.rung, 5);
    let run = &life.state.lifts[&NO];
    let decided = domain::next::here::decided(&life.gym, &life.state, run).expect("decided");
    assert_eq!(decided.decision.from, Mass::of(MassUnit::Kg, 147_500));
    assert!(decided.decision.load > decided.decision.from);
}

/// Turns that were called for the lift are called with the new stacks, before and after.
#[test]
fn the_turns_called_follow_the_choice() {
    let mut life = warmed_up(kg(140), 2);
    let station = station_of(&life.state.lifts[&NO]);
    let call = |life: &mut Life| {
        let asked = ask(&life.gym, &life.state, &station, date(0), Moment(0), None);
        let asked = asked.expect("a rotation");
        let mut go_on = || true;
        let effort = Effort {
            states: 10_000,
            go_on: &mut go_on,
        };
        let turns = asked.turns(&plan(&asked.problem, effort).expect("planned"));
        life.obey(Command::CallRotation {
            station: station.clone(),
            turns,
        });
    };
    call(&mut life);
    let stacks = |life: &Life| {
        let run = &life.state.lifts[&NO];
        let rungs = run.next_rung().expect("under way")..run.sheet.rungs.len();
        rungs
            .map(|at| life.state.stack(run, at).to_vec())
            .collect::<Vec<_>>()
    };
    let own = |life: &Life| {
        let rungs = &life.state.lifts[&NO].sheet.rungs;
        let work = rungs.iter().filter(|rung| rung.kind == RungKind::Work);
        work.map(|rung| rung.per_side.clone()).collect::<Vec<_>>()
    };
    let before = own(&life);
    let chosen = offered(&life).expect("choices").loads[0].clone();
    life.obey(settle(&chosen));
    assert_eq!(stacks(&life), [chosen.per_side.clone(), chosen.per_side]);
    call(&mut life);
    life.obey(Command::Undo(NO));
    assert_eq!(stacks(&life), before);
}

/// What can be loaded from a fifth under the plan to a tenth over it, one load after the other.
fn within_reason(all: &Loads, planned: Mass, most: i64) -> Vec<Mass> {
    let least = planned.ng() - planned.ng() / 10_000 * i64::from(FALL_MOST);
    let mut near = Vec::new();
    let mut from = Mass::from_ng(least);
    while let Some(load) = all.at_least(from).filter(|load| load.ng() <= most) {
        near.push(load);
        from = load + Mass::from_ng(1);
    }
    near
}

fn enough(found: &Choices, all: &Loads, most: i64) -> Result<(), TestCaseError> {
    let near = within_reason(all, found.planned, most);
    let least = near.len().min(CHOICES_LEAST);
    prop_assert!(
        (least..=CHOICES_MAX).contains(&found.loads.len()),
        "{:?} of {:?}",
        loads(found),
        near
    );
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    /// Whatever the plan: a few distinct loads that these plates make as the gym stacks them, the
    /// plan among them, none over a tenth above it, and one on each side where there is any.
    #[test]
    fn what_is_offered_can_be_loaded(grams in 20_000..320_000_i64, sets in 1..4_u8) {
        // The gym's plates make steps of ten kilograms.
        let life = warmed_up(Mass::of(MassUnit::Kg, grams / 10_000 * 10_000), sets);
        let run = &life.state.lifts[&NO];
        let Some(found) = offered(&life) else { return Ok(()) };
        prop_assert!((2..=CHOICES_MAX).contains(&found.loads.len()));
        prop_assert!(found.loads.windows(2).all(|two| two[0].load < two[1].load));
        prop_assert!(found.loads.iter().any(|s| s.load == found.planned));
        let bar = life.gym.bars.iter().find(|b| b.name == run.sheet.bar.name).expect("the bar");
        let set = &life.gym.plate_sets[0];
        let equipment = equipment(bar, set);
        let place = |face: &PlateFace| set.plates.iter().position(|p| p.face == *face).expect("a plate");
        let most = found.planned.ng() / 10 * 11;
        for settled in &found.loads {
            let stack: Vec<usize> = settled.per_side.iter().map(place).collect();
            prop_assert_eq!(equipment.load(&stack), settled.load);
            prop_assert_eq!(equipment.broken_by(&stack), None);
            prop_assert!(settled.load.ng() <= most);
        }
        let all = Loads::new(&equipment, Mass::from_ng(most)).expect("few plates");
        let barely = Mass::from_ng(1);
        let below = all.at_most(found.planned - barely).is_some();
        let above = all.at_least(found.planned + barely).is_some();
        prop_assert_eq!(found.loads.iter().any(|s| s.load < found.planned), below);
        prop_assert_eq!(found.loads.iter().any(|s| s.load > found.planned), above);
        enough(&found, &all, most)?;
    }

    /// Whatever plates a gym has, be they coarse: three to five loads where three can be made
    /// within reason.
    #[test]
    fn three_are_offered_where_the_gym_can_load_three(
        grams in 20_000..320_000_i64,
        kinds in proptest::collection::btree_map(1_i64..50, 1_u16..4, 1..5),
    ) {
        let mut gym = coached();
        gym.plate_sets[0].plates = kinds
            .iter()
            .map(|(half_kilos, pairs)| Plate {
                pairs: *pairs,
                face: PlateFace {
                    mass: Mass::of(MassUnit::Kg, half_kilos * 500),
                    ..plate(1, 450).face
                },
                ..plate(1, 450)
            })
            .collect();
        let mut life = Life::new(gym);
        plan_of(&mut life, 0, Mass::of(MassUnit::Kg, grams), 1);
        let Some(Ok(_)) = life.entries(0).first().map(|e| e.outcome.clone()) else {
            return Ok(());
        };
        begin(&mut life, 0);
        warm_up(&mut life, NO);
        let run = &life.state.lifts[&NO];
        let bar = life.gym.bars.iter().find(|b| b.name == run.sheet.bar.name).expect("the bar");
        let work = run.sheet.rungs.last().expect("rungs").load;
        let most = work.ng() / 10 * 11;
        let all = Loads::new(&equipment(bar, &life.gym.plate_sets[0]), Mass::from_ng(most));
        let all = all.expect("few plates");
        match offered(&life) {
            Some(found) => enough(&found, &all, most)?,
            None => {
                let near = within_reason(&all, work, most);
                prop_assert!(near.len() <= 1, "nothing is offered, of {:?}", near);
            }
        }
    }
}
