//! An invented meet, and a platform that carries a flight through.
use chrono::NaiveDate;
use domain::gym::{Pattern, PatternStep};
use domain::meet::Habit;
use domain::meet_card::{Card, Judged, NotTaken, TableRules};
use domain::meet_day::{Entrant, MeetDay, MeetFlight, Starter, platform_bar, platform_plates};
use domain::meet_round::{Round, Running, Who};
use domain::{Mass, MassUnit, Moment};

pub(crate) const KG: MassUnit = MassUnit::Kg;

pub(crate) fn kg(tenths: i64) -> Mass {
    Mass::of(KG, tenths * 100)
}

pub(crate) fn starter(lifter: &str, opener: Mass, lot: Option<u16>) -> Starter {
    Starter {
        lifter: lifter.into(),
        opener,
        unit: KG,
        lot,
        before: 0,
        pattern: Pattern {
            name: "four".into(),
            steps: [(4_000, 5), (6_000, 3), (7_500, 2), (9_000, 1)]
                .map(|(share, reps)| PatternStep { share, reps })
                .into(),
            already_warm: false,
        },
    }
}

/// Ours and others by opener in tenths of a kilo, and lot.
pub(crate) fn flight(ours: &[(i64, u16)], others: &[(i64, u16)]) -> MeetFlight {
    let lot = |lot: u16| (lot > 0).then_some(lot);
    let starters = ours.iter().enumerate();
    let starters =
        starters.map(|(n, (load, of))| starter(&format!("ours {n}"), kg(*load), lot(*of)));
    let list = (0..ours.len()).map(Entrant::Ours);
    let told = others
        .iter()
        .map(|(load, of)| Entrant::Told(kg(*load), lot(*of)));
    MeetFlight {
        lift: "deadlift".into(),
        attempt_s: 60,
        start: None,
        starters: starters.collect(),
        others: Vec::new(),
        counted: false,
    }
    .listed(&list.chain(told).collect::<Vec<_>>())
}

pub(crate) fn day(flights: Vec<MeetFlight>) -> MeetDay {
    MeetDay {
        name: "Harbour meet".into(),
        date: NaiveDate::from_ymd_opt(2027, 3, 6).expect("a day"),
        bar: platform_bar(),
        plates: platform_plates(),
        habit: Habit::USUAL,
        table: TableRules::USUAL,
        flights,
    }
}

/// Twelve of ours in three flights, eight others in each; lots as drawn over the whole meet.
pub(crate) fn harbour() -> MeetDay {
    let others = |from: i64, lot: u16| -> Vec<(i64, u16)> {
        (0..8_u16)
            .map(|n| (from + 75 * i64::from(n), lot + 3 * n))
            .collect()
    };
    day(vec![
        flight(
            &[(1_000, 7), (1_150, 21), (1_250, 4), (1_250, 30)],
            &others(900, 1),
        ),
        flight(
            &[(1_600, 12), (1_675, 3), (1_750, 33), (1_900, 9)],
            &others(1_500, 2),
        ),
        flight(
            &[(2_000, 15), (2_100, 36), (2_200, 6), (2_500, 18)],
            &others(1_975, 2),
        ),
    ])
}

/// One flight carried through, with what each of ours does.
pub(crate) struct Platform<'a> {
    pub(crate) day: &'a MeetDay,
    pub(crate) flight: &'a MeetFlight,
    pub(crate) cards: Vec<Card>,
    pub(crate) running: Running,
    pub(crate) now: Moment,
    /// Who lifted, in the order of the platform.
    pub(crate) lifted: Vec<(usize, Who)>,
}

impl<'a> Platform<'a> {
    pub(crate) fn new(day: &'a MeetDay, at: usize) -> Self {
        let flight = &day.flights[at];
        Self {
            day,
            flight,
            cards: vec![Card::default(); flight.starters.len()],
            running: Running::default(),
            now: Moment(1_000_000),
            lifted: Vec::new(),
        }
    }

    pub(crate) fn round(&self) -> Round<'_> {
        Round {
            day: self.day,
            flight: self.flight,
            cards: &self.cards,
            running: self.running,
            now: self.now,
        }
    }

    pub(crate) fn of(&self, at: usize) -> (Mass, MassUnit) {
        (self.flight.starters[at].opener, KG)
    }

    pub(crate) fn declare(&mut self, at: usize, load: Mass) -> Result<(), NotTaken> {
        let table = self.round().table(at, self.now > Moment(1_000_000), None);
        let card = self.cards[at].declare(self.of(at), load, &self.day.table, table)?;
        self.cards[at] = card;
        Ok(())
    }

    /// The next attempt; whose it was.
    pub(crate) fn attempt(&mut self, good: bool) -> Option<Who> {
        let who = *self.round().to_come().first()?;
        self.now = self.now.plus_seconds(60);
        self.lifted.push((self.running.round, who));
        match who {
            Who::Ours(at) => {
                let judged = if good { Judged::Good } else { Judged::NoLift };
                self.cards[at] = self.cards[at].judge(judged, self.now).expect("to come");
            }
            Who::Other(_) => self.running.others_over += 1,
        }
        self.running = self.round().onwards();
        Some(who)
    }
}
