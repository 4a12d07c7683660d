//! The pure core: what a command means, what events make of the state, and the planners.
//!
//! Refuses: clocks, files, threads, random sources, hash order, floats that decide a load.
//! `no_std` lets the compiler say so. Time comes in as a parameter.
#![no_std]
#![forbid(unsafe_code)]

extern crate alloc;

pub mod attendance;
pub mod believed;
pub mod body;
pub mod coach_word;
pub mod contradicted;
pub mod day;
pub mod decide;
pub mod decimal;
pub mod disc_height;
pub mod elsewhere;
pub mod equipment;
pub mod event;
pub mod gaps;
pub mod gym;
pub mod hold;
pub mod ladder;
pub mod length;
pub mod lift;
pub mod lift_bar;
pub mod lift_no;
pub mod lift_shipped;
pub mod lifter;
pub mod manner;
pub mod mass;
pub mod meet;
pub mod meet_card;
pub mod meet_day;
pub mod meet_order;
pub mod meet_round;
pub mod moment;
pub mod needs;
pub mod next;
pub mod order;
pub mod past;
pub mod place;
pub mod planned_odd;
pub mod plausible;
pub mod prescription;
pub mod programme;
pub mod resting;
pub mod rotation;
pub mod settle;
pub mod settled;
pub mod sheet;
pub mod shown;
pub mod single;
pub mod solve;
pub mod split;
pub mod state;
pub mod steady;
pub mod steel;
pub mod stress;
pub mod track;
pub mod training_day;
pub mod turn;
pub mod weighed;

pub use decide::{Command, DayCommand, Refusal, decide, load_in_range};
pub use equipment::{Bar, BarCondition, Plate, PlateFace, PlateSet, Rack};
pub use event::{Event, Fact, Hold, LiftNo};
pub use gym::Gym;
pub use length::{Length, LengthUnit};
pub use lift::Lift;
pub use lifter::Lifter;
pub use mass::{Mass, MassUnit};
pub use moment::Moment;
pub use prescription::Prescription;
pub use sheet::{LiftSheet, Rung};
pub use state::{LiftRun, State};
pub use stress::Stress;
pub use track::{Track, TrackName};
