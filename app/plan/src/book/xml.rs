//! XML of a workbook's parts as a walk over opening tags, closing tags and text.
//!
//! Refuses: entities of the document's own, depth without bound.
use crate::fault::Wrong;
use crate::words::{Words, words};
use quick_xml::events::{BytesStart, Event};
use quick_xml::{Reader, XmlVersion};
use std::ops::ControlFlow;
use text::keys::checked as k;

/// Depth of XML at most.
const DEPTH_MAX: usize = 200;

/// What to do about a part that cannot be followed.
pub(crate) const SAVE_AGAIN: Words = words!(k::OPEN_IT_IN_THE_SPREADSHEET);

/// A step of the walk.
#[derive(Debug)]
pub(crate) enum Node<'e> {
    /// A tag opens; an empty one opens and closes.
    Open(Tag<'e>),
    /// The tag with this local name closes.
    Close(&'e [u8]),
    /// Text between tags, entities replaced.
    Text(String),
}

/// An opening tag.
#[derive(Debug)]
pub(crate) struct Tag<'e>(&'e BytesStart<'e>);

impl Tag<'_> {
    /// Its name without the prefix of its namespace.
    pub(crate) fn name(&self) -> &[u8] {
        self.0.local_name().into_inner()
    }

    /// An attribute by its name without prefix, entities replaced.
    pub(crate) fn get(&self, key: &str) -> Option<String> {
        let mut attributes = self.0.attributes();
        let mut attributes = attributes.with_checks(false).flatten();
        let found = attributes.find(|one| one.key.local_name().as_ref() == key.as_bytes())?;
        let value = found.normalized_value(XmlVersion::Implicit1_0).ok()?;
        Some(value.into_owned())
    }

    /// A whole number of an attribute.
    pub(crate) fn number(&self, key: &str) -> Option<usize> {
        self.get(key)?.trim().parse().ok()
    }

    /// Whether an attribute says yes.
    pub(crate) fn is_on(&self, key: &str) -> bool {
        matches!(self.get(key).as_deref(), Some("1" | "true" | "on"))
    }
}

/// A spreadsheet that cannot be followed, and why.
pub(crate) fn broken(why: impl std::fmt::Display) -> Wrong {
    let why: String = why.to_string().chars().take(120).collect();
    let clean = |c: char| if c.is_control() { ' ' } else { c };
    let why: String = why.chars().map(clean).collect();
    Wrong::plain(words!(k::A_BROKEN_SPREADSHEET, why), SAVE_AGAIN)
}

/// Walks a part until its end, or until `visit` breaks off.
pub(crate) fn walk(
    part: &[u8],
    mut visit: impl FnMut(Node<'_>) -> Result<ControlFlow<()>, Wrong>,
) -> Result<(), Wrong> {
    let mut reader = Reader::from_reader(part);
    let mut depth = 0_usize;
    loop {
        let go_on = match reader.read_event().map_err(broken)? {
            Event::Eof => return Ok(()),
            Event::Start(start) => {
                depth += 1;
                if depth > DEPTH_MAX {
                    return Err(broken("its XML is too deep"));
                }
                visit(Node::Open(Tag(&start)))?
            }
            Event::Empty(start) => match visit(Node::Open(Tag(&start)))? {
                ControlFlow::Continue(()) => visit(Node::Close(start.local_name().as_ref()))?,
                stop @ ControlFlow::Break(()) => stop,
            },
            Event::End(end) => {
                depth = depth.saturating_sub(1);
                visit(Node::Close(end.local_name().as_ref()))?
            }
            Event::Text(text) => visit(Node::Text(text.decode().map_err(broken)?.into_owned()))?,
            Event::CData(text) => visit(Node::Text(text.decode().map_err(broken)?.into_owned()))?,
            Event::GeneralRef(entity) => {
                let letter = entity.resolve_char_ref().map_err(broken)?;
                let name = entity.decode().map_err(broken)?;
                let text = match (letter, name.as_ref()) {
                    (Some(letter), _) => letter.to_string(),
                    (None, "lt") => "<".to_owned(),
                    (None, "gt") => ">".to_owned(),
                    (None, "amp") => "&".to_owned(),
                    (None, "quot") => "\"".to_owned(),
                    (None, "apos") => "'".to_owned(),
                    (None, other) => return Err(broken(format!("the entity {other}"))),
                };
                visit(Node::Text(text))?
            }
            Event::Comment(_) | Event::Decl(_) | Event::PI(_) | Event::DocType(_) => {
                ControlFlow::Continue(())
            }
        };
        if go_on.is_break() {
            return Ok(());
        }
    }
}
