//! Cards and rounds of a meet as words of a line of its log.
//!
//! A card is `c1:7:-:200000000000000/0/g/1765540000000:...`: which starter, lot, whether out, then
//! each attempt with its weight in nanograms, its changes, how it was judged and when. A round is
//! `r0:5`. Refuses: starters and changes beyond any meet.
use domain::meet_card::{Attempt, Card, Judged};
use domain::meet_order::{LOT_MOST, ROUNDS};
use domain::meet_round::Running;
use domain::{Mass, Moment};

/// More starters than a flight can have.
const STARTERS_MAX: usize = 100;

/// The word with a blank before it; `None` for a blank card.
pub(crate) fn write_card(at: usize, card: &Card) -> Option<String> {
    if *card == Card::default() {
        return None;
    }
    let lot = card.lot.map_or(String::from("-"), |lot| lot.to_string());
    let out = if card.out { "x" } else { "-" };
    let attempts = card.attempts.iter().map(|attempt| {
        let declared = attempt.declared;
        let declared = declared.map_or(String::from("-"), |load| load.ng().to_string());
        let judged = match attempt.judged {
            None => "-",
            Some(Judged::Good) => "g",
            Some(Judged::NoLift) => "n",
            Some(Judged::Passed) => "p",
        };
        let (changes, at) = (attempt.changes, attempt.at.0);
        format!(":{declared}/{changes}/{judged}/{at}")
    });
    Some(format!(
        " c{at}:{lot}:{out}{}",
        attempts.collect::<String>()
    ))
}

pub(crate) fn read_card(word: &str) -> Option<(usize, Card)> {
    let mut parts = word.strip_prefix('c')?.split(':');
    let at = parts.next()?.parse().ok().filter(|at| *at < STARTERS_MAX)?;
    let lot = match parts.next()? {
        "-" => None,
        lot => Some(
            lot.parse()
                .ok()
                .filter(|lot| (1..=LOT_MOST).contains(lot))?,
        ),
    };
    let out = match parts.next()? {
        "x" => true,
        "-" => false,
        _ => return None,
    };
    let mut attempts = [Attempt::default(); ROUNDS];
    for attempt in &mut attempts {
        *attempt = read_attempt(parts.next()?)?;
    }
    let card = Card { lot, attempts, out };
    parts.next().is_none().then_some((at, card))
}

fn read_attempt(text: &str) -> Option<Attempt> {
    let parts: Vec<&str> = text.split('/').collect();
    let [declared, changes, judged, at] = parts[..] else {
        return None;
    };
    Some(Attempt {
        declared: match declared {
            "-" => None,
            load => {
                let load = Mass::from_ng(load.parse().ok()?);
                Some(load).filter(|load| *load > Mass::ZERO && *load <= LOAD_MOST)
            }
        },
        changes: changes.parse().ok()?,
        judged: match judged {
            "-" => None,
            "g" => Some(Judged::Good),
            "n" => Some(Judged::NoLift),
            "p" => Some(Judged::Passed),
            _ => return None,
        },
        at: Moment(at.parse().ok()?),
    })
}

/// The heaviest that can be declared.
pub(crate) const LOAD_MOST: Mass = Mass::of(domain::MassUnit::Kg, 1_000_000);

pub(crate) fn write_running(running: &Running) -> String {
    format!("r{}:{}", running.round, running.others_over)
}

pub(crate) fn read_running(word: &str) -> Option<Running> {
    let (round, others_over) = word.strip_prefix('r')?.split_once(':')?;
    Some(Running {
        round: round.parse().ok().filter(|round| *round <= ROUNDS)?,
        others_over: others_over.parse().ok()?,
    })
}
