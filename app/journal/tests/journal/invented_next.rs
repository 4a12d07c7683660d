//! Invented loads settled on the day and decisions for the next time, with every choice in them.
use crate::invented::{kg, lb, rungs};
use chrono::NaiveDate;
use domain::coach_word::{CoachSays, CoachWord};
use domain::next::outing::Went;
use domain::next::{Decided, Decision, Ill, Rule, Step, Verdict, Why};
use domain::settle::Settled;
use domain::{Fact, LiftNo, Mass};

/// Lift 1 settled on 2.5 kg more for its only work set.
pub(crate) fn settled() -> Fact {
    Fact::LoadSettled {
        no: LiftNo(1),
        settled: Settled {
            rung: 1,
            load: kg(67_500),
            per_side: rungs()[1].per_side.clone(),
            belt: true,
            straps: false,
        },
    }
}

fn decided(no: LiftNo, verdict: Verdict, why: Why, went: Went, step: Step) -> Fact {
    let date = NaiveDate::from_ymd_opt(2026, 3, 2).expect("a day");
    Fact::NextDecided {
        no,
        decided: Box::new(Decided {
            rule: Rule {
                step,
                // As they were shipped when these lines were first written.
                away_days: 28,
                away: 1_000,
                ..Rule::SHIPPED
            },
            decision: Decision {
                verdict,
                why,
                after: no,
                date,
                went,
                sets: 1,
                reps: 5,
                from: kg(75_000),
                nth: 1,
                tries: 2,
                wished: kg(76_875),
                load: kg(77_500),
                away_days: 0,
            },
            reason: "77.5 kg, up 2.5 kg: all reps with the back held".to_owned(),
        }),
    }
}

/// What the rules give after lift `no`, which went well.
pub(crate) fn raised(no: LiftNo) -> Fact {
    let step = Step::Share(250);
    decided(no, Verdict::Raise, Why::Well, Went::Well, step)
}

/// What the coach ruled after lift `no`.
pub(crate) fn overridden(no: LiftNo) -> Fact {
    Fact::NextOverridden {
        no,
        load: lb(165),
        note: "slow off the pins; \"stay\" — once".to_owned(),
    }
}

/// Every verdict, reason and way that a lift can go.
pub(crate) fn facts() -> Vec<Fact> {
    let no = LiftNo(1);
    let mass = Step::Mass(Mass::from_ng(2_500_000_000_000));
    let share = Step::Share(100);
    let of = |verdict, why, went, step| decided(no, verdict, why, went, step);
    let short = Went::Short { set: 2, reps: 3 };
    let moved = Went::Moved { set: 1, rep: 4 };
    vec![
        settled(),
        raised(no),
        of(Verdict::Raise, Why::Back, Went::Well, mass),
        of(Verdict::Repeat, Why::NoStep, Went::Well, mass),
        of(Verdict::Repeat, Why::Light, Went::Well, share),
        of(Verdict::Repeat, Why::TryAgain, short, share),
        of(Verdict::Repeat, Why::Cut, Went::Cut { done: 1 }, share),
        of(Verdict::Drop, Why::OutOfTries, moved, share),
        of(Verdict::Drop, Why::TooMuch, Went::MovedWarm, share),
        of(Verdict::Reset, Why::Stuck, short, share),
        of(Verdict::Ease, Why::Away, Went::Well, share),
        of(Verdict::Drop, Why::Coach, Went::Well, share),
        overridden(no),
    ]
}

/// What came with version 2 of the wire form: reasons, and the coach's words beside loads.
pub(crate) fn facts_v2() -> Vec<Fact> {
    let share = Step::Share(100);
    let whys = [
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
    let of = |why| decided(LiftNo(1), Verdict::Repeat, why, Went::Well, share);
    whys.into_iter().map(of).chain(words()).collect()
}

/// Everything that a coach can say of a lifter beside loads.
pub(crate) fn words() -> Vec<Fact> {
    let day = |day| NaiveDate::from_ymd_opt(2026, 3, day).expect("a day");
    let said = |what| {
        Fact::CoachSaid(Box::new(CoachWord {
            lifter: "Ada".to_owned(),
            what,
            note: "left hip; \"sharp\"".to_owned(),
        }))
    };
    vec![
        said(CoachSays::Hurt { since: day(2) }),
        said(CoachSays::Fit),
        said(CoachSays::Ill(Ill {
            from: day(3),
            to: day(9),
        })),
        said(CoachSays::LoadMeant {
            lift: "rack pull".to_owned(),
            date: day(10),
            load: lb(500),
        }),
    ]
}
