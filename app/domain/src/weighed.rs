//! Plates as weighed: which marked plate goes on which side over a whole ladder, and what each
//! rung then truly weighs.
//!
//! The sides of the heaviest stack differ as little as can be; plates that only lighter rungs
//! need are shared out from what is left. No plate changes sides between rungs. A label of which
//! no plate was weighed counts as it says, alike on both sides. Refuses: guessing; where some of
//! a label were weighed and too few of them, nothing is said.
use crate::equipment::{PlateFace, PlateSet};
use crate::mass::Mass;
use crate::solve::balance::{Problem, Weighed, plan};
use alloc::string::String;
use alloc::vec::Vec;

/// The plates of each side for a whole ladder, each label's in the order of use.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Shares {
    left: Vec<Weighed>,
    right: Vec<Weighed>,
    /// Labels of which some plate was weighed.
    labels: Vec<Mass>,
}

/// One rung, plate by plate.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sides {
    /// Marks on the left, inside to outside; the label of a plate that was not weighed.
    pub left: Vec<String>,
    /// Marks on the right, inside to outside.
    pub right: Vec<String>,
    /// Bar, collars and these plates.
    pub load: Mass,
    /// The heavier side less the lighter one.
    pub difference: Mass,
}

/// Shares out the weighed plates for stacks of one side; the heaviest is served best. `None` when
/// nothing was weighed, or too little for the heaviest stack.
#[must_use]
pub fn share_out<'a>(
    set: &PlateSet,
    bar_and_collars: Mass,
    stacks: impl Iterator<Item = &'a [PlateFace]>,
) -> Option<Shares> {
    let stacks: Vec<&[PlateFace]> = stacks.collect();
    let mass = |stack: &[PlateFace]| stack.iter().map(|face| face.mass).sum::<Mass>();
    let heaviest = stacks.iter().max_by_key(|stack| mass(stack))?;
    if set.weighed.is_empty() {
        return None;
    }
    let mut free = set.weighed.clone();
    let labels: Vec<Mass> = free.iter().map(|plate| plate.nominal).collect();
    let mut shares = Shares {
        labels,
        ..Shares::default()
    };
    let is_weighed = |mass: &Mass| free.iter().any(|plate| plate.nominal == *mass);
    let main: Vec<Mass> = heaviest
        .iter()
        .map(|face| face.mass)
        .filter(is_weighed)
        .collect();
    shares.take(bar_and_collars, &mut free, main)?;
    let mut more: Vec<Mass> = Vec::new();
    for stack in &stacks {
        for face in stack
            .iter()
            .filter(|face| shares.labels.contains(&face.mass))
        {
            let needed = stack.iter().filter(|other| other.mass == face.mass).count();
            let in_main = heaviest
                .iter()
                .filter(|other| other.mass == face.mass)
                .count();
            let had = in_main + more.iter().filter(|other| **other == face.mass).count();
            more.extend((had..needed).map(|_| face.mass));
        }
    }
    // Without enough of them a light rung says nothing; the heaviest still does.
    let _kept = shares.take(bar_and_collars, &mut free, more);
    Some(shares)
}

impl Shares {
    fn take(&mut self, bar: Mass, free: &mut Vec<Weighed>, per_side: Vec<Mass>) -> Option<()> {
        let problem = Problem {
            bar,
            plates: free.clone(),
            per_side,
        };
        let found = plan(&problem).ok()?;
        self.left
            .extend(found.left.iter().map(|at| problem.plates[*at].clone()));
        self.right
            .extend(found.right.iter().map(|at| problem.plates[*at].clone()));
        let used = |mark: &String| {
            self.left
                .iter()
                .chain(&self.right)
                .any(|plate| plate.mark == *mark)
        };
        free.retain(|plate| !used(&plate.mark));
        Some(())
    }

    /// The plates of one stack; `None` when one of its labels was not shared out often enough.
    #[must_use]
    pub fn sides(&self, bar_and_collars: Mass, stack: &[PlateFace]) -> Option<Sides> {
        let left = self.chosen(&self.left, stack)?;
        let right = self.chosen(&self.right, stack)?;
        let sum = |side: &[(String, Mass)]| side.iter().map(|(_, mass)| *mass).sum::<Mass>();
        let (on_left, on_right) = (sum(&left), sum(&right));
        let marks = |side: Vec<(String, Mass)>| side.into_iter().map(|(mark, _)| mark).collect();
        Some(Sides {
            left: marks(left),
            right: marks(right),
            load: bar_and_collars + on_left + on_right,
            difference: on_left.apart(on_right),
        })
    }

    /// For each plate of the stack the next one of its label, or the label itself.
    fn chosen(&self, side: &[Weighed], stack: &[PlateFace]) -> Option<Vec<(String, Mass)>> {
        let before = |at: usize| {
            stack[..at]
                .iter()
                .filter(|face| face.mass == stack[at].mass)
                .count()
        };
        let pick = |at: usize| {
            let face = &stack[at];
            if !self.labels.contains(&face.mass) {
                return Some((face.label(), face.mass));
            }
            let mut alike = side.iter().filter(|plate| plate.nominal == face.mass);
            alike
                .nth(before(at))
                .map(|plate| (plate.mark.clone(), plate.mass))
        };
        (0..stack.len()).map(pick).collect()
    }
}
