//! Tests of what the gym's network sees.
mod gym;
mod limits;
mod refusals;
mod shown;
mod socket;
