//! What the screen costs: time of a full repaint and of one tick of the rest timer, and the share
//! of the pixels that a tick repaints. Prints; judges nothing.
//!
//! `cargo run --release -p acceptance --example figures`
#![allow(clippy::print_stdout, reason = "this prints figures")]
use kiosk::clock::stopwatch;
use kiosk::picture::frame_of;
use slint::platform::software_renderer::{MinimalSoftwareWindow, RepaintBufferType};
use slint::platform::{Platform, PlatformError, WindowAdapter};
use slint::{PhysicalSize, Rgb8Pixel};
use std::cell::Cell;
use std::rc::Rc;
use std::time::Duration;
use view::{Frame, Screen};

const WIDTH: u32 = 1280;
const HEIGHT: u32 = 800;
/// Ticks timed; the median is told.
const TICKS: u32 = 61;

struct Panel {
    window: Rc<MinimalSoftwareWindow>,
    ms: Rc<Cell<u64>>,
}

impl Platform for Panel {
    fn create_window_adapter(&self) -> Result<Rc<dyn WindowAdapter>, PlatformError> {
        Ok(Rc::<MinimalSoftwareWindow>::clone(&self.window))
    }

    fn duration_since_start(&self) -> Duration {
        Duration::from_millis(self.ms.get())
    }
}

fn main() {
    let window = MinimalSoftwareWindow::new(RepaintBufferType::ReusedBuffer);
    let ms = Rc::new(Cell::new(0));
    let panel = Panel {
        window: Rc::clone(&window),
        ms: Rc::clone(&ms),
    };
    slint::platform::set_platform(Box::new(panel)).expect("the first platform");
    let rest = frame_of("rest", None, None).expect("the rest screen");
    let bar = frame_of("bar", None, None).expect("the bar screen");

    let mut clock = stopwatch();
    let face = ui::Face::new().expect("a window");
    window.set_size(PhysicalSize::new(WIDTH, HEIGHT));
    face.show().expect("it opens");
    let mut pixels = vec![Rgb8Pixel::default(); (WIDTH * HEIGHT) as usize];
    let mut draw = |frame: &Frame| -> (u64, u64) {
        ms.set(ms.get() + 1_000);
        face.show_frame(frame);
        face.settle();
        slint::platform::update_timers_and_animations();
        let mut clock = stopwatch();
        let mut share = 0;
        window.draw_if_needed(|renderer| {
            let region = renderer.render(&mut pixels, WIDTH as usize);
            let area = |(_, size): (_, PhysicalSize)| u64::from(size.width * size.height);
            share = region.iter().map(area).sum();
        });
        (clock(), share)
    };
    draw(&rest);
    println!(
        "window made and first frame drawn   {:>8.2} ms",
        millis(clock())
    );

    // From one screen to another everything changes: that is a full repaint.
    let mut full: Vec<u64> = (0..TICKS)
        .map(|at| draw(if at % 2 == 0 { &bar } else { &rest }).0)
        .collect();
    println!(
        "full repaint, median of {TICKS}          {:>8.2} ms",
        millis(median(&mut full))
    );

    draw(&rest);
    let mut ticks = Vec::new();
    let mut shares = Vec::new();
    for left in (0..TICKS).rev() {
        let (took, pixels) = draw(&tick(&rest, left));
        ticks.push(took);
        shares.push(pixels);
    }
    println!(
        "one tick of the rest, median of {TICKS}  {:>8.2} ms",
        millis(median(&mut ticks))
    );
    say_shares("pixels that a tick repaints", &mut shares);

    let floor = frame_of("floor-6-kilo", None, None).expect("the floor");
    draw(&floor);
    let mut shares: Vec<u64> = (0..TICKS)
        .rev()
        .map(|left| draw(&tick(&floor, left)).1)
        .collect();
    say_shares("the same of a floor of six", &mut shares);
}

/// Of so many pixels each, the share of the panel in the middle and at most.
fn say_shares(what: &str, shares: &mut [u64]) {
    let share = |pixels: u64| millis(pixels * 100 * 1_000_000 / u64::from(WIDTH * HEIGHT));
    println!("{what}, median {:>8.2} %", share(median(shares)));
    println!("{what}, most   {:>8.2} %", share(shares[shares.len() - 1]));
}

/// The frame with so many seconds left of two minutes, wherever it tells a time left.
fn tick(frame: &Frame, left: u32) -> Frame {
    let mut next = frame.clone();
    let word = |word: &mut String| {
        if word.contains(':') {
            *word = view::words::minutes(left);
        }
    };
    for chip in &mut next.chips {
        word(&mut chip.word);
    }
    if let Screen::Rest(rest) = &mut next.screen {
        word(&mut rest.left);
        rest.share = f32::from(u16::try_from(left).expect("under two minutes")) / 120.0;
    }
    if let Screen::Floor(floor) = &mut next.screen {
        for rack in &mut floor.racks {
            let turns = rack.up.iter_mut().chain(&mut rack.next);
            for turn in turns.chain(&mut rack.then) {
                word(&mut turn.word);
            }
        }
    }
    next
}

fn median(of: &mut [u64]) -> u64 {
    of.sort_unstable();
    of[of.len() / 2]
}

#[allow(clippy::cast_precision_loss, reason = "figures for reading")]
fn millis(ns: u64) -> f64 {
    ns as f64 / 1_000_000.0
}
