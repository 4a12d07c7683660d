//! Tests of the journal as its users see it.
mod faults;
mod invented;
mod keeping;
mod killed;
mod proof;
mod strategies;
mod wire_form;
