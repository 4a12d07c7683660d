//! Taps of an evening, without a window.
use kiosk::Kiosk;
use view::{Screen, Tap};

/// Taps as an evening has them until so many events are kept.
#[allow(
    clippy::wildcard_enum_match_arm,
    reason = "every other face has one main button"
)]
pub(crate) fn lift_until(kiosk: &mut Kiosk, events: u64) {
    for at in 0..2_000_usize {
        if kiosk.seq() >= events {
            return;
        }
        let tap = match &kiosk.frame().screen {
            Screen::Choose(choose) => {
                let tile = &choose.tiles[at % choose.tiles.len()];
                Tap::Lifter(tile.lifter.clone())
            }
            Screen::SetUp(set_up) if set_up.main.is_empty() => Tap::All,
            Screen::End(_) => Tap::Undo,
            _ if at.is_multiple_of(11) => Tap::All,
            _ => Tap::Main,
        };
        kiosk.tap(&tap);
    }
    panic!("only {} events", kiosk.seq());
}
