//! The cells of a header: which separator stands between them, which column each one names.
//!
//! Refuses: to guess at a misspelt column.
use crate::cells::{self, SheetRow};
use crate::fault::quote;
use crate::fields::{COLUMNS, MORE_COLUMNS, PlanColumn};
use crate::nearest::{nearest, one_of, squeeze};
use crate::words::{Words, words};
use std::collections::BTreeMap;
use std::sync::LazyLock;
use text::keys::checked as k;

/// The separators that are tried; the first wins when they do equally well.
const SEPARATORS: [char; 3] = [',', ';', '\t'];

/// Rows that are not empty among which the header is looked for: titles may stand above it.
pub(crate) const TITLES_MAX: usize = 20;

/// The separator with which a row at the top names the most columns.
pub(crate) fn separator(text: &str) -> char {
    let said = text
        .strip_prefix("sep=")
        .and_then(|rest| rest.chars().next());
    if let Some(said) = said.filter(|said| SEPARATORS.contains(said)) {
        return said;
    }
    let known = |separator: &char| {
        let rows = cells::rows(text, *separator).take(TITLES_MAX);
        rows.map(|row| named(&row)).max().unwrap_or(0)
    };
    // Where no row names columns, the one that makes the most cells.
    let cells = |separator: &char| {
        let rows = cells::rows(text, *separator).take(TITLES_MAX);
        rows.map(|row| row.cells.len() - 1).sum::<usize>()
    };
    // `max_by_key` gives the last of equals, so the order is turned round.
    SEPARATORS
        .into_iter()
        .rev()
        .max_by_key(|separator| match known(separator) {
            named @ 2.. => (named, 0),
            few if *separator == ',' => (0, few),
            few => (0, few + cells(separator)),
        })
        .unwrap_or(',')
}

/// How many cells of a row name a column.
pub(crate) fn named(row: &SheetRow<'_>) -> usize {
    let cells = row.cells.iter();
    cells.filter(|cell| column(cell).is_some()).count()
}

/// The unit of a whole column, written in its header: "load (kg)".
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct ColumnUnit(pub(crate) &'static str);

/// Units of a column of rests.
const TIMES: [(&str, ColumnUnit); 7] = [
    ("s", ColumnUnit("s")),
    ("sec", ColumnUnit("s")),
    ("secs", ColumnUnit("s")),
    ("seconds", ColumnUnit("s")),
    ("min", ColumnUnit("min")),
    ("mins", ColumnUnit("min")),
    ("minutes", ColumnUnit("min")),
];

const UNITS: [(&str, ColumnUnit); 4] = [
    ("kg", ColumnUnit("kg")),
    ("lb", ColumnUnit("lb")),
    ("lbs", ColumnUnit("lb")),
    ("%", ColumnUnit("%")),
];

/// Longest header that names a column, in bytes.
const HEADER_MAX: usize = 60;

/// Key of a column by each of its spellings, squeezed.
static SPELLINGS: LazyLock<BTreeMap<String, &'static str>> = LazyLock::new(|| {
    let of = |column: &'static PlanColumn| {
        let spellings = column.also.iter().chain([&column.field.key]);
        spellings.map(|spelling| (squeeze(spelling), column.field.key))
    };
    all().flat_map(of).collect()
});

/// Every column that a plan may have.
pub(crate) fn all() -> impl Iterator<Item = &'static PlanColumn> {
    COLUMNS.iter().chain(&MORE_COLUMNS)
}

/// Key of a header, however it is spelt, and its unit if it names one.
pub(crate) fn column(header: &str) -> Option<(&'static str, Option<ColumnUnit>)> {
    let plain = header.trim().trim_end_matches(['.', ':', '*']);
    if plain.len() > HEADER_MAX {
        return None;
    }
    let found = |text: &str| SPELLINGS.get(&squeeze(text)).copied();
    if let Some(key) = found(plain) {
        return Some((key, None));
    }
    if set_number(plain).is_some() {
        return Some(("scheme", None));
    }
    if let Some(unit) = share_of(plain) {
        return Some(("load", Some(unit)));
    }
    // A unit alone heads a column of loads.
    let lower = plain.to_lowercase();
    if let Some((_, unit)) = UNITS.iter().find(|(word, _)| *word == lower) {
        return Some(("load", Some(*unit)));
    }
    let loads = with_unit(plain, &UNITS).map(|read| (read, ["load", "scheme"]));
    let rests = with_unit(plain, &TIMES).map(|read| (read, ["rest", "rest"]));
    [loads, rests]
        .into_iter()
        .flatten()
        .find_map(|((front, unit), keys)| {
            let key = found(front).filter(|key| keys.contains(key))?;
            Some((key, Some(unit)))
        })
}

/// The number of "Set 1", where each set has a column of its own.
pub(crate) fn set_number(header: &str) -> Option<u8> {
    let plain = squeeze(header);
    let fronts = ["set", "satz", "workset", "serie", "s\u{e9}rie"];
    let number = fronts.iter().find_map(|front| plain.strip_prefix(front))?;
    let number = number.trim_start_matches('#').parse().ok();
    number.filter(|number| (1..=20).contains(number))
}

/// "% 1RM", "% of max", "% TM": a column of shares, and what they are of.
fn share_of(header: &str) -> Option<ColumnUnit> {
    let rest = squeeze(header.trim().strip_prefix('%')?);
    let of = rest.strip_prefix("of").unwrap_or(&rest);
    match of {
        "1rm" | "rm" | "max" | "best" | "pb" | "pr" => Some(ColumnUnit("%")),
        "tm" | "trainingmax" => Some(ColumnUnit("% TM")),
        _ => None,
    }
}

impl ColumnUnit {
    /// Whether bare numbers under it are shares.
    pub(crate) fn is_share(self) -> bool {
        self.0.starts_with('%')
    }
}

/// Splits "load (kg)", "load [kg]", "load in kg" or "load, kg".
fn with_unit<'h>(header: &'h str, units: &[(&str, ColumnUnit)]) -> Option<(&'h str, ColumnUnit)> {
    let lower = header.trim_end_matches([')', ']']);
    units.iter().find_map(|(word, unit)| {
        let at = lower.len().checked_sub(word.len())?;
        let (front, end) = (lower.get(..at)?, lower.get(at..)?);
        let front = front.strip_suffix(['(', '[', ',', ' '])?;
        let front = front.trim_end().trim_end_matches([',', '(', '[']);
        let front = front.strip_suffix(" in").unwrap_or(front);
        end.eq_ignore_ascii_case(word)
            .then_some((front.trim(), *unit))
    })
}

/// The column that a misspelt header was probably meant to be.
pub(crate) fn near(text: &str) -> Option<&'static str> {
    near_spelling(text).map(|(_, key)| key)
}

/// The spelling of a column that is nearest to a header, and its key.
fn near_spelling(text: &str) -> Option<(&'static str, &'static str)> {
    let spellings: Vec<(&'static str, &'static str)> = all()
        .flat_map(|column| {
            let spellings = column.also.iter().copied().chain([column.field.key]);
            spellings.map(|spelling| (spelling, column.field.key))
        })
        .collect();
    let names: Vec<&str> = spellings.iter().map(|(spelling, _)| *spelling).collect();
    let near = nearest(text, &names)?;
    // Of a word of three letters one may be wrong: "type" is no slip of "rpe".
    let least = squeeze(near)
        .chars()
        .count()
        .min(squeeze(text).chars().count());
    let apart = strsim::osa_distance(&squeeze(near), &squeeze(text));
    if least < 3 || apart > least.div_ceil(3) {
        return None;
    }
    let found = spellings.iter().find(|(spelling, _)| *spelling == near);
    found.copied()
}

/// What to write instead of a header that no column has: the nearest in any spelling, by the
/// name that FILES.md leads with, else all of them.
pub(crate) fn meant(text: &str) -> Words {
    let keys: Vec<_> = COLUMNS.iter().map(|column| column.field.key).collect();
    let near = near_spelling(text).map(|(spelling, _)| spelling);
    let meant = near.map_or_else(|| one_of(&keys), |name| Words::plain(quote(name)));
    words!(k::WRITE_OR_LEAVE_THE_COLUMN, meant)
}
