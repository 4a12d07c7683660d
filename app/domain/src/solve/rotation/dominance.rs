//! What makes a state needless: another one at the same place that is as good.
//!
//! A state is as good as another when it is not later, everyone is rested as early, there is no
//! more handling, and all that still after its bar has been made as good as the other's. Most
//! pairs of bars have nothing to do with each other, so states are shelved by what their bars
//! could keep of one another, and only those within reach are compared.
//!
//! Refuses: leaving out a state that nothing kept stands for.
use super::bars::Bars;
use super::incumbent::Aim;
use super::layer::State;
use alloc::vec::Vec;

/// Comparisons that are as much work as one state.
const COMPARISONS: usize = 64;
/// A state is held against so many others with plates that may stay. Where there are more, what
/// beats one is mostly among those that beat others before, and to look for it costs more than the
/// few needless states that are missed.
const LOOKS: usize = 600;

/// Who is held against whom, and by what.
#[derive(Debug)]
pub(super) struct Judge<'a, B> {
    aim: Aim,
    bars: &'a B,
    lifters: usize,
}

fn by_bar(s: &State) -> impl Ord + use<> {
    let order = (s.hole, s.bar, s.clock, s.handling, s.ready);
    (order, s.lifter, s.parent)
}

impl<'a, B: Bars> Judge<'a, B> {
    pub(super) fn new(aim: Aim, bars: &'a B, lifters: usize) -> Self {
        Self { aim, bars, lifters }
    }

    /// Leaves out of `states`, all at one place, those that another one with the same bar makes
    /// needless; sorts the others by hole and bar.
    ///
    /// `ponder` is told how much work it was, and says whether to go on; if not, much is missing.
    pub(super) fn drop_same(&self, states: &mut Vec<State>, mut ponder: impl FnMut(usize) -> bool) {
        states.sort_unstable_by_key(by_bar);
        let (mut kept, mut group) = (0, 0);
        for at in 0..states.len() {
            let state = states[at];
            if group < kept && (states[group].hole, states[group].bar) != (state.hole, state.bar) {
                group = kept;
            }
            let beaten = states[group..kept]
                .iter()
                .position(|other| self.beats(other, &state));
            if let Some(by) = beaten {
                // Who beats one often beats more: sooner next time.
                states.swap(group + by, group + by / 2);
            } else {
                states[kept] = state;
                kept += 1;
            }
            if !ponder(beaten.unwrap_or(kept - group) / COMPARISONS) {
                break;
            }
        }
        states.truncate(kept);
        states.sort_unstable_by_key(by_bar);
    }

    /// Leaves out those that another one makes needless once its bar has been made as good, and
    /// sorts the others by hole and bar. `ponder` as above.
    pub(super) fn drop_as_good(
        &self,
        states: &mut Vec<State>,
        mut ponder: impl FnMut(usize) -> bool,
    ) {
        states.sort_unstable_by_key(|s| {
            let what = (s.bar, s.ready, s.lifter, s.parent);
            (s.hole, s.clock, s.handling, what)
        });
        let mut shelf = Shelf::new(0);
        let mut kept = 0;
        for at in 0..states.len() {
            let state = states[at];
            if shelf.from < kept && states[shelf.from].hole != state.hole {
                shelf = Shelf::new(kept);
            }
            let face = self.bars.face(state.bar);
            let there = &states[shelf.from..kept];
            let mut compared = 0;
            let beaten = shelf.beats_bare(self, there, (&state, &face), &mut compared)
                || shelf.beats_in_row(self, there, (&state, &face), &mut compared);
            if !beaten {
                shelf.add(self.bars, &state, face);
                states[kept] = state;
                kept += 1;
            }
            if !ponder(compared / COMPARISONS) {
                break;
            }
        }
        states.truncate(kept);
        states.sort_unstable_by_key(by_bar);
    }

    /// Whether one state is as good as another, were their bars alike.
    fn beats(&self, one: &State, other: &State) -> bool {
        one.clock <= other.clock
            && (self.aim == Aim::Ends || one.handling <= other.handling)
            && (0..self.lifters).all(|l| one.ready[l] <= other.ready[l])
    }

    /// How much handling there is time for to make one state's bar as good as another's.
    fn most(&self, one: &State, other: &State) -> i64 {
        let time = other.clock - one.clock;
        match self.aim {
            Aim::Ends => time,
            Aim::Both | Aim::Handling => time.min(other.handling - one.handling),
        }
    }
}

/// What tells most states apart, close together in memory.
#[derive(Debug, Clone, Copy)]
struct Glance {
    /// Place on the shelf.
    number: u32,
    /// When the bar's plates would be off, were they taken off now.
    off: i64,
    /// When they could have begun to go on.
    on: i64,
    /// Of all lifters.
    ready: i64,
}

impl Glance {
    fn new(number: u32, state: &State, handling: i64) -> Self {
        Self {
            number,
            off: state.clock + handling,
            on: state.clock - handling,
            // Eighths of eight are no more than the greatest.
            ready: state.ready.iter().map(|ready| ready >> 3).sum(),
        }
    }

    /// If not, this state does not beat the other: there is not even time for the handling that
    /// the bars differ by, or someone is rested too late.
    fn may_beat(&self, other: &Self) -> bool {
        self.off <= other.off && self.on <= other.on && self.ready <= other.ready
    }
}

/// States that are kept so far, all with the same hole, in the order of their clocks.
#[derive(Debug)]
struct Shelf<F> {
    /// Where they begin.
    from: usize,
    faces: Vec<F>,
    /// When each could have taken its bar's plates off.
    bare: Vec<i64>,
    /// By what their bars may keep for one another.
    rows: Vec<(u128, Vec<Glance>)>,
}

impl<F: Copy> Shelf<F> {
    fn new(from: usize) -> Self {
        Self {
            from,
            faces: Vec::new(),
            bare: Vec::new(),
            rows: Vec::new(),
        }
    }

    fn add<B: Bars<Face = F>>(&mut self, bars: &B, state: &State, face: F) {
        let number = u32::try_from(self.faces.len()).expect("fewer than 2^32 states");
        let bare = bars.bare(&face);
        self.bare
            .push(bare.map_or(i64::MAX, |bare| state.clock + bare));
        let key = bars.row(&face);
        let glance = Glance::new(number, state, bars.handling(&face));
        match self.rows.iter_mut().find(|(row, _)| *row == key) {
            Some((_, row)) => row.push(glance),
            None => self.rows.push((key, Vec::from([glance]))),
        }
        self.faces.push(face);
    }

    /// Whether one of them is as good as the state after all comes off its bar and all that the
    /// state's bar carries goes on.
    fn beats_bare<B: Bars<Face = F>>(
        &self,
        judge: &Judge<'_, B>,
        there: &[State],
        (state, face): (&State, &F),
        compared: &mut usize,
    ) -> bool {
        let Some(on) = judge.bars.bare(face) else {
            return false;
        };
        let limit = state.clock - on;
        let soon = there.partition_point(|other| other.clock <= limit);
        *compared += soon;
        there[..soon].iter().zip(&self.bare).any(|(other, &bare)| {
            bare <= limit
                && bare - other.clock + on <= judge.most(other, state)
                && judge.beats(other, state)
        })
    }

    /// Whether one of them is as good as the state after its bar has been made so with some plates
    /// staying on.
    fn beats_in_row<B: Bars<Face = F>>(
        &mut self,
        judge: &Judge<'_, B>,
        there: &[State],
        (state, face): (&State, &F),
        compared: &mut usize,
    ) -> bool {
        let key = judge.bars.row(face);
        let faces = &self.faces;
        let glance = Glance::new(0, state, judge.bars.handling(face));
        let good = |other: &Glance| {
            let number = other.number as usize;
            other.may_beat(&glance) && {
                let (other, own) = (&there[number], &faces[number]);
                let most = judge.most(other, state);
                judge.beats(other, state) && judge.bars.as_good(own, face, most)
            }
        };
        let mut left = LOOKS;
        for (own, row) in &mut self.rows {
            if !judge.bars.may_stay(*own, key) {
                continue;
            }
            let first = row.len().min(left);
            left -= first;
            *compared += first;
            if let Some(at) = row[..first].iter().position(good) {
                // Who beats one often beats more: sooner next time.
                row.swap(at, at / 2);
                return true;
            }
        }
        false
    }
}
