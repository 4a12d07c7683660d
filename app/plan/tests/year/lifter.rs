//! An invented lifter whose strength follows a published model of fitness and fatigue.
//!
//! Strength = base * (1 + gain * fitness - 2 * gain * fatigue), both of which take up each session's
//! work and fade by the day with time constants of 42 and 7 days: Banister et al. 1975, figures
//! as in Busso 2003, both from memory. Reps at a load by Epley 1985, from memory:
//! single = load * (1 + reps / 30). How good or bad a day is: common practice, no source.
use crate::dice::Dice;
use domain::event::Hold;
use domain::{Mass, MassUnit};

/// What is left of fitness after a day: e to the minus 1/42.
const FITNESS_KEPT: f64 = 0.976_5;
/// What is left of fatigue after a day: e to the minus 1/7.
const FATIGUE_KEPT: f64 = 0.866_9;

/// How somebody lives.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Kind {
    /// Never misses a day, a rep or the coach's word, and grows with every load.
    Model,
    /// Fails, is ill, travels, leaves early, and now and then the back moves.
    Human,
}

pub(crate) struct Lifter {
    kind: Kind,
    base: f64,
    gain: f64,
    fitness: f64,
    fatigue: f64,
    pub(crate) dice: Dice,
    /// Days until they are back.
    away: u64,
    /// What today is like, in reps.
    today: f64,
}

/// What an absence was.
pub(crate) enum Absent {
    Travels,
    Ill(u64),
}

impl Lifter {
    pub(crate) fn new(kind: Kind, seed: u64) -> Self {
        let mut dice = Dice::new(seed);
        let base = 150.0 + f64::from(dice.roll(16));
        let gain = 0.000_6 + 0.000_05 * f64::from(dice.roll(13));
        Self {
            kind,
            base,
            gain,
            fitness: 0.0,
            fatigue: 0.0,
            dice,
            away: 0,
            today: 0.0,
        }
    }

    /// The deadlift single of now, in kg.
    pub(crate) fn single(&self) -> f64 {
        self.base * (1.0 + self.gain * self.fitness - 2.0 * self.gain * self.fatigue)
    }

    /// A night passes; tells an absence that begins.
    pub(crate) fn sleep(&mut self) -> Option<Absent> {
        self.fitness *= FITNESS_KEPT;
        self.fatigue *= FATIGUE_KEPT;
        self.today = f64::from(self.dice.roll(5)) / 2.0 - 1.0;
        if self.away > 0 {
            self.away -= 1;
            return None;
        }
        if self.kind == Kind::Model {
            return None;
        }
        if self.dice.one_in(240) {
            self.away = 7 + u64::from(self.dice.roll(30));
            return Some(Absent::Travels);
        }
        if self.dice.one_in(180) {
            self.away = 3 + u64::from(self.dice.roll(7));
            return Some(Absent::Ill(self.away));
        }
        None
    }

    /// Whether they come to a day that is theirs.
    pub(crate) fn comes(&mut self) -> bool {
        self.kind == Kind::Model || (self.away == 0 && !self.dice.one_in(12))
    }

    /// Whether they leave before the last set.
    pub(crate) fn leaves(&mut self) -> bool {
        self.kind == Kind::Human && self.dice.one_in(60)
    }

    /// Reps of a work set, the back, and how hard it was as RPE in tenths.
    pub(crate) fn set(
        &mut self,
        lift: &str,
        load: Mass,
        (least, is_open): (u8, bool),
    ) -> (u8, Hold, u8) {
        let kg = load.ng() as f64 / Mass::of(MassUnit::Kg, 1_000).ng() as f64;
        let single = self.single() * of_deadlift(lift);
        let can = match self.kind {
            Kind::Model => f64::from(least) + 2.0,
            Kind::Human => (30.0 * (single / kg - 1.0) + self.today).max(0.0),
        };
        let most = if is_open { 20 } else { least };
        let reps = (0..=most).rev().find(|n| f64::from(*n) <= can).unwrap_or(0);
        let work = f64::from(reps) * (kg / single).min(1.2);
        self.fitness += work / 4.0;
        self.fatigue += work / 4.0;
        let tenths = [100, 95, 90, 85, 80, 75, 70];
        let spare = (0_u8..6)
            .rev()
            .find(|n| f64::from(reps) + f64::from(*n) / 2.0 <= can);
        let effort = tenths[usize::from(spare.unwrap_or(0))];
        let strained = can < f64::from(least) + 0.5;
        let moves = self.kind == Kind::Human
            && reps > 0
            && ((strained && self.dice.one_in(4)) || self.dice.one_in(250));
        let hold = if moves {
            Hold::MovedAt(reps)
        } else {
            Hold::Kept
        };
        (reps, hold, effort)
    }
}

/// Strength in a lift beside the deadlift, common practice, no source.
fn of_deadlift(lift: &str) -> f64 {
    match lift {
        "rack pull" => 1.1,
        "halting deadlift" => 0.9,
        "barbell shrug" => 1.15,
        "power clean" => 0.5,
        _ => 1.0,
    }
}
