//! Tests of the journal as its users see it.
mod copies;
mod faults;
mod invented;
mod invented_days;
mod invented_next;
mod invented_turns;
mod keeping;
mod killed;
mod projecting;
mod proof;
mod rebuilding;
mod recording;
mod released;
mod rude;
mod strategies;
mod strategies_next;
mod wire_form;
