//! What the trace asks of a search. Refuses: nothing.
use super::prepare::Ready;

/// Prices of stretches over sets of pairs.
pub(super) trait Prices<P> {
    /// The pairs that lie beneath all of a stretch.
    type Set: Copy;

    /// The problem.
    fn ready(&self) -> &Ready<P>;

    /// No pairs at all.
    fn bare(&self) -> Self::Set;

    /// One more pair of `kind` on the outside, where that is allowed.
    fn with(&self, beneath: &Self::Set, kind: usize) -> Option<Self::Set>;

    /// A lower bound for rungs `first..=last`, read off at once. No rungs cost nothing.
    fn least(&self, first: usize, last: usize, beneath: &Self::Set) -> P;

    /// The least price of rungs `first..=last` over `beneath` if it is within `budget`, else a
    /// lower bound above `budget`.
    fn price(&mut self, first: usize, last: usize, beneath: &Self::Set, budget: P) -> P;

    /// The price of rung `rung` with nothing on top of `beneath`.
    fn alone(&self, rung: usize, beneath: &Self::Set) -> P;

    /// Whether the search broke off: then nothing that it returned since counts.
    fn spent(&self) -> bool;
}
