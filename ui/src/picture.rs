//! A frame as pixels, without a display: the same bytes on every machine.
//!
//! Refuses: animation and time. The clock of a picture stands still.
use crate::face::Face;
use slint::platform::software_renderer::{MinimalSoftwareWindow, RepaintBufferType};
use slint::platform::{Platform, PlatformError, WindowAdapter};
use slint::{PhysicalSize, Rgb8Pixel};
use std::fmt;
use std::rc::Rc;
use std::time::Duration;
use view::Frame;

/// Most pixels along an edge.
const EDGE_MAX: u32 = 8_192;

/// Pixels, row by row from the top left, four bytes each: red, green, blue, alpha (always 255).
#[derive(Clone, PartialEq, Eq)]
pub struct Picture {
    /// Pixels in a row.
    pub width: u32,
    /// Rows.
    pub height: u32,
    /// `width * height * 4` bytes.
    pub pixels: Vec<u8>,
}

impl fmt::Debug for Picture {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Picture {} x {}", self.width, self.height)
    }
}

/// Draws `frame` at `width` by `height` pixels, a quarter wider with devices beside it, headless, on a thread of its own, so that it
/// works beside a window or without one.
///
/// # Errors
/// When the size is nothing or more than 8192 pixels along an edge, or Slint cannot draw.
pub fn picture(frame: &Frame, width: u32, height: u32) -> Result<Picture, String> {
    if width == 0 || height == 0 || width > EDGE_MAX || height > EDGE_MAX {
        return Err(format!(
            "a picture of {width} x {height} pixels cannot be drawn; ask for 1 to {EDGE_MAX} along each edge"
        ));
    }
    let frame = frame.clone();
    let width = match frame.beside {
        Some(_) => width + width / 4,
        None => width,
    };
    std::thread::Builder::new()
        .name("picture".into())
        .spawn(move || draw(&frame, width, height))
        .map_err(|error| format!("the picture's thread did not start: {error}"))?
        .join()
        .map_err(|_| "the picture's thread failed; its log tells why".to_owned())?
}

fn draw(frame: &Frame, width: u32, height: u32) -> Result<Picture, String> {
    let slint_failed = |error: PlatformError| format!("slint cannot draw the picture: {error}");
    let window = MinimalSoftwareWindow::new(RepaintBufferType::NewBuffer);
    slint::platform::set_platform(Box::new(Still(Rc::clone(&window))))
        .map_err(|error| format!("slint cannot draw the picture: {error}"))?;
    let face = Face::new().map_err(slint_failed)?;
    window.set_size(PhysicalSize::new(width, height));
    face.show_frame(frame);
    face.settle();
    face.show().map_err(slint_failed)?;
    let mut pixels = vec![Rgb8Pixel::default(); width as usize * height as usize];
    let drawn = window.draw_if_needed(|renderer| {
        renderer.render(&mut pixels, width as usize);
    });
    if !drawn {
        return Err("slint had nothing to draw".to_owned());
    }
    let pixels = pixels.iter().flat_map(|p| [p.r, p.g, p.b, 255]).collect();
    Ok(Picture {
        width,
        height,
        pixels,
    })
}

/// A platform with one window in memory, whose clock stands still.
struct Still(Rc<MinimalSoftwareWindow>);

impl Platform for Still {
    fn create_window_adapter(&self) -> Result<Rc<dyn WindowAdapter>, PlatformError> {
        Ok(Rc::<MinimalSoftwareWindow>::clone(&self.0))
    }

    fn duration_since_start(&self) -> Duration {
        Duration::ZERO
    }
}
