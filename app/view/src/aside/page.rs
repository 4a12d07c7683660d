//! The pages beside the ladder, and what a tap on them means.
use super::Aside;
use crate::face::Screen;
use crate::history::{history, lift_after, lifts_of};
use crate::look::SCREEN_FILE;
use crate::meet_card::card_page;
use crate::meet_day::{can_undo, meet_page, starter_at, tap_meet};
use crate::meet_typing::card_typing;
use crate::panel::{self, PanelRow, about, panel};
use crate::scene::Scene;
use crate::stage::{Due, Stage};
use crate::tap::Tap;
use crate::why::{part_after, parts, why};
use domain::Command;

impl Aside {
    /// The screen, and the words under the lifter's name.
    pub(crate) fn screen(&self, scene: &Scene<'_>, lifter: &str) -> Screen {
        match self {
            Self::Panel => Screen::List(panel(scene)),
            Self::About => Screen::Page(about(scene)),
            Self::Lan => Screen::Page(panel::lan(scene)),
            Self::History(lift) => Screen::History(history(scene, lifter, lift)),
            Self::Why(no, part) => Screen::Why(why(scene, *no, *part)),
            Self::Meet => Screen::Meet(meet_page(scene)),
            Self::Card(starter) => Screen::List(card_page(scene, *starter)),
            Self::CardTyping(typed) => Screen::Typing(card_typing(scene, typed)),
            Self::Desk(place) => place.screen(scene),
        }
    }

    /// The lift that the header names, or nothing.
    pub(crate) fn lift(&self, scene: &Scene<'_>) -> String {
        let say = scene.language();
        match self {
            Self::Panel
            | Self::About
            | Self::Lan
            | Self::Meet
            | Self::Card(_)
            | Self::CardTyping(_)
            | Self::Desk(_) => String::new(),
            Self::History(lift) => say.shipped(lift),
            Self::Why(no, _) => {
                let run = scene.state.lifts.get(no);
                run.map(|run| say.shipped(&run.sheet.lift))
                    .unwrap_or_default()
            }
        }
    }
}

impl Stage {
    /// Opens the history of the lift that is shown, or of the lifter's first one.
    pub(crate) fn open_history(&mut self, scene: &Scene<'_>, due: &Due<'_>) {
        let Some(lifter) = &self.lifter else { return };
        let shown = match due {
            Due::Fresh(entry) => entry.map(|entry| entry.lift.clone()),
            Due::SetUp(run)
            | Due::Pad(run, ..)
            | Due::Stop(run)
            | Due::Settle(run, _)
            | Due::Rest(run, ..)
            | Due::Bar(run, _)
            | Due::End(run) => Some(run.sheet.lift.clone()),
            Due::All | Due::Floor | Due::Aside => None,
        };
        let lift = shown.or_else(|| lifts_of(scene, lifter).into_iter().next());
        self.aside = Some(Aside::History(lift.unwrap_or_default()));
    }

    /// Opens what stands behind the end of a lift.
    pub(crate) fn open_why(&mut self, scene: &Scene<'_>, due: &Due<'_>) {
        let Due::End(run) = due else { return };
        let first = parts(scene, run).first().copied();
        self.aside = first.map(|part| Aside::Why(run.no, part));
    }

    /// What a tap means while something is looked at beside the ladder.
    pub(crate) fn tap_aside(&mut self, scene: &Scene<'_>, tap: &Tap) -> Option<Command> {
        match (self.aside.clone()?, tap) {
            (Aside::Desk(place), tap) => return self.tap_desk(scene, &place, tap),
            (Aside::Meet, Tap::Undo) if !can_undo(scene) => self.aside = Some(Aside::Panel),
            (Aside::Meet, Tap::Row(at)) if starter_at(scene, *at).is_some() => {
                self.aside = starter_at(scene, *at).map(Aside::Card);
            }
            (Aside::Meet, tap) => return tap_meet(scene, tap),
            (Aside::Card(_), Tap::Undo) => self.aside = Some(Aside::Meet),
            (Aside::Card(starter), tap) => return self.tap_card(scene, starter, tap),
            (Aside::CardTyping(typed), Tap::Undo) => {
                self.aside = Some(Aside::Card(typed.starter()));
            }
            (Aside::CardTyping(typed), tap) => return self.tap_card_typing(scene, &typed, tap),
            (Aside::About | Aside::Lan, Tap::Undo) => self.aside = Some(Aside::Panel),
            (_, Tap::Undo) => self.aside = None,
            (Aside::Panel, Tap::Row(at)) => return self.tap_panel(scene, *at),
            (Aside::History(lift), Tap::Main) => {
                let lifter = self.lifter.as_deref().unwrap_or_default();
                if let Some(other) = lift_after(scene, lifter, &lift) {
                    self.aside = Some(Aside::History(other));
                }
            }
            (Aside::History(_), Tap::TurnPad) => {
                let due = self.due(scene);
                self.open_turn(scene, &due);
            }
            (Aside::Why(no, part), Tap::Main) => {
                if let Some(other) = part_after(scene, no, part) {
                    self.aside = Some(Aside::Why(no, other));
                }
            }
            _ => {}
        }
        None
    }

    fn tap_panel(&mut self, scene: &Scene<'_>, at: usize) -> Option<Command> {
        let row = *panel::rows(scene).get(at)?;
        match row {
            PanelRow::Meet => self.aside = Some(Aside::Meet),
            PanelRow::Cards => self.aside = Some(Aside::Card(0)),
            PanelRow::About => self.aside = Some(Aside::About),
            PanelRow::Lan if scene.news.lan.is_told() => self.aside = Some(Aside::Lan),
            PanelRow::Lan => {}
            PanelRow::Desk => {
                self.aside = Some(Aside::door());
            }
            PanelRow::Speak(_) | PanelRow::Shine(_) => {}
        }
        let chosen = panel::choose(scene.chosen(), row)?;
        Some(Command::TakeFile {
            name: SCREEN_FILE.into(),
            text: chosen.write(),
        })
    }
}
