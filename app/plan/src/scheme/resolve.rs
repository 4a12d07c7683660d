//! The numbers of one part to set groups, with what stands in the columns beside it.
//!
//! Refuses: sets without reps, loads that do not fit the number of sets.
use super::dims::{self, REPS_MAX, Told, count};
use super::part::{Asked, Part};
use super::{Bare, Beside, bare_load};
use crate::fault::{Wrong, quote};
use crate::set_group::{LoadAsk, Reps, SetGroup, ShareOf};
use crate::words::words;
use domain::prescription::Role;
use text::keys::checked as k;

/// The groups of a part.
pub(super) fn groups(
    text: &str,
    mut part: Part,
    bare: Bare,
    beside: &Beside,
) -> Result<Vec<SetGroup>, Wrong> {
    let has_load = !part.loads.is_empty() || !part.bare.is_empty() || beside.has_load;
    let told = match part.dims.as_slice() {
        [] => Told::default(),
        dims => dims::tell(text, dims, bare, has_load)?,
    };
    let sets = told.sets.or(part.sets);
    if let (Some(here), Some(there)) = (sets, beside.sets)
        && here != there
    {
        let what = words!(k::SETS_WHERE_THE_COLUMN_BESIDE, here, there);
        return Err(Wrong::value(
            text,
            what,
            words!(k::KEEP_ONE_OF_THE_TWO_WORDS),
        ));
    }
    let sets = sets.or(beside.sets);
    // "singles @ 90 % x 5", "3x5 AMRAP": reps twice, and not the same.
    if !told.reps.is_empty() && !part.reps.is_empty() && told.reps != part.reps {
        let what = words!(k::REPS_SAID_TWICE);
        return Err(Wrong::value(text, what, words!(k::WRITE_IT_ONCE_FOR_EACH)));
    }
    let reps = [
        told.reps,
        std::mem::take(&mut part.reps),
        beside.reps.clone(),
    ];
    let mut reps = reps.into_iter().find(|reps| !reps.is_empty());
    let mut loads: Vec<LoadAsk> = told.load.into_iter().collect();
    numbers_alone(text, &mut part, (sets, &mut reps), bare, beside)?;
    for number in &part.bare {
        loads.push(bare_load(text, number, bare)?);
    }
    let role = part.role.unwrap_or_default();
    for asked in &part.loads {
        drops_by(text, *asked, role)?;
    }
    loads.extend(part.loads.iter().map(|asked| meant(*asked, role)));
    let Some(reps) = reps else {
        let right = match (loads.as_slice(), part.effort) {
            ([load], _) => words!(k::WRITE_SETS_X_REPS_AS, quote(&format!("5x3 @ {load}"))),
            ([], Some(_)) => words!(k::WRITE_SETS_X_REPS_AS, "\"5x3 @ RPE 8\""),
            _ => words!(k::WRITE_SETS_X_REPS_AS, "\"5x3 @ 140 kg\""),
        };
        return Err(Wrong::value(text, words!(k::NO_REPS), right));
    };
    let group = |sets: u8, reps: Reps, load: Option<LoadAsk>| SetGroup {
        sets,
        reps,
        load,
        effort: part.effort,
        rest_s: part.rest_s,
        role,
        manner: part.manner,
    };
    let mut rows = spread(text, sets, &reps, &loads)?;
    if part.open_last {
        open_last(&mut rows);
    }
    let rows = rows.into_iter();
    Ok(rows
        .map(|(sets, reps, load)| group(sets, reps, load))
        .collect())
}

/// Opens the last set alone, as "3 x 5+" does.
fn open_last(rows: &mut Vec<Row>) {
    let Some((sets, reps, load)) = rows.pop() else {
        return;
    };
    if let Some(before) = sets.checked_sub(1).filter(|before| *before > 0) {
        rows.push((before, reps, load));
    }
    rows.push((1, Reps { most: None, ..reps }, load));
}

/// What numbers without a unit are: reps where there are none yet and a load stands elsewhere.
fn numbers_alone(
    text: &str,
    part: &mut Part,
    (sets, reps): (Option<u8>, &mut Option<Vec<Reps>>),
    bare: Bare,
    beside: &Beside,
) -> Result<(), Wrong> {
    let load_elsewhere = !part.loads.is_empty() || beside.has_load || part.effort.is_some();
    match (part.bare.as_slice(), &reps) {
        ([], _) => Ok(()),
        ([one], None) => {
            let small = count(one, REPS_MAX);
            let may_be_load = count(one, 14).is_none();
            match small {
                Some(number) if load_elsewhere || sets.is_some() && !may_be_load => {
                    *reps = Some(vec![Reps::just(number)]);
                    part.bare.clear();
                    Ok(())
                }
                Some(_) | None => {
                    let load = bare_load(text, one, bare)?.to_string();
                    let right =
                        words!(k::WRITE_WITH_YOUR_SETS_AND, quote(&format!("5x3 @ {load}")));
                    Err(Wrong::value(
                        text,
                        words!(k::A_LOAD_WITHOUT_SETS_AND),
                        right,
                    ))
                }
            }
        }
        ([_], Some(_)) if part.loads.is_empty() && !beside.has_load => Ok(()),
        _ => {
            let numbers = part.bare.join(", ");
            let what = words!(k::MORE_NUMBERS_THAN_SETS_REPS, numbers);
            let right = words!(k::WRITE_IT_AS_5X3_140);
            Err(Wrong::value(text, what, right))
        }
    }
}

/// Under this share of the best, in hundredths of a percent, "drop 20 %" hardly means one of it.
const DROP_SHARE_MIN: u32 = 5_000;

/// "drop 20 %" is asked about: most who write it take 20 % off.
fn drops_by(text: &str, asked: Asked, role: Role) -> Result<(), Wrong> {
    let Asked::Share(share) = asked else {
        return Ok(());
    };
    if role != Role::Drop || share >= DROP_SHARE_MIN {
        return Ok(());
    }
    let share = crate::set_group::share_text(share);
    let what = words!(k::A_DROP_THAT_COULD_BE, share.as_str());
    let right = words!(
        k::WRITE_FOR_SO_MUCH_LESS,
        quote(&format!("-{share}")),
        quote(&format!("{share} of best"))
    );
    Err(Wrong::value(text, what, right))
}

/// A bare share is of the best, in back-off sets of the top set.
fn meant(asked: Asked, role: Role) -> LoadAsk {
    match asked {
        Asked::Load(load) => load,
        Asked::Share(share) if role == Role::BackOff => LoadAsk::Share(share, ShareOf::TopSet),
        Asked::Share(share) => LoadAsk::Share(share, ShareOf::Best),
        Asked::Less(less) => LoadAsk::Share(10_000_u32.saturating_sub(less), ShareOf::TopSet),
    }
}

type Row = (u8, Reps, Option<LoadAsk>);

/// Gives each set its reps and its load where they differ from set to set.
pub(crate) fn spread(
    text: &str,
    sets: Option<u8>,
    reps: &[Reps],
    loads: &[LoadAsk],
) -> Result<Vec<Row>, Wrong> {
    let (many_reps, many_loads) = (reps.len(), loads.len());
    let uneven = || {
        let sets = sets.map_or_else(|| "?".to_owned(), |sets| sets.to_string());
        let what = words!(k::SETS_REPS_FOR_LOADS_FOR, sets, many_reps, many_loads);
        let right = words!(k::WRITE_AS_MANY_OF_EACH);
        Err(Wrong::value(text, what, right))
    };
    let count = many_reps.max(many_loads);
    let fits = |n: usize| n <= 1 || n == count;
    if count > 1 {
        let even = sets.is_none_or(|sets| usize::from(sets) == count || sets == 1 && many_reps > 1);
        if !fits(many_reps) || !fits(many_loads) || !even {
            return uneven();
        }
        let at = |n: usize, at: usize| if n == 1 { 0 } else { at };
        let rows = (0..count).map(|set| {
            let load = (many_loads > 0).then(|| loads[at(many_loads, set)]);
            (1, reps[at(many_reps, set)], load)
        });
        return Ok(rows.collect());
    }
    let (sets, load) = (sets.unwrap_or(1), loads.first().copied());
    let Some(reps) = reps.first().copied() else {
        return Ok(Vec::new());
    };
    // "3 x 5+" opens the last set alone; "AMRAP" opens each.
    Ok(match (reps, sets) {
        (
            Reps {
                least: 2..,
                most: None,
            },
            2..,
        ) => vec![(sets - 1, Reps::just(reps.least), load), (1, reps, load)],
        _ => vec![(sets, reps, load)],
    })
}

impl Part {
    /// What a column of loads may hold: loads, and an effort.
    pub(super) fn load_alone(
        self,
        text: &str,
        bare: Bare,
    ) -> Result<(Vec<LoadAsk>, Option<u8>), Wrong> {
        let more = self.rest_s.is_some() || !self.manner.is_own() || self.bar.is_some();
        if self.has_sets() || !self.notes.is_empty() || more {
            let right = words!(k::WRITE_THE_LOAD_ALONE_AS);
            return Err(Wrong::value(text, words!(k::MORE_THAN_A_LOAD), right));
        }
        let mut loads = Vec::new();
        for asked in self.loads {
            loads.push(match asked {
                Asked::Load(load) => load,
                Asked::Share(share) => LoadAsk::Share(share, ShareOf::Best),
                Asked::Less(less) => {
                    LoadAsk::Share(10_000_u32.saturating_sub(less), ShareOf::TopSet)
                }
            });
        }
        for number in &self.bare {
            loads.push(bare_load(text, number, bare)?);
        }
        Ok((loads, self.effort))
    }
}
