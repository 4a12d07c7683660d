//! `pinladder picture`: any screen as a PNG file, drawn without a display.
//!
//! Works on a copy of the state in memory, so that a picture leaves no trace in the journal.
//! Refuses: screens that it does not know, days without a lift.
mod screens;

pub use screens::SCREENS;

use crate::clock::BenchClock;
use crate::devices::{beside, wanted};
use crate::error::KioskError;
use crate::folder::{DEMO, DEMO_PLAN, Folder, MEET_FILE};
use crate::gym_files;
use crate::kiosk::Kiosk;
use crate::owner::Owner;
use crate::terminal::{language, say};
use crate::walk::{Walk, walk, worded};
use chrono::{Days, NaiveDate, NaiveTime};
use clap::Args;
use domain::{Event, Fact, Moment, State};
use hardware::{Config, ConfigFault, Faults};
use plan::{Source, words};
use std::io::Write;
use std::path::{Path, PathBuf};
use text::keys::checked as k;
use view::beside::Beside;
use view::desk::{StickChange, StickIn, StickNews};
use view::language::Said;
use view::{Chosen, Frame, Language, Light, Signs};

/// Options of `picture`.
#[derive(Debug, Args)]
pub struct PictureArgs {
    /// Which screen; see --list.
    #[arg(required_unless_present = "list")]
    screen: Option<String>,
    /// Name the screens.
    #[arg(long)]
    list: bool,
    /// The file to write.
    #[arg(long, value_name = "FILE.png", required_unless_present = "list")]
    out: Option<PathBuf>,
    /// Whose screen; by default the first who has a lift.
    #[arg(long, value_name = "NAME")]
    lifter: Option<String>,
    /// The day, as in 2026-12-01; for the demo gym a Wednesday of its plan, else today.
    #[arg(long, value_name = "D")]
    date: Option<NaiveDate>,
    /// Width and height in pixels.
    #[arg(long, value_name = "WxH", default_value = "1280x800", value_parser = size)]
    size: (u32, u32),
    /// The language of the screen: en, de or es.
    #[arg(long, value_name = "CODE", default_value = "en", value_parser = language)]
    language: Language,
    /// Dark on light, as in a bright room.
    #[arg(long)]
    daylight: bool,
}

/// Pixels on a side at most.
const SIDE_MAX: u32 = 4_096;

fn size(text: &str) -> Result<(u32, u32), String> {
    let wrong =
        || format!("{text} is not a size; write it as in 1280x800, 320 to {SIDE_MAX} a side");
    let (width, height) = text.split_once('x').ok_or_else(wrong)?;
    let side = |text: &str| text.parse().ok().filter(|n| (320..=SIDE_MAX).contains(n));
    side(width).zip(side(height)).ok_or_else(wrong)
}

/// A screen that can be drawn: its name, and how to get there.
#[derive(Debug, Clone, Copy)]
pub struct Shown {
    /// As written on the command line.
    pub name: &'static str,
    /// What it is, in a few words.
    pub about: &'static str,
    walk: Walk,
}

/// Runs the command.
///
/// # Errors
/// [`KioskError`] when the screen is unknown, cannot be reached, or the file cannot be written.
pub fn picture(
    args: &PictureArgs,
    data: Option<&Path>,
    out: &mut dyn Write,
) -> Result<bool, KioskError> {
    if args.list {
        for shown in SCREENS {
            say(out, &format!("{:<12} {}\n", shown.name, shown.about));
        }
        return Ok(true);
    }
    let name = args.screen.as_deref().unwrap_or_default();
    let light = if args.daylight {
        Light::Daylight
    } else {
        Light::Dim
    };
    let chosen = Chosen {
        language: args.language,
        light,
    };
    shown_named(name)?;
    let setting = match data {
        Some(data) => kept(data)?,
        None => demo()?,
    };
    let frames = frames_in(setting, name, args.lifter.as_deref(), args.date, &[chosen])?;
    let [frame] = &frames[..] else {
        return Err(KioskError::Picture("one look gave no frame".into()));
    };
    let frame = frame.clone();
    let png = png_of(&frame, args.size)?;
    let file = args.out.clone().unwrap_or_default();
    std::fs::write(&file, png).map_err(KioskError::file(&file))?;
    Ok(true)
}

/// A gym with its plan on a day: where pictures are taken.
#[derive(Debug, Clone)]
pub struct Setting {
    state: State,
    gym: domain::Gym,
    day: NaiveDate,
}

impl Setting {
    /// A gym and the text of a plan.
    ///
    /// # Errors
    /// [`KioskError::Faults`] when the plan has any.
    pub fn of(gym: domain::Gym, plan: &str, day: NaiveDate) -> Result<Self, KioskError> {
        let name = "four-weeks.csv";
        let text = plan.as_bytes();
        let source = Source { name, text };
        let rows = plan::coach_plan(source, &gym).map_err(KioskError::Faults)?;
        let taken = Fact::PlanTaken {
            name: name.into(),
            rows,
        };
        let state = State::replay(&[Event {
            at: Moment(0),
            fact: taken,
        }]);
        Ok(Self { state, gym, day })
    }
}

/// The frame of a screen of the demo gym, in English and dim.
///
/// # Errors
/// [`KioskError`] when the screen is unknown or cannot be reached.
pub fn frame_of(
    name: &str,
    lifter: Option<&str>,
    date: Option<NaiveDate>,
) -> Result<Frame, KioskError> {
    let mut frames = frames_in(demo()?, name, lifter, date, &[Chosen::default()])?;
    frames
        .pop()
        .ok_or_else(|| KioskError::Picture("one look gave no frame".into()))
}

/// The same face of a screen once for each choice of language and light.
///
/// # Errors
/// [`KioskError`] when the screen is unknown or cannot be reached.
pub fn frames_in(
    setting: Setting,
    name: &str,
    lifter: Option<&str>,
    date: Option<NaiveDate>,
    chosen: &[Chosen],
) -> Result<Vec<Frame>, KioskError> {
    let shown = shown_named(name)?;
    if matches!(shown.walk, Walk::Stall(_) | Walk::Meet { .. })
        && (lifter.is_some() || date.is_some())
    {
        return Err(KioskError::Usage(format!(
            "{name} is drawn from days and lifters of its own; leave out --lifter and --date"
        )));
    }
    let setting = if matches!(shown.walk, Walk::Crowd(..)) {
        crowd()?
    } else if matches!(shown.walk, Walk::Stall(_)) {
        stall()?
    } else if matches!(shown.walk, Walk::Meet { .. }) {
        meet_day()?
    } else {
        setting
    };
    let date = date.unwrap_or(setting.day);
    let time = NaiveTime::from_hms_opt(18, 42, 0).unwrap_or_default();
    let clock = BenchClock::at(date.and_time(time));
    let mut kiosk = Kiosk::in_memory(setting.state, setting.gym, Box::new(clock.clone()));
    walk(&mut kiosk, &clock, shown.walk, lifter)?;
    kiosk.tell_stick(stick(date));
    kiosk.tell_copies(Some(COPIES.map(String::from).to_vec()));
    let frame = |chosen: &Chosen| {
        kiosk.choose_look(*chosen)?;
        let beside = matches!(shown.walk, Walk::Beside).then(|| devices_of(&kiosk.signs()));
        Ok(Frame {
            beside: beside.transpose()?,
            ..worded(&mut kiosk, shown.walk)
        })
    };
    chosen.iter().map(frame).collect()
}

/// Copies of a second place.
const COPIES: [&str; 2] = ["pinladder-2026-11-25.sqlite", "pinladder-2026-11-24.sqlite"];

/// A stick with two plans.
fn stick(date: NaiveDate) -> StickNews {
    let days = |from: u64, to: u64| (date + Days::new(from), date + Days::new(to));
    let change = |lifter: &str, days, new, changed| StickChange {
        lifter: lifter.to_owned(),
        days,
        new,
        changed,
        same: 0,
    };
    StickNews::In(StickIn {
        id: String::new(),
        plans: vec![
            ("january.xlsx".to_owned(), Ok(12)),
            ("plans/testing.csv".to_owned(), Ok(3)),
        ],
        passed: vec![Said::of(|say| {
            let why = words!(
                k::PLACE_AND_WHAT,
                "old.ods",
                words!(k::A_LINK_LINKS_ARE_NOT)
            );
            crate::desk::in_words(say, &why)
        })],
        changes: vec![
            change("Hamza", days(7, 35), 6, 2),
            change("Tevita", days(14, 14), 1, 0),
        ],
        can_take: true,
    })
}

/// Simulated devices of every kind that show these signs.
fn devices_of(signs: &Signs) -> Result<Beside, KioskError> {
    let fault = |fault: ConfigFault| KioskError::Picture(fault.to_string());
    let config = Config::read(include_str!("picture/devices.toml")).map_err(fault)?;
    let mut opened = hardware::open(&config, &Faults::default());
    opened.outputs.step(0, &wanted(signs, false));
    Ok(opened.panel.as_ref().map(beside).unwrap_or_default())
}

/// The screen of that name.
fn shown_named(name: &str) -> Result<&'static Shown, KioskError> {
    SCREENS
        .iter()
        .find(|shown| shown.name == name)
        .ok_or_else(|| {
            let names: Vec<&str> = SCREENS.iter().map(|shown| shown.name).collect();
            KioskError::Usage(format!(
                "no screen is called {name}; there are {}",
                names.join(", ")
            ))
        })
}

/// PNG bytes of a frame; the same on every machine.
///
/// # Errors
/// [`KioskError::Picture`] when it cannot be drawn.
pub fn png_of(frame: &Frame, (width, height): (u32, u32)) -> Result<Vec<u8>, KioskError> {
    let picture = ui::picture(frame, width, height).map_err(KioskError::Picture)?;
    let mut bytes = Vec::new();
    let fail = |error: png::EncodingError| KioskError::Picture(error.to_string());
    let mut encoder = png::Encoder::new(&mut bytes, picture.width, picture.height);
    encoder.set_color(png::ColorType::Rgba);
    encoder.set_depth(png::BitDepth::Eight);
    let mut writer = encoder.write_header().map_err(fail)?;
    writer.write_image_data(&picture.pixels).map_err(fail)?;
    writer.finish().map_err(fail)?;
    Ok(bytes)
}

/// The demo gym on a Wednesday of its plan, with a pull from the pins; the dates as in the file.
///
/// # Errors
/// [`KioskError::Faults`] when the demo gym itself has any.
pub fn demo() -> Result<Setting, KioskError> {
    let day = NaiveDate::from_ymd_opt(2026, 11, 25).unwrap_or_default();
    Setting::of(gym_files::demo()?, DEMO_PLAN, day)
}

/// The demo gym's racks on that Wednesday with other lifters: enough to fill a floor.
fn crowd() -> Result<Setting, KioskError> {
    let source = |name, text: &'static str| Source {
        name,
        text: text.as_bytes(),
    };
    let lifters = source("crowd.toml", include_str!("picture/crowd.toml"));
    let gym = plan::gym(source(DEMO[0].0, DEMO[0].1), lifters).map_err(KioskError::Faults)?;
    let day = NaiveDate::from_ymd_opt(2026, 11, 25).unwrap_or_default();
    Setting::of(gym, include_str!("picture/crowd.csv"), day)
}

/// The demo gym with one lifter whose deadlift no longer rises.
fn stall() -> Result<Setting, KioskError> {
    let day = NaiveDate::from_ymd_opt(2026, 10, 7).unwrap_or_default();
    Setting::of(gym_files::demo()?, include_str!("picture/stall.csv"), day)
}

/// The demo gym on its test day.
fn meet_day() -> Result<Setting, KioskError> {
    let day = NaiveDate::from_ymd_opt(2026, 12, 2).unwrap_or_default();
    let mut setting = Setting::of(gym_files::demo()?, DEMO_PLAN, day)?;
    let text = include_str!("../../../demo-data/meet.toml").to_owned();
    setting.state.files.insert(MEET_FILE.to_owned(), text);
    Ok(setting)
}

/// What a data folder holds, today.
fn kept(data: &Path) -> Result<Setting, KioskError> {
    let folder = Folder::open(Some(data))?;
    if !folder.journal().exists() {
        let empty = format!(
            "{} has no journal; start the kiosk on it first",
            data.display()
        );
        return Err(KioskError::Usage(empty));
    }
    let owner = Owner::open(folder.open_journal()?)?;
    let gym = gym_files::in_force(&owner)?;
    let day = chrono::Local::now().date_naive();
    let state = owner.state().clone();
    Ok(Setting { state, gym, day })
}
