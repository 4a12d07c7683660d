//! A meet or a test day as it was written: its plates, its flights, who lifts what when.
//!
//! The plates are those of the platform's warm-up room, not the gym's. Refuses: to know a
//! federation's rules; figures without a source are common practice, and each can be written
//! otherwise.
use crate::equipment::{Bar, BarCondition, BarStated, Plate, PlateFace, PlateSet};
use crate::gym::Pattern;
use crate::ladder::{BuiltLadder, WorkSet, build};
use crate::length::Length;
use crate::mass::{Mass, MassUnit};
use crate::meet::{self, Flight, Habit, Taken, Timed, time};
use crate::meet_card::TableRules;
use crate::meet_order::{Listed, reckoned};
use alloc::string::{String, ToString as _};
use alloc::vec::Vec;
use chrono::{NaiveDate, NaiveTime};

/// A meet or a test day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MeetDay {
    /// What it is called.
    pub name: String,
    /// The day.
    pub date: NaiveDate,
    /// The bar of the warm-up room, with its collars.
    pub bar: Bar,
    /// The plates of the warm-up room.
    pub plates: PlateSet,
    /// How warm-ups are spaced.
    pub habit: Habit,
    /// What the table takes.
    pub table: TableRules,
    /// The flights in which somebody of ours lifts, in their order.
    pub flights: Vec<MeetFlight>,
}

/// One flight of one lift.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MeetFlight {
    /// The lift.
    pub lift: String,
    /// How long one attempt is said to take, seconds.
    pub attempt_s: u32,
    /// When it begins by the clock, where that is written.
    pub start: Option<NaiveTime>,
    /// Ours in it, in the order of the file.
    pub starters: Vec<Starter>,
    /// Everybody else in it.
    pub others: Vec<Other>,
    /// Whether of the others the number alone is known.
    pub counted: bool,
}

/// Somebody of another gym.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Other {
    /// The opener: as told, else reckoned from the list.
    pub opener: Mass,
    /// Whether it was told.
    pub told: bool,
    /// The lot number, where it is known.
    pub lot: Option<u16>,
    /// The place in the list of the first attempts, from 0.
    pub place: u16,
}

/// Somebody on the list of a flight, in the order of the first attempts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Entrant {
    /// One of ours, by the place in the file.
    Ours(usize),
    /// Somebody whose opener was told, with the lot number where it is known.
    Told(Mass, Option<u16>),
    /// Somebody of whom nothing but the place is known.
    Untold,
}

/// One of ours in a flight.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Starter {
    /// Who.
    pub lifter: String,
    /// The opener, as told at the table.
    pub opener: Mass,
    /// The unit that it was told in.
    pub unit: MassUnit,
    /// The lot number, where it is known.
    pub lot: Option<u16>,
    /// Attempts before the opener, counted from the start of the flight, as the file has it.
    pub before: u16,
    /// The warm-ups.
    pub pattern: Pattern,
}

/// What one of ours has to do until the opener.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Call {
    /// The warm-ups with the plates that make them, and the opener as the work set.
    pub built: BuiltLadder,
    /// When.
    pub timed: Timed,
}

/// The bar of a meet where nothing is written: with its collars 25 kg, shaft 28 to 29 mm (IPF
/// Technical Rules, seen in reprints); 415 mm of sleeve (IWF rules, seen in reprints), less the
/// collar.
#[must_use]
pub fn platform_bar() -> Bar {
    Bar {
        name: String::from("platform bar"),
        mass: Mass::of(MassUnit::Kg, 20_000),
        collars: Mass::of(MassUnit::Kg, 5_000),
        shaft_diameter: Length::mm(29),
        sleeve: Length::mm(360),
        condition: BarCondition::Straight,
        rack: None,
        stated: BarStated::default(),
    }
}

/// The plates of a meet where nothing is written: a kilo set of the masses of the IPF Technical
/// Rules up to 25 kg, the largest 450 mm across. Numbers of pairs, thicknesses, the smaller
/// diameters and times: common practice, no source.
#[must_use]
pub fn platform_plates() -> PlateSet {
    let plate = |(grams, pairs, thick, across, ms): (i64, u16, i64, i64, u32)| Plate {
        face: PlateFace {
            mass: Mass::of(MassUnit::Kg, grams),
            unit: MassUnit::Kg,
            thickness: Length::mm(thick),
            diameter: Length::mm(across),
        },
        pairs,
        handling_ms: ms,
    };
    let kinds = [
        (25_000, 6, 27, 450, 8_000),
        (20_000, 1, 23, 450, 8_000),
        (15_000, 1, 21, 400, 6_000),
        (10_000, 1, 21, 325, 6_000),
        (5_000, 1, 22, 228, 4_000),
        (2_500, 1, 16, 190, 4_000),
        (1_250, 1, 12, 160, 4_000),
    ];
    PlateSet {
        name: String::from("platform plates"),
        big_inside: true,
        plates: kinds.map(plate).into(),
        weighed: Vec::new(),
    }
}

impl MeetFlight {
    /// The same with everybody at their places: those whose openers were told stand lighter first, then by
    /// lot, at the places of the list that are theirs; the others' openers are reckoned from them.
    #[must_use]
    pub fn listed(mut self, list: &[Entrant]) -> Self {
        let told = |entrant: &Entrant| -> Listed {
            match *entrant {
                Entrant::Ours(at) => self.starters.get(at).map(|s| (s.opener, s.lot)),
                Entrant::Told(opener, lot) => Some((opener, lot)),
                Entrant::Untold => None,
            }
        };
        let openers: Vec<Listed> = list.iter().map(told).collect();
        let reckoned = reckoned(&openers);
        let places = (0..list.len()).filter(|at| openers[*at].is_some());
        let mut sorted: Vec<usize> = places.clone().collect();
        sorted.sort_by_key(|at| openers[*at].map(|(load, lot)| (load, lot.unwrap_or(u16::MAX))));
        let place_of = |at: usize| u16::try_from(at).unwrap_or(u16::MAX);
        self.others.clear();
        for (place, from) in places.zip(sorted) {
            match list[from] {
                Entrant::Ours(at) => self.starters[at].before = place_of(place),
                Entrant::Told(opener, lot) => self.others.push(Other {
                    opener,
                    told: true,
                    lot,
                    place: place_of(place),
                }),
                Entrant::Untold => {}
            }
        }
        for (place, (opener, lot)) in reckoned.into_iter().enumerate() {
            if openers[place].is_none() {
                self.others.push(Other {
                    opener,
                    told: false,
                    lot,
                    place: place_of(place),
                });
            }
        }
        self
    }

    /// The same with somebody unknown at every place that none of ours has, up to the last of ours.
    #[must_use]
    pub fn filled(self) -> Self {
        let mut list = Vec::new();
        let mut ours: Vec<usize> = (0..self.starters.len()).collect();
        ours.sort_by_key(|at| self.starters[*at].before);
        for at in ours {
            let before = usize::from(self.starters[at].before);
            list.resize(before.max(list.len()), Entrant::Untold);
            list.push(Entrant::Ours(at));
        }
        self.listed(&list)
    }
}

impl MeetDay {
    /// The warm-ups of one starter with the plates of the day, the opener last.
    ///
    /// # Errors
    /// [`meet::Refusal`] when the plates cannot make them, or the opener needs no warm-up that
    /// they can make.
    pub fn warm_ups(&self, starter: &Starter) -> Result<BuiltLadder, meet::Refusal> {
        let work = WorkSet {
            load: starter.opener,
            sets: 1,
            reps: 1,
        };
        build(&work, &starter.pattern, &self.bar, &self.plates).map_err(|refusal| meet::Refusal {
            field: "opener",
            text: refusal.to_string(),
        })
    }

    /// What a starter has to do as the flight stands, with `flight.before` attempts before the
    /// opener.
    ///
    /// # Errors
    /// [`meet::Refusal`] when a figure is out of range.
    pub fn call(
        &self,
        starter: &Starter,
        flight: &Flight,
        taken: &Taken,
    ) -> Result<Call, meet::Refusal> {
        let built = self.warm_ups(starter)?;
        let loads: Vec<Mass> = built.rungs.iter().map(|rung| rung.load).collect();
        let warm_ups = loads.split_last().map_or(&[][..], |(_, warm_ups)| warm_ups);
        let timed = time(flight, &self.habit, warm_ups, starter.opener, taken)?;
        Ok(Call { built, timed })
    }
}
