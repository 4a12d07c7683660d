//! A whole kiosk on a bench: real widgets, found by their labels; a clock that obeys the test.
//!
//! Refuses: looking inside; a test sees what a finger and an eye would.
#[path = "../bench/mod.rs"]
mod bench;
#[path = "../scenarios/cautions.rs"]
mod cautions;
#[path = "../scenarios/coaching.rs"]
mod coaching;
#[path = "../scenarios/counted.rs"]
mod counted;
#[path = "../scenarios/days.rs"]
mod days;
#[path = "../scenarios/desk.rs"]
mod desk;
#[path = "../scenarios/due.rs"]
mod due;
#[path = "../scenarios/groups.rs"]
mod groups;
#[path = "../scenarios/guarded.rs"]
mod guarded;
#[path = "../scenarios/hardware.rs"]
mod hardware;
#[path = "../scenarios/idle.rs"]
mod idle;
#[path = "../scenarios/ladder.rs"]
mod ladder;
#[path = "../scenarios/meet.rs"]
mod meet;
#[path = "../scenarios/mistake.rs"]
mod mistake;
#[path = "../scenarios/panel.rs"]
mod panel;
#[path = "../scenarios/planned.rs"]
mod planned;
#[path = "../scenarios/power.rs"]
mod power;
#[path = "../scenarios/removed.rs"]
mod removed;
#[path = "../scenarios/rotation.rs"]
mod rotation;
#[path = "../scenarios/ruled.rs"]
mod ruled;
#[path = "../scenarios/settle.rs"]
mod settle;
#[path = "../scenarios/shared.rs"]
mod shared;
#[path = "../scenarios/turns.rs"]
mod turns;
