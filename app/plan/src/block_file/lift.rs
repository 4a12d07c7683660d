//! A lift of a day of a block: its scheme for every week, or one a week.
//!
//! Refuses: another number of schemes than weeks, loads that a lifter of the programme cannot have.
use crate::carry;
use crate::coach_names::{FIRST, Held};
use crate::fault::{Wrong, quote};
use crate::plan_extra::is_nothing;
use crate::plan_load::{held, load, shown};
use crate::plan_row::track_name;
use crate::plan_work::NOTE_MAX;
use crate::quantity::rest_s;
use crate::scheme::{self, Bare, Beside, Scheme};
use crate::set_group::{LoadAsk, SetGroup, ShareOf};
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::words as line;
use crate::words::words;
use chrono::NaiveDate;
use domain::programme::blocks::BlockLift;
use domain::{Gym, MassUnit};
use text::keys::checked as k;

/// Whom and what weeks a lift is for.
pub(super) struct Of<'a> {
    /// Weeks of the block; 0 where they could not be read.
    pub(super) weeks: u8,
    /// Whether the block has light weeks.
    pub(super) is_light: bool,
    pub(super) lifters: &'a [String],
    /// The block's first day.
    pub(super) from: NaiveDate,
}

/// Reads one lift.
pub(super) fn read(
    doc: &mut Doc<'_>,
    entry: &Entry<'_>,
    of: &Of<'_>,
    against: &Held<'_>,
) -> Option<BlockLift> {
    let lift = entry.text(doc, "lift", |text| against.plan.lifts.find(text));
    let first = entry.text(doc, "first", load);
    let track = entry.text(doc, "track", track_name);
    let bar = entry.text(doc, "bar", |text| against.plan.bar(text));
    let ladder = entry.text(doc, "ladder", |text| against.names.patterns.find(text));
    let rest = entry.text(doc, "rest", rest_s);
    let note = entry.text(doc, "note", |text| line(text, NOTE_MAX));
    let mut schemes = schemes(doc, entry, of, against)?;
    let mut read = BlockLift {
        lift: lift?,
        track,
        weeks: Vec::new(),
        first: first.unwrap_or(FIRST),
        bar,
        ladder,
        note: note.unwrap_or_default(),
    };
    for scheme in &mut schemes {
        for group in &mut scheme.groups {
            group.rest_s = group.rest_s.or(rest);
        }
        if let Err(wrong) = fits(scheme, &mut read, of, against) {
            doc.wrong(entry.at(), wrong);
            return None;
        }
    }
    let groups = |scheme: &Scheme| scheme.groups.iter().map(carry::due_group).collect();
    read.weeks = schemes.iter().map(groups).collect::<Vec<Vec<_>>>();
    Some(read)
}

/// One scheme for all weeks, or one for each.
fn schemes(
    doc: &mut Doc<'_>,
    entry: &Entry<'_>,
    of: &Of<'_>,
    against: &Held<'_>,
) -> Option<Vec<Scheme>> {
    let bare = bare(against.plan.gym, of.lifters);
    let one = |text: &str| -> Result<Scheme, Wrong> {
        if is_nothing(text) {
            return Ok(Scheme::default());
        }
        let mut scheme = scheme::read(text, bare, &Beside::default())?;
        scheme::follow(text, &mut scheme.groups)?;
        Ok(scheme)
    };
    let told = |doc: &mut Doc<'_>, read, right| {
        doc.wrong(entry.at(), Wrong::plain(read, right));
        None
    };
    match (entry.has("scheme"), entry.has("weeks")) {
        (true, true) => told(
            doc,
            words!(k::SCHEME_BESIDE_WEEKS),
            words!(k::LEAVE_ONE_OF_THEM_OUT),
        ),
        (false, false) => told(
            doc,
            words!(k::A_LIFT_WITHOUT_SCHEME_AND),
            words!(k::WRITE_SCHEME_3X5_FOR_ALL),
        ),
        (true, false) => {
            let scheme = entry.text(doc, "scheme", one)?;
            if scheme.groups.is_empty() {
                let right = words!(k::WRITE_SETS_X_REPS_AS, "\"5x3 @ 140 kg\"");
                return told(doc, words!(k::A_LIFT_THAT_NO_WEEK), right);
            }
            Some(vec![scheme])
        }
        (false, true) => {
            let count = entry.list(doc, "weeks", 520).len();
            let weeks = entry.texts(doc, "weeks", 520, one);
            if of.weeks > 0 && count != usize::from(of.weeks) {
                let read = words!(k::SCHEMES_FOR_WEEKS_IN_A, count, of.weeks);
                let right = words!(k::WRITE_ONE_FOR_EACH_WEEK);
                return told(doc, read, right);
            }
            if of.is_light {
                let read = words!(k::A_SCHEME_FOR_EACH_WEEK);
                let right = words!(k::WRITE_THE_LIGHT_WEEKS_OWN);
                return told(doc, read, right);
            }
            if weeks.len() == count && weeks.iter().all(|week| week.groups.is_empty()) {
                let right = words!(k::WRITE_SETS_X_REPS_AS, "\"5x3 @ 140 kg\"");
                return told(doc, words!(k::A_LIFT_THAT_NO_WEEK), right);
            }
            (weeks.len() == count).then_some(weeks)
        }
    }
}

/// What a bare number is: the unit that all lifters of the programme read loads in.
fn bare(gym: Option<&Gym>, lifters: &[String]) -> Bare {
    let Some(gym) = gym else { return Bare::Unknown };
    let own = gym.lifters.iter().filter(|l| lifters.contains(&l.name));
    let units: Vec<MassUnit> = own.map(|lifter| lifter.unit).collect();
    match units.split_first() {
        Some((unit, others)) if others.iter().all(|other| other == unit) => Bare::Unit(*unit),
        Some(_) | None => Bare::Unknown,
    }
}

/// Holds a week's scheme against the programme's lifters, and gives the lift what was said in it of
/// the bar, the warm-up and more.
fn fits(
    scheme: &Scheme,
    read: &mut BlockLift,
    of: &Of<'_>,
    against: &Held<'_>,
) -> Result<(), Wrong> {
    if let Some(bar) = &scheme.bar {
        let bar = against.plan.bar(bar)?;
        if read.bar.as_ref().is_some_and(|own| *own != bar) {
            return Err(scheme::two_bars(&bar));
        }
        read.bar = Some(bar);
    }
    if let Some(warm) = scheme.warm {
        read.ladder = Some(warm.to_owned());
    }
    for note in &scheme.notes {
        if read.note.contains(note.as_str()) {
            continue;
        }
        let all = [read.note.as_str(), note.as_str()];
        let all: Vec<&str> = all.into_iter().filter(|part| !part.is_empty()).collect();
        read.note = line(&all.join("; "), NOTE_MAX)?;
    }
    let manners: Vec<_> = scheme.groups.iter().map(|group| group.manner).collect();
    for lifter in of.lifters {
        let who = (lifter.as_str(), read.lift.as_str());
        against.plan.fits(&manners, read.bar.as_deref(), who)?;
        for group in &scheme.groups {
            can_have(group, (who.0, who.1, of.from), against)?;
        }
    }
    Ok(())
}

/// A load that a lifter can have: a best or a training max that is recorded, no less than the bar.
fn can_have(
    group: &SetGroup,
    who: (&str, &str, NaiveDate),
    against: &Held<'_>,
) -> Result<(), Wrong> {
    if let (Some(LoadAsk::Share(_, ShareOf::TrainingMax)), Some(gym)) =
        (group.load, against.plan.gym)
    {
        let lifter = gym.lifters.iter().find(|known| known.name == who.0);
        if lifter.is_some_and(|known| known.training_max(who.1, who.2).is_none()) {
            let read = words!(
                k::A_SHARE_OF_A_TRAINING,
                who.1,
                quote(who.0),
                who.2.to_string()
            );
            let right = words!(k::WRITE_A_MASS_OR_THE);
            return Err(Wrong::plain(read, right));
        }
    }
    let Some(asked) = group.load.and_then(held) else {
        return Ok(());
    };
    against.plan.judge(&shown(asked, MassUnit::Kg), asked, who)
}
