//! Rotations small enough to be worked out by hand.
