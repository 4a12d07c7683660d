//! Gym, settings and meet day as the journal has their texts; read again only when those change.
use super::Kiosk;
use crate::folder::{GYM_FILES, MEET_FILE};
use crate::gym_files::{self, GymInForce};
use std::sync::Arc;

impl Kiosk {
    /// Follows what was entered: the record, and gym, settings and meet day where their texts
    /// changed.
    pub(super) fn after_change(&mut self) {
        if let Some(record) = &mut self.record {
            self.owner.follow(record);
        }
        if !self.take_texts() {
            return;
        }
        self.news.demo = gym_files::is_demo(&self.owner);
        if let Ok(gym) = gym_files::in_force(&self.owner)
            && gym != *self.gym.gym
        {
            self.gym = GymInForce {
                gym: Arc::new(gym),
                ..GymInForce::default()
            };
            self.look_with_gym();
            self.today.made_for = None;
        }
        let text = self.owner.state().files.get("kiosk.toml");
        self.config = text.map(|text| config_of(text)).unwrap_or_default();
        self.today.made_for = None;
        self.meet = gym_files::meet_in_force(&self.owner, &self.gym.gym);
    }

    /// Whether a file in force has another text than the one that was read last. A tap that changes
    /// none parses none.
    fn take_texts(&mut self) -> bool {
        let files = &self.owner.state().files;
        let names = GYM_FILES.iter().chain([&MEET_FILE]);
        let now = names.map(|name| files.get(*name));
        if self.read_from.iter().map(Option::as_ref).eq(now.clone()) {
            return false;
        }
        self.read_from = now.map(|text| text.cloned()).collect();
        true
    }
}

/// The kiosk's settings from a text that passed the checker when it was taken.
fn config_of(text: &str) -> plan::Kiosk {
    let source = plan::Source {
        name: "kiosk.toml",
        text: text.as_bytes(),
    };
    plan::kiosk(source, None).unwrap_or_default()
}
