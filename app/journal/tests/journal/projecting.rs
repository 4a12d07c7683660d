//! Whatever happens, the record is what the rules say: held to plain stacks and to the state.
use crate::recording::{all, place, sets};
use crate::strategies;
use domain::state::State;
use domain::{Event, Fact, LiftNo};
use journal::Record;
use proptest::collection::vec;
use proptest::prelude::*;
use rusqlite::types::Value;
use std::collections::BTreeMap;

/// The rules once more, as plain stacks: rungs of each lift, and per entry its set if it is one.
type Stacks = BTreeMap<LiftNo, (usize, Vec<Option<(u64, u16)>>)>;

fn stacks(events: &[Event]) -> Stacks {
    let mut lifts = Stacks::new();
    for (seq, event) in (1_u64..).zip(events) {
        let (no, entry) = match &event.fact {
            Fact::FileTaken { .. } | Fact::PlanTaken { .. } | Fact::RotationPlanned { .. } => {
                continue;
            }
            Fact::LiftBegun { no, sheet } => {
                lifts.insert(*no, (sheet.rungs.len(), Vec::new()));
                continue;
            }
            Fact::EntryUndone { no } => {
                if lifts
                    .get_mut(no)
                    .is_some_and(|(_, entries)| entries.pop().is_none())
                {
                    lifts.remove(no);
                }
                continue;
            }
            Fact::SetDone { no, rung, .. } => (no, Some((seq, *rung))),
            Fact::RungSkipped { no, .. } | Fact::LiftStopped { no } | Fact::WentOn { no } => {
                (no, None)
            }
        };
        if let Some((_, entries)) = lifts.get_mut(no) {
            entries.push(entry);
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
                .flat_map(|(no, (rungs, entries))| {
                    let sets = entries.into_iter().flatten();
                    sets.filter(move |(_, rung)| usize::from(*rung) < rungs)
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
        let lifts: Vec<_> = stepped["lifts"].iter().map(|row| (integer(&row[0]), integer(&row[11]))).collect();
        let stand: Vec<_> = state.lifts.values()
            .map(|run| (i64::from(run.no.0), i64::from(run.is_stopped())))
            .collect();
        prop_assert_eq!(lifts, stand);
        let entries: usize = state.lifts.values().map(|run| run.entries.len()).sum();
        prop_assert_eq!(stepped["entries"].len(), entries);
    }
}
