//! Reads the lines of a checkpoint back into the state.
//!
//! Refuses: any line that `write` would not have written; the checkpoint is then of no account.
use super::elsewhere::Elsewhere;
use super::form::{Alone, Bar, Clocks, Here, Run, entry, unshown_back};
use super::past::Past;
use crate::wire;
use chrono::NaiveDate;
use domain::believed::{BarWord, BelievedBar, Stacks};
use domain::next::{NextTime, Ruled};
use domain::rotation::Station;
use domain::state::LiftRun;
use domain::{Fact, LiftNo, LiftSheet, Moment, State};
use serde::de::DeserializeOwned;

/// That the lines are not those of a checkpoint.
#[derive(Debug)]
pub(super) struct Unfit;

type Fit<T> = Result<T, Unfit>;

/// The state that the lines tell.
pub(super) fn state<'a>(mut lines: impl Iterator<Item = &'a str>) -> Fit<State> {
    let mut state = State::default();
    while let Some(line) = lines.next() {
        let (word, body) = line.split_once(' ').ok_or(Unfit)?;
        match word {
            "alone" => alone(&mut state, json(body)?)?,
            "clocks" => state.times = json::<Clocks>(body)?.times().ok_or(Unfit)?,
            "fact" => take(&mut state, fact(body)?)?,
            "past" => {
                let past: Past = json(body)?;
                let lifter = past.lifter.clone();
                let kept = past.kept().ok_or(Unfit)?;
                state.past.lifters.insert(lifter, kept);
            }
            "lift" => lift(&mut state, json(body)?, &mut lines)?,
            "bar" => bar(&mut state, &json(body)?, &mut lines)?,
            "elsewhere" => {
                let (kiosk, taken) = json::<Elsewhere>(body)?.taken();
                state.elsewhere.insert(kiosk, taken);
            }
            "health" => drop(state.health.entry(json(body)?).or_default()),
            _ => return Err(Unfit),
        }
    }
    Ok(state)
}

fn json<T: DeserializeOwned>(body: &str) -> Fit<T> {
    serde_json::from_str(body).map_err(|_| Unfit)
}

fn day(days: i32) -> Fit<NaiveDate> {
    NaiveDate::from_epoch_days(days).ok_or(Unfit)
}

/// The fact behind the word "fact".
fn fact(body: &str) -> Fit<Fact> {
    let (version, rest) = body.split_once(' ').ok_or(Unfit)?;
    let (kind, body) = rest.split_once(' ').ok_or(Unfit)?;
    let version = version.parse().map_err(|_| Unfit)?;
    wire::decode(version, kind, body).map_err(|_| Unfit)
}

fn next_fact<'a>(lines: &mut impl Iterator<Item = &'a str>) -> Fit<Fact> {
    let line = lines.next().ok_or(Unfit)?;
    fact(line.strip_prefix("fact ").ok_or(Unfit)?)
}

fn alone(state: &mut State, own: Alone) -> Fit<()> {
    state.last_no = own.last_no;
    (state.past.sets, state.past.count) = (own.sets, own.lifts);
    let touched = own.touched.into_iter();
    state.touched = touched.map(|(no, at)| (LiftNo(no), Moment(at))).collect();
    if let Some(what) = own.unshown {
        state.unshown = Some(unshown_back(&what).ok_or(Unfit)?);
    }
    let called = own.called_since.into_iter();
    state.called_since = called.map(|(rack, bar)| Station { rack, bar }).collect();
    for (rack, days, hole) in own.holes {
        state.holes.insert(rack, (day(days)?, hole));
    }
    Ok(())
}

/// A fact that stands by itself.
fn take(state: &mut State, fact: Fact) -> Fit<()> {
    if let Fact::FileTaken { name, text } = fact {
        state.files.insert(name, text);
    } else if let Fact::PlanTaken { rows, .. } = fact {
        for row in rows {
            let of = (row.date, row.lifter.clone());
            state.plan.entry(of).or_default().push(row);
        }
    } else if let Fact::RotationPlanned { station, turns } = fact {
        state.rotations.insert(station, turns);
    } else if let Fact::ScreenShown(shown) = fact {
        state.shown = Some(*shown);
    } else if let Fact::CoachSaid(word) = fact {
        let health = state.health.entry(word.lifter.clone());
        health.or_default().hear(&word);
    } else {
        return Err(Unfit);
    }
    Ok(())
}

fn sheet(fact: Fact) -> Fit<LiftSheet> {
    let Fact::LiftBegun { sheet, .. } = fact else {
        return Err(Unfit);
    };
    Ok(*sheet)
}

fn lift<'a>(state: &mut State, own: Run, lines: &mut impl Iterator<Item = &'a str>) -> Fit<()> {
    let mut before = Vec::new();
    for _ in 0..own.settled {
        before.push(sheet(next_fact(lines)?)?.rungs);
    }
    let mut followed = Vec::new();
    for entries in own.followed {
        followed.push((entries, sheet(next_fact(lines)?)?.rungs));
    }
    let sheet = sheet(next_fact(lines)?)?;
    let mut next = None;
    if own.next {
        let Fact::NextDecided { decided, .. } = next_fact(lines)? else {
            return Err(Unfit);
        };
        let mut ruled = None;
        if let Some(at) = own.ruled_at {
            let Fact::NextOverridden { load, note, .. } = next_fact(lines)? else {
                return Err(Unfit);
            };
            let at = Moment(at);
            ruled = Some(Ruled { load, note, at });
        }
        next = Some(NextTime {
            decided: *decided,
            ruled,
        });
    }
    state.stand(LiftRun {
        no: LiftNo(own.no),
        sheet,
        day: day(own.day)?,
        begun_at: Moment(own.begun_at),
        date_guessed: own.date_guessed,
        entries: own.entries.into_iter().map(entry).collect(),
        next,
        attendance: own.here.attendance(),
        efforts: own.efforts,
        before,
        followed,
        attended: own
            .attended
            .into_iter()
            .map(|(here, unsaid)| (here.attendance(), unsaid.map(Here::attendance)))
            .collect(),
        unsaid: own.unsaid.map(Here::attendance),
        is_lean: own.lean,
    });
    Ok(())
}

fn bar<'a>(state: &mut State, own: &Bar, lines: &mut impl Iterator<Item = &'a str>) -> Fit<()> {
    let mut word = || -> Fit<BarWord> {
        let Fact::BarSaid(word) = next_fact(lines)? else {
            return Err(Unfit);
        };
        Ok(*word)
    };
    let said = word()?;
    let mut more = |there: bool| -> Fit<Option<Stacks>> {
        there.then(|| word().map(|word| word.holds)).transpose()
    };
    let (ordered, before) = (more(own.ordered)?, more(own.before)?);
    let bar = BelievedBar {
        rack: said.rack,
        holds: said.holds,
        said: said.said,
        at: Moment(own.at),
        date: said.date,
        ordered,
        doubted: own.doubted,
        before,
    };
    state.bars.insert(said.bar, bar);
    Ok(())
}
