//! share
