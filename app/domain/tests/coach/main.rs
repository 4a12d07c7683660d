//! What a coach's head holds: bodies, steel, floors.
mod body;
mod floor;
mod gym;
mod place;
mod steel;
