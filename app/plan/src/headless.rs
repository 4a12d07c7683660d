//! Columns without a header whose cells below say what they are: days, names, lifts.
//!
//! Refuses: columns of which one cell says another kind of thing.
use crate::against::Against;
use crate::cells::SheetRow;
use crate::facts;
use crate::fault::{Wrong, quote};
use crate::plan_faults::PlanFaults;
use crate::table::Table;
use crate::titles::alone;
use crate::words::words;
use text::keys::checked as k;

/// The kinds of facts that a column may be of, and its key.
const KINDS: [(u16, &str); 5] = [
    (0b10_0000, "track"),
    (0b100, "weekday"),
    (0b111, "date"),
    (0b1000, "lifter"),
    (0b1_0000, "lift"),
];

impl Table {
    /// Names the columns that no header names, by the rows below.
    pub(crate) fn name_columns(
        &mut self,
        rows: &[&SheetRow<'_>],
        against: &Against<'_>,
        faults: &mut PlanFaults<'_>,
    ) {
        let rows: Vec<_> = rows
            .iter()
            .filter(|row| alone(row, against, true).is_none())
            .collect();
        for at in 0..self.columns.len() {
            let column = &self.columns[at];
            let again = self.days_again.contains(&at);
            if !column.header.is_empty() && !again || column.facts.kinds() != 0 || column.ignored {
                continue;
            }
            let texts = rows.iter().map(|row| row.text(at));
            let texts: Vec<&str> = texts.filter(|text| !text.is_empty()).collect();
            let key = kind(&texts, against);
            if again && key == Some("date") {
                let first = self.columns.iter().position(|c| c.key == Some("date"));
                let what = words!(
                    k::THE_COLUMN_AGAIN_AFTER_COLUMN,
                    quote("date"),
                    first.unwrap_or(0) + 1
                );
                let wrong = Wrong::value(&column.header, &what, words!(k::KEEP_ONE_OF_THEM));
                faults.wrong(self.header, Some((at, "")), wrong);
                self.columns[at].ignored = true;
                continue;
            }
            self.columns[at].key = key.filter(|key| !self.has(key) && !self.says(key));
        }
    }

    /// Whether columns across say it.
    fn says(&self, key: &str) -> bool {
        let kinds = KINDS.iter().find(|(_, known)| *known == key);
        let kinds = kinds.map_or(0, |(kinds, _)| *kinds);
        self.groups
            .iter()
            .any(|(facts, _)| facts.kinds() & kinds != 0)
    }
}

/// What all cells of a column say, as its key; a slip in the name of a lift is no other kind.
fn kind(texts: &[&str], against: &Against<'_>) -> Option<&'static str> {
    let mut said = 0;
    let mut slips = 0;
    for text in texts {
        match facts::read(text, against) {
            Ok(Some(facts)) if facts.kinds() != 0 => said |= facts.kinds(),
            Ok(Some(_)) => return None,
            Ok(None) => slips += 1,
            // A day that can be two is a day.
            Err(_) => said |= 1,
        }
    }
    let (kinds, key) = *KINDS
        .iter()
        .find(|(kinds, _)| said != 0 && said & !kinds == 0)?;
    let may = slips == 0 || kinds == 0b1_0000 && slips * 2 < texts.len();
    may.then_some(key)
}
