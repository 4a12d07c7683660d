//! OpenDocument spreadsheets (ISO/IEC 26300-1:2015): sheets, cells, merged ranges, what is hidden.
//!
//! Refuses: tables within tables, remarks that hang on a cell.
use super::grid::{Grid, Left, Merged, TEXT_MAX};
use super::value::Value;
use super::xml::{Node, Tag, broken, walk};
use super::{Archive, count_sheets, part};
use crate::cells::CELLS_MAX;
use crate::fault::Wrong;
use crate::sheets::{KEPT_MAX, Sheet};
use std::collections::BTreeMap;
use std::ops::ControlFlow;

/// What a style says that matters here.
#[derive(Debug, Clone, Copy, Default)]
struct Style {
    struck: bool,
    hides_table: bool,
}

/// Reads all sheets.
pub(super) fn read(archive: &mut Archive<'_>) -> Result<Vec<Sheet<'static>>, Wrong> {
    let mut styles = Styles::default();
    if let Some(text) = part(archive, "styles.xml")? {
        walk(&text, |node| Ok(styles.take(&node)))?;
    }
    let content = part(archive, "content.xml")?.ok_or_else(|| broken("it has no content"))?;
    let mut reader = Reader {
        styles,
        sheets: Vec::new(),
        tables: 0,
        depth: 0,
        table: None,
        left: Left(TEXT_MAX),
    };
    walk(&content, |node| reader.take(&node))?;
    count_sheets(reader.tables)?;
    Ok(reader.sheets)
}

/// The styles read so far, those that follow another included.
#[derive(Debug, Default)]
struct Styles {
    by_name: BTreeMap<String, Style>,
    now: Option<String>,
}

impl Styles {
    fn take(&mut self, node: &Node<'_>) -> ControlFlow<()> {
        match node {
            Node::Open(tag) => match tag.name() {
                b"style" => {
                    let parent = tag.get("parent-style-name");
                    let from = parent.and_then(|name| self.by_name.get(&name).copied());
                    self.now = tag.get("name");
                    if let Some(name) = self.now.clone() {
                        self.by_name.insert(name, from.unwrap_or_default());
                    }
                }
                b"text-properties" => {
                    if let Some(line) = tag.get("text-line-through-style") {
                        self.change(|style| style.struck = line != "none");
                    } else if let Some(line) = tag.get("text-line-through-type") {
                        self.change(|style| style.struck = line != "none");
                    }
                }
                b"table-properties" if tag.get("display").as_deref() == Some("false") => {
                    self.change(|style| style.hides_table = true);
                }
                _ => {}
            },
            Node::Close(b"style") => self.now = None,
            Node::Close(_) | Node::Text(_) => {}
        }
        ControlFlow::Continue(())
    }

    fn change(&mut self, change: impl FnOnce(&mut Style)) {
        if let Some(name) = &self.now
            && let Some(style) = self.by_name.get_mut(name)
        {
            change(style);
        }
    }

    fn get(&self, name: Option<String>) -> Style {
        let found = name.and_then(|name| self.by_name.get(&name));
        found.copied().unwrap_or_default()
    }
}

/// A table under reading.
#[derive(Debug, Default)]
struct TableReader {
    name: String,
    hidden: bool,
    grid: Grid,
    /// Rows and cells before the ones of now.
    row: usize,
    column: usize,
    columns: usize,
    row_repeats: usize,
    row_cells: Vec<(usize, Value)>,
    row_hidden: bool,
    cell: Option<CellReader>,
}

/// A cell under reading.
#[derive(Debug)]
struct CellReader {
    repeats: usize,
    struck: bool,
    /// What it holds where that is no text.
    typed: Option<Value>,
    text: String,
    struck_text: bool,
    /// A formula without a result.
    formula: bool,
    spans: Vec<bool>,
    paragraphs: usize,
    /// Depth within a remark that hangs on the cell.
    aside: usize,
}

struct Reader {
    styles: Styles,
    sheets: Vec<Sheet<'static>>,
    tables: usize,
    /// Tables within tables.
    depth: usize,
    table: Option<TableReader>,
    left: Left,
}

impl Reader {
    fn take(&mut self, node: &Node<'_>) -> Result<ControlFlow<()>, Wrong> {
        match node {
            Node::Open(tag) if tag.name() == b"table" => {
                self.depth += 1;
                if self.depth == 1 {
                    self.tables += 1;
                    self.table = Some(TableReader {
                        name: tag.get("name").unwrap_or_default(),
                        hidden: self.styles.get(tag.get("style-name")).hides_table,
                        ..TableReader::default()
                    });
                }
            }
            Node::Close(b"table") => {
                self.depth = self.depth.saturating_sub(1);
                if self.depth == 0
                    && let Some(table) = self.table.take()
                {
                    self.sheets.push(table.grid.sheet(table.name, table.hidden));
                }
            }
            _ if self.depth == 0 => return Ok(self.styles.take(node)),
            _ if self.depth == 1 => {
                if let Some(table) = &mut self.table {
                    table.take(node, &self.styles, &mut self.left)?;
                }
            }
            Node::Open(_) | Node::Close(_) | Node::Text(_) => {}
        }
        Ok(ControlFlow::Continue(()))
    }
}

impl TableReader {
    fn take(&mut self, node: &Node<'_>, styles: &Styles, left: &mut Left) -> Result<(), Wrong> {
        if let Some(cell) = &mut self.cell {
            if !matches!(node, Node::Close(b"table-cell" | b"covered-table-cell")) || cell.aside > 0
            {
                cell.take(node, styles);
                return Ok(());
            }
            if let Some(cell) = self.cell.take() {
                self.end_cell(cell);
            }
            return Ok(());
        }
        match node {
            Node::Open(tag) => match tag.name() {
                b"table-column" => {
                    let repeats = tag.number("number-columns-repeated").unwrap_or(1);
                    if is_hidden(tag) && repeats > 0 {
                        let last = self.columns.saturating_add(repeats - 1);
                        self.grid.hide_columns(self.columns, last);
                    }
                    self.columns = self.columns.saturating_add(repeats);
                }
                b"table-row" => {
                    self.row_repeats = tag.number("number-rows-repeated").unwrap_or(1);
                    self.row_hidden = is_hidden(tag);
                    self.column = 0;
                }
                b"table-cell" | b"covered-table-cell" => self.begin_cell(tag, styles),
                _ => {}
            },
            Node::Close(b"table-row") => self.end_row(left)?,
            Node::Close(_) | Node::Text(_) => {}
        }
        Ok(())
    }

    fn begin_cell(&mut self, tag: &Tag<'_>, styles: &Styles) {
        let spanned = |key| tag.number(key).unwrap_or(1).max(1) - 1;
        let (down, along) = (
            spanned("number-rows-spanned"),
            spanned("number-columns-spanned"),
        );
        if down > 0 || along > 0 {
            self.grid.merge(Merged {
                rows: (self.row, self.row.saturating_add(down)),
                columns: (self.column, self.column.saturating_add(along)),
            });
        }
        self.cell = Some(CellReader {
            repeats: tag.number("number-columns-repeated").unwrap_or(1),
            struck: styles.get(tag.get("style-name")).struck,
            typed: typed(tag),
            formula: tag.get("formula").is_some() && tag.get("value-type").is_none(),
            text: String::new(),
            struck_text: false,
            spans: Vec::new(),
            paragraphs: 0,
            aside: 0,
        });
    }

    fn end_cell(&mut self, cell: CellReader) {
        let repeats = cell.repeats;
        if let Some(value) = cell.value() {
            let last = self.column.saturating_add(repeats.min(CELLS_MAX + 1));
            for column in self.column..last {
                self.row_cells.push((column, value.clone()));
            }
        }
        self.column = self.column.saturating_add(repeats);
    }

    fn end_row(&mut self, left: &mut Left) -> Result<(), Wrong> {
        let cells = std::mem::take(&mut self.row_cells);
        let kept = if cells.is_empty() { 0 } else { KEPT_MAX + 1 };
        for row in self.row..self.row.saturating_add(self.row_repeats.min(kept)) {
            if self.row_hidden {
                self.grid.hide_row(row);
            }
            for (column, value) in &cells {
                self.grid.put((row, *column), value.clone(), left)?;
            }
            if self.grid.full {
                break;
            }
        }
        self.row = self.row.saturating_add(self.row_repeats);
        Ok(())
    }
}

impl CellReader {
    fn take(&mut self, node: &Node<'_>, styles: &Styles) {
        match node {
            Node::Open(tag) if self.aside > 0 || tag.name() == b"annotation" => self.aside += 1,
            Node::Close(_) if self.aside > 0 => self.aside -= 1,
            Node::Text(_) if self.aside > 0 => {}
            Node::Open(tag) => match tag.name() {
                b"p" => {
                    if self.paragraphs > 0 {
                        self.text.push('\n');
                    }
                    self.paragraphs += 1;
                }
                b"span" => self.spans.push(styles.get(tag.get("style-name")).struck),
                b"s" => {
                    let spaces = tag.number("c").unwrap_or(1).min(CELLS_MAX);
                    self.text.push_str(&" ".repeat(spaces));
                }
                b"tab" => self.text.push('\t'),
                b"line-break" => self.text.push('\n'),
                _ => {}
            },
            Node::Close(b"span") => drop(self.spans.pop()),
            Node::Close(_) => {}
            Node::Text(text) if self.paragraphs > 0 => {
                if self.spans.contains(&true) {
                    self.struck_text |= !text.trim().is_empty();
                } else {
                    self.text.push_str(text);
                }
            }
            Node::Text(_) => {}
        }
    }

    fn value(self) -> Option<Value> {
        let mut value = self.typed.unwrap_or_else(|| Value::text(self.text));
        value.struck = self.struck_text;
        if self.struck && !value.text.trim().is_empty() {
            value.struck = true;
            value.text = String::new();
        }
        if self.formula && value.is_nothing() {
            return Some(Value::formula());
        }
        (!value.is_nothing()).then_some(value)
    }
}

fn is_hidden(tag: &Tag<'_>) -> bool {
    matches!(
        tag.get("visibility").as_deref(),
        Some("collapse" | "filter")
    )
}

/// The value of a cell that is no text.
fn typed(tag: &Tag<'_>) -> Option<Value> {
    let number = || tag.get("value")?.trim().parse::<f64>().ok();
    let number = || number().filter(|number| number.is_finite());
    match tag.get("value-type")?.as_str() {
        "float" | "currency" => number().map(Value::number),
        "percentage" => number().map(Value::share),
        "date" => tag.get("date-value").map(|day| Value::iso_day(&day)),
        "time" => tag.get("time-value").map(|time| Value::iso_time(&time)),
        "boolean" => {
            let value = tag.get("boolean-value")?;
            Some(Value::truth(value == "true"))
        }
        "string" => tag.get("string-value").map(Value::text),
        _ => None,
    }
}
