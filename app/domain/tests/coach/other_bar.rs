//! A prescription that names another bar than the lift's own: what is due is made of that bar.
use crate::fill::{Life, coached, date};
use crate::groups::{group, row, sheet, take};
use crate::gym::kg;
use domain::event::Hold;
use domain::ladder::equipment;
use domain::next::here::all_due;
use domain::next::{Verdict, Why};
use domain::prescription::{LoadWish, Role};
use domain::sheet::{LiftSheet, Warning};
use domain::solve::loads::Loads;
use domain::{Command, Gym, Mass, MassUnit, Prescription};

/// A bar of 27 kg beside those of 20: on it nothing is a whole 2.5 kg.
fn with_frame() -> Gym {
    let mut gym = coached();
    let mut frame = gym.bars[0].clone();
    (frame.name, frame.mass) = ("hexagonal bar".into(), kg(27));
    gym.bars.push(frame);
    gym
}

fn on(days: u64, bar: Option<&str>, load: LoadWish) -> Prescription {
    Prescription {
        bar: bar.map(String::from),
        ..row(days, &[group(2, (5, Some(5)), load, Role::Work)])
    }
}

fn tenths(tenths: i64) -> Mass {
    Mass::of(MassUnit::Kg, tenths * 100)
}

/// What the rack shows on a day, and what the rules say is due there.
fn shown(life: &Life, days: u64) -> (LiftSheet, Mass, Mass) {
    let sheet = sheet(life, days);
    let work = sheet.rungs[sheet.main_rungs().start].load;
    let entry = life.entries(days).remove(0);
    (sheet, work, entry.next.expect("due").decision.load)
}

/// By hand, plates that make every 2.5 kg over the bar: 150 kg on the usual bar, done well, are
/// 152.5 kg next. Over 27 kg there are 152 and 154.5 kg: 152 is the nearest above 150.
#[test]
fn what_is_due_is_made_of_the_bar_that_the_row_names() {
    let mut life = Life::new(with_frame());
    take(&mut life, on(0, None, LoadWish::Mass(kg(150))));
    life.lift(0, |_, reps| (reps, Hold::Kept));
    for load in [LoadWish::Due, LoadWish::Mass(kg(152))] {
        take(&mut life, on(4, Some("hexagonal bar"), load));
        let (sheet, work, due) = shown(&life, 4);
        assert_eq!(sheet.bar.name, "hexagonal bar");
        assert_eq!((work, due), (kg(152), kg(152)));
        assert!(!sheet.warnings.contains(&Warning::NotLoadable), "{load:?}");
    }
    // And back on the usual bar nothing of it is left.
    take(&mut life, on(4, None, LoadWish::Due));
    assert_eq!(shown(&life, 4).1, tenths(1_525));
}

/// What follows from sets on that bar is a load of that bar too, on the coach's list as well.
#[test]
fn what_follows_is_made_of_the_bar_that_was_lifted() {
    let mut life = Life::new(with_frame());
    let bar = Some("hexagonal bar");
    take(&mut life, on(0, bar, LoadWish::Mass(kg(152))));
    life.lift(0, |_, reps| (reps, Hold::Kept));
    let lifter = &life.gym.lifters[0];
    let all = all_due(&life.gym, &life.state, lifter, date(4));
    let due = &all[0].due.decision;
    assert_eq!((due.verdict, due.why), (Verdict::Raise, Why::Well));
    let made = Loads::new(
        &equipment(&life.gym.bars[2], &life.gym.plate_sets[0]),
        kg(300),
    );
    assert_eq!(made.expect("few").nearest(due.load), Some(due.load));
    assert!(due.load > kg(152), "{:?}", due.load);
    let said = due.load;
    take(&mut life, on(4, bar, LoadWish::Due));
    assert_eq!(shown(&life, 4).1, said);
}

/// A season from bar to bar, as people swap them: whoever does it all is shown a load that can be
/// made, no lower than the last one by more than the bars' own steps, and comes up all the while.
#[test]
fn a_season_from_bar_to_bar_rises() {
    let mut life = Life::new(with_frame());
    let mut last = kg(120);
    for week in 0..30 {
        let day = week * 4;
        let bar = (week % 3 == 1).then_some("hexagonal bar");
        let load = if week == 0 {
            LoadWish::Mass(last)
        } else {
            LoadWish::Due
        };
        take(&mut life, on(day, bar, load));
        let sheet = sheet(&life, day);
        let work = sheet.rungs[sheet.main_rungs().start].load;
        assert!(!sheet.warnings.contains(&Warning::NotLoadable), "{week}");
        assert!(work >= last, "week {week}: {work:?} after {last:?}");
        last = work;
        life.lift(day, |_, reps| (reps, Hold::Kept));
    }
    assert!(last > kg(150), "{last:?}");
}

/// The coach's own word stands as it is, and the rack says that its nearest is shown.
#[test]
fn a_load_that_the_coach_ruled_is_not_rounded_away() {
    let mut life = Life::new(with_frame());
    take(&mut life, on(0, None, LoadWish::Mass(kg(150))));
    life.lift(0, |_, reps| (reps, Hold::Kept));
    let no = *life.state.lifts.keys().next().expect("a lift");
    life.obey(Command::OverrideNext {
        no,
        load: kg(160),
        note: "ready for it".into(),
    });
    take(&mut life, on(4, Some("hexagonal bar"), LoadWish::Due));
    let (sheet, work, due) = shown(&life, 4);
    assert_eq!(due, kg(160));
    assert_eq!(work, tenths(1_595));
    assert!(sheet.warnings.contains(&Warning::NotLoadable));
}
