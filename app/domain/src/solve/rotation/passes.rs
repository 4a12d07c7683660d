//! The passes of the search one after the other, narrow ones first, and the tables of shapes that
//! make them shorter.
//!
//! Refuses: nothing.
use super::bars::Bars;
use super::best::Aim;
use super::search::Search;
use super::shapes::Shapes;
use super::spread::Cost;
use core::cell::OnceCell;

/// Width of the very first pass, which knows no shapes yet.
const FIRST_WIDTH: usize = 30;
/// Width of the pass after it, with a coarse table of shapes.
const SECOND_WIDTH: usize = 300;
/// Widths of the passes that are after the end alone. The first mostly finds the best, so that the
/// next has less to look at to prove it, with as much as fits in memory.
const WIDTHS: [usize; 2] = [4_000, 400_000];
/// And of those that are after less handling.
const HANDLING_WIDTHS: [usize; 4] = [300, 3_000, 30_000, 400_000];
/// How many tables of shapes there may be: a coarse one, and one before each pass for the end and
/// the first for the handling.
pub(super) const TABLES: usize = 4;
/// Shapes told apart by the coarse table, and by the others.
const SHAPES: [usize; 2] = [32, 128];
/// A pass that looked at fewer states than this would not have been shorter by as much as another
/// table takes.
const WORTH: u64 = 300_000;

/// What is known about the best plan.
pub(super) struct Verdict {
    pub proven: bool,
    pub least_handling: bool,
    pub at_least: i64,
}

/// What the passes so far have shown.
struct Shown {
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
    tables: &'a [OnceCell<Shapes<C>>; TABLES],
) -> Verdict {
    let mut shown = Shown {
        at_least: search.at_least(),
        whole: false,
        states: 0,
        table: i64::MAX,
    };
    shown.pass(search, Aim::Both, FIRST_WIDTH);
    let mut whole = shown.whole;
    if !whole && !search.allowance.spent {
        // With big inside the bounds know the bar as it lies, and the pass is short anyway.
        if !search.model.big_inside {
            tighten(search, tables, SHAPES[0]);
        }
        shown.pass(search, Aim::Both, SECOND_WIDTH);
        whole = shown.whole;
    }
    let mut proven = whole || shown.at_least >= search.best.ends;
    for width in WIDTHS {
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
    for width in HANDLING_WIDTHS {
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

impl Shown {
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
        tables: &'a [OnceCell<Shapes<C>>],
    ) {
        if self.states > WORTH && search.best.ends < self.table {
            self.table = search.best.ends;
            tighten(search, tables, SHAPES[1]);
        }
    }
}

/// Has the shapes worked out for the best plan known, in a table not used so far.
fn tighten<'a, B: Bars, C: Cost>(
    search: &mut Search<'a, '_, '_, B, C>,
    tables: &'a [OnceCell<Shapes<C>>],
    most: usize,
) {
    let Some(table) = tables.iter().find(|table| table.get().is_none()) else {
        return;
    };
    let shapes = Shapes::new(
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
