//! What a coach's head holds: bodies, steel, small discs, singles, programmes, next time.
#![allow(
    clippy::wildcard_enum_match_arm,
    reason = "a test looks at what it is about"
)]
mod body;
mod coach_list;
#[path = "../dice/mod.rs"]
#[allow(dead_code, reason = "each test uses a part of the dice")]
mod dice;
mod disc_height;
mod fill;
mod followed;
mod groups;
mod gym;
mod health;
mod manner;
mod next;
mod not_made;
mod other_bar;
mod place;
mod plausible;
mod programme;
mod recorded;
mod resting;
mod seasons;
mod settle;
mod single;
mod split;
mod steel;
mod tracks;
mod whole_steps;
