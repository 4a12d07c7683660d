//! A whole kiosk without a display, on a clock that obeys: an evening rehearsed from outside.
//!
//! A tap goes the way of every finger: the real screens, the guard against bounces and palms, the
//! kiosk, the journal, the next frame. Refuses: threads, the network, devices, pixels; and doors
//! of its own past the screens.
mod answer;
mod find;
mod line;
mod read;
mod waiting;

pub use answer::{Answer, Believed, BothSides, ButtonSeen};
pub use line::{GAP_MAX_MS, Line, TIMES_MAX, WAIT_MAX_S, moment};

pub(crate) use line::now;

use crate::clock::{BenchClock, Clock as _};
use crate::coach_desk::CoachDesk;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::input::Input;
use crate::kiosk::Kiosk;
use crate::replan::Patience;
use crate::run;
use chrono::NaiveDateTime;
use domain::{Gym, State};
use find::find;
use read::read;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::Duration;
use ui::{Headless, Pressable};
use view::{Deed, Frame, buttons};
use waiting::Waiting;

/// Between two looks at the clock, as the kiosk itself does it.
const TICK_MS: u64 = 500;
/// A finger that taps is down so long, or half of what is left until the next tap.
const DOWN_MS: u64 = 30;
/// A finger that holds is down so long.
const HELD_MS: u64 = 1_000;
/// Between two looks whether a button takes taps.
const LOOK_MS: u64 = 10;
/// So many looks at most: five seconds.
const LOOKS_MAX: u32 = 500;

/// A kiosk on a data folder with its window, in the memory of one thread.
#[derive(Debug)]
pub struct Rehearsal {
    folder: Folder,
    clock: BenchClock,
    kiosk: Kiosk,
    stage: Headless,
    frame: Frame,
    /// The coach's desk, once something lies on it or is ordered there.
    desk: Option<(CoachDesk, Receiver<Input>)>,
    /// Where a stick is plugged in.
    stick: Option<PathBuf>,
    /// Milliseconds from one look at the clock to the next, and to the next one of all.
    tick_ms: u64,
    to_tick_ms: u64,
    reads_texts: bool,
    /// Whether the frame is of this very moment.
    is_fresh: bool,
    /// Taps that wait for whoever owns the state.
    waiting: Waiting,
}

impl Rehearsal {
    /// Opens the kiosk on `folder` at `at`, the time at the gym; a folder without a gym gets the
    /// demo gym. The clock of one thread's rehearsals is one that only goes on.
    ///
    /// # Errors
    /// [`KioskError`] when folder, journal or this thread cannot be used.
    pub fn open(folder: &Folder, at: NaiveDateTime) -> Result<Self, KioskError> {
        let clock = BenchClock::at(at);
        let mut kiosk = start(folder, &clock)?;
        let (stage, frame) = face_of(&mut kiosk)?;
        let mut rehearsal = Self {
            folder: folder.clone(),
            clock,
            kiosk,
            stage,
            frame,
            desk: None,
            stick: None,
            tick_ms: TICK_MS,
            to_tick_ms: TICK_MS,
            reads_texts: true,
            is_fresh: true,
            waiting: Waiting::default(),
        };
        rehearsal.open_desk();
        Ok(rehearsal)
    }

    /// From now on looks at the clock so often, milliseconds, at least 1: less often is quicker
    /// where nobody watches a clock tick.
    pub fn tick_every(&mut self, ms: u64) {
        self.tick_ms = ms.max(1);
        self.to_tick_ms = self.to_tick_ms.min(self.tick_ms);
    }

    /// Whether answers list the texts that are drawn; they do until they are told not to.
    pub fn read_texts(&mut self, reads: bool) {
        self.reads_texts = reads;
    }

    /// From now on each tap is answered so many milliseconds late, as on a slow disk; the screen
    /// goes on meanwhile, and nothing else is looked at.
    pub fn be_slow(&mut self, ms: u64) {
        self.waiting.be_slow(ms);
    }

    /// Time passes, and the face stays that of the last look at the clock.
    pub fn pass_unseen(&mut self, ms: u64) {
        self.pass(ms);
    }

    /// Does what a line says, or says why not, and tells the face that follows.
    ///
    /// # Errors
    /// [`KioskError`] when the kiosk cannot be started anew; nothing goes on from there.
    pub fn line(&mut self, line: &Line) -> Result<Answer, KioskError> {
        let done = match line {
            Line::Tap {
                label,
                times,
                gap_ms,
            } => self.tap(label, *times, *gap_ms),
            Line::Hold(label) => self.hold(label),
            Line::Wait(ms) => {
                self.pass(*ms);
                Ok(())
            }
            Line::Clock(at) => {
                self.clock.set_wall(*at);
                self.is_fresh = false;
                Ok(())
            }
            Line::Restart => {
                self.restart()?;
                Ok(())
            }
            Line::Plug(place) => self.plug(place),
        };
        while !self.waiting.is_empty() {
            self.pass(self.waiting.until_next());
        }
        // The face of now, not of the last look at the clock.
        if !self.is_fresh {
            self.tick();
        }
        Ok(Answer {
            refused: done.err(),
            ..self.face()
        })
    }

    /// The face as it is.
    #[must_use]
    pub fn face(&self) -> Answer {
        let known = buttons(&self.frame);
        let seen = |one: Pressable| {
            let same = known.iter().find(|button| button.label == one.label);
            ButtonSeen {
                does: same.map_or(Deed::Other, |button| button.does).word(),
                label: one.label,
                enabled: !self.frame.asleep,
            }
        };
        let texts = self.reads_texts.then(|| self.stage.texts());
        Answer {
            at: self.clock.local().format("%Y-%m-%dT%H:%M:%S").to_string(),
            buttons: self.stage.pressables().into_iter().map(seen).collect(),
            texts: texts.unwrap_or_default(),
            ..read(&self.kiosk, &self.frame)
        }
    }

    /// The kiosk, to look at what stands.
    #[must_use]
    pub fn kiosk(&self) -> &Kiosk {
        &self.kiosk
    }

    /// What is drawn, as a typed value.
    #[must_use]
    pub fn frame(&self) -> &Frame {
        &self.frame
    }

    /// The data folder.
    #[must_use]
    pub fn folder(&self) -> &Folder {
        &self.folder
    }

    /// The face with which a kiosk on another folder would start now.
    ///
    /// # Errors
    /// [`KioskError`] when it cannot be started.
    pub fn face_on(&self, folder: &Folder) -> Result<Frame, KioskError> {
        Ok(start(folder, &self.clock)?.frame())
    }

    /// Time passes; the kiosk looks at its clock as often as it does.
    fn pass(&mut self, ms: u64) {
        let mut left = ms;
        while left > 0 {
            let step = left.min(self.to_tick_ms).min(self.waiting.until_next());
            self.clock.advance_ms(i64::try_from(step).unwrap_or(0));
            self.stage.advance(Duration::from_millis(step));
            self.is_fresh = false;
            self.hear();
            left -= step;
            self.answer_waiting(step);
            self.to_tick_ms -= step;
            if self.to_tick_ms == 0 {
                self.tick();
            }
        }
    }

    fn tick(&mut self) {
        self.to_tick_ms = self.tick_ms;
        // Whoever owns the state writes, and looks at nothing else.
        if self.waiting.is_empty() {
            self.take(Err(RecvTimeoutError::Timeout));
        }
    }

    /// Hands on what the finger said.
    fn hear(&mut self) {
        for tap in self.stage.taps() {
            self.waiting.push(tap);
        }
        self.answer_waiting(0);
    }

    /// Taps that have waited long enough are answered, one after the other.
    fn answer_waiting(&mut self, passed_ms: u64) {
        self.waiting.pass(passed_ms);
        while let Some(tap) = self.waiting.next() {
            self.take(Ok(Input::Tap(tap)));
        }
    }

    /// As the run loop: an input or a tick, then the frame that follows.
    fn take(&mut self, input: Result<Input, RecvTimeoutError>) {
        let frame = match (&mut self.desk, input) {
            (Some((desk, inbox)), input) => {
                let mut frame = run::answer(&mut self.kiosk, desk, input);
                while let Ok(input) = inbox.try_recv() {
                    frame = run::answer(&mut self.kiosk, desk, Ok(input));
                }
                frame
            }
            (None, Ok(Input::Tap(meant))) => Some(self.kiosk.take(&meant)),
            (None, _) => Some(self.kiosk.tick()),
        };
        if let Some(frame) = frame {
            self.stage.face().show_frame(&frame);
            self.frame = frame;
            self.is_fresh = true;
        }
    }

    /// A finger taps so often at the place where the button is drawn, whatever is drawn there
    /// meanwhile.
    fn tap(&mut self, label: &str, times: u32, gap_ms: u64) -> Result<(), String> {
        let at = self.when_it_takes_taps(label)?.middle;
        let down_ms = DOWN_MS.min(gap_ms / 2);
        for nth in 1..=times {
            self.stage.press(at);
            self.hear();
            self.pass(down_ms);
            self.stage.release(at);
            self.hear();
            if nth < times {
                self.pass(gap_ms - down_ms);
            }
        }
        Ok(())
    }

    fn hold(&mut self, label: &str) -> Result<(), String> {
        let at = self.when_it_takes_taps(label)?.middle;
        self.stage.press(at);
        self.hear();
        self.pass(HELD_MS);
        self.stage.release(at);
        self.hear();
        Ok(())
    }

    /// The button of this label, once it takes taps.
    fn when_it_takes_taps(&mut self, label: &str) -> Result<Pressable, String> {
        let mut found = find(self.stage.pressables(), label)?;
        if self.frame.asleep {
            // A touch wakes it, wherever it lands.
            return Ok(found);
        }
        for _ in 0..LOOKS_MAX {
            match found.takes_taps() {
                // It may have moved meanwhile.
                Some(true) => return find(self.stage.pressables(), label),
                Some(false) => self.pass(LOOK_MS),
                None => found = find(self.stage.pressables(), label)?,
            }
        }
        Err(format!("\"{label}\" takes no taps"))
    }

    /// The kiosk ends and is started anew; the machine goes on meanwhile.
    fn restart(&mut self) -> Result<(), KioskError> {
        let nothing = Kiosk::in_memory(State::default(), Gym::default(), self.own_clock());
        // The journal is closed before it is opened again, as by a process that ends.
        drop(std::mem::replace(&mut self.kiosk, nothing));
        self.desk = None;
        self.waiting.clear();
        self.kiosk = start(&self.folder, &self.clock)?;
        (self.stage, self.frame) = face_of(&mut self.kiosk)?;
        self.is_fresh = true;
        self.to_tick_ms = self.tick_ms;
        self.open_desk();
        Ok(())
    }

    fn own_clock(&self) -> Box<BenchClock> {
        Box::new(self.clock.clone())
    }

    /// Opens the coach's desk where the gym has places for sticks or copies, or a stick is in.
    fn open_desk(&mut self) {
        let config = self.kiosk.config();
        if self.stick.is_none() && config.stick.is_none() && config.backup.is_none() {
            return;
        }
        let (inputs, inbox) = channel();
        let page = share::Desk::new(self.folder.path(), || 0);
        let desk = CoachDesk::open_here(&self.kiosk, &self.folder, page, inputs);
        self.desk = Some((desk, inbox));
        if let (Some(place), Some((desk, _))) = (&self.stick, &mut self.desk) {
            desk.plug(&self.kiosk, place.clone());
        }
        self.take(Err(RecvTimeoutError::Timeout));
    }

    /// A stick is plugged in.
    fn plug(&mut self, place: &Path) -> Result<(), String> {
        if !place.is_dir() {
            return Err(format!(
                "{} is no folder; name one that lies there as a stick would",
                place.display()
            ));
        }
        self.stick = Some(place.to_owned());
        self.desk = None;
        self.open_desk();
        Ok(())
    }
}

/// The kiosk as it starts; how long its plans may take does not hang on this machine.
fn start(folder: &Folder, clock: &BenchClock) -> Result<Kiosk, KioskError> {
    Kiosk::open_patient(folder, Box::new(clock.clone()), Patience::Untimed)
}

/// A window that shows the kiosk's face.
fn face_of(kiosk: &mut Kiosk) -> Result<(Headless, Frame), KioskError> {
    let failed = |error: ui::slint::PlatformError| KioskError::Picture(error.to_string());
    let stage = Headless::open().map_err(failed)?;
    let frame = kiosk.frame();
    stage.face().show_frame(&frame);
    Ok((stage, frame))
}
