//! One lifter's three attempts: what was declared, what became of it, what may be declared next.
//!
//! The figures of [`TableRules::USUAL`] are the IPF Technical Rules', from memory; the meet's file
//! can say others. Refuses: to know what a referee allows beyond them.
use crate::mass::{Mass, MassUnit};
use crate::meet_order::{ROUNDS, part};
use crate::moment::Moment;
use alloc::vec::Vec;

/// What became of an attempt.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Judged {
    /// A good lift.
    Good,
    /// No lift.
    NoLift,
    /// It was passed; nobody came to the bar.
    Passed,
}

/// One attempt.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Attempt {
    /// What was declared, or is declared for the opener otherwise than in the file.
    pub declared: Option<Mass>,
    /// How often it was changed after it was first declared.
    pub changes: u8,
    /// What became of it; `None` before.
    pub judged: Option<Judged>,
    /// When.
    pub at: Moment,
}

/// One lifter's card in a flight.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Card {
    /// The lot number where it was entered or changed on the day.
    pub lot: Option<u16>,
    /// The attempts.
    pub attempts: [Attempt; ROUNDS],
    /// Whether the lifter has left the flight.
    pub out: bool,
}

/// What the table takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TableRules {
    /// Within which a next attempt is to be declared, seconds.
    pub declare_s: u32,
    /// How long before the flight begins the opener can be changed the last time, seconds; with 0
    /// until the bar is loaded for it.
    pub opener_until_s: u32,
    /// How often each attempt can be changed.
    pub changes: [u8; ROUNDS],
}

impl TableRules {
    /// A minute to declare; the opener once, until three minutes before; the second not at all;
    /// the third of a deadlift twice.
    pub const USUAL: Self = Self {
        declare_s: 60,
        opener_until_s: 180,
        changes: [1, 0, 2],
    };
}

/// Why a weight cannot be declared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NotTaken {
    /// The lifter has left, or all attempts are over.
    Over,
    /// The bar is loaded for the lifter.
    Loaded,
    /// The bar does not go down; this is the least.
    Below(Mass),
    /// So many seconds before the flight the openers stand.
    Late(u32),
    /// So many changes are all.
    Changed(u8),
    /// The lot number is not one.
    Lot,
}

/// How the flight stands for somebody who declares.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AtTable {
    /// Whether the bar is loaded for this lifter.
    pub loaded: bool,
    /// Whether the flight has begun.
    pub begun: bool,
    /// Seconds until it begins, where that is known.
    pub begins_in_s: Option<u32>,
}

/// The smallest step of a platform's bar.
#[must_use]
pub const fn least_step(unit: MassUnit) -> Mass {
    match unit {
        MassUnit::Kg => Mass::of(MassUnit::Kg, 2_500),
        MassUnit::Lb => Mass::of(MassUnit::Lb, 5_000),
    }
}

/// What the three attempts are of the third, in hundredths: the opener by 16,785 attempts of
/// public-domain results, the others common practice, no source.
const SHARES: [i64; ROUNDS] = [93, 97, 100];

/// What comes of an opener in a later round, as attempts usually rise: for those whose
/// declarations are not known.
#[must_use]
pub fn usual(opener: Mass, round: usize) -> Mass {
    part(opener, SHARES[round.min(ROUNDS - 1)], SHARES[0])
}

impl Card {
    /// The attempt to come, from 0; [`ROUNDS`] when all are over or the lifter has left.
    #[must_use]
    pub fn round(&self) -> usize {
        if self.out {
            return ROUNDS;
        }
        let done = self.attempts.iter().take_while(|a| a.judged.is_some());
        done.count()
    }

    /// The heaviest good lift.
    #[must_use]
    pub fn best(&self, opener: Mass, unit: MassUnit) -> Option<Mass> {
        let good = (0..ROUNDS).filter(|at| self.attempts[*at].judged == Some(Judged::Good));
        good.map(|at| self.load(opener, unit, at)).max()
    }

    /// Whether the lifter came to the bar three times and has no lift.
    #[must_use]
    pub fn is_without_lift(&self) -> bool {
        let missed = |attempt: &Attempt| attempt.judged == Some(Judged::NoLift);
        self.attempts.iter().all(missed)
    }

    /// The least that can be declared for a round: the bar does not go down, and after a good lift
    /// it goes up.
    #[must_use]
    pub fn least(&self, opener: Mass, unit: MassUnit, round: usize) -> Mass {
        let Some(last) = round.checked_sub(1) else {
            return least_step(unit);
        };
        let load = self.load(opener, unit, last);
        match self.attempts[last].judged {
            Some(Judged::NoLift | Judged::Passed) => load,
            Some(Judged::Good) | None => load + least_step(unit),
        }
    }

    /// The weight of a round: as declared; else what the table takes by itself, which is the least.
    #[must_use]
    pub fn load(&self, opener: Mass, unit: MassUnit, round: usize) -> Mass {
        match (self.attempts[round].declared, round) {
            (Some(declared), _) => declared,
            (None, 0) => opener,
            (None, _) => self.least(opener, unit, round),
        }
    }

    /// The weight that is reckoned with for a round: until it is declared, or the time for that is
    /// over, what is usual; whether it is only reckoned comes with it.
    #[must_use]
    pub fn reckoned(
        &self,
        (opener, unit): (Mass, MassUnit),
        round: usize,
        rules: &TableRules,
        now: Moment,
    ) -> (Mass, bool) {
        if round == 0 || self.attempts[round].declared.is_some() {
            return (self.load(opener, unit, round), false);
        }
        let last = self.attempts[round - 1];
        if last.judged.is_some() && last.at.seconds_until(now) >= rules.declare_s {
            return (self.load(opener, unit, round), false);
        }
        // After a good lift what is usual, after none the same again.
        let at = usize::from(last.judged.is_none_or(|judged| judged == Judged::Good));
        let offers = self.offers(opener, unit, round);
        (offers.get(at).copied().unwrap_or_default(), true)
    }

    /// Three weights for a round, lightest first: after a good lift the least, what is usual and
    /// as much again; after none the same, and one and two steps more. For the opener a step to
    /// either side. Whole steps of the platform's bar.
    #[must_use]
    pub fn offers(&self, opener: Mass, unit: MassUnit, round: usize) -> Vec<Mass> {
        let step = least_step(unit);
        if round == 0 {
            let now = self.load(opener, unit, 0);
            let around = [now - step, now, now + step];
            return around.into_iter().filter(|load| *load >= step).collect();
        }
        let up = |load: Mass| {
            let over = load.ng().rem_euclid(step.ng());
            if over == 0 {
                load
            } else {
                load + step - Mass::from_ng(over)
            }
        };
        let least = self.least(opener, unit, round);
        let from = self.load(opener, unit, round - 1);
        let above = up(least + Mass::from_ng(1));
        let missed = matches!(
            self.attempts[round - 1].judged,
            Some(Judged::NoLift | Judged::Passed)
        );
        if missed {
            return [least, above, above + step].into();
        }
        let rise = part(from, SHARES[round] - SHARES[round - 1], SHARES[round - 1]);
        let down = |load: Mass| Mass::from_ng(load.ng() / step.ng() * step.ng());
        let usual = down(from + rise).max(up(least) + step);
        let bold = down(from + rise + rise).max(usual + step);
        [up(least), usual, bold].into()
    }

    /// The card with a weight declared for the attempt to come.
    ///
    /// # Errors
    /// [`NotTaken`] with the limit; the card stays as it was.
    pub fn declare(
        &self,
        (opener, unit): (Mass, MassUnit),
        load: Mass,
        rules: &TableRules,
        table: AtTable,
    ) -> Result<Self, NotTaken> {
        let round = self.round();
        if round >= ROUNDS {
            return Err(NotTaken::Over);
        }
        let least = self.least(opener, unit, round);
        if load < least {
            return Err(NotTaken::Below(least));
        }
        self.may_change(rules, table)?;
        let mut card = *self;
        let attempt = &mut card.attempts[round];
        if attempt.declared == Some(load)
            || (round == 0 && attempt.declared.is_none() && load == opener)
        {
            return Ok(card);
        }
        let first = round > 0 && attempt.declared.is_none();
        attempt.changes = attempt.changes.saturating_add(u8::from(!first));
        attempt.declared = Some(load);
        Ok(card)
    }

    /// Whether the attempt to come can be declared or changed now.
    ///
    /// # Errors
    /// [`NotTaken`] with the limit.
    pub fn may_change(&self, rules: &TableRules, table: AtTable) -> Result<(), NotTaken> {
        let round = self.round();
        if round >= ROUNDS {
            return Err(NotTaken::Over);
        }
        if table.loaded {
            return Err(NotTaken::Loaded);
        }
        let attempt = &self.attempts[round];
        let until = rules.opener_until_s;
        let late = table.begun || table.begins_in_s.is_some_and(|left| left < until);
        if round == 0 && until > 0 && late {
            return Err(NotTaken::Late(until));
        }
        let is_change = round == 0 || attempt.declared.is_some();
        if is_change && attempt.changes >= rules.changes[round] {
            return Err(NotTaken::Changed(rules.changes[round]));
        }
        Ok(())
    }

    /// The card with the attempt to come judged.
    ///
    /// # Errors
    /// [`NotTaken::Over`] where none is to come.
    pub fn judge(&self, judged: Judged, at: Moment) -> Result<Self, NotTaken> {
        let mut card = *self;
        let round = self.round();
        let attempt = card.attempts.get_mut(round).ok_or(NotTaken::Over)?;
        (attempt.judged, attempt.at) = (Some(judged), at);
        Ok(card)
    }
}
