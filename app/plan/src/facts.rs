//! What a title, a header or a lone cell says of the rows under it: week, day, lifter, lift.
//!
//! Refuses: days that could be two, and numbers of weeks without a year.
use crate::against::Against;
use crate::date::{self, date};
use crate::fault::{Wrong, quote};
use crate::nearest::squeeze;
use crate::weekday::weekday;
use crate::words::words;
use chrono::{NaiveDate, Weekday};
use domain::{MassUnit, TrackName};
use text::keys::checked as k;

/// Facts that hold for some cells; what is not said is `None`.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Facts {
    /// The day itself.
    pub(crate) date: Option<NaiveDate>,
    /// Week of the plan, from 1.
    pub(crate) week: Option<u16>,
    /// The Monday of a week that was named by its date.
    pub(crate) starts: Option<NaiveDate>,
    /// Day of the week.
    pub(crate) weekday: Option<Weekday>,
    /// The lifter's proper name.
    pub(crate) lifter: Option<String>,
    /// The lift's proper name.
    pub(crate) lift: Option<String>,
    /// The track.
    pub(crate) track: Option<TrackName>,
    /// The unit of bare loads.
    pub(crate) unit: Option<MassUnit>,
    /// The Monday of week 1.
    pub(crate) monday: Option<NaiveDate>,
    /// The first day of the month that days alone are of.
    pub(crate) month: Option<NaiveDate>,
}

/// Most weeks of a plan.
const WEEKS_MAX: u16 = 104;
/// Longest text that may be facts, in bytes.
const TEXT_MAX: usize = 80;

/// What a text says, where it says nothing else.
pub(crate) fn read(text: &str, against: &Against<'_>) -> Result<Option<Facts>, Wrong> {
    let text = text.trim().trim_end_matches([':', '.', '*']).trim();
    if text.is_empty() || text.len() > TEXT_MAX {
        return Ok(None);
    }
    if let Some(facts) = one(text, against)? {
        return Ok(Some(facts));
    }
    let apart = |c: char| {
        matches!(
            c,
            ',' | '/' | '|' | '(' | ')' | '[' | ']' | ':' | '\n' | '\u{b7}' | '\u{2022}'
        )
    };
    let dashes = text
        .replace(['\u{2013}', '\u{2014}'], "-")
        .replace(" - ", "|");
    let parts: Vec<&str> = dashes
        .split(apart)
        .map(str::trim)
        .filter(|part| !part.is_empty())
        .collect();
    if let Some(facts) = with_remark(text, against)? {
        return Ok(Some(facts));
    }
    if parts.len() > 1
        && let Some(facts) = joint(&parts, against)?
    {
        return Ok(Some(facts));
    }
    // "Week 1 Monday", "Monday Tevita": a word or two taken off the front.
    let words: Vec<&str> = text.split_whitespace().collect();
    for front in 1..words.len().min(4) {
        let (a, b) = words.split_at(front);
        if let Some(facts) = joint(&[&a.join(" "), &b.join(" ")], against)? {
            return Ok(Some(facts));
        }
    }
    Ok(None)
}

/// "Week 4 (deload)", "Monday - bar from the floor": a week or a day, and words that say nothing of
/// when.
fn with_remark(text: &str, against: &Against<'_>) -> Result<Option<Facts>, Wrong> {
    let Some((front, rest)) = text.split_once(['(', '[']) else {
        return Ok(None);
    };
    let remark = rest.trim_end_matches([')', ']']);
    let words = remark
        .chars()
        .all(|c| c.is_alphabetic() || matches!(c, ' ' | '-' | '\''));
    if !words || one(remark, against)?.is_some() {
        return Ok(None);
    }
    let facts = one(front.trim(), against)?;
    Ok(facts.filter(|facts| facts.kinds() != 0 && facts.kinds() & !0b111 == 0))
}

/// Facts of several parts that do not contradict each other.
fn joint(parts: &[&str], against: &Against<'_>) -> Result<Option<Facts>, Wrong> {
    let mut facts = Facts::default();
    for part in parts {
        let Some(more) = one(part, against)? else {
            return Ok(None);
        };
        if facts.contradicts(&more) {
            return Ok(None);
        }
        facts = facts.or(&more);
    }
    // "Week 1 (7 Dec 2026)": the day is the week's first.
    if facts.week.is_some()
        && facts.weekday.is_none()
        && let Some(day) = facts.date.take()
    {
        facts.starts = Some(monday_of(day));
    }
    Ok(Some(facts))
}

/// The Monday of a day's week.
pub(crate) fn monday_of(day: NaiveDate) -> NaiveDate {
    day.week(Weekday::Mon).first_day()
}

/// A text that is one fact.
fn one(text: &str, against: &Against<'_>) -> Result<Option<Facts>, Wrong> {
    let facts = |set: &dyn Fn(&mut Facts)| {
        let mut facts = Facts::default();
        set(&mut facts);
        Ok(Some(facts))
    };
    if let Some(lifter) = against.lifters.lookup(text) {
        return facts(&|facts| facts.lifter = Some(lifter.clone()));
    }
    if let Some(lift) = against.lifts.lookup(text) {
        return facts(&|facts| facts.lift = Some(lift.clone()));
    }
    if let Some(weekday) = weekday(text) {
        return facts(&|facts| facts.weekday = Some(weekday));
    }
    if let Some(unit) = unit(text) {
        return facts(&|facts| facts.unit = Some(unit));
    }
    if let Some(track) = track(text) {
        return facts(&|facts| facts.track = TrackName::new(track));
    }
    let lower = text.to_lowercase();
    if let Some(found) = labelled(text, &lower, against)? {
        return Ok(Some(found));
    }
    if let Some(found) = week(text, &lower)? {
        return Ok(Some(found));
    }
    if let Some(month) = date::month_of_year(text) {
        return facts(&|facts| facts.month = Some(month));
    }
    match date(text) {
        Ok(day) => facts(&|facts| facts.date = Some(day)),
        Err(wrong) if date::looks_like(text) => Err(wrong),
        Err(_) => Ok(None),
    }
}

/// Whether a text says which Monday week 1 begins on, well or badly.
pub(crate) fn says_start(text: &str) -> bool {
    let lower = text.trim().to_lowercase();
    lower.starts_with("first monday") || lower.starts_with("erster montag")
}

/// "Lifter: Tevita", "First Monday 2026-12-07".
fn labelled(text: &str, lower: &str, against: &Against<'_>) -> Result<Option<Facts>, Wrong> {
    const NAMES: [&str; 7] = [
        "lifter",
        "name",
        "athlete",
        "heber",
        "sportler",
        "athlet",
        "athl\u{e8}te",
    ];
    const STARTS: [&str; 8] = [
        "first monday",
        "start",
        "starts",
        "begins",
        "from",
        "beginn",
        "ab",
        "erster montag",
    ];
    const DAYS: [&str; 5] = ["date", "day", "datum", "tag", "jour"];
    let value = |labels: &[&str]| {
        labels.iter().find_map(|label| {
            let rest = lower.strip_prefix(label)?;
            let rest = rest.strip_prefix([':', ' ', '='])?;
            text.get(text.len() - rest.len()..).map(str::trim)
        })
    };
    if let Some(name) = value(&NAMES) {
        let lifter = against.lifters.lookup(name);
        return Ok(lifter.map(|lifter| Facts {
            lifter: Some(lifter),
            ..Facts::default()
        }));
    }
    if let Some(day) = value(&STARTS) {
        let Ok(day) = date(day) else {
            return Ok(None);
        };
        if monday_of(day) != day {
            let what = words!(k::A_FIRST_DAY_THAT_IS);
            let right = words!(
                k::WRITE_THE_MONDAY_OF_WEEK,
                quote(&monday_of(day).to_string())
            );
            return Err(Wrong::value(text, what, right));
        }
        return Ok(Some(Facts {
            monday: Some(day),
            ..Facts::default()
        }));
    }
    if let Some(day) = value(&DAYS) {
        if let Some(weekday) = weekday(day) {
            return Ok(Some(Facts {
                weekday: Some(weekday),
                ..Facts::default()
            }));
        }
        if day.parse::<u8>().is_ok() {
            let right = words!(k::WRITE_ITS_WEEKDAY_OR_ITS);
            return Err(Wrong::value(text, words!(k::A_DAY_BY_ITS_NUMBER), right));
        }
        return Ok(date(day).ok().map(|day| Facts {
            date: Some(day),
            ..Facts::default()
        }));
    }
    Ok(None)
}

/// "Week 3", "W3", "week of 7 Dec 2026", "KW 49/2026", "2026-W49".
fn week(text: &str, lower: &str) -> Result<Option<Facts>, Wrong> {
    let of_number = |week: u16| {
        (1..=WEEKS_MAX).contains(&week).then(|| Facts {
            week: Some(week),
            ..Facts::default()
        })
    };
    for front in [
        "week of",
        "week from",
        "w/c",
        "woche vom",
        "woche ab",
        "semaine du",
    ] {
        if let Some(rest) = lower.strip_prefix(front) {
            let day = date(text[text.len() - rest.len()..].trim())?;
            if day.week(Weekday::Mon).last_day() == day {
                let right = words!(k::WRITE_THE_MONDAY_OF_THE_WEEK);
                return Err(Wrong::value(text, words!(k::A_WEEK_THAT_BEGINS_ON), right));
            }
            return Ok(Some(Facts {
                starts: Some(monday_of(day)),
                ..Facts::default()
            }));
        }
    }
    for front in ["kw", "cw", "calendar week", "kalenderwoche"] {
        if let Some(rest) = lower.strip_prefix(front) {
            let numbers: Vec<&str> = rest
                .split(|c: char| !c.is_ascii_digit())
                .filter(|part| !part.is_empty())
                .collect();
            return match numbers.as_slice() {
                [week, year] => Ok(of_calendar(year, week)),
                [_] => {
                    let what = words!(k::A_WEEK_OF_THE_CALENDAR);
                    let right = words!(k::WRITE_THE_YEAR_WITH_IT);
                    Err(Wrong::value(text, what, right))
                }
                _ => Ok(None),
            };
        }
    }
    if let Some((year, week)) = lower.split_once("-w")
        && year.len() == 4
    {
        return Ok(of_calendar(year, week));
    }
    for front in ["weeks", "week", "wk", "woche", "semaine", "sem", "w"] {
        if let Some(rest) = lower.strip_prefix(front) {
            let rest = rest.trim_start_matches([' ', '.', '#', '-']);
            return Ok(rest.parse().ok().and_then(of_number));
        }
    }
    Ok(None)
}

fn of_calendar(year: &str, week: &str) -> Option<Facts> {
    let year: i32 = year.parse().ok()?;
    let monday = NaiveDate::from_isoywd_opt(year, week.parse().ok()?, Weekday::Mon)?;
    (2000..=2099).contains(&year).then(|| Facts {
        starts: Some(monday),
        ..Facts::default()
    })
}

fn unit(text: &str) -> Option<MassUnit> {
    match text.to_lowercase().as_str() {
        "kg" | "kgs" | "in kg" => Some(MassUnit::Kg),
        "lb" | "lbs" | "in lb" | "in lbs" => Some(MassUnit::Lb),
        _ => None,
    }
}

/// The tracks that the trade has names for.
pub(crate) fn track(text: &str) -> Option<&'static str> {
    let known = [
        ("heavy", "heavy"),
        ("medium", "medium"),
        ("light", "light"),
        ("heavyday", "heavy"),
        ("mediumday", "medium"),
        ("lightday", "light"),
        ("schwer", "heavy"),
        ("mittel", "medium"),
        ("leicht", "light"),
    ];
    let text = squeeze(text);
    known
        .iter()
        .find(|(word, _)| *word == text)
        .map(|(_, track)| *track)
}

macro_rules! each {
    ($macro:ident) => {
        $macro!(
            date, week, starts, weekday, lifter, lift, track, unit, monday, month
        )
    };
}

impl Facts {
    /// These, and what they do not say from `under`.
    pub(crate) fn or(&self, under: &Self) -> Self {
        macro_rules! first {
            ($($field:ident),*) => {
                Self { $($field: self.$field.clone().or_else(|| under.$field.clone())),* }
            };
        }
        each!(first)
    }

    /// Whether both say something of the same kind, and not the same.
    pub(crate) fn contradicts(&self, other: &Self) -> bool {
        macro_rules! differ {
            ($($field:ident),*) => {
                false $(|| matches!((&self.$field, &other.$field), (Some(a), Some(b)) if a != b))*
            };
        }
        each!(differ)
    }

    /// Which kinds are said, a bit each; units do not count.
    pub(crate) fn kinds(&self) -> u16 {
        let said = [
            self.date.is_some(),
            self.week.is_some() || self.starts.is_some(),
            self.weekday.is_some(),
            self.lifter.is_some(),
            self.lift.is_some(),
            self.track.is_some(),
            self.monday.is_some(),
            self.month.is_some(),
        ];
        said.iter()
            .enumerate()
            .fold(0, |bits, (at, said)| bits | u16::from(*said) << at)
    }

    /// Takes a lone row's facts: what is said anew ends what was said under it.
    pub(crate) fn turn_to(&mut self, facts: &Self) {
        let of_week = facts.week.is_some() || facts.starts.is_some();
        if of_week || facts.month.is_some() {
            (self.week, self.starts) = (None, None);
        }
        if of_week || facts.month.is_some() || facts.weekday.is_some() || facts.date.is_some() {
            (self.date, self.weekday, self.lift, self.track) = (None, None, None, None);
        }
        *self = facts.or(self);
    }
}
