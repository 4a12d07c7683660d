//! What lies around the kiosk, read beside the owner's thread: whoever saves a plan while the desk
//! is open, deletes one that is shown, or keeps sixty of them there.
use kiosk::clock::BenchClock;
use kiosk::nearby::{Nearby, PlanRead};
use kiosk::{Folder, Kiosk};
use std::fs;
use std::path::Path;
use std::sync::Arc;
use view::list::ListRow;
use view::{Screen, Tap};

const HEADER: &str = "date,lifter,lift,sets,reps,load\n";

fn write(data: &Path, name: &str, rows: &str) {
    fs::create_dir_all(data.join("plans")).expect("a folder");
    fs::write(data.join("plans").join(name), format!("{HEADER}{rows}")).expect("writes");
}

fn kiosk(data: &Path) -> (Folder, Kiosk) {
    let folder = Folder::open(Some(data)).expect("opens");
    let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).and_then(|d| d.and_hms_opt(18, 0, 0));
    let clock = BenchClock::at(day.expect("an evening"));
    let kiosk = Kiosk::open(&folder, Box::new(clock)).expect("opens");
    (folder, kiosk)
}

fn read<'n>(near: &'n Nearby, name: &str) -> Option<&'n PlanRead> {
    let mut plans = near.plans();
    plans
        .find(|(found, _)| *found == name)
        .map(|(_, read)| read)
}

/// Only what has changed is read again, and everything where the gym has.
#[test]
fn what_has_not_changed_is_not_read_again() {
    let data = tempfile::tempdir().expect("a folder");
    let (folder, kiosk) = kiosk(data.path());
    write(
        data.path(),
        "a.csv",
        "2026-12-04,Hamza,rack pull,1,5,180 kg\n",
    );
    write(
        data.path(),
        "b.csv",
        "2026-12-05,Hamza,rack pull,1,5,180 kg\n",
    );
    let gym = kiosk.shared_gym();
    let first = Nearby::look(&folder, gym, &Nearby::default());
    let same = |now: &Nearby, then: &Nearby, name: &str| {
        let (now, then) = (
            read(now, name).expect("there"),
            read(then, name).expect("there"),
        );
        std::ptr::eq(now, then)
    };
    let second = Nearby::look(&folder, gym, &first);
    assert!(same(&second, &first, "a.csv") && same(&second, &first, "b.csv"));
    let more = "2026-12-04,Hamza,rack pull,1,5,180 kg\n2026-12-06,Hamza,deadlift,1,5,150 kg\n";
    write(data.path(), "a.csv", more);
    fs::remove_file(data.path().join("plans/b.csv")).expect("removed");
    let third = Nearby::look(&folder, gym, &second);
    assert_eq!(third.rows("a.csv").expect("a plan").len(), 2);
    let gone = third.rows("b.csv").expect_err("gone").to_string();
    assert_eq!(gone, "b.csv is not there any more; choose another");
    let mut other = (**gym).clone();
    other.lifters.retain(|lifter| lifter.name != "Hamza");
    let fourth = Nearby::look(&folder, &Arc::new(other), &third);
    assert!(fourth.rows("a.csv").is_err(), "nobody of that name");
}

fn rows(kiosk: &mut Kiosk) -> Vec<ListRow> {
    let screen = kiosk.frame().screen;
    let Screen::List(list) = screen else {
        panic!("a list is shown, not {screen:?}")
    };
    list.rows
}

fn tap_row(kiosk: &mut Kiosk, what: &str) {
    let all = rows(kiosk);
    let is = |row: &ListRow| row.title.contains(what) || row.value.contains(what);
    let at = all.iter().position(is);
    kiosk.tap(&Tap::Row(at.unwrap_or_else(|| panic!("{what}: {all:?}"))));
}

/// The desk's plans, without a code at its door so far.
fn to_plans(kiosk: &mut Kiosk) {
    kiosk.tap(&Tap::Panel);
    tap_row(kiosk, "coach's desk");
    // The first digits are typed twice.
    for digit in [4, 7, 1, 1].repeat(2) {
        kiosk.tap(&Tap::Number(digit));
    }
    tap_row(kiosk, "plans");
}

/// What is shown is what is taken, also when the file has gone since; before it was told, a kiosk
/// whose thread looks shows nothing and asks no disk.
#[test]
fn a_kiosk_that_is_told_reads_no_file_at_a_tap() {
    let data = tempfile::tempdir().expect("a folder");
    let (folder, mut kiosk) = kiosk(data.path());
    write(
        data.path(),
        "week.csv",
        "2026-12-04,Hamza,rack pull,1,5,1000 kg\n2026-12-11,Hamza,rack pull,1,5,1000 kg\n",
    );
    kiosk.let_be_told();
    to_plans(&mut kiosk);
    let has = |kiosk: &mut Kiosk| rows(kiosk).iter().any(|row| row.value.contains("week.csv"));
    assert!(!has(&mut kiosk), "nobody has told it yet");
    let near = Nearby::look(&folder, kiosk.shared_gym(), &Nearby::default());
    kiosk.tell_nearby(near);
    let shown = rows(&mut kiosk);
    let week = shown.iter().find(|row| row.value.contains("week.csv"));
    let week = week.expect("the plan is shown");
    assert!(
        week.detail.contains("1000 kg, where the record supports")
            && week.detail.contains("and 1 more like it"),
        "told as odd before it is taken: {week:?}"
    );
    fs::remove_dir_all(data.path().join("plans")).expect("the stick of a tidy coach");
    tap_row(&mut kiosk, "week.csv");
    let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 4).expect("a day");
    let planned = &kiosk.state().plan[&(day, "Hamza".to_owned())];
    assert_eq!(planned.len(), 1, "taken as it was shown");
}

/// A plan that was read with another gym, and is told late, is not shown before it is read again.
#[test]
fn a_plan_read_with_another_gym_waits_until_it_is_read_again() {
    let data = tempfile::tempdir().expect("a folder");
    let (folder, mut kiosk) = kiosk(data.path());
    write(
        data.path(),
        "week.csv",
        "2026-12-04,Hamza,rack pull,1,5,180 kg\n",
    );
    kiosk.let_be_told();
    to_plans(&mut kiosk);
    let has = |kiosk: &mut Kiosk| rows(kiosk).iter().any(|row| row.value.contains("week.csv"));
    let mut other = (**kiosk.shared_gym()).clone();
    other.lifters[0].bests.clear();
    let late = Nearby::look(&folder, &Arc::new(other), &Nearby::default());
    kiosk.tell_nearby(late);
    assert!(!has(&mut kiosk), "read with another gym");
    let near = Nearby::look(&folder, kiosk.shared_gym(), &Nearby::default());
    kiosk.tell_nearby(near);
    assert!(has(&mut kiosk));
}

/// A share of a best stands on the page in kilos too, those of the week to come alone.
#[test]
fn what_a_share_comes_to_is_laid_out_for_the_page() {
    let data = tempfile::tempdir().expect("a folder");
    let day = |day| chrono::NaiveDate::from_ymd_opt(2026, 12, day).expect("a day");
    let (_, mut kiosk) = kiosk(data.path());
    let text = "date,lifter,lift,sets,reps,load\n2026-12-03,Hamza,rack pull,1,5,80 %\n\
                2026-12-04,Hamza,rack pull,1,5,150 kg\n2026-12-20,Hamza,rack pull,1,5,80 %\n";
    let source = plan::Source {
        name: "shares.csv",
        text: text.as_bytes(),
    };
    let rows = plan::coach_plan(source, kiosk.gym()).expect("a plan");
    kiosk.take_plan("shares.csv".into(), rows).expect("taken");
    let (gym, state) = (kiosk.gym(), kiosk.state());
    let hamza = gym.lifters.iter().find(|lifter| lifter.name == "Hamza");
    let hamza = hamza.expect("a lifter");
    let best = hamza.bests.iter().find(|(lift, _)| lift == "rack pull");
    let best = best
        .expect("a best")
        .1
        .max(state.best("Hamza", "rack pull").unwrap_or_default());
    let days = (day(2), day(8));
    let shares = kiosk::shared::shares(gym, state, hamza, std::iter::empty(), days);
    let shares: Vec<_> = shares
        .filter(|((_, _, lift), _)| lift == "rack pull")
        .collect();
    let of = (
        "2026-12-03".to_owned(),
        "Hamza".to_owned(),
        "rack pull".to_owned(),
    );
    let four_fifths = domain::Mass::from_ng(best.ng() / 5 * 4);
    assert_eq!(shares, [(of, four_fifths)]);
}
