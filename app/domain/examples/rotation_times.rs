//! scratch
use domain::length::Length;
use domain::mass::{Mass, MassUnit};
use domain::solve::rotation::*;
use domain::solve::*;
struct Rng(u64);
impl Rng {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E3779B97F4A7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58476D1CE4E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D049BB133111EB);
        z ^ (z >> 31)
    }
    fn below(&mut self, n: u64) -> u64 {
        self.next() % n
    }
    fn range(&mut self, a: i64, b: i64) -> i64 {
        a + (self.below((b - a + 1) as u64) as i64)
    }
    fn pick<T: Copy>(&mut self, v: &[T]) -> T {
        v[self.below(v.len() as u64) as usize]
    }
}
fn g(x: i64) -> Mass {
    Mass::of(MassUnit::Kg, x)
}
const MS: u64 = 1_000_000;
fn gen_problem(fam: &str, seed: u64) -> Problem {
    let mut r = Rng(seed * 7919 + 13);
    let b = fam.as_bytes();
    let (nl, nt) = (
        if b.len() > 1 {
            (b[1] - b'0') as usize
        } else {
            4
        },
        if b.len() > 2 {
            (b[2] - b'0') as usize
        } else {
            6
        },
    );
    let big = !(b.len() > 3 && b[3] == b'a');
    let den = [25000, 20000, 15000, 10000, 5000, 2500, 1250];
    let f = b[0];
    let plates = den
        .iter()
        .map(|&m| {
            let pairs = match f {
                b'p' => {
                    if m >= 20000 {
                        8
                    } else {
                        4
                    }
                }
                b'P' => 20,
                _ => {
                    if m == 25000 {
                        r.range(4, 8)
                    } else {
                        r.range(1, 3)
                    }
                }
            };
            PairKind {
                mass: g(m),
                pairs: pairs as u16,
                thickness: Length::mm(20),
                handling_ns: 1000
                    * MS
                    * (if m >= 20000 {
                        r.range(7, 10)
                    } else if m >= 10000 {
                        r.range(5, 7)
                    } else {
                        r.range(3, 5)
                    }) as u64,
            }
        })
        .collect();
    let mut lifters = vec![];
    for _ in 0..nl {
        let work = r.range(24, 80) * 2500;
        let hole: u8 = if r.below(2) == 0 {
            0
        } else {
            1 + r.below(3) as u8
        };
        let rest = match f {
            b'r' => r.range(24, 36) * 10000,
            b'x' => r.range(3, 9) * 10000,
            _ => r.range(9, 20) * 10000,
        };
        let pct = [35, 50, 65, 80, 90, 100, 100, 100];
        let off = if nt < 6 { 6 - nt } else { 0 };
        let mut v = vec![];
        for k in 0..nt {
            let t = (work * pct[k + off] / 100 / 2500) * 2500;
            let t = t.max(20000);
            let (be, ab) = match f {
                b't' => (0, 0),
                b'w' => (5000, 5000),
                _ => r.pick(&[(0, 0), (1250, 1250), (2500, 2500), (2500, 0), (0, 2500)]),
            };
            v.push(Turn {
                target: g(t),
                below: g(be),
                above: g(ab),
                hole: if hole == 0 { None } else { Some(hole as u16) },
                lasts_ns: r.range(20, 60) as u64 * 1000 * MS,
                rest_ns: rest as u64 * MS,
            });
        }
        lifters.push(Lifter {
            turns: v,
            ended_ns: None,
        });
    }
    let loaders = if r.range(1, 2) == 1 {
        Loaders::One
    } else {
        Loaders::Two
    };
    Problem {
        equipment: Equipment {
            bar_and_collars: g(20000),
            sleeve: None,
            big_inside: big,
            plates,
        },
        loaders,
        hole_change_ns: r.range(10, 40) as u64 * 1000 * MS,
        hole_change_at_most: g(20000 + r.range(0, 8) * 10000),
        lifters,
        standing: Standing::default(),
    }
}
fn main() {
    let a: Vec<String> = std::env::args().collect();
    let fam = a[1].as_str();
    let n: u64 = a[2].parse().unwrap();
    let from: u64 = a.get(3).map(|s| s.parse().unwrap()).unwrap_or(0);
    let limit: u128 = a.get(4).map(|s| s.parse().unwrap()).unwrap_or(10000);
    let mut ts = vec![];
    let (mut proven, mut lh) = (0, 0);
    for seed in from..from + n {
        let p = gen_problem(fam, seed);
        #[allow(clippy::disallowed_methods)]
        let t = std::time::Instant::now();
        let r = plan(
            &p,
            Effort {
                states: u64::MAX,
                go_on: &mut || t.elapsed().as_millis() < limit,
            },
        );
        let us = t.elapsed().as_micros();
        match r {
            Ok(r) => {
                println!(
                    "{seed}: {}ms ends {} handling {} lb {} proven {} {} states {}",
                    us / 1000,
                    r.ends_ns / MS,
                    r.handling_ns / MS,
                    r.at_least_ns / MS,
                    r.proven,
                    r.least_handling,
                    r.states
                );
                ts.push(us);
                proven += u32::from(r.proven);
                lh += u32::from(r.least_handling);
            }
            Err(e) => println!("{seed}: {e}"),
        }
    }
    ts.sort();
    println!(
        "{fam}: n {} proven {} handling {} min {} med {} p90 {} max {} ms",
        ts.len(),
        proven,
        lh,
        ts[0] / 1000,
        ts[ts.len() / 2] / 1000,
        ts[ts.len() * 9 / 10] / 1000,
        ts[ts.len() - 1] / 1000
    );
}
