//! Words and numbers as a lifter reads them, in a language. Refuses: deciding anything.
use crate::{Language, keys as p};
use domain::day::NoSheet;
use domain::event::Hold;
use domain::lift::{Grip, Landmark};
use domain::manner::Manner;
use domain::sheet::{LiftSheet, PinSheet, Rung, RungKind};
use domain::{Length, LengthUnit, Mass, MassUnit, PlateFace};

impl Language {
    /// "1 rep", "5 reps".
    #[must_use]
    pub fn reps(self, n: u8) -> String {
        self.count(p::REPS, n.into())
    }

    /// "130 kg × 2".
    #[must_use]
    pub fn set(self, load: Mass, unit: MassUnit, n: u8) -> String {
        format!("{} × {n}", self.mass(load, unit))
    }

    /// "180 kg × 5", "3 sets of 180 kg × 5".
    #[must_use]
    pub fn work(self, sheet: &LiftSheet) -> String {
        if !sheet.groups.is_empty() {
            return self.work_of_groups(sheet);
        }
        let mut sets = sheet.rungs.iter().filter(|r| r.kind == RungKind::Work);
        let Some(first) = sets.next() else {
            return String::new();
        };
        let one = self.set(first.load, sheet.unit, first.reps);
        match sets.count() {
            0 => one,
            more => self.fill(p::SETS_OF, &[&(more + 1).to_string(), &one]),
        }
    }

    /// "1.25": what stands on a plate.
    #[must_use]
    pub fn label(self, plate: &PlateFace) -> String {
        self.number(&plate.label())
    }

    /// ", then ".
    #[must_use]
    pub fn then(self) -> &'static str {
        self.pick(p::THEN)
    }

    /// "20, 10": labels in the order given; the unit is said where it is not the lifter's.
    #[must_use]
    pub fn plates(self, list: &[PlateFace], unit: MassUnit) -> String {
        let label = |p: &PlateFace| {
            if p.unit == unit {
                self.label(p)
            } else {
                format!("{} {}", self.label(p), p.unit.word())
            }
        };
        list.iter()
            .map(label)
            .collect::<Vec<_>>()
            .join(self.between())
    }

    /// "back held", "back moved at rep 3".
    #[must_use]
    pub fn hold(self, hold: Hold) -> String {
        match hold {
            Hold::Kept => self.say(p::BACK_HELD),
            Hold::MovedAt(rep) => self.fill(p::BACK_MOVED_AT_REP, &[&rep.to_string()]),
        }
    }

    /// "double overhand".
    #[must_use]
    pub fn grip(self, grip: Grip) -> String {
        self.say(match grip {
            Grip::DoubleOverhand => p::DOUBLE_OVERHAND,
            Grip::Hook => p::HOOK_GRIP,
        })
    }

    /// "tibial tuberosity".
    #[must_use]
    pub fn landmark(self, landmark: Landmark) -> String {
        self.say(match landmark {
            Landmark::TibialTuberosity => p::TIBIAL_TUBEROSITY,
            Landmark::PatellaTop => p::PATELLA_TOP,
            Landmark::MidThigh => p::MID_THIGH,
            Landmark::Lockout => p::LOCKOUT,
        })
    }

    /// "no mat", "1 mat, 20 mm", "2 mats, 10 + 20 mm".
    #[must_use]
    pub fn mats(self, mats: &[Length]) -> String {
        let thick: Vec<String> = mats
            .iter()
            .map(|m| self.number(&m.number(LengthUnit::Mm)))
            .collect();
        match thick.as_slice() {
            [] => self.say(p::NO_MAT),
            more => self.fill(p::MATS, &[&more.len().to_string(), &more.join(" + ")]),
        }
    }

    /// "no mat", "1 mat, 20 mm", "2 mats, 30 mm": together.
    #[must_use]
    pub fn mats_sum(self, mats: &[Length]) -> String {
        let all = mats.iter().map(|mat| mat.nm()).sum();
        let all = self.number(&Length::from_nm(all).number(LengthUnit::Mm));
        match mats.len() {
            0 | 1 => self.mats(mats),
            count => self.fill(p::MATS, &[&count.to_string(), &all]),
        }
    }

    /// "bar 431 mm above your feet, 4 mm under the mark".
    #[must_use]
    pub fn bar_height(self, pins: &PinSheet) -> String {
        let bar = whole_mm(pins.bar_height);
        let off = pins.off_target.nm();
        let by = whole_mm(Length::from_nm(off.abs()));
        let how = match off {
            _ if by == "0" => self.say(p::ON_THE_MARK),
            ..0 => self.fill(p::UNDER_THE_MARK, &[&by]),
            _ => self.fill(p::OVER_THE_MARK, &[&by]),
        };
        self.fill(p::BAR_HEIGHT, &[&bar, &how])
    }

    /// Where the bar starts, when not on pins that are placed: "from the floor", "from the hooks
    /// in hole 14".
    #[must_use]
    pub fn start(self, sheet: &LiftSheet) -> String {
        match sheet.hooks {
            Some(hooks) => match hooks.hole {
                Some(hole) => self.fill(p::FROM_HOOKS_HOLE, &[&hole.to_string()]),
                None => self.say(p::FROM_HOOKS_ANY),
            },
            None if sheet.is_from_pins() => self.say(p::HEIGHT_UNKNOWN),
            None => self.say(p::FROM_THE_FLOOR),
        }
    }

    /// "shares 96 mm (3.8 in) with the halting deadlift".
    #[must_use]
    pub fn overlap(self, sheet: &LiftSheet) -> String {
        let Some(shared) = &sheet.overlap else {
            return String::new();
        };
        let both = |l: Length| self.mm_and_in(l);
        let partner = self.shipped(&shared.partner);
        if shared.length.nm() < 0 {
            return self.fill(p::LEAVES_GAP, &[&both(-shared.length), &partner]);
        }
        self.fill(p::SHARES, &[&both(shared.length), &partner])
    }

    /// "96 mm (3.8 in)".
    #[must_use]
    pub fn mm_and_in(self, length: Length) -> String {
        let inches = domain::decimal::write_rounded(length.nm(), LengthUnit::In.scale(), 1);
        self.fill(p::MM_IN, &[&whole_mm(length), &self.number(&inches)])
    }

    /// "retired bar, 20 kg", with the collars where there are any.
    #[must_use]
    pub fn bar(self, sheet: &LiftSheet) -> String {
        let bar = &sheet.bar;
        let mut words = format!("{}, {}", bar.name, self.mass(bar.mass, sheet.unit));
        if bar.collars != Mass::ZERO {
            let collars = self.fill(p::COLLARS, &[&self.mass(bar.collars, sheet.unit)]);
            words.push_str(&format!(", {collars}"));
        }
        words
    }

    /// "belt from 130 kg", "straps from 165 kg"; nothing for what is never worn.
    #[must_use]
    pub fn gear(self, sheet: &LiftSheet) -> Vec<String> {
        let from = |word, worn: fn(&Rung) -> bool| {
            let first = sheet.rungs.iter().find(|r| worn(r))?;
            let load = self.mass(first.load, sheet.unit);
            Some(self.fill(p::FROM_LOAD, &[&self.say(word), &load]))
        };
        let list = [from(p::BELT, |r| r.belt), from(p::STRAPS, |r| r.straps)];
        list.into_iter().flatten().collect()
    }

    /// What is worn on a rung, what is left off by the plan, and how its reps go.
    #[must_use]
    pub fn gear_of(self, sheet: &LiftSheet, at: usize) -> Vec<String> {
        let Some(rung) = sheet.rungs.get(at) else {
            return Vec::new();
        };
        let manner = sheet.manner_of(at);
        let list = [
            (rung.belt, p::BELT),
            (manner.belt == Some(false), p::groups::NO_BELT),
            (rung.straps, p::STRAPS),
            (manner.straps == Some(false), p::groups::NO_STRAPS),
        ];
        let worn = list.into_iter().filter(|(on, _)| *on);
        let worn = worn.map(|(_, word)| self.say(word));
        worn.chain(self.manner(&manner)).collect()
    }

    /// "tempo 3-0-1-0", "pause 2 s".
    pub(crate) fn manner(self, manner: &Manner) -> Vec<String> {
        let tempo = manner.tempo.map(|tempo| tempo.to_string());
        let pause = manner.pause_s.map(|pause| pause.to_string());
        let tempo = tempo.map(|tempo| self.fill(p::groups::TEMPO, &[&tempo]));
        let pause = pause.map(|pause| self.fill(p::groups::PAUSE, &[&pause]));
        [tempo, pause].into_iter().flatten().collect()
    }

    /// "warm-up 3 of 4", "work set", "work set 2 of 3".
    #[must_use]
    pub fn rung(self, sheet: &LiftSheet, at: usize) -> String {
        let Some(now) = sheet.rungs.get(at) else {
            return String::new();
        };
        if let Some(words) = self.group_rung(sheet, at) {
            return words;
        }
        let same = |r: &&Rung| r.kind == now.kind;
        let all = sheet.rungs.iter().filter(same).count();
        let nth = sheet.rungs.iter().take(at + 1).filter(same).count();
        let (nth, of) = (nth.to_string(), all.to_string());
        match now.kind {
            RungKind::WarmUp => self.fill(p::WARM_UP_OF, &[&nth, &of]),
            RungKind::Work if all == 1 => self.say(p::WORK_SET),
            RungKind::Work => self.fill(p::WORK_SET_OF, &[&nth, &of]),
        }
    }

    /// "hole 9".
    #[must_use]
    pub fn hole(self, hole: &str) -> String {
        self.fill(p::HOLE, &[hole])
    }

    /// The words beside the link to a lifter's own record.
    #[must_use]
    pub fn own_record(self) -> String {
        self.say(p::OWN_RECORD)
    }

    /// Why there is no sheet, then what to do.
    #[must_use]
    pub fn no_sheet(self, why: &NoSheet) -> String {
        match why {
            NoSheet::NothingToday { next: None } => self.say(p::NOTHING_TODAY),
            NoSheet::NothingToday {
                next: Some((day, lift)),
            } => self.fill(p::NOTHING_UNTIL, &[&self.shipped(lift), &self.date(*day)]),
            NoSheet::Rest { programme, from } => {
                self.fill(p::GOES_ON_FROM, &[programme, &self.date(*from)])
            }
            NoSheet::Missing { what, name } => self.fill(p::MISSING, &[&self.shipped(what), name]),
            NoSheet::Hurt => self.say(p::NO_HURT),
            NoSheet::Anew { days } => self.fill(p::N_ANEW, &[&days.to_string()]),
            NoSheet::LooksWrong { load, odd, unit } => {
                self.looks_wrong(&self.mass(*load, *unit), *odd, *unit)
            }
            NoSheet::NoLoad => self.say(p::groups::NO_LOAD),
            NoSheet::NoBest => self.say(p::NO_BEST),
            NoSheet::NoTrainingMax => self.say(p::NO_TRAINING_MAX),
            NoSheet::NotMade {
                asked,
                unit,
                below,
                above,
            } => self.not_made(*unit, *asked, (*below, *above)),
            NoSheet::NoLadder { constraint, text } => self.no_ladder(*constraint, text),
        }
    }
}

/// Whole millimetres: nobody sets a pin finer.
#[must_use]
pub fn whole_mm(length: Length) -> String {
    domain::decimal::write_rounded(length.nm(), LengthUnit::Mm.scale(), 0)
}
