//! The planners: exact optima, ties broken the same way every time. Refuses: floats that decide.
