//! How many requests were answered, by class of status.
use axum::http::StatusCode;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};

/// From 1xx to 5xx; clones are the same.
#[derive(Debug, Clone, Default)]
pub(crate) struct Counts(Arc<[AtomicU64; 5]>);

impl Counts {
    pub(crate) fn count(&self, status: StatusCode) {
        let class = usize::from(status.as_u16() / 100);
        if let Some(count) = class.checked_sub(1).and_then(|at| self.0.get(at)) {
            count.fetch_add(1, Ordering::Relaxed);
        }
    }

    /// Each class with its count.
    pub(crate) fn all(&self) -> impl Iterator<Item = (usize, u64)> {
        let counts = self.0.iter().map(|count| count.load(Ordering::Relaxed));
        (1..).zip(counts)
    }
}
