//! The screen of all lifters: big tiles.
use crate::drawings;
use crate::language::{Language, p};
use crate::pace::{Pace, pace};
use crate::scene::Scene;
use crate::spot::place;
use domain::day::NoSheet;
use domain::rotation::stations;
use domain::sheet::LiftSheet;

/// Tiles on one page; the window turns the pages where there are more.
pub const TILES_SHOWN: usize = 12;

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Choose {
    /// The gym.
    pub gym: String,
    /// "Wednesday 25 November".
    pub date: String,
    /// One a lifter, those of today first.
    pub tiles: Vec<Tile>,
    /// A sentence when there is nobody to show, or empty.
    pub empty: String,
    /// The button to the turns of all lifters: "floor"; empty when there are none to show.
    pub floor: String,
    /// The button to this kiosk's own page: "kiosk".
    pub panel: String,
    /// Under it, the other languages in themselves, so that whoever needs one finds it.
    pub languages: String,
}

/// One lifter.
#[derive(Debug, Clone, PartialEq)]
pub struct Tile {
    /// Name.
    pub lifter: String,
    /// "rack pull", or "nothing today".
    pub lift: String,
    /// The work set: "180 kg × 5"; with nothing today, the day that comes next.
    pub work: String,
    /// "hole 9", "from the floor", or empty.
    pub place: String,
    /// "2 of 5 done", "rest 1:40", "done", what must be mended, or what comes next.
    pub word: String,
    /// For the look.
    pub pace: Pace,
    /// Share of the ladder that is done, 0 to 1.
    pub share: f32,
}

/// "Deutsch · Español".
fn other_languages(say: Language) -> String {
    let others = Language::ALL.into_iter().filter(|other| *other != say);
    others.map(Language::name).collect::<Vec<_>>().join(" · ")
}

pub(crate) fn choose(scene: &Scene<'_>) -> Choose {
    let say = scene.language();
    let mut names: Vec<&str> = Vec::new();
    let with_work = scene.day.iter().filter(|e| !e.lift.is_empty());
    let without = scene.day.iter().filter(|e| e.lift.is_empty());
    for entry in with_work.chain(without) {
        if !names.contains(&entry.lifter.as_str()) {
            names.push(&entry.lifter);
        }
    }
    let tiles: Vec<Tile> = names.into_iter().map(|name| tile(scene, name)).collect();
    let empty = if tiles.is_empty() {
        say.say(p::NO_LIFTERS)
    } else {
        String::new()
    };
    Choose {
        gym: match scene.news.demo {
            true => say.fill(p::DEMO_GYM, &[&scene.gym.name]),
            false => scene.gym.name.clone(),
        },
        date: say.date(scene.date),
        tiles,
        empty,
        floor: if stations(scene.state, scene.date).is_empty() {
            String::new()
        } else {
            say.say(p::FLOOR)
        },
        panel: say.say(p::PANEL),
        languages: other_languages(say),
    }
}

fn tile(scene: &Scene<'_>, name: &str) -> Tile {
    let say = scene.language();
    let fresh = scene.fresh(name);
    let run = scene
        .run(name)
        .filter(|run| !run.is_over() || fresh.is_none());
    if let Some(run) = run {
        let (pace, word) = pace(scene, run);
        let (done, all) = (run.passed().count(), run.sheet.rungs.len());
        let word = match pace {
            Pace::Resting => say.fill(p::REST_LEFT, &[&word]),
            Pace::Done => say.say(p::DONE),
            Pace::Stopped | Pace::Away => word,
            Pace::Fresh | Pace::Ready | Pace::Blocked => {
                say.fill(p::DONE_OF, &[&done.to_string(), &all.to_string()])
            }
        };
        let share = drawings::share(count(done), count(all));
        return Tile {
            word,
            pace,
            share,
            ..sheet_tile(say, &run.sheet)
        };
    }
    match fresh.map(|entry| (&entry.outcome, entry)) {
        Some((Ok(sheet), entry)) => {
            let tile = sheet_tile(say, sheet);
            match say.side_by_side(entry) {
                alike if alike.is_empty() => tile,
                word => Tile { word, ..tile },
            }
        }
        Some((Err(why), entry)) => Tile {
            lifter: name.into(),
            lift: say.shipped(&entry.lift),
            work: String::new(),
            place: String::new(),
            word: say.no_sheet(why),
            pace: Pace::Blocked,
            share: 0.0,
        },
        None => idle_tile(scene, name),
    }
}

/// Somebody who has nothing today, with the day on which they go on and what comes then.
fn idle_tile(scene: &Scene<'_>, name: &str) -> Tile {
    let say = scene.language();
    let why = scene.day.iter().find(|entry| entry.lifter == name);
    let health = scene.state.health.get(name);
    let hurt = health.and_then(|health| health.hurt.as_ref());
    if hurt.is_some_and(|hurt| hurt.since <= scene.date) {
        // Whatever comes next by the plan waits for the coach.
        return Tile {
            word: say.say(p::list::HURT),
            pace: Pace::Blocked,
            ..nothing_today(say, name)
        };
    }
    let (work, word) = match why.map(|entry| &entry.outcome) {
        Some(Err(NoSheet::NothingToday {
            next: Some((day, lift)),
        })) => (say.date(*day), say.shipped(lift)),
        Some(Err(NoSheet::Rest { programme, from })) => (say.date(*from), programme.clone()),
        _ => (String::new(), String::new()),
    };
    Tile {
        work,
        word,
        ..nothing_today(say, name)
    }
}

fn nothing_today(say: Language, name: &str) -> Tile {
    Tile {
        lifter: name.into(),
        lift: say.say(p::NOTHING_TODAY),
        work: String::new(),
        place: String::new(),
        word: String::new(),
        pace: Pace::Fresh,
        share: 0.0,
    }
}

fn sheet_tile(say: Language, sheet: &LiftSheet) -> Tile {
    Tile {
        lifter: sheet.lifter.clone(),
        lift: say.tracked(&sheet.lift, sheet.track),
        work: say.work(sheet),
        place: place(say, sheet, 0),
        word: sheet.rack.clone(),
        pace: Pace::Fresh,
        share: 0.0,
    }
}

fn count(n: usize) -> i64 {
    i64::try_from(n).unwrap_or(i64::MAX)
}
