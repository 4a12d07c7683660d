//! One lifter's card on a meet day: the attempts so far, the next one's three weights with what each
//! needs, the lot number, leaving.
//!
//! Refuses: what the table no longer takes by the meet's file; it says so, and whom to ask.
use crate::aside::Aside;
use crate::language::{Language, c, p};
use crate::list::{List, ListRow, ListState};
use crate::meet_day::{begins_in_s, kept, log};
use crate::meet_log::{Progress, Step};
use crate::meet_typed::CardTyped;
use crate::scene::Scene;
use crate::stage::Stage;
use crate::tap::Tap;
use crate::words::minutes;
use domain::meet_card::{Judged, NotTaken};
use domain::meet_day::{MeetDay, MeetFlight, Starter};
use domain::meet_order::ROUNDS;
use domain::meet_round::Round;
use domain::{Command, Mass};

/// What a row does.
enum Act {
    Nothing,
    Step(Step),
    Type { lot: bool },
}

/// One of ours as the flight stands.
pub(crate) struct Of<'a> {
    day: &'a MeetDay,
    flight: &'a MeetFlight,
    pub(crate) starter: &'a Starter,
    pub(crate) number: usize,
    progress: Progress,
}

pub(crate) fn of<'a>(scene: &Scene<'a>, number: usize) -> Option<Of<'a>> {
    let day = scene.meet?;
    let progress = log(scene, day).now();
    let flight = day.flights.get(progress.flight)?;
    Some(Of {
        day,
        flight,
        starter: flight.starters.get(number)?,
        number,
        progress,
    })
}

/// The card of a starter; empty where there is none any more.
pub(crate) fn card_page(scene: &Scene<'_>, number: usize) -> List {
    let say = scene.language();
    let Some(of) = of(scene, number) else {
        return List::default();
    };
    let lift = say.shipped(&of.flight.lift);
    List {
        title: format!("{}, {lift}", of.starter.lifter),
        hint: hint(scene, &of),
        rows: rows(scene, &of).into_iter().map(|(row, _)| row).collect(),
        main: match of.flight.starters.len() {
            0 | 1 => String::new(),
            all => of.flight.starters[(number + 1) % all].lifter.clone(),
        },
        ..List::default()
    }
}

/// Whether the attempt to come can be declared now.
fn may(scene: &Scene<'_>, of: &Of<'_>, round: &Round<'_>) -> Result<(), NotTaken> {
    let begins = begins_in_s(scene, of.day, of.flight);
    let table = round.table(of.number, of.progress.begun.is_some(), begins);
    round.card(of.number).may_change(&of.day.table, table)
}

/// How it stands with the declaration.
fn hint(scene: &Scene<'_>, of: &Of<'_>) -> String {
    let say = scene.language();
    let Some(round) = of.progress.round(of.day, scene.now) else {
        return String::new();
    };
    let card = round.card(of.number);
    let at = card.round();
    if card.is_without_lift() {
        return say.fill(c::T_WITHOUT, &[&of.starter.lifter]);
    }
    if let Err(why) = may(scene, of, &round) {
        return refused(say, why, of.starter);
    }
    if at == 0 || card.attempts[at].declared.is_some() {
        let made = card.attempts[at].changes;
        let left = of.day.table.changes[at].saturating_sub(made);
        return say.fill(c::T_CHANGES_LEFT, &[&left.to_string()]);
    }
    let since_s = card.attempts[at - 1].at.seconds_until(scene.now);
    let least = card.least(of.starter.opener, of.starter.unit, at);
    let least = say.mass(least, of.starter.unit);
    match of
        .day
        .table
        .declare_s
        .checked_sub(since_s)
        .filter(|left| *left > 0)
    {
        Some(left) => say.fill(c::T_DECLARE_IN, &[&minutes(left), &least]),
        None => say.fill(c::T_BY_ITSELF, &[&least]),
    }
}

/// Why the table does not take a weight, or the hint that it cannot be read.
pub(crate) fn not_taken(scene: &Scene<'_>, of: &Of<'_>, load: Mass) -> String {
    let say = scene.language();
    let begins = begins_in_s(scene, of.day, of.flight);
    let told = of.progress.round(of.day, scene.now).and_then(|round| {
        let table = round.table(of.number, of.progress.begun.is_some(), begins);
        let starter = (of.starter.opener, of.starter.unit);
        let card = round.card(of.number);
        card.declare(starter, load, &of.day.table, table).err()
    });
    told.map_or_else(|| say.say(p::NOT_READ), |why| refused(say, why, of.starter))
}

fn refused(say: Language, why: NotTaken, starter: &Starter) -> String {
    match why {
        NotTaken::Over | NotTaken::Lot => say.say(c::T_CARD_OVER),
        NotTaken::Loaded => say.say(c::T_LOADED),
        NotTaken::Below(least) => say.fill(c::T_BELOW, &[&say.mass(least, starter.unit)]),
        NotTaken::Late(until_s) => say.fill(c::T_LATE, &[&minutes(until_s)]),
        NotTaken::Changed(most) => say.fill(c::T_NO_CHANGE, &[&most.to_string()]),
    }
}

fn rows(scene: &Scene<'_>, of: &Of<'_>) -> Vec<(ListRow, Act)> {
    let say = scene.language();
    let Some(round) = of.progress.round(of.day, scene.now) else {
        return Vec::new();
    };
    let (card, unit) = (round.card(of.number), of.starter.unit);
    let mut rows = Vec::new();
    if card.attempts[0].judged.is_some() {
        let row = ListRow::new(say.say(c::T_SO_FAR), so_far(say, of, &round));
        rows.push((row.state(ListState::Told), Act::Nothing));
    }
    let at = card.round();
    if at >= ROUNDS {
        return rows;
    }
    let which = say.say([c::T_THE_OPENER, c::T_THE_SECOND, c::T_THE_THIRD][at]);
    if may(scene, of, &round).is_ok() {
        let declared = (at == 0 || card.attempts[at].declared.is_some())
            .then(|| card.load(of.starter.opener, unit, at));
        let mut offers = card.offers(of.starter.opener, unit, at);
        offers.extend(declared);
        offers.sort_unstable();
        offers.dedup();
        for load in offers {
            let row = ListRow::new(which.clone(), say.mass(load, unit));
            let row = row.detail(needs(scene, of, &round, load));
            let chosen = declared == Some(load);
            let row = row.state(if chosen {
                ListState::Chosen
            } else {
                ListState::Plain
            });
            rows.push((row, Act::Step(Step::Declared(of.number, load))));
        }
        let row = word(say.say(c::T_ANOTHER));
        rows.push((row, Act::Type { lot: false }));
    } else {
        let load = say.mass(card.load(of.starter.opener, unit, at), unit);
        rows.push((
            ListRow::new(which, load).state(ListState::Told),
            Act::Nothing,
        ));
    }
    if of.progress.begun.is_some() && at == of.progress.running.round {
        for (judgement, judged) in [(c::T_GOOD, Judged::Good), (c::T_NO_LIFT, Judged::NoLift)] {
            let row = word(say.say(judgement));
            rows.push((row, Act::Step(Step::Judged(of.number, judged))));
        }
        if round.at_bar() == Some(of.number) {
            let row = word(say.say(c::T_ANOTHER_FIRST));
            rows.push((row, Act::Step(Step::Other)));
        }
    }
    rows.push((lot_row(say, of), Act::Type { lot: true }));
    let held = |title| {
        let row = word(say.say(title));
        row.detail(say.say(p::HOLD_IT)).state(ListState::Held)
    };
    let passes = Act::Step(Step::Judged(of.number, Judged::Passed));
    rows.push((held(c::T_PASSES), passes));
    rows.push((held(c::T_LEAVES), Act::Step(Step::Out(of.number))));
    rows
}

/// A row that is a word alone, as large as figures are: it is read from where the bar stands.
fn word(word: String) -> ListRow {
    ListRow::new(String::new(), word)
}

/// "200 good · 207.5 no lift".
fn so_far(say: Language, of: &Of<'_>, round: &Round<'_>) -> String {
    let card = round.card(of.number);
    let word = |judged| match judged {
        Judged::Good => say.say(c::T_WAS_GOOD),
        Judged::NoLift => say.say(c::T_NO_LIFT),
        Judged::Passed => say.say(c::T_PASSED),
    };
    let done = (0..ROUNDS).filter_map(|at| {
        let judged = card.attempts[at].judged?;
        let load = card.load(of.starter.opener, of.starter.unit, at);
        let load = say.mass_number(load, of.starter.unit);
        Some(format!("{load} {}", word(judged)))
    });
    done.collect::<Vec<_>>().join(" · ")
}

/// What a weight needs: its share of the best, and its place in the order of that round.
fn needs(scene: &Scene<'_>, of: &Of<'_>, round: &Round<'_>, load: Mass) -> String {
    let say = scene.language();
    let (starter, lift) = (of.starter, of.flight.lift.as_str());
    let own = scene.gym.lifters.iter().find(|l| l.name == starter.lifter);
    let bests = own.map(|lifter| &lifter.bests[..]).unwrap_or_default();
    let written = bests
        .iter()
        .find(|(of, _)| of == lift)
        .map(|(_, best)| *best);
    let lifted = of
        .progress
        .card(of.number)
        .best(starter.opener, starter.unit);
    let best = written
        .max(scene.state.best(&starter.lifter, lift))
        .max(lifted);
    let share = match best.filter(|best| *best > Mass::ZERO) {
        Some(best) if load > best => {
            say.fill(c::T_NEW_BEST, &[&say.mass(load - best, starter.unit)])
        }
        Some(best) => {
            let percent = i128::from(load.ng()) * 100 / i128::from(best.ng());
            let best = say.mass(best, starter.unit);
            say.fill(c::T_OF_BEST, &[&percent.to_string(), &best])
        }
        None => say.say(c::T_NO_BEST),
    };
    match place(of, round, load) {
        Some((before, about)) => {
            let place = if about { c::T_PLACE_ABOUT } else { c::T_PLACE };
            format!("{share}; {}", say.fill(place, &[&(before + 1).to_string()]))
        }
        None => share,
    }
}

/// How many attempts would come before it, and whether that is reckoned.
fn place(of: &Of<'_>, round: &Round<'_>, load: Mass) -> Option<(u16, bool)> {
    let mut cards = of.progress.cards.clone();
    if cards.len() <= of.number {
        cards.resize(of.number + 1, Default::default());
    }
    let at = cards[of.number].round();
    cards[of.number].attempts.get_mut(at)?.declared = Some(load);
    let with = Round {
        cards: &cards,
        ..*round
    };
    with.turn(of.number).map(|turn| (turn.before, turn.about))
}

fn lot_row(say: Language, of: &Of<'_>) -> ListRow {
    let lot_of = |at: usize| of.progress.card(at).lot.or(of.flight.starters[at].lot);
    let Some(lot) = lot_of(of.number) else {
        return ListRow::new(say.say(c::T_LOT), say.say(c::T_NO_LOT));
    };
    let row = ListRow::new(say.say(c::T_LOT), lot.to_string());
    let same =
        (0..of.flight.starters.len()).find(|at| *at != of.number && lot_of(*at) == Some(lot));
    match same {
        Some(at) => {
            let whose = &of.flight.starters[at].lifter;
            row.detail(say.fill(c::T_SAME_LOT, &[whose]))
                .state(ListState::Amiss)
        }
        None => row,
    }
}

impl Stage {
    /// What a tap on a card means.
    pub(crate) fn tap_card(
        &mut self,
        scene: &Scene<'_>,
        number: usize,
        tap: &Tap,
    ) -> Option<Command> {
        let of = of(scene, number)?;
        let ours = of.flight.starters.len();
        if *tap == Tap::Main && ours > 1 {
            self.aside = Some(Aside::Card((number + 1) % ours));
            return None;
        }
        let Tap::Row(at) = tap else { return None };
        match rows(scene, &of).into_iter().nth(*at)?.1 {
            Act::Nothing => None,
            Act::Step(step) => keep(scene, &of, step),
            Act::Type { lot } => {
                self.aside = Some(Aside::CardTyping(CardTyped::new(number, lot)));
                None
            }
        }
    }
}

pub(crate) fn keep(scene: &Scene<'_>, of: &Of<'_>, step: Step) -> Option<Command> {
    let round = of.progress.round(of.day, scene.now)?;
    if matches!(step, Step::Declared(..)) && may(scene, of, &round).is_err() {
        return None;
    }
    let after = log(scene, of.day).after(of.day, step, scene.now)?;
    Some(kept(&after, of.day))
}
