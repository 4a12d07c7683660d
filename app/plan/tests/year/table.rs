//! What becomes of many lifters under each programme, beside a rule that adds the same each time.
//!
//! `cargo test --release -p plan --test year -- --ignored --nocapture` prints it for 200 each.
use crate::judge::judge;
use crate::life::{Coach, Year};
use crate::lifter::{Kind, Lifter};
use crate::programme::{NAMES, Programme};
use domain::event::Hold;
use domain::{Mass, MassUnit};

const LIFTERS: u64 = 200;

/// One programme's column.
#[derive(Debug, Default)]
struct Sum {
    singles: f64,
    done: usize,
    short: usize,
    moved: usize,
    lowered: usize,
}

impl Sum {
    fn line(&self, name: &str, of: u64) -> String {
        let each = |count: usize| count as f64 / of as f64;
        format!(
            "{name:<24} {:>6.1} {:>6.1} {:>6.1} {:>6.1} {:>8.1}",
            self.singles / of as f64,
            each(self.done),
            each(self.short),
            each(self.moved),
            each(self.lowered)
        )
    }
}

fn under(name: &'static str, lifters: u64) -> Sum {
    let programme = Programme::of(name);
    let mut sum = Sum::default();
    for seed in 0..lifters {
        let year = Year::of(&programme, Kind::Human, Coach::Prompt, seed);
        judge(&year, &format!("{name}, lifter {seed}"));
        sum.singles += year.lifter.single();
        sum.done += year.done.len();
        for done in &year.done {
            let went = done.outing.went;
            sum.moved += usize::from(went.moved());
            sum.short += usize::from(went.wrong() && !went.moved());
            let lowered = done.due.as_ref().map(|due| due.decision);
            sum.lowered += usize::from(lowered.is_some_and(|d| d.load < d.from));
        }
    }
    sum
}

/// Two fives three days a week, two and a half kilos more each time whatever happened.
fn plain(lifters: u64) -> Sum {
    let mut sum = Sum::default();
    for seed in 0..lifters {
        let mut lifter = Lifter::new(Kind::Human, seed);
        let mut load = Mass::of(MassUnit::Kg, 96_000);
        for day in 0..364 {
            let _ = lifter.sleep();
            if ![0, 2, 4].contains(&(day % 7)) || !lifter.comes() {
                continue;
            }
            let sets = [(); 2].map(|()| lifter.set("deadlift", load, (5, false)));
            let moved = sets.iter().any(|(_, hold, _)| *hold != Hold::Kept);
            let short = sets.iter().any(|(reps, ..)| *reps < 5);
            sum.done += 1;
            sum.moved += usize::from(moved);
            sum.short += usize::from(short && !moved);
            load = load + Mass::of(MassUnit::Kg, 2_500);
        }
        sum.singles += lifter.single();
    }
    sum
}

/// Far fewer misses than under the plain rule, and no weaker for it than before the year.
fn compare(lifters: u64) -> String {
    let before: f64 = (0..lifters)
        .map(|seed| Lifter::new(Kind::Human, seed).single())
        .sum();
    let plain = plain(lifters);
    let mut text = format!(
        "{lifters} lifters, single at first {:.1} kg\n{:<24} {:>6} {:>6} {:>6} {:>6} {:>8}\n",
        before / lifters as f64,
        "a lifter's year",
        "single",
        "times",
        "short",
        "moved",
        "lowered"
    );
    text += &format!("{}\n", plain.line("the same more each time", lifters));
    for name in NAMES {
        let sum = under(name, lifters);
        text += &format!("{}\n", sum.line(name, lifters));
        assert!(sum.singles > before, "{name}: weaker\n{text}");
        let share = |sum: &Sum| (sum.short + sum.moved) as f64 / sum.done as f64;
        assert!(share(&sum) * 2.0 < share(&plain), "{name}\n{text}");
    }
    text
}

#[test]
fn fewer_misses_than_under_a_plain_rule() {
    compare(3);
}

#[test]
#[ignore = "minutes: two hundred lifters a programme"]
fn two_hundred_lifters_a_programme() {
    println!("{}", compare(LIFTERS));
}
