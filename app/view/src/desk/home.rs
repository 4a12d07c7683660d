//! The desk's front page: what waits for the coach first, then the week, plans, lifters,
//! programmes, the gym and this screen; and the pages of the last two.
use super::news::PlanNews;
use super::place::{Act, New, Place, Rows, What};
use super::{DESK_FILE, PLAIN_ONCE, coach_list, left_open, week};
use crate::language::p;
use crate::list::{Layout, ListRow, ListState};
use crate::scene::Scene;

/// Lines of the coach's list that stand on the front page, the last of them the way to all where
/// there are more.
const WIDE: usize = 3;

/// Tiles beside them.
const TILES: usize = 6;

/// How many of so many rows stand wide, and what stands above them.
pub(crate) fn layout(scene: &Scene<'_>, rows: usize) -> Layout {
    let say = scene.language();
    let heading = match coach_list::waiting(scene) {
        0 => say.say(p::list::NONE_WAITS),
        n => say.fill(p::list::WAITING, &[&n.to_string()]),
    };
    Layout::Desk {
        wide: rows.saturating_sub(TILES),
        heading,
    }
}

/// What waits, then all there is at the desk.
pub(crate) fn rows(scene: &Scene<'_>) -> Rows {
    let mut rows = first(scene);
    rows.extend(tiles(scene));
    rows
}

/// Lifts left open, and the first lines of the coach's list.
fn first(scene: &Scene<'_>) -> Rows {
    let mut rows: Rows = left_open::way(scene).into_iter().collect();
    let lines = coach_list::rows(scene);
    let room = WIDE - rows.len();
    if lines.len() > room {
        let left = lines.len() + 1 - room;
        rows.extend(lines.into_iter().take(room - 1));
        rows.push(coach_list::way(scene, left));
    } else {
        rows.extend(lines);
    }
    rows
}

fn tiles(scene: &Scene<'_>) -> [(ListRow, Act); TILES] {
    let say = scene.language();
    let gym = scene.gym;
    let tile = |name, detail: String, state, place| {
        let row = ListRow::new(String::new(), say.say(name)).detail(detail);
        (row.state(state), Act::Go(place))
    };
    let plain = ListState::Plain;
    let (plans, plans_state) = match scene.news.plans.as_slice() {
        [] => (say.say(p::NO_FILE), plain),
        all if all.iter().any(is_faulty) => (files(scene), ListState::Amiss),
        _ => (files(scene), plain),
    };
    let this = week::monday(scene.date);
    let lifters = gym.lifters.len().to_string();
    let programmes = gym.coaching.programmes.len().to_string();
    let (kiosk, kiosk_state) = match amiss(scene) {
        0 => (say.say(p::ALL_WELL), plain),
        n => (say.fill(p::FAULTS, &[&n.to_string()]), ListState::Amiss),
    };
    [
        tile(p::WEEK, say.say(p::WEEK_WHAT), plain, Place::Week(this, 0)),
        tile(p::PLANS, plans, plans_state, Place::Plans),
        tile(p::LIFTERS, lifters, plain, Place::Lifters),
        tile(p::PROGRAMMES, programmes, plain, Place::Programmes),
        tile(p::GYM, say.say(p::GYM_WHAT), plain, Place::Gym),
        tile(p::PANEL, kiosk, kiosk_state, Place::ThisScreen),
    ]
}

const fn is_faulty(plan: &PlanNews) -> bool {
    plan.read.is_err()
}

fn files(scene: &Scene<'_>) -> String {
    let n = scene.news.plans.len().to_string();
    scene.language().fill(p::FILES_WAIT, &[&n])
}

/// How many things of this screen somebody should look at.
fn amiss(scene: &Scene<'_>) -> usize {
    let lan = &scene.news.lan;
    let page = lan.on && !lan.card.trouble.is_empty();
    scene.news.faults.len()
        + scene.news.hardware.len()
        + usize::from(page)
        + usize::from(is_plain(scene))
}

/// Racks, bars, plates, and a gym begun anew.
pub(crate) fn gym(scene: &Scene<'_>) -> Rows {
    let gym = scene.gym;
    let go = |title, n: usize, place| {
        let row = ListRow::new(scene.language().say(title), n.to_string());
        (row, Act::Go(place))
    };
    vec![
        go(p::RACKS, gym.racks.len(), Place::Racks),
        go(p::BARS, gym.bars.len(), Place::Bars),
        go(p::PLATES, gym.plate_sets.len(), Place::Sets),
        begin(scene),
    ]
}

/// The way to a gym of one's own, which takes this one away: held, and not while somebody lifts.
fn begin(scene: &Scene<'_>) -> (ListRow, Act) {
    let say = scene.language();
    let row = ListRow::new(say.say(p::BEGIN), say.say(p::NEW_GYM));
    if let Some(run) = scene.runs().find(|run| !run.is_over()) {
        let why = say.fill(p::BEGIN_UNDER_WAY, &[&run.sheet.lifter]);
        return (row.detail(why).state(ListState::Told), Act::Nothing);
    }
    let gym = scene.gym;
    let counts = [gym.lifters.len(), gym.racks.len(), gym.bars.len()];
    let [lifters, racks, bars] = counts.map(|n| n.to_string());
    let loses = say.fill(p::BEGIN_LOSES, &[&gym.name, &lifters, &racks, &bars]);
    (
        row.detail(loses).state(ListState::Held),
        Act::Type(What::Name(New::Gym(None))),
    )
}

/// The page on the network, checks, devices, copies, the desk's digits.
pub(crate) fn this_screen(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let faults = |title, faults: &[String], place| {
        let (value, state) = match faults.len() {
            0 => (say.say(p::ALL_WELL), ListState::Plain),
            n => (say.fill(p::FAULTS, &[&n.to_string()]), ListState::Amiss),
        };
        let row = ListRow::new(say.say(title), value).state(state);
        (row, Act::Go(place))
    };
    vec![
        sharing(scene),
        faults(p::CHECKS, &scene.news.faults, Place::Checks),
        faults(p::HARDWARE, &scene.news.hardware, Place::Hardware),
        copies(scene),
        code(scene),
    ]
}

/// Whether older digits stand plainly in the journal.
fn is_plain(scene: &Scene<'_>) -> bool {
    let kept = scene.state.files.get(DESK_FILE);
    kept.is_some_and(|text| text == PLAIN_ONCE)
}

/// Other digits for the desk; asked for where older ones stand plainly in the journal.
fn code(scene: &Scene<'_>) -> (ListRow, Act) {
    let say = scene.language();
    let row = ListRow::new(say.say(p::CODE), say.say(p::NEW_CODE));
    let row = match is_plain(scene) {
        true => row
            .detail(say.say(p::CODE_WAS_PLAIN))
            .state(ListState::Amiss),
        false => row,
    };
    (row, Act::Type(What::Code(None)))
}

/// How many copies lie in the second place.
fn copies(scene: &Scene<'_>) -> (ListRow, Act) {
    let say = scene.language();
    let value = match &scene.news.copies {
        Some(names) => names.len().to_string(),
        None => say.say(p::COPIES_UNSET),
    };
    (
        ListRow::new(say.say(p::COPIES), value),
        Act::Go(Place::Copies),
    )
}

/// Whether the page on the network is served; a tap opens its page.
fn sharing(scene: &Scene<'_>) -> (ListRow, Act) {
    let say = scene.language();
    let lan = &scene.news.lan;
    let value = say.say(if lan.on { p::ON } else { p::OFF });
    let row = ListRow::new(say.say(p::SHARING), value);
    let amiss = lan.on && !lan.card.trouble.is_empty();
    let state = if amiss {
        ListState::Amiss
    } else {
        ListState::Plain
    };
    (row.state(state), Act::Go(Place::Sharing))
}
