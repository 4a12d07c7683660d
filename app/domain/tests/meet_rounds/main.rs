//! A whole meet of 12 of ours in three flights: whose attempt it is, moved by declarations, and
//! what rude coaches do to it.
mod platform;
mod table;

use crate::platform::{KG, Platform, day, flight, harbour, kg};
use domain::meet::{Flight, Taken};
use domain::meet_card::{Judged, least_step, usual};
use domain::meet_day::{Entrant, MeetFlight};
use domain::meet_order::ROUNDS;
use domain::meet_round::Who;
use domain::{Mass, Moment};
use proptest::prelude::*;

/// What the platform sees: everybody's weight of a round, by the rule written anew.
fn goes_first(a: (Mass, Option<u16>, usize), b: (Mass, Option<u16>, usize)) -> bool {
    let lot = |one: Option<u16>| one.map_or(1_000, i32::from);
    (a.0, lot(a.1), a.2) < (b.0, lot(b.1), b.2)
}

/// All three flights, every attempt good and declared at once: in each round everybody once, lighter
/// first, lots where alike; and before each attempt everybody's place is where they come to be.
#[test]
fn twelve_of_ours_in_three_flights() {
    let day = harbour();
    for at in 0..3 {
        let mut platform = Platform::new(&day, at);
        // What was said of each turn, to be held against what came.
        let mut said: Vec<(usize, usize, usize, usize)> = Vec::new();
        let mut count = 0;
        loop {
            for ours in 0..4 {
                if let Some(turn) = platform.round().turn(ours) {
                    let of_now = turn.round == platform.running.round;
                    assert_eq!(turn.about, turn.round > 0, "all openers are told");
                    if of_now {
                        said.push((count, ours, turn.round, count + usize::from(turn.before)));
                    }
                }
            }
            let Some(who) = platform.attempt(true) else {
                break;
            };
            if let Who::Ours(ours) = who {
                let round = platform.cards[ours].round();
                if round < ROUNDS {
                    let load = platform.cards[ours].offers(platform.of(ours).0, KG, round)[1];
                    platform.declare(ours, load).expect("in time");
                }
            }
            count += 1;
        }
        assert_eq!(count, 3 * 12);
        for (when, ours, round, place) in said {
            let came = platform.lifted[place];
            assert_eq!(
                came,
                (round, Who::Ours(ours)),
                "flight {at}, said after {when}"
            );
        }
        held_to_the_rule(&platform);
    }
}

/// Every round of what was lifted, against the rule, pair by pair.
fn held_to_the_rule(platform: &Platform<'_>) {
    let flight = platform.flight;
    for round in 0..ROUNDS {
        let of_round = platform.lifted.iter().filter(|(at, _)| *at == round);
        let order: Vec<Who> = of_round.map(|(_, who)| *who).collect();
        let claim = |who: Who| match who {
            Who::Ours(at) => {
                let load = platform.cards[at].load(platform.of(at).0, KG, round);
                (load, flight.starters[at].lot, 0)
            }
            Who::Other(at) => (
                usual(flight.others[at].opener, round),
                flight.others[at].lot,
                0,
            ),
        };
        assert_eq!(order.len(), flight.starters.len() + flight.others.len());
        for two in order.windows(2) {
            assert!(
                !goes_first(claim(two[1]), claim(two[0])),
                "round {round}: {two:?}"
            );
        }
    }
}

/// By hand: 125 kg twice in the first flight; lot 4 before lot 30. Others stand at 90, 97.5, 105,
/// 112.5, 120, 127.5 and more: eight are before 125 kg at lot 4, one more before lot 30.
#[test]
fn of_two_of_ours_with_the_same_weight_the_lower_lot_goes_first() {
    let day = harbour();
    let platform = Platform::new(&day, 0);
    let before = |at| platform.round().turn(at).expect("to come").before;
    // 100 kg: after 90 and 97.5. 115 kg: after 90 to 112.5 and ours. 125 kg: and 120.
    assert_eq!([before(0), before(1), before(2), before(3)], [2, 5, 7, 8]);
}

/// Ours at 115 kg goes to 125 kg before the flight: behind both of ours of that weight or between
/// them, by the lot; everybody passed moves up by one.
#[test]
fn a_changed_opener_moves_its_lifter_and_whom_it_passes() {
    let day = harbour();
    let mut platform = Platform::new(&day, 0);
    platform.declare(1, kg(1_250)).expect("before the flight");
    let before = |platform: &Platform<'_>, at| platform.round().turn(at).expect("to come").before;
    let places = [0, 1, 2, 3].map(|at| before(&platform, at));
    // Lot 21 is between 4 and 30.
    assert_eq!(places, [2, 7, 6, 8]);
    platform.cards[1].lot = Some(31);
    let places = [0, 1, 2, 3].map(|at| before(&platform, at));
    assert_eq!(places, [2, 8, 6, 7]);
}

/// Bombs out: three times no lift, and the others go on without them.
#[test]
fn who_misses_three_times_is_told_without_a_lift() {
    let day = harbour();
    let mut platform = Platform::new(&day, 1);
    while platform
        .attempt(platform.round().at_bar() != Some(2))
        .is_some()
    {}
    assert!(platform.cards[2].is_without_lift());
    assert_eq!(platform.cards[2].best(platform.of(2).0, KG), None);
    assert_eq!(platform.lifted.len(), 3 * 12);
}

/// Somebody scratches in the middle: nobody waits for them, and all behind come one sooner.
#[test]
fn who_leaves_is_waited_for_no_more() {
    let day = harbour();
    let mut platform = Platform::new(&day, 0);
    for _ in 0..3 {
        platform.attempt(true);
    }
    let before = |platform: &Platform<'_>, at| platform.round().turn(at).map(|t| t.before);
    let was = before(&platform, 3).expect("to come");
    platform.cards[1].out = true;
    assert_eq!(
        (before(&platform, 1), before(&platform, 3)),
        (None, Some(was - 1))
    );
    platform.running = platform.round().onwards();
    while platform.attempt(true).is_some() {}
    assert_eq!(platform.lifted.len(), 3 * 11);
}

/// Where only a count is known, ours stand in the middle of it, and the place says that it is
/// about.
#[test]
fn a_count_alone_gives_about_the_middle() {
    let one = flight(&[(2_000, 0)], &[]);
    let list = domain::meet_order::spread(&[(kg(2_000), None)], 9);
    let list: Vec<Entrant> = list
        .iter()
        .map(|one| one.map_or(Entrant::Untold, |_| Entrant::Ours(0)))
        .collect();
    let counted = MeetFlight {
        counted: true,
        ..one.listed(&list)
    };
    let day = day(vec![counted]);
    let platform = Platform::new(&day, 0);
    let turn = platform.round().turn(0).expect("to come");
    assert_eq!((turn.before, turn.about), (4, true));
}

/// Early, late and hurried: 40, 80 and 20 s an attempt where a minute was said. Each warm-up is taken
/// when it is called, none nearer to the next than the least, and whoever has ten attempts before
/// them has the last warm-up in their legs.
#[test]
fn warm_ups_of_a_whole_meet_early_late_and_hurried() {
    let day = harbour();
    for pace in [40, 80, 20] {
        for at in 0..3 {
            let flight = &day.flights[at];
            for (ours, starter) in flight.starters.iter().enumerate() {
                let mut platform = Platform::new(&day, at);
                let begun = platform.now;
                let (mut taken, mut last, mut called) = (0_u8, begun, 0_u16);
                let mut took: Vec<Moment> = Vec::new();
                let place = platform.round().turn(ours).expect("to come").before;
                for second in (0..pace * u32::from(place)).step_by(10) {
                    let now = begun.plus_seconds(second);
                    if second > 0 && second % pace == 0 {
                        platform.attempt(true);
                        called += 1;
                    }
                    let turn = platform.round().turn(ours).expect("to come");
                    let stands = Flight {
                        before: called + turn.before,
                        attempt_s: flight.attempt_s,
                        called,
                        elapsed_s: u32::from(called) * pace,
                        since_s: second % pace,
                        later_s: 0,
                        wait: Default::default(),
                    };
                    assert_eq!(stands.before, place, "nobody changed anything");
                    let since_s = last.seconds_until(now);
                    let of = Taken {
                        count: taken,
                        since_s,
                    };
                    let call = day.call(starter, &stands, &of).expect("in range");
                    let due = call.timed.warm_ups.first().filter(|one| one.in_s == 0);
                    if let Some(due) = due {
                        (taken, last) = (due.number + 1, now);
                        took.push(now);
                    }
                }
                let least = day.habit.apart_least_s;
                assert!(
                    took.windows(2)
                        .all(|two| two[0].seconds_until(two[1]) >= least)
                );
                let whole = day.warm_ups(starter).expect("warm-ups").rungs.len() - 1;
                if u32::from(place) * pace >= 600 {
                    assert_eq!(usize::from(taken), whole, "{pace} s, flight {at}, {ours}");
                }
                let opens = begun.plus_seconds(pace * u32::from(place));
                if pace >= 60 && !took.is_empty() {
                    assert!(last.seconds_until(opens) >= day.habit.last_least_s);
                }
            }
        }
    }
}

proptest! {
    /// Whatever is declared, judged, passed and left, in any order: everybody of a round comes once,
    /// the bar never goes down for anybody of ours, nobody waits for ever, and who is said to come
    /// first comes first.
    #[test]
    fn whatever_a_rude_coach_does_the_flight_goes_on(
        ours in prop::collection::vec((80..140_i64, 0..4_u16), 1..6),
        others in prop::collection::vec((80..140_i64, 0..4_u16), 0..8),
        deeds in prop::collection::vec((0..6_usize, 0..12_i64, any::<bool>()), 0..80),
    ) {
        let load = |all: &[(i64, u16)]| -> Vec<(i64, u16)> {
            all.iter().map(|(load, lot)| (load * 25, *lot)).collect()
        };
        let day = day(vec![flight(&load(&ours), &load(&others))]);
        let mut platform = Platform::new(&day, 0);
        let mut deeds = deeds.into_iter();
        for _ in 0..200 {
            if let Some((who, what, good)) = deeds.next() {
                let at = who % ours.len();
                match what {
                    0 => platform.cards[at].out = true,
                    1 => platform.cards[at].lot = Some(7),
                    2 => {
                        let card = platform.cards[at].judge(Judged::Passed, platform.now);
                        platform.cards[at] = card.unwrap_or(platform.cards[at]);
                    }
                    _ => {
                        let load = platform.of(at).0 + least_step(KG).times(what - 5);
                        let before = platform.cards[at];
                        if platform.declare(at, load).is_err() {
                            prop_assert_eq!(platform.cards[at], before, "half applied");
                        }
                    }
                }
                platform.running = platform.round().onwards();
                platform.now = platform.now.plus_seconds(if good { 5 } else { 70 });
            }
            let first = platform.round().at_bar();
            if let Some(at) = first {
                prop_assert_eq!(platform.round().turn(at).map(|turn| turn.before), Some(0));
            }
            let Some(who) = platform.attempt(deeds.len() % 3 != 0) else { break };
            if let Some(at) = first {
                prop_assert_eq!(who, Who::Ours(at));
            }
        }
        prop_assert_eq!(platform.running.round, ROUNDS, "it never ended");
        for round in 0..ROUNDS {
            let of_round = platform.lifted.iter().filter(|(at, _)| *at == round);
            let all: Vec<Who> = of_round.map(|(_, who)| *who).collect();
            let others_up = all.iter().filter(|who| matches!(who, Who::Other(_))).count();
            prop_assert_eq!(others_up, others.len());
            for (at, who) in all.iter().enumerate() {
                prop_assert!(!all[..at].contains(who), "{who:?} twice in round {round}");
            }
        }
        for (at, card) in platform.cards.iter().enumerate() {
            let loads = (0..card.round().min(ROUNDS)).map(|n| card.load(platform.of(at).0, KG, n));
            prop_assert!(loads.collect::<Vec<_>>().is_sorted(), "the bar went down: {card:?}");
        }
    }
}
