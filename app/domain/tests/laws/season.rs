//! Seasons of rude lifters, seeded. They come late or not for months, fall ill, get hurt, lift
//! another load than was due, cut sessions short, come twice a day, do two tracks of one lift; the
//! coach rules mid-way, plans lighter weeks and writes pounds among kilos.
use crate::dice::Dice;
use crate::judge::{Broken, Entry, How, Judge, Seen};
use chrono::{Days, NaiveDate};
use domain::event::LiftNo;
use domain::next::outing::{Kept, Outing, Went};
use domain::next::{Decision, FamilyTime, Ill, Limits, Rule, Season, Step, decide};
use domain::solve::loads::Loads;
use domain::solve::{Equipment, PairKind};
use domain::{Length, Mass, MassUnit, Moment};

/// Spacings of programmes, in days.
const SPACINGS: [u16; 5] = [2, 7, 14, 32, 60];
/// Trainings of a season, at most.
const TRAININGS: u16 = 40;

/// One lifter's season.
pub(crate) struct Life {
    pub(crate) rule: Rule,
    pub(crate) limits: Limits,
    pub(crate) spacing: u16,
    pub(crate) loads: Loads,
    /// What the plates make, whatever the lift is rounded to: coaches write what they like.
    pub(crate) written: Loads,
    /// Work sets and reps asked.
    pub(crate) work: (u8, u8),
    /// Outings by track; all tracks are of one family.
    pub(crate) tracks: Vec<Vec<Outing>>,
    pub(crate) family: Vec<FamilyTime>,
    pub(crate) ill: Vec<Ill>,
    pub(crate) hurt: Option<NaiveDate>,
    pub(crate) today: NaiveDate,
}

impl Life {
    fn new(dice: &mut Dice) -> Self {
        let step = match dice.roll(3) {
            0 => Step::Mass(Mass::of(MassUnit::Kg, i64::from(dice.roll(8) + 1) * 1_250)),
            1 => Step::Share(500),
            _ => Step::Share(250),
        };
        let rule = Rule {
            step,
            tries: tenth(dice, 1, 3),
            moved_tries: tenth(dice, 1, 2),
            drops: tenth(dice, 0, 2),
            ..Rule::SHIPPED
        };
        let spacing = dice.pick(&SPACINGS);
        let (loads, written) = loads(dice);
        Self {
            rule,
            limits: Limits::SHIPPED,
            spacing,
            loads,
            written,
            work: (tenth(dice, 1, 5), tenth(dice, 1, 8)),
            tracks: vec![Vec::new(); usize::from(dice.roll(3) + 1)],
            family: Vec::new(),
            ill: Vec::new(),
            hurt: None,
            today: NaiveDate::from_ymd_opt(2026, 1, 5).expect("a day"),
        }
    }

    fn season(&self) -> Season<'_> {
        Season {
            rule: self.rule,
            limits: self.limits,
            spacing_days: self.spacing,
            family: &self.family,
            ill: &self.ill,
            hurt: self.hurt,
            loads: &self.loads,
        }
    }

    /// What is due of a track on a day, and whether it waits for the coach.
    pub(crate) fn due(&self, track: usize, date: NaiveDate) -> Option<(Decision, bool)> {
        let season = self.season();
        let standing = decide(&season, &self.tracks[track])?;
        let due = standing.on(&season, &self.family, date);
        let asked = due.why.asks_coach() || standing.decision.why.asks_coach();
        Some((due, asked))
    }

    fn forward(&mut self, days: u16) {
        self.today = self.today + Days::new(days.into());
    }

    fn moment(&self) -> Moment {
        let midnight = self.today.and_hms_opt(0, 0, 0).expect("midnight").and_utc();
        let minutes = i64::try_from(self.family.len()).expect("few") % 1_000;
        Moment(midnight.timestamp_millis() + minutes * 60_000)
    }
}

/// From `least` to `most`.
fn tenth(dice: &mut Dice, least: u8, most: u8) -> u8 {
    least + u8::try_from(dice.roll(u16::from(most - least) + 1)).expect("small")
}

/// A bar with kilo or pound plates, fine, usual or coarse: what is due of it, in whole steps for one
/// lift in three, and all that it makes.
fn loads(dice: &mut Dice) -> (Loads, Loads) {
    let unit = dice.pick(&[MassUnit::Kg, MassUnit::Kg, MassUnit::Lb]);
    let (bar, plates): (i64, &[i64]) = match (unit, dice.roll(3)) {
        (MassUnit::Kg, 0) => (20_000, &[20_000, 15_000, 10_000, 5_000, 2_500, 1_250, 500]),
        (MassUnit::Kg, 1) => (20_000, &[25_000, 15_000, 10_000, 5_000, 2_500, 1_250]),
        (MassUnit::Kg, _) => (15_000, &[20_000, 10_000, 5_000]),
        (MassUnit::Lb, 0) => (45_000, &[45_000, 25_000, 10_000, 5_000]),
        (MassUnit::Lb, _) => (45_000, &[45_000, 35_000, 25_000, 10_000, 5_000, 2_500]),
    };
    let kind = |thousandths: &i64| PairKind {
        mass: Mass::of(unit, *thousandths),
        pairs: if *thousandths == plates[0] { 8 } else { 1 },
        thickness: Length::ZERO,
        diameter: Length::ZERO,
        handling_ns: 1,
    };
    let equipment = Equipment {
        bar_and_collars: Mass::of(unit, bar),
        sleeve: None,
        big_inside: false,
        plates: plates.iter().map(kind).collect(),
    };
    let made = || Loads::new(&equipment, Mass::of(MassUnit::Kg, 450_000)).expect("few plates");
    let step = dice.one_in(3).then(|| match unit {
        MassUnit::Kg => Mass::of(unit, 2_500 * i64::from(dice.roll(2) + 1)),
        MassUnit::Lb => Mass::of(unit, 5_000 * i64::from(dice.roll(2) + 1)),
    });
    (made().in_steps(step), made())
}

/// Lives one season, and holds each due load against the laws.
pub(crate) fn live(seed: u64, seen: &mut Seen) -> Result<(), Broken> {
    let dice = &mut Dice::new(seed);
    let mut life = Life::new(dice);
    let mut judge = Judge::new(life.tracks.len());
    // How rude: from one who does all that is asked to one for whom little goes to plan.
    let rude = dice.roll(4);
    for _ in 0..TRAININGS {
        pass_time(&mut life, dice, rude);
        let track = usize::from(dice.roll(u16::try_from(life.tracks.len()).expect("few")));
        let due = life.due(track, life.today);
        judge.look(&life, track, due, seen)?;
        let Some(load) = choose(&mut life, dice, due.map(|due| due.0), rude) else {
            continue;
        };
        train(&mut life, &mut judge, dice, (track, load), (due, rude));
    }
    Ok(())
}

/// Until the lifter comes again.
fn pass_time(life: &mut Life, dice: &mut Dice, rude: u16) {
    let usual = (life.spacing / u16::try_from(life.tracks.len()).expect("few")).max(1);
    let days = match dice.roll(20) {
        // Twice in a day.
        0 if rude > 0 => 0,
        1 if rude > 1 => usual + dice.roll(30),
        2 if rude > 1 => usual + 21 + dice.roll(60),
        3 if rude > 2 => usual + 80 + dice.roll(60),
        4 | 5 if rude > 0 => usual + dice.roll(7),
        _ => usual,
    };
    if rude > 0 && dice.one_in(25) {
        // Not the day of the training itself: a break that was is not told anew.
        let from = life.today + Days::new(u64::from(dice.roll(4)) + 1);
        let to = from + Days::new(dice.roll(21).into());
        life.ill.push(Ill { from, to });
    }
    if rude > 1 && life.hurt.is_none() && dice.one_in(40) {
        life.hurt = Some(life.today);
    }
    life.forward(days);
}

/// What is on the bar today: what is due, or what somebody makes of it; `None` for who does not
/// lift.
fn choose(
    life: &mut Life,
    dice: &mut Dice,
    due: Option<Decision>,
    rude: u16,
) -> Option<(Mass, How)> {
    let first = Mass::of(MassUnit::Kg, 30_000 + i64::from(dice.roll(150)) * 1_000);
    let Some(decision) = due else {
        return Some((life.written.nearest(first)?, How::Coach));
    };
    let Some(load) = decision.due() else {
        // The hurt lift nothing until the coach has ruled; others begin anew, well below.
        if life.hurt.is_some() {
            if dice.one_in(2) {
                life.hurt = None;
            }
            return None;
        }
        let half = Mass::from_ng(decision.from.ng() / 2);
        return Some((life.written.nearest(half)?, How::Coach));
    };
    let some = |percent: i64| {
        let wanted = Mass::from_ng(load.ng() / 100 * percent);
        life.written.nearest(wanted).filter(|found| *found != load)
    };
    let chosen = match dice.roll(24) {
        0 | 1 if rude > 0 => some(60 + i64::from(dice.roll(20))).map(|load| (load, How::Coach)),
        2 if rude > 1 => some(104).map(|load| (load, How::Chosen)),
        3 if rude > 1 => some(94).map(|load| (load, How::Chosen)),
        // A plan in the other unit, which these plates make only nearly.
        4 if rude > 2 => Some((Mass::of(MassUnit::Lb, 225_000), How::Coach)),
        _ => None,
    };
    Some(chosen.unwrap_or((load, How::Due)))
}

fn train(
    life: &mut Life,
    judge: &mut Judge,
    dice: &mut Dice,
    (track, (load, how)): (usize, (Mass, How)),
    (due, rude): (Option<(Decision, bool)>, u16),
) {
    let no = LiftNo(u32::try_from(life.family.len()).expect("few") + 1);
    let went = went(life, dice, rude);
    let at = life.moment();
    let mut outing = Outing {
        no,
        date: life.today,
        load,
        sets: life.work.0,
        reps: life.work.1,
        went,
        at_top: !(rude > 0 && dice.one_in(15)),
        hard: false,
        track: None,
        chosen: how == How::Chosen,
        kept: None,
    };
    life.family.push(FamilyTime {
        date: life.today,
        no,
        of: u16::try_from(track).expect("few"),
        moved: went.moved(),
        wrong: went.wrong(),
        at,
    });
    life.tracks[track].push(outing);
    let mut ruled = None;
    if rude > 0 && dice.one_in(12) {
        // The coach rules, up to a fifth more or less.
        let percent = 80 + i64::from(dice.roll(40));
        let wanted = Mass::from_ng(load.ng() / 100 * percent);
        ruled = life.written.nearest(wanted);
    }
    if let Some(load) = ruled {
        outing.kept = Some(Kept {
            load,
            by_coach: true,
            asks: false,
            at,
        });
        *life.tracks[track].last_mut().expect("just done") = outing;
    }
    judge.note(Entry {
        track,
        outing,
        due: due.and_then(|due| due.0.due()),
        asked: due.is_some_and(|due| due.1),
        how,
        ruled,
        light: false,
    });
}

fn went(life: &Life, dice: &mut Dice, rude: u16) -> Went {
    let (sets, reps) = life.work;
    let set = tenth(dice, 1, sets);
    let odds = [u16::MAX, 10, 5, 3][usize::from(rude)];
    if odds == u16::MAX || !dice.one_in(odds) {
        return Went::Well;
    }
    match dice.roll(8) {
        0..=2 => Went::Short {
            set,
            reps: tenth(dice, 0, reps - 1),
        },
        3..=5 => Went::Moved {
            set,
            rep: tenth(dice, 1, reps),
        },
        6 => Went::MovedWarm,
        _ => Went::Cut {
            done: tenth(dice, 0, sets - 1),
        },
    }
}
