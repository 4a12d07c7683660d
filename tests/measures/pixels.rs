//! Contrast of every text on its ground, and texts cut short, taken from the pixels that were drawn.
//!
//! Refuses: theme colours; what is on the panel counts.
use super::cut::{cut_digits, lone_units};
use super::{Area, Panel, area};
use i_slint_backend_testing::ElementQuery;
use slint::{Rgba8Pixel, SharedPixelBuffer};
use std::collections::BTreeMap;
use ui::Face;
use view::Frame;

/// Least contrast of a text.
const CONTRAST: f64 = 7.0;

type Rgb = (u8, u8, u8);

/// Relative luminance, WCAG 2.2.
fn luminance((red, green, blue): Rgb) -> f64 {
    let linear = |channel: u8| {
        let share = f64::from(channel) / 255.0;
        if share <= 0.040_45 {
            share / 12.92
        } else {
            ((share + 0.055) / 1.055).powf(2.4)
        }
    };
    0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue)
}

/// Contrast ratio, WCAG 2.2.
fn contrast(one: Rgb, other: Rgb) -> f64 {
    let (a, b) = (luminance(one), luminance(other));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

/// The pixels of an area by colour, each with its count.
fn colours(picture: &SharedPixelBuffer<Rgba8Pixel>, area: Area) -> BTreeMap<Rgb, usize> {
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "pixels of a panel"
    )]
    let whole = |edge: f32| edge.max(0.0).round() as usize;
    let (width, height) = (picture.width() as usize, picture.height() as usize);
    let pixels = picture.as_slice();
    let mut found = BTreeMap::new();
    for y in whole(area.1)..whole(area.3).min(height) {
        for x in whole(area.0)..whole(area.2).min(width) {
            let pixel = pixels[y * width + x];
            *found.entry((pixel.r, pixel.g, pixel.b)).or_default() += 1;
        }
    }
    found
}

/// Texts whose strongest pixel stands out too little from the commonest one around it, and texts
/// that end in dots for want of room.
///
/// The largest panel is left out, since a picture takes long: letters are thinnest on the
/// smallest one, and the room is least on the one of 16:10.
pub(crate) fn unreadable_texts(face: &Face, _: &Frame, panel: Panel) -> Vec<String> {
    if panel.width.min(panel.height) > 800 {
        return Vec::new();
    }
    let picture = face.window().take_snapshot().expect("it draws");
    let query = ElementQuery::from_root(face.component());
    let mut found = Vec::new();
    for text in query.match_inherits("Text").find_all() {
        if text.size().width < 2.0 || text.size().height < 2.0 {
            continue;
        }
        let colours = colours(&picture, area(&text));
        let ground = colours.iter().max_by_key(|(_, count)| **count);
        let Some((&ground, _)) = ground.filter(|_| colours.len() > 1) else {
            continue; // Nothing is written there now.
        };
        let best = colours
            .keys()
            .map(|&ink| contrast(ink, ground))
            .fold(0.0, f64::max);
        let label = text.accessible_label().unwrap_or_default();
        let at = area(&text);
        if best < CONTRAST {
            found.push(format!("{label:?} at {at:?} stands out by {best:.2} only"));
        }
        // Lines of their own are wrapped, not cut.
        if !label.contains('\n') && cut_short(&picture, at, ground) {
            found.push(format!("{label:?} at {at:?} is cut short"));
        }
    }
    found.extend(cut_digits(face, &picture));
    found.extend(lone_units(face, &picture));
    found
}

/// The pixels of an area that differ from its corner.
pub(crate) struct Inked {
    /// First row.
    pub(crate) top: usize,
    /// Row after the last.
    pub(crate) bottom: usize,
    marks: Vec<Vec<bool>>,
}

impl Inked {
    pub(crate) fn new(picture: &SharedPixelBuffer<Rgba8Pixel>, area: Area) -> Self {
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "pixels of a panel"
        )]
        let whole = |edge: f32| edge.max(0.0).round() as usize;
        let (width, height) = (picture.width() as usize, picture.height() as usize);
        let (left, right) = (whole(area.0).min(width), whole(area.2).min(width));
        let (top, bottom) = (whole(area.1).min(height), whole(area.3).min(height));
        // A corner: of a round digit the ink takes more than half.
        let corner = picture.as_slice().get(top * width + left);
        let ground = corner.map_or((0, 0, 0), |pixel| (pixel.r, pixel.g, pixel.b));
        let differs = |x: usize, y: usize| {
            let pixel = picture.as_slice()[y * width + x];
            let apart = |one: u8, other: u8| u32::from(one.abs_diff(other));
            apart(pixel.r, ground.0) + apart(pixel.g, ground.1) + apart(pixel.b, ground.2) > 120
        };
        let row = |y: usize| (left..right).map(|x| differs(x, y)).collect();
        Self {
            top,
            bottom,
            marks: (top..bottom).map(row).collect(),
        }
    }

    /// Rows with ink.
    pub(crate) fn rows(&self) -> impl DoubleEndedIterator<Item = usize> {
        let rows = self.marks.iter().enumerate();
        rows.filter(|(_, row)| row.contains(&true))
            .map(|(at, _)| at + self.top)
    }

    /// Lines of writing: rows with ink, parted by three and more without.
    pub(crate) fn lines(&self) -> Vec<(usize, usize)> {
        let mut lines: Vec<(usize, usize)> = Vec::new();
        for row in self.rows() {
            match lines.last_mut() {
                Some(line) if row <= line.1 + 3 => line.1 = row,
                Some(_) | None => lines.push((row, row)),
            }
        }
        lines
    }

    /// How wide the ink of a line is.
    pub(crate) fn columns(&self, (first, last): (usize, usize)) -> usize {
        let rows = &self.marks[first - self.top..=last - self.top];
        let ends = rows.iter().filter_map(|row| {
            let first = row.iter().position(|mark| *mark)?;
            Some((first, row.iter().rposition(|mark| *mark)?))
        });
        let all = ends.reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)));
        all.map_or(0, |(from, to)| to + 1 - from)
    }
}

/// Whether what is written in the area ends in three dots on the base line.
fn cut_short(picture: &SharedPixelBuffer<Rgba8Pixel>, area: Area, ground: Rgb) -> bool {
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "pixels of a panel"
    )]
    let whole = |edge: f32| edge.max(0.0).round() as usize;
    let width = picture.width() as usize;
    let right = whole(area.2).min(width);
    let (top, bottom) = (whole(area.1), whole(area.3).min(picture.height() as usize));
    let inked = |x: usize, y: usize| {
        let pixel = picture.as_slice()[y * width + x];
        let apart = |one: u8, other: u8| u32::from(one.abs_diff(other));
        apart(pixel.r, ground.0) + apart(pixel.g, ground.1) + apart(pixel.b, ground.2) > 120
    };
    // From the right: the columns of each mark, and the rows that it takes.
    let mut marks: Vec<(usize, usize, usize, usize)> = Vec::new();
    let mut in_mark = false;
    for x in (whole(area.0)..right).rev() {
        let mut rows = (top..bottom).filter(|&y| inked(x, y));
        let Some(first) = rows.next() else {
            in_mark = false;
            continue;
        };
        let last = rows.next_back().unwrap_or(first);
        if !in_mark {
            if marks.len() == 3 {
                break;
            }
            marks.push((x, x, first, last));
        } else if let Some(mark) = marks.last_mut() {
            *mark = (x, mark.1, mark.2.min(first), mark.3.max(last));
        }
        in_mark = true;
    }
    let [(a, ..), (b, b_end, ..), (_, c_end, ..)] = marks[..] else {
        return false;
    };
    let small = |&(left, end, first, last): &(usize, usize, usize, usize)| {
        let most = (bottom - top) / 6 + 1;
        end - left < most && last - first < most && first > usize::midpoint(top, bottom)
    };
    let level = marks.iter().all(|mark| mark.3.abs_diff(marks[0].3) <= 1);
    let even = (a - b_end).abs_diff(b - c_end) <= 1 && b - c_end < (bottom - top) / 3 + 2;
    level && even && marks.iter().all(small)
}

/// The formula against rows of the project's table of WCAG contrasts (black on white 21:1).
#[test]
fn the_formula_gives_the_values_of_the_standard() {
    let rows = [
        ((0, 0, 0), (255, 255, 255), 21.0),
        ((0x77, 0x77, 0x77), (255, 255, 255), 4.4781),
        ((0x59, 0x59, 0x59), (255, 255, 255), 7.0047),
        ((0xC8, 0x10, 0x2E), (255, 255, 255), 5.8833),
    ];
    for (one, other, ratio) in rows {
        let found = contrast(one, other);
        assert!(
            (found - ratio).abs() < 0.001,
            "{one:?} on {other:?}: {found}"
        );
    }
}
