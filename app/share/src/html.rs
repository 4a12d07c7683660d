//! What the pages share: head, foot, addresses, tables of sets. Plain HTML, no script.
//!
//! Refuses: names as markup; every text is escaped by the template.
use crate::masthead::{self, Nav, Tab};
use crate::programme::Today;
use crate::stream::{Sink, Stop};
use crate::words as w;
use journal::{RecordError, SetRow};
use maud::{DOCTYPE, Markup, PreEscaped, html};
use std::io::{self, Write as _};
use std::ops::ControlFlow;
use view::Language;

pub(crate) fn put(sink: &mut Sink, markup: &Markup) -> io::Result<()> {
    sink.write_all(markup.0.as_bytes())
}

/// From the doctype to the heading. `today` is the kiosk's day and gym, where they are shown.
pub(crate) fn head(say: Language, title: &str, nav: Nav, today: Option<&Today>) -> Markup {
    html! {
        (DOCTYPE)
        (PreEscaped(format!("<html lang=\"{}\">", say.code())))
        head {
            meta charset="utf-8";
            meta name="viewport" content="width=device-width, initial-scale=1";
            title { (masthead::title(title, today)) }
            link rel="icon" href="/icon.svg" type="image/svg+xml";
            link rel="stylesheet" href="/style.css";
        }
        (PreEscaped("<body>\n"))
        (masthead::masthead(say, nav, today))
        @match nav {
            Nav::Coach(Tab::Week) => (PreEscaped("<main class=\"broad week-sheet\">\n")),
            Nav::Coach(Tab::Today | Tab::Desk) => (PreEscaped("<main class=\"broad\">\n")),
            Nav::All | Nav::Own | Nav::Coach(_) => (PreEscaped("<main>\n")),
        }
        @if nav == Nav::Own { p class="notice" { (say.pick(w::ONCE)) } }
        h1 { (title) }
    }
}

/// The end of a page, with the way to the other languages.
pub(crate) fn foot(say: Language) -> Markup {
    let others = Language::ALL.into_iter().filter(|other| *other != say);
    html! {
        form class="language" method="post" action="/language" aria-label=(say.pick(w::LANGUAGE)) {
            @for other in others {
                button name="language" value=(other.code()) lang=(other.code()) { (other.name()) }
            }
        }
        (PreEscaped("</main>\n</body>\n</html>\n"))
    }
}

/// `front` and a name as a path's segment, percent-encoded (RFC 3986).
pub(crate) fn address(front: &str, name: &str) -> String {
    let mut text = format!("{front}/");
    for byte in name.bytes() {
        if byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'_' | b'~') {
            text.push(char::from(byte));
        } else {
            text.push_str(&format!("%{byte:02X}"));
        }
    }
    text
}

/// Writes lift by lift what `read` visits; no more than one lift's sets are held.
pub(crate) fn write_sets(
    say: Language,
    read: impl FnOnce(&mut dyn FnMut(SetRow) -> ControlFlow<()>) -> Result<(), RecordError>,
    sink: &mut Sink,
) -> Result<(), Stop> {
    let mut lift: Vec<SetRow> = Vec::new();
    let mut shown = None;
    let mut outcome = Ok(());
    read(&mut |set| {
        if lift
            .last()
            .is_some_and(|former| former.lift_no != set.lift_no)
        {
            outcome = put(sink, &lift_table(say, &lift, &mut shown));
            lift.clear();
        }
        lift.push(set);
        if outcome.is_ok() {
            ControlFlow::Continue(())
        } else {
            ControlFlow::Break(())
        }
    })?;
    outcome?;
    Ok(put(sink, &lift_table(say, &lift, &mut shown))?)
}

/// One lift, under the headings of its day and lifter where `shown`, the former ones, differ.
fn lift_table(say: Language, lift: &[SetRow], shown: &mut Option<(String, String)>) -> Markup {
    let Some(set) = lift.first() else {
        return html! {};
    };
    let (day, lifter) = match shown {
        Some((day, lifter)) => (*day != set.date, *day != set.date || *lifter != set.lifter),
        None => (true, true),
    };
    *shown = Some((set.date.clone(), set.lifter.clone()));
    html! {
        @if day { h2 { time datetime=(set.date) { (w::long_day(say, &set.date)) } } }
        @if lifter { h3 { (set.lifter) } }
        table {
            caption { (say.shipped(&set.lift)) " " span { (set.rack) } }
            thead { tr {
                th scope="col" { (say.pick(w::SET)) }
                th scope="col" { (say.pick(w::LOAD)) }
                th scope="col" { (say.pick(w::REPS)) }
                th scope="col" { (say.pick(w::BACK)) }
            } }
            tbody { @for set in lift { (row(say, set)) } }
        }
        "\n"
    }
}

fn row(say: Language, set: &SetRow) -> Markup {
    let kind = if set.is_work() { w::WORK } else { w::WARM_UP };
    let reps = if set.reps == set.planned_reps {
        set.reps.to_string()
    } else {
        say.fill(
            w::OF,
            &[&set.reps.to_string(), &set.planned_reps.to_string()],
        )
    };
    let back = set.back_moved_at.map_or_else(
        || say.say(w::KEPT),
        |rep| say.fill(w::MOVED_AT, &[&rep.to_string()]),
    );
    html! {
        tr {
            th scope="row" { (say.pick(kind)) }
            td { (say.mass(set.load, set.unit)) }
            td { (reps) }
            td { (back) }
        }
    }
}
