//! The binary itself where there is no display: one sentence, the day sheet, the LAN page, and
//! an orderly end. Talks to loopback only.
use rusqlite::{Connection, OpenFlags};
use std::io::{BufRead as _, BufReader, Read as _, Write as _};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::Path;
use std::process::{Child, Command, ExitStatus, Stdio};
use std::time::Duration;

/// Ends the child whatever becomes of the test.
struct Kiosk(Child);

impl Drop for Kiosk {
    fn drop(&mut self) {
        drop(self.0.kill());
        drop(self.0.wait());
    }
}

impl Kiosk {
    /// The binary on `data`, where there is no display.
    fn start(data: &Path) -> Self {
        let mut kiosk = Command::new(env!("CARGO_BIN_EXE_pinladder"));
        kiosk.arg("--data").arg(data).stdout(Stdio::piped());
        for name in ["DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET"] {
            kiosk.env_remove(name);
        }
        Self(kiosk.spawn().expect("the binary starts"))
    }

    /// Ends it as `kill -INT` does, and waits ten seconds at most; no crate of ours may send a
    /// signal itself.
    fn interrupted(&mut self) -> Option<ExitStatus> {
        let pid = self.0.id().to_string();
        // The shell's own kill: a bare Debian has no other.
        let sent = Command::new("sh")
            .args(["-c", &format!("kill -INT {pid}")])
            .status();
        assert!(sent.expect("a shell is there").success());
        for _ in 0..100 {
            if let Some(ended) = self.0.try_wait().expect("its state") {
                return Some(ended);
            }
            std::thread::sleep(Duration::from_millis(100));
        }
        None
    }
}

fn free_port() -> u16 {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).expect("loopback");
    listener.local_addr().expect("an address").port()
}

/// The answer to one request; tried for at most ten seconds while the page comes up.
fn get(port: u16, path: &str) -> String {
    for _ in 0..100 {
        if let Ok(mut stream) = TcpStream::connect((Ipv4Addr::LOCALHOST, port)) {
            stream
                .set_read_timeout(Some(Duration::from_secs(10)))
                .expect("a timeout");
            let request =
                format!("GET {path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
            stream
                .write_all(request.as_bytes())
                .expect("the request is sent");
            let mut answer = String::new();
            stream
                .read_to_string(&mut answer)
                .expect("an answer in UTF-8");
            return answer;
        }
        std::thread::sleep(Duration::from_millis(100));
    }
    panic!("no page on port {port}");
}

#[test]
fn without_a_display_the_sheet_is_printed_and_the_page_served_until_interrupted() {
    let data = tempfile::tempdir().expect("a folder");
    let port = free_port();
    std::fs::write(
        data.path().join("kiosk.toml"),
        format!("share = true\nport = {port}\n"),
    )
    .expect("written");
    let mut kiosk = Kiosk::start(data.path());
    let mut lines = BufReader::new(kiosk.0.stdout.take().expect("its output")).lines();
    let first = lines.next().expect("a line").expect("UTF-8");
    assert!(first.starts_with("No display ("), "{first}");
    assert!(
        first.contains(&format!("http://127.0.0.1:{port}/")),
        "{first}"
    );
    let sheet: Vec<String> = lines.by_ref().take(3).map_while(Result::ok).collect();
    assert!(
        sheet
            .iter()
            .any(|line| line.starts_with("The Old Ropewalk, ")),
        "{sheet:?}"
    );

    let page = get(port, "/");
    assert!(page.starts_with("HTTP/1.1 200 OK"), "{page}");
    assert!(page.contains("Floor board"), "{page}");
    let board = get(port, "/board");
    assert!(board.starts_with("HTTP/1.1 200 OK"), "{board}");
    let csv = get(port, "/record.csv");
    assert!(
        csv.starts_with("HTTP/1.1 401 "),
        "without the coach's code: {csv}"
    );

    let ended = kiosk.interrupted();
    assert!(
        ended.is_some_and(|status| status.success()),
        "it ends well: {ended:?}"
    );
}

/// Rows of the plan in the record at `data` that somebody wrote to behind the kiosk's back, and all
/// of them; nothing while the file is being made anew.
fn rows(data: &Path) -> Option<(u32, u32)> {
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY;
    let file = Connection::open_with_flags(data.join("record.sqlite"), flags).ok()?;
    let counted = "SELECT count(*) FILTER (WHERE note LIKE '%overwritten'), count(*) FROM planned";
    let both = |row: &rusqlite::Row<'_>| Ok((row.get(0)?, row.get(1)?));
    file.query_row(counted, [], both).ok()
}

/// Waits at most a minute until the record holds rows and as many of them overwritten as `right`
/// says.
fn wait_for(data: &Path, right: impl Fn(u32, u32) -> bool) -> bool {
    (0..600).any(|_| {
        std::thread::sleep(Duration::from_millis(100));
        rows(data).is_some_and(|(overwritten, all)| all > 0 && right(overwritten, all))
    })
}

#[test]
fn a_record_that_somebody_wrote_to_is_found_and_made_anew_by_the_running_kiosk() {
    let data = tempfile::tempdir().expect("a folder");
    let mut kiosk = Kiosk::start(data.path());
    assert!(wait_for(data.path(), |changed, _| changed == 0), "a plan");
    assert!(kiosk.interrupted().is_some_and(|ended| ended.success()));
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE;
    let file = Connection::open_with_flags(data.path().join("record.sqlite"), flags);
    let change = "UPDATE planned SET note = note || 'overwritten'";
    let changed = file.expect("opens").execute(change, []).expect("changes");
    assert!(changed > 0 && rows(data.path()).is_some_and(|(some, _)| some > 0));
    let mut kiosk = Kiosk::start(data.path());
    assert!(
        wait_for(data.path(), |changed, _| changed == 0),
        "still as overwritten: {:?}",
        rows(data.path())
    );
    assert!(kiosk.interrupted().is_some_and(|ended| ended.success()));
}

#[test]
fn a_kiosk_that_is_asked_to_end_while_it_starts_ends_well() {
    let data = tempfile::tempdir().expect("a folder");
    let held = data.path().join("kiosk.lock");
    for start in 0..5 {
        let mut kiosk = Kiosk::start(data.path());
        // As soon as it has touched its folder, long before it can answer anybody.
        for _ in 0..10_000 {
            if held.exists() {
                break;
            }
            std::thread::sleep(Duration::from_millis(1));
        }
        assert!(held.exists(), "start {start}: the folder is not taken");
        let ended = kiosk.interrupted();
        assert!(
            ended.is_some_and(|status| status.success()),
            "start {start}: {ended:?}"
        );
        std::fs::remove_file(&held).expect("nobody holds it");
    }
}
