//! One flight of meet.toml: ours with opener and lot, the others by name, by weight or by number.
//!
//! Refuses: lifters, lifts and patterns that the gym does not have, a lifter twice in a flight,
//! an opener without a place in the order. Tells as odd, since the table's list counts on the day:
//! two of the same lot, a list against its own weights, an opener over the best.
use crate::coach_names::Names;
use crate::fault::{Wrong, quote};
use crate::fields;
use crate::lifter_file::loads;
use crate::nearest::fold;
use crate::quantity::{mass, time_ms};
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::name;
use crate::words::words;
use chrono::NaiveTime;
use domain::gym::Pattern;
use domain::ladder::shipped_patterns;
use domain::meet::BEFORE_MOST;
use domain::meet_day::{Entrant, MeetFlight, Starter};
use domain::meet_order::{LOT_MOST, spread};
use domain::plausible::UNTRIED_MAX;
use domain::{Gym, Mass, MassUnit};
use std::ops::Range;
use text::keys::checked as k;

/// Most of ours in a flight.
const STARTERS_MAX: usize = 20;
/// What an attempt takes where nothing is said, seconds. Common practice, no source.
const ATTEMPT_S: u32 = 60;

/// Somebody of the list of whom opener or lot is told.
struct Told {
    name: String,
    opener: Mass,
    unit: MassUnit,
    lot: Option<u16>,
    /// Which of ours.
    ours: Option<usize>,
    at: Range<usize>,
}

/// One of ours as written, and whether the place was told by number.
struct Written {
    starter: Starter,
    before: Option<u16>,
    at: Range<usize>,
    before_at: Range<usize>,
    missing: Range<usize>,
}

pub(crate) fn flight(
    doc: &mut Doc<'_>,
    entry: &Entry<'_>,
    gym: Option<&Gym>,
    against: &Names,
) -> Option<MeetFlight> {
    let lift = entry.text(doc, "lift", |text| against.lifts.find(text));
    let attempt = entry.text(doc, "attempt", |text| time_ms(text, &(10_000..=600_000)));
    let start = entry.text(doc, "start", clock);
    let order = entry.texts(doc, "order", usize::from(BEFORE_MOST), name);
    let others = entry.whole(doc, "others", &(0..=BEFORE_MOST));
    let mut told = told_others(doc, entry);
    let mut ours: Vec<Written> = Vec::new();
    let entries = entry.entries(doc, "lifter", STARTERS_MAX, &fields::STARTER);
    if entries.is_empty() && entry.has("lifter") {
        let right = words!(k::WRITE_ONE_FLIGHT_LIFTER_FOR);
        let wrong = Wrong::plain(words!(k::A_FLIGHT_WITH_NONE_OF), right);
        doc.missing(&entry.at_value("lifter"), wrong);
    }
    for entry in entries {
        let Some(written) = starter(doc, &entry, gym, against) else {
            continue;
        };
        let starter = &written.starter;
        if ours
            .iter()
            .any(|other| other.starter.lifter == starter.lifter)
        {
            let read = words!(k::A_SECOND_TIME_IN_THIS, quote(&starter.lifter));
            let wrong = Wrong::plain(read, words!(k::KEEP_ONE_OF_THEM));
            doc.wrong(&entry.at_value("name"), wrong);
        }
        told.push(Told {
            name: starter.lifter.clone(),
            opener: starter.opener,
            unit: starter.unit,
            lot: starter.lot,
            ours: Some(ours.len()),
            at: written.at.clone(),
        });
        over_best(doc, gym, lift.as_deref(), &written);
        ours.push(written);
    }
    let list = places(doc, &ours, &told, &order, others)?;
    same_lots(doc, &told);
    against_weights(doc, &told, &list);
    let counted = order.is_empty() && others.is_some_and(|others| others > 0);
    let flight = MeetFlight {
        lift: lift?,
        attempt_s: attempt.map_or(ATTEMPT_S, |ms| ms / 1_000),
        start,
        starters: ours.into_iter().map(|written| written.starter).collect(),
        others: Vec::new(),
        counted,
    };
    let entrant = |at: &Option<usize>| match at.map(|at| &told[at]) {
        None => Entrant::Untold,
        Some(Told { ours: Some(at), .. }) => Entrant::Ours(*at),
        Some(other) => Entrant::Told(other.opener, other.lot),
    };
    let list: Vec<Entrant> = list.iter().map(entrant).collect();
    Some(flight.listed(&list))
}

/// Those of other gyms whose openers are known.
fn told_others(doc: &mut Doc<'_>, entry: &Entry<'_>) -> Vec<Told> {
    let entries = entry.entries(doc, "other", usize::from(BEFORE_MOST), &fields::OTHER);
    let mut told = Vec::new();
    for entry in entries {
        let called = entry.text(doc, "name", name);
        let opener = entry.text(doc, "opener", |text| mass(text, &loads()));
        let lot = entry.whole(doc, "lot", &(1..=LOT_MOST));
        if let (Some(name), Some((opener, unit))) = (called, opener) {
            let (ours, at) = (None, entry.at_value("opener"));
            told.push(Told {
                name,
                opener,
                unit,
                lot,
                ours,
                at,
            });
        }
    }
    told
}

fn starter(
    doc: &mut Doc<'_>,
    entry: &Entry<'_>,
    gym: Option<&Gym>,
    against: &Names,
) -> Option<Written> {
    let lifter = entry.text(doc, "name", |text| against.lifters.find(text));
    let opener = entry.text(doc, "opener", |text| mass(text, &loads()));
    let lot = entry.whole(doc, "lot", &(1..=LOT_MOST));
    let before = entry.whole(doc, "before", &(0..=BEFORE_MOST));
    let ladder = entry.text(doc, "ladder", |text| against.patterns.find(text));
    let lifter = lifter?;
    let pattern = pattern(gym, &lifter, ladder.as_deref());
    let (opener, unit) = opener?;
    // What could not be read is told already.
    if entry.has("before") && before.is_none() {
        return None;
    }
    Some(Written {
        starter: Starter {
            lifter,
            opener,
            unit,
            lot,
            before: 0,
            pattern,
        },
        before,
        at: entry.at_value("opener"),
        before_at: entry.at_value("before"),
        missing: entry.at().clone(),
    })
}

/// The list in the order of the first attempts, each with its place in `told` where it is there:
/// as the order has it, else by the attempts before each of ours, else spread.
fn places(
    doc: &mut Doc<'_>,
    ours: &[Written],
    told: &[Told],
    order: &[String],
    others: Option<u16>,
) -> Option<Vec<Option<usize>>> {
    let is_named = |name: &str| order.iter().position(|other| fold(other) == fold(name));
    let numbered = ours.iter().any(|written| written.before.is_some());
    // By weight among those who were told, and among so many of whom nothing is known.
    let is_spread = others.is_some() || told.len() > ours.len();
    let mut all_placed = true;
    for written in ours {
        let name = &written.starter.lifter;
        match (written.before, is_named(name)) {
            (Some(told), Some(place)) if usize::from(told) != place => {
                let read = words!(k::ATTEMPTS_BEFORE_WHERE_ORDER_HAS, told, place);
                let right = words!(k::MEND_THE_ORDER_OR_LEAVE);
                doc.wrong(&written.before_at, Wrong::plain(read, right));
                all_placed = false;
            }
            (None, None) if numbered || !order.is_empty() || !is_spread => {
                let read = words!(k::WITHOUT_A_PLACE_IN_THE, quote(name));
                let right = words!(k::WRITE_BEFORE_24_OR_THE);
                doc.missing(&written.missing, Wrong::plain(read, right));
                all_placed = false;
            }
            _ => {}
        }
    }
    if !all_placed {
        return None;
    }
    let find = |name: &String| told.iter().position(|one| fold(&one.name) == fold(name));
    let mut list: Vec<Option<usize>> = order.iter().map(find).collect();
    if list.is_empty() && !numbered {
        return Some(spread_over(told, others.unwrap_or_default()));
    }
    // Ours by their numbers, then whoever else was told, who come to their place by weight.
    let number = |one: &Told| one.ours.and_then(|at| ours[at].before);
    let mut left: Vec<usize> = (0..told.len()).collect();
    left.retain(|at| !list.contains(&Some(*at)));
    left.sort_by_key(|at| number(&told[*at]).unwrap_or(u16::MAX));
    for at in left {
        let place = number(&told[at]).map_or(list.len(), usize::from);
        list.resize(place.max(list.len()), None);
        list.insert(place, Some(at));
    }
    let all = told.len() + usize::from(others.unwrap_or_default());
    list.resize(all.max(list.len()), None);
    Some(list)
}

/// Where only the number of the others is known: ours evenly among them.
fn spread_over(told: &[Told], others: u16) -> Vec<Option<usize>> {
    let mut sorted: Vec<usize> = (0..told.len()).collect();
    sorted.sort_by_key(|at| key(&told[*at]));
    let openers: Vec<_> = told.iter().map(|one| (one.opener, one.lot)).collect();
    let (list, mut sorted) = (spread(&openers, others), sorted.into_iter());
    let entrant = |one: &Option<_>| one.and_then(|_: (Mass, Option<u16>)| sorted.next());
    list.iter().map(entrant).collect()
}

fn key(told: &Told) -> (Mass, u16) {
    (told.opener, told.lot.unwrap_or(u16::MAX))
}

/// Tells two of the same lot number.
fn same_lots(doc: &mut Doc<'_>, told: &[Told]) {
    for (at, one) in told.iter().enumerate() {
        let Some(lot) = one.lot else { continue };
        if let Some(other) = told[..at].iter().find(|other| other.lot == Some(lot)) {
            let (who, whose) = (quote(&one.name), quote(&other.name));
            let read = words!(k::LOT_FOR_WHICH_IS_THE, lot, who, whose);
            let right = words!(k::ASK_THE_TABLE_UNTIL_THEN);
            doc.odd(&one.at, Wrong::plain(read, right));
        }
    }
}

/// Tells a list in which the heavier of two comes first.
fn against_weights(doc: &mut Doc<'_>, told: &[Told], list: &[Option<usize>]) {
    let told: Vec<&Told> = list.iter().flatten().map(|at| &told[*at]).collect();
    for two in told.windows(2).filter(|two| key(two[0]) > key(two[1])) {
        let weight = |one: &Told| one.opener.words(one.unit);
        let read = words!(
            k::WITH_BEFORE_WITH,
            quote(&two[0].name),
            weight(two[0]),
            quote(&two[1].name),
            weight(two[1])
        );
        let right = words!(k::THE_LIGHTER_GOES_FIRST_THEN);
        doc.odd(&two[1].at, Wrong::plain(read, right));
    }
}

/// Tells an opener that is over the lifter's best: nobody opens with what they never lifted.
fn over_best(doc: &mut Doc<'_>, gym: Option<&Gym>, lift: Option<&str>, written: &Written) {
    let starter = &written.starter;
    let own = gym.and_then(|gym| gym.lifters.iter().find(|l| l.name == starter.lifter));
    let bests = own.map(|lifter| &lifter.bests[..]).unwrap_or_default();
    let best = bests.iter().find(|(of, _)| Some(of.as_str()) == lift);
    if own.is_some() && bests.is_empty() && starter.opener > UNTRIED_MAX {
        let opener = starter.opener.words(starter.unit);
        let read = words!(
            k::WHERE_NOTHING_IS_RECORDED_THAT,
            quote(&starter.lifter),
            opener
        );
        let right = words!(k::AN_OPENER_IS_WHAT_THEY);
        doc.odd(&written.at, Wrong::plain(read, right));
    }
    if let Some((_, best)) = best.filter(|(_, best)| starter.opener > *best) {
        let opener = starter.opener.words(starter.unit);
        let best = best.words(starter.unit);
        let read = words!(k::FOR_WHOSE_BEST_IS, opener, quote(&starter.lifter), best);
        let right = words!(k::AN_OPENER_IS_WHAT_THEY);
        doc.odd(&written.at, Wrong::plain(read, right));
    }
}

/// Reads "10:30".
fn clock(text: &str) -> Result<NaiveTime, Wrong> {
    NaiveTime::parse_from_str(text.trim(), "%H:%M").map_err(|_| {
        let right = words!(k::WRITE_HOURS_AND_MINUTES_AS);
        Wrong::value(text, words!(k::NOT_A_TIME_OF_DAY), right)
    })
}

/// The pattern named, else the lifter's own, else the first that ships.
fn pattern(gym: Option<&Gym>, lifter: &str, named: Option<&str>) -> Pattern {
    let shipped = shipped_patterns();
    let patterns = gym.map_or(&shipped[..], |gym| &gym.patterns);
    let own = gym.and_then(|gym| gym.lifters.iter().find(|l| l.name == lifter));
    let wanted = named.or(own.map(|lifter| lifter.ladder.as_str()));
    let found = patterns
        .iter()
        .find(|pattern| Some(pattern.name.as_str()) == wanted);
    found.or(patterns.first()).cloned().unwrap_or(Pattern {
        name: String::new(),
        steps: Vec::new(),
        already_warm: false,
    })
}
