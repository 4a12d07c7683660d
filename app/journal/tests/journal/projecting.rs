//! Whatever happens, the record is what the rules say: held to plain stacks and to the state.
use crate::recording::{all, place, sets};
use crate::strategies;
use domain::elsewhere::DoneThere;
use domain::sheet::RungKind;
use domain::state::{Entered, State};
use domain::{Event, Fact, LiftNo};
use journal::Record;
use proptest::collection::vec;
use proptest::prelude::*;
use rusqlite::types::Value;
use std::collections::BTreeMap;

/// An entry as it matters here.
#[derive(Clone, Copy, PartialEq)]
enum Row {
    Set(u64, u16),
    Skip,
    Stop,
    WentOn,
    Settle,
    /// A load that was settled at another kiosk: its sheet came with it.
    SettledThere,
    LeftOpen,
}

/// The rules once more, as plain stacks: rungs of each lift, and its entries.
type Stacks = BTreeMap<LiftNo, (Vec<RungKind>, Vec<Row>)>;

/// Whether a load may be settled there: the rung of now, and only work sets from it on.
fn fits((rungs, rows): &(Vec<RungKind>, Vec<Row>), rung: u16) -> bool {
    let passed = rows
        .iter()
        .filter(|r| matches!(r, Row::Set(..) | Row::Skip));
    let left = rungs.get(usize::from(rung)..).unwrap_or_default();
    let ended = matches!(rows.last(), Some(Row::Stop | Row::LeftOpen));
    let here = passed.count() == usize::from(rung) && !ended;
    here && !left.is_empty() && left.iter().all(|kind| *kind == RungKind::Work)
}

fn there(seq: u64, done: &DoneThere) -> Row {
    match done.what {
        Entered::Set { .. } => Row::Set(seq, done.rung),
        Entered::Skipped => Row::Skip,
        Entered::Stopped => Row::Stop,
        Entered::WentOn => Row::WentOn,
        Entered::Settled => Row::SettledThere,
        Entered::LeftOpen => Row::LeftOpen,
    }
}

fn stacks(events: &[Event]) -> Stacks {
    let mut lifts = Stacks::new();
    for (seq, event) in (1_u64..).zip(events) {
        let (no, row) = match &event.fact {
            Fact::FileTaken { .. }
            | Fact::PlanTaken { .. }
            | Fact::DayCleared { .. }
            | Fact::RotationPlanned { .. }
            | Fact::NextDecided { .. }
            | Fact::NextOverridden { .. }
            | Fact::BarSaid(_)
            | Fact::BarWordUndone { .. }
            | Fact::TurnDeferred { .. }
            | Fact::TurnPassed { .. }
            | Fact::TurnClaimed { .. }
            | Fact::RestLengthened { .. }
            | Fact::LifterLeft { .. }
            | Fact::LifterReturned { .. }
            | Fact::TurnUnsaid { .. }
            | Fact::ScreenShown(_)
            | Fact::CoachSaid(_)
            | Fact::LoadsFollowed { .. }
            | Fact::EffortSaid { .. }
            | Fact::ClockAnchored { .. }
            | Fact::ClockSet { .. }
            | Fact::LiftRedated { .. } => continue,
            Fact::LiftReopened { no, .. } => {
                if let Some((_, rows)) = lifts.get_mut(no)
                    && rows.last() == Some(&Row::LeftOpen)
                {
                    rows.pop();
                }
                continue;
            }
            Fact::LiftBegun { no, sheet } | Fact::BegunElsewhere { no, sheet, .. } => {
                let kinds = sheet.rungs.iter().map(|rung| rung.kind);
                lifts.insert(*no, (kinds.collect(), Vec::new()));
                continue;
            }
            Fact::EntryUndone { no } => {
                if lifts
                    .get_mut(no)
                    .is_some_and(|(_, rows)| rows.pop().is_none())
                {
                    lifts.remove(no);
                }
                continue;
            }
            Fact::LoadSettled { no, settled } => {
                if !lifts.get(no).is_some_and(|lift| fits(lift, settled.rung)) {
                    continue;
                }
                (no, Row::Settle)
            }
            Fact::SetDone { no, rung, .. } => (no, Row::Set(seq, *rung)),
            Fact::RungSkipped { no, .. } => (no, Row::Skip),
            Fact::LiftStopped { no } => (no, Row::Stop),
            Fact::WentOn { no } => (no, Row::WentOn),
            Fact::LiftLapsed { no } => (no, Row::LeftOpen),
            Fact::DoneElsewhere { no, done } => (no, there(seq, done)),
        };
        if let Some((_, rows)) = lifts.get_mut(no) {
            rows.push(row);
        }
    }
    lifts
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]
    #[test]
    fn step_by_step_is_what_making_it_again_is_and_what_the_state_says(
        portions in vec(vec(strategies::event(0..3_u32), 0..8), 1..6),
    ) {
        let mut place = place(&[]);
        let mut record = Record::open(&place.record).expect("opens");
        let mut last = 0;
        for portion in &portions {
            last = place.journal.append(last, portion).expect("appends");
            let followed = record.follow(&place.journal).expect("follows");
            prop_assert_eq!(followed.upto, last);
        }
        let stepped = all(&place.record);
        record.rebuild(&place.journal).expect("rebuilds");
        prop_assert_eq!(&all(&place.record), &stepped);

        let events = portions.concat();
        let expected: Vec<(u64, u32, u32)> = {
            let mut sets: Vec<_> = stacks(&events)
                .into_iter()
                .flat_map(|(no, (rungs, rows))| {
                    let sets = rows.into_iter().filter_map(|row| match row {
                        Row::Set(seq, rung) => Some((seq, rung)),
                        Row::Skip
                        | Row::Stop
                        | Row::WentOn
                        | Row::Settle
                        | Row::SettledThere
                        | Row::LeftOpen => None,
                    });
                    sets.filter(move |(_, rung)| usize::from(*rung) < rungs.len())
                        .map(move |(seq, rung)| (seq, no.0, u32::from(rung) + 1))
                })
                .collect();
            sets.sort_unstable();
            sets
        };
        let found = sets(&place.record);
        let found: Vec<_> = found.iter().map(|set| (set.seq, set.lift_no, set.rung)).collect();
        prop_assert_eq!(found, expected);

        let state = State::replay(&events);
        let integer = |value: &Value| {
            let Value::Integer(n) = value else { panic!("{value:?}") };
            *n
        };
        let lifts: Vec<_> = stepped["lifts"].iter()
            .map(|row| (integer(&row[0]), row[4].clone(), integer(&row[11]), integer(&row[14])))
            .collect();
        let stand: Vec<_> = state.lifts.values()
            .map(|run| (
                i64::from(run.no.0),
                Value::Text(run.sheet.date.format("%Y-%m-%d").to_string()),
                i64::from(run.is_stopped()),
                i64::from(run.is_left_open()),
            ))
            .collect();
        prop_assert_eq!(lifts, stand);
        let entries: usize = state.lifts.values().map(|run| run.entries.len()).sum();
        prop_assert_eq!(stepped["entries"].len(), entries);
        let settled: usize = state.lifts.values()
            .map(|run| run.entries.iter().filter(|e| e.what == Entered::Settled).count())
            .sum();
        let there = stacks(&events).into_values().flat_map(|(_, rows)| rows);
        let there = there.filter(|row| *row == Row::SettledThere).count();
        let mut by_entry: Vec<i64> = stepped["settled"].iter().map(|row| integer(&row[0])).collect();
        by_entry.dedup();
        prop_assert_eq!(by_entry.len() + there, settled);
        // Lift, load by the rules, load by the coach.
        let due: Vec<_> = stepped["next_times"].iter()
            .map(|row| (integer(&row[0]), integer(&row[3]), row[5].clone()))
            .collect();
        let stand: Vec<_> = state.lifts.values()
            .filter_map(|run| {
                let next = run.next.as_ref()?;
                let coach = next.ruled.as_ref().map(|ruled| ruled.load.ng());
                let coach = coach.map_or(Value::Null, Value::Integer);
                Some((i64::from(run.no.0), next.decided.decision.load.ng(), coach))
            })
            .collect();
        prop_assert_eq!(due, stand);
    }
}
