//! hardware
