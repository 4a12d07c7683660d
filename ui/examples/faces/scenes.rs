//! Invented lifters on every screen and in every state, for looking and for tests.
use super::{bars, floors, histories, meets, settles, turns, whys, words};
use view::choose::{Choose, Tile};
use view::{Chip, Frame, Language, Pace, Screen};

/// Every face with its name.
pub(crate) fn all() -> Vec<(&'static str, Frame)> {
    let mut faces = vec![
        ("choose", frame(choose(&tiles()[..4]))),
        ("choose-six", frame(choose(&tiles()[..6]))),
        ("choose-many", frame(choose(&tiles()))),
        ("choose-empty", frame(choose(&[]))),
        ("setup", frame(Screen::SetUp(words::setup()))),
        ("setup-floor", frame(Screen::SetUp(words::setup_floor()))),
        ("setup-long", long(Screen::SetUp(words::setup_long()))),
        ("bar", frame(Screen::Bar(bars::at_the_bar()))),
        ("bar-floor", long(Screen::Bar(bars::bar_floor()))),
        ("bar-strip", frame(Screen::Bar(bars::bar_strip()))),
        ("bar-off", frame(Screen::Bar(bars::bar_off()))),
        ("bar-pounds", frame(Screen::Bar(bars::bar_pounds()))),
        ("bar-weighed", frame(Screen::Bar(bars::bar_weighed()))),
        ("bar-empty", frame(Screen::Bar(bars::bar_empty()))),
        ("entry-reps", frame(Screen::Entry(words::entry_reps()))),
        ("entry-moved", frame(Screen::Entry(words::entry_moved()))),
        ("turn", frame(Screen::Turn(turns::turn()))),
        ("holds", frame(Screen::Holds(turns::holds()))),
        ("rest", frame(Screen::Rest(bars::rest()))),
        ("rest-turn", frame(Screen::Rest(bars::rest_turn()))),
        ("rest-over", long(Screen::Rest(bars::rest_over()))),
        ("settle", frame(Screen::Settle(settles::settle()))),
        ("stop", frame(Screen::Stop(words::stop()))),
        ("end", frame(Screen::End(words::end()))),
        ("end-short", frame(Screen::End(words::end_short()))),
    ];
    let pounds = Screen::Settle(settles::settle_pounds());
    faces.push(("settle-pounds", long(pounds)));
    for (name, page) in [
        ("meet", meets::three()),
        ("meet-long", meets::long()),
        ("meet-over", meets::over()),
    ] {
        faces.push((name, of_nobody(Screen::Meet(page))));
    }
    for (name, why) in [
        ("why-next", whys::next()),
        ("why-split", whys::split()),
        ("why-single", whys::single()),
    ] {
        faces.push((name, long(Screen::Why(why))));
    }
    faces.push(("history", frame(Screen::History(histories::history()))));
    faces.push((
        "history-long",
        long(Screen::History(histories::history_long())),
    ));
    faces.push((
        "history-empty",
        frame(Screen::History(histories::history_empty())),
    ));
    faces.push(("list", of_nobody(Screen::List(histories::list()))));
    faces.push(("list-body", of_nobody(Screen::List(histories::list_body()))));
    faces.push(("typing", of_nobody(Screen::Typing(histories::typing()))));
    faces.push((
        "typing-name",
        of_nobody(Screen::Typing(histories::typing_name())),
    ));
    faces.push(("page", of_nobody(Screen::Page(histories::page()))));
    faces.push(("trouble", trouble()));
    faces.extend(all_floors());
    let mut notice = frame(Screen::Bar(bars::at_the_bar()));
    notice.notice = "The entry was not kept: the disk is full. Call whoever runs the gym.".into();
    faces.push(("bar-notice", notice.clone()));
    notice.screen = choose(&tiles()[..6]);
    notice.turn = String::new();
    faces.push(("choose-notice", notice));
    faces
}

/// A kiosk that cannot start, from which nothing leads anywhere.
fn trouble() -> Frame {
    let why = "journal.sqlite is damaged; put back a copy with \"pinladder journal restore\".";
    let said = Language::ALL.map(|say| (say, why.to_owned()));
    view::trouble::frame(said)
}

fn all_floors() -> [(&'static str, Frame); 9] {
    [
        ("floor-two", on_floor(floors::two())),
        ("floor-four", on_floor(floors::four())),
        ("floor-six", on_floor(floors::six())),
        ("floor-pounds", on_floor(floors::pounds())),
        ("floor-racks", on_floor(floors::racks())),
        ("floor-racks-six", on_floor(floors::racks_of_six())),
        ("floor-strip", on_floor(floors::strip(floors::four()))),
        (
            "floor-racks-strip",
            on_floor(floors::strip(floors::racks())),
        ),
        ("floor-empty", on_floor(floors::empty())),
    ]
}

/// Around a screen: a lifter with two others under way.
pub(crate) fn frame(screen: Screen) -> Frame {
    let choosing = matches!(screen, Screen::Choose(_));
    let chips = if choosing {
        &[][..]
    } else {
        &[
            ("Tomasz", "1:40", Pace::Resting),
            ("Priya", "ready", Pace::Ready),
        ]
    };
    Frame {
        language: Language::English,
        look: view::Look::Dim,
        lifter: if choosing {
            String::new()
        } else {
            "Edda".into()
        },
        lift: if choosing {
            String::new()
        } else {
            "rack pull".into()
        },
        clock: "18:42".into(),
        chips: chips.iter().map(chip).collect(),
        undo: if matches!(screen, Screen::Entry(_)) {
            "back".into()
        } else if choosing {
            String::new()
        } else {
            "undo".into()
        },
        undo_detail: if choosing || matches!(screen, Screen::Entry(_)) {
            String::new()
        } else {
            "90 kg × 3".into()
        },
        turn: if matches!(
            screen,
            Screen::Bar(_)
                | Screen::Rest(_)
                | Screen::Entry(_)
                | Screen::Holds(_)
                | Screen::Settle(_)
                | Screen::Stop(_)
        ) {
            "later, skip...".into()
        } else {
            String::new()
        },
        notice: String::new(),
        beside: None,
        number: 0,
        answers: 0,
        asleep: false,
        shift: (0, 0),
        screen,
    }
}

/// The same with names as long as they come, and three others.
pub(crate) fn long(screen: Screen) -> Frame {
    let chips = [
        ("Bartholomäus Łęcki", "12:40", Pace::Resting),
        ("Wilhelmina Øvergård", "back moved", Pace::Stopped),
        ("Ñuflo", "ready", Pace::Ready),
    ];
    Frame {
        lifter: "Konstantina Žižková".into(),
        lift: "halting deadlift".into(),
        undo_detail: "Konstantina 1002.5 lb × 12".into(),
        chips: chips.iter().map(chip).collect(),
        ..frame(screen)
    }
}

/// The floor belongs to no lifter.
fn on_floor(floor: view::floor::Floor) -> Frame {
    Frame {
        undo: "undo".into(),
        undo_detail: "90 kg × 3".into(),
        ..of_nobody(Screen::Floor(floor))
    }
}

/// A screen that belongs to no lifter.
fn of_nobody(screen: Screen) -> Frame {
    Frame {
        lifter: String::new(),
        lift: String::new(),
        chips: vec![],
        undo: "back".into(),
        undo_detail: String::new(),
        ..frame(screen)
    }
}

fn chip(&(lifter, word, pace): &(&str, &str, Pace)) -> Chip {
    Chip {
        lifter: lifter.into(),
        word: word.into(),
        pace,
        shown: false,
    }
}

fn choose(tiles: &[Tile]) -> Screen {
    Screen::Choose(Choose {
        gym: "Old Ropeworks Barbell".into(),
        date: "Wednesday 25 November".into(),
        tiles: tiles.to_vec(),
        empty: if tiles.is_empty() {
            "Nobody has a plan for today. Put a coach's plan into the plans folder.".into()
        } else {
            String::new()
        },
        floor: if tiles.is_empty() {
            String::new()
        } else {
            "floor".into()
        },
        panel: "kiosk".into(),
        languages: "Deutsch · Español".into(),
    })
}

/// One lifter a line: name, lift, work, place, word, pace, share done.
const LIFTERS: &str = "\
Edda|rack pull|180 kg × 5|hole 9|2 of 5 done|ready|0.4
Tomasz|rack pull|220 kg × 5|hole 8|rest 1:40|resting|0.6
Priya|halting deadlift|102.5 kg × 5|from the floor|not begun|fresh|0
Konstantina Žižková|barbell shrug|3 sets of 317.5 kg × 5|hole 11|back moved|stopped|0.8
Oskar|power clean|5 sets of 205 lb × 3|from the floor|done|done|1
Lucía|rack pull|||no work load yet|blocked|0
Bartholomäus Łęcki|halting deadlift|140 kg × 5|from the floor|not begun|fresh|0
Ñuflo|power snatch|60 kg × 2|from the floor|not begun|fresh|0
Wilhelmina Øvergård|barbell shrug|150 kg × 8|hole 10|rest 0:20|resting|0.5
Ibrahim|rack pull|200 kg × 5|hole 9|not begun|fresh|0
Sanna|deadlift|1002.5 lb × 1|from the floor|4 of 9 done|ready|0.44
Petr|nothing today||||fresh|0
Anouk|rack pull|95 kg × 5|hole 7|not begun|fresh|0
Dai|nothing today||||fresh|0";

fn tiles() -> Vec<Tile> {
    LIFTERS.lines().map(tile).collect()
}

fn tile(line: &str) -> Tile {
    let mut words = line.split('|').map(String::from);
    let mut next = || words.next().unwrap_or_default();
    Tile {
        lifter: next(),
        lift: next(),
        work: next(),
        place: next(),
        word: next(),
        pace: match next().as_str() {
            "resting" => Pace::Resting,
            "ready" => Pace::Ready,
            "stopped" => Pace::Stopped,
            "done" => Pace::Done,
            "blocked" => Pace::Blocked,
            _ => Pace::Fresh,
        },
        share: next().parse().unwrap_or(0.0),
    }
}
