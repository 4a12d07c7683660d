//! Lifters who never miss: what they lift all year is what the coach's own sheet says, reckoned
//! here from its text by hand.
use crate::life::{Coach, Done, Year, monday};
use crate::lifter::Kind;
use crate::programme::Programme;
use chrono::{Days, NaiveDate};
use domain::next::Why;
use domain::{Mass, MassUnit};

fn kg(mass: Mass) -> f64 {
    mass.ng() as f64 / Mass::of(MassUnit::Kg, 1_000).ng() as f64
}

fn year(name: &'static str) -> Year {
    let year = Year::of(&Programme::of(name), Kind::Model, Coach::Prompt, 1);
    assert_eq!(year.unshown, [], "{name}");
    year
}

/// A cell "1x5 @ 65 % TM; 1x5+ @ 85 % TM" as sets and shares.
fn shares(cell: &str) -> Vec<(usize, f64)> {
    let group = |group: &str| {
        let (scheme, share) = group.split_once(" @ ")?;
        let sets = scheme.trim().split_once('x')?.0.parse().ok()?;
        let share: f64 = share.strip_suffix(" % TM")?.parse().ok()?;
        Some((sets, share / 100.0))
    };
    cell.split(';').filter_map(group).collect()
}

/// The training max of a week: 2.5 kg more after each four.
fn training_max(lift: &str, week: u32, at_first: &[(&str, f64)]) -> f64 {
    let first = at_first.iter().find(|(name, _)| *name == lift);
    first.expect("a lift").1 + 2.5 * f64::from((week - 1) / 4)
}

/// Every share of the training max in force, as near as plates that step by 1 kg and discs of the
/// right height allow: within the 2.5 % that a work load may be off.
fn shares_are_kept(name: &'static str, at_first: &[(&str, f64)]) {
    let year = year(name);
    let text = Programme::of(name).text("plans/year.csv").expect("a plan");
    let text = String::from_utf8(text).expect("text");
    let mut seen = 0;
    for line in text.lines().skip(2) {
        let cells: Vec<&str> = line.split(',').collect();
        let [week, weekday, _, lift, .., scheme] = cells.as_slice() else {
            panic!("{line}")
        };
        let wanted = shares(scheme);
        if wanted.is_empty() {
            continue;
        }
        let week: u32 = week.parse().expect("a week");
        let on = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday"];
        let on = on.iter().position(|day| day == weekday).expect("a day") as u64;
        let date = monday() + Days::new(u64::from(week - 1) * 7 + on);
        let done = year
            .done
            .iter()
            .find(|done| done.date == date && done.lift == *lift);
        let done = done.unwrap_or_else(|| panic!("{line}: not done"));
        let max = training_max(lift, week, at_first);
        let each = wanted
            .iter()
            .flat_map(|&(sets, share)| vec![share * max; sets]);
        let each: Vec<f64> = each.collect();
        assert_eq!(each.len(), done.works.len(), "{line}");
        for (wanted, lifted) in each.iter().zip(&done.works) {
            let off = (kg(*lifted) - wanted).abs();
            assert!(
                off <= wanted * 0.025,
                "{line}: {wanted} is {}; {:?} {:?}",
                kg(*lifted),
                done.works,
                done.due
            );
        }
        seen += 1;
    }
    assert!(seen >= 100, "{seen}");
}

#[test]
fn waves_are_shares_of_the_training_max_all_year() {
    shares_are_kept("waves", &[("deadlift", 145.0), ("rack pull", 155.0)]);
}

#[test]
fn blocks_are_shares_of_the_training_max_all_year() {
    shares_are_kept("blocks", &[("deadlift", 150.0)]);
}

#[test]
fn light_and_medium_days_are_shares_all_year() {
    shares_are_kept("heavy-light-medium", &[("deadlift", 140.0)]);
}

fn of<'y>(year: &'y Year, lift: &str) -> Vec<&'y Done> {
    year.done.iter().filter(|done| done.lift == lift).collect()
}

/// The heavy days go as if there were no other days, and up each week.
#[test]
fn heavy_days_follow_from_themselves_alone() {
    let year = year("heavy-light-medium");
    let is_heavy = |done: &&&Done| done.track.name.is_some_and(|name| name.as_str() == "heavy");
    let all = of(&year, "deadlift");
    let heavy: Vec<f64> = all
        .iter()
        .filter(is_heavy)
        .map(|d| kg(d.outing.load))
        .collect();
    assert_eq!(heavy.len(), 52);
    assert!((heavy[0] - 120.0).abs() < 0.01);
    // Some day all plates of the gym are on the bar.
    for pair in heavy.windows(2).take_while(|pair| pair[1] < 320.0) {
        // 2.5 % to the nearest that plates in steps of 1 and 2.5 kg make.
        let step = pair[1] - pair[0];
        let wished = pair[0] * 0.025;
        assert!(step > 0.0 && (step - wished).abs() <= 2.5, "{pair:?}");
    }
}

/// Two and a half kilos three times a week from 60 % of 160 kg, by hand, for as long as a novice
/// does so.
#[test]
fn a_novice_adds_the_same_each_time() {
    let year = Year::of(&Programme::of("linear"), Kind::Model, Coach::Prompt, 1);
    let loads: Vec<f64> = of(&year, "deadlift")
        .iter()
        .map(|d| kg(d.outing.load))
        .collect();
    let weeks: Vec<f64> = loads.chunks(3).take(16).map(|week| week[0]).collect();
    for (week, load) in (0..).zip(&weeks) {
        let wanted = 96.0 + 7.5 * f64::from(week);
        assert!(
            (load - wanted).abs() <= 2.5,
            "week {week}: {load} for {wanted}"
        );
    }
    assert!(loads.windows(2).take(50).all(|pair| pair[0] < pair[1]));
}

/// Each comes round every 35 days, and whoever makes it every time is never lowered: a programme
/// that is rare is no break.
#[test]
fn five_in_turn_all_rise() {
    let year = year("five-in-turn");
    for lift in [
        "deadlift",
        "rack pull",
        "halting deadlift",
        "barbell shrug",
        "power clean",
    ] {
        let all = of(&year, lift);
        assert!(all.len() >= 10, "{lift}: {}", all.len());
        for pair in all.windows(2) {
            let (before, after) = (pair[0].outing.load, pair[1].outing.load);
            assert!(before < after, "{lift} on {}", pair[1].date);
            let why = pair[1].due.as_ref().map(|due| due.decision.why);
            assert_eq!(why, Some(Why::Well), "{lift} on {}", pair[1].date);
        }
    }
}

/// The training max moved in the middle of a block: from that day on, and not before.
#[test]
fn a_training_max_moved_in_mid_block_counts_from_its_day() {
    let blocks = Programme::of("blocks");
    let text = String::from_utf8(blocks.text("lifters.toml").expect("a file")).expect("text");
    let moved =
        "training_max = [\n  { lift = \"deadlift\", load = \"130 kg\", since = \"2026-01-15\" },";
    let text = text.replacen("training_max = [", moved, 1);
    let gym = blocks.gym_with(text.as_bytes());
    let max = |day: u32| {
        let on = NaiveDate::from_ymd_opt(2026, 1, day).expect("a day");
        gym.lifters[0].training_max("deadlift", on).map(kg)
    };
    assert_eq!([max(5), max(14)], [Some(150.0); 2]);
    assert_eq!([max(15), max(31)], [Some(130.0); 2]);
    let february = NaiveDate::from_ymd_opt(2026, 2, 2).expect("a day");
    let next = gym.lifters[0].training_max("deadlift", february);
    assert_eq!(next.map(kg), Some(152.5), "the block after goes by its own");
}
