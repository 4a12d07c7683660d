//! Fills the screen of what was done.
use crate::draw::rung_state;
use crate::generated::{Deed, End, KioskWindow};
use crate::rows::Rows;
use slint::{ComponentHandle as _, Image, Rgb8Pixel, SharedPixelBuffer};
use std::cell::RefCell;
use view::end::Link;

/// Keeps its rows.
pub(crate) struct EndFace {
    rows: Rows<Deed>,
    link: RefCell<Option<Link>>,
}

/// White modules around a code (ISO/IEC 18004: four).
const QUIET: usize = 4;

impl EndFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let rows = Rows::new();
        window.global::<End<'_>>().set_rows(rows.model());
        let link = RefCell::default();
        Self { rows, link }
    }

    pub(crate) fn show(&self, window: &KioskWindow, end: &view::end::End) {
        let to = window.global::<End<'_>>();
        to.set_headline(end.headline.as_str().into());
        to.set_short(end.short);
        self.rows.settle(end.rows.iter().map(|row| Deed {
            load: row.load.as_str().into(),
            reps: row.reps.as_str().into(),
            hold: row.hold.as_str().into(),
            state: rung_state(row.state),
            kind: row.kind.as_str().into(),
        }));
        to.set_sum(end.sum.as_str().into());
        let next = end.next.as_ref();
        to.set_next(next.map_or("", |next| &next.work).into());
        to.set_reason(next.map_or("", |next| &next.reason).into());
        to.set_advice(end.advice.as_str().into());
        to.set_why(end.why.as_str().into());
        self.show_link(&to, end.link.as_ref());
        to.set_main(end.main.as_str().into());
    }

    /// Draws the code anew only when it is another one.
    fn show_link(&self, to: &End<'_>, link: Option<&Link>) {
        if self.link.borrow().as_ref() == link {
            return;
        }
        to.set_coded(link.is_some());
        if let Some(link) = link {
            to.set_code(code(link));
            to.set_code_words(link.words.as_str().into());
        }
        *self.link.borrow_mut() = link.cloned();
    }
}

/// A pixel a module, with the quiet zone; scanners want dark on light in every look.
fn code(link: &Link) -> Image {
    let side = link.size + 2 * QUIET;
    let edge = u32::try_from(side).unwrap_or(0);
    let mut pixels = SharedPixelBuffer::<Rgb8Pixel>::new(edge, edge);
    for (at, pixel) in pixels.make_mut_slice().iter_mut().enumerate() {
        let (x, y) = (at % side, at / side);
        let inside = |n: usize| n.checked_sub(QUIET).filter(|n| *n < link.size);
        let dark = inside(x)
            .zip(inside(y))
            .and_then(|(x, y)| link.dark.get(y * link.size + x));
        let shade = if dark == Some(&true) { 0 } else { 255 };
        *pixel = Rgb8Pixel::new(shade, shade, shade);
    }
    Image::from_rgb8(pixels)
}
