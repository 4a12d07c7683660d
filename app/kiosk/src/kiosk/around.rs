//! What lies around the kiosk, for the coach's desk: plans that wait, addresses, the page's code.
//!
//! A kiosk that runs is told of it by a thread; a bench looks itself, when the desk is open.
use super::Kiosk;
use crate::desk;
use crate::nearby::Nearby;
use domain::Gym;
use std::sync::Arc;
use view::Language;

/// What was found, and for whom it was told.
#[derive(Debug, Default)]
pub(super) struct Around {
    pub(super) near: Nearby,
    /// The event that stood, and the language, when the desk's plans were told.
    told_for: Option<(u64, Language)>,
    /// Whether a thread looks.
    by_thread: bool,
}

impl Kiosk {
    /// From now on somebody else looks at what lies around, and tells it.
    pub fn let_be_told(&mut self) {
        self.around.by_thread = true;
    }

    /// The gym in force, to be shared with whoever reads plans.
    #[must_use]
    pub const fn shared_gym(&self) -> &Arc<Gym> {
        &self.gym.gym
    }

    /// What was found around the kiosk.
    pub fn tell_nearby(&mut self, near: Nearby) {
        self.around.near = near.fitting(&self.gym.gym);
        self.around.told_for = None;
        self.look_at_desk();
    }

    /// The gym has become another: its plans are read again before one is taken.
    pub(super) fn look_with_gym(&mut self) {
        let near = std::mem::take(&mut self.around.near);
        self.around.near = near.fitting(&self.gym.gym);
        self.around.told_for = None;
    }

    /// What is new for the coach.
    pub(super) fn look_at_desk(&mut self) {
        if let Some(folder) = self.folder.as_ref().filter(|_| !self.around.by_thread) {
            self.around.near = Nearby::look(folder, &self.gym.gym, &self.around.near);
            self.around.told_for = None;
        }
        let mut news = std::mem::take(&mut self.news);
        let card = std::mem::take(&mut news.lan.card);
        news.lan = desk::lan_news(&self.around.near, &self.config, card);
        news.door = self.door.news();
        let told_for = (self.owner.seq(), self.language());
        if self.around.told_for != Some(told_for) {
            let with = (&*self.gym.gym, self.owner.state());
            news.plans = desk::plans_news(&self.around.near, with, self.language());
            self.around.told_for = Some(told_for);
        }
        news.faults = desk::file_faults(&self.gym, self.language());
        self.news = news;
    }
}
