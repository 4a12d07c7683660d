//! `pinladder solve PROBLEM`: the planners, from outside. One JSON object in, one out.
//!
//! Refuses: unknown fields (a typo must not change an answer unseen), quantities without a unit,
//! numbers that cannot be kept exactly. A refusal is `{"refused": "...", "field": "..."}`, where
//! `field` is the path of what is wrong, such as `rungs[2].target`, and `input` is the whole.
//!
//! Masses and lengths are strings with a unit ("445 lb", "20 kg", "27 mm", "1 1/4 in"), seconds
//! are numbers of at most nine decimals. Answers are exact: masses and lengths are given in the
//! unit of the input that they belong to where they have a finite decimal there, else in kg or
//! mm; `cost_s` has as many decimals as it takes. An optional field may be left out or null.
//!
//! # ladder
//! In:
//! - `bar`: mass; `collars`: mass of the pair, optional; `sleeve`: usable length, optional
//! - `plates`: a list of `mass`, `pairs`, `thickness`, `diameter` (both optional) and
//!   `handling_s`, the seconds that it takes to put a pair on or to take it off
//! - `big_inside`: whether a plate may only go outside plates at least as heavy; optional, false
//! - `on_bar`: masses on one side before the first rung, inside to outside; optional, none. Where
//!   two kinds of plates have that mass, the kind listed first is taken as long as it lasts
//! - `strip_after`: whether clearing the sleeve after the last rung counts; optional, false
//! - `rungs`: a list of `target`, `below` and `above` (masses; optional, none), `per_kg_off_s`
//!   (seconds for each kilogram off the target; optional, 0), `least_diameter` (at least one plate
//!   on the bar is as large across, as from the floor; optional, any)
//!
//! Out: `cost_s`, `handling_s`, `pair_moves` (the clearing counted where it was asked for), and
//! `rungs`: a list of `load`, `off_target` (load less target), `per_side` (inside to outside),
//! `take_off` (outermost first), `put_on` (innermost first). Ties are broken as
//! [`domain::solve::ladder`] says. What is not proven within `--within SECONDS`, 2 by default, is
//! the best that was found, with `proven` false and `at_least_s`, below which no cost lies.
//!
//! # rotation
//! In: `bar`, `collars`, `sleeve`, `plates` and `big_inside` as for a ladder, and
//! - `loaders`: 1, sides one after the other, so that a pair takes twice its `handling_s`, or 2,
//!   both at once; optional, 1
//! - `hole_change_s`: optional, 0; `hole_change_at_most`: the pins move only while the bar carries
//!   at most this, bar and collars included; optional, any load
//! - `lifters`: a list of `name` and `turns`: `target`, `below` and `above` (masses; optional,
//!   none), `least_diameter` (optional, as for a ladder), `hole` (optional or null: the turn does not use the pins), `lasts_s`, `rest_s` (least
//!   time from the end of that lifter's previous turn; optional, 0)
//! - `longest_wait_at_most_s`: nobody is to wait longer for a set once rested; optional, any. Where
//!   no such order is found, the one is given whose longest wait is the least. For one bar alone
//!
//! Several bars: `stations`, 1 to 4, in place of the fields of the one bar: a list of `name` and
//! those fields. A lifter may name a `station`, else is put to one for the whole lift.
//!
//! Out: `ends_s` (of several bars, the latest), `handling_s` (all time spent on plates, hole changes
//! apart), `pair_moves`, `longest_wait_s` (the longest that one lifter waits for a set, beyond the
//! rest due; a first turn is waited for from the start), `longest_wait_kept` (whether that is within
//! `longest_wait_at_most_s`, where it was asked for), `proven` (`ends_s` cannot be beaten),
//! `at_least_s`, and `turns` in the order in which they are
//! done: `station` (where there are several), `lifter`, `turn` (from 1), `starts_s`, `ends_s`, `hole`, `load`, `per_side`, `take_off`,
//! `put_on`. With `--within SECONDS` it looks for at most so long, 2 by default. Rules and ties
//! are told in [`domain::solve::rotation`].
//!
//! # hole
//! In: `first_hole`, `spacing`, `holes`, `pin_diameter`, `hole_diameter` (optional),
//! `bar_diameter`, `mats` (a list of thicknesses; optional, none), `target`, `rule`
//! ("at_or_below" or "nearest"), `patella_top` (optional), `calibration` (optional: `hole` and
//! `bar_height`).
//!
//! Out: `hole`, `mats` (thickest first), `bar_height`, `off_target` (bar height less target),
//! and `overlap` where `patella_top` was given. Ties are broken as [`domain::solve::hole`] says.
//!
//! # bar
//! In: `shaft_diameter`, `youngs_modulus_gpa`, `yield_mpa`, `support_span` (between the lines on
//! which the bar touches the pins), `load_span` (between the centres of the two loads, more than
//! the support span), `load_per_side`, `drop` (optional).
//!
//! Out: `moment_nm`, `stress_mpa`, `stress_over_yield`; `deflection_at_loads`, downwards;
//! `deflection_at_mid_span`, upwards; `yield_drop`, the height of a drop from which the shaft
//! would yield (0 mm when it yields as soon as it is let go, null when not from 100 m either);
//! where `drop` was given, `dropped` with `times_the_load`, `moment_nm`, `stress_mpa` and
//! `stress_over_yield` at the lowest point; and `note`, the words that go with every figure: a
//! guide, never a certificate. What is left out is told in [`domain::solve::bar`].
//!
//! # balance
//! In: `bar` (mass, collars included), `plates` (a list of `mark`, `nominal` and `mass` as
//! weighed), `per_side` (nominal masses, inside to outside).
//!
//! Out: `left` and `right` (marks, inside to outside), `load` as it truly is, `difference` of the
//! sides: least first, then the load nearest to the nominal one. See [`domain::solve::balance`].
//!
//! # next
//! In:
//! - `today`: a day such as "2026-12-01"; `lift` and `track`: names; `spacing_days`: what the
//!   programme itself puts between two times of this track
//! - `family`: names of the lifts that load the same back
//! - `bar`, `collars`, `sleeve`, `plates` and `big_inside` as for a ladder; `handling_s` may be left
//!   out
//! - `round`: what loads that follow from others are whole steps of, a mass; optional
//! - `rule`: keys of a rule in programme.toml (`solve/next_rule.rs`); optional, as shipped
//! - `history`: oldest first, a list of `date`, `lift`, `track`, `sets`, `reps` (`[least, most]`, a
//!   most of null for as many as go), `load`, `done` (reps of each set; one with none at all counts
//!   for nothing) and `moved_at` (optional: the rep at which the back moved, in the last set done, or
//!   in a warm-up where no set was)
//! - `ill`: a list of `from` and `to` (optional: it goes on); `hurt`: the same; both optional
//!
//! Out: `due`, one mass in the bar's unit for the sets and reps of the track's last entry, null
//! where somebody is hurt and where the lift begins anew with the coach; `verdict`: "raise",
//! "repeat", "hold", "lower", "ease", "begin anew", "hurt" or "ask the coach"; `why`, a sentence;
//! `ask_coach`. A load other than the one that was held is the coach's answer. See
//! [`domain::next`].
//!
//! # All
//! With `--times N` the planner alone runs N times more, and `median_us` is the median of what
//! it took, in microseconds.
use self::read::{Fault, Object, shortened};
use self::watch::Watch;
use serde::Serialize;
use std::fmt;

mod balance;
mod bar;
mod exact;
mod hole;
mod ladder;
mod nearest;
mod next;
mod next_loads;
mod next_rule;
mod next_words;
mod read;
mod rotation;
mod stations;
mod watch;

/// The problems that can be solved.
pub const PROBLEMS: [&str; 6] = ["ladder", "rotation", "hole", "bar", "balance", "next"];

/// The longest input that is read: 1 MiB.
pub const INPUT_LIMIT: usize = 1 << 20;

/// What is to be solved, and how.
#[derive(Debug, Clone, Copy)]
pub struct Request<'a> {
    /// One of [`PROBLEMS`].
    pub problem: &'a str,
    /// One JSON object.
    pub input: &'a str,
    /// How often to run the planner for `median_us`.
    pub times: Option<u32>,
    /// How long a planner that cannot always prove its best may look, nanoseconds.
    pub within_ns: u64,
}

/// What goes to standard output.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Answer {
    /// One JSON object.
    pub json: String,
    /// False when it is a refusal.
    pub solved: bool,
}

/// Solves one problem. `clock` tells nanoseconds from any start.
pub fn run(request: Request<'_>, clock: &mut dyn FnMut() -> u64) -> Answer {
    let mut watch = Watch::new(request.times, request.within_ns, clock);
    match solve(request, &mut watch) {
        Ok(json) => Answer { json, solved: true },
        Err(fault) => Answer {
            json: written(&fault),
            solved: false,
        },
    }
}

fn solve(request: Request<'_>, watch: &mut Watch<'_>) -> Result<String, Fault> {
    let solve = match request.problem {
        "ladder" => ladder::solve,
        "rotation" => rotation::solve,
        "hole" => hole::solve,
        "bar" => bar::solve,
        "balance" => balance::solve,
        "next" => next::solve,
        other => {
            let hint = nearest::hint(other, &PROBLEMS);
            return Err(Fault::new(
                "problem",
                format!("there is no {}: {hint}", shortened(&format!("{other:?}"))),
            ));
        }
    };
    if request.input.len() > INPUT_LIMIT {
        let text = format!("is longer than {INPUT_LIMIT} bytes");
        return Err(Fault::new("input", text));
    }
    solve(&Object::root(request.input)?, watch)
}

fn written<T: Serialize + fmt::Debug>(answer: &T) -> String {
    serde_json::to_string(answer).expect("plain structs are always written")
}
