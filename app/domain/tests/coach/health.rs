//! Hurt, illness, long absence and loads that look wrong: what the day's sheet shows of them.
use crate::fill::{Life, coached, date};
use crate::gym::kg;
use domain::coach_word::{CoachSays, CoachWord};
use domain::day::NoSheet;
use domain::event::Hold;
use domain::next::{Ill, Why};
use domain::plausible::Odd;
use domain::{Command, MassUnit, Moment, Refusal, State, decide};

fn say(what: CoachSays, note: &str) -> Command {
    Command::SayCoach(Box::new(CoachWord {
        lifter: "Ines".into(),
        what,
        note: note.into(),
    }))
}

fn once() -> Life {
    let mut life = Life::new(coached());
    life.lift(0, |_, reps| (reps, Hold::Kept));
    life
}

fn outcome(life: &Life, days: u64) -> Result<domain::Mass, NoSheet> {
    let entry = life.entries(days).remove(0);
    let sheet = entry.outcome?;
    Ok(sheet.rungs.last().expect("rungs").load)
}

#[test]
fn who_is_hurt_has_nothing_due_until_the_coach_rules() {
    let mut life = once();
    life.plan(12, "rack pull", 150);
    assert_eq!(outcome(&life, 12), Ok(kg(150)));
    life.obey(say(CoachSays::Hurt { since: date(3) }, " left hip "));
    assert_eq!(outcome(&life, 12), Err(NoSheet::Hurt));
    assert!(NoSheet::Hurt.to_string().contains("clinician"));
    // Not even of a lift that was never done.
    life.plan(13, "power snatch", 50);
    assert_eq!(outcome(&life, 13), Err(NoSheet::Hurt));
    let due = domain::next::here::all_due(&life.gym, &life.state, &life.gym.lifters[0], date(12));
    assert_eq!(
        (due[0].due.decision.why, due[0].due.asks),
        (Why::Hurt, true)
    );
    life.obey(say(CoachSays::Fit, "fit again"));
    assert_eq!(outcome(&life, 12), Ok(kg(150)));
    assert_eq!(&State::replay(&life.events), &life.state);
    let again = decide(&life.state, say(CoachSays::Fit, "twice"), Moment(0));
    assert_eq!(again, Err(Refusal::NotHurt("Ines".into())));
}

#[test]
fn an_illness_eases_sooner_and_cannot_end_before_it_begins() {
    let mut life = once();
    let why = |life: &Life| {
        let ines = &life.gym.lifters[0];
        let due = domain::next::here::decision(
            &life.gym,
            &life.state,
            ines,
            domain::next::here::TrackOf {
                lift: "rack pull",
                track: domain::Track::of_reps(5),
                bar: None,
            },
            date(26),
        );
        due.expect("due").decision
    };
    // The programme brings it every 12 days: 14 days more are held, and eased with 8 of illness.
    assert_eq!((why(&life).why, why(&life).load), (Why::Away, kg(150)));
    let ill = |from, to| {
        let ill = Ill {
            from: date(from),
            to: date(to),
        };
        say(CoachSays::Ill(ill), "flu")
    };
    life.obey(ill(5, 12));
    assert_eq!(why(&life).why, Why::Ill);
    assert!(why(&life).load < kg(150));
    assert!(decide(&life.state, ill(12, 5), Moment(0)).is_err());
}

#[test]
fn who_was_away_for_very_long_begins_anew_by_the_coachs_ruling() {
    let mut life = once();
    life.plan(100, "rack pull", 150);
    assert_eq!(outcome(&life, 100), Err(NoSheet::Anew { days: 88 }));
    let no = domain::LiftNo(1);
    let note = "start here".into();
    life.obey(Command::OverrideNext {
        no,
        load: kg(100),
        note,
    });
}

#[test]
fn a_load_that_the_record_does_not_support_waits_for_the_coach() {
    let mut life = Life::new(coached());
    // The best is 200 kg; 220 is a tenth over it, and 225 looks wrong.
    life.plan(0, "rack pull", 220);
    assert_eq!(outcome(&life, 0), Ok(kg(220)));
    life.plan(0, "rack pull", 225);
    let odd = NoSheet::LooksWrong {
        load: kg(225),
        odd: Odd::Over(kg(200)),
        unit: MassUnit::Kg,
    };
    assert_eq!(outcome(&life, 0), Err(odd));
    let meant = CoachSays::LoadMeant {
        lift: "rack pull".into(),
        date: date(0),
        load: kg(225),
    };
    life.obey(say(meant, "tested elsewhere"));
    assert_eq!(outcome(&life, 0), Ok(kg(225)));
    // Of another load nothing was said.
    life.plan(0, "rack pull", 230);
    assert!(outcome(&life, 0).is_err());
}
