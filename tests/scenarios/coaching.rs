//! Programmes and rules at the desk: who follows which, from which day on, and the figures of next
//! time.
use crate::bench::{Bench, evening};
use crate::desk::{enter, rows, tap_like, tap_row, title, type_in};
use domain::next::Step;
use domain::{Mass, MassUnit};

#[test]
fn a_lifter_is_put_into_a_programme_and_at_a_day_of_its_queue() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let follows = |bench: &Bench, lifter: &str| {
        let gym = bench.gym();
        gym.coaching
            .of(lifter)
            .map(|programme| programme.name.clone())
    };
    assert_eq!(follows(&bench, "Ilkka"), None);
    enter(&bench, "4711");
    bench.tap("programmes");
    tap_like(&bench, "", "split pulls with snatch");
    tap_row(&bench, "does not follow it, Ilkka");
    assert_eq!(
        follows(&bench, "Ilkka").as_deref(),
        Some("split pulls with snatch")
    );
    // Into another: out of the first.
    bench.tap("back");
    tap_like(&bench, "2 days, split pulls", "pulls");
    tap_row(&bench, "does not follow it, Ilkka");
    assert_eq!(follows(&bench, "Ilkka").as_deref(), Some("split pulls"));
    for _ in 0..2 {
        bench.tap("back");
    }
    bench.tap("lifters");
    tap_like(&bench, "", ", Ilkka");
    tap_row(&bench, "programme, split pulls");
    tap_row(&bench, "comes next, other day");
    let gym = bench.gym();
    let programme = gym.coaching.of("Ilkka").expect("a programme");
    let [begin] = programme.begins.as_slice() else {
        panic!("{:?}: {}", programme.begins, bench.frame().notice)
    };
    assert_eq!((begin.lifter.as_str(), begin.day), ("Ilkka", 1));
    let shown = rows(&bench);
    assert!(shown.iter().any(|row| row.1 == "other day"), "{shown:?}");
    tap_row(&bench, "programme, none");
    assert_eq!(follows(&bench, "Ilkka"), None);
}

#[test]
fn the_figures_of_next_time_are_typed_for_one_lifter() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    enter(&bench, "4711");
    bench.tap("lifters");
    tap_like(&bench, "", ", Tevita");
    tap_row(&bench, "rule, when to go up or down");
    assert_eq!(title(&bench), "Tevita, rule");
    bench.tap("tries of a load, 2");
    type_in(&bench, "3");
    bench.tap("save");
    bench.tap("after all reps, back held: up by, 2.5 %");
    type_in(&bench, "5");
    bench.tap("save");
    let rule = bench.gym().coaching.rule("Tevita", "rack pull");
    assert_eq!(rule.tries, 3, "{}", bench.frame().notice);
    // Typed in the lifter's unit.
    assert_eq!(rule.step, Step::Mass(Mass::of(MassUnit::Lb, 5_000)));
    let others = bench.gym().coaching.rule("Hamza", "rack pull");
    assert_eq!(others.tries, 2);
    // A figure beyond its bounds is refused whole.
    bench.tap("then down by, 5 %");
    type_in(&bench, "90");
    bench.tap("save");
    assert!(!bench.frame().notice.is_empty());
    assert_eq!(bench.gym().coaching.rule("Tevita", "rack pull").drop, 500);
}
