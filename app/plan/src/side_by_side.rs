//! Tables that stand side by side on one sheet, to a sheet of rows each.
//!
//! Refuses: to give a name over one table to the other.
use crate::against::Against;
use crate::cells::{CELLS_MAX, CellKind, SheetRow};
use crate::columns;
use crate::header;
use crate::nearest::squeeze;
use crate::titles::alone;
use std::borrow::Cow;
use std::ops::Range;

/// Columns that a table may begin with, of which a second one begins another table.
const BEGINS: [&str; 5] = ["date", "week", "weekday", "lifter", "lift"];

/// The rows of each table from left to right; one that is nothing stands for the rows as they are,
/// where there is one table alone.
pub(crate) fn strips<'t>(
    rows: &[&SheetRow<'t>],
    against: &Against<'_>,
) -> Vec<Option<Vec<SheetRow<'t>>>> {
    let mut top = rows.iter().take(columns::TITLES_MAX);
    let head = top.position(|row| header::is_header(row, true, against));
    let Some(head) = head else {
        return vec![None];
    };
    // Where a header has several rows, the lowest names the columns.
    let below = rows.get(head + 1);
    let lower = below.filter(|row| header::is_header(row, false, against));
    let names = lower.unwrap_or(&rows[head]);
    let spans = spans(names);
    if spans.len() < 2 {
        return vec![None];
    }
    let strip = |(at, span): (usize, &Range<usize>)| {
        let rows = rows.iter().filter_map(|row| {
            let mut own = within(row, span, at == 0);
            if row.number < names.number {
                own.lead();
            }
            if !own.is_empty() {
                return Some(own);
            }
            is_shared(row, &spans, against).then(|| (*row).clone())
        });
        Some(rows.collect())
    };
    spans.iter().enumerate().map(strip).collect()
}

/// Where each table of a header stands: from one column that rows begin with to the next of its
/// kind, if the columns of each are two at least and each stands once.
fn spans(header: &SheetRow<'_>) -> Vec<Range<usize>> {
    let keys = (0..header.cells.len())
        .filter_map(|at| columns::column(header.text(at)).map(|(key, _)| (at, key)));
    let keys: Vec<(usize, &str)> = keys.collect();
    let Some((_, first)) = keys.first().filter(|(_, key)| BEGINS.contains(key)) else {
        return Vec::new();
    };
    // "Date | Lift | Day" is one table with a day of another kind; a second table says "Date" again.
    let spelling = |at: usize| squeeze(header.text(at));
    let begins = keys
        .iter()
        .filter(|(at, key)| key == first && spelling(*at) == spelling(keys[0].0))
        .map(|(at, _)| *at);
    let begins: Vec<usize> = begins.collect();
    let ends = begins.iter().skip(1).copied().chain([CELLS_MAX]);
    let spans = begins.iter().zip(ends).map(|(from, to)| *from..to);
    let mut spans: Vec<Range<usize>> = spans.collect();
    let once = |span: &Range<usize>| {
        let own: Vec<&str> = keys
            .iter()
            .filter(|(at, _)| span.contains(at))
            .map(|(_, key)| *key)
            .collect();
        own.len() >= 2 && (1..own.len()).all(|at| !own[..at].contains(&own[at]))
    };
    if !spans.iter().all(once) {
        return Vec::new();
    }
    // What stands left of the first column belongs to it.
    if let Some(first) = spans.first_mut() {
        first.start = 0;
    }
    spans
}

/// A row of which the cells outside a table are empty.
fn within<'t>(row: &SheetRow<'t>, span: &Range<usize>, is_first: bool) -> SheetRow<'t> {
    let mut own = row.clone();
    for (at, cell) in own.cells.iter_mut().enumerate() {
        if !span.contains(&at) {
            *cell = Cow::Borrowed("");
        }
    }
    for (at, kind) in own.kinds.iter_mut().enumerate() {
        if !span.contains(&at) {
            *kind = CellKind::Text;
        }
    }
    let bits = (0..CELLS_MAX).filter(|at| span.contains(at));
    let mask = bits.fold(0_u64, |mask, at| mask | 1 << at);
    (own.struck, own.spread) = (own.struck & mask, own.spread & mask);
    // What is wrong with the quotes of a row is told once.
    own.broken = own.broken.filter(|_| is_first);
    own
}

impl SheetRow<'_> {
    /// Puts what stands alone over a table to its front, as a title.
    fn lead(&mut self) {
        let mut filled = (0..self.cells.len()).filter(|at| !self.text(*at).is_empty());
        if let (Some(at), None) = (filled.next(), filled.next()) {
            self.cells.swap(0, at);
            self.kinds.resize(self.cells.len(), CellKind::Text);
            self.kinds.swap(0, at);
            // Over the width of the table, as titles are.
            self.spread = 0;
        }
    }
}

/// Whether a row over one table alone holds for all of them: a week, a month or the first Monday;
/// a name only where it is labelled, as "Lifter: Hamza".
fn is_shared(row: &SheetRow<'_>, spans: &[Range<usize>], against: &Against<'_>) -> bool {
    let over = spans
        .iter()
        .filter(|span| (*span).clone().any(|at| !row.text(at).is_empty()));
    if row.broken.is_some() || over.count() != 1 {
        return false;
    }
    alone(row, against, true).is_some_and(|facts| {
        let labelled = row.cells.iter().any(|cell| cell.contains(':'));
        let nobody = facts.lifter.is_none() || labelled;
        let whole = nobody && facts.lift.is_none() && facts.weekday.is_none();
        whole && facts.date.is_none() && facts.track.is_none()
    })
}
