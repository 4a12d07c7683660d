//! What a file's checker says, in German: its templates as `plan` has them, and what stands for
//! each. Refuses: what people and other programs wrote; that stays as it was read.
mod blocks;
mod gym;
mod kiosk;
mod manners;
mod plans;
mod schemes;

/// Writes a table of templates, `"English" => "German";`.
macro_rules! rows {
    ($($english:literal => $german:literal;)*) => {
        /// English as the checker says it, then German.
        pub(super) const ROWS: &[(&str, &str)] = &[$(($english, $german)),*];
    };
}
use rows;

/// All tables.
const TABLES: [&[(&str, &str)]; 6] = [
    blocks::ROWS,
    manners::ROWS,
    plans::ROWS,
    schemes::ROWS,
    gym::ROWS,
    kiosk::ROWS,
];

/// All rows: English, then German.
pub(super) fn all() -> impl Iterator<Item = &'static (&'static str, &'static str)> {
    TABLES.into_iter().flatten()
}
