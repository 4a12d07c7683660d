//! The devices beside the screen, run by threads of their own.
//!
//! A press comes in as the owner's own kind of input; what is to be shown or played is left for
//! the devices to take. Refuses: making the owner wait. With no file, a faulty one or broken
//! devices the kiosk goes on without them.
use crate::clock::stopwatch;
use crate::folder::Folder;
use crate::input::Input;
use crate::kiosk::Pressed;
use crate::watch::spawn_again;
use domain::Moment;
use hardware::{
    BuzzerAt, Config, DeviceFault, Faults, Glow, Opened, Orders, Outputs, Panel, Switches, Trouble,
    Tune, Wanted,
};
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, AtomicUsize, Ordering};
use std::sync::mpsc::Sender;
use std::time::Duration;
use view::Signs;
use view::beside::Beside;
use view::signs::Standing;

/// The file in the data folder.
pub const FILE: &str = "hardware.toml";
/// Between two steps while a tune plays.
const BEAT: Duration = Duration::from_millis(10);
/// Between two steps when nothing changes, so that a device that failed is tried again.
const IDLE: Duration = Duration::from_secs(1);
/// Presses that the owner has not taken yet, at most; more are let go.
const WAITING_MAX: usize = 4;

/// The owner's end of them.
#[derive(Debug, Default)]
pub struct Devices {
    orders: Orders,
    faults: Faults,
    panel: Option<Panel>,
    drawn: bool,
    dim_after_ms: Option<i64>,
    buzzer: Option<BuzzerAt>,
    touched: Option<Moment>,
    shown: Signs,
    waiting: Arc<AtomicUsize>,
    seen: Arc<AtomicU64>,
}

impl Devices {
    /// Opens what the folder's file names and starts its threads; presses go to `inputs`.
    #[must_use]
    pub fn start(folder: &Folder, inputs: &Sender<Input>) -> Self {
        let devices = Self::default();
        match folder.text(FILE) {
            Ok(None) => devices,
            Ok(Some(text)) => match Config::read(&text) {
                Ok(config) => devices.open(&config, inputs.clone()),
                Err(fault) => devices.without(&fault.to_string()),
            },
            Err(error) => devices.without(&error.to_string()),
        }
    }

    fn without(self, why: &str) -> Self {
        self.faults.report(FILE, Trouble::File(why.to_owned()));
        self
    }

    fn open(mut self, config: &Config, inputs: Sender<Input>) -> Self {
        let Opened {
            switches,
            outputs,
            panel,
        } = hardware::open(config, &self.faults);
        let dims = config.backlight.as_ref().map(|at| at.dim_after_s);
        self.dim_after_ms = dims.map(|seconds| i64::from(seconds) * 1_000);
        self.buzzer.clone_from(&config.buzzer);
        self.panel = panel;
        self.drawn = config.panel;
        if !switches.is_empty() {
            let waiting = Arc::clone(&self.waiting);
            let seen = self.seen();
            self.thread("switches", || listen(switches, inputs, waiting, seen));
        }
        if !outputs.is_empty() {
            let orders = self.orders.clone();
            self.thread("signs", || obey(outputs, orders));
        }
        self
    }

    fn thread<W: FnMut() + Send + 'static>(&self, name: &'static str, work: impl FnOnce() -> W) {
        if let Err(error) = spawn_again(name, work()) {
            self.faults
                .report(name, Trouble::NoThread(error.to_string()));
        }
    }

    /// What is wrong with which device now, for the coach's desk.
    #[must_use]
    pub fn faults(&self) -> Vec<DeviceFault> {
        self.faults.list()
    }

    /// The devices in memory, when they are simulated.
    #[must_use]
    pub fn panel(&self) -> Option<&Panel> {
        self.panel.as_ref()
    }

    /// The devices in memory as drawn beside the screen, when that is asked for.
    #[must_use]
    pub fn beside(&self) -> Option<Beside> {
        let panel = self.panel.as_ref().filter(|_| self.drawn)?;
        Some(beside(panel))
    }

    /// Where the number of the face that is drawn is left, for presses to carry.
    #[must_use]
    pub fn seen(&self) -> Arc<AtomicU64> {
        Arc::clone(&self.seen)
    }

    /// The owner has taken a press.
    pub fn taken(&self) {
        self.waiting.fetch_sub(1, Ordering::SeqCst);
    }

    /// Somebody has touched or pressed.
    pub fn touched(&mut self, now: Moment) {
        self.touched = Some(now);
    }

    /// Shows the signs of now, at this minute of the day where it is known; `by_hand` when a touch or
    /// press made them, since nobody needs to be called for what they did themselves; dimmed too
    /// while the screen is `asleep`.
    pub fn follow(
        &mut self,
        signs: &Signs,
        (now, minute): (Moment, Option<u16>),
        (by_hand, asleep): (bool, bool),
    ) {
        let buzzer = self.buzzer.as_ref();
        let quiet = buzzer.zip(minute);
        let quiet = quiet.is_some_and(|(buzzer, minute)| buzzer.is_quiet_at(minute));
        if let Some(tune) = tune(&self.shown, signs, by_hand).filter(|_| !quiet) {
            self.orders.play(tune);
        }
        self.shown.clone_from(signs);
        let touched = *self.touched.get_or_insert(now);
        let idle = |after: i64| now.0 - touched.0 >= after;
        let dim = asleep || self.dim_after_ms.is_some_and(idle);
        self.orders.show(wanted(signs, dim));
    }
}

/// What the devices are to show of the signs.
pub(crate) fn wanted(signs: &Signs, dim: bool) -> Wanted {
    Wanted {
        lamp: glow(signs),
        hole: signs.hole.clone(),
        dim,
    }
}

/// What the lamp says: somebody is up before all else.
fn glow(signs: &Signs) -> Glow {
    if signs.somebody_is_up() {
        Glow::Lit
    } else if signs.holds(Standing::NearlyRested) {
        Glow::Nearly
    } else if signs.holds(Standing::Missed) {
        Glow::Missed
    } else {
        Glow::Out
    }
}

/// The devices in memory as they are drawn.
#[must_use]
pub fn beside(panel: &Panel) -> Beside {
    let state = panel.state();
    Beside {
        switches: state.switches,
        lamp: state.lamp,
        sounds: state.sounds,
        lights: state.lights,
        backlight: state.backlight,
    }
}

/// What the buzzer plays between two states: somebody who waited, or did not come before, is up, or,
/// when no hand did it, somebody who rested is; whoever was called has not come; while nobody is up,
/// a rest is nearly over.
fn tune(before: &Signs, after: &Signs, by_hand: bool) -> Option<Tune> {
    let becomes = |is: Standing, was: &[Standing]| {
        let now = after.lifts.iter().filter(|(_, now)| **now == is);
        let mut then = now.filter_map(|(no, _)| before.lifts.get(no));
        then.any(|then| was.contains(then))
    };
    let rests = [Standing::Resting, Standing::NearlyRested];
    if becomes(Standing::Up, &[Standing::Waiting, Standing::Missed]) {
        Some(Tune::YourTurn)
    } else if by_hand {
        None
    } else if becomes(Standing::Up, &rests) {
        Some(Tune::RestOver)
    } else if becomes(Standing::Missed, &[Standing::Up, Standing::Waiting]) {
        Some(Tune::Missed)
    } else if becomes(Standing::NearlyRested, &[Standing::Resting]) && !after.somebody_is_up() {
        Some(Tune::NearlyOver)
    } else {
        None
    }
}

/// The switches' thread.
fn listen(
    mut switches: Switches,
    inputs: Sender<Input>,
    waiting: Arc<AtomicUsize>,
    seen: Arc<AtomicU64>,
) -> impl FnMut() + Send {
    let mut clock = stopwatch();
    move || {
        let mut now_ms = clock() / 1_000_000;
        loop {
            std::thread::sleep(Duration::from_millis(switches.again_in_ms(now_ms)));
            now_ms = clock() / 1_000_000;
            for press in switches.step(now_ms) {
                if waiting.load(Ordering::SeqCst) >= WAITING_MAX {
                    tracing::warn!(?press, "a press is let go: the ones before wait still");
                    continue;
                }
                waiting.fetch_add(1, Ordering::SeqCst);
                let number = seen.load(Ordering::SeqCst);
                if inputs
                    .send(Input::Pressed(Pressed { press, number }))
                    .is_err()
                {
                    return;
                }
            }
        }
    }
}

/// The thread of all that shows or sounds.
fn obey(mut outputs: Outputs, orders: Orders) -> impl FnMut() + Send {
    let mut clock = stopwatch();
    let mut plays = false;
    move || {
        loop {
            let (wanted, tunes) = orders.next(if plays { BEAT } else { IDLE });
            let now_ms = clock() / 1_000_000;
            for tune in tunes {
                outputs.play(now_ms, tune);
            }
            plays = outputs.step(now_ms, &wanted);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::tune;
    use domain::LiftNo;
    use hardware::Tune;
    use view::Signs;
    use view::signs::Standing::{Missed, NearlyRested, Resting, Stopped, Up, Waiting};

    fn signs(standings: &[view::signs::Standing]) -> Signs {
        let lifts = (1..).map(LiftNo).zip(standings.iter().copied());
        Signs {
            lifts: lifts.collect(),
            hole: None,
        }
    }

    #[test]
    fn the_buzzer_calls_whoever_did_not_press() {
        let cases = [
            (signs(&[]), signs(&[Up]), true, None),
            (signs(&[Resting]), signs(&[Up]), false, Some(Tune::RestOver)),
            (signs(&[Resting]), signs(&[Up]), true, None),
            (signs(&[Resting]), signs(&[Waiting]), false, None),
            (
                signs(&[Up, Waiting]),
                signs(&[Resting, Up]),
                true,
                Some(Tune::YourTurn),
            ),
            (
                signs(&[Up, Resting]),
                signs(&[Resting, Up]),
                false,
                Some(Tune::RestOver),
            ),
            (signs(&[Up]), signs(&[Up]), false, None),
            (
                signs(&[NearlyRested]),
                signs(&[Up]),
                false,
                Some(Tune::RestOver),
            ),
            (
                signs(&[Resting]),
                signs(&[NearlyRested]),
                false,
                Some(Tune::NearlyOver),
            ),
            (
                signs(&[Resting, Up]),
                signs(&[NearlyRested, Up]),
                false,
                None,
            ),
            (
                signs(&[Up, Resting]),
                signs(&[Missed, Resting]),
                false,
                Some(Tune::Missed),
            ),
            (
                signs(&[Up, Missed]),
                signs(&[Resting, Up]),
                true,
                Some(Tune::YourTurn),
            ),
            (
                signs(&[Up, Waiting]),
                signs(&[Missed, Up]),
                false,
                Some(Tune::YourTurn),
            ),
            (signs(&[Stopped]), signs(&[Up]), true, None),
        ];
        for (before, after, by_hand, wanted) in cases {
            assert_eq!(
                tune(&before, &after, by_hand),
                wanted,
                "{before:?} {after:?}"
            );
        }
    }
}
