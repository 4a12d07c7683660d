//! Simulated devices, as drawn beside the screen: what they show, and switches to press.
//!
//! Refuses: knowing what a device is for; that the screen says itself.

/// All of them; what there is not is not drawn.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Beside {
    /// Buttons and foot switches by name, and whether each is down.
    pub switches: Vec<(String, bool)>,
    /// Whether the lamp is on.
    pub lamp: Option<bool>,
    /// Whether the buzzer sounds.
    pub sounds: Option<bool>,
    /// The lights along the upright, the lowest first: red, green, blue.
    pub lights: Vec<[u8; 3]>,
    /// The backlight, percent.
    pub backlight: Option<u8>,
}
