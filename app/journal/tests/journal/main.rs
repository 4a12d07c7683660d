//! Tests of the journal as its users see it.
mod invented;
mod keeping;
mod proof;
mod strategies;
mod wire_form;
