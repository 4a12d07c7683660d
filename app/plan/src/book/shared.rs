//! Text of an XLSX that may be rich: runs in a row, some of them struck through.
//!
//! Refuses: the readings that stand beside a text for its pronunciation.
use super::formats::is_struck;
use super::grid::{Left, TEXT_MAX};
use super::xml::{Node, walk};
use crate::fault::Wrong;
use std::ops::ControlFlow;

/// A text without what is struck through, and whether anything was.
#[derive(Debug, Clone, Default)]
pub(super) struct Rich {
    pub(super) text: String,
    pub(super) struck: bool,
}

/// A rich text under reading.
#[derive(Debug, Default)]
pub(super) struct RichReader {
    rich: Rich,
    run_is_struck: bool,
    in_text: bool,
    in_reading: bool,
}

impl RichReader {
    /// Takes a step of the walk within a text.
    pub(super) fn take(&mut self, node: &Node<'_>) {
        match node {
            Node::Open(tag) => match tag.name() {
                b"r" => self.run_is_struck = false,
                b"strike" => self.run_is_struck = is_struck(tag.get("val").as_deref()),
                b"rPh" => self.in_reading = true,
                b"t" => self.in_text = true,
                _ => {}
            },
            Node::Close(b"t") => self.in_text = false,
            Node::Close(b"rPh") => self.in_reading = false,
            Node::Close(_) => {}
            Node::Text(text) if self.in_text && !self.in_reading => {
                if self.run_is_struck {
                    self.rich.struck |= !text.trim().is_empty();
                } else {
                    self.rich.text.push_str(text);
                }
            }
            Node::Text(_) => {}
        }
    }

    /// What was read.
    pub(super) fn close(self) -> Rich {
        self.rich
    }
}

/// Reads the part of shared texts.
pub(super) fn read(part: &[u8]) -> Result<Vec<Rich>, Wrong> {
    let mut texts = Vec::new();
    let mut left = Left(TEXT_MAX);
    let mut reader: Option<RichReader> = None;
    walk(part, |node| {
        match (&node, &mut reader) {
            (Node::Open(tag), None) if tag.name() == b"si" => reader = Some(RichReader::default()),
            (Node::Close(b"si"), _) => {
                let rich = reader.take().unwrap_or_default().close();
                left.take(rich.text.len() + size_of::<Rich>())?;
                texts.push(rich);
            }
            (_, Some(reader)) => reader.take(&node),
            (_, None) => {}
        }
        Ok(ControlFlow::Continue(()))
    })?;
    Ok(texts)
}
