//! Office Open XML workbooks (ECMA-376-1:2016, 18): sheets, cells, merged ranges, what is hidden.
//!
//! Refuses: charts and macros, which are no plan.
use super::formats::{self, CellStyle, Format};
use super::grid::{Grid, Left, Merged, TEXT_MAX};
use super::shared::{self, Rich, RichReader};
use super::value::{Epoch, Value};
use super::xml::{Node, Tag, broken, walk};
use super::{Archive, count_sheets, part};
use crate::fault::Wrong;
use crate::sheets::Sheet;
use std::collections::BTreeMap;
use std::ops::ControlFlow;

/// What the whole workbook says.
#[derive(Debug)]
struct Workbook {
    /// Name, relation, whether it is hidden.
    sheets: Vec<(String, String, bool)>,
    epoch: Epoch,
}

/// Reads all sheets.
pub(super) fn read(archive: &mut Archive<'_>) -> Result<Vec<Sheet<'static>>, Wrong> {
    let main = main_part(archive)?;
    let text = part(archive, &main)?.ok_or_else(|| broken("it has no workbook"))?;
    let book = workbook(&text)?;
    count_sheets(book.sheets.len())?;
    let relations = relations(archive, &main)?;
    let by_kind = |kind: &str| {
        let found = relations.values().find(|(is, _)| is.ends_with(kind));
        found.map(|(_, target)| target.clone())
    };
    let mut list = |name: Option<String>| match name {
        Some(name) => part(archive, &name),
        None => Ok(None),
    };
    let styles = match list(by_kind("/styles"))? {
        Some(text) => formats::read(&text)?,
        None => Vec::new(),
    };
    let texts = match list(by_kind("/sharedStrings"))? {
        Some(text) => shared::read(&text)?,
        None => Vec::new(),
    };
    let mut left = Left(TEXT_MAX);
    let mut sheets = Vec::new();
    for (name, relation, hidden) in book.sheets {
        let (kind, target) = relations
            .get(&relation)
            .ok_or_else(|| broken(format!("sheet {name} is nowhere")))?;
        if !kind.ends_with("/worksheet") {
            continue;
        }
        let text = part(archive, target)?;
        let text = text.ok_or_else(|| broken(format!("sheet {name} is missing")))?;
        let mut reader = SheetReader {
            styles: &styles,
            texts: &texts,
            epoch: book.epoch,
            grid: Grid::default(),
            next: (0, 0),
            cell: None,
        };
        walk(&text, |node| reader.take(&node, &mut left))?;
        sheets.push(reader.grid.sheet(name, hidden));
    }
    Ok(sheets)
}

/// Where the workbook's own part is, as the archive's relations say.
fn main_part(archive: &mut Archive<'_>) -> Result<String, Wrong> {
    let relations = relations(archive, "")?;
    let main = relations
        .into_values()
        .find(|(kind, _)| kind.ends_with("/officeDocument"));
    Ok(main.map_or_else(|| "xl/workbook.xml".to_owned(), |(_, target)| target))
}

/// The relations of a part: kind and target by id.
fn relations(
    archive: &mut Archive<'_>,
    of: &str,
) -> Result<BTreeMap<String, (String, String)>, Wrong> {
    let (folder, file) = of.rsplit_once('/').unwrap_or(("", of));
    let front = if folder.is_empty() {
        String::new()
    } else {
        format!("{folder}/")
    };
    let mut found = BTreeMap::new();
    let Some(text) = part(archive, &format!("{front}_rels/{file}.rels"))? else {
        return Ok(found);
    };
    walk(&text, |node| {
        if let Node::Open(tag) = node
            && tag.name() == b"Relationship"
            && let (Some(id), Some(target)) = (tag.get("Id"), tag.get("Target"))
        {
            let target = match target.strip_prefix('/') {
                Some(whole) => whole.to_owned(),
                None => format!("{front}{target}"),
            };
            found.insert(id, (tag.get("Type").unwrap_or_default(), target));
        }
        Ok(ControlFlow::Continue(()))
    })?;
    Ok(found)
}

fn workbook(text: &[u8]) -> Result<Workbook, Wrong> {
    let mut book = Workbook {
        sheets: Vec::new(),
        epoch: Epoch::Of1900,
    };
    walk(text, |node| {
        if let Node::Open(tag) = node {
            match tag.name() {
                b"workbookPr" if tag.is_on("date1904") => book.epoch = Epoch::Of1904,
                b"sheet" => {
                    let name = tag.get("name").unwrap_or_default();
                    let relation = tag.get("id").unwrap_or_default();
                    let hidden = tag.get("state").is_some_and(|state| state != "visible");
                    book.sheets.push((name, relation, hidden));
                }
                _ => {}
            }
        }
        Ok(ControlFlow::Continue(()))
    })?;
    Ok(book)
}

/// A cell under reading.
#[derive(Debug)]
struct CellReader {
    at: (usize, usize),
    style: CellStyle,
    kind: String,
    value: String,
    in_value: bool,
    formula: bool,
    rich: Option<RichReader>,
}

struct SheetReader<'b> {
    styles: &'b [CellStyle],
    texts: &'b [Rich],
    epoch: Epoch,
    grid: Grid,
    /// Where a row and a cell stand that do not say it.
    next: (usize, usize),
    cell: Option<CellReader>,
}

impl SheetReader<'_> {
    fn take(&mut self, node: &Node<'_>, left: &mut Left) -> Result<ControlFlow<()>, Wrong> {
        match node {
            Node::Open(tag) => self.open(tag, node),
            Node::Close(b"c") => {
                if let Some(cell) = self.cell.take() {
                    let at = cell.at;
                    if let Some(value) = self.value(cell)? {
                        self.grid.put(at, value, left)?;
                    }
                }
            }
            Node::Close(b"row") => self.next = (self.next.0 + 1, 0),
            Node::Close(name) => {
                if let Some(cell) = &mut self.cell {
                    cell.in_value &= *name != b"v";
                    if let Some(rich) = &mut cell.rich {
                        rich.take(node);
                    }
                }
            }
            Node::Text(text) => match &mut self.cell {
                Some(cell) if cell.in_value => cell.value.push_str(text),
                Some(CellReader {
                    rich: Some(rich), ..
                }) => rich.take(node),
                Some(_) | None => {}
            },
        }
        Ok(ControlFlow::Continue(()))
    }

    fn open(&mut self, tag: &Tag<'_>, node: &Node<'_>) {
        match tag.name() {
            b"col" if tag.is_on("hidden") => {
                if let (Some(from @ 1..), Some(to)) = (tag.number("min"), tag.number("max")) {
                    self.grid.hide_columns(from - 1, to.saturating_sub(1));
                }
            }
            b"row" => {
                let row = tag.number("r").map_or(self.next.0, |r| r.saturating_sub(1));
                self.next = (row, 0);
                if tag.is_on("hidden") {
                    self.grid.hide_row(row);
                }
            }
            b"c" => {
                let at = tag.get("r").and_then(|r| place(&r)).unwrap_or(self.next);
                self.next = (at.0, at.1.saturating_add(1));
                let style = tag.number("s").and_then(|at| self.styles.get(at));
                self.cell = Some(CellReader {
                    at,
                    style: style.copied().unwrap_or_default(),
                    kind: tag.get("t").unwrap_or_default(),
                    value: String::new(),
                    in_value: false,
                    formula: false,
                    rich: None,
                });
            }
            b"f" => {
                if let Some(cell) = &mut self.cell {
                    cell.formula = true;
                }
            }
            b"v" => {
                if let Some(cell) = &mut self.cell {
                    cell.in_value = true;
                }
            }
            b"is" => {
                if let Some(cell) = &mut self.cell {
                    cell.rich = Some(RichReader::default());
                }
            }
            b"mergeCell" => {
                if let Some((from, to)) = tag.get("ref").as_deref().and_then(range) {
                    self.grid.merge(Merged {
                        rows: (from.0, to.0),
                        columns: (from.1, to.1),
                    });
                }
            }
            _ => {
                if let Some(CellReader {
                    rich: Some(rich), ..
                }) = &mut self.cell
                {
                    rich.take(node);
                }
            }
        }
    }

    /// What a cell holds; `None` for nothing.
    fn value(&self, cell: CellReader) -> Result<Option<Value>, Wrong> {
        let CellReader {
            style, kind, value, ..
        } = cell;
        let of_rich = |rich: Rich| Value {
            struck: rich.struck,
            ..Value::text(rich.text)
        };
        let mut read = match (kind.as_str(), cell.rich) {
            (_, Some(rich)) => of_rich(rich.close()),
            ("s", None) => {
                let at: Option<usize> = value.trim().parse().ok();
                let text = at.and_then(|at| self.texts.get(at));
                of_rich(text.cloned().ok_or_else(|| broken("a text is missing"))?)
            }
            // What a formula makes of nothing is a text; without a kind nobody reckoned it.
            ("" | "n", None) if cell.formula && value.trim().is_empty() => Value::formula(),
            (_, None) if value.is_empty() => return Ok(None),
            ("str", None) => Value::text(value),
            ("b", None) => Value::truth(value.trim() == "1" || value.trim() == "true"),
            ("e", None) => Value::text(format!("the formula's error {value}")),
            ("d", None) => Value::iso_day(&value),
            (_, None) => self.number(&value, style.format)?,
        };
        if style.struck {
            read.struck |= !read.text.trim().is_empty();
            read.text = String::new();
        }
        Ok(Some(read))
    }

    fn number(&self, text: &str, format: Format) -> Result<Value, Wrong> {
        let number: f64 = text
            .trim()
            .parse()
            .map_err(|_| broken("a number that is none"))?;
        if !number.is_finite() {
            return Err(broken("a number that is none"));
        }
        Ok(match format {
            Format::Number => Value::number(number),
            Format::Share => Value::share(number),
            Format::Moment => Value::moment(number, self.epoch, false),
            Format::Duration => Value::moment(number, self.epoch, true),
        })
    }
}

/// "B3" as row and column from 0.
fn place(text: &str) -> Option<(usize, usize)> {
    let text = text.trim();
    let digits = text.find(|c: char| c.is_ascii_digit())?;
    let (letters, digits) = text.split_at(digits);
    let mut column = 0_usize;
    for letter in letters.bytes() {
        let value = usize::from(letter.to_ascii_uppercase().checked_sub(b'A')?);
        column = column.checked_mul(26)?.checked_add(value + 1)?;
        (value < 26 && column <= 1 << 20).then_some(())?;
    }
    let row: usize = digits.parse().ok()?;
    Some((row.checked_sub(1)?, column.checked_sub(1)?))
}

/// "B3:C9" as its two corners.
fn range(text: &str) -> Option<((usize, usize), (usize, usize))> {
    let (from, to) = text.split_once(':')?;
    let (from, to) = (place(from)?, place(to)?);
    (from.0 <= to.0 && from.1 <= to.1).then_some((from, to))
}
