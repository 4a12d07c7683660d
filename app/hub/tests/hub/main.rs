//! Tests of the hub against a real PostgreSQL server on loopback.
mod copies;
mod gym;
mod lifts;
mod meeting;
mod rights;
mod server;
mod way;
