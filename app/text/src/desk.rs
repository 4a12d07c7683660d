//! What the desk says of things and of the coach's reasons. Refuses: deciding anything.
use crate::{Language, keys as p};
use domain::needs::Need;

impl Language {
    /// Why a thing cannot be taken away, then what to do first.
    #[must_use]
    pub fn need(self, need: &Need) -> String {
        match need {
            Need::UnderWay(lift) => self.fill(p::NEED_UNDER_WAY, &[&self.shipped(lift)]),
            Need::LiftsThere(lifter) => self.fill(p::NEED_LIFTS_THERE, &[lifter]),
            Need::LiftsWith(lifter) => self.fill(p::NEED_LIFTS_WITH, &[lifter]),
            Need::OnlyRack => self.say(p::NEED_ONLY_RACK),
            Need::OnlyBar(rack) => self.fill(p::NEED_ONLY_BAR, &[rack]),
            Need::OnlyKind => self.say(p::NEED_ONLY_KIND),
            Need::Weighed => self.say(p::NEED_WEIGHED),
        }
    }

    /// The coach's words: what was chosen at the desk, or else as they were written.
    #[must_use]
    pub fn note(self, note: &str) -> String {
        let at_desk = [p::list::NOTE_AT_DESK, p::list::NOTE_ON_PAGE];
        let mut known = p::NOTES.iter().chain(&at_desk);
        let chosen = known.find(|phrase| Self::English.pick(**phrase) == note);
        chosen.map_or_else(|| note.to_owned(), |phrase| self.say(*phrase))
    }
}
