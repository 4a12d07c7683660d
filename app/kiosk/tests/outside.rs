//! Yesterday's data folder is put back whole: the kiosk is told by what lies elsewhere, at the start
//! or, where the place came back late, while it runs; mended, or given up, deliberately.
mod command_line;

use command_line::pinladder;
use kiosk::clock::BenchClock;
use kiosk::outside::Places;
use kiosk::{Folder, Kiosk, KioskError};
use std::fs;
use std::path::{Path, PathBuf};
use tempfile::TempDir;
use view::{Chosen, Language};

/// A room with a data folder in it, and a place beside it.
struct Room {
    room: TempDir,
    data: PathBuf,
    place: PathBuf,
}

impl Room {
    /// The place is named in kiosk.toml, or found by its own name.
    fn new(named: bool) -> Self {
        let room = tempfile::tempdir().expect("a folder");
        let data = room.path().join("gym");
        let place = room
            .path()
            .join(if named { "stick" } else { "gym-witness" });
        fs::create_dir(&data).expect("makes");
        fs::create_dir(&place).expect("makes");
        if named {
            let text = format!("backup = \"{}\"\n", place.display());
            fs::write(data.join("kiosk.toml"), text).expect("writes");
        }
        Self { room, data, place }
    }

    fn folder(&self) -> Folder {
        Folder::open(Some(&self.data)).expect("a folder")
    }

    fn open(&self) -> Result<Kiosk, KioskError> {
        let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
        let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
        Kiosk::open(&self.folder(), Box::new(clock))
    }

    /// Opens and closes the kiosk, `more` events later.
    fn go_on(&self, more: u32) -> u64 {
        let mut kiosk = self.open().expect("opens");
        for n in 0..more {
            choose(&mut kiosk, n);
        }
        kiosk.seq()
    }

    fn look(&self) -> Option<String> {
        let found = Places::of(&self.folder()).look();
        found.map(|error| error.to_string())
    }

    fn keep_yesterday(&self) {
        lay(&self.data, &self.room.path().join("yesterday"));
    }

    fn put_yesterday_back(&self) {
        fs::remove_dir_all(&self.data).expect("removes");
        lay(&self.room.path().join("yesterday"), &self.data);
    }
}

/// An entry, another one each time.
fn choose(kiosk: &mut Kiosk, n: u32) {
    let language = Language::ALL[usize::from(n.is_multiple_of(2))];
    let chosen = Chosen {
        language,
        ..Chosen::default()
    };
    kiosk.choose_look(chosen).expect("is kept");
}

fn lay(from: &Path, to: &Path) {
    fs::create_dir(to).expect("makes");
    for entry in fs::read_dir(from).expect("reads").flatten() {
        fs::copy(entry.path(), to.join(entry.file_name())).expect("copies");
    }
}

#[test]
fn yesterdays_folder_is_refused_and_given_up_only_deliberately() {
    for named in [true, false] {
        let room = Room::new(named);
        let then = room.go_on(0);
        room.keep_yesterday();
        let now = room.go_on(7);
        assert_eq!(room.look(), None);
        room.put_yesterday_back();
        let told = room.open().expect_err("refused").to_string();
        let known = format!("ends at event {then}, but ");
        assert!(told.contains(&known), "{told}");
        assert!(told.contains(&format!("as far as event {now}")), "{told}");
        let (well, _, err) = pinladder(&room.data, &["journal", "verify"]);
        assert!(!well && err.contains("as far as event"), "{err}");
        let (well, out, _) = pinladder(&room.data, &["journal", "mend"]);
        let lost = format!("events {} to {now} cannot be had any more", then + 1);
        assert!(!well && out.contains(&lost), "{out}");
        let give_up = (now - then).to_string();
        let words = ["journal", "mend", "--give-up", &give_up];
        let (well, out, err) = pinladder(&room.data, &words);
        assert!(well, "{out}{err}");
        assert_eq!(room.go_on(1), then + 1);
        assert_eq!(room.look(), None);
    }
}

#[test]
fn a_place_that_comes_back_late_is_told_on_the_screen_and_keeps_what_it_knows() {
    let room = Room::new(true);
    room.go_on(0);
    room.keep_yesterday();
    let now = room.go_on(5);
    assert_eq!(room.look(), None);
    let drawer = room.room.path().join("drawer");
    fs::rename(&room.place, &drawer).expect("is pulled");
    room.put_yesterday_back();
    let mut kiosk = room.open().expect("nobody knows better");
    let mut places = Places::of(&room.folder());
    assert!(places.look().is_none(), "and nothing is made there");
    assert!(!room.place.exists());
    fs::rename(&drawer, &room.place).expect("comes back");
    let found = places.look().expect("told");
    assert!(places.look().is_none(), "once");
    kiosk.tell_unsound(found);
    let words = format!("as far as event {now}");
    assert!(kiosk.frame().notice.contains(&words));
    // Entries are kept all the same.
    choose(&mut kiosk, 0);
    let told = Places::of(&room.folder())
        .look()
        .expect("still")
        .to_string();
    assert!(told.contains("event"), "{told}");
    drop(kiosk);
    room.open().expect_err("and the next start says so");
}
