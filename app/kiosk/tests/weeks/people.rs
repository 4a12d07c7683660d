//! What people do at the kiosk: lift as planned most of the time, and whatever else hands do.
use crate::gym::Gym;
use view::tap::{HoldsTap, TurnTap};
use view::{Screen, Tap};

/// Taps other than the main button, as often as they stand here.
const OTHERS: [Tap; 28] = [
    Tap::Undo,
    Tap::Undo,
    Tap::All,
    Tap::All,
    Tap::Floor,
    Tap::OtherReps,
    Tap::Number(3),
    Tap::Number(5),
    Tap::BackMoved,
    Tap::Number(2),
    Tap::WentThrough,
    Tap::Skip,
    Tap::Stop,
    Tap::GoOn,
    Tap::SetUp,
    Tap::Settle,
    Tap::Choose(1),
    Tap::History,
    Tap::Why,
    Tap::Loaded,
    Tap::Holds,
    Tap::Hold(HoldsTap::Empty),
    Tap::Hold(HoldsTap::Wanted),
    Tap::TurnPad,
    Tap::Turn(TurnTap::Later),
    Tap::Turn(TurnTap::Longer),
    Tap::Turn(TurnTap::Mine),
    Tap::Turn(TurnTap::Back),
];

impl Gym {
    /// One deed, and the time that it takes.
    pub(crate) fn deed(&mut self) {
        match self.random.below(40) {
            0 => self.visit(),
            1 => self.stick(),
            2 => self.coach(),
            3 | 4 => self.press(),
            5 => self.devices(),
            _ => self.tap(),
        }
        let seconds = 1 + self.random.below(180);
        self.pass(seconds, 30);
    }

    /// Whether the face has nothing for whoever wants to lift.
    fn leads_nowhere(&mut self) -> bool {
        let screen = self.kiosk.frame().screen;
        let blocked = matches!(&screen, Screen::SetUp(set_up) if set_up.main.is_empty());
        blocked || matches!(screen, Screen::Floor(_) | Screen::End(_))
    }

    fn tap(&mut self) {
        self.count("taps");
        let tiles = self.tiles();
        let many = tiles.len() as u64;
        let tap = if self.leads_nowhere() {
            Tap::All
        } else if many > 0 {
            let at = usize::try_from(self.random.below(many)).expect("few");
            Tap::Lifter(tiles[at].clone())
        } else if self.random.below(3) > 0 {
            Tap::Main
        } else {
            let at = usize::try_from(self.random.below(OTHERS.len() as u64)).expect("few");
            OTHERS[at].clone()
        };
        self.kiosk.tap(&tap);
    }

    /// An evening of so many deeds.
    pub(crate) fn evening(&mut self, deeds: usize) {
        for _ in 0..deeds {
            self.deed();
        }
    }
}
