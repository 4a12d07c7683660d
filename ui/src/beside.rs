//! Fills the panel of simulated devices, and tells what was pressed on it.
use crate::generated::{Beside, KioskWindow, Switch};
use crate::rows::Rows;
use slint::{Color, ComponentHandle as _};
use std::cell::RefCell;
use std::rc::Rc;

/// Who listens to switches.
type Listener = Rc<RefCell<Option<Box<dyn FnMut(&str, bool)>>>>;

/// Keeps its lists and its listener.
pub(crate) struct BesideFace {
    switches: Rows<Switch>,
    lights: Rows<Color>,
    hears: Listener,
}

impl BesideFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let face = Self {
            switches: Rows::new(),
            lights: Rows::new(),
            hears: Rc::default(),
        };
        let to = window.global::<Beside<'_>>();
        to.set_switches(face.switches.model());
        to.set_lights(face.lights.model());
        let hears = Rc::clone(&face.hears);
        to.on_push(move |name, down| {
            if let Some(hear) = hears.borrow_mut().as_mut() {
                hear(&name, down);
            }
        });
        face
    }

    /// From now on `hear` is told which switch goes down or up.
    pub(crate) fn listen(&self, hear: impl FnMut(&str, bool) + 'static) {
        *self.hears.borrow_mut() = Some(Box::new(hear));
    }

    pub(crate) fn show(&self, window: &KioskWindow, beside: Option<&view::beside::Beside>) {
        let to = window.global::<Beside<'_>>();
        to.set_shown(beside.is_some());
        let Some(beside) = beside else {
            return;
        };
        to.set_has_lamp(beside.lamp.is_some());
        to.set_lamp(beside.lamp == Some(true));
        to.set_has_buzzer(beside.sounds.is_some());
        to.set_sounds(beside.sounds == Some(true));
        to.set_backlight(beside.backlight.map_or(-1, i32::from));
        self.lights.settle(beside.lights.iter().map(light));
        self.switches
            .settle(beside.switches.iter().map(|(name, down)| Switch {
                name: name.as_str().into(),
                down: *down,
            }));
    }
}

/// As bright as the screen can; on the strip a third of full is bright. One that is out is
/// transparent.
fn light(&[red, green, blue]: &[u8; 3]) -> Color {
    let most = u16::from(red.max(green).max(blue));
    if most == 0 {
        return Color::default();
    }
    let full = |part: u8| u8::try_from(u16::from(part) * 255 / most).unwrap_or(u8::MAX);
    Color::from_rgb_u8(full(red), full(green), full(blue))
}
