//! The problem `next`: JSON to the rules of next time and back. The contract is at the head of
//! `solve`.
use super::next_loads::loads;
use super::next_rule::rule;
use super::next_words::{verdict, why};
use super::read::{Fault, Object, Value};
use super::watch::Watch;
use chrono::NaiveDate;
use domain::event::LiftNo;
use domain::next::outing::{Outing, Went};
use domain::next::{Decision, FamilyTime, Ill, Limits, Rule, Season, decide};
use domain::solve::loads::Loads;
use domain::{Mass, MassUnit, Moment};
use serde::Serialize;
use serde_json::value::RawValue;
use std::collections::BTreeMap;

/// Most entries of a history.
const HISTORY_MAX: usize = 10_000;
/// Most work sets and reps of an entry, as in a plan.
const SETS_MAX: u16 = 50;
const REPS_MAX: u16 = 50;
/// The heaviest load, as in a plan.
const LOAD_MAX: Mass = Mass::of(MassUnit::Kg, 1_000_000);
/// The longest spacing of a programme, days.
const SPACING_MAX: u16 = 366;

#[derive(Debug, Serialize)]
struct Solved {
    due: Option<String>,
    verdict: &'static str,
    why: String,
    ask_coach: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    median_us: Option<Box<RawValue>>,
}

/// What was asked.
struct Asked {
    today: NaiveDate,
    of: (String, String),
    spacing_days: u16,
    unit: MassUnit,
    loads: Loads,
    rule: Rule,
    limits: Limits,
    past: Vec<Outing>,
    family: Vec<FamilyTime>,
    ill: Vec<Ill>,
    hurt: Option<NaiveDate>,
}

/// One entry of the history.
struct Entry {
    of: (String, String),
    reps: (u8, Option<u8>),
    outing: Outing,
}

pub(super) fn solve(input: &Object<'_>, watch: &mut Watch<'_>) -> Result<String, Fault> {
    let asked = read(input)?;
    let season = Season {
        rule: asked.rule,
        limits: asked.limits,
        spacing_days: asked.spacing_days,
        family: &asked.family,
        ill: &asked.ill,
        hurt: asked.hurt,
        loads: &asked.loads,
    };
    let (due, median_us) = watch.run(|| {
        let standing = decide(&season, &asked.past)?;
        let due = standing.on(&season, &asked.family, asked.today);
        let waits = due.why.asks_coach() || standing.decision.why.asks_coach();
        Some((due, waits))
    });
    Ok(super::written(&write(&asked, due, median_us)))
}

fn write(asked: &Asked, due: Option<(Decision, bool)>, median_us: Option<Box<RawValue>>) -> Solved {
    let Some((due, ask_coach)) = due else {
        let (lift, track) = &asked.of;
        let hurt = asked.hurt.is_some();
        return Solved {
            due: None,
            verdict: if hurt { "hurt" } else { "begin anew" },
            why: if hurt {
                String::from(super::next_words::HURT)
            } else {
                format!(
                    "There is no training of {lift:?} in track {track:?} yet, so the coach names \
                     the first load."
                )
            },
            ask_coach: true,
            median_us,
        };
    };
    Solved {
        due: due.due().map(|load| load.exact(asked.unit)),
        verdict: verdict(&due),
        why: why(&due, asked.unit),
        ask_coach,
        median_us,
    }
}

fn read(input: &Object<'_>) -> Result<Asked, Fault> {
    input.only(&[
        "today",
        "lift",
        "track",
        "spacing_days",
        "family",
        "bar",
        "collars",
        "sleeve",
        "big_inside",
        "plates",
        "round",
        "rule",
        "history",
        "ill",
        "hurt",
    ])?;
    let today = input.need("today")?.date()?;
    let of = (name(input, "lift")?, name(input, "track")?);
    let spacing = input.need("spacing_days")?;
    let spacing_days = spacing.whole(0, SPACING_MAX, "days")?;
    let mut lifts = vec![of.0.clone()];
    for lift in input.need("family")?.list()? {
        lifts.push(lift.text("a lift")?);
    }
    let (rule, limits) = rule(input)?;
    let entries = history(&input.need("history")?, today)?;
    let family = family(&entries, &lifts);
    let last = entries.iter().rev().find(|entry| entry.of == of);
    let reps = last.map(|entry| entry.reps);
    let same = |entry: &&Entry| entry.of == of && Some(entry.reps) == reps;
    let past: Vec<Outing> = entries
        .iter()
        .filter(same)
        .map(|entry| entry.outing)
        .collect();
    let (unit, loads) = loads(input, &past)?;
    Ok(Asked {
        today,
        of,
        spacing_days,
        unit,
        loads,
        rule,
        limits,
        past,
        family,
        ill: spans(input, "ill")?
            .into_iter()
            .map(|(from, to)| Ill {
                from,
                to: to.unwrap_or(today),
            })
            .collect(),
        hurt: spans(input, "hurt")?
            .into_iter()
            .filter(|(from, to)| *from <= today && to.is_none_or(|to| to >= today))
            .map(|(from, _)| from)
            .min(),
    })
}

fn name(input: &Object<'_>, field: &str) -> Result<String, Fault> {
    input.need(field)?.text("a name, such as \"rack pull\"")
}

/// Days from and to; `to` may be left out for what goes on.
fn spans(input: &Object<'_>, field: &str) -> Result<Vec<(NaiveDate, Option<NaiveDate>)>, Fault> {
    let Some(list) = input.get(field) else {
        return Ok(Vec::new());
    };
    let span = |value: Value<'_>| {
        let span = value.object()?;
        span.only(&["from", "to"])?;
        let from = span.need("from")?.date()?;
        let Some(end) = span.get("to") else {
            return Ok((from, None));
        };
        let to = end.date()?;
        if to < from {
            let text = format!("{to} is before {from}, on which it began");
            return Err(Fault::new(end.path, text));
        }
        Ok((from, Some(to)))
    };
    list.list()?.into_iter().map(span).collect()
}

fn history(value: &Value<'_>, today: NaiveDate) -> Result<Vec<Entry>, Fault> {
    let list = value.list()?;
    if list.len() > HISTORY_MAX {
        let text = format!("has {} entries, more than {HISTORY_MAX}", list.len());
        return Err(Fault::new(&value.path, text));
    }
    let mut entries: Vec<Entry> = Vec::new();
    for (no, value) in (1..).zip(&list) {
        let before = entries.last().map(|entry| entry.outing.date);
        let Some(entry) = entry(value, LiftNo(no), (before, today))? else {
            continue;
        };
        entries.push(entry);
    }
    Ok(entries)
}

/// One entry; `None` for somebody who did nothing at all.
fn entry(
    value: &Value<'_>,
    no: LiftNo,
    (before, today): (Option<NaiveDate>, NaiveDate),
) -> Result<Option<Entry>, Fault> {
    let entry = value.object()?;
    entry.only(&[
        "date", "lift", "track", "sets", "reps", "load", "done", "moved_at",
    ])?;
    let day = entry.need("date")?;
    let date = day.date()?;
    if let Some(before) = before.filter(|before| date < *before) {
        let text = format!("{date} stands after {before}: write the oldest first");
        return Err(Fault::new(day.path, text));
    }
    if date > today {
        let text = format!("{date} is after today, {today}");
        return Err(Fault::new(day.path, text));
    }
    let sets = entry.need("sets")?.whole(1, SETS_MAX, "sets")?;
    let reps = reps(&entry.need("reps")?)?;
    let weight = entry.need("load")?;
    let (load, _) = weight.mass()?;
    if load <= Mass::ZERO || load > LOAD_MAX {
        let text = "is out of range: write more than 0 kg and at most 1000 kg";
        return Err(Fault::new(weight.path, text));
    }
    let mut done = Vec::new();
    for set in entry.need("done")?.list()? {
        done.push(set.whole(0, REPS_MAX, "reps")?);
    }
    let moved = entry.get("moved_at");
    let moved = moved
        .map(|rep| rep.whole(1, REPS_MAX, "reps"))
        .transpose()?;
    let sets = u8::try_from(sets).unwrap_or(u8::MAX);
    let Some((went, at_top)) = went(&done, sets, reps, moved) else {
        return Ok(None);
    };
    Ok(Some(Entry {
        of: (name(&entry, "lift")?, name(&entry, "track")?),
        reps,
        outing: Outing {
            no,
            date,
            load,
            sets,
            reps: reps.0,
            // Its histories are kept apart by the entry's own words.
            track: None,
            went,
            at_top,
            hard: false,
            chosen: false,
            kept: None,
        },
    }))
}

/// `[least, most]`, with a most of null for as many as go, or one number.
fn reps(value: &Value<'_>) -> Result<(u8, Option<u8>), Fault> {
    let whole = |value: &Value<'_>| value.whole(1, REPS_MAX, "reps");
    let small = |reps: u16| u8::try_from(reps).unwrap_or(u8::MAX);
    let Ok(ends) = value.list() else {
        let reps = small(whole(value)?);
        return Ok((reps, Some(reps)));
    };
    let [least, most] = ends.as_slice() else {
        let text = "is no range of reps: write [5, 5], [3, 5] or [5, null]";
        return Err(Fault::new(&value.path, text));
    };
    let from = small(whole(least)?);
    if most.is_null() {
        return Ok((from, None));
    }
    let to = small(whole(most)?);
    if to < from {
        let text = format!("{to} is less than {from}, the least of the range");
        return Err(Fault::new(&most.path, text));
    }
    Ok((from, Some(to)))
}

/// How it went, and whether every set came to the top of the range; `None` where nothing was done.
fn went(
    done: &[u16],
    sets: u8,
    (least, most): (u8, Option<u8>),
    moved: Option<u16>,
) -> Option<(Went, bool)> {
    let small = |number: usize| u8::try_from(number).unwrap_or(u8::MAX);
    let asked = &done[..done.len().min(usize::from(sets))];
    let top = u16::from(most.unwrap_or(least));
    let at_top = asked.iter().all(|reps| *reps >= top);
    if let Some(rep) = moved {
        let rep = u8::try_from(rep).unwrap_or(u8::MAX);
        return Some(match done.len() {
            0 => (Went::MovedWarm, false),
            set => (
                Went::Moved {
                    set: small(set),
                    rep,
                },
                false,
            ),
        });
    }
    let worst = (1..).zip(asked).min_by_key(|(_, reps)| **reps)?;
    if *worst.1 < u16::from(least) {
        let reps = u8::try_from(*worst.1).unwrap_or(u8::MAX);
        return Some((Went::Short { set: worst.0, reps }, false));
    }
    Some(if asked.len() < usize::from(sets) {
        (
            Went::Cut {
                done: small(asked.len()),
            },
            at_top,
        )
    } else {
        (Went::Well, at_top)
    })
}

/// All trainings of the family, each with the number of its lift and track.
fn family(entries: &[Entry], lifts: &[String]) -> Vec<FamilyTime> {
    let mut tracks: BTreeMap<&(String, String), u16> = BTreeMap::new();
    let of_it = entries.iter().filter(|entry| lifts.contains(&entry.of.0));
    let mut times = Vec::new();
    for Entry { of, outing, .. } in of_it {
        let next = u16::try_from(tracks.len()).unwrap_or(u16::MAX);
        times.push(FamilyTime {
            date: outing.date,
            no: outing.no,
            of: *tracks.entry(of).or_insert(next),
            moved: outing.went.moved(),
            wrong: outing.went.wrong(),
            at: Moment::default(),
        });
    }
    times
}
