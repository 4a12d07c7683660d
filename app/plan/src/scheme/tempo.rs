//! A tempo within a scheme: "3-0-1-0", "30X0". Refuses: other than four figures.
use crate::fault::Wrong;
use crate::words::words;
use domain::manner::Tempo;
use text::keys::checked as k;

/// The longest part of a rep, in seconds. Common practice, no source.
const PART_MOST_S: u8 = 15;

/// A tempo at the front of a text and how many bytes it takes; `named` where "tempo" stands before
/// it, so that any separator will do, or none.
pub(super) fn tempo_in_front(text: &str, named: bool) -> Option<(Vec<&str>, usize)> {
    let is_figure = |c: char| c.is_ascii_digit() || matches!(c, 'x' | 'X');
    let is_mark = |c: char| c == '-' || named && matches!(c, '/' | ':' | '.' | ',');
    let (mut figures, mut at) = (Vec::new(), 0);
    loop {
        let rest = &text[at..];
        let end = rest.find(|c| !is_figure(c)).unwrap_or(rest.len());
        if end == 0 {
            break;
        }
        figures.push(&rest[..end]);
        at += end;
        let behind = text[at..].trim_start();
        let next = behind.strip_prefix(is_mark).map(str::trim_start);
        match next.filter(|next| next.starts_with(is_figure)) {
            Some(next) => at = text.len() - next.len(),
            None => break,
        }
    }
    if named && figures.len() == 1 {
        figures = (0..figures[0].len())
            .map(|at| &figures[0][at..=at])
            .collect();
    }
    let is_part = |figure: &&str| figure.parse::<u8>().is_ok_and(|s| s > PART_MOST_S);
    if !named && figures.iter().any(is_part) {
        return None;
    }
    let enough = if named { 1 } else { 4 };
    (figures.len() >= enough).then_some((figures, at))
}

/// Four figures: lowering, bottom, raising, top.
pub(super) fn read(text: &str, figures: &[&str]) -> Result<Tempo, Wrong> {
    let wrong = |what| {
        let right = words!(k::WRITE_FOUR_DOWN_BOTTOM_UP);
        Err(Wrong::value(text, what, right))
    };
    let [lower, bottom, raise, top] = figures else {
        let what = words!(k::A_TEMPO_OF_FIGURES, figures.len());
        return wrong(what);
    };
    let seconds = |figure: &str| figure.parse::<u8>().ok().filter(|s| *s <= PART_MOST_S);
    let fast = raise.eq_ignore_ascii_case("x");
    match (
        seconds(lower),
        seconds(bottom),
        seconds(raise),
        seconds(top),
    ) {
        (Some(lower), Some(bottom), raise, Some(top)) if fast || raise.is_some() => Ok(Tempo {
            lower,
            bottom,
            raise,
            top,
        }),
        _ => wrong(words!(k::A_TEMPO_WITH_FIGURES_THAT, PART_MOST_S)),
    }
}
