//! The page of a meet or test day: what to take when, counted back and moved along by taps.
//!
//! Refuses: to know a federation's rules; the caution says whom to ask.
use crate::language::{Language, Phrase, c, p};
use crate::meet_due::OfFlight;
use crate::meet_log::{MEET_LOG, MeetLog, Progress, Step};
use crate::scene::Scene;
use crate::tap::Tap;
use crate::words::minutes;
use domain::meet_card::Judged;
use domain::meet_day::{MeetDay, MeetFlight, Starter};
use domain::meet_order::ROUNDS;
use domain::meet_round::Turn;
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
    /// "a minute earlier"; "no lift" while the bar is loaded for one of ours.
    pub sooner: String,
    /// Whether the bar is loaded for one of ours, so that [`Self::sooner`] and [`Self::main`] judge.
    pub judges: bool,
    /// "a minute later".
    pub later: String,
    /// The main button: "flight begins", "attempt over", "good lift", "next flight", or empty.
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
    /// "kg × 2"; "kg, opener"; "kg, second attempt".
    pub set: String,
    /// "3:20"; empty for now.
    pub left: String,
    /// "in" before it, or "now".
    pub when: String,
    /// "each side 25 · 25 · 10"; empty for an opener, which the platform loads.
    pub plates: String,
    /// "after attempt 14"; "after about attempt 14" where others' weights are not known.
    pub after: String,
    /// Whether it is now.
    pub due: bool,
}

/// The attempts, each with its weight or unit.
const ATTEMPTS: [Phrase<1>; ROUNDS] = [c::T_OPENER, c::T_SECOND, c::T_THIRD];
/// The most calls that are shown.
pub const CALLS_MAX: usize = 3;

/// A call with what a tap on it means.
struct Coming {
    in_s: u32,
    /// Whose it is.
    starter: usize,
    /// Whether it is of the next flight.
    ahead: bool,
    /// How many warm-ups they are through once it is taken; `None` for an attempt.
    taken: Option<u8>,
    call: MeetCall,
}

pub(crate) fn log(scene: &Scene<'_>, day: &MeetDay) -> MeetLog {
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
    let coming = coming(scene, day, flight, &log);
    let (main, main_detail) = main(say, day, &progress, scene.now);
    let judges = progress.at_bar(day, scene.now).is_some();
    MeetPage {
        title: day.name.clone(),
        hint: hint(say, day, flight, &progress, scene.now),
        empty: if coming.is_empty() {
            results(say, flight, &progress)
        } else {
            String::new()
        },
        calls: coming.into_iter().map(|c| c.call).take(CALLS_MAX).collect(),
        sooner: say.say(if judges { c::T_NO_LIFT } else { c::T_SOONER }),
        judges,
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
    if progress.begun.is_none() {
        return say.fill(c::T_NOT_BEGUN, &[&lift]);
    }
    let round = progress.running.round;
    let lift = match round {
        0 => lift,
        _ => {
            let shown = (round + 1).min(ROUNDS).to_string();
            say.fill(c::T_ROUND, &[&lift, &shown])
        }
    };
    let whole = progress.flight_of(flight.attempt_s, 0, 0, now);
    let (over, all) = progress.attempts(day, now);
    say.fill(
        c::T_OVER,
        &[
            &lift,
            &over.to_string(),
            &all.to_string(),
            &whole.pace_s().to_string(),
        ],
    )
}

/// The main button and what stands under it.
fn main(say: Language, day: &MeetDay, progress: &Progress, now: Moment) -> (String, String) {
    if progress.begun.is_none() {
        return (say.say(c::T_BEGIN), String::new());
    }
    if let Some(round) = progress.round(day, now)
        && let Some(at) = round.at_bar()
        && let Some(starter) = round.flight.starters.get(at)
        && let Some(turn) = round.turn(at)
    {
        // Whose and which, so that of two alike each is another face to a finger that taps again.
        let load = say.mass(turn.load, starter.unit);
        let which = say.fill(ATTEMPTS[turn.round.min(ROUNDS - 1)], &[&load]);
        return (say.say(c::T_GOOD), format!("{which}, {}", starter.lifter));
    }
    if progress.goes_on(day) {
        let (over, all) = progress.attempts(day, now);
        let of = [over + 1, all].map(|n| n.to_string());
        let detail = say.fill(p::OF, &[&of[0], &of[1]]);
        return (say.say(c::T_ATTEMPT_OVER), detail);
    }
    match day.flights.get(progress.flight + 1) {
        Some(next) => (say.say(c::T_NEXT_FLIGHT), say.shipped(&next.lift)),
        None => (String::new(), String::new()),
    }
}

/// What ours did in a flight in which nothing comes any more.
fn results(say: Language, flight: &MeetFlight, progress: &Progress) -> String {
    let best = |(at, starter): (usize, &Starter)| {
        let card = progress.card(at);
        let best = card.best(starter.opener, starter.unit);
        match best {
            Some(best) => format!("{} {}", starter.lifter, say.mass(best, starter.unit)),
            None => say.fill(c::T_WITHOUT, &[&starter.lifter]),
        }
    };
    let all: Vec<String> = flight.starters.iter().enumerate().map(best).collect();
    format!("{}\n{}", say.say(c::T_NOTHING_COMES), all.join(" · "))
}

/// Seconds until a flight begins by the clock, on its day.
pub(crate) fn begins_in_s(scene: &Scene<'_>, day: &MeetDay, flight: &MeetFlight) -> Option<u32> {
    let (start, time) = (flight.start?, scene.time?);
    let left = (start - time).num_seconds();
    u32::try_from(left).ok().filter(|_| scene.date == day.date)
}

/// Everything that comes in this flight, soonest first.
fn coming<'d>(
    scene: &Scene<'_>,
    day: &'d MeetDay,
    flight: &'d MeetFlight,
    log: &MeetLog,
) -> Vec<Coming> {
    let (say, progress) = (scene.language(), log.now());
    let next = day.flights.get(progress.flight + 1);
    let flights = [(false, Some(flight)), (true, next)];
    let mut all = Vec::new();
    let of_flight = |(ahead, flight): (bool, Option<&'d MeetFlight>)| {
        let flight = flight?;
        let begins_in_s = begins_in_s(scene, day, flight).unwrap_or_default();
        let starters = flight.starters.iter().enumerate();
        Some(starters.map(move |(number, starter)| OfFlight {
            day,
            flight,
            number,
            starter,
            begins_in_s,
            ahead,
        }))
    };
    for of in flights.into_iter().filter_map(of_flight).flatten() {
        let (number, starter) = (of.number, of.starter);
        let Some((turn, stands)) = of.turn(&progress, scene.now) else {
            continue;
        };
        let call = of.due(log, scene.now);
        for warm_up in call.iter().flat_map(|call| &call.timed.warm_ups) {
            let rungs = call.as_ref().map(|call| &call.built.rungs[..]);
            let number_of = usize::from(warm_up.number);
            let Some(rung) = rungs.and_then(|rungs| rungs.get(number_of)) else {
                continue;
            };
            all.push(Coming {
                in_s: warm_up.in_s,
                starter: number,
                ahead: of.ahead,
                taken: Some(warm_up.number + 1),
                call: MeetCall {
                    lifter: starter.lifter.clone(),
                    load: say.mass_number(rung.load, starter.unit),
                    set: format!("{} × {}", starter.unit.word(), rung.reps),
                    plates: plates(say, &rung.per_side, starter.unit),
                    after: after(say, warm_up.after_attempts, false),
                    ..when(say, warm_up.in_s)
                },
            });
        }
        if of.ahead {
            // What they declare is for their own flight.
            continue;
        }
        all.push(Coming {
            in_s: stands.opener_in_s(),
            starter: number,
            ahead: false,
            taken: None,
            call: attempt(say, starter, &turn, stands.opener_in_s(), stands.before),
        });
    }
    all.sort_by_key(|coming| coming.in_s);
    // Whoever the bar is loaded for stands first, whatever the minutes say.
    let at_bar = progress.at_bar(day, scene.now);
    all.sort_by_key(|coming| coming.taken.is_some() || at_bar != Some(coming.starter));
    all
}

/// The call of an attempt.
fn attempt(say: Language, starter: &Starter, turn: &Turn, in_s: u32, before: u16) -> MeetCall {
    let which = ATTEMPTS[turn.round.min(ROUNDS - 1)];
    let plates = if turn.undeclared {
        say.say(c::T_UNDECLARED)
    } else {
        String::new()
    };
    MeetCall {
        lifter: starter.lifter.clone(),
        load: say.mass_number(turn.load, starter.unit),
        set: say.fill(which, &[starter.unit.word()]),
        after: after(say, before, turn.about),
        plates,
        ..when(say, in_s)
    }
}

fn after(say: Language, attempts: u16, about: bool) -> String {
    let phrase = if about { c::T_AFTER_ABOUT } else { c::T_AFTER };
    say.fill(phrase, &[&attempts.to_string()])
}

/// Whose attempt is the `at`th call that is shown, if it is one.
pub(crate) fn starter_at(scene: &Scene<'_>, at: usize) -> Option<usize> {
    let day = scene.meet?;
    let log = log(scene, day);
    let flight = day.flights.get(log.now().flight)?;
    let shown = coming(scene, day, flight, &log);
    let call = shown.into_iter().take(CALLS_MAX).nth(at)?;
    call.taken.is_none().then_some(call.starter)
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
    let at_bar = log.now().at_bar(day, scene.now);
    let judged = |judged| at_bar.map(|starter| Step::Judged(starter, judged));
    let after = match tap {
        Tap::Undo => log.undone()?,
        Tap::Main => log.after(day, judged(Judged::Good).unwrap_or(Step::On), scene.now)?,
        Tap::Sooner => {
            let step = judged(Judged::NoLift).unwrap_or(Step::Sooner);
            log.after(day, step, scene.now)?
        }
        Tap::Later => log.after(day, Step::Later, scene.now)?,
        Tap::Row(at) => {
            let flight = day.flights.get(log.now().flight)?;
            let shown = coming(scene, day, flight, &log);
            let call = shown.into_iter().take(CALLS_MAX).nth(*at)?;
            let step = if call.ahead {
                Step::TakenAhead
            } else {
                Step::Taken
            };
            log.after(day, step(call.starter, call.taken?), scene.now)?
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
    Some(kept(&after, day))
}

/// The command that keeps a log.
pub(crate) fn kept(log: &MeetLog, day: &MeetDay) -> Command {
    Command::TakeFile {
        name: MEET_LOG.into(),
        text: log.write(day),
    }
}
