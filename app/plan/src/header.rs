//! Whether a row heads the rows below it, and what its cells say of columns.
//!
//! Refuses: rows with numbers, which most rows of a plan have and no header.
use crate::against::Against;
use crate::cells::{CellKind, SheetRow};
use crate::columns::{self, TITLES_MAX};
use crate::facts::{self, Facts};
use crate::scheme::{self, Bare, Beside};
use domain::MassUnit;

/// What the cells of a row are, looked at as a header.
#[derive(Debug, Default)]
struct Scan {
    keys: usize,
    /// The first cell that is filled.
    first: Option<usize>,
    /// Of those, how many end as labels do.
    labels: usize,
    key: Option<&'static str>,
    facts: Vec<(usize, Facts)>,
    told: usize,
    filled: usize,
    numbers: usize,
    schemes: usize,
}

fn scan(row: &SheetRow<'_>, against: &Against<'_>) -> Scan {
    let mut scan = Scan::default();
    for at in 0..row.cells.len() {
        let text = row.text(at);
        if text.is_empty() {
            continue;
        }
        scan.filled += 1;
        scan.first.get_or_insert(at);
        if let Some((key, _)) = columns::column(text) {
            scan.keys += 1;
            scan.key = Some(key);
            scan.labels += usize::from(text.ends_with(':'));
            continue;
        }
        match facts::read(text, against) {
            Ok(Some(facts)) if facts.kinds() != 0 => scan.facts.push((at, facts)),
            Err(_) => scan.told += 1,
            Ok(_) if headed_sets(text, against).is_some() => {
                let facts = headed_sets(text, against).map(|(facts, _)| (at, facts));
                scan.facts.extend(facts);
            }
            Ok(_) if matches!(row.kind(at), CellKind::Number | CellKind::Share) => {
                scan.numbers += 1;
            }
            Ok(_) => scan.schemes += usize::from(is_scheme(text)),
        }
    }
    scan
}

/// A header such as "rack pull 1x5": the lift, and the sets and reps of the loads below.
pub(crate) fn headed_sets(text: &str, against: &Against<'_>) -> Option<(Facts, String)> {
    let Some((lift, rest)) = against.lift_in_front(text) else {
        // "Mon Rack pull 1x5": the day first.
        let (front, behind) = text.split_once([' ', ':', '\n'])?;
        let when = facts::read(front, against).ok()??;
        let (facts, sets) = headed_sets(behind.trim(), against)?;
        let fits = when.kinds() != 0 && when.kinds() & !0b111 == 0;
        return fits.then(|| (facts.or(&when), sets));
    };
    let rest = rest.trim_matches(['(', ')', '[', ']']);
    let beside = Beside {
        has_load: true,
        ..Beside::default()
    };
    let read = scheme::read(rest, Bare::Unknown, &beside).ok()?;
    let plain = read.notes.is_empty() && read.groups.iter().all(|group| group.load.is_none());
    let facts = Facts {
        lift: Some(lift),
        ..Facts::default()
    };
    (plain && rest.contains(|c: char| c.is_ascii_digit())).then(|| (facts, rest.to_owned()))
}

/// Whether a text is sets and reps by itself.
pub(crate) fn is_scheme(text: &str) -> bool {
    let digits = text.contains(|c: char| c.is_ascii_digit());
    let bare = Bare::Unit(MassUnit::Kg);
    digits
        && text.contains(['x', 'X', '\u{d7}', '*', '@'])
        && scheme::read(text, bare, &Beside::default()).is_ok()
}

fn is_axis(facts: &[(usize, Facts)]) -> bool {
    let Some((_, first)) = facts.first() else {
        return false;
    };
    let kinds = first.kinds();
    facts.iter().all(|(_, facts)| facts.kinds() == kinds)
        && facts.iter().any(|(_, facts)| facts != first)
}

/// What stands in the corner of a header for all rows below it, and in which cell.
pub(crate) fn corner(row: &SheetRow<'_>, against: &Against<'_>) -> Option<(usize, Facts)> {
    let scan = scan(row, against);
    scan.corner().cloned()
}

impl Scan {
    /// Different facts of one kind side by side: weeks, days, people, lifts.
    fn is_axis(&self) -> bool {
        is_axis(&self.facts) || self.corner().is_some()
    }

    /// A fact of another kind in the corner of an axis, which holds for all rows below: "Monday"
    /// before the weeks, a name before the days.
    fn corner(&self) -> Option<&(usize, Facts)> {
        let (corner, others) = self.facts.split_first()?;
        let kinds = others.first()?.1.kinds();
        let here = self.first == Some(corner.0) && corner.1.kinds() & kinds == 0;
        // Lifts behind a name are that lifter's work.
        (here && kinds & 0b1_0000 == 0 && is_axis(others)).then_some(corner)
    }

    fn is_header(&self, is_first: bool) -> bool {
        if self.keys >= 2 {
            return is_first || self.keys * 2 + self.facts.len() >= self.filled;
        }
        if self.schemes > 0 || self.numbers > 0 {
            return false;
        }
        let one_kind = self
            .facts
            .windows(2)
            .all(|two| two[0].1.kinds() == two[1].1.kinds());
        // "Lifter: | Hamza" is a label and its value, no header.
        let kind = match self.key {
            Some("date" | "week" | "weekday") => 0b111,
            Some("lifter") => 0b1000,
            Some("lift") => 0b1_0000,
            // "2026-12-08 | rest" is a day off, no header.
            Some(_) | None => return self.is_axis() && self.labels == 0,
        };
        let labels = self
            .facts
            .iter()
            .any(|(_, facts)| facts.kinds() & kind != 0);
        let of_facts = self.facts.len() + self.told;
        let headed = self.keys == 1 && of_facts > 0 && one_kind && self.labels == 0;
        self.is_axis() && self.labels == 0
            || headed && (!labels || of_facts > 1) && self.keys + of_facts == self.filled
    }
}

/// Whether a row heads the rows below it; the first header is known by two columns alone.
pub(crate) fn is_header(row: &SheetRow<'_>, is_first: bool, against: &Against<'_>) -> bool {
    let count = |at: usize| {
        let text = row.text(at);
        let digits = !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
        digits
            || matches!(
                row.kind(at),
                CellKind::Number | CellKind::Share | CellKind::Time
            )
    };
    // Most rows of a plan hold a number, and no header does.
    let may = row.broken.is_none() && !(0..row.cells.len()).any(count);
    may && scan(row, against).is_header(is_first)
}

/// Which of the rows is the first header: titles may stand above it.
pub(crate) fn header_at(rows: &[SheetRow<'_>], against: &Against<'_>) -> Option<usize> {
    let mut top = rows.iter().take(TITLES_MAX);
    top.position(|row| is_header(row, true, against))
}

/// Whether rows without any header say lift, sets and reps by themselves.
pub(crate) fn speaks_for_itself(rows: &[SheetRow<'_>], against: &Against<'_>) -> bool {
    rows.iter().take(TITLES_MAX * 5).any(|row| {
        let texts = (0..row.cells.len()).map(|at| row.text(at));
        let of_lift = |text: &str| against.lifts.lookup(text).is_some();
        let alone = texts.clone().any(of_lift) && texts.clone().any(is_scheme);
        let together = |text: &str| {
            let behind = against.lift_in_front(text);
            behind.is_some_and(|(_, rest)| is_scheme(rest))
        };
        alone || texts.clone().any(together)
    })
}
