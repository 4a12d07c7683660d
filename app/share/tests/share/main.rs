//! Tests of what the gym's network sees.
mod doors;
mod gym;
mod limits;
mod pages;
mod refusals;
mod secure;
mod shown;
mod socket;
