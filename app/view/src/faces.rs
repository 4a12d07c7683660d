//! From a stage and a scene to the frame that the window shows. Refuses: moving the eye.
use crate::bar::AtTheBar;
use crate::choose::{Choose, Tile};
use crate::drawings;
use crate::end::{DoneRow, End};
use crate::entry::{Entry, Pad};
use crate::frame::{Chip, Frame, Pace, Screen};
use crate::rest::Rest;
use crate::scene::Scene;
use crate::setup::SetUp;
use crate::stage::{Due, PadOpen, Stage, last_touched};
use crate::stop::Stop;
use crate::words;
use domain::day::{DayEntry, NoSheet};
use domain::event::Hold;
use domain::sheet::{LiftSheet, RungKind};
use domain::state::{Entered, LiftRun};

/// The most chips of other lifters.
const CHIPS_MAX: usize = 3;

/// The frame of now.
#[must_use]
pub fn frame(stage: &Stage, scene: &Scene<'_>) -> Frame {
    let due = stage.due(scene);
    let lifter = stage.lifter.clone().unwrap_or_default();
    let (undo, undo_detail) = undo(stage, scene, &due);
    let lift = match due {
        Due::All => String::new(),
        Due::Fresh(entry) => entry.map(|e| e.lift.clone()).unwrap_or_default(),
        Due::SetUp(run)
        | Due::Pad(run, ..)
        | Due::Stop(run)
        | Due::Rest(run, ..)
        | Due::Bar(run, _)
        | Due::End(run) => run.sheet.lift.clone(),
    };
    let screen = match due {
        Due::All => Screen::Choose(choose(scene)),
        Due::Fresh(entry) => Screen::SetUp(fresh(scene, entry, &lifter)),
        Due::SetUp(run) => Screen::SetUp(SetUp {
            main: "back to the bar".into(),
            ..set_up(&run.sheet, Some(run))
        }),
        Due::Pad(run, rung, pad) => Screen::Entry(pad_of(run, rung, pad)),
        Due::Stop(run) => Screen::Stop(stop(run)),
        Due::Rest(run, rung, left) => Screen::Rest(rest(scene, run, rung, left)),
        Due::Bar(run, rung) => Screen::Bar(at_the_bar(scene, run, rung)),
        Due::End(run) => Screen::End(end(scene, run)),
    };
    Frame {
        chips: chips(scene, &lifter),
        lifter,
        lift,
        clock: scene.clock.into(),
        undo,
        undo_detail,
        notice: scene.notice.into(),
        screen,
    }
}

fn undo(stage: &Stage, scene: &Scene<'_>, due: &Due<'_>) -> (String, String) {
    if matches!(due, Due::Pad(..) | Due::SetUp(_)) {
        return ("back".into(), String::new());
    }
    let Some(run) = stage.undoes(scene) else {
        return Default::default();
    };
    let what = match run.entries.last().map(|e| e.what) {
        None => "the start".into(),
        Some(Entered::Stopped) => "the end".into(),
        Some(Entered::WentOn) => "going on".into(),
        Some(Entered::Skipped) => "the skip".into(),
        Some(Entered::Set { reps, .. }) => {
            let at = run.passed().count().saturating_sub(1);
            run.sheet
                .rungs
                .get(at)
                .map(|r| words::set(r.load, run.sheet.unit, reps))
                .unwrap_or_default()
        }
    };
    let who = if stage.lifter.is_none() {
        format!("{} ", run.sheet.lifter)
    } else {
        String::new()
    };
    ("undo".into(), format!("{who}{what}"))
}

fn chips(scene: &Scene<'_>, lifter: &str) -> Vec<Chip> {
    let mut open: Vec<&LiftRun> = scene
        .runs()
        .filter(|run| !run.is_over() && run.sheet.lifter != lifter)
        .collect();
    open.sort_by_key(|run| (run.rested_at(), last_touched(run)));
    let chip = |run: &LiftRun| {
        let (pace, word) = pace(scene, run);
        Chip {
            lifter: run.sheet.lifter.clone(),
            word,
            pace,
        }
    };
    open.into_iter().map(chip).take(CHIPS_MAX).collect()
}

fn pace(scene: &Scene<'_>, run: &LiftRun) -> (Pace, String) {
    if run.is_over() {
        return (Pace::Done, "done".into());
    }
    if run.awaits_decision() {
        return (Pace::Stopped, "back moved".into());
    }
    match scene.rest_left(run) {
        Some(left) => (Pace::Resting, words::minutes(left)),
        None => (Pace::Ready, "ready".into()),
    }
}

fn choose(scene: &Scene<'_>) -> Choose {
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
        "no lifters yet: write them into lifters.toml in the data folder".into()
    } else {
        String::new()
    };
    Choose {
        gym: scene.gym.name.clone(),
        date: scene.date.format("%A %-d %B").to_string(),
        tiles,
        empty,
    }
}

fn tile(scene: &Scene<'_>, name: &str) -> Tile {
    let fresh = scene.fresh(name);
    let run = scene
        .run(name)
        .filter(|run| !run.is_over() || fresh.is_none());
    if let Some(run) = run {
        let (pace, word) = pace(scene, run);
        let (done, all) = (run.passed().count(), run.sheet.rungs.len());
        let word = match pace {
            Pace::Resting => format!("rest {word}"),
            Pace::Done => "done".into(),
            Pace::Stopped => word,
            Pace::Fresh | Pace::Ready | Pace::Blocked => format!("{done} of {all} done"),
        };
        let share = drawings::share(count(done), count(all));
        return Tile {
            word,
            pace,
            share,
            ..sheet_tile(&run.sheet)
        };
    }
    match fresh.map(|entry| (&entry.outcome, entry)) {
        Some((Ok(sheet), _)) => sheet_tile(sheet),
        Some((Err(why), entry)) => Tile {
            lifter: name.into(),
            lift: entry.lift.clone(),
            work: String::new(),
            place: String::new(),
            word: no_sheet(why),
            pace: Pace::Blocked,
            share: 0.0,
        },
        None => Tile {
            lifter: name.into(),
            lift: "nothing today".into(),
            work: String::new(),
            place: String::new(),
            word: String::new(),
            pace: Pace::Done,
            share: 0.0,
        },
    }
}

fn sheet_tile(sheet: &LiftSheet) -> Tile {
    Tile {
        lifter: sheet.lifter.clone(),
        lift: sheet.lift.clone(),
        work: words::work(sheet),
        place: place(sheet),
        word: sheet.rack.clone(),
        pace: Pace::Fresh,
        share: 0.0,
    }
}

fn place(sheet: &LiftSheet) -> String {
    match (&sheet.pins, sheet.is_from_pins()) {
        (Some(pins), _) => format!("hole {}", pins.hole),
        (None, true) => "measure first".into(),
        (None, false) => "from the floor".into(),
    }
}

fn count(n: usize) -> i64 {
    i64::try_from(n).unwrap_or(i64::MAX)
}

/// Why there is no sheet, as a sentence that says what to do.
#[must_use]
pub fn no_sheet(why: &NoSheet) -> String {
    why.to_string()
}

fn fresh(scene: &Scene<'_>, entry: Option<&DayEntry>, lifter: &str) -> SetUp {
    match entry.map(|e| &e.outcome) {
        Some(Ok(sheet)) => SetUp {
            main: "start".into(),
            ..set_up(sheet, None)
        },
        Some(Err(why)) => nothing(no_sheet(why)),
        None if scene.gym.lifters.iter().any(|l| l.name == lifter) => {
            nothing("nothing is planned for today; ask the coach".into())
        }
        None => nothing(format!("{lifter} is not in lifters.toml; ask the coach")),
    }
}

fn nothing(warning: String) -> SetUp {
    SetUp {
        work: String::new(),
        rack: crate::draw::RackDrawing::default(),
        hole: String::new(),
        mats: String::new(),
        height: String::new(),
        overlap: String::new(),
        overlap_small: false,
        bar: String::new(),
        gear: Vec::new(),
        cues: Vec::new(),
        cautions: Vec::new(),
        warnings: vec![warning],
        ladder: Vec::new(),
        note: String::new(),
        main: String::new(),
    }
}

fn set_up(sheet: &LiftSheet, run: Option<&LiftRun>) -> SetUp {
    let pins = sheet.pins.as_ref();
    let mut gear = vec![format!(
        "{} grip",
        words::grip(sheet.grip).trim_end_matches(" grip")
    )];
    gear.extend(words::gear(sheet));
    SetUp {
        work: words::work(sheet),
        rack: drawings::rack(sheet),
        hole: pins.map(|p| p.hole.to_string()).unwrap_or_default(),
        mats: pins.map(|p| words::mats(&p.mats)).unwrap_or_default(),
        height: match pins {
            Some(pins) => words::bar_height(pins),
            None if sheet.is_from_pins() => "on the pins, height not known".into(),
            None => "from the floor".into(),
        },
        overlap: words::overlap(sheet),
        overlap_small: sheet
            .warnings
            .contains(&domain::sheet::Warning::OverlapSmall),
        bar: words::bar(sheet),
        gear,
        cues: sheet.cues.clone(),
        cautions: sheet.cautions.clone(),
        warnings: sheet
            .warnings
            .iter()
            .map(|w| words::warning(sheet, w))
            .collect(),
        ladder: drawings::ladder(sheet, run),
        note: sheet.note.clone(),
        main: String::new(),
    }
}

fn at_the_bar(scene: &Scene<'_>, run: &LiftRun, at: usize) -> AtTheBar {
    let sheet = &run.sheet;
    let rung = &sheet.rungs[at];
    let on = scene.on_bar(sheet);
    let pins = sheet.pins.as_ref();
    AtTheBar {
        load: rung.load.number(sheet.unit),
        unit: sheet.unit.word().into(),
        reps: words::reps(rung.reps),
        rung: words::rung(sheet, at),
        bar: drawings::bar(sheet, on, rung),
        change: drawings::change(on, &rung.per_side, sheet.unit),
        ladder: drawings::ladder(sheet, Some(run)),
        rack: drawings::rack(sheet),
        hole: pins.map(|p| p.hole.to_string()).unwrap_or_default(),
        mats: pins
            .filter(|p| !p.mats.is_empty())
            .map(|p| words::mats(&p.mats))
            .unwrap_or_default(),
        gear: words::worn(rung),
        grip: words::grip(sheet.grip).into(),
        caution: caution(sheet, at),
        main: format!("{} done", rung.reps),
        main_detail: "back kept".into(),
    }
}

/// The cautions take turns, one a rung, so that each is seen and none is a wall of text.
fn caution(sheet: &LiftSheet, at: usize) -> String {
    if sheet.cautions.is_empty() {
        return String::new();
    }
    sheet.cautions[at % sheet.cautions.len()].clone()
}

fn rest(scene: &Scene<'_>, run: &LiftRun, at: usize, left: u32) -> Rest {
    let sheet = &run.sheet;
    let rung = &sheet.rungs[at];
    let on = scene.on_bar(sheet);
    Rest {
        left: words::minutes(left),
        share: drawings::share(i64::from(left), i64::from(rung.rest_s)),
        word: "rest".into(),
        last: last_words(run),
        load: rung.load.number(sheet.unit),
        unit: sheet.unit.word().into(),
        reps: words::reps(rung.reps),
        rung: words::rung(sheet, at),
        bar: drawings::bar(sheet, on, rung),
        change: drawings::change(on, &rung.per_side, sheet.unit),
        ladder: drawings::ladder(sheet, Some(run)),
        gear: words::worn(rung),
        main: "go now".into(),
    }
}

/// "130 kg × 2, back kept": the last set that stands.
fn last_words(run: &LiftRun) -> String {
    let sets = run.passed().zip(&run.sheet.rungs);
    let last = sets.filter_map(|(entry, rung)| match entry.what {
        Entered::Set { reps, hold } => Some((rung, reps, hold)),
        Entered::Skipped | Entered::Stopped | Entered::WentOn => None,
    });
    last.last()
        .map(|(rung, reps, hold)| {
            format!(
                "{}, {}",
                words::set(rung.load, run.sheet.unit, reps),
                words::hold(hold)
            )
        })
        .unwrap_or_default()
}

/// The most numbers on a pad.
const NUMBERS_MAX: u8 = 12;

fn pad_of(run: &LiftRun, at: usize, pad: PadOpen) -> Entry {
    let rung = &run.sheet.rungs[at];
    let load = rung.load.words(run.sheet.unit);
    match pad {
        PadOpen::Reps => {
            let most = rung.reps.saturating_add(3).max(7);
            let least = most.saturating_sub(NUMBERS_MAX - 1);
            Entry {
                pad: Pad::Reps,
                question: format!("how many reps at {load}?"),
                numbers: (least..=most).collect(),
                planned: rung.reps,
                through: String::new(),
                through_on: false,
                skip: "skip this rung".into(),
                stop: "end the lift".into(),
            }
        }
        PadOpen::Moved { through } => Entry {
            pad: Pad::Moved,
            question: "at which rep did the back move?".into(),
            numbers: (1..=rung.reps.clamp(1, NUMBERS_MAX)).collect(),
            planned: 0,
            through: format!("did all {} all the same", rung.reps),
            through_on: through,
            skip: String::new(),
            stop: String::new(),
        },
    }
}

fn stop(run: &LiftRun) -> Stop {
    let at = run.passed().count().saturating_sub(1);
    let rung = &run.sheet.rungs[at];
    let (reps, hold) = match run.last_set().map(|e| e.what) {
        Some(Entered::Set { reps, hold }) => (reps, hold),
        Some(Entered::Skipped | Entered::Stopped | Entered::WentOn) | None => (0, Hold::Kept),
    };
    Stop {
        headline: words::hold(hold),
        set: format!(
            "{}, {reps} of {}",
            rung.load.words(run.sheet.unit),
            words::reps(rung.reps)
        ),
        advice: "A moved back ends the climb. Pain means stop: see a clinician.".into(),
        ladder: drawings::ladder(&run.sheet, Some(run)),
        main: "end the lift".into(),
        go_on: if run.next_rung().is_some() {
            "go on, coach agrees".into()
        } else {
            String::new()
        },
    }
}

fn end(scene: &Scene<'_>, run: &LiftRun) -> End {
    let sheet = &run.sheet;
    let passed: Vec<Entered> = run.passed().map(|e| e.what).collect();
    let rows: Vec<DoneRow> = sheet
        .rungs
        .iter()
        .enumerate()
        .map(|(at, rung)| done_row(sheet, at, rung, passed.get(at)))
        .collect();
    let short = run.is_stopped()
        || passed
            .iter()
            .zip(&sheet.rungs)
            .any(|(entered, rung)| match entered {
                Entered::Set { reps, hold } => *reps < rung.reps || *hold != Hold::Kept,
                Entered::Skipped | Entered::Stopped | Entered::WentOn => false,
            });
    let next = scene.fresh(&sheet.lifter);
    End {
        headline: if passed.is_empty() {
            "nothing done".into()
        } else {
            last_words(run)
        },
        short,
        rows,
        sum: sum(run, &passed),
        main: next.map_or_else(|| "next lifter".into(), |e| format!("next: {}", e.lift)),
    }
}

fn done_row(
    sheet: &LiftSheet,
    _at: usize,
    rung: &domain::Rung,
    entered: Option<&Entered>,
) -> DoneRow {
    let (state, _) = drawings::row_state(rung, entered, false);
    let (reps, hold) = match entered {
        Some(Entered::Set { reps, hold }) if *reps == rung.reps => {
            (words::reps(*reps), words::hold(*hold))
        }
        Some(Entered::Set { reps, hold }) => (
            format!("{reps} of {}", words::reps(rung.reps)),
            words::hold(*hold),
        ),
        Some(Entered::Skipped | Entered::Stopped | Entered::WentOn) => {
            ("skipped".into(), String::new())
        }
        None => ("not done".into(), String::new()),
    };
    let kind = if rung.kind == RungKind::Work {
        "work"
    } else {
        "warm-up"
    };
    DoneRow {
        load: rung.load.words(sheet.unit),
        reps,
        hold,
        state,
        kind: kind.into(),
    }
}

fn sum(run: &LiftRun, passed: &[Entered]) -> String {
    let sets: Vec<u32> = passed
        .iter()
        .filter_map(|entered| match entered {
            Entered::Set { reps, .. } => Some(u32::from(*reps)),
            Entered::Skipped | Entered::Stopped | Entered::WentOn => None,
        })
        .collect();
    let minutes = run.begun_at.seconds_until(last_touched(run).0).div_ceil(60);
    let plural = |n: usize, one: &str, many: &str| {
        if n == 1 {
            format!("1 {one}")
        } else {
            format!("{n} {many}")
        }
    };
    format!(
        "{}, {} reps in all, {}",
        plural(sets.len(), "set", "sets"),
        sets.iter().sum::<u32>(),
        plural(minutes as usize, "minute", "minutes"),
    )
}
