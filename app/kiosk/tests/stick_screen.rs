//! The stick and the copies at the desk on the screen, with the page on the network off.
use kiosk::clock::BenchClock;
use kiosk::coach_desk::CoachDesk;
use kiosk::input::Input;
use kiosk::run::answer;
use kiosk::{Folder, Kiosk};
use std::path::Path;
use std::sync::mpsc::{Receiver, channel};
use std::time::Duration;
use view::list::ListRow;
use view::{Frame, Meant, Screen, Tap};

const HEAD: &str = "date,lifter,lift,sets,reps,load,note\n";
/// Waits of 100 ms at most until something is on the screen.
const WAITS: usize = 200;

/// A kiosk with its desk, and places for a stick and for copies.
struct Gym {
    data: tempfile::TempDir,
    kiosk: Kiosk,
    desk: CoachDesk,
    inbox: Receiver<Input>,
}

impl Gym {
    /// Opened, and the digits of the desk typed.
    fn open() -> Self {
        let data = tempfile::tempdir().expect("a folder");
        for place in ["stick", "copies"] {
            std::fs::create_dir(data.path().join(place)).expect("a place");
        }
        let at = data.path().display();
        let config = format!("stick = \"{at}/stick\"\nbackup = \"{at}/copies\"\n");
        let folder = Folder::open(Some(data.path())).expect("a folder");
        let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
        let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
        drop(Kiosk::open(&folder, Box::new(clock.clone())).expect("the demo gym is laid"));
        std::fs::write(data.path().join("kiosk.toml"), config).expect("written");
        let kiosk = Kiosk::open(&folder, Box::new(clock)).expect("it opens");
        assert_eq!(kiosk.lan(), None, "the page is off");
        let (inputs, inbox) = channel();
        let page = share::Desk::new(data.path(), || 0);
        let desk = CoachDesk::open(&kiosk, &folder, page, inputs);
        let mut gym = Self {
            data,
            kiosk,
            desk,
            inbox,
        };
        gym.tap(Tap::Panel);
        gym.row("coach's desk");
        // The first digits are typed twice.
        for digit in [1, 2, 3, 4].repeat(2) {
            gym.tap(Tap::Number(digit));
        }
        gym
    }

    fn take(&mut self, input: Input) -> Frame {
        answer(&mut self.kiosk, &mut self.desk, Ok(input)).expect("it goes on")
    }

    fn tap(&mut self, tap: Tap) -> Frame {
        let number = self.kiosk.frame().number;
        self.take(Input::Tap(Meant { tap, number, id: 1 }))
    }

    fn rows(&mut self) -> Vec<ListRow> {
        let Screen::List(list) = self.kiosk.frame().screen else {
            panic!("no list is shown");
        };
        list.rows
    }

    /// Taps the row with this title or value.
    fn row(&mut self, name: &str) -> Frame {
        let rows = self.rows();
        let at = rows.iter().position(|r| r.title == name || r.value == name);
        let at = at.unwrap_or_else(|| panic!("no {name:?} among {rows:?}"));
        self.tap(Tap::Row(at))
    }

    /// Hears what others tell until the screen says so.
    fn until(&mut self, says: &str) -> Frame {
        for _ in 0..WAITS {
            let frame = self.kiosk.frame();
            if format!("{frame:?}").contains(says) {
                return frame;
            }
            if let Ok(input) = self.inbox.recv_timeout(Duration::from_millis(100)) {
                self.take(input);
            }
        }
        panic!("the screen never says {says:?}: {:?}", self.kiosk.frame());
    }

    fn stick(&self) -> std::path::PathBuf {
        self.data.path().join("stick")
    }
}

fn planned(kiosk: &Kiosk, day: &str) -> usize {
    let date = day.parse().expect("a day");
    let rows = kiosk.state().plan.get(&(date, "Hamza".to_owned()));
    rows.map_or(0, Vec::len)
}

fn plan(load: &str) -> String {
    format!("{HEAD}2027-03-01,Hamza,rack pull,1,5,{load},from the stick\n")
}

#[test]
fn a_stick_is_shown_refused_whole_and_taken() {
    let mut gym = Gym::open();
    gym.row("plans");
    gym.until("none is in");
    gym.row("stick");
    let march = gym.stick().join("march.csv");
    let april = gym.stick().join("april.csv");
    std::fs::write(&march, plan("180 stone")).expect("written");
    std::fs::write(&april, plan("175 kg").replace("-03-", "-04-")).expect("written");
    gym.until("faults: 1");
    let rows = gym.rows();
    assert!(
        !rows.iter().any(|row| row.value == "take all of it"),
        "refused whole: {rows:?}"
    );
    gym.row("march.csv");
    let fault = gym.rows().remove(0);
    assert!(
        fault.title.contains("row 2") && fault.title.contains("column load"),
        "{fault:?}"
    );
    gym.tap(Tap::Undo);
    // Mended: what changes is told, and a tap takes it.
    std::fs::write(&march, plan("180 kg")).expect("written");
    gym.until("take all of it");
    let change = gym.rows().into_iter().find(|row| row.title == "Hamza");
    let change = change.expect("what changes for him");
    assert_eq!(change.value, "2 new");
    assert_eq!(change.detail, "1 Mar to Thu 1 Apr 2027");
    assert_eq!(planned(&gym.kiosk, "2027-03-01"), 0);
    gym.row("take all of it");
    gym.until("took 2 rows");
    assert_eq!(planned(&gym.kiosk, "2027-03-01"), 1);
    assert_eq!(planned(&gym.kiosk, "2027-04-01"), 1);
    gym.until("2 as before");
}

#[test]
fn a_stick_that_was_exchanged_meanwhile_is_not_taken() {
    let mut gym = Gym::open();
    gym.row("plans");
    gym.row("stick");
    let march = gym.stick().join("march.csv");
    std::fs::write(&march, plan("180 kg")).expect("written");
    gym.until("take all of it");
    let rows = gym.rows();
    let stale = rows
        .iter()
        .position(|row| row.value == "write to the stick");
    std::fs::remove_file(&march).expect("pulled");
    std::fs::write(gym.stick().join("other.csv"), plan("170 kg")).expect("another");
    gym.tap(Tap::Row(stale.expect("a row")));
    gym.until("another stick");
    assert!(!holds_record(&gym.stick()), "nothing was written to it");
}

#[test]
fn the_record_is_written_back_and_a_copy_made_and_put_back() {
    let mut gym = Gym::open();
    gym.row("plans");
    gym.row("stick");
    std::fs::write(gym.stick().join("march.csv"), plan("180 kg")).expect("written");
    gym.until("write to the stick");
    let frame = gym.row("write to the stick");
    assert_eq!(frame.notice, "it is being written to; leave it in");
    gym.until("the record is on the stick");
    assert!(holds_record(&gym.stick()));
    // A copy of the journal without the plan, then the plan, then back.
    gym.tap(Tap::Undo);
    gym.tap(Tap::Undo);
    gym.row("kiosk");
    gym.row("copies");
    gym.row("copy now");
    gym.until("copied and proven: ");
    gym.tap(Tap::Undo);
    gym.tap(Tap::Undo);
    gym.row("plans");
    gym.row("stick");
    gym.row("take all of it");
    gym.until("took 1 row");
    assert_eq!(planned(&gym.kiosk, "2027-03-01"), 1);
    gym.tap(Tap::Undo);
    gym.tap(Tap::Undo);
    gym.row("kiosk");
    gym.row("copies");
    let frame = gym.row("put back");
    assert_eq!(frame.notice, "the copy is being proven; go on lifting");
    gym.until("restored");
    assert_eq!(planned(&gym.kiosk, "2027-03-01"), 0);
}

#[test]
fn without_places_the_desk_names_the_keys() {
    let mut gym = Gym::open();
    std::fs::write(gym.data.path().join("kiosk.toml"), "").expect("written");
    let folder = Folder::open(Some(gym.data.path())).expect("a folder");
    let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
    drop(gym.kiosk);
    gym.kiosk = Kiosk::open(&folder, Box::new(clock)).expect("it opens");
    let (inputs, inbox) = channel();
    gym.desk = CoachDesk::open(
        &gym.kiosk,
        &folder,
        share::Desk::new(gym.data.path(), || 0),
        inputs,
    );
    gym.inbox = inbox;
    gym.tap(Tap::Panel);
    gym.row("coach's desk");
    for digit in [1, 2, 3, 4] {
        gym.tap(Tap::Number(digit));
    }
    gym.row("kiosk");
    gym.row("copies");
    gym.until("backup = ");
    gym.tap(Tap::Undo);
    gym.tap(Tap::Undo);
    gym.row("plans");
    gym.row("stick");
    gym.until("stick = ");
}

fn holds_record(place: &Path) -> bool {
    let entries = std::fs::read_dir(place).expect("it is read");
    let names = entries.map(|entry| entry.expect("a name").file_name());
    names
        .filter_map(|name| name.into_string().ok())
        .any(|name| name.starts_with("pinladder-record-"))
}
