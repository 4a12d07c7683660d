//! The bars of the gym as they really are: plates that people moved, nothing else.
use domain::{Gym, Mass};
use kiosk::rehearse::Answer;
use std::collections::BTreeMap;

/// Both sleeves of one bar, each from the inside out; a marked plate by its mark.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Sleeves {
    pub(crate) left: Vec<String>,
    pub(crate) right: Vec<String>,
}

impl Sleeves {
    fn plates(&self) -> impl Iterator<Item = &String> {
        self.left.iter().chain(&self.right)
    }

    /// Whether both sides hold the same kinds in the same order.
    pub(crate) fn alike(&self) -> bool {
        let kinds = |side: &[String]| side.iter().map(|plate| kind(plate)).collect::<Vec<_>>();
        kinds(&self.left) == kinds(&self.right)
    }

    /// Whether that is what an order wants, which may leave it open which plate of a kind it is.
    fn is(&self, left: &[String], right: &[String], loose: bool) -> bool {
        let one = |own: &[String], wanted: &[String]| {
            let pairs = own.iter().zip(wanted);
            own.len() == wanted.len() && pairs.into_iter().all(|(a, b)| same(a, b, loose))
        };
        one(&self.left, left) && one(&self.right, right)
    }
}

/// An order about a bar, as somebody read it off the screen.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Task {
    pub(crate) bar: String,
    pub(crate) to: Sleeves,
    off: Sleeves,
    on: Sleeves,
    pub(crate) in_doubt: bool,
    /// "20 kg is on the light bar; ...": the plates and that bar.
    pub(crate) elsewhere: Vec<(String, String)>,
    load: String,
}

impl Task {
    /// What a face orders, if it does.
    pub(crate) fn of(face: &Answer) -> Option<Self> {
        let sides = |both: &kiosk::rehearse::BothSides| Sleeves {
            left: both.left.clone(),
            right: both.right.clone(),
        };
        let elsewhere = face.warnings.iter().filter_map(|told| {
            let (plate, bar) = told.split_once(" is on the ")?;
            Some((plate.to_owned(), bar.split(';').next()?.to_owned()))
        });
        Some(Self {
            bar: face.bar.clone()?,
            to: Sleeves {
                left: face.left.clone()?,
                right: face.right.clone()?,
            },
            off: sides(face.take_off.as_ref()?),
            on: sides(face.put_on.as_ref()?),
            in_doubt: face.believed.as_ref()?.in_doubt,
            elsewhere: elsewhere.collect(),
            load: face.load.clone()?,
        })
    }
}

impl Task {
    /// Pairs of plates that are moved.
    pub(crate) fn pairs(&self) -> u64 {
        (self.off.left.len() + self.on.left.len()) as u64
    }
}

/// A bar that is not as somebody said last.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Unsaid {
    before: Sleeves,
    /// The one order that was begun since, if it was only one.
    toward: Option<Sleeves>,
}

/// Why an order could not be obeyed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Stuck {
    /// Plates hang on another bar, where nobody could know it: they have to wait.
    Missing {
        /// Such a plate.
        plate: String,
        /// The same, and where all plates are.
        told: String,
    },
    /// The order itself is wrong.
    Fault(String),
}

/// All bars by name.
#[derive(Debug, Clone, Default)]
pub(crate) struct Bars {
    bars: BTreeMap<String, Sleeves>,
    /// Bars whose plates were moved since anybody said the truth about them.
    unsaid: BTreeMap<String, Unsaid>,
    /// All plates of the gym: kind, and what distinguishes each.
    all: BTreeMap<String, Vec<String>>,
    masses: BTreeMap<String, Mass>,
    gym: Gym,
    /// Whether somebody had to take another plate of the kind than the one that was named.
    loose: bool,
}

/// The kind of a plate: "20 kg" of "20 kg 20A".
fn kind(plate: &str) -> String {
    plate.split(' ').take(2).collect::<Vec<_>>().join(" ")
}

/// Whether a plate is the one that was named, or may be: orders name a kind alone where nobody
/// knows the mark.
fn same(own: &str, wanted: &str, loose: bool) -> bool {
    own == wanted || (kind(own) == kind(wanted) && (loose || kind(wanted) == wanted))
}

impl Bars {
    /// The bars of a gym, all stripped.
    pub(crate) fn of(gym: &Gym) -> Self {
        let mut bars = Self {
            gym: gym.clone(),
            ..Self::default()
        };
        for set in &gym.plate_sets {
            for plate in &set.plates {
                let face = &plate.face;
                let name = format!("{} {}", face.label(), face.unit.word());
                let marks = set.weighed.iter().filter(|w| w.nominal == face.mass);
                let mut each: Vec<String> = marks.map(|w| format!("{name} {}", w.mark)).collect();
                each.resize(2 * usize::from(plate.pairs), name.clone());
                bars.masses.insert(name.clone(), face.mass);
                bars.all.insert(name, each);
            }
        }
        bars
    }

    pub(crate) fn at(&self, bar: &str) -> Sleeves {
        self.bars.get(bar).cloned().unwrap_or_default()
    }

    /// Somebody said the truth about that bar.
    pub(crate) fn said(&mut self, bar: &str) {
        self.unsaid.remove(bar);
    }

    /// What was said of that bar is not true, and was taken back.
    pub(crate) fn misled(&mut self, bar: &str) {
        let (before, toward) = (self.at(bar), None);
        self.unsaid
            .insert(bar.to_owned(), Unsaid { before, toward });
    }

    /// All bars may be otherwise than anybody said: it is another day.
    pub(crate) fn all_misled(&mut self) {
        for bar in self.bars.keys().cloned().collect::<Vec<_>>() {
            self.misled(&bar);
        }
    }

    /// From now on nobody minds which plate of a kind it is.
    pub(crate) fn be_loose(&mut self) {
        self.loose = true;
    }

    /// The plates of a bar are others now, on the way to a stack.
    fn set(&mut self, bar: &str, sleeves: Sleeves, toward: Option<&Sleeves>) {
        let before = self.at(bar);
        if before == sleeves {
            return;
        }
        let toward = toward.cloned();
        match self.unsaid.get_mut(bar) {
            Some(unsaid) if unsaid.toward == toward => {}
            Some(unsaid) => unsaid.toward = None,
            None => drop(
                self.unsaid
                    .insert(bar.to_owned(), Unsaid { before, toward }),
            ),
        }
        self.bars.insert(bar.to_owned(), sleeves);
    }

    pub(crate) fn strip(&mut self, bar: &str) {
        self.set(bar, Sleeves::default(), None);
    }

    /// Somebody obeys an order to the letter. In doubt they look at the bar and make it what the
    /// screen says; else they take off and put on, and nothing more. Where that same order and no
    /// other was begun before, they go on where it stopped.
    pub(crate) fn obey(&mut self, task: &Task) -> Result<(), Stuck> {
        let own = self.at(&task.bar);
        let begun = self.unsaid.get(&task.bar);
        let begun = begun.filter(|unsaid| unsaid.toward.as_ref() == Some(&task.to));
        let is_as_shown = own.is(&task.to.left, &task.to.right, self.loose);
        if is_as_shown && (task.in_doubt || begun.is_some()) {
            return self.weigh(task);
        }
        let mut now = match begun {
            _ if task.in_doubt => Sleeves::default(),
            Some(unsaid) => unsaid.before.clone(),
            None => own,
        };
        if !task.in_doubt {
            take(&mut now.left, &task.off.left, self.loose).map_err(Stuck::Fault)?;
            take(&mut now.right, &task.off.right, self.loose).map_err(Stuck::Fault)?;
        }
        let put_on = if task.in_doubt { &task.to } else { &task.on };
        let mut free = self.free(&task.bar, &now);
        for plate in &put_on.left {
            now.left.push(self.fetch(&mut free, plate)?);
        }
        for plate in &put_on.right {
            now.right.push(self.fetch(&mut free, plate)?);
        }
        if !now.is(&task.to.left, &task.to.right, self.loose) {
            let to = &task.to;
            return Err(Stuck::Fault(format!("{now:?} was built, {to:?} shown")));
        }
        self.set(&task.bar, now, Some(&task.to));
        self.weigh(task)
    }

    /// Takes a plate that was named, or one of its kind.
    fn fetch(&mut self, free: &mut Vec<String>, plate: &str) -> Result<String, Stuck> {
        let named = free.iter().position(|one| one == plate);
        let alike = || free.iter().rposition(|one| kind(one) == kind(plate));
        let is_open = self.loose || kind(plate) == plate || !self.unsaid.is_empty();
        match named.or_else(|| is_open.then(alike).flatten()) {
            Some(at) => {
                let one = free.remove(at);
                // Which one it is nobody tells the screen where it did not ask for one by its mark.
                self.loose |= one != plate;
                Ok(one)
            }
            None => {
                let told = format!("{plate} does not hang free: {:?}", self.bars);
                let known = self.all.contains_key(&kind(plate));
                let honest = self.unsaid.is_empty() || !known;
                Err(if honest {
                    Stuck::Fault(told)
                } else {
                    let plate = plate.to_owned();
                    Stuck::Missing { plate, told }
                })
            }
        }
    }

    /// Whether all that has to go on hangs free, of its kind at least: of what somebody read a while
    /// ago others may have it by now.
    pub(crate) fn hang_free(&self, task: &Task) -> bool {
        let (stays, on) = match task.in_doubt {
            true => (Sleeves::default(), &task.to),
            false => (self.at(&task.bar), &task.on),
        };
        let mut free = self.free(&task.bar, &stays);
        on.plates().all(|plate| {
            let hangs = free.iter().position(|one| same(one, plate, self.loose));
            hangs.map(|at| free.remove(at)).is_some()
        })
    }

    /// What hangs on no bar, where `bar` holds `holds`.
    fn free(&self, bar: &str, holds: &Sleeves) -> Vec<String> {
        let mut free: Vec<String> = self.all.values().flatten().cloned().collect();
        let others = self.bars.iter().filter(|(name, _)| *name != bar);
        let used = others.flat_map(|(_, sleeves)| sleeves.plates());
        for plate in used.chain(holds.plates()) {
            if let Some(at) = free.iter().position(|one| one == plate) {
                free.swap_remove(at);
            }
        }
        free.sort();
        free
    }

    /// What hangs there weighs, by its labels, what is shown.
    fn weigh(&self, task: &Task) -> Result<(), Stuck> {
        let bar = self.gym.bars.iter().find(|bar| bar.name == task.bar);
        let bar = bar.ok_or_else(|| Stuck::Fault(format!("no bar is called {}", task.bar)))?;
        let plates = self.at(&task.bar);
        let plates = plates.plates().filter_map(|p| self.masses.get(&kind(p)));
        let hangs = bar.mass + bar.collars + plates.copied().sum::<Mass>();
        // Somebody may have chosen a language that writes a comma.
        let load = task.load.replace(',', ".");
        let unit = Mass::read_with_unit(&load).map(|(_, unit)| unit);
        let words = unit.map(|unit| hangs.words(unit)).unwrap_or_default();
        if words == load {
            return Ok(());
        }
        Err(Stuck::Fault(format!(
            "{load} is shown, {words} hangs on the {}",
            task.bar
        )))
    }

    /// Somebody begins to obey and is called away: the plates come off, none goes on.
    pub(crate) fn begin(&mut self, task: &Task) {
        let mut now = self.at(&task.bar);
        let (left, right) = (&task.off.left, &task.off.right);
        let came_off = take(&mut now.left, left, self.loose).is_ok()
            && take(&mut now.right, right, self.loose).is_ok();
        if came_off && !task.in_doubt && !self.unsaid.contains_key(&task.bar) {
            self.set(&task.bar, now, Some(&task.to));
        }
    }

    /// Somebody finds a plate of that kind on another bar that stands half loaded, and takes all of
    /// them from there; not from one that was said to be as it is. Tells from which.
    pub(crate) fn rob(&mut self, bar: &str, plate: &str) -> Option<String> {
        let has = |(name, on): &(&String, &Sleeves)| {
            *name != bar
                && self.unsaid.contains_key(*name)
                && on.plates().any(|one| kind(one) == kind(plate))
        };
        let from = self.bars.iter().find(has)?.0.clone();
        self.take_from(&from, plate);
        Some(from)
    }

    /// As a screen told them, somebody takes all plates of that kind from another bar.
    pub(crate) fn take_from(&mut self, bar: &str, plate: &str) {
        let mut there = self.at(bar);
        there.left.retain(|one| kind(one) != kind(plate));
        there.right.retain(|one| kind(one) != kind(plate));
        let toward = there.clone();
        self.set(bar, there, Some(&toward));
    }
}

fn take(side: &mut Vec<String>, off: &[String], loose: bool) -> Result<(), String> {
    for plate in off {
        let outermost = side.pop();
        if !outermost
            .as_ref()
            .is_some_and(|own| same(own, plate, loose))
        {
            return Err(format!(
                "told to take off {plate}, but {outermost:?} is outermost"
            ));
        }
    }
    Ok(())
}
