//! The door of the coach's desk and the page that is turned on at it: hashed digits, growing waits,
//! codes of older versions, settings that count at once.
use kiosk::clock::BenchClock;
use kiosk::lan::{self, Lan};
use kiosk::{Folder, Kiosk};
use share::Desk;
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::os::unix::fs::PermissionsExt as _;
use std::path::Path;
use std::time::Duration;
use view::desk::{DESK_FILE, LanCard, PLAIN_ONCE};
use view::list::ListState;
use view::{Frame, Screen, Tap};

fn evening() -> BenchClock {
    let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"))
}

fn open(data: &Path, clock: &BenchClock) -> Kiosk {
    let folder = Folder::open(Some(data)).expect("a folder");
    Kiosk::open(&folder, Box::new(clock.clone())).expect("it opens")
}

/// To the door, and these digits.
fn try_code(kiosk: &mut Kiosk, digits: [u8; 4]) -> Frame {
    kiosk.tap(&Tap::Panel);
    row(kiosk, "coach's desk");
    let mut frame = type_in(kiosk, digits);
    if asks_again(&frame) {
        frame = type_in(kiosk, digits);
    }
    frame
}

fn type_in(kiosk: &mut Kiosk, digits: [u8; 4]) -> Frame {
    let taps = digits.map(|digit| kiosk.tap(&Tap::Number(digit)));
    taps.into_iter().next_back().expect("four digits")
}

/// Whether a first code is asked for once more.
fn asks_again(frame: &Frame) -> bool {
    matches!(&frame.screen, Screen::Typing(door) if !door.wrong && door.typed.is_empty())
}

/// Taps the row with this title or value.
fn row(kiosk: &mut Kiosk, title: &str) -> Frame {
    let frame = kiosk.frame();
    let Screen::List(list) = &frame.screen else {
        panic!("no list: {:?}", frame.screen)
    };
    let is = |row: &view::list::ListRow| row.title == title || row.value == title;
    let at = list.rows.iter().position(is);
    kiosk.tap(&Tap::Row(at.unwrap_or_else(|| panic!("no row {title}"))))
}

fn is_open(frame: &Frame) -> bool {
    matches!(frame.screen, Screen::List(_))
}

fn hint(frame: &Frame) -> String {
    let Screen::Typing(typing) = &frame.screen else {
        panic!("not at the door")
    };
    typing.hint.clone()
}

#[test]
fn the_digits_are_hashed_beside_the_journal_and_nowhere_else() {
    let data = tempfile::tempdir().expect("a folder");
    let clock = evening();
    let mut kiosk = open(data.path(), &clock);
    assert!(
        is_open(&try_code(&mut kiosk, [4, 7, 1, 1])),
        "the first become the code"
    );
    assert!(!kiosk.state().files.contains_key(DESK_FILE));
    let file = data.path().join("desk-code");
    let kept = std::fs::read_to_string(&file).expect("the hash");
    assert!(
        kept.starts_with("$argon2id$") && !kept.contains("4711"),
        "{kept}"
    );
    let mode = std::fs::metadata(&file)
        .expect("there")
        .permissions()
        .mode();
    assert_eq!(mode & 0o777, 0o600, "for this user alone");
    drop(kiosk);
    let mut again = open(data.path(), &clock);
    assert!(!is_open(&try_code(&mut again, [1, 2, 3, 4])));
    assert!(
        is_open(&try_code(&mut again, [4, 7, 1, 1])),
        "over a restart"
    );
}

#[test]
fn wrong_digits_wait_ever_longer() {
    let data = tempfile::tempdir().expect("a folder");
    let clock = evening();
    let mut kiosk = open(data.path(), &clock);
    try_code(&mut kiosk, [4, 7, 1, 1]);
    for _ in 0..2 {
        let frame = try_code(&mut kiosk, [0, 0, 0, 0]);
        assert_eq!(hint(&frame), "wrong digits; try again");
    }
    let mut wait = 5;
    for _ in 0..10 {
        let frame = try_code(&mut kiosk, [0, 0, 0, 0]);
        let left = format!("{}:{:02}", wait / 60, wait % 60);
        assert_eq!(hint(&frame), format!("too many wrong; wait {left}"));
        // Meanwhile not even the right ones are taken.
        assert!(!is_open(&try_code(&mut kiosk, [4, 7, 1, 1])));
        clock.advance_ms(wait * 1_000);
        wait = (wait * 2).min(900);
    }
    assert!(
        is_open(&try_code(&mut kiosk, [4, 7, 1, 1])),
        "after the wait"
    );
    let frame = try_code(&mut kiosk, [0, 0, 0, 0]);
    assert_eq!(
        hint(&frame),
        "wrong digits; try again",
        "and from the first again"
    );
}

#[test]
fn a_code_of_an_older_version_still_opens_and_is_to_be_changed() {
    let data = tempfile::tempdir().expect("a folder");
    let clock = evening();
    drop(open(data.path(), &clock));
    {
        let mut journal =
            journal::Journal::open(&data.path().join("journal.sqlite")).expect("opens");
        let old = domain::Event {
            at: domain::Moment(1),
            fact: domain::Fact::FileTaken {
                name: DESK_FILE.into(),
                text: "code = \"4711\"\n".into(),
            },
        };
        let last = journal.last().expect("events");
        journal.append(last, &[old]).expect("appends");
    }
    let mut kiosk = open(data.path(), &clock);
    assert_eq!(kiosk.state().files[DESK_FILE], PLAIN_ONCE);
    assert!(!is_open(&try_code(&mut kiosk, [1, 2, 3, 4])));
    let frame = try_code(&mut kiosk, [4, 7, 1, 1]);
    assert!(is_open(&frame), "it opens");
    let frame = row(&mut kiosk, "kiosk");
    let Screen::List(list) = &frame.screen else {
        panic!("this screen's page")
    };
    let code = list
        .rows
        .iter()
        .find(|row| row.title == "code")
        .expect("the row");
    assert_eq!(code.state, ListState::Amiss, "{code:?}");
    row(&mut kiosk, "new code");
    // Twice, and not otherwise.
    for digits in [[9, 9, 0, 7], [9, 9, 0, 8], [9, 9, 0, 7], [9, 9, 0, 7]] {
        type_in(&mut kiosk, digits);
        kiosk.tap(&Tap::Main);
    }
    let Screen::List(list) = kiosk.frame().screen else {
        panic!("kept")
    };
    let code = list
        .rows
        .iter()
        .find(|row| row.title == "code")
        .expect("the row");
    assert_eq!(code.state, ListState::Plain, "{code:?}");
    drop(kiosk);
    let mut again = open(data.path(), &clock);
    assert!(!is_open(&try_code(&mut again, [4, 7, 1, 1])));
    assert!(is_open(&try_code(&mut again, [9, 9, 0, 7])));
}

/// Waits until the page answers a connection, or no longer does.
fn answers(port: u16, wanted: bool) -> bool {
    for _ in 0..400 {
        if TcpStream::connect((Ipv4Addr::LOCALHOST, port)).is_ok() == wanted {
            return true;
        }
        std::thread::sleep(Duration::from_millis(50));
    }
    false
}

#[test]
fn the_page_is_turned_on_and_off_at_the_desk_and_counts_at_once() {
    let data = tempfile::tempdir().expect("a folder");
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).expect("loopback");
    let port = listener.local_addr().expect("an address").port();
    drop(listener);
    std::fs::write(data.path().join("kiosk.toml"), format!("port = {port}\n")).expect("written");
    let clock = evening();
    let folder = Folder::open(Some(data.path())).expect("a folder");
    let mut kiosk = open(data.path(), &clock);
    let lan = Lan::of(&kiosk, &folder, Desk::new(data.path(), || 0));
    lan::start(lan.clone());
    assert!(answers(port, false), "off at first");
    try_code(&mut kiosk, [4, 7, 1, 1]);
    row(&mut kiosk, "kiosk");
    row(&mut kiosk, "page on the network");
    row(&mut kiosk, "off");
    lan.follow(&mut kiosk);
    assert!(answers(port, true), "on at once: {}", kiosk.frame().notice);
    let mut left = 500;
    while lan.card().address.is_empty() && left > 0 {
        std::thread::sleep(Duration::from_millis(20));
        left -= 1;
    }
    lan.follow(&mut kiosk);
    let Screen::List(list) = kiosk.frame().screen else {
        panic!("the page's page")
    };
    assert_eq!(list.rows[0].detail, format!("http://127.0.0.1:{port}/"));
    // Its code, by the pad: too short is refused, six are kept.
    row(&mut kiosk, "the page's code");
    for digit in [8, 1, 5] {
        kiosk.tap(&Tap::Number(digit));
    }
    assert!(!kiosk.tap(&Tap::Main).notice.is_empty(), "too short");
    for digit in [3, 7, 2] {
        kiosk.tap(&Tap::Number(digit));
    }
    let frame = kiosk.tap(&Tap::Main);
    assert!(is_open(&frame), "{}", frame.notice);
    let kept = share::kept_code(data.path())
        .expect("reads")
        .expect("a hash");
    assert!(share::is_code(&kept, "815372"));
    row(&mut kiosk, "on");
    lan.follow(&mut kiosk);
    assert!(answers(port, false), "off at once");
}

/// Whoever shares the network could read the code: that is told, and one tap mends it.
#[test]
fn a_page_without_tls_is_told_and_a_tap_turns_it_on() {
    let data = tempfile::tempdir().expect("a folder");
    // Of the addresses for documents (RFC 5737): nothing listens there.
    let settings = "share = true\naddress = \"192.0.2.20\"\ntls = false\n";
    std::fs::write(data.path().join("kiosk.toml"), settings).expect("written");
    let clock = evening();
    let mut kiosk = open(data.path(), &clock);
    try_code(&mut kiosk, [4, 7, 1, 1]);
    let plain = LanCard {
        address: "http://192.0.2.20:8470/".to_owned(),
        readable: true,
        ..LanCard::default()
    };
    kiosk.tell_lan(plain);
    row(&mut kiosk, "kiosk");
    row(&mut kiosk, "page on the network");
    let shown = |kiosk: &mut Kiosk, title: &str| {
        let Screen::List(list) = kiosk.frame().screen else {
            panic!("the page's page")
        };
        let found: Vec<_> = list
            .rows
            .into_iter()
            .filter(|row| row.title == title)
            .collect();
        found
    };
    let told = shown(&mut kiosk, "TLS");
    assert_eq!(told.len(), 1);
    assert_eq!(told[0].state, ListState::Amiss, "{told:?}");
    assert!(
        told[0].detail.contains("can read the coach's code"),
        "{told:?}"
    );
    let frame = row(&mut kiosk, "TLS");
    assert!(kiosk.config().is_under_tls(), "{}", frame.notice);
    assert_eq!(kiosk.config().address.to_string(), "192.0.2.20");
    // What else there is to be told.
    kiosk.tell_lan(LanCard {
        address: "https://192.0.2.20:8470/".to_owned(),
        root_fingerprint: "AB:CD".to_owned(),
        tls_by_itself: true,
        certificate_trouble: "/c.pem is no certificate in PEM".to_owned(),
        certificate_ends: chrono::NaiveDate::from_ymd_opt(2026, 12, 9),
        ..LanCard::default()
    });
    assert_eq!(shown(&mut kiosk, "TLS")[0].state, ListState::Told);
    assert_eq!(shown(&mut kiosk, "SHA-256 of the root")[0].detail, "AB:CD");
    let amiss: Vec<_> = shown(&mut kiosk, "certificate");
    assert!(
        amiss[0].detail.ends_with("/c.pem is no certificate in PEM"),
        "{amiss:?}"
    );
    assert!(amiss[1].detail.contains("9 December"), "{amiss:?}");
}
