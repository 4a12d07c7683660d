//! The page of a meet or test day: what to take when, counted back and moved along by taps.
//!
//! Refuses: to know a federation's rules; the caution says whom to ask.
use crate::language::{Language, c, p};
use crate::meet_due::OfFlight;
use crate::meet_log::{MEET_LOG, MeetLog, Progress, Step};
use crate::scene::Scene;
use crate::tap::Tap;
use crate::words::minutes;
use domain::meet_day::{MeetDay, MeetFlight};
use domain::{Command, MassUnit, Moment, PlateFace};

/// What it shows.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct MeetPage {
    /// "River test day".
    pub title: String,
    /// "deadlift: 13 of 24 attempts over, 52 s each"; "deadlift: not begun".
    pub hint: String,
    /// What comes, soonest first, at most [`CALLS_MAX`]. A tap on the nth says `Row(n)`: taken.
    pub calls: Vec<MeetCall>,
    /// A sentence when nothing comes any more, or empty.
    pub empty: String,
    /// "a minute earlier".
    pub sooner: String,
    /// "a minute later".
    pub later: String,
    /// The main button: "flight begins", "attempt over", "next flight", or empty.
    pub main: String,
    /// More about it: "14 of 24".
    pub main_detail: String,
    /// What a tap on a call means, and whom to ask.
    pub caution: String,
}

/// One warm-up or opener to come.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MeetCall {
    /// Who.
    pub lifter: String,
    /// "140".
    pub load: String,
    /// "kg × 2"; "kg, opener".
    pub set: String,
    /// "3:20"; empty for now.
    pub left: String,
    /// "in" before it, or "now".
    pub when: String,
    /// "each side 25 · 25 · 10"; empty for an opener, which the platform loads.
    pub plates: String,
    /// "after attempt 14".
    pub after: String,
    /// Whether it is now.
    pub due: bool,
}

/// The most calls that are shown.
pub const CALLS_MAX: usize = 3;

/// A call with what a tap on it means.
struct Coming {
    in_s: u32,
    /// The starter whose warm-up it is, and how many they are through once it is taken; `None`
    /// for an opener.
    taken: Option<(usize, u8)>,
    call: MeetCall,
}

fn log(scene: &Scene<'_>, day: &MeetDay) -> MeetLog {
    let kept = scene.state.files.get(MEET_LOG);
    kept.map(|text| MeetLog::read(text, day))
        .unwrap_or_default()
}

/// The page; empty when there is no such day any more.
pub(crate) fn meet_page(scene: &Scene<'_>) -> MeetPage {
    let say = scene.language();
    let Some(day) = scene.meet else {
        return MeetPage::default();
    };
    let log = log(scene, day);
    let progress = log.now();
    let Some(flight) = day.flights.get(progress.flight) else {
        return MeetPage::default();
    };
    let coming = coming(say, day, flight, &log, scene.now);
    let (main, main_detail) = main(say, day, &progress);
    MeetPage {
        title: day.name.clone(),
        hint: hint(say, day, flight, &progress, scene.now),
        empty: if coming.is_empty() {
            say.say(c::T_NOTHING_COMES)
        } else {
            String::new()
        },
        calls: coming.into_iter().map(|c| c.call).take(CALLS_MAX).collect(),
        sooner: say.say(c::T_SOONER),
        later: say.say(c::T_LATER),
        main,
        main_detail,
        caution: say.fill(c::T_TAP, &[&say.say(c::T_CAUTION)]),
    }
}

fn hint(
    say: Language,
    day: &MeetDay,
    flight: &MeetFlight,
    progress: &Progress,
    now: Moment,
) -> String {
    let lift = say.shipped(&flight.lift);
    let Some(starter) = flight.starters.first().filter(|_| progress.begun.is_some()) else {
        return say.fill(c::T_NOT_BEGUN, &[&lift]);
    };
    let mut whole = progress.flight_of(flight.attempt_s, starter, now);
    whole.called = progress.called;
    say.fill(
        c::T_OVER,
        &[
            &lift,
            &progress.called.to_string(),
            &progress.attempts(day).to_string(),
            &whole.pace_s().to_string(),
        ],
    )
}

/// The main button and what stands under it.
fn main(say: Language, day: &MeetDay, progress: &Progress) -> (String, String) {
    let attempts = progress.attempts(day);
    if progress.begun.is_none() {
        return (say.say(c::T_BEGIN), String::new());
    }
    if progress.called < attempts {
        let of = [progress.called + 1, attempts].map(|n| n.to_string());
        let detail = say.fill(p::OF, &[&of[0], &of[1]]);
        return (say.say(c::T_ATTEMPT_OVER), detail);
    }
    match day.flights.get(progress.flight + 1) {
        Some(next) => (say.say(c::T_NEXT_FLIGHT), say.shipped(&next.lift)),
        None => (String::new(), String::new()),
    }
}

/// Everything that comes in this flight, soonest first.
fn coming(
    say: Language,
    day: &MeetDay,
    flight: &MeetFlight,
    log: &MeetLog,
    now: Moment,
) -> Vec<Coming> {
    let called = log.now().called;
    let mut all = Vec::new();
    for (number, starter) in flight.starters.iter().enumerate() {
        let of = OfFlight {
            day,
            flight,
            number,
            starter,
        };
        // Once the attempt of the opener is over there is nothing to call.
        let Some(call) = of.due(log, now).filter(|_| called <= starter.before) else {
            continue;
        };
        let unit = starter.unit;
        for warm_up in &call.timed.warm_ups {
            let Some(rung) = call.built.rungs.get(usize::from(warm_up.number)) else {
                continue;
            };
            let after = say.fill(c::T_AFTER, &[&warm_up.after_attempts.to_string()]);
            all.push(Coming {
                in_s: warm_up.in_s,
                taken: Some((number, warm_up.number + 1)),
                call: MeetCall {
                    lifter: starter.lifter.clone(),
                    load: say.mass_number(rung.load, unit),
                    set: format!("{} × {}", unit.word(), rung.reps),
                    plates: plates(say, &rung.per_side, unit),
                    after,
                    ..when(say, warm_up.in_s)
                },
            });
        }
        let in_s = call.timed.opener_in_s;
        all.push(Coming {
            in_s,
            taken: None,
            call: MeetCall {
                lifter: starter.lifter.clone(),
                load: say.mass_number(starter.opener, unit),
                set: say.fill(c::T_OPENER, &[unit.word()]),
                after: say.fill(c::T_AFTER, &[&starter.before.to_string()]),
                ..when(say, in_s)
            },
        });
    }
    all.sort_by_key(|coming| coming.in_s);
    all
}

fn plates(say: Language, per_side: &[PlateFace], unit: MassUnit) -> String {
    match per_side {
        [] => say.say(p::EMPTY_BAR),
        plates => say.fill(c::T_EACH_SIDE, &[&say.plates(plates, unit)]),
    }
}

/// A call that has only its time.
fn when(say: Language, in_s: u32) -> MeetCall {
    let due = in_s == 0;
    MeetCall {
        lifter: String::new(),
        load: String::new(),
        set: String::new(),
        left: if due { String::new() } else { minutes(in_s) },
        when: say.say(if due { c::T_NOW } else { c::T_IN_WORD }),
        plates: String::new(),
        after: String::new(),
        due,
    }
}

/// Whether a tap can be taken back.
pub(crate) fn can_undo(scene: &Scene<'_>) -> bool {
    let day = scene.meet;
    day.is_some_and(|day| log(scene, day).undone().is_some())
}

/// What a tap on the page means; `None` when it changes nothing.
pub(crate) fn tap_meet(scene: &Scene<'_>, tap: &Tap) -> Option<Command> {
    let day = scene.meet?;
    let log = log(scene, day);
    let after = match tap {
        Tap::Undo => log.undone()?,
        Tap::Main => log.after(day, Step::On, scene.now)?,
        Tap::Sooner => log.after(day, Step::Sooner, scene.now)?,
        Tap::Later => log.after(day, Step::Later, scene.now)?,
        Tap::Row(at) => {
            let flight = day.flights.get(log.now().flight)?;
            let shown = coming(scene.language(), day, flight, &log, scene.now);
            let (starter, count) = shown.into_iter().take(CALLS_MAX).nth(*at)?.taken?;
            log.after(day, Step::Taken(starter, count), scene.now)?
        }
        Tap::Lifter(_)
        | Tap::All
        | Tap::Floor
        | Tap::OtherReps
        | Tap::BackMoved
        | Tap::Number(_)
        | Tap::WentThrough
        | Tap::Skip
        | Tap::Stop
        | Tap::GoOn
        | Tap::SetUp
        | Tap::Settle
        | Tap::Choose(_)
        | Tap::Panel
        | Tap::History
        | Tap::Loaded
        | Tap::Holds
        | Tap::Hold(_)
        | Tap::Answer(_)
        | Tap::TurnPad
        | Tap::Turn(_)
        | Tap::Why
        | Tap::Wake => return None,
    };
    Some(Command::TakeFile {
        name: MEET_LOG.into(),
        text: after.write(day),
    })
}
