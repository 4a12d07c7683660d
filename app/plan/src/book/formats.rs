//! The styles of an XLSX as far as they say what a number means and whether it is struck through.
//!
//! Source: ECMA-376-1:2016, 18.8.30 (number formats and their built-in ids), 18.8.45 (cellXfs).
use super::xml::{Node, walk};
use crate::fault::Wrong;
use std::collections::BTreeMap;
use std::ops::ControlFlow;

/// What a number of a format is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Format {
    #[default]
    Number,
    Share,
    /// A day, or a time of day.
    Moment,
    /// Hours beyond a day, "[h]:mm".
    Duration,
}

/// One style of cells.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct CellStyle {
    pub(super) format: Format,
    pub(super) struck: bool,
}

/// Reads a part of styles into the list that cells point into.
pub(super) fn read(part: &[u8]) -> Result<Vec<CellStyle>, Wrong> {
    let mut codes: BTreeMap<usize, Format> = BTreeMap::new();
    let (mut fonts, mut styles): (Vec<bool>, Vec<CellStyle>) = (Vec::new(), Vec::new());
    let (mut in_fonts, mut in_cells) = (false, false);
    walk(part, |node| {
        match node {
            Node::Open(tag) => match tag.name() {
                b"numFmt" => {
                    if let (Some(id), Some(code)) = (tag.number("numFmtId"), tag.get("formatCode"))
                    {
                        codes.insert(id, of_code(&code));
                    }
                }
                b"fonts" => in_fonts = true,
                b"font" if in_fonts => fonts.push(false),
                b"strike" if in_fonts => {
                    if let Some(font) = fonts.last_mut() {
                        *font = is_struck(tag.get("val").as_deref());
                    }
                }
                b"cellXfs" => in_cells = true,
                b"xf" if in_cells => {
                    let id = tag.number("numFmtId").unwrap_or(0);
                    let font = tag.number("fontId").and_then(|at| fonts.get(at));
                    styles.push(CellStyle {
                        format: codes.get(&id).copied().unwrap_or_else(|| built_in(id)),
                        struck: font.copied().unwrap_or(false),
                    });
                }
                _ => {}
            },
            Node::Close(b"fonts") => in_fonts = false,
            Node::Close(b"cellXfs") => in_cells = false,
            Node::Close(_) | Node::Text(_) => {}
        }
        Ok(ControlFlow::Continue(()))
    })?;
    Ok(styles)
}

/// `<strike/>` strikes through unless it says no.
pub(super) fn is_struck(value: Option<&str>) -> bool {
    !matches!(value, Some("0" | "false" | "off"))
}

fn built_in(id: usize) -> Format {
    match id {
        9 | 10 => Format::Share,
        14..=22 | 27..=36 | 45 | 47 | 50..=58 => Format::Moment,
        46 => Format::Duration,
        _ => Format::Number,
    }
}

/// What a format's code makes of a number: its first section without words and colours.
fn of_code(code: &str) -> Format {
    let mut letters = code.chars();
    let mut found = Format::Number;
    while let Some(letter) = letters.next() {
        match letter {
            ';' => break,
            '"' => while !matches!(letters.next(), Some('"') | None) {},
            '\\' | '_' | '*' => drop(letters.next()),
            '[' => {
                let inside: String = letters.by_ref().take_while(|c| *c != ']').collect();
                let unit = inside.to_lowercase();
                if !unit.is_empty()
                    && ["h", "m", "s"]
                        .iter()
                        .any(|u| unit.replace(u, "").is_empty())
                {
                    return Format::Duration;
                }
            }
            '%' => found = Format::Share,
            'd' | 'D' | 'y' | 'Y' | 'h' | 'H' | 's' | 'S' | 'm' | 'M' => return Format::Moment,
            // "General" has letters of its own.
            'G' | 'g' => return found,
            _ => {}
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::{Format, of_code};

    #[test]
    fn codes_as_spreadsheets_write_them() {
        for (code, format) in [
            ("General", Format::Number),
            ("0.00", Format::Number),
            ("0.0\" kg\"", Format::Number),
            ("0.0\\ \\d", Format::Number),
            ("[Red]0.0", Format::Number),
            ("0%", Format::Share),
            ("0.0 %", Format::Share),
            ("yyyy-mm-dd", Format::Moment),
            ("[$-407]d. mmmm yyyy", Format::Moment),
            ("h:mm", Format::Moment),
            ("[h]:mm:ss", Format::Duration),
            ("[mm]:ss", Format::Duration),
        ] {
            assert_eq!(of_code(code), format, "{code}");
        }
    }
}
