//! Lights along the upright: an addressable strip of the WS2812B kind on the data line of an SPI
//! bus, lit beside the hole to use.
//!
//! Each bit of a colour becomes three bits on the bus at 2.4 MHz, of 416.7 ns each: `100` for a 0
//! and `110` for a 1. The WS2812B datasheet asks for 400 and 850 ns high and low for a 0, 800 and
//! 450 ns for a 1, each give or take 150 ns, the colours green, red, blue with the highest bit
//! first, and the line low for more than 50 us to show them; later issues of the part want 280 us.
//! Refuses: strips with a fourth colour, and to be the only sign: the hole is on the screen.
use crate::faults::Faults;
use crate::kept::Kept;
use crate::ports::Sends;
use std::fmt;

/// Clock of the bus, hertz.
pub const CLOCK_HZ: u32 = 2_400_000;
/// Bytes of silence after the colours: 300 us at [`CLOCK_HZ`].
pub const SILENCE: usize = 90;
/// Lights on a strip at most, so that one write fits the 4096 bytes that Linux's spidev takes by
/// default.
pub const LIGHTS_MAX: u16 = 400;

/// Red, green, blue, 0 to 255 each.
pub type Colour = [u8; 3];

/// How the strip lies along the holes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Lay {
    /// Lights on the strip, 1 to [`LIGHTS_MAX`].
    pub count: u16,
    /// The light beside hole 1, from 0.
    pub first: u16,
    /// Lights from one hole to the next.
    pub every: u16,
    /// Lights lit for a hole.
    pub wide: u16,
    /// Their colour.
    pub colour: Colour,
}

impl Lay {
    /// The colours of all lights with those beside `hole` lit; a hole beyond the strip lights
    /// none.
    #[must_use]
    pub fn colours(&self, hole: Option<u16>) -> Vec<Colour> {
        let mut colours = vec![[0; 3]; usize::from(self.count)];
        if let Some(above) = hole.and_then(|hole| hole.checked_sub(1)) {
            let from = usize::from(self.first) + usize::from(above) * usize::from(self.every);
            let beside = colours.iter_mut().skip(from).take(usize::from(self.wide));
            beside.for_each(|light| *light = self.colour);
        }
        colours
    }
}

/// The bytes that make a strip show these colours.
#[must_use]
pub fn coded(colours: &[Colour]) -> Vec<u8> {
    let mut bits = Bits::default();
    for [red, green, blue] in colours {
        for part in [green, red, blue] {
            for at in (0..8).rev() {
                bits.push(if part >> at & 1 == 1 { 0b110 } else { 0b100 });
            }
        }
    }
    bits.bytes.resize(bits.bytes.len() + SILENCE, 0);
    bits.bytes
}

/// The colours that a strip would show after these bytes; `None` where they are no such code.
#[must_use]
pub fn decoded(bytes: &[u8]) -> Option<Vec<Colour>> {
    let code = bytes.get(..bytes.len().checked_sub(SILENCE)?)?;
    let one_light = |light: &[u8]| -> Option<Colour> {
        let mut parts = [0; 3];
        for (part, three) in parts.iter_mut().zip(light.chunks_exact(3)) {
            let bits = three
                .iter()
                .fold(0_u32, |all, byte| all << 8 | u32::from(*byte));
            for at in (0..8).rev() {
                *part = *part << 1
                    | match bits >> (3 * at) & 0b111 {
                        0b110 => 1,
                        0b100 => 0,
                        _ => return None,
                    };
            }
        }
        let [green, red, blue] = parts;
        Some([red, green, blue])
    };
    let lights = code.chunks_exact(9);
    if !lights.remainder().is_empty() {
        return None;
    }
    lights.map(one_light).collect()
}

/// Three bits at a time into bytes, the first one highest.
#[derive(Default)]
struct Bits {
    bytes: Vec<u8>,
    waiting: u16,
    count: u8,
}

impl Bits {
    fn push(&mut self, three: u16) {
        self.waiting = self.waiting << 3 | three;
        self.count += 3;
        if self.count >= 8 {
            self.count -= 8;
            let [_, byte] = (self.waiting >> self.count).to_be_bytes();
            self.bytes.push(byte);
        }
    }
}

/// The strip.
pub struct Lights {
    bus: Box<dyn Sends>,
    lay: Lay,
    rack: Option<String>,
    kept: Kept<Option<u16>>,
}

impl Lights {
    /// A strip at `rack`; without one it shows the hole at any rack.
    #[must_use]
    pub fn new(bus: Box<dyn Sends>, lay: Lay, rack: Option<String>) -> Self {
        Self {
            bus,
            lay,
            rack,
            kept: Kept::new("lights"),
        }
    }

    /// Lights the hole at its rack; any other rack's hole leaves the strip dark.
    pub fn step(&mut self, now_ms: u64, hole: Option<(&str, u16)>, faults: &Faults) {
        let here = |rack: &str| self.rack.as_deref().is_none_or(|own| own == rack);
        let hole = hole.filter(|(rack, _)| here(rack)).map(|(_, hole)| hole);
        let (bus, lay) = (&mut self.bus, self.lay);
        self.kept.keep(now_ms, hole, faults, |hole| {
            bus.send(&coded(&lay.colours(*hole)))
        });
    }
}

impl fmt::Debug for Lights {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Lights({:?}, {:?})", self.lay, self.kept)
    }
}
