//! What the screen showed, as kept in the journal, and back: after a restart it shows the same.
use super::{Due, PadOpen, Stage, last_touched};
use crate::aside::Aside;
use crate::floor::up_orders;
use crate::scene::Scene;
use domain::PlateFace;
use domain::believed::{Disc, Stacks};
use domain::shown::{LifterPart, OwnPage, Shown, ShownOrder, ShownScreen};
use domain::state::{LiftRun, Unshown};

impl Stage {
    /// After a restart: what was shown last; where nothing was kept, the lifter of the last entry
    /// of today, if they are under way.
    #[must_use]
    pub fn resume(scene: &Scene<'_>) -> Self {
        if let Some(shown) = &scene.state.shown {
            if shown.date == scene.date {
                return Self::of(shown);
            }
            // Another day: everybody begins anew; the floor stays the floor.
            let floor = shown.screen == ShownScreen::Floor;
            return Self {
                floor,
                ..Self::default()
            };
        }
        let last = scene.runs().max_by_key(|run| last_touched(run));
        let open = last.filter(|run| !run.is_over());
        Self {
            lifter: open.map(|run| run.sheet.lifter.clone()),
            ..Self::default()
        }
    }

    fn of(shown: &Shown) -> Self {
        let mut stage = Self {
            early: shown.early.map(|(no, rung)| (no, usize::from(rung))),
            entered: shown.entered,
            settle: shown.settle,
            seen_end: shown.seen_end,
            ..Self::default()
        };
        match &shown.screen {
            ShownScreen::All => {}
            ShownScreen::Floor => stage.floor = true,
            ShownScreen::Own(page) => stage.aside = Some(own_page(*page)),
            ShownScreen::Lifter(name, part) => {
                stage.lifter = Some(name.clone());
                stage.open_part(part);
            }
        }
        stage
    }

    fn open_part(&mut self, part: &LifterPart) {
        match part {
            LifterPart::Due => {}
            LifterPart::SetUp => self.setup_again = true,
            LifterPart::Reps => self.pad = Some(PadOpen::Reps),
            LifterPart::Moved(through) => self.pad = Some(PadOpen::Moved { through: *through }),
            LifterPart::Turn => self.pad = Some(PadOpen::Turn),
            LifterPart::Holds(plates) => self.pad = Some(PadOpen::Holds(plates.clone())),
            LifterPart::History(lift) => self.aside = Some(Aside::History(lift.clone())),
            LifterPart::Why(no, part) => self.aside = Some(Aside::Why(*no, *part)),
        }
    }

    /// What is shown now, to be kept. With `board` the floor is seen elsewhere too.
    #[must_use]
    pub fn shown(&self, scene: &Scene<'_>, board: bool) -> Shown {
        let screen = match (&self.lifter, self.own_page()) {
            (None, Some(page)) => ShownScreen::Own(page),
            (None, None) if self.floor => ShownScreen::Floor,
            (None, None) => ShownScreen::All,
            (Some(lifter), _) => ShownScreen::Lifter(lifter.clone(), self.part()),
        };
        let mut orders = Vec::new();
        if self.aside.is_none() {
            orders = self.orders(scene);
        }
        if board {
            for order in up_orders(scene) {
                if !orders.iter().any(|known| known.bar == order.bar) {
                    orders.push(order);
                }
            }
        }
        Shown {
            date: scene.date,
            screen,
            early: self
                .early
                .and_then(|(no, rung)| Some((no, u16::try_from(rung).ok()?))),
            entered: self.entered,
            settle: self.settle,
            seen_end: self.seen_end,
            orders,
        }
    }

    /// After a start: as the tap would have left it that the screen had not answered.
    pub fn take_up(&mut self, scene: &Scene<'_>, unshown: Unshown) {
        if unshown != Unshown::Pass {
            self.entered = None;
        }
        match unshown {
            Unshown::Entry(no) => {
                (self.pad, self.early) = (None, None);
                self.follow(scene, no, true);
            }
            Unshown::PutOff(no) => {
                (self.pad, self.early) = (None, None);
                self.follow(scene, no, false);
            }
            Unshown::Undo(no) => self.show(scene, no),
            Unshown::Return(no) | Unshown::Unsaid(no) => self.show_again(scene, no),
            Unshown::Load(no) => self.settle = Some((no, false)),
            Unshown::Claim(no) => {
                let rung = scene.state.lifts.get(&no).and_then(LiftRun::next_rung);
                (self.pad, self.early) = (None, rung.map(|rung| (no, rung)));
            }
            Unshown::Begin | Unshown::Pass => {}
            Unshown::Word => self.pad = None,
            Unshown::WordUndone => self.early = None,
        }
    }

    const fn own_page(&self) -> Option<OwnPage> {
        match &self.aside {
            Some(Aside::Panel) => Some(OwnPage::Panel),
            Some(Aside::About) => Some(OwnPage::About),
            Some(Aside::Lan) => Some(OwnPage::Lan),
            // A card is typed anew from the day's page.
            Some(Aside::Meet | Aside::Card(_) | Aside::CardTyping(_)) => Some(OwnPage::Meet),
            Some(Aside::Desk(_)) => Some(OwnPage::Desk),
            Some(Aside::History(_) | Aside::Why(..)) | None => None,
        }
    }

    fn part(&self) -> LifterPart {
        match &self.aside {
            Some(Aside::History(lift)) => return LifterPart::History(lift.clone()),
            Some(Aside::Why(no, part)) => return LifterPart::Why(*no, *part),
            Some(
                Aside::Panel
                | Aside::About
                | Aside::Lan
                | Aside::Meet
                | Aside::Card(_)
                | Aside::CardTyping(_)
                | Aside::Desk(_),
            )
            | None => {}
        }
        match &self.pad {
            _ if self.setup_again => LifterPart::SetUp,
            // Closed by a restart: the question is nobody's to answer then.
            None | Some(PadOpen::Effort) => LifterPart::Due,
            Some(PadOpen::Reps) => LifterPart::Reps,
            Some(PadOpen::Moved { through }) => LifterPart::Moved(*through),
            Some(PadOpen::Turn) => LifterPart::Turn,
            Some(PadOpen::Holds(plates)) => LifterPart::Holds(plates.clone()),
        }
    }

    /// The orders about a bar that somebody who looks at the screen may obey.
    fn orders(&self, scene: &Scene<'_>) -> Vec<ShownOrder> {
        match self.due(scene) {
            Due::Floor => up_orders(scene),
            Due::Bar(run, rung) => shown_orders(scene, run, rung),
            Due::Rest(run, rung, _) if scene.is_turn(run) => shown_orders(scene, run, rung),
            Due::All
            | Due::Aside
            | Due::Fresh(_)
            | Due::SetUp(_)
            | Due::Pad(..)
            | Due::Stop(_)
            | Due::Settle(..)
            | Due::Rest(..)
            | Due::End(_) => Vec::new(),
        }
    }
}

/// The page of the kiosk itself; of the coach's desk the door, since the code is asked anew.
fn own_page(page: OwnPage) -> Aside {
    match page {
        OwnPage::Panel => Aside::Panel,
        OwnPage::About => Aside::About,
        OwnPage::Lan => Aside::Lan,
        OwnPage::Meet => Aside::Meet,
        OwnPage::Desk => Aside::door(),
    }
}

/// The order for a rung, as kept; where plates have to be fetched from another bar, what that one
/// holds without them.
pub(crate) fn shown_orders(scene: &Scene<'_>, run: &LiftRun, rung: usize) -> Vec<ShownOrder> {
    let order = scene.order(run, rung);
    let own = ShownOrder {
        rack: run.sheet.rack.clone(),
        bar: run.sheet.bar.name.clone(),
        date: run.day,
        to: order.to.clone(),
    };
    let mut orders = Vec::from([own]);
    for (name, known) in &scene.state.bars {
        let lacks = order.lacks.iter().filter(|(_, bar)| bar == name);
        let faces: Vec<PlateFace> = lacks.map(|(face, _)| *face).collect();
        if faces.is_empty() {
            continue;
        }
        let without = |side: &[Disc]| {
            let stays = side.iter().filter(|disc| !faces.contains(&disc.face));
            stays.cloned().collect()
        };
        orders.push(ShownOrder {
            rack: known.rack.clone(),
            bar: name.clone(),
            date: known.date,
            to: Stacks {
                left: without(&known.holds.left),
                right: without(&known.holds.right),
            },
        });
    }
    orders
}
