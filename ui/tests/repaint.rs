//! Nothing moves but what changed: what a tick, a press and an equal frame paint anew, and that
//! the press is seen at once.
mod bench;

use bench::{scene, scenes};
use slint::platform::software_renderer::{MinimalSoftwareWindow, RepaintBufferType};
use slint::platform::{Platform, PlatformError, PointerEventButton, WindowAdapter, WindowEvent};
use slint::{LogicalPosition, PhysicalSize, Rgb8Pixel};
use std::rc::Rc;
use std::time::Duration;
use ui::Face;
use view::{Frame, Screen};

/// A platform whose window says which pixels it painted.
struct Still(Rc<MinimalSoftwareWindow>);

impl Platform for Still {
    fn create_window_adapter(&self) -> Result<Rc<dyn WindowAdapter>, PlatformError> {
        Ok(Rc::<MinimalSoftwareWindow>::clone(&self.0))
    }
    fn duration_since_start(&self) -> Duration {
        Duration::ZERO
    }
}

/// A window, its face and what is painted on it.
struct Panel {
    window: Rc<MinimalSoftwareWindow>,
    face: Face,
    pixels: Vec<Rgb8Pixel>,
}

/// Left, top, right, bottom of what was painted.
type Painted = Option<(i32, i32, i32, i32)>;

impl Panel {
    fn open(frame: &Frame) -> Self {
        let window = MinimalSoftwareWindow::new(RepaintBufferType::ReusedBuffer);
        slint::platform::set_platform(Box::new(Still(Rc::clone(&window)))).expect("one a thread");
        let face = Face::new().expect("a window in memory opens");
        window.set_size(PhysicalSize::new(1280, 800));
        face.show_frame(frame);
        face.settle();
        face.show().expect("a window in memory shows");
        let pixels = vec![Rgb8Pixel::default(); 1280 * 800];
        let mut panel = Self {
            window,
            face,
            pixels,
        };
        assert_eq!(panel.paint(), Some((0, 0, 1280, 800)), "at first, all");
        panel
    }

    /// Paints what has to be painted, and says how many pixels in a thousand that were.
    fn paint_share(&mut self) -> (u32, String) {
        let mut painted = 0;
        let mut places = Vec::new();
        let pixels = &mut self.pixels;
        self.window.draw_if_needed(|renderer| {
            let region = renderer.render(pixels, 1280);
            places.extend(region.iter());
            let sizes = places.iter().map(|(_, size)| size.width * size.height);
            painted = sizes.sum();
        });
        (painted * 1000 / (1280 * 800), format!("{places:?}"))
    }

    /// Paints what has to be painted, and says where.
    fn paint(&mut self) -> Painted {
        let mut painted = None;
        let pixels = &mut self.pixels;
        self.window.draw_if_needed(|renderer| {
            let region = renderer.render(pixels, 1280);
            let (at, size) = (region.bounding_box_origin(), region.bounding_box_size());
            let (width, height) = (size.width.cast_signed(), size.height.cast_signed());
            painted = Some((at.x, at.y, at.x + width, at.y + height));
        });
        painted.filter(|area| area.2 > area.0 && area.3 > area.1)
    }

    fn show(&mut self, change: impl Fn(&mut Frame), frame: &Frame) -> Painted {
        let mut next = frame.clone();
        change(&mut next);
        self.face.show_frame(&next);
        self.face.settle();
        self.paint()
    }
}

#[test]
fn an_equal_frame_paints_nothing() {
    let frame = scene("bar");
    let mut panel = Panel::open(&frame);
    assert_eq!(panel.show(|_| {}, &frame), None);
}

#[test]
fn the_minute_paints_the_clock_alone() {
    let frame = scene("bar");
    let mut panel = Panel::open(&frame);
    let painted = panel.show(|frame| frame.clock = "18:43".into(), &frame);
    let (left, top, right, bottom) = painted.expect("the clock is painted");
    assert!(
        left >= 24 && right <= 152 && top >= 80 && bottom <= 144,
        "{painted:?}"
    );
}

#[test]
fn a_tick_of_the_rest_paints_the_digits_and_the_line_alone() {
    let frame = scene("rest");
    let mut panel = Panel::open(&frame);
    let tick = |frame: &mut Frame| {
        if let Screen::Rest(rest) = &mut frame.screen {
            rest.left = "2:09".into();
            rest.share = 0.695;
        }
    };
    let painted = panel.show(tick, &frame);
    let (left, top, _, bottom) = painted.expect("the digits are painted");
    assert!(left > 320 && top >= 80 && bottom < 400, "{painted:?}");
}

#[test]
fn a_tick_of_another_lifter_paints_the_words_of_chips_alone() {
    let frame = scene("bar");
    let mut panel = Panel::open(&frame);
    let painted = panel.show(|frame| frame.chips[0].word = "1:39".into(), &frame);
    let (left, top, right, bottom) = painted.expect("the chip is painted");
    assert!(
        left >= 880 && right <= 1256 && top >= 80 && bottom <= 128,
        "{painted:?}"
    );
}

/// Everything that tells a time left tells this one.
fn tick(frame: &mut Frame, left: u32) {
    let word = |word: &mut String| {
        if word.contains(':') {
            *word = view::words::minutes(left);
        }
    };
    for chip in &mut frame.chips {
        word(&mut chip.word);
    }
    if let Screen::Rest(rest) = &mut frame.screen {
        word(&mut rest.left);
        rest.share = f32::from(u16::try_from(left).expect("minutes")) / 180.0;
    }
    if let Screen::Floor(floor) = &mut frame.screen {
        for rack in &mut floor.racks {
            let turns = rack.up.iter_mut().chain(&mut rack.next);
            for turn in turns.chain(&mut rack.then) {
                word(&mut turn.word);
            }
        }
    }
}

#[test]
fn a_tick_paints_a_twentieth_of_the_pixels_at_most() {
    let ticking = ["rest", "bar", "floor-four", "floor-six", "floor-racks-six"];
    let mut found = Vec::new();
    let mut panel = Panel::open(&scene(ticking[0]));
    for name in ticking {
        let mut frame = scene(name);
        tick(&mut frame, 125);
        panel.face.show_frame(&frame);
        panel.face.settle();
        panel.paint();
        for left in (50..125).rev() {
            tick(&mut frame, left);
            panel.face.show_frame(&frame);
            panel.face.settle();
            let (painted, places) = panel.paint_share();
            assert!(painted > 0, "{name} at {left} s paints nothing");
            let told = format!("{name} at {left} s paints {painted} in 1000: {places}");
            if painted > 50 {
                found.push(told);
                break;
            }
        }
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn a_press_is_seen_at_once_and_where_it_is() {
    let mut panel = Panel::open(&scene("bar"));
    let (position, button) = (
        LogicalPosition::new(1000.0, 720.0),
        PointerEventButton::Left,
    );
    panel
        .window
        .dispatch_event(WindowEvent::PointerPressed { position, button });
    let painted = panel.paint();
    let (left, top, right, bottom) = painted.expect("the press is seen without any time passing");
    assert!(
        left >= 750 && top >= 640 && right <= 1280 && bottom <= 800,
        "{painted:?}"
    );
}

#[test]
fn painting_bit_by_bit_gives_what_painting_anew_gives() {
    let all = scenes::all();
    let mut panel = Panel::open(&all[0].1);
    for (name, frame) in &all {
        panel.face.show_frame(frame);
        panel.face.settle();
        panel.paint();
        let anew = ui::picture(frame, 1280, 800).expect("it draws");
        let shown = panel.pixels.iter().flat_map(|p| [p.r, p.g, p.b, 255]);
        assert!(shown.eq(anew.pixels), "{name} is painted otherwise");
    }
}
