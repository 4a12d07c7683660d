//! The service manager's watchdog is fed only while owner and window both live, and a part that falls
//! is told. The words of the protocol are those of sd_notify(3).
use kiosk::watch::{fallen, spawn_again, spawn_once};
use kiosk::watchdog::{Beat, Watchdog};
use std::os::unix::net::UnixDatagram;
use std::process::{Child, Command, Stdio};
use std::time::Duration;
use view::Language;

/// Ends the child whatever becomes of the test.
struct Kiosk(Child);

impl Drop for Kiosk {
    fn drop(&mut self) {
        drop(self.0.kill());
        drop(self.0.wait());
    }
}

fn told(socket: &UnixDatagram) -> Option<String> {
    let mut room = [0; 200];
    let many = socket.recv(&mut room).ok()?;
    Some(String::from_utf8_lossy(&room[..many]).into_owned())
}

fn manager() -> (tempfile::TempDir, std::path::PathBuf, UnixDatagram) {
    let room = tempfile::tempdir().expect("a folder");
    let path = room.path().join("notify");
    let socket = UnixDatagram::bind(&path).expect("binds");
    (room, path, socket)
}

#[test]
fn it_is_fed_only_while_both_beat() {
    let (_room, path, socket) = manager();
    socket.set_nonblocking(true).expect("sets");
    let (owner, window) = (Beat::default(), Beat::default());
    let watchdog = Watchdog::at(path.as_os_str(), None, owner.clone(), window.clone());
    let mut watchdog = watchdog.expect("a socket's name");
    watchdog.ready();
    assert_eq!(told(&socket).as_deref(), Some("READY=1"));
    for (owner_lives, window_lives) in [
        (true, true),
        (false, true),
        (true, false),
        (false, false),
        (true, true),
    ] {
        if owner_lives {
            owner.beat();
        }
        if window_lives {
            window.beat();
        }
        let lives = owner_lives && window_lives;
        assert_eq!(watchdog.look(), lives);
        assert_eq!(told(&socket).as_deref(), lives.then_some("WATCHDOG=1"));
    }
    for bad in ["", "notify", "vsock:2:1"] {
        let none = Watchdog::at(bad.as_ref(), None, Beat::default(), Beat::default());
        assert!(none.is_none(), "{bad}");
    }
    let hidden = Watchdog::at("@hidden".as_ref(), None, Beat::default(), Beat::default());
    assert!(hidden.is_some(), "an abstract name");
}

#[test]
fn the_kiosk_says_that_it_is_up_and_goes_on_being_well() {
    let (_room, path, socket) = manager();
    let patience = Duration::from_secs(60);
    socket.set_read_timeout(Some(patience)).expect("sets");
    let data = tempfile::tempdir().expect("a folder");
    std::fs::write(data.path().join("kiosk.toml"), "share = false\n").expect("writes");
    let mut kiosk = Command::new(env!("CARGO_BIN_EXE_pinladder"));
    kiosk.arg("--data").arg(data.path()).stdout(Stdio::null());
    for name in [
        "DISPLAY",
        "WAYLAND_DISPLAY",
        "WAYLAND_SOCKET",
        "WATCHDOG_PID",
    ] {
        kiosk.env_remove(name);
    }
    kiosk
        .env("NOTIFY_SOCKET", &path)
        .env("WATCHDOG_USEC", "1500000");
    let _kiosk = Kiosk(kiosk.spawn().expect("the binary starts"));
    assert_eq!(told(&socket).as_deref(), Some("READY=1"));
    for _ in 0..3 {
        assert_eq!(told(&socket).as_deref(), Some("WATCHDOG=1"));
    }
}

#[test]
fn a_part_that_falls_is_begun_anew_and_told_in_both_languages() {
    let mut falls = 2;
    let again = spawn_again("lamp of the test", move || {
        if falls > 0 {
            falls -= 1;
            panic!("on purpose");
        }
    });
    again.expect("a thread").join().expect("it is contained");
    let once = spawn_once(
        "copy of the test",
        || panic!("on purpose"),
        |well| assert!(!well),
    );
    once.expect("a thread").join().expect("it is contained");
    for (say, words) in [
        (Language::English, "times since the start: 2"),
        (Language::German, "so oft: 2"),
    ] {
        let told = fallen(say);
        let lamp = told.iter().find(|line| line.contains("lamp of the test"));
        assert!(lamp.is_some_and(|line| line.contains(words)), "{told:?}");
        assert!(
            told.iter().any(|line| line.contains("copy of the test")),
            "{told:?}"
        );
    }
}
