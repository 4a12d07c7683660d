//! The running binary's coach's desk over loopback: a stick is seen, taken with the code, written
//! to; a copy is made and put back. And requests that never come to their end.
use std::io::{Read as _, Write as _};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

/// Ends the child whatever becomes of the test.
struct Kiosk {
    child: Child,
    port: u16,
    cookie: String,
}

impl Drop for Kiosk {
    fn drop(&mut self) {
        drop(self.child.kill());
        drop(self.child.wait());
    }
}

const CODE: &str = "slow-off-the-floor";

fn pinladder(data: &Path) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_pinladder"));
    command.arg("--data").arg(data);
    for name in ["DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET"] {
        command.env_remove(name);
    }
    command
}

/// What a command says, whose standard input is the code.
fn said(data: &Path, words: &[&str]) -> String {
    let mut child = pinladder(data)
        .args(words)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .expect("the binary starts");
    let mut input = child.stdin.take().expect("its input");
    // A command that asks for nothing may have ended already.
    drop(input.write_all(format!("{CODE}\n").as_bytes()));
    drop(input);
    let output = child.wait_with_output().expect("it ends");
    String::from_utf8(output.stdout).expect("UTF-8")
}

impl Kiosk {
    fn start(data: &Path, settings: &str) -> Self {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).expect("loopback");
        let port = listener.local_addr().expect("an address").port();
        drop(listener);
        let settings = format!("share = true\nport = {port}\n{settings}");
        std::fs::write(data.join("kiosk.toml"), settings).expect("written");
        assert!(said(data, &["code"]).contains("is set"));
        let child = pinladder(data)
            .stdout(Stdio::null())
            .spawn()
            .expect("the binary starts");
        let mut kiosk = Self {
            child,
            port,
            cookie: String::new(),
        };
        let answer = kiosk.post("/sign-in", &format!("code={CODE}"));
        let cookie = answer.split("set-cookie: ").nth(1).expect("a cookie");
        kiosk.cookie = cookie.split(';').next().expect("a pair").to_owned();
        kiosk
    }

    /// Sends a request, tried for a while as long as the page comes up.
    fn send(&self, request: &str) -> String {
        for _ in 0..150 {
            if let Ok(mut stream) = TcpStream::connect((Ipv4Addr::LOCALHOST, self.port)) {
                stream.write_all(request.as_bytes()).expect("sends");
                let mut answer = Vec::new();
                drop(stream.read_to_end(&mut answer));
                return String::from_utf8_lossy(&answer).into_owned();
            }
            std::thread::sleep(Duration::from_millis(100));
        }
        panic!("no page on port {}", self.port);
    }

    fn get(&self, path: &str) -> String {
        let cookie = &self.cookie;
        self.send(&format!(
            "GET {path} HTTP/1.1\r\nHost: localhost\r\nCookie: {cookie}\r\nConnection: close\r\n\r\n"
        ))
    }

    fn post(&self, path: &str, body: &str) -> String {
        let (cookie, length) = (&self.cookie, body.len());
        self.send(&format!(
            "POST {path} HTTP/1.1\r\nHost: localhost\r\nOrigin: http://localhost\r\nCookie: {cookie}\r\n\
             Content-Type: application/x-www-form-urlencoded\r\nContent-Length: {length}\r\n\
             Connection: close\r\n\r\n{body}"
        ))
    }

    /// The desk, once it says `words`.
    fn desk_with(&self, words: &str) -> String {
        self.page_with("/coach/desk", words)
    }

    /// A page, once it says `words`.
    fn page_with(&self, path: &str, words: &str) -> String {
        let mut page = String::new();
        for _ in 0..150 {
            page = self.get(path);
            if page.contains(words) {
                return page;
            }
            std::thread::sleep(Duration::from_millis(100));
        }
        panic!("{path} never says {words:?}:\n{page}");
    }

    fn order(&self, order: &str, about: &str, code: &str) -> String {
        self.post(
            "/coach/desk",
            &format!("order={order}&about={about}&code={code}"),
        )
    }
}

/// The value of the hidden field beside an order.
fn about(page: &str, order: &str) -> String {
    let form = page
        .split(&format!("value=\"{order}\""))
        .nth(1)
        .expect("the order is there");
    let value = form
        .split("name=\"about\" value=\"")
        .nth(1)
        .expect("its field");
    value.split('"').next().expect("its end").to_owned()
}

/// Takes everything off a stick.
fn empty(stick: &Path) {
    for entry in std::fs::read_dir(stick).expect("reads").flatten() {
        let path = entry.path();
        let gone = if path.is_dir() {
            std::fs::remove_dir_all(&path)
        } else {
            std::fs::remove_file(&path)
        };
        gone.expect("goes");
    }
}

#[test]
fn a_stick_is_seen_taken_and_written_to_and_a_copy_put_back() {
    let data = tempfile::tempdir().expect("a folder");
    let (stick, second) = (
        tempfile::tempdir().expect("a folder"),
        tempfile::tempdir().expect("one"),
    );
    let settings = format!(
        "stick = \"{}\"\nbackup = \"{}\"\n",
        stick.path().display(),
        second.path().display()
    );
    let kiosk = Kiosk::start(data.path(), &settings);
    let page = kiosk.desk_with("No stick is in");
    assert!(!page.contains("no second place is set"), "{page}");
    // The last night is caught up with at once.
    let page = kiosk.desk_with("Last nightly copy: ");
    assert!(page.contains("1 copy<"), "{page}");
    assert!(kiosk.get("/coach/blank.xlsx").contains("200 OK"));
    let answer = kiosk.order("copy", "", CODE);
    assert!(answer.contains("copied and proven: "), "{answer}");
    let copy = about(&kiosk.desk_with("Restore this copy"), "restore");

    // Plugged in.
    let header = "date,lifter,lift,sets,reps,load,note\n";
    let row = "2027-03-01,Hamza,rack pull,1,5,180 kg,from the stick\n";
    std::fs::write(stick.path().join("march.csv"), format!("{header}{row}")).expect("writes");
    let page = kiosk.desk_with("Hamza: Mon 1 Mar 2027, 1 new day");
    let id = about(&page, "take");
    assert!(
        kiosk
            .order("take", &id, "guess-work")
            .contains("that is not the code")
    );
    assert!(
        kiosk
            .order("take", "other", CODE)
            .contains("another stick is in by now")
    );
    let sheet = ["sheet", "--date", "2027-03-01", "--lifter", "hamza"];
    assert!(
        !said(data.path(), &sheet).contains("from the stick"),
        "nothing so far"
    );
    let answer = kiosk.order("take", &id, CODE);
    assert!(
        answer.contains("took 1 row; the stick may be pulled"),
        "{answer}"
    );
    assert!(said(data.path(), &sheet).contains("from the stick"));

    let answer = kiosk.order("write", &id, CODE);
    assert!(
        answer.contains("the record is on the stick; it may be pulled"),
        "{answer}"
    );
    // A fault: nothing can be taken. Pulled: nothing is there.
    std::fs::write(
        stick.path().join("march.csv"),
        format!("{header}{}", row.replace(" kg", " stone")),
    )
    .expect("writes");
    let page = kiosk.desk_with("row 2, column load");
    assert!(!page.contains("Take all of it"));
    empty(stick.path());
    kiosk.desk_with("No stick is in");

    // Back to before the stick: the kiosk itself goes on.
    assert!(
        kiosk
            .order("restore", "none", CODE)
            .contains("that copy is gone")
    );
    let answer = kiosk.order("restore", &copy, CODE);
    assert!(answer.contains("restored "), "{answer}");
    assert!(!said(data.path(), &sheet).contains("from the stick"));
    assert!(kiosk.get("/coach/plan").contains("200 OK"));
}

/// The demo gym without its plan: its programmes fill the days; the kiosk's language is the page's.
#[test]
fn days_of_programmes_and_the_language_come_to_the_page() {
    let data = tempfile::tempdir().expect("a folder");
    for name in ["gym.toml", "lifters.toml", "programme.toml"] {
        let demo = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo-data");
        std::fs::copy(demo.join(name), data.path().join(name)).expect("copied");
    }
    let kiosk = Kiosk::start(data.path(), "");
    let page = kiosk.page_with("/coach/plan", "by the programme: split pulls, ");
    assert!(page.contains("by the programme: first weeks, deadlift day"));
    // As somebody chooses it at the screen.
    let folder = kiosk::Folder::open(Some(data.path())).expect("opens");
    let clock = Box::new(kiosk::SystemClock);
    let mut screen = kiosk::Kiosk::open(&folder, clock).expect("opens");
    let chosen = view::Chosen {
        language: view::Language::German,
        ..view::Chosen::default()
    };
    screen.choose_look(chosen).expect("kept");
    let page = kiosk.page_with("/coach/plan", "aus dem Programm: split pulls, ");
    assert!(page.contains("<html lang=\"de\">"));
    // Whoever serves the page stands back for whoever takes taps (proc(5), stat, field 19).
    let pid = kiosk.child.id();
    let nice = |thread: &str| -> Vec<String> {
        let threads = std::fs::read_dir(format!("/proc/{pid}/task")).expect("threads");
        let told = threads.flatten().filter_map(|of| {
            let stat = std::fs::read_to_string(of.path().join("stat")).ok()?;
            let (front, rest) = stat.rsplit_once(") ")?;
            let named = front.split_once('(')?.1.starts_with(thread);
            named.then(|| rest.split(' ').nth(16).unwrap_or_default().to_owned())
        });
        told.collect()
    };
    // Whoever takes taps keeps what this test was started with.
    let own = std::fs::read_to_string("/proc/self/stat").expect("a process");
    let (_, own) = own.rsplit_once(") ").expect("its name");
    let own: i32 = own
        .split(' ')
        .nth(16)
        .expect("a field")
        .parse()
        .expect("a number");
    let back = own.max(15).to_string();
    assert_eq!(nice("pinladder"), [own.to_string()]);
    assert_eq!(nice("lan"), [back.as_str()]);
    let readers = nice("tokio");
    assert!(
        !readers.is_empty() && readers.iter().all(|n| *n == back),
        "{readers:?}"
    );
}

/// Bodies that never come, heads that never end, many at once: each is given up on, and others
/// are answered meanwhile.
#[test]
fn slow_and_swollen_requests() {
    let data = tempfile::tempdir().expect("a folder");
    let kiosk = Kiosk::start(data.path(), "");
    let connect = || TcpStream::connect((Ipv4Addr::LOCALHOST, kiosk.port)).expect("connects");
    let clock = kiosk::clock::milliseconds();
    let slow: Vec<TcpStream> = (0..20)
        .map(|n| {
            let mut stream = connect();
            let head = if n % 2 == 0 {
                "GET / HTTP/1.1\r\nHost: localhost\r\nX-Slow: ".to_owned()
            } else {
                "POST /sign-in HTTP/1.1\r\nHost: localhost\r\nOrigin: http://localhost\r\n\
                 Content-Type: application/x-www-form-urlencoded\r\nContent-Length: 500\r\n\r\ncode="
                    .to_owned()
            };
            stream.write_all(head.as_bytes()).expect("sends");
            stream
        })
        .collect();
    assert!(kiosk.get("/board").contains("200 OK"));
    assert!(clock() < 8_000, "others are answered meanwhile");
    for mut stream in slow {
        let mut answer = Vec::new();
        // Closed with or without a word.
        drop(stream.read_to_end(&mut answer));
        let answer = String::from_utf8_lossy(&answer);
        assert!(
            answer.is_empty() || answer.starts_with("HTTP/1.1 408"),
            "{answer}"
        );
    }
    let waited = clock();
    assert!((9_000..40_000).contains(&waited), "{waited} ms");
    // Swollen: a body that says it is large, a head beyond any.
    let answer = kiosk.send(
        "POST /sign-in HTTP/1.1\r\nHost: localhost\r\nOrigin: http://localhost\r\nConnection: close\r\n\
         Content-Type: application/x-www-form-urlencoded\r\nContent-Length: 99999999\r\n\r\ncode=x",
    );
    assert!(answer.starts_with("HTTP/1.1 413"), "{answer}");
    let mut stream = connect();
    let head = format!(
        "GET / HTTP/1.1\r\nHost: localhost\r\nX: {}\r\n\r\n",
        "y".repeat(2 << 20)
    );
    drop(stream.write_all(head.as_bytes()));
    let mut answer = Vec::new();
    drop(stream.read_to_end(&mut answer));
    assert!(!String::from_utf8_lossy(&answer).contains("200 OK"));
    assert!(kiosk.get("/").contains("200 OK"), "it goes on");
}
