//! The passes of the search one after the other, narrow ones first, and the tables of shapes that
//! make them shorter.
//!
//! Refuses: nothing.
use super::bars::Bars;
use super::incumbent::Aim;
use super::min_plus::Cost;
use super::profiles::Profiles;
use super::search::Search;
use core::cell::OnceCell;

/// How wide the passes are and how fine the tables.
#[derive(Debug)]
pub(super) struct Widths {
    /// Width of the very first pass, which knows no shapes yet.
    first: usize,
    /// Width of the pass after it, with a coarse table of shapes.
    second: usize,
    /// Widths of the passes that are after the end alone. The first mostly finds the best, so that
    /// the next has less to look at to prove it, with as much as fits in memory.
    ends: [usize; 2],
    /// And of those that are after less handling.
    handling: [usize; 4],
    /// Shapes told apart by the coarse table, and by the others.
    shapes: [usize; 2],
    /// A pass that looked at fewer states than this would not have been shorter by as much as
    /// another table takes.
    worth: u64,
}

/// As measured best over seeded evenings of four lifters.
pub(super) const USUAL: Widths = Widths {
    first: 30,
    second: 300,
    ends: [4_000, 400_000],
    handling: [300, 3_000, 30_000, 400_000],
    shapes: [32, 128],
    worth: 300_000,
};
/// So that small problems need every pass and table.
pub(super) const NARROW: Widths = Widths {
    first: 1,
    second: 1,
    ends: [1, 400_000],
    handling: [1, 1, 1, 400_000],
    shapes: [2, 3],
    worth: 0,
};
/// How many tables of shapes there may be: a coarse one, and one before each pass for the end and
/// the first for the handling.
pub(super) const TABLES: usize = 4;

/// What is known about the best plan.
pub(super) struct Verdict {
    pub proven: bool,
    pub least_handling: bool,
    pub at_least: i64,
}

/// What the passes so far have shown.
struct Shown<'w> {
    widths: &'w Widths,
    at_least: i64,
    /// The last pass left nothing out.
    whole: bool,
    /// The states that the last pass looked at.
    states: u64,
    /// The end that the last table of shapes was made for.
    table: i64,
}

/// Looks for the best plan until it is proven or the allowance is spent.
pub(super) fn passes<'a, B: Bars, C: Cost>(
    search: &mut Search<'a, '_, '_, B, C>,
    tables: &'a [OnceCell<Profiles<C>>; TABLES],
    widths: &Widths,
) -> Verdict {
    let mut shown = Shown {
        widths,
        at_least: search.at_least(),
        whole: false,
        states: 0,
        table: i64::MAX,
    };
    shown.pass(search, Aim::Both, widths.first);
    let mut whole = shown.whole;
    if !whole && !search.allowance.spent {
        // With big inside the bounds know the bar as it lies, and the pass is short anyway.
        if !search.model.big_inside {
            tighten(search, tables, widths.shapes[0]);
        }
        shown.pass(search, Aim::Both, widths.second);
        whole = shown.whole;
    }
    let mut proven = whole || shown.at_least >= search.best.ends;
    for width in widths.ends {
        if !proven && !search.allowance.spent {
            shown.tighten(search, tables);
            shown.pass(search, Aim::Ends, width);
            proven = shown.whole || shown.at_least >= search.best.ends;
        }
    }
    if !whole {
        shown.tighten(search, tables);
    }
    let at_least = shown.at_least;
    for width in widths.handling {
        if !whole && !search.allowance.spent {
            shown.pass(search, Aim::Handling, width);
            whole = shown.whole;
        }
    }
    let ends = search.best.ends;
    Verdict {
        proven,
        least_handling: proven && whole,
        at_least: if proven { ends } else { at_least.min(ends) },
    }
}

impl Shown<'_> {
    fn pass<B: Bars, C: Cost>(
        &mut self,
        search: &mut Search<'_, '_, '_, B, C>,
        aim: Aim,
        width: usize,
    ) {
        let before = search.allowance.used;
        let outcome = search.pass(aim, width);
        self.states = search.allowance.used - before;
        self.whole = outcome.whole;
        self.at_least = self.at_least.max(outcome.at_least);
    }

    /// Has the shapes worked out anew where the last pass was long and there is a better plan
    /// than they were made for.
    fn tighten<'a, B: Bars, C: Cost>(
        &mut self,
        search: &mut Search<'a, '_, '_, B, C>,
        tables: &'a [OnceCell<Profiles<C>>],
    ) {
        if self.states > self.widths.worth && search.best.ends < self.table {
            self.table = search.best.ends;
            tighten(search, tables, self.widths.shapes[1]);
        }
    }
}

/// Has the shapes worked out for the best plan known, in a table not used so far.
fn tighten<'a, B: Bars, C: Cost>(
    search: &mut Search<'a, '_, '_, B, C>,
    tables: &'a [OnceCell<Profiles<C>>],
    most: usize,
) {
    let Some(table) = tables.iter().find(|table| table.get().is_none()) else {
        return;
    };
    let shapes = Profiles::new(
        search.model,
        search.spread,
        search.bounds,
        search.course,
        (search.best.ends, most),
        |work| search.allowance.ponder(work),
    );
    if let Some(shapes) = shapes {
        search.shapes = Some(table.get_or_init(|| shapes));
    }
}
