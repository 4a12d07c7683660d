//! What a coach's head holds: bodies, steel, floors, singles, programmes, next time.
mod body;
#[path = "../dice/mod.rs"]
mod dice;
mod fill;
mod floor;
mod gym;
mod next;
mod place;
mod programme;
mod seasons;
mod single;
mod steel;
