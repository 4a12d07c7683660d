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
        left > 700 && right < 920 && top >= 16 && bottom <= 144,
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
fn a_tick_of_another_lifter_paints_their_chip_alone() {
    let frame = scene("bar");
    let mut panel = Panel::open(&frame);
    let painted = panel.show(|frame| frame.chips[0].word = "1:39".into(), &frame);
    let (left, top, right, bottom) = painted.expect("the chip is painted");
    assert!(
        left >= 880 && right <= 1092 && top >= 16 && bottom <= 144,
        "{painted:?}"
    );
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
        left >= 780 && top >= 640 && right <= 1280 && bottom <= 800,
        "{painted:?}"
    );
}

#[test]
fn painting_bit_by_bit_gives_what_painting_anew_gives() {
    let all = scenes::all();
    let mut panel = Panel::open(&all[0].1);
    for (name, frame) in &all {
        panel.face.show_frame(frame);
        panel.paint();
        let anew = ui::picture(frame, 1280, 800).expect("it draws");
        let shown = panel.pixels.iter().flat_map(|p| [p.r, p.g, p.b, 255]);
        assert!(shown.eq(anew.pixels), "{name} is painted otherwise");
    }
}
