//! The blocks of a programme: weeks of days, each lift with a scheme for all weeks or one a week.
//!
//! Refuses: blocks that lie over one another, weeks without a scheme, a day twice, light weeks beside
//! schemes by week.
use crate::coach_names::{Held, TASKS_MAX, WEEKDAYS};
use crate::date::date;
use crate::fault::{Wrong, quote};
use crate::fields;
use crate::known::Known;
use crate::quantity::percent;
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::{choice, name};
use crate::words::{term, words};
use chrono::{NaiveDate, Weekday};
use domain::programme::blocks::{Block, BlockDay, BlockLift, Light};
use text::keys::checked as k;

mod lift;

/// Most blocks of a programme, and most rounds of them.
const BLOCKS_MAX: usize = 24;
/// Most weeks of a block, of its times, and of the rounds of all blocks.
const WEEKS_MAX: u8 = 52;
/// Most weeks of a programme: ten years.
const WEEKS_IN_ALL: u32 = 520;

/// Reads the blocks of a programme for its lifters; none where it has none.
pub(crate) fn read(
    doc: &mut Doc<'_>,
    programme: &Entry<'_>,
    lifters: &[String],
    against: &Held<'_>,
) -> Vec<Block> {
    let written = programme.entries(doc, "block", BLOCKS_MAX, &fields::BLOCK);
    if programme.is_empty_list("block") {
        let right = words!(k::ADD_PROGRAMME_BLOCK_TABLES_OR);
        let wrong = Wrong::plain(words!(k::NO_BLOCK), right);
        doc.missing(&programme.at_value("block"), wrong);
    }
    beside(doc, programme);
    let mut known = Known::none(term!(k::BLOCK));
    let mut blocks: Vec<Block> = Vec::new();
    for entry in &written {
        let name = entry.text(doc, "name", name);
        known.add(doc, name.as_deref(), &entry.at_value("name"));
        let starts = starts(doc, entry, blocks.last());
        let weeks = entry.whole(doc, "weeks", &(1..=WEEKS_MAX));
        let times = entry.whole(doc, "times", &(1..=WEEKS_MAX));
        let times = times.unwrap_or(1);
        let light = weeks.and_then(|weeks| light(doc, entry, (weeks, times)));
        let from = starts.unwrap_or_default();
        let of = lift::Of {
            weeks: weeks.unwrap_or(0),
            is_light: entry.has("light"),
            lifters,
            from,
        };
        let days = days(doc, entry, &of, against);
        if let (Some(name), Some(starts), Some(weeks)) = (name, starts, weeks) {
            blocks.push(Block {
                name,
                starts,
                weeks,
                times,
                light,
                days,
            });
        }
    }
    rounds(doc, programme, &written, blocks)
}

/// What makes no sense beside blocks.
fn beside(doc: &mut Doc<'_>, programme: &Entry<'_>) {
    if !programme.has("block") {
        if programme.has("rounds") {
            let read = words!(k::ROUNDS_WITHOUT_BLOCK);
            let right = words!(k::ADD_PROGRAMME_BLOCK_TABLES_OR);
            doc.wrong(&programme.at_value("rounds"), Wrong::plain(read, right));
        }
        return;
    }
    for (key, right) in [
        ("day", words!(k::PUT_THE_DAYS_INTO_THE)),
        ("apart_days", words!(k::LEAVE_IT_OUT_DAYS_OF)),
        ("begins", words!(k::LEAVE_IT_OUT_STARTS_OF)),
    ] {
        if programme.has(key) {
            let read = words!(k::BESIDE_BLOCK, quote(key));
            doc.wrong(&programme.at_value(key), Wrong::plain(read, right));
        }
    }
}

/// The Monday of a block: as written, else right after the block before.
fn starts(doc: &mut Doc<'_>, entry: &Entry<'_>, before: Option<&Block>) -> Option<NaiveDate> {
    if !entry.has("starts") {
        if before.is_none() {
            let read = words!(k::THE_FIRST_BLOCK_WITHOUT_STARTS);
            let right = words!(k::WRITE_THE_MONDAY_OF_ITS);
            doc.missing(entry.at(), Wrong::plain(read, right));
        }
        return before.map(Block::ends_before);
    }
    let at = entry.at_value("starts");
    let starts = entry.text(doc, "starts", date)?;
    let monday = starts.week(Weekday::Mon).first_day();
    if starts != monday {
        let read = words!(k::WHICH_IS_NO_MONDAY, starts.to_string());
        let right = words!(k::WRITE_THE_MONDAY_OF_THE, monday.to_string());
        doc.wrong(&at, Wrong::plain(read, right));
        return None;
    }
    if let Some(before) = before
        && starts < before.ends_before()
    {
        let last = before.ends_before().pred_opt().unwrap_or_default();
        let read = words!(
            k::WHILE_STILL_GOES_ON_TO,
            starts.to_string(),
            quote(&before.name),
            last.to_string()
        );
        let right = words!(k::WRITE_OR_LATER_OR_LEAVE, before.ends_before().to_string());
        doc.wrong(&at, Wrong::plain(read, right));
        return None;
    }
    Some(starts)
}

/// The light weeks of a block of so many weeks, so many times.
fn light(doc: &mut Doc<'_>, entry: &Entry<'_>, (weeks, times): (u8, u8)) -> Option<Light> {
    let share = entry.text(doc, "light", |text| percent(text, &(2_000..=9_500)));
    let all = u16::from(weeks) * u16::from(times);
    let every = entry.has("light_every");
    let at = entry.at_value("light_every");
    if every && !entry.has("light") {
        let read = words!(k::LIGHT_EVERY_WITHOUT_LIGHT);
        let right = words!(k::WRITE_HOW_LIGHT_AS_LIGHT);
        doc.wrong(&at, Wrong::plain(read, right));
        return None;
    }
    if every && all < 2 {
        let read = words!(k::A_LIGHT_WEEK_IN_A);
        doc.wrong(&at, Wrong::plain(read, words!(k::LEAVE_IT_OUT_OR_GIVE)));
        return None;
    }
    let every = entry.whole(doc, "light_every", &(2..=all.max(2)));
    if entry.has("light") && entry.has("light_every") && every.is_none() {
        return None;
    }
    share.map(|share| Light { share, every })
}

fn days(
    doc: &mut Doc<'_>,
    entry: &Entry<'_>,
    of: &lift::Of<'_>,
    against: &Held<'_>,
) -> Vec<BlockDay> {
    let mut days: Vec<BlockDay> = Vec::new();
    for written in entry.entries(doc, "day", WEEKDAYS.len(), &fields::BLOCK_DAY) {
        let weekday = written.text(doc, "weekday", |text| choice(text, &WEEKDAYS));
        let own = written.text(doc, "name", name);
        let mut lifts: Vec<BlockLift> = Vec::new();
        for lift in written.entries(doc, "lifts", TASKS_MAX, &fields::BLOCK_LIFT) {
            let Some(read) = lift::read(doc, &lift, of, against) else {
                continue;
            };
            let same = |other: &BlockLift| other.lift == read.lift && other.track == read.track;
            if lifts.iter().any(same) {
                let what = words!(k::THE_AGAIN_ON_THE_SAME, read.lift.as_str());
                let right = words!(k::WRITE_ITS_SETS_AS_ONE);
                doc.wrong(lift.at(), Wrong::plain(what, right));
            }
            lifts.push(read);
        }
        if written.is_empty_list("lifts") {
            let right = words!(k::WRITE_AT_LEAST_ONE_LIFT);
            let wrong = Wrong::plain(words!(k::A_DAY_WITHOUT_A_LIFT), right);
            doc.missing(&written.at_value("lifts"), wrong);
        }
        let Some(weekday) = weekday else { continue };
        if days.iter().any(|day| day.weekday == weekday) {
            let read = words!(k::FOR_A_SECOND_DAY_OF, WEEKDAYS[index(weekday)].0);
            let right = words!(k::GIVE_EACH_DAY_ITS_OWN);
            doc.wrong(&written.at_value("weekday"), Wrong::plain(read, right));
        }
        days.push(BlockDay {
            name: own.unwrap_or_else(|| WEEKDAYS[index(weekday)].0.to_owned()),
            weekday,
            lifts,
        });
    }
    if entry.is_empty_list("day") {
        let right = words!(k::ADD_PROGRAMME_BLOCK_DAY_TABLES);
        doc.missing(
            &entry.at_value("day"),
            Wrong::plain(words!(k::A_BLOCK_WITHOUT_A_DAY), right),
        );
    }
    days
}

fn index(weekday: Weekday) -> usize {
    weekday.num_days_from_monday() as usize
}

/// The blocks once for each round, one after the other.
fn rounds(
    doc: &mut Doc<'_>,
    programme: &Entry<'_>,
    written: &[Entry<'_>],
    blocks: Vec<Block>,
) -> Vec<Block> {
    let rounds = programme.whole(doc, "rounds", &(1..=WEEKS_MAX));
    let rounds = rounds.unwrap_or(1);
    let once: u32 = blocks.iter().map(|b| u32::from(b.weeks_in_all())).sum();
    let all = once * u32::from(rounds);
    if all > WEEKS_IN_ALL {
        let read = words!(k::WEEKS_IN_ALL_MORE_THAN, all, WEEKS_IN_ALL);
        doc.wrong(
            programme.at(),
            Wrong::plain(read, words!(k::LEAVE_SOME_OUT)),
        );
        return blocks;
    }
    let later = written.iter().skip(1).find(|entry| entry.has("starts"));
    if let Some(later) = later.filter(|_| rounds > 1) {
        let read = words!(k::STARTS_OF_A_LATER_BLOCK);
        let right = words!(k::LEAVE_ONE_OF_THEM_OUT);
        doc.wrong(&later.at_value("starts"), Wrong::plain(read, right));
        return blocks;
    }
    let mut all = blocks.clone();
    for _ in 1..rounds {
        for block in &blocks {
            let starts = all.last().map_or(block.starts, Block::ends_before);
            all.push(Block {
                starts,
                ..block.clone()
            });
        }
    }
    all
}
