//! What goes wrong in a gym, and what must hold after it.
use crate::gym::{Gym, room};
use disk::{Disk, Fault};
use domain::{Event, State};
use journal::verify_with;
use std::fs;
use view::{Frame, Screen};

/// Deeds until a cut that was to come comes, at most.
const UNTIL_CUT: usize = 60;

/// All events, proven.
fn events(gym: &Gym) -> Vec<Event> {
    let mut events = Vec::new();
    let path = gym.data.path().join(journal::JOURNAL_FILE);
    verify_with(&path, |seq, event| {
        assert_eq!(seq, events.len() as u64 + 1, "each once, in order");
        events.push(event.clone());
    })
    .expect("sound");
    events
}

/// What the kiosk had acknowledged.
pub(crate) struct Acknowledged {
    seq: u64,
    state: State,
    frame: Frame,
}

/// As it is drawn, apart from what counts frames.
fn plain(frame: &Frame) -> Frame {
    Frame {
        number: 0,
        answers: 0,
        asleep: false,
        shift: (0, 0),
        notice: String::new(),
        ..frame.clone()
    }
}

/// Whether something is looked at beside the ladder, which after a restart is what is under it; or
/// the end of a lift, whose link is another one then.
fn is_aside(frame: &Frame) -> bool {
    matches!(
        frame.screen,
        Screen::History(_)
            | Screen::Why(_)
            | Screen::End(_)
            | Screen::Meet(_)
            | Screen::List(_)
            | Screen::Page(_)
            | Screen::Typing(_)
    )
}

impl Gym {
    pub(crate) fn acknowledged(&mut self) -> Acknowledged {
        Acknowledged {
            seq: self.kiosk.seq(),
            state: self.kiosk.state().clone(),
            frame: self.kiosk.frame(),
        }
    }

    /// One fault of some kind.
    pub(crate) fn fault(&mut self, disk: &Disk) {
        match self.random.below(7) {
            0 => self.kill(disk),
            1 | 2 => self.cut(disk),
            3 => self.closed(disk),
            4 => self.sync_fails(disk),
            5 => self.clock_jumps(),
            _ => self.kill_in_a_deed(disk),
        }
    }

    /// The process is killed while nobody does anything: the same face comes up.
    fn kill(&mut self, disk: &Disk) {
        self.count("kills");
        let before = self.acknowledged();
        self.start_on_what_is_written(disk);
        let after = self.kiosk.frame();
        if !is_aside(&before.frame) {
            let (was, is) = (plain(&before.frame), plain(&after));
            assert!(was == is, "another face: {was:?}\n{is:?}");
        }
        self.holds(&before);
    }

    /// The process is killed, and somebody taps on at once.
    fn kill_in_a_deed(&mut self, disk: &Disk) {
        self.deed();
        self.kill(disk);
        self.deed();
    }

    /// All that was written is in the system's hands and stays, synced or not.
    fn start_on_what_is_written(&mut self, disk: &Disk) {
        let left = room();
        for entry in fs::read_dir(self.data.path()).expect("a folder").flatten() {
            let name = entry.file_name();
            let is_file = entry.file_type().expect("a type").is_file();
            if is_file && !name.to_string_lossy().ends_with("-shm") {
                fs::copy(entry.path(), left.path().join(name)).expect("copies");
            }
        }
        disk.begin(&[]);
        self.start(left);
    }

    /// The power goes at one of the next writes, whatever is being done, and comes back.
    fn cut(&mut self, disk: &Disk) {
        self.count("power cuts");
        let at = 1 + self.random.below(60);
        let mut faults = vec![(at, Fault::Cut)];
        if self.one_of(4) {
            faults.push((1 + self.random.below(at), Fault::Sync));
        }
        disk.begin(&faults);
        self.broken = true;
        let mut before = self.acknowledged();
        for _ in 0..UNTIL_CUT {
            self.deed();
            before = self.acknowledged();
            if disk.met() == faults.len() as u64 {
                break;
            }
        }
        let left = room();
        disk.after_cut(self.data.path(), left.path(), &mut self.random)
            .expect("is laid out");
        disk.begin(&[]);
        self.broken = false;
        let off_s = 5 + self.random.below(7_200);
        self.clock
            .reboot_after_ms(i64::try_from(off_s * 1_000).expect("short"));
        let battery = self.random.below(4) > 0;
        let wall = kiosk::Clock::local(&self.clock);
        if !battery {
            self.count("boots without the time");
            self.clock
                .set_wall(chrono::DateTime::UNIX_EPOCH.naive_utc());
        }
        self.start(left);
        self.holds(&before);
        if !battery {
            self.deed();
            self.clock.set_wall(wall + chrono::TimeDelta::minutes(4));
            self.deed();
        }
    }

    /// The disk is full or read-only for a while, and people go on as they do.
    fn closed(&mut self, disk: &Disk) {
        self.count("full or closed disks");
        let long = self.random.below(60);
        let fault = match self.random.below(2) {
            0 => Fault::Full(long),
            _ => Fault::ReadOnly(long),
        };
        disk.begin(&[(1 + self.random.below(6), fault)]);
        self.broken = true;
        self.evening(6);
        self.broken = false;
        disk.begin(&[]);
        self.evening(2);
        let before = self.acknowledged();
        self.holds(&before);
    }

    /// A sync fails, and later the process is killed.
    fn sync_fails(&mut self, disk: &Disk) {
        self.count("failing syncs");
        disk.begin(&[(1 + self.random.below(12), Fault::Sync)]);
        self.broken = true;
        self.evening(4);
        self.broken = false;
        self.kill(disk);
    }

    /// The wall clock is set, or the zone changes over night.
    fn clock_jumps(&mut self) {
        self.count("clock jumps");
        let before = self.acknowledged();
        let wall = kiosk::Clock::local(&self.clock);
        match self.random.below(3) {
            0 => self.clock.set_zone(60),
            1 => self.clock.set_zone(0),
            _ => {
                let minutes = i64::try_from(self.random.below(180)).expect("few") - 90;
                self.clock
                    .set_wall(wall + chrono::TimeDelta::minutes(minutes));
            }
        }
        self.kiosk.tick();
        self.holds(&before);
    }

    /// What was acknowledged is there, once and in order; the state is a replay of all that is; the
    /// record says the same; and it goes on.
    pub(crate) fn holds(&mut self, before: &Acknowledged) {
        let all = events(self);
        let last = all.len() as u64;
        assert!(
            before.seq <= last,
            "{} was said, {last} is there",
            before.seq
        );
        let said = usize::try_from(before.seq).expect("few");
        let then = State::replay(&all[..said]);
        assert!(
            then == before.state,
            "what was acknowledged is not what is there"
        );
        let now = State::replay(&all);
        assert!(now == *self.kiosk.state(), "the state is no replay");
        assert!(self.record_is_sound(), "the record is another one");
        self.count("looks");
    }
}
