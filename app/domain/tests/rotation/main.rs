//! The rotation planner against exhaustive search, against a replay of its plans, and by hand.
//!
//! Every expected figure is worked out here, by other means than the planner's; there is no
//! outside source for a rotation.
mod crowds;
mod exhaust;
mod fair;
mod hand;
mod random;
mod replay;
mod sized;
mod small;
mod stations;
mod whole;
