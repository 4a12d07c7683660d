//! What a coach's head holds: bodies, steel, floors, singles.
mod body;
mod floor;
mod gym;
mod next;
mod place;
mod single;
mod steel;
