//! A year judged as a coach would: what nobody would sign.
use crate::life::{Done, Year};
use domain::next::Why;
use domain::next::outing::Went;
use domain::{Mass, Track};
use std::collections::BTreeMap;

/// The smallest step of the demo gym's kilo plates, and the rounding of a share to them.
const STEP: i64 = 1_000_000_000_000;

pub(crate) fn judge(year: &Year, who: &str) {
    let mut tracks: BTreeMap<(&str, Track), Vec<&Done>> = BTreeMap::new();
    for done in &year.done {
        let of = (done.lift.as_str(), done.track);
        tracks.entry(of).or_default().push(done);
    }
    for ((lift, track), all) in tracks {
        for pair in all.windows(2) {
            let told = || format!("{who}: {lift} {track:?} on {}", pair[1].date);
            let between = |done: &&Done| done.date > pair[0].date && done.date <= pair[1].date;
            // Days without any lift, the longest time since they did this one.
            let idle = year.done.iter().filter(between).map(|done| done.idle_days);
            judge_pair(pair[0], pair[1], idle.max().unwrap_or(0), &told);
        }
        let mut heaviest = all[0].outing.load;
        for done in &all[1..] {
            // Law 4: no step is over a tenth, beyond the heaviest that was done.
            let most = Mass::from_ng(heaviest.ng() / 10 * 11 + STEP);
            assert!(done.outing.load <= most, "{who}: {lift} on {}", done.date);
            heaviest = heaviest.max(done.outing.load);
        }
    }
}

fn judge_pair(before: &Done, after: &Done, idle_days: u64, told: &dyn Fn() -> String) {
    let due = after
        .due
        .as_ref()
        .unwrap_or_else(|| panic!("{}: nothing due", told()));
    let decision = &due.decision;
    let load = after.outing.load;
    // Law 6: the lower of plan and due first, unless the coach has ruled.
    if !after.is_ruled() {
        assert!(load <= decision.load, "{}: {load:?} over {due:?}", told());
    }
    let asks_more = after.planned.is_some_and(|planned| planned > decision.load);
    assert!(
        !(asks_more && load < decision.load),
        "{}: {:?} {load:?} planned {:?} {decision:?}",
        told(),
        after.works,
        after.planned
    );
    if after.is_ruled() {
        return;
    }
    match before.outing.went {
        // Law 1: who did all that was asked is never lowered because of it.
        Went::Well => {
            let rested = matches!(decision.why, Why::Away | Why::Ill | Why::LongAgo);
            let lowered = decision.load < before.outing.load;
            assert!(
                !lowered || rested,
                "{}: {decision:?} {:?} {:?}",
                told(),
                before.outing,
                before.due
            );
        }
        // Nobody is raised over a load that went wrong.
        Went::Short { .. } | Went::Moved { .. } | Went::MovedWarm => {
            assert!(
                load <= decision.from.max(before.outing.load),
                "{}: {decision:?}",
                told()
            );
        }
        Went::Cut { .. } => {}
    }
    // Law 2: no break where they came every week since they did it last.
    if decision.why == Why::Away {
        assert!(idle_days > 6, "{}: {decision:?}", told());
    }
}
