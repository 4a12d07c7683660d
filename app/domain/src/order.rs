//! What the hands have to do at a bar before a turn: the difference between what it is believed
//! to hold and what the turn needs, each sleeve for itself.
use crate::believed::{Belief, DOUBT_AFTER_MS, Disc, Stacks};
use crate::equipment::{PlateFace, PlateSet};
use crate::gym::Gym;
use crate::mass::Mass;
use crate::moment::Moment;
use crate::resting::{StripFirst, strip_first};
use crate::solve::balance::{Problem, Weighed, plan};
use crate::state::{LiftRun, State};
use crate::weighed::share_out;
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// One order, for the turn of one rung.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Order {
    /// What the bar is believed to hold.
    pub believed: Belief,
    /// What it must hold.
    pub to: Stacks,
    /// What comes off, outermost first.
    pub take_off: Stacks,
    /// What goes on, innermost first.
    pub put_on: Stacks,
    /// Kinds of plates of which too few hang free, each with the bar that is believed to have it.
    pub lacks: Vec<(PlateFace, String)>,
    /// How far the bar is stripped first, where the turn starts elsewhere than it lies.
    pub strip: Option<StripFirst>,
}

impl Order {
    /// From a belief to a stack.
    #[must_use]
    pub fn between(believed: Belief, to: Stacks) -> Self {
        let (left_off, left_on) = difference(&believed.holds.left, &to.left);
        let (right_off, right_on) = difference(&believed.holds.right, &to.right);
        Self {
            believed,
            to,
            take_off: Stacks {
                left: left_off,
                right: right_off,
            },
            put_on: Stacks {
                left: left_on,
                right: right_on,
            },
            lacks: Vec::new(),
            strip: None,
        }
    }

    /// The same with how far the bar is stripped first for a rung of `run`.
    #[must_use]
    pub fn resting(self, gym: &Gym, state: &State, run: &LiftRun, rung: usize) -> Self {
        let strip = strip_first(gym, state, run, rung, (&self.believed, self.is_done()));
        Self { strip, ..self }
    }

    /// Whether the bar is believed to be right as it is.
    #[must_use]
    pub fn is_done(&self) -> bool {
        self.take_off.is_empty() && self.put_on.is_empty()
    }

    /// How many plates of the left and of the right sleeve stay.
    #[must_use]
    pub fn stays(&self) -> (usize, usize) {
        (
            self.to.left.len() - self.put_on.left.len(),
            self.to.right.len() - self.put_on.right.len(),
        )
    }
}

/// What comes off one sleeve, outermost first, and what goes on, innermost first.
fn difference(on: &[Disc], to: &[Disc]) -> (Vec<Disc>, Vec<Disc>) {
    let stays = on.iter().zip(to).take_while(|(a, b)| a == b).count();
    let off = on[stays..].iter().rev().cloned().collect();
    (off, to[stays..].to_vec())
}

/// The order for a rung of `run`, from the bar as it is believed to be at `now`.
#[must_use]
pub fn order(gym: &Gym, state: &State, run: &LiftRun, rung: usize, now: Moment) -> Order {
    let order = order_for(gym, state, run, state.stack(run, rung), now);
    order.resting(gym, state, run, rung)
}

/// As [`order`], for a stack of one side.
#[must_use]
pub fn order_for(
    gym: &Gym,
    state: &State,
    run: &LiftRun,
    stack: &[PlateFace],
    now: Moment,
) -> Order {
    let belief = state.belief(&run.sheet.bar.name, run.day, now);
    let to = wanted(gym, state, run, stack, &belief.holds);
    order_to(gym, state, run, belief, to)
}

/// As [`order`], from what is known to the plates that are [`wanted`].
#[must_use]
pub fn order_to(gym: &Gym, state: &State, run: &LiftRun, belief: Belief, to: Stacks) -> Order {
    let order = Order::between(belief, to);
    let lacks = lacks(gym, state, run, &order);
    Order { lacks, ..order }
}

/// The kinds of plates that have to go on and of which too few hang free, with the bar that has
/// them.
fn lacks(gym: &Gym, state: &State, run: &LiftRun, order: &Order) -> Vec<(PlateFace, String)> {
    let sheet = &run.sheet;
    let Some(set) = plates_at(gym, &sheet.rack) else {
        return Vec::new();
    };
    let others = elsewhere(gym, state, &sheet.rack, &sheet.bar.name, sheet.date);
    // In doubt the whole stack is built, whatever is believed to be on.
    let fetched = if order.believed.in_doubt {
        &order.to
    } else {
        &order.put_on
    };
    let lacking = fetched.discs().filter_map(|wanted| {
        let kind = set.plates.iter().find(|kind| kind.face == wanted.face)?;
        let of = |discs: &mut dyn Iterator<Item = &Disc>| {
            discs.filter(|disc| disc.face == wanted.face).count()
        };
        let on_others: usize = others.iter().map(|(_, holds)| of(&mut holds.discs())).sum();
        let needed = of(&mut order.to.discs());
        if needed + on_others <= 2 * usize::from(kind.pairs) {
            return None;
        }
        let has = others.iter().find(|(_, holds)| of(&mut holds.discs()) > 0);
        has.map(|(bar, _)| (wanted.face, (*bar).clone()))
    });
    let mut all: Vec<(PlateFace, String)> = Vec::new();
    for one in lacking {
        if !all.contains(&one) {
            all.push(one);
        }
    }
    all
}

/// What is believed to be on other bars that take their plates from the same set, on `date`.
pub(crate) fn elsewhere<'s>(
    gym: &Gym,
    state: &'s State,
    rack: &str,
    bar: &str,
    date: NaiveDate,
) -> Vec<(&'s String, &'s Stacks)> {
    let set = plates_at(gym, rack).map(|set| &set.name);
    let others = state.bars.iter().filter(|(name, known)| {
        let shares = plates_at(gym, &known.rack).map(|set| &set.name) == set;
        *name != bar && known.date == date && shares
    });
    others.map(|(name, known)| (name, &known.holds)).collect()
}

/// Which plates make `stack` on both sides: those that are on already stay where they are, other
/// plates of the same load and height too, and of weighed plates those are chosen with which the sides differ least. The same until the state
/// changes.
#[must_use]
pub fn wanted(gym: &Gym, state: &State, run: &LiftRun, stack: &[PlateFace], on: &Stacks) -> Stacks {
    let sheet = &run.sheet;
    let rack = gym.racks.iter().find(|rack| rack.name == sheet.rack);
    let set = rack.and_then(|rack| gym.plate_sets.iter().find(|s| s.name == rack.plates));
    let weighed = set.map_or(&[][..], |set| &set.weighed);
    let is_weighed = |face: &PlateFace| weighed.iter().any(|p| p.nominal == face.mass);
    let side = on.faces();
    if serves(&side, stack) && !side.iter().any(is_weighed) {
        return Stacks::alike(&side);
    }
    let Some(set) = set.filter(|_| !weighed.is_empty()) else {
        return Stacks::alike(stack);
    };
    let kept = kept(stack, on);
    let elsewhere = state.marks_elsewhere(&sheet.bar.name, run.day);
    let bar = sheet.bar.mass + sheet.bar.collars;
    let chooser = Chooser {
        set,
        stack,
        kept: &kept,
        elsewhere: &elsewhere,
        own: &own_marks(set, run, bar, stack),
    };
    chooser.stacks(bar)
}

/// Whether other plates serve as well as `stack`: as heavy, and the bar starts as high.
fn serves(side: &[PlateFace], stack: &[PlateFace]) -> bool {
    let mass = |side: &[PlateFace]| side.iter().map(|face| face.mass).sum::<Mass>();
    let largest = |side: &[PlateFace]| side.iter().map(|face| face.diameter).max();
    mass(side) == mass(stack) && largest(side) == largest(stack)
}

/// The plates of `on` that stay for `stack`: the same number on both sides.
fn kept(stack: &[PlateFace], on: &Stacks) -> Stacks {
    let stay = |side: &[Disc]| {
        let pairs = side.iter().zip(stack);
        pairs.take_while(|(disc, face)| disc.face == **face).count()
    };
    let stays = stay(&on.left).min(stay(&on.right));
    Stacks {
        left: on.left[..stays].to_vec(),
        right: on.right[..stays].to_vec(),
    }
}

/// The marks that the lifter's whole ladder would choose, so that the rack says what the day's
/// sheet says; empty where it says nothing.
fn own_marks(set: &PlateSet, run: &LiftRun, bar: Mass, stack: &[PlateFace]) -> Marks {
    let stacks = run.sheet.rungs.iter().map(|rung| rung.per_side.as_slice());
    let sides = share_out(set, bar, stacks).and_then(|shares| shares.sides(bar, stack));
    sides.map_or_else(Default::default, |sides| (sides.left, sides.right))
}

/// Marks of the left and the right side, inside to outside.
type Marks = (Vec<String>, Vec<String>);

/// Chooses marked plates for one stack.
struct Chooser<'a> {
    set: &'a PlateSet,
    stack: &'a [PlateFace],
    kept: &'a Stacks,
    elsewhere: &'a [String],
    own: &'a Marks,
}

impl Chooser<'_> {
    fn stacks(&self, bar: Mass) -> Stacks {
        let rest = &self.stack[self.kept.left.len()..];
        let marked: Vec<Mass> = rest
            .iter()
            .map(|face| face.mass)
            .filter(|mass| self.is_marked(*mass))
            .collect();
        let chosen = self.as_sheet(rest).or_else(|| self.balanced(bar, &marked));
        let (left, right) = chosen.unwrap_or_default();
        Stacks {
            left: self.side(&self.kept.left, rest, left),
            right: self.side(&self.kept.right, rest, right),
        }
    }

    /// Whether plates of this label are told apart: some were weighed, and all of that label that
    /// stay on the bar are known.
    fn is_marked(&self, mass: Mass) -> bool {
        let weighed = self.set.weighed.iter().any(|p| p.nominal == mass);
        let unknown = |disc: &Disc| disc.face.mass == mass && disc.mark.is_none();
        weighed && !self.kept.discs().any(unknown)
    }

    fn is_free(&self, mark: &str) -> bool {
        let on = |disc: &Disc| disc.mark.as_deref() == Some(mark);
        !self.kept.discs().any(on) && !self.elsewhere.iter().any(|other| other == mark)
    }

    /// The marks of the lifter's own ladder, where all of them are free.
    fn as_sheet(&self, rest: &[PlateFace]) -> Option<Marks> {
        let from = self.kept.left.len();
        let pick = |side: &[String]| {
            let side = side.get(from..).filter(|side| side.len() == rest.len())?;
            let marks = side.iter().zip(rest);
            let marks = marks.filter(|(_, face)| self.is_marked(face.mass));
            marks
                .map(|(mark, _)| self.is_free(mark).then(|| mark.clone()))
                .collect::<Option<Vec<String>>>()
        };
        Some((pick(&self.own.0)?, pick(&self.own.1)?))
    }

    /// The free plates with which the sides differ least, those that stay counted in.
    fn balanced(&self, bar: Mass, marked: &[Mass]) -> Option<Marks> {
        let true_mass = |side: &[Disc]| {
            let of = |disc: &Disc| {
                let weighed = self.set.weighed.iter().find(|p| {
                    let mark = disc.mark.as_ref();
                    mark == Some(&p.mark)
                });
                weighed.map_or(disc.face.mass, |plate| plate.mass)
            };
            side.iter().map(of).sum::<Mass>()
        };
        let (left, right) = (true_mass(&self.kept.left), true_mass(&self.kept.right));
        let mut plates: Vec<Weighed> = self.set.weighed.clone();
        plates.retain(|plate| self.is_free(&plate.mark));
        let own = plates.len();
        // What stays on each side is one more plate of a label of its own, so that the planner
        // counts it in.
        let label = Mass::from_ng(1);
        let base = Mass::from_ng(1);
        for (mark, mass) in [("left", left), ("right", right)] {
            plates.push(Weighed {
                mark: mark.into(),
                nominal: label,
                mass: mass + base,
            });
        }
        let mut per_side = marked.to_vec();
        per_side.push(label);
        let problem = Problem {
            bar,
            plates,
            per_side,
        };
        let found = plan(&problem).ok()?;
        let mirrored = found.right.contains(&own);
        let marks = |side: &[usize]| {
            let side = side.iter().filter(|at| **at < own);
            side.map(|at| problem.plates[*at].mark.clone()).collect()
        };
        let (one, other) = (marks(&found.left), marks(&found.right));
        Some(if mirrored { (other, one) } else { (one, other) })
    }

    /// One side: what stays, then the rest with its marks in order.
    fn side(&self, kept: &[Disc], rest: &[PlateFace], marks: Vec<String>) -> Vec<Disc> {
        let mut marks = marks.into_iter();
        let mut side = kept.to_vec();
        side.extend(rest.iter().map(|face| Disc {
            face: *face,
            mark: if self.is_marked(face.mass) {
                marks.next()
            } else {
                None
            },
        }));
        side
    }
}

/// The true mass of what stands on a bar, where all of it was weighed or counts as its label says;
/// `None` where no plate of it has a mark.
#[must_use]
pub fn weighed_mass(set: &PlateSet, bar_and_collars: Mass, stacks: &Stacks) -> Option<Mass> {
    if !stacks.discs().any(|disc| disc.mark.is_some()) {
        return None;
    }
    let of = |disc: &Disc| {
        let weighed = set
            .weighed
            .iter()
            .find(|plate| Some(&plate.mark) == disc.mark.as_ref());
        weighed.map_or(disc.face.mass, |plate| plate.mass)
    };
    Some(bar_and_collars + stacks.discs().map(of).sum::<Mass>())
}

/// The set of plates that hangs at a rack.
#[must_use]
pub fn plates_at<'g>(gym: &'g Gym, rack: &str) -> Option<&'g PlateSet> {
    let rack = gym.racks.iter().find(|r| r.name == rack)?;
    gym.plate_sets.iter().find(|set| set.name == rack.plates)
}

impl State {
    /// What is known of `bar` on `date` at `now`.
    #[must_use]
    pub fn belief(&self, bar: &str, date: NaiveDate, now: Moment) -> Belief {
        let Some(known) = self.bars.get(bar) else {
            return Belief::default_doubt();
        };
        let mut belief = known.belief(date, now);
        // The machine was off since, perhaps over night: somebody may have stripped the bar.
        belief.in_doubt |= self.times.may_be_long_ago(known.at, now, DOUBT_AFTER_MS);
        belief
    }

    /// Marks of plates that are believed to be on other bars on `date`.
    fn marks_elsewhere(&self, bar: &str, date: NaiveDate) -> Vec<String> {
        let others = self.bars.iter().filter(|(name, _)| *name != bar);
        let others = others.filter(|(_, known)| known.date == date);
        let discs = others.flat_map(|(_, known)| known.holds.discs());
        discs.filter_map(|disc| disc.mark.clone()).collect()
    }
}
