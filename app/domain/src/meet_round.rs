//! Whose attempt it is in a flight, and how many come before each of ours.
//!
//! Of other gyms' lifters only the opener is known, told or reckoned from the list; their later
//! attempts are reckoned to rise as attempts usually do, so a place among them is "about". Refuses:
//! to guess who of them scratches; whoever taps along has the true count.
use crate::mass::Mass;
use crate::meet_card::{AtTable, Card, usual};
use crate::meet_day::{MeetDay, MeetFlight};
use crate::meet_order::{Claim, ROUNDS, order};
use crate::moment::Moment;
use alloc::vec::Vec;

/// Somebody of a flight.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Who {
    /// One of ours, by the place in the file.
    Ours(usize),
    /// Somebody else's, by the place in [`MeetFlight::others`].
    Other(usize),
}

/// How far a flight is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Running {
    /// The round under way, from 0; [`ROUNDS`] when the flight is over.
    pub round: usize,
    /// How many of the others are through in it.
    pub others_over: usize,
}

/// When one of ours comes to the bar.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Turn {
    /// Attempts until then.
    pub before: u16,
    /// Whether the place is reckoned from weights that nobody told.
    pub about: bool,
    /// The weight, and whether it is not declared yet.
    pub load: Mass,
    /// See `load`.
    pub undeclared: bool,
    /// The attempt, from 0.
    pub round: usize,
}

/// A flight with what is on the cards of ours.
#[derive(Debug, Clone, Copy)]
pub struct Round<'a> {
    /// The day, for the table's rules.
    pub day: &'a MeetDay,
    /// The flight.
    pub flight: &'a MeetFlight,
    /// A card for each of its starters; those that are missing are blank.
    pub cards: &'a [Card],
    /// How far it is.
    pub running: Running,
    /// Now.
    pub now: Moment,
}

impl Round<'_> {
    /// The card of one of ours.
    #[must_use]
    pub fn card(&self, ours: usize) -> Card {
        self.cards.get(ours).copied().unwrap_or_default()
    }

    /// The weight that one of ours is reckoned to lift in a round, and whether it is undeclared.
    fn load(&self, ours: usize, round: usize) -> (Mass, bool) {
        let starter = &self.flight.starters[ours];
        let of = (starter.opener, starter.unit);
        self.card(ours)
            .reckoned(of, round, &self.day.table, self.now)
    }

    /// Everybody in the order of a round, those who are through or have left among them.
    #[must_use]
    pub fn order(&self, round: usize) -> Vec<Who> {
        let flight = self.flight;
        let ours = (0..flight.starters.len()).map(Who::Ours);
        let all: Vec<Who> = ours
            .chain((0..flight.others.len()).map(Who::Other))
            .collect();
        let mut places: Vec<usize> = all.iter().map(|who| self.listed(*who)).collect();
        let mut sorted = Vec::new();
        for round in 0..=round.min(ROUNDS - 1) {
            let claims = all.iter().zip(&places);
            let claims: Vec<Claim> = claims
                .map(|(who, place)| self.claim(*who, round, *place))
                .collect();
            sorted = order(&claims);
            for (place, at) in sorted.iter().enumerate() {
                places[*at] = place;
            }
        }
        sorted.into_iter().map(|at| all[at]).collect()
    }

    fn listed(&self, who: Who) -> usize {
        match who {
            Who::Ours(at) => self.flight.starters[at].before.into(),
            Who::Other(at) => self.flight.others[at].place.into(),
        }
    }

    fn claim(&self, who: Who, round: usize, place: usize) -> Claim {
        match who {
            Who::Ours(at) => Claim {
                load: self.load(at, round).0,
                lot: self.card(at).lot.or(self.flight.starters[at].lot),
                place,
            },
            Who::Other(at) => {
                let other = &self.flight.others[at];
                Claim {
                    load: usual(other.opener, round),
                    lot: other.lot,
                    place,
                }
            }
        }
    }

    /// Who is still to lift in the round under way, first up first.
    #[must_use]
    pub fn to_come(&self) -> Vec<Who> {
        let Running { round, others_over } = self.running;
        if round >= ROUNDS {
            return Vec::new();
        }
        let mut through = others_over;
        let mut order = self.order(round);
        order.retain(|who| match who {
            Who::Ours(at) => self.card(*at).round() == round,
            Who::Other(_) if through > 0 => {
                through -= 1;
                false
            }
            Who::Other(_) => true,
        });
        order
    }

    /// Whoever of ours the bar is loaded for, if the flight has begun.
    #[must_use]
    pub fn at_bar(&self) -> Option<usize> {
        match self.to_come().first() {
            Some(Who::Ours(at)) => Some(*at),
            Some(Who::Other(_)) | None => None,
        }
    }

    /// How far it is with nobody to come in a round left behind.
    #[must_use]
    pub fn onwards(mut self) -> Running {
        while self.running.round < ROUNDS && self.to_come().is_empty() {
            self.running = Running {
                round: self.running.round + 1,
                others_over: 0,
            };
        }
        self.running
    }

    /// When one of ours comes to the bar next; `None` when all attempts are over.
    #[must_use]
    pub fn turn(&self, ours: usize) -> Option<Turn> {
        let round = self.card(ours).round();
        if round >= ROUNDS || round > self.running.round + 1 {
            return None;
        }
        let to_come = self.to_come();
        let find = |all: &[Who]| all.iter().position(|who| *who == Who::Ours(ours));
        let before = match find(&to_come) {
            Some(before) => before,
            None => to_come.len() + find(&self.next_round())?,
        };
        let (load, undeclared) = self.load(ours, round);
        Some(Turn {
            before: u16::try_from(before).unwrap_or(u16::MAX),
            about: self.is_about(round),
            load,
            undeclared,
            round,
        })
    }

    /// Attempts until the flight is over, as far as can be seen: everybody who is in it comes to the bar in
    /// every round.
    #[must_use]
    pub fn left(&self) -> u16 {
        let ours = 0..self.flight.starters.len();
        let round = self.running.round;
        let stays = ours.filter(|at| self.card(*at).round() < ROUNDS).count();
        let rounds = (ROUNDS - 1).saturating_sub(round);
        let to_come = self.to_come().len();
        let left = to_come + rounds * (stays + self.flight.others.len());
        u16::try_from(left).unwrap_or(u16::MAX)
    }

    /// Everybody of the round after this one, as far as can be seen.
    fn next_round(&self) -> Vec<Who> {
        let round = self.running.round + 1;
        let mut order = self.order(round);
        order.retain(|who| match who {
            Who::Ours(at) => self.card(*at).round() <= round,
            Who::Other(_) => true,
        });
        order
    }

    /// Whether a place in a round rests on weights that nobody told: later attempts of others, and
    /// openers of others once ours are not as in the file, or where only their number is known.
    fn is_about(&self, round: usize) -> bool {
        let others = &self.flight.others;
        let moved = self
            .cards
            .iter()
            .any(|card| card.attempts[0].declared.is_some() || card.lot.is_some());
        let untold = others.iter().any(|other| !other.told);
        !others.is_empty() && (round > 0 || (untold && (moved || self.flight.counted)))
    }

    /// How it stands for one of ours who declares; `begins_in_s` until the flight begins, where it
    /// has not.
    #[must_use]
    pub fn table(&self, ours: usize, begun: bool, begins_in_s: Option<u32>) -> AtTable {
        AtTable {
            loaded: begun && self.at_bar() == Some(ours),
            begun,
            begins_in_s,
        }
    }
}
