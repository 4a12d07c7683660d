//! Days that count as a break: absence from a family of lifts beyond the programme's spacing, and
//! illness, which weighs more.
use super::Ill;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// A break as it counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Break {
    /// Days without the family beyond the programme's spacing.
    pub late: u16,
    /// Days of illness among all those since the last training.
    pub ill: u16,
    /// Both together, illness as often as the coach's file says.
    pub counted: u16,
}

/// The break on `date` after a last training on `since`.
#[must_use]
pub fn count(since: NaiveDate, date: NaiveDate, spacing: u16, ill: &[Ill], weight: u8) -> Break {
    let late = days(since, date).saturating_sub(spacing);
    let ill = days_ill(since, date, ill);
    Break {
        late,
        ill,
        counted: late.saturating_add(ill.saturating_mul(u16::from(weight))),
    }
}

/// Days from one to another; 0 backwards.
#[must_use]
pub fn days(since: NaiveDate, date: NaiveDate) -> u16 {
    let days = date.signed_duration_since(since).num_days();
    u16::try_from(days).unwrap_or(if days < 0 { 0 } else { u16::MAX })
}

/// Days of illness after `since` up to `date`, each counted once.
fn days_ill(since: NaiveDate, date: NaiveDate, ill: &[Ill]) -> u16 {
    let mut spans: Vec<Ill> = ill.to_vec();
    spans.sort_unstable();
    // The last day that is counted already.
    let mut counted = since;
    let mut sum = 0_u16;
    for span in spans {
        let before = span.from.pred_opt().unwrap_or(span.from).max(counted);
        let last = span.to.min(date);
        if last > before {
            sum = sum.saturating_add(days(before, last));
            counted = last;
        }
    }
    sum
}
