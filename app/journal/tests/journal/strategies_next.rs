//! Any decision for the next time and any word of a coach beside loads.
use crate::strategies::{date, mass, text};
use domain::LiftNo;
use domain::coach_word::{CoachSays, CoachWord};
use domain::next::outing::Went;
use domain::next::{Decided, Decision, Ill, Rule, Step, Verdict, Why};
use proptest::prelude::*;

fn step() -> impl Strategy<Value = Step> {
    prop_oneof![
        mass().prop_map(Step::Mass),
        any::<u32>().prop_map(Step::Share)
    ]
}

fn went() -> impl Strategy<Value = Went> {
    prop_oneof![
        Just(Went::Well),
        any::<(u8, u8)>().prop_map(|(set, reps)| Went::Short { set, reps }),
        any::<(u8, u8)>().prop_map(|(set, rep)| Went::Moved { set, rep }),
        Just(Went::MovedWarm),
        any::<u8>().prop_map(|done| Went::Cut { done }),
    ]
}

pub(crate) fn coach_word() -> impl Strategy<Value = CoachWord> {
    let what = prop_oneof![
        date().prop_map(|since| CoachSays::Hurt { since }),
        Just(CoachSays::Fit),
        (date(), date()).prop_map(|(from, to)| CoachSays::Ill(Ill { from, to })),
        (text(), date(), mass()).prop_map(|(lift, date, load)| CoachSays::LoadMeant {
            lift,
            date,
            load
        }),
    ];
    (text(), what, text()).prop_map(|(lifter, what, note)| CoachWord { lifter, what, note })
}

pub(crate) fn decided() -> impl Strategy<Value = Decided> {
    let rule = (step(), any::<(u8, u8, u32, u8, u32, u16, u32)>()).prop_map(
        |(step, (tries, moved_tries, drop, drops, reset, away_days, away))| Rule {
            step,
            tries,
            moved_tries,
            drop,
            drops,
            reset,
            away_days,
            away,
        },
    );
    let verdicts = [
        Verdict::Raise,
        Verdict::Repeat,
        Verdict::Drop,
        Verdict::Reset,
        Verdict::Ease,
    ];
    let whys = [
        Why::Well,
        Why::Light,
        Why::TryAgain,
        Why::Stuck,
        Why::Coach,
        Why::Range,
        Why::Waiting,
        Why::Anew,
        Why::Ill,
        Why::Family,
        Why::OverReaching,
        Why::LongAgo,
        Why::Week,
        Why::Hurt,
    ];
    let outcome = (
        proptest::sample::select(verdicts.to_vec()),
        proptest::sample::select(whys.to_vec()),
        went(),
    );
    let figures = (date(), any::<(u32, u8, u8, u8, u8, u16)>());
    let masses = (mass(), mass(), mass());
    (rule, outcome, figures, masses, text()).prop_map(
        |(rule, (verdict, why, went), (date, figures), (from, wished, load), reason)| {
            let (after, sets, reps, nth, tries, away_days) = figures;
            let decision = Decision {
                verdict,
                why,
                after: LiftNo(after),
                date,
                went,
                sets,
                reps,
                from,
                nth,
                tries,
                wished,
                load,
                away_days,
            };
            Decided {
                rule,
                decision,
                reason,
            }
        },
    )
}
