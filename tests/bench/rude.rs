//! Fingers that do not wait, a disk that does not answer, and what they left on the bench.
use super::Bench;
use i_slint_backend_testing::ElementHandle;
use slint::platform::{PointerEventButton, WindowEvent};
use slint::{LogicalPosition, SharedString};
use view::{Frame, Screen, Tap};

/// How long a finger is down, milliseconds.
const DOWN_MS: u64 = 30;

impl Bench {
    /// The middle of the button with this label.
    pub(crate) fn place_of(&self, label: &str) -> LogicalPosition {
        let element = self.element(label);
        let (at, size) = (element.absolute_position(), element.size());
        LogicalPosition::new(at.x + size.width / 2.0, at.y + size.height / 2.0)
    }

    fn element(&self, label: &str) -> ElementHandle {
        let found = ElementHandle::find_by_accessible_label(self.face.component(), label).next();
        found.unwrap_or_else(|| panic!("no \"{label}\" in {:?}", self.labels()))
    }

    /// Whether the button with this label takes taps now.
    pub(crate) fn takes(&self, label: &str) -> Option<bool> {
        self.element(label).accessible_enabled()
    }

    /// A finger comes down.
    pub(crate) fn down(&self, position: LogicalPosition) {
        let button = PointerEventButton::Left;
        let window = self.face.window();
        window.dispatch_event(WindowEvent::PointerMoved { position });
        window.dispatch_event(WindowEvent::PointerPressed { position, button });
        self.take_taps();
    }

    /// The finger leaves.
    pub(crate) fn up(&self, position: LogicalPosition) {
        let button = PointerEventButton::Left;
        let window = self.face.window();
        window.dispatch_event(WindowEvent::PointerReleased { position, button });
        window.dispatch_event(WindowEvent::PointerExited);
        self.take_taps();
    }

    /// A finger on the button with this label, whether it takes taps or not.
    pub(crate) fn touch(&self, label: &str) {
        let at = self.place_of(label);
        self.down(at);
        self.wait_ms(DOWN_MS);
        self.up(at);
    }

    /// A finger that taps so often at the place of this button, whatever is drawn there meanwhile;
    /// from one tap to the next so many milliseconds.
    pub(crate) fn tap_again(&self, label: &str, times: u32, gap_ms: u64) {
        let at = self.place_of(label);
        self.until_it_takes(&self.element(label));
        for nth in 0..times {
            if nth > 0 {
                self.wait_ms(gap_ms - DOWN_MS);
            }
            self.down(at);
            self.wait_ms(DOWN_MS);
            self.up(at);
        }
    }

    /// A key is pressed and let go.
    pub(crate) fn key(&self, text: SharedString) {
        let window = self.face.window();
        window.dispatch_event(WindowEvent::KeyPressed { text: text.clone() });
        window.dispatch_event(WindowEvent::KeyReleased { text });
        self.take_taps();
    }

    /// From now on the disk does not answer, or does again.
    pub(crate) fn be_slow(&self, slow: bool) {
        self.slow.set(slow);
        self.take_taps();
    }

    /// A tap that the window knows nothing of, as by another process.
    pub(crate) fn take_silently(&self, tap: &Tap) {
        self.kiosk.borrow_mut().tap(tap);
    }

    /// What is drawn.
    pub(crate) fn drawn(&self) -> Frame {
        self.face.frame().expect("a frame is drawn")
    }

    /// Sets that stand, of all lifts.
    pub(crate) fn sets(&self) -> usize {
        let kiosk = self.kiosk.borrow();
        let is_set =
            |what: &domain::state::Entered| matches!(what, domain::state::Entered::Set { .. });
        let lifts = kiosk.state().lifts.values();
        lifts
            .map(|run| run.passed().filter(|entry| is_set(&entry.what)).count())
            .sum()
    }

    /// What is left of the rest that is shown, seconds.
    pub(crate) fn rest_left_s(&self) -> u64 {
        let screen = self.frame().screen;
        let left = if let Screen::Rest(rest) = screen {
            rest.left
        } else if let Screen::Settle(settle) = screen {
            settle.left
        } else {
            return 0;
        };
        let time = left.split_once(':');
        let whole = |text: &str| text.parse::<u64>().ok();
        time.and_then(|(minutes, seconds)| Some(whole(minutes)? * 60 + whole(seconds)?))
            .unwrap_or(0)
    }

    /// To the screen of whoever is up, by the floor.
    pub(crate) fn to_whoever_is_up(&self) {
        if self.screen() != "choose" {
            self.tap("all lifters");
        }
        self.tap("floor");
        let Screen::Floor(floor) = self.frame().screen else {
            panic!("the floor is shown")
        };
        let up = floor.racks.into_iter().find_map(|rack| rack.up);
        self.tap(&up.expect("somebody is up").lifter);
    }
}
