//! What the kiosk gives to its page: its language, the floor for the boards, the days that
//! programmes fill, the coach's list, and at the end of a lift the link to the lifter's own record.
//!
//! Refuses: names beyond those on the floor, a link that nobody else can reach (on loopback), and
//! any wait.
use chrono::{Days, NaiveDate};
use domain::day::share_now;
use domain::next::coach_list::{CoachLine, lines_of, put_in_order};
use domain::programme::fill::filled;
use domain::{Gym, Lifter, Mass, Prescription, State};
use journal::PlannedRow;
use share::{Board, BoardRack, BoardTurn, Desk, Filled, ShareOf};
use std::collections::BTreeMap;
use std::net::SocketAddr;
use view::end::Link;
use view::floor::{Floor, FloorRack, FloorTurn};
use view::{Frame, Scene, Screen};

/// The desk, and what of it is on the screen.
#[derive(Debug)]
pub struct Shared {
    desk: Desk,
    /// `http://192.168.1.20:8470`; `None` where only this machine can reach the page.
    base: Option<String>,
    /// The last link that was drawn, and its drawing.
    drawn: Option<(String, Link)>,
    filling: Filling,
    /// The day, and the event, whose sheets are laid out.
    sheets_of: Option<(NaiveDate, u64)>,
}

/// Days that programmes fill and the coach's list, as far as they are gathered: a lifter a tick, so that no tap waits.
#[derive(Debug, Default)]
struct Filling {
    /// The day, and the event, that they are gathered for.
    made_for: Option<(NaiveDate, u64)>,
    /// Lifters gathered.
    lifters: usize,
    rows: Vec<Filled>,
    /// What shares of the days to come are in mass.
    shares: BTreeMap<ShareOf, Mass>,
    /// The coach's list.
    due: Vec<CoachLine>,
}

/// Days that are looked back on, and ahead.
const BACK: Days = Days::new(27);
const AHEAD: Days = Days::new(6);

impl Shared {
    /// The desk of a page that is reached at `base`.
    #[must_use]
    pub fn new(desk: Desk, base: Option<String>) -> Self {
        Self {
            desk,
            base,
            drawn: None,
            filling: Filling::default(),
            sheets_of: None,
        }
    }

    /// How long the day still lasts, seconds.
    pub fn know_midnight(&self, left_s: u32) {
        self.desk.know_midnight(u64::from(left_s) * 1_000);
    }

    /// The kiosk ticks: says so, and lays the day's sheets out where they are of another moment.
    pub fn tick(&mut self, now: (NaiveDate, u64), sheets: impl FnOnce() -> String) {
        self.desk.tick();
        if self.sheets_of != Some(now) {
            self.sheets_of = Some(now);
            self.desk.lay_sheets(&sheets());
        }
    }

    /// Gathers for one more lifter the days that programmes fill, and lays all of them out once
    /// nobody is left; `now` is the day and the event that stand.
    pub fn gather(&mut self, gym: &Gym, state: &State, now: (NaiveDate, u64)) {
        let filling = &mut self.filling;
        if filling.made_for != Some(now) {
            *filling = Filling {
                made_for: Some(now),
                ..Filling::default()
            };
            self.desk.begin_day(share::Today {
                date: now.0,
                gym: gym.name.clone(),
            });
            let unit = |lifter: &Lifter| (lifter.name.clone(), lifter.unit);
            self.desk.know_units(gym.lifters.iter().map(unit).collect());
        }
        let Some(lifter) = gym.lifters.get(filling.lifters) else {
            return;
        };
        filling.lifters += 1;
        let (today, _) = now;
        let first = today.checked_sub_days(BACK).unwrap_or(today);
        let last = today.checked_add_days(AHEAD).unwrap_or(today);
        let rows = filled(gym, state, lifter, (first, last), today);
        let filled = rows.iter().map(|(_, row)| row);
        let shares = shares(gym, state, lifter, filled, (today, last));
        filling.shares.extend(shares);
        let row = |(programme, row)| Filled {
            programme,
            row: planned_row(lifter, row),
        };
        filling.rows.extend(rows.into_iter().map(row));
        let tomorrow = today.succ_opt().unwrap_or(today);
        let lines = lines_of(gym, state, lifter, (today, tomorrow));
        filling.due.extend(lines);
        if filling.lifters == gym.lifters.len() {
            self.desk.fill_days(std::mem::take(&mut filling.rows));
            self.desk.know_shares(std::mem::take(&mut filling.shares));
            let mut due = std::mem::take(&mut filling.due);
            put_in_order(&mut due);
            self.desk.lay_out(|counter| counter.due = due);
        }
    }

    /// Lays the lines of one lifter of the coach's list out anew, at once.
    pub fn renew(&self, gym: &Gym, state: &State, (today, name): (NaiveDate, &str)) {
        let Some(lifter) = gym.lifters.iter().find(|lifter| lifter.name == name) else {
            return;
        };
        let tomorrow = today.succ_opt().unwrap_or(today);
        let lines = lines_of(gym, state, lifter, (today, tomorrow));
        self.desk.lay_out(|counter| {
            counter.due.retain(|line| line.lifter != name);
            counter.due.extend(lines);
            put_in_order(&mut counter.due);
        });
    }

    /// Shows the floor on the boards that follow, and puts the link on the end of a lift.
    pub fn follow(&mut self, scene: &Scene<'_>, frame: &mut Frame) {
        self.desk.speak(scene.language());
        if self.desk.is_followed() {
            self.desk.show(&board(scene));
        }
        if let Screen::End(end) = &mut frame.screen {
            end.link = self.link(scene, &frame.lifter);
        }
    }

    fn link(&mut self, scene: &Scene<'_>, lifter: &str) -> Option<Link> {
        let base = self.base.as_ref()?;
        let run = scene.run(lifter)?;
        let ended = run.entries.last()?.at;
        let ago = u64::try_from(scene.now.0.saturating_sub(ended.0)).unwrap_or(0);
        let path = self.desk.link(run.no.0, lifter, ago)?;
        if self.drawn.as_ref().is_none_or(|(drawn, _)| *drawn != path) {
            let qr = share::qr(&format!("{base}{path}"))?;
            let link = Link {
                words: scene.language().own_record(),
                size: qr.size,
                dark: qr.dark,
            };
            self.drawn = Some((path, link));
        }
        self.drawn.as_ref().map(|(_, link)| link.clone())
    }
}

/// Where others reach a page at `at`.
#[must_use]
pub fn base(at: SocketAddr, tls: bool) -> Option<String> {
    (!at.ip().is_loopback()).then(|| format!("{}://{at}", scheme(tls)))
}

/// "https" or "http".
#[must_use]
pub fn scheme(tls: bool) -> &'static str {
    if tls { "https" } else { "http" }
}

fn board(scene: &Scene<'_>) -> Board {
    let Floor { racks, empty } = view::floor::floor(scene);
    let say = scene.language();
    Board {
        clock: scene.clock.into(),
        empty,
        racks: racks.into_iter().map(rack).collect(),
        ..Board::of(say)
    }
}

/// What a lifter's shares of the days from `first` to `last` come to now: those of the plan, and of
/// the rows that a programme fills.
pub fn shares<'r>(
    gym: &'r Gym,
    state: &'r State,
    lifter: &'r Lifter,
    filled: impl Iterator<Item = &'r Prescription>,
    (first, last): (NaiveDate, NaiveDate),
) -> impl Iterator<Item = (ShareOf, Mass)> {
    let plan = state.plan.range((first, String::new())..);
    let plan = plan.take_while(move |((date, _), _)| *date <= last);
    let plan = plan.filter(|((_, name), _)| *name == lifter.name);
    let rows = plan.flat_map(|(_, rows)| rows).chain(filled);
    rows.filter_map(|row| {
        let now = share_now((gym, state), lifter, row, row.main())?;
        let of = (row.date.to_string(), row.lifter.clone(), row.lift.clone());
        Some((of, now))
    })
}

/// A programme's row as those of the plan, of which nothing is done so far.
fn planned_row(lifter: &Lifter, row: Prescription) -> PlannedRow {
    let group = *row.main();
    let sets = row.groups().map(|group| u32::from(group.sets)).sum();
    PlannedRow {
        date: row.date.to_string(),
        lifter: row.lifter,
        lift: row.lift,
        sets,
        reps: group.reps.planned().into(),
        load: group.load,
        note: row.note,
        unit: Some(lifter.unit),
        done_sets: 0,
        done_reps: 0,
        done_load: None,
        moved: 0,
        by_programme: true,
    }
}

fn rack(rack: FloorRack) -> BoardRack {
    BoardRack {
        name: rack.name,
        up: rack.up.map(turn),
        next: rack.next.map(turn),
        then: rack.then.into_iter().map(turn).collect(),
    }
}

fn turn(turn: FloorTurn) -> BoardTurn {
    BoardTurn {
        lifter: turn.lifter,
        lift: turn.lift,
        load: format!("{} {}", turn.load, turn.unit),
        reps: turn.reps,
        spot: turn.spot.line(),
        gear: turn.spot.gear.join(", "),
        word: turn.word,
        change: turn.change.sentence,
    }
}
