//! INTERIM: greedy warm-ups, until the real builder replaces this file. Keep the names `WorkSet`,
//! `BuiltLadder { rungs, off }` and `build`, which `day` calls, or change `day` with them.
use crate::gym::Pattern;
use crate::sheet::RungKind;
use crate::*;
use alloc::vec::Vec;
pub struct WorkSet {
    pub load: Mass,
    pub sets: u8,
    pub reps: u8,
}
pub struct BuiltLadder {
    pub rungs: Vec<Rung>,
    pub off: Mass,
}
pub fn build(
    w: &WorkSet,
    p: &Pattern,
    bar: &Bar,
    plates: &PlateSet,
) -> Result<BuiltLadder, crate::solve::Refusal> {
    let mut rungs = Vec::new();
    let mut prev: Vec<PlateFace> = Vec::new();
    let mut push = |kind, target: Mass, reps| {
        let mut left = (target - bar.mass).ng() / 2;
        let mut side = Vec::new();
        for pl in &plates.plates {
            for _ in 0..pl.pairs {
                if pl.face.mass.ng() <= left {
                    left -= pl.face.mass.ng();
                    side.push(pl.face);
                }
            }
        }
        let c = crate::solve::change(&prev, &side);
        let load = bar.mass + side.iter().map(|f| f.mass).sum::<Mass>().times(2);
        prev = side.clone();
        rungs.push(Rung {
            kind,
            load,
            reps,
            per_side: side,
            take_off: c.take_off,
            put_on: c.put_on,
            belt: false,
            straps: false,
            rest_s: 0,
        });
    };
    for s in &p.steps {
        push(
            RungKind::WarmUp,
            Mass::from_ng(w.load.ng() / 10_000 * i64::from(s.share)),
            s.reps,
        );
    }
    for _ in 0..w.sets {
        push(RungKind::Work, w.load, w.reps);
    }
    Ok(BuiltLadder {
        rungs,
        off: Mass::ZERO,
    })
}
