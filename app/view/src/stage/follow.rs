//! Who is shown after an entry, an undo, or a word about a turn.
use super::{PadOpen, Stage};
use crate::scene::Scene;
use domain::event::LiftNo;

impl Stage {
    /// After an entry of the lift `no`, or its end was seen, or its turn was put off: whoever is
    /// first at that station is shown. A moved back and the end of a lift are shown first.
    pub fn follow(&mut self, scene: &Scene<'_>, no: LiftNo, entered: bool) {
        let Some(run) = scene.state.lifts.get(&no) else {
            return;
        };
        // Nobody else is shown before this one has said how hard it was, or closed the question.
        if entered && run.effort_asked().is_some() && self.shows(run) {
            self.pad = Some(PadOpen::Effort);
            return;
        }
        if run.awaits_decision() || (run.is_over() && self.seen_end != Some(no)) {
            return;
        }
        if let Some(next) = scene.first_before(run) {
            let seen_end = self.seen_end;
            let lifter = Some(next.sheet.lifter.clone());
            *self = Self {
                lifter,
                entered: Some(no),
                settle: self.kept_load(),
                seen_end,
                ..Self::default()
            };
        }
    }

    /// After an undo of the lift `no`: its lifter is shown.
    pub fn show(&mut self, scene: &Scene<'_>, no: LiftNo) {
        if let Some(run) = scene.state.lifts.get(&no) {
            *self = Self {
                lifter: Some(run.sheet.lifter.clone()),
                ..Self::default()
            };
        }
    }

    /// Straight to another face. Whoever taps the name that is shown stays where they are, and
    /// nobody is asked again for a load that was kept.
    pub(super) fn go_to(&mut self, there: Self) {
        let same = there.lifter.is_some() && there.lifter == self.lifter;
        let entered = self.entered.filter(|_| same);
        let settle = self.kept_load();
        *self = Self {
            settle,
            entered,
            ..there
        };
    }

    /// After somebody is back, or what they said of their turn is taken back: their lifter is
    /// shown, and is not asked again for a load that was kept.
    pub fn show_again(&mut self, scene: &Scene<'_>, no: LiftNo) {
        let settle = self.kept_load();
        self.show(scene, no);
        self.settle = settle;
    }

    /// The lift whose choice of loads was closed with the plan's own.
    pub(super) fn kept_load(&self) -> Option<(LiftNo, bool)> {
        self.settle.filter(|(_, opened)| !opened)
    }
}
