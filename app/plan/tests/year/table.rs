//! What becomes of many lifters under each programme, beside a rule that adds the same each time: a
//! table, a drawing for each, and a test that tells when they are stale.
//!
//! `PINLADDER_RENEW=1 cargo test --release -p plan --test year -- --ignored --nocapture` lives the
//! year of 200 lifters in each, prints the table and writes it with the drawings into
//! `tests/programmes`. Every run of the tests lives two of them and compares.
use crate::drawing::{Series, WEEKS, drawing};
use crate::judge::judge;
use crate::life::{Coach, Year, monday};
use crate::lifter::{Kind, Lifter};
use crate::programme::{NAMES, Programme};
use domain::event::Hold;
use domain::next::Why;
use domain::{Mass, MassUnit};
use std::fmt::Write as _;
use std::path::PathBuf;
use std::{env, fs};

const LIFTERS: u64 = 200;
/// As many are lived in every run of the tests.
const SAMPLE: u64 = 2;
/// What each programme is, in the order of [`NAMES`].
const WHAT: [&str; 8] = [
    "the same more each time",
    "one lift on three days",
    "weekly waves on a training max",
    "three weeks up, the fourth light",
    "a top set by effort, then back-offs",
    "five variations, one after the other",
    "three weeks up, one light, in blocks",
    "volume, strength, a peak, three times over",
];

/// One programme's column.
#[derive(Debug, Default)]
struct Sum {
    singles: f64,
    done: usize,
    short: usize,
    moved: usize,
    lowered: usize,
    /// Trainings before which the coach was asked.
    asked: usize,
    weeks: Series,
}

impl Sum {
    fn line(&self, name: &str, of: u64) -> String {
        let each = |count: usize| count as f64 / of as f64;
        let share = (self.short + self.moved) as f64 * 100.0 / self.done as f64;
        format!(
            "| {name} | {:.1} | {:.1} | {:.1} | {:.1} | {share:.0} % | {:.1} | {:.1} |",
            self.singles / of as f64,
            each(self.done),
            each(self.short),
            each(self.moved),
            each(self.lowered),
            each(self.asked)
        )
    }

    /// What tells one run from another.
    fn seen(&self) -> String {
        let (done, short) = (self.done, self.short);
        let (moved, lowered) = (self.moved, self.lowered);
        format!(
            "the first {SAMPLE} lifters: {done} lifts done, {short} short, {moved} moved, {lowered} lowered"
        )
    }
}

fn kilos(mass: Mass) -> f64 {
    mass.ng() as f64 / Mass::of(MassUnit::Kg, 1_000).ng() as f64
}

fn under(name: &'static str, lifters: u64) -> Sum {
    let programme = Programme::of(name);
    let mut sum = Sum::default();
    for seed in 0..lifters {
        let year = Year::of(&programme, Kind::Human, Coach::Prompt, seed);
        judge(&year, &format!("{name}, lifter {seed}"));
        sum.singles += year.lifter.single();
        sum.done += year.done.len();
        for (single, of_week) in sum.weeks.single.iter_mut().zip(&year.singles) {
            *single += of_week;
        }
        let mut tops = [0.0_f64; WEEKS];
        for done in &year.done {
            let days = (done.date - monday()).num_days();
            let week = usize::try_from(days / 7).expect("later").min(WEEKS - 1);
            let went = done.outing.went;
            sum.moved += usize::from(went.moved());
            sum.short += usize::from(went.wrong() && !went.moved());
            let decision = done.due.as_ref().map(|due| due.decision);
            let lowered = decision.is_some_and(|d| d.load < d.from);
            sum.lowered += usize::from(lowered);
            sum.asked += usize::from(decision.is_some_and(|d| d.why == Why::Coach));
            sum.weeks.wrong[week] += f64::from(u8::from(went.wrong()));
            sum.weeks.lowered[week] += f64::from(u8::from(lowered));
            if done.lift == "deadlift" {
                let heaviest = done.works.iter().copied().max().map(kilos);
                tops[week] = tops[week].max(heaviest.unwrap_or_default());
            }
        }
        add_tops(&mut sum.weeks, &tops);
    }
    sum
}

fn add_tops(weeks: &mut Series, tops: &[f64; WEEKS]) {
    for (week, top) in tops.iter().enumerate().filter(|(_, top)| **top > 0.0) {
        weeks.top[week] += top;
        weeks.tops[week] += 1.0;
    }
}

/// Two fives three days a week, two and a half kilos more each time whatever happened.
fn plain(lifters: u64) -> Sum {
    let mut sum = Sum::default();
    for seed in 0..lifters {
        let mut lifter = Lifter::new(Kind::Human, seed);
        let mut load = Mass::of(MassUnit::Kg, 96_000);
        let mut tops = [0.0_f64; WEEKS];
        for day in 0..364 {
            let _ = lifter.sleep();
            if day % 7 == 0 {
                sum.weeks.single[day / 7] += lifter.single();
            }
            if ![0, 2, 4].contains(&(day % 7)) || !lifter.comes() {
                continue;
            }
            let sets = [(); 2].map(|()| lifter.set("deadlift", load, (5, false)));
            let moved = sets.iter().any(|(_, hold, _)| *hold != Hold::Kept);
            let short = sets.iter().any(|(reps, ..)| *reps < 5);
            sum.done += 1;
            sum.moved += usize::from(moved);
            sum.short += usize::from(short && !moved);
            sum.weeks.wrong[day / 7] += f64::from(u8::from(moved || short));
            tops[day / 7] = kilos(load);
            load = load + Mass::of(MassUnit::Kg, 2_500);
        }
        add_tops(&mut sum.weeks, &tops);
        sum.singles += lifter.single();
    }
    sum
}

/// The table, and each programme's column. Far fewer misses than under the plain rule, and no weaker
/// for it than before the year.
fn compare(lifters: u64) -> (String, Sum, Vec<Sum>) {
    let before: f64 = (0..lifters)
        .map(|seed| Lifter::new(Kind::Human, seed).single())
        .sum();
    let plain = plain(lifters);
    let mut text = format!(
        "{lifters} lifters; single at first {:.1} kg.\n\n| a lifter's year | single after it, kg | lifts done | short of reps | back moved | gone wrong | load lowered | coach ruled |\n|---|---|---|---|---|---|---|---|\n",
        before / lifters as f64,
    );
    let _ = writeln!(text, "{}", plain.line("the plain rule", lifters));
    let mut all = Vec::new();
    for name in NAMES {
        let sum = under(name, lifters);
        let _ = writeln!(text, "{}", sum.line(name, lifters));
        assert!(sum.singles > before, "{name}: weaker\n{text}");
        let share = |sum: &Sum| (sum.short + sum.moved) as f64 / sum.done as f64;
        assert!(share(&sum) * 2.0 < share(&plain), "{name}\n{text}");
        all.push(sum);
    }
    (text, plain, all)
}

fn path(name: &str) -> PathBuf {
    let root = concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/programmes");
    PathBuf::from(root).join(name)
}

/// Marks in the page between which the table stands.
const MARKS: [&str; 2] = ["<!-- the table -->\n\n", "\n<!-- so far -->"];

#[test]
fn drawings_and_table_are_of_this_code() {
    let (_, _, all) = compare(SAMPLE);
    let page = fs::read_to_string(path("README.md")).expect("the page of the years");
    for (name, sum) in NAMES.iter().zip(&all) {
        let file = format!("{name}.svg");
        let svg = fs::read_to_string(path(&file)).expect("a drawing");
        let stale =
            "is stale: PINLADDER_RENEW=1 cargo test --release -p plan --test year -- --ignored";
        assert!(svg.contains(&sum.seen()), "{file} {stale}\n{}", sum.seen());
        assert!(svg.len() < 40_000, "{file} has {} bytes", svg.len());
        assert!(page.contains(&file), "{file} is not on the page");
        // The page has this drawing's own run.
        let told = svg
            .split("gone wrong: ")
            .nth(1)
            .and_then(|rest| rest.split('.').next());
        let row = page
            .lines()
            .find(|line| line.starts_with(&format!("| {name} |")));
        let row = row.expect("a row of the table");
        assert!(row.contains(told.expect("told")), "{file} {stale}\n{row}");
    }
}

#[test]
#[ignore = "minutes: two hundred lifters a programme"]
fn two_hundred_lifters_a_programme() {
    let (text, plain, all) = compare(LIFTERS);
    println!("{text}");
    if env::var_os("PINLADDER_RENEW").is_none() {
        return;
    }
    let (_, _, sample) = compare(SAMPLE);
    let plain = plain.weeks.mean(LIFTERS);
    for ((name, what), (sum, few)) in NAMES.iter().zip(WHAT).zip(all.into_iter().zip(sample)) {
        let share = (sum.short + sum.moved) as f64 * 100.0 / sum.done as f64;
        let seen = format!("{}; gone wrong: {share:.0} %.", few.seen());
        let ours = sum.weeks.mean(LIFTERS);
        let svg = drawing((name, what), LIFTERS, (&ours, &plain), &seen);
        fs::write(path(&format!("{name}.svg")), svg).expect("written");
    }
    let page = fs::read_to_string(path("README.md")).expect("the page of the years");
    let (head, rest) = page.split_once(MARKS[0]).expect("the first mark");
    let (_, foot) = rest.split_once(MARKS[1]).expect("the second mark");
    let page = format!("{head}{}{text}{}{foot}", MARKS[0], MARKS[1]);
    fs::write(path("README.md"), page).expect("written");
}
