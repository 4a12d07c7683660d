//! Tests of what the gym's network sees.
mod bytes;
mod doors;
mod guesses;
mod gym;
mod languages;
mod limits;
mod pages;
mod programme;
mod refusals;
mod refused;
mod secure;
mod shown;
mod socket;
