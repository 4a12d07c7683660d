//! Fills the screen of all lifters; turns its pages when there are more than fit.
use crate::frame::pace;
use crate::generated::{Choose, KioskWindow, Tile};
use crate::rows::Rows;
use slint::ComponentHandle as _;
use std::cell::{Cell, RefCell};
use view::choose::TILES_SHOWN;

/// Keeps the tiles, and which page of them is shown.
pub(crate) struct ChooseFace {
    all: RefCell<Vec<Tile>>,
    page: Cell<usize>,
    tiles: Rows<Tile>,
}

impl ChooseFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let tiles = Rows::new();
        window.global::<Choose<'_>>().set_tiles(tiles.model());
        Self {
            all: RefCell::default(),
            page: Cell::new(0),
            tiles,
        }
    }

    pub(crate) fn show(&self, window: &KioskWindow, choose: &view::choose::Choose) {
        let to = window.global::<Choose<'_>>();
        to.set_gym(choose.gym.as_str().into());
        to.set_date(choose.date.as_str().into());
        to.set_panel(choose.panel.as_str().into());
        to.set_languages(choose.languages.as_str().into());
        to.set_floor(choose.floor.as_str().into());
        to.set_empty(choose.empty.as_str().into());
        *self.all.borrow_mut() = choose.tiles.iter().map(tile).collect();
        self.settle(window);
    }

    /// Shows the next page, or the first after the last.
    pub(crate) fn turn(&self, window: &KioskWindow) {
        self.page.set(self.page.get() + 1);
        self.settle(window);
    }

    /// Back to the first page.
    pub(crate) fn rewind(&self) {
        self.page.set(0);
    }

    fn settle(&self, window: &KioskWindow) {
        let all = self.all.borrow();
        let pages = all.len().div_ceil(TILES_SHOWN).max(1);
        self.page.set(self.page.get() % pages);
        let shown = all
            .chunks(TILES_SHOWN)
            .nth(self.page.get())
            .unwrap_or_default();
        self.tiles.settle(shown.iter().cloned());
        let to = window.global::<Choose<'_>>();
        to.set_more(pages > 1);
        let (across, down) = grid(if pages > 1 { TILES_SHOWN } else { all.len() });
        to.set_across(across);
        to.set_down(down);
    }
}

/// How many tiles stand side by side and below each other.
fn grid(tiles: usize) -> (i32, i32) {
    match tiles {
        0..=4 => (2, 2),
        5..=6 => (2, 3),
        7..=9 => (3, 3),
        _ => (3, 4),
    }
}

fn tile(tile: &view::choose::Tile) -> Tile {
    Tile {
        lifter: tile.lifter.as_str().into(),
        lift: tile.lift.as_str().into(),
        work: tile.work.as_str().into(),
        place: tile.place.as_str().into(),
        word: tile.word.as_str().into(),
        pace: pace(tile.pace),
        share: tile.share.clamp(0.0, 1.0),
    }
}
