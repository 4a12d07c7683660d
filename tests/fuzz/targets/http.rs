//! Whatever bytes come over a connection to the page, through the real server, guard and router: an
//! answer by the rules, within its time, and nothing of the record without a right to it.
#![no_main]
mod http_rules;

use domain::{Event, Moment};
use journal::{JOURNAL_FILE, Journal, RECORD_FILE, Record};
use share::{Desk, Front, Places, converse, router, set_code};
use std::cell::RefCell;
use std::time::Duration;
use tempfile::TempDir;
use tokio::io::{AsyncReadExt as _, AsyncWriteExt as _, duplex};
use tokio::runtime::{Builder, Runtime};
use tokio::time::timeout;

/// The released journal's rows, whose lifters are given names that nothing else has.
const ROWS: &str = include_str!("../../journals/v0.2.0.jsonl");
const LIFTERS: [(&str, &str); 2] = [("Ada", "Quillonwright"), ("Bo", "Threlkeldson")];
const CODE: &str = "flat-backs-only";
/// What stands in an input for a coach's session and for a lifter's link.
const COACH: &str = "COACH-TOKEN";
const LINK: &str = "LINK-TOKEN";
/// A connection may last a quarter of an hour, of the paused clock.
const MOST: Duration = Duration::from_secs(1_000);
/// Longer requests are cut: the server's limits are far below.
const BYTES_MAX: usize = 1 << 16;

struct Page {
    _folder: TempDir,
    runtime: Runtime,
    desk: Desk,
    places: Places,
    /// The cookie's value of a coach who has signed in.
    coach: String,
    /// How many links were given out.
    links: u32,
}

thread_local! {
    static PAGE: RefCell<Option<Page>> = const { RefCell::new(None) };
}

libfuzzer_sys::fuzz_target!(|data: &[u8]| {
    PAGE.with_borrow_mut(|page| page.get_or_insert_with(Page::open).hear(data));
});

impl Page {
    fn open() -> Self {
        let folder = tempfile::tempdir().expect("a folder");
        let places = Places {
            record: folder.path().join(RECORD_FILE),
            journal: folder.path().join(JOURNAL_FILE),
        };
        let mut journal = Journal::open(&places.journal).expect("a journal");
        journal.append(0, &events()).expect("appends");
        let mut record = Record::open(&places.record).expect("a record");
        record.follow(&journal).expect("follows");
        set_code(folder.path(), CODE).expect("a code");
        // Time stands still, so that guesses are refused for good after a few.
        let desk = Desk::new(folder.path(), || 1_000);
        let runtime = Builder::new_current_thread()
            .enable_all()
            .start_paused(true)
            .build()
            .expect("a runtime");
        let mut page = Self {
            _folder: folder,
            runtime,
            desk,
            places,
            coach: String::new(),
            links: 0,
        };
        page.sign_in();
        page
    }

    /// Sends `request` in pieces of so many bytes, and gives all that is answered until the server
    /// closes.
    fn ask(&self, request: &[u8], piece: usize) -> Vec<u8> {
        let (near, far) = duplex(1 << 14);
        let router = router(self.places.clone(), self.desk.clone(), Front::default());
        let (mut reads, mut writes) = tokio::io::split(near);
        let talk = async {
            let say = async {
                for part in request.chunks(piece) {
                    if writes.write_all(part).await.is_err() {
                        break;
                    }
                }
            };
            let mut answers = Vec::new();
            let hear = reads.read_to_end(&mut answers);
            let (_, _, _) = tokio::join!(converse(far, router), say, hear);
            answers
        };
        self.runtime
            .block_on(async { timeout(MOST, talk).await })
            .expect("a connection that ends")
    }

    fn is_coach(&self) -> bool {
        let coach = &self.coach;
        let look = format!(
            "GET /coach/desk HTTP/1.1\r\nhost: localhost\r\ncookie: pinladder-coach={coach}\r\n\r\n"
        );
        self.ask(look.as_bytes(), BYTES_MAX)
            .starts_with(b"HTTP/1.1 200")
    }

    fn sign_in(&mut self) {
        let form = format!("code={CODE}");
        let request = format!(
            "POST /sign-in HTTP/1.1\r\nhost: localhost\r\norigin: http://localhost\r\n\
             content-type: application/x-www-form-urlencoded\r\ncontent-length: {}\r\n\r\n{form}",
            form.len()
        );
        let answer = String::from_utf8(self.ask(request.as_bytes(), BYTES_MAX)).expect("text");
        let cookie = answer.split("pinladder-coach=").nth(1);
        let cookie = cookie.and_then(|rest| rest.split(';').next());
        self.coach = cookie.unwrap_or_else(|| panic!("{answer}")).to_owned();
    }

    fn hear(&mut self, data: &[u8]) {
        let Some((piece, bytes)) = data.split_first() else {
            return;
        };
        let bytes = &bytes[..bytes.len().min(BYTES_MAX)];
        // Bytes that are no text stay as they are: each is one letter of Latin-1 on the way.
        let mut text: String = bytes.iter().copied().map(char::from).collect();
        let may_see = text.contains(COACH) || text.contains(LINK);
        if text.contains(LINK) {
            self.links += 1;
            let path = self.desk.link(self.links, LIFTERS[0].1, 0).expect("a link");
            text = text.replace(LINK, path.trim_start_matches("/mine/"));
        }
        text = text.replace(COACH, &self.coach);
        let request: Vec<u8> = text
            .chars()
            .map(|c| u8::try_from(c).expect("Latin-1"))
            .collect();
        let piece = match piece {
            0 => BYTES_MAX,
            some => usize::from(*some),
        };
        let answers = self.ask(&request, piece);
        let secrets = LIFTERS.map(|(_, name)| name);
        if let Err(why) = http_rules::check(&answers, &secrets, may_see) {
            panic!("{why}");
        }
        // Whoever signed out is to be a coach again.
        if may_see && text.contains("sign-out") && !self.is_coach() {
            self.sign_in();
        }
    }
}

fn events() -> Vec<Event> {
    let mut events = Vec::new();
    for (at, line) in (0_i64..).zip(ROWS.lines()) {
        let row: serde_json::Value = serde_json::from_str(line).expect("JSON");
        let version = row["version"].as_u64().expect("a version");
        let kind = row["kind"].as_str().expect("a kind");
        let mut body = row["body"].to_string();
        for (short, name) in LIFTERS {
            body = body.replace(&format!("\"{short}\""), &format!("\"{name}\""));
        }
        let version = u32::try_from(version).expect("small");
        let fact = journal::wire::decode(version, kind, &body).expect("a released row");
        events.push(Event {
            at: Moment(1_772_442_000_000 + at * 90_000),
            fact,
        });
    }
    events
}
