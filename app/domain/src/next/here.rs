//! Next time with the bar and plates of a lifter's rack. Refuses: lifts and racks that the gym
//! does not have.
use super::made::made;
use super::outing::Outing;
use super::outings::outings;
use super::spacing::spacing;
use super::{Decided, Due, FamilyTime, Ill, Limits, NextTime, Rule, Season, decide};
use crate::gym::Gym;
use crate::ladder::equipment;
use crate::lift_bar::loaded_with;
use crate::lift_no::LiftNo;
use crate::lifter::Lifter;
use crate::mass::Mass;
use crate::past::PastOuting;
use crate::prescription::Prescription;
use crate::solve::loads::Loads;
use crate::state::{LiftRun, State};
use crate::track::Track;
use alloc::collections::{BTreeMap, BTreeSet};
use alloc::string::String;
use alloc::vec::Vec;
use chrono::{Days, NaiveDate};

/// What is asked about: a lift in a track, and the bar that it is to be made of.
#[derive(Debug, Clone, Copy)]
pub struct TrackOf<'a> {
    /// The lift.
    pub lift: &'a str,
    /// The track.
    pub track: Track,
    /// The bar, by its name; the lift's own where nobody says another, or it is gone.
    pub bar: Option<&'a str>,
}

impl<'a> TrackOf<'a> {
    /// What a row asks about.
    #[must_use]
    pub fn row(row: &'a Prescription) -> Self {
        Self {
            lift: &row.lift,
            track: row.track(),
            bar: row.bar.as_deref(),
        }
    }
}

/// What is due on `date` for a lifter's lift in a track, from all that was done before;
/// `None` the first time, or when the gym misses something. What was recorded stands, so that a
/// rule that the coach changes counts from the next outing on; what holds of it on the day, a break
/// or another pull's moved back, is said by the rule of now.
#[must_use]
pub fn decision(
    gym: &Gym,
    state: &State,
    lifter: &Lifter,
    of: TrackOf<'_>,
    date: NaiveDate,
) -> Option<Due> {
    let past = of_track(outings(state, &lifter.name, of.lift, date), of.track);
    let last = past.last()?;
    let around = Around::of(gym, state, lifter, of, &past, date)?;
    let season = around.season();
    let mut standing = decide(&season, &past)?;
    let recorded = state.lifts.get(&last.no).and_then(|run| run.next.as_ref());
    let due = match recorded {
        Some(next) => next.due(),
        None => Due::by_rule(standing.decision),
    };
    standing.decision = due.decision;
    let decision = made(standing.on(&season, &around.family, date), &season);
    Some(Due {
        decision,
        asks: due.asks || decision.why.asks_coach(),
        ..due
    })
}

/// What the rules give after a lift that is over, to be recorded; `None` when nothing follows
/// from it or the gym misses something.
#[must_use]
pub fn decided(gym: &Gym, state: &State, run: &LiftRun) -> Option<Decided> {
    let this = Outing::of(run).filter(|_| run.is_over())?;
    let sheet = &run.sheet;
    let lifter = gym.lifters.iter().find(|l| l.name == sheet.lifter)?;
    let day_after = sheet.date.checked_add_days(Days::new(1))?;
    let mut past = outings(state, &sheet.lifter, &sheet.lift, day_after);
    past.retain(|outing| (outing.date, outing.no) <= (this.date, this.no));
    let past = of_track(past, this.track());
    let of = TrackOf {
        lift: &sheet.lift,
        track: this.track(),
        bar: Some(&sheet.bar.name),
    };
    let around = Around::of(gym, state, lifter, of, &past, day_after)?;
    let season = around.season();
    let decision = decide(&season, &past)?.decision;
    Some(Decided {
        rule: season.rule,
        decision,
        reason: decision.sentence(sheet.unit),
    })
}

/// What is around one lift of one lifter, as the gym and the record have it.
struct Around {
    rule: Rule,
    limits: Limits,
    spacing_days: u16,
    family: Vec<FamilyTime>,
    ill: Vec<Ill>,
    hurt: Option<NaiveDate>,
    loads: Loads,
}

impl Around {
    fn of(
        gym: &Gym,
        state: &State,
        lifter: &Lifter,
        of: TrackOf<'_>,
        past: &[Outing],
        date: NaiveDate,
    ) -> Option<Self> {
        let TrackOf { lift, track, bar } = of;
        let health = state.health.get(&lifter.name);
        Some(Self {
            rule: gym.coaching.rule(&lifter.name, lift),
            limits: gym.coaching.limits(&lifter.name, lift),
            spacing_days: spacing(&gym.coaching, state, lifter, (lift, track), past, date),
            family: family(gym, state, &lifter.name, lift, date),
            ill: health.map(|health| health.ill.clone()).unwrap_or_default(),
            hurt: health
                .and_then(|health| health.hurt.as_ref())
                .map(|hurt| hurt.since),
            loads: loads(gym, lifter, (lift, bar), heaviest(past)?)?,
        })
    }

    fn season(&self) -> Season<'_> {
        Season {
            rule: self.rule,
            limits: self.limits,
            spacing_days: self.spacing_days,
            family: &self.family,
            ill: &self.ill,
            hurt: self.hurt,
            loads: &self.loads,
        }
    }
}

/// What a lifter trained of a lift's family before `date`, oldest first.
fn family(gym: &Gym, state: &State, lifter: &str, lift: &str, date: NaiveDate) -> Vec<FamilyTime> {
    let family_of = |name: &str| gym.lifts.iter().find(|l| l.name == name).map(|l| &l.family);
    let own = family_of(lift);
    let of_it = |name: &str| name == lift || (own.is_some() && family_of(name) == own);
    let runs = state.runs_of(lifter).filter(|run| run.sheet.date < date);
    let late = runs.filter(|run| of_it(&run.sheet.lift)).filter_map(|run| {
        let outing = Outing::of(run)?;
        Some((run.sheet.lift.as_str(), outing, run.last_entry_at()))
    });
    let past = state.past.lifters.get(lifter);
    let past = past.into_iter().flat_map(|kept| {
        let named = |past: &PastOuting| (kept.named(past.lift), past.outing, past.at);
        kept.outings.iter().map(named)
    });
    let past = past.filter(|(lift, outing, _)| outing.date < date && of_it(lift));
    let mut tracks: BTreeMap<(&str, Track), u16> = BTreeMap::new();
    let mut times: Vec<FamilyTime> = past
        .chain(late)
        .map(|(lift, outing, at)| {
            let next = u16::try_from(tracks.len()).unwrap_or(u16::MAX);
            let of = *tracks.entry((lift, outing.track())).or_insert(next);
            FamilyTime {
                date: outing.date,
                no: outing.no,
                of,
                moved: outing.went.moved(),
                wrong: outing.went.wrong(),
                at,
            }
        })
        .collect();
    times.sort_by_key(|time| (time.date, time.no));
    times
}

/// Lifts that are over, from which something follows, and after which nothing was recorded: those
/// of `today`, and of earlier days the last of each lifter's lift in a track. So a lift that
/// ended after midnight, before a power cut or under an older version has its next time too.
#[must_use]
pub fn undecided(state: &State, today: NaiveDate) -> Vec<LiftNo> {
    let mut last = BTreeMap::new();
    let mut open = Vec::new();
    for run in state.lifts.values() {
        let Some(outing) = Outing::of(run) else {
            continue;
        };
        let of = (
            run.sheet.lifter.as_str(),
            run.sheet.lift.as_str(),
            outing.track(),
        );
        let here = (run.sheet.date, run.no);
        let latest = last.entry(of).or_insert(here);
        *latest = here.max(*latest);
        if run.next.is_none() && run.is_over() {
            open.push((of, here));
        }
    }
    let due = |((date, no), latest): ((NaiveDate, LiftNo), Option<&(NaiveDate, LiftNo)>)| {
        (date == today || latest == Some(&(date, no))).then_some(no)
    };
    let open = open.into_iter();
    open.filter_map(|(of, here)| due((here, last.get(&of))))
        .collect()
}

fn of_track(mut past: Vec<Outing>, track: Track) -> Vec<Outing> {
    past.retain(|outing| outing.track() == track);
    past
}

/// The heaviest load that was lifted or is due.
fn heaviest(past: &[Outing]) -> Option<Mass> {
    let each = past
        .iter()
        .map(|o| o.load.max(o.kept.map_or(o.load, |kept| kept.load)));
    each.max()
}

/// The loads of a bar by its name, else of the one that a lifter's lift is done with, and of the
/// plates of their rack, up to well over `heaviest`.
pub(crate) fn loads(
    gym: &Gym,
    lifter: &Lifter,
    (lift, named): (&str, Option<&str>),
    heaviest: Mass,
) -> Option<Loads> {
    let lift = gym.lifts.iter().find(|l| l.name == lift)?;
    let (usual, plates) = loaded_with(gym, lifter, lift)?;
    let there = named.and_then(|name| gym.bars_at(&lifter.rack).find(|bar| bar.name == name));
    let bar = there.unwrap_or(usual);
    let equipment = equipment(bar, plates);
    equipment.check().ok()?;
    let plates: Vec<_> = equipment.plates.iter().map(|plate| plate.mass).collect();
    let plate = plates.into_iter().max().unwrap_or_default();
    let tenth = Mass::from_ng(heaviest.ng() / 10);
    let loads = Loads::new(&equipment, heaviest + tenth + plate.times(2)).ok()?;
    Some(loads.in_steps(lift.step_for(lifter.unit)))
}

/// What is due of one lift in one track.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LiftDue {
    /// The lift.
    pub lift: String,
    /// The track.
    pub track: Track,
    /// The decision, as it stands on the day that was asked about.
    pub due: Due,
    /// What was recorded after the last outing; `None` in an older record.
    pub recorded: Option<NextTime>,
    /// The rule in force now.
    pub rule: Rule,
    /// Outings that it follows from, oldest first.
    pub past: Vec<Outing>,
}

/// All that is due for a lifter on `date`, by the order of the gym's lifts and by track.
#[must_use]
pub fn all_due(gym: &Gym, state: &State, lifter: &Lifter, date: NaiveDate) -> Vec<LiftDue> {
    let mut all = Vec::new();
    for lift in &gym.lifts {
        let past = outings(state, &lifter.name, &lift.name, date);
        let tracks: BTreeSet<Track> = past.iter().map(Outing::track).collect();
        for track in tracks {
            let past = of_track(past.clone(), track);
            let last = past.last().and_then(|last| state.lifts.get(&last.no));
            // Nobody says here what it will be done with: as the last time.
            let of = TrackOf {
                lift: &lift.name,
                track,
                bar: last.map(|run| run.sheet.bar.name.as_str()),
            };
            let due = decision(gym, state, lifter, of, date);
            all.extend(due.map(|due| LiftDue {
                lift: lift.name.clone(),
                track,
                due,
                recorded: last.and_then(|run| run.next.clone()),
                rule: gym.coaching.rule(&lifter.name, &lift.name),
                past,
            }));
        }
    }
    all
}
