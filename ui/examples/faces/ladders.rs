//! Ladders of invented lifters.
use super::draw::ladder;
use RowState::{Ahead, Done, Moved, Now, Other, Skipped};
use view::draw::{LadderRow, RowState};

pub(crate) fn five_rungs(states: [RowState; 5]) -> Vec<LadderRow> {
    let rungs = [
        ("60", "×5"),
        ("90", "×3"),
        ("130", "×2"),
        ("165", "×1"),
        ("180", "×5"),
    ];
    let mut rows: Vec<_> = rungs
        .iter()
        .zip(states)
        .map(|(rung, state)| (rung.0, rung.1, state, ""))
        .collect();
    rows[4].3 = "work";
    ladder(&rows)
}

pub(crate) fn eight_rungs() -> Vec<LadderRow> {
    ladder(&[
        ("20", "×5", Done, ""),
        ("70", "×5", Other, "4 of 5"),
        ("120", "×5", Skipped, "skipped"),
        ("170", "×3", Moved, "back moved at 3"),
        ("222.5", "×2", Done, ""),
        ("285", "×1", Now, ""),
        ("317.5", "×5", Ahead, "work"),
        ("317.5", "×5", Ahead, "work"),
    ])
}
