//! The kiosk as it runs: the window's thread, the owner's thread, the LAN's thread.
//!
//! The owner waits for one closed kind of input and hands frames to the window. Refuses: a
//! window that waits for the disk.
use crate::ahead::Planner;
use crate::clock::{SystemClock, milliseconds};
use crate::coach_desk::CoachDesk;
use crate::desk::device_words;
use crate::devices::Devices;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::gym_hub::{self, GymHub};
use crate::input::Input;
use crate::kiosk::Kiosk;
use crate::lan::{self, Lan};
use crate::looker::Looker;
use crate::nightly::{self, Nightly};
use crate::outside;
use crate::shared;
use crate::signals;
use crate::terminal::say;
use crate::trouble;
use crate::watch::{self, spawn_once, stand_back};
use crate::watchdog::{self, Beat};
use share::Desk;
use std::io::Write;
use std::sync::atomic::Ordering;
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::time::Duration;
use view::Frame;

/// Between two looks at the clock and at the journal.
const TICK: Duration = Duration::from_millis(500);
/// The same while simulated devices are drawn, so that a tune is seen.
const TICK_DRAWN: Duration = Duration::from_millis(50);

/// Ticks between two looks for a display that was not there.
const LOOK_TICKS: u32 = 4;

/// Opens the kiosk on `folder` and runs it until it is closed or interrupted.
///
/// # Errors
/// [`KioskError`] when folder or journal cannot be used.
pub fn run(folder: &Folder, out: &mut dyn Write) -> Result<(), KioskError> {
    let (inputs, inbox) = channel();
    signals::start(inputs.clone());
    let _alone = folder.alone()?;
    if let Some(told) = folder.open_to_others() {
        tracing::warn!("{told}");
    }
    let mut kiosk = match Kiosk::open(folder, Box::new(SystemClock)) {
        Ok(kiosk) => kiosk,
        Err(why) => return trouble::wait(folder, why, inbox),
    };
    let desk = Desk::new(folder.path(), milliseconds());
    let lan = Lan::of(&kiosk, folder, desk.clone());
    lan.share(&mut kiosk);
    prove(folder, kiosk.believed(), &inputs)?;
    let coach_desk = CoachDesk::open(&kiosk, folder, lan.desk.clone(), inputs.clone());
    lan::start(lan.clone());
    outside::start(folder, inputs.clone());
    kiosk.let_be_told();
    let looker = Looker::start(folder, inputs.clone());
    let hub = GymHub::start(folder, inputs.clone());
    let mut desks = Desks {
        coach_desk,
        lan,
        looker,
        hub,
    };
    if let Some(place) = &kiosk.config().backup {
        let nightly = Nightly {
            folder: folder.path().to_owned(),
            place: place.into(),
            keep: kiosk.config().backups.into(),
        };
        nightly::start(nightly, desk.clone());
    }
    match ui::open_backend() {
        Ok(()) => {
            let devices = Devices::start(folder, &inputs);
            windowed(kiosk, (desks, devices), &inputs, inbox)
        }
        Err(why) => {
            // It is not up yet, or is coming up again; what fails otherwise would fail again.
            let late = !ui::display_is_there();
            let page = match kiosk.lan() {
                Some(at) => {
                    let scheme = shared::scheme(kiosk.config().is_under_tls());
                    format!("the LAN page is at {scheme}://{at}/ until interrupted")
                }
                None => "the LAN page is off (kiosk.toml); waiting until interrupted".into(),
            };
            say(
                out,
                &format!("No display ({why}): here is today's day sheet, and {page}.\n\n"),
            );
            let (name, date) = (kiosk.gym().name.clone(), kiosk.date());
            let sheet = view::sheet_text(&name, date, kiosk.day(), None, &[]);
            say(out, &sheet);
            if without_window(&mut kiosk, &mut desks, &inbox, late) {
                drop(kiosk);
                return Err(trouble::begin_anew());
            }
            Ok(())
        }
    }
}

/// Has what the start believed looked at once while the kiosk runs: the whole journal, where there
/// was a checkpoint, and the record in any case.
fn prove(folder: &Folder, journal: bool, inputs: &Sender<Input>) -> Result<(), KioskError> {
    let (folder, inputs) = (folder.clone(), inputs.clone());
    let look = move || {
        stand_back();
        // A send fails only when the owner has ended.
        if journal && let Err(error) = journal::verify(&folder.journal()) {
            drop(inputs.send(Input::Unsound(Box::new(error.into()))));
        }
        match journal::prove_record(folder.path()) {
            Ok(true) => {}
            Ok(false) => drop(inputs.send(Input::RecordUnsound)),
            Err(error) => tracing::warn!(%error, "the record was not held against the journal"),
        }
    };
    spawn_once("proof", look, |_| {})
        .map(drop)
        .map_err(KioskError::file("proof thread"))
}

/// Serves the page alone; where a display is waited for, until it is there, which it tells.
fn without_window(
    kiosk: &mut Kiosk,
    desks: &mut Desks,
    inbox: &Receiver<Input>,
    waits: bool,
) -> bool {
    let mut ticks = 0_u32;
    let (owner, page) = (Beat::default(), Beat::default());
    let served = page.clone();
    watchdog::start(&owner, &page, move || served.beat());
    loop {
        let input = inbox.recv_timeout(TICK);
        owner.beat();
        ticks = ticks.wrapping_add(u32::from(input.is_err()));
        let looks = waits && input.is_err() && ticks.is_multiple_of(LOOK_TICKS);
        if looks && ui::display_is_there() {
            return true;
        }
        if take(kiosk, desks, input).is_none() {
            return false;
        }
    }
}

/// What stands beside the kiosk for coach and owner.
#[derive(Debug)]
struct Desks {
    coach_desk: CoachDesk,
    lan: Lan,
    looker: Looker,
    hub: GymHub,
}

/// Takes one input, or a tick without one, and gives the face that follows; `None` at the end.
fn take(
    kiosk: &mut Kiosk,
    desks: &mut Desks,
    input: Result<Input, RecvTimeoutError>,
) -> Option<Frame> {
    let frame = answer(kiosk, &mut desks.coach_desk, input);
    // What was set at the desk counts at once.
    desks.lan.follow(kiosk);
    desks.looker.follow(kiosk);
    desks.hub.follow(kiosk);
    frame
}

/// Takes one input, or a tick without one, with the coach's desk beside the kiosk, and gives the
/// face that follows; `None` at the end.
pub fn answer(
    kiosk: &mut Kiosk,
    desk: &mut CoachDesk,
    input: Result<Input, RecvTimeoutError>,
) -> Option<Frame> {
    let mut frame = None;
    match input {
        Ok(Input::Tap(meant)) => frame = Some(kiosk.take(&meant)),
        Ok(Input::Pressed(pressed)) => frame = Some(kiosk.press(pressed)),
        Ok(Input::Order(order)) => desk.obey(kiosk, order),
        Ok(Input::StickChanged(id)) => desk.look(kiosk, id),
        Ok(Input::Stick(seen)) => desk.lay_out(kiosk, seen),
        Ok(Input::Handed(read)) => desk.lay_plan(kiosk, *read),
        Ok(Input::Told(told)) => kiosk.tell_order(&told),
        Ok(Input::Proven(tried)) => desk.put_back(kiosk, *tried),
        Ok(Input::RecordMade) => desk.record_made(kiosk),
        Ok(Input::RecordUnsound) => desk.remake_record(kiosk),
        Ok(Input::Unsound(error)) => kiosk.tell_unsound(*error),
        Ok(Input::Nearby(near)) => kiosk.tell_nearby(*near),
        Ok(Input::Better(better)) => {
            kiosk.take_better(*better);
        }
        Ok(Input::Elsewhere(lift)) => kiosk.take_elsewhere(*lift),
        Err(RecvTimeoutError::Timeout) => frame = Some(kiosk.tick()),
        Ok(Input::Quit) | Err(RecvTimeoutError::Disconnected) => return None,
    }
    desk.serve(kiosk);
    Some(frame.unwrap_or_else(|| kiosk.frame()))
}

fn windowed(
    mut kiosk: Kiosk,
    (mut desks, mut devices): (Desks, Devices),
    inputs: &Sender<Input>,
    inbox: Receiver<Input>,
) -> Result<(), KioskError> {
    let failed = |error: ui::slint::PlatformError| KioskError::Picture(error.to_string());
    let face = ui::Face::new().map_err(failed)?;
    let first = kiosk.frame();
    devices.seen().store(first.number, Ordering::SeqCst);
    face.show_frame(&Frame {
        beside: devices.beside(),
        ..first
    });
    if let Some(panel) = devices.panel().cloned() {
        face.on_push(move |name, down| {
            panel.push(name, down);
        });
    }
    let taps = inputs.clone();
    // A send fails only when the owner has ended, and then the window closes too.
    face.on_tap(move |meant| drop(taps.send(Input::Tap(meant))));
    face.window().on_close_requested(|| {
        drop(ui::quit_event_loop());
        ui::slint::CloseRequestResponse::HideWindow
    });
    let handle = face.handle();
    let planner = Planner::start(inputs.clone());
    let (beat, window) = (Beat::default(), Beat::default());
    let drawn = (face.handle(), window.clone());
    watchdog::start(&beat, &window, move || {
        let (handle, window) = (&drawn.0, drawn.1.clone());
        // It fails only when the event loop has ended, and then nothing is to be fed.
        drop(handle.post(move |_| window.beat()));
    });
    let owner = spawn_once(
        "owner",
        move || {
            own(
                &mut kiosk,
                (&mut desks, &mut devices),
                (&inbox, &planner),
                (&handle, &beat),
            );
        },
        |_| drop(ui::quit_event_loop()),
    );
    let owner = owner.map_err(KioskError::file("owner thread"))?;
    face.fill_display().map_err(failed)?;
    let ran = ui::run_event_loop().map_err(failed);
    drop(inputs.send(Input::Quit));
    drop(owner.join());
    ran
}

/// The owner's loop: an input or a tick, then the frame that follows.
fn own(
    kiosk: &mut Kiosk,
    (desks, devices): (&mut Desks, &mut Devices),
    (inbox, planner): (&Receiver<Input>, &Planner),
    (face, beat): (&ui::FaceHandle, &Beat),
) {
    let mut shown: Option<Frame> = None;
    loop {
        let drawn = devices.beside().is_some();
        let input = inbox.recv_timeout(if drawn { TICK_DRAWN } else { TICK });
        let pressed = matches!(input, Ok(Input::Pressed(_)));
        let by_hand = pressed || matches!(input, Ok(Input::Tap(_)));
        if pressed {
            devices.taken();
        }
        beat.beat();
        let say = kiosk.language();
        let faults = devices.faults();
        let faults = faults.iter().map(|fault| device_words(say, fault));
        let parts = watch::fallen(say).into_iter().chain(gym_hub::trouble(say));
        let told = faults.chain(parts).collect();
        kiosk.tell_devices(told);
        let Some(mut frame) = take(kiosk, desks, input) else {
            return;
        };
        frame.beside = devices.beside();
        let asleep = frame.asleep;
        if shown.as_ref() != Some(&frame) {
            let (next, seen) = (frame.clone(), devices.seen());
            // It fails only when the event loop has ended, and then the window is gone too.
            drop(face.post(move |face| {
                face.show_frame(&next);
                seen.store(next.number, Ordering::SeqCst);
            }));
            shown = Some(frame);
        }
        // The screen first, then what stands beside it.
        if by_hand {
            devices.touched(kiosk.now());
        }
        let at = (kiosk.now(), kiosk.minute_of_day());
        devices.follow(&kiosk.signs(), at, (by_hand, asleep));
        planner.follow(kiosk);
    }
}
