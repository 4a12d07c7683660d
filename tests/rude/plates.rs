//! The bars of the gym as they really are: plates that people moved, nothing else.
use kiosk::rehearse::Answer;
use std::collections::BTreeMap;

/// Both sleeves of one bar, each from the inside out.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Sleeves {
    pub(crate) left: Vec<String>,
    pub(crate) right: Vec<String>,
}

/// All bars by name.
#[derive(Debug, Clone, Default)]
pub(crate) struct Bars {
    bars: BTreeMap<String, Sleeves>,
    /// How many plates of each kind there are.
    there: BTreeMap<String, usize>,
    /// What somebody had begun to build on a bar, and what was on it before.
    begun: BTreeMap<String, (Sleeves, Sleeves)>,
}

impl Bars {
    /// The bars of a gym, all stripped.
    pub(crate) fn of(gym: &domain::Gym) -> Self {
        let kinds = gym.plate_sets.iter().flat_map(|set| &set.plates);
        let there = kinds.map(|kind| {
            let face = &kind.face;
            let name = format!("{} {}", face.label(), face.unit.word());
            (name, 2 * usize::from(kind.pairs))
        });
        Self {
            there: there.collect(),
            ..Self::default()
        }
    }

    pub(crate) fn at(&mut self, bar: &str) -> &mut Sleeves {
        self.bars.entry(bar.to_owned()).or_default()
    }

    /// Somebody obeys the order of a face to the letter. In doubt they look at the bar and make it
    /// what the screen says; else they take off and put on, and nothing more.
    pub(crate) fn obey(&mut self, face: &Answer) -> Result<(), String> {
        let bar = face.bar.clone().ok_or("no bar is named")?;
        let (left, right) = (
            face.left.clone().ok_or("no left side")?,
            face.right.clone().ok_or("no right side")?,
        );
        let believed = face.believed.clone().ok_or("no belief")?;
        if let Some((to, before)) = self.begun.remove(&bar)
            && !believed.in_doubt
            && (&to.left, &to.right) == (&left, &right)
        {
            // The same order again: they go on where they stopped.
            *self.at(&bar) = before;
        }
        let sleeves = self.at(&bar);
        if believed.in_doubt {
            (sleeves.left, sleeves.right) = (left, right);
        } else {
            let off = face.take_off.clone().ok_or("no take_off")?;
            let on = face.put_on.clone().ok_or("no put_on")?;
            move_plates(&mut sleeves.left, &off.left, &on.left)?;
            move_plates(&mut sleeves.right, &off.right, &on.right)?;
            if (&sleeves.left, &sleeves.right) != (&left, &right) {
                return Err(format!("{sleeves:?} was built, {left:?} | {right:?} shown"));
            }
        }
        self.one_of_each()
    }

    /// Somebody begins to obey and is called away: the plates come off, none goes on.
    pub(crate) fn begin(&mut self, face: &Answer) {
        let (Some(bar), Some(off)) = (&face.bar, &face.take_off) else {
            return;
        };
        let (Some(left), Some(right)) = (face.left.clone(), face.right.clone()) else {
            return;
        };
        if face
            .believed
            .as_ref()
            .is_some_and(|believed| believed.in_doubt)
        {
            return;
        }
        let before = self.at(bar).clone();
        self.begun
            .insert(bar.clone(), (Sleeves { left, right }, before));
        let sleeves = self.at(bar);
        for _ in &off.left {
            sleeves.left.pop();
        }
        for _ in &off.right {
            sleeves.right.pop();
        }
    }

    /// A marked plate is on one sleeve at most.
    fn one_of_each(&self) -> Result<(), String> {
        let all = self
            .bars
            .values()
            .flat_map(|s| s.left.iter().chain(&s.right));
        let mut marked: Vec<&String> = all.filter(|p| p.split(' ').count() > 2).collect();
        marked.sort();
        for (kind, there) in &self.there {
            let sides = self
                .bars
                .values()
                .flat_map(|s| s.left.iter().chain(&s.right));
            let of = |plate: &&String| plate.split(' ').take(2).eq(kind.split(' '));
            let used = sides.filter(of).count();
            if used > *there {
                return Err(format!(
                    "{used} plates of {kind} are wanted, {there} are there"
                ));
            }
        }
        let twice = marked.windows(2).find(|pair| pair[0] == pair[1]);
        twice.map_or(Ok(()), |pair| {
            Err(format!(
                "{} is wanted in two places: {:?}",
                pair[0], self.bars
            ))
        })
    }
}

fn move_plates(side: &mut Vec<String>, off: &[String], on: &[String]) -> Result<(), String> {
    for plate in off {
        let outermost = side.pop();
        if outermost.as_ref() != Some(plate) {
            return Err(format!(
                "told to take off {plate}, but {outermost:?} is outermost"
            ));
        }
    }
    side.extend(on.iter().cloned());
    Ok(())
}

/// Bar and plates, in thousandths of their unit; the bar's own mass comes from the first load.
pub(crate) fn thousandths(mass: &str) -> Option<(i64, String)> {
    let mut words = mass.split(' ');
    let (number, unit) = (words.next()?, words.next()?);
    let (whole, part) = number.split_once('.').unwrap_or((number, ""));
    let part = format!("{part:0<3}");
    let value = whole.parse::<i64>().ok()? * 1_000 + part.get(..3)?.parse::<i64>().ok()?;
    Some((value, unit.to_owned()))
}
