//! Set groups as a coach writes and says them: "3 sets of 180 kg × 5", "1 × 3-5 @ 160 kg, top".
use crate::{Language, keys as p};
use domain::manner::Manner;
use domain::prescription::{LoadWish, Prescription, Reps, Role, SetGroup};
use domain::sheet::{GroupSheet, LiftSheet};
use domain::{Mass, MassUnit, TrackName};

impl Language {
    /// "rack pull", with its track where it has one by name: "rack pull, heavy".
    #[must_use]
    pub fn tracked(self, lift: &str, track: Option<TrackName>) -> String {
        let lift = self.shipped(lift);
        let Some(track) = track else { return lift };
        let word = match track.as_str() {
            "heavy" => self.say(p::groups::HEAVY),
            "medium" => self.say(p::groups::MEDIUM),
            "light" => self.say(p::groups::LIGHT),
            other => other.into(),
        };
        format!("{lift}, {word}")
    }

    /// "5", "3-5", "5+", "AMRAP".
    #[must_use]
    pub fn reps_asked(self, reps: Reps) -> String {
        match (reps.least, reps.most) {
            (1, None) => "AMRAP".into(),
            (least, None) => format!("{least}+"),
            (least, Some(most)) if least == most => least.to_string(),
            (least, Some(most)) => format!("{least}-{most}"),
        }
    }

    /// "5 reps", "3-5 reps", "5+ reps", "AMRAP".
    #[must_use]
    pub fn reps_at(self, sheet: &LiftSheet, at: usize) -> String {
        let reps = sheet.reps_of(at);
        match (reps.least, reps.most) {
            (1, None) => self.reps_asked(reps),
            _ if reps.is_just() => self.reps(reps.least),
            _ => self.fill(p::REPS, &[&self.reps_asked(reps)]),
        }
    }

    /// "top set", "back-off 2 of 3", "drop set"; nothing for plain work.
    pub(crate) fn group_rung(self, sheet: &LiftSheet, at: usize) -> Option<String> {
        let group = sheet.group_of(at)?;
        let role = self.role(group.role)?;
        let nth = at + 1 - group.rungs().start;
        let mut words = match group.sets {
            1 => role,
            all => self.fill(p::groups::NTH, &[&role, &nth.to_string(), &all.to_string()]),
        };
        if let Some(effort) = group.effort {
            let effort = self.fill(p::groups::EFFORT, &[&self.effort(effort)]);
            words.push_str(&format!(", {effort}"));
        }
        Some(words)
    }

    /// The work of a sheet, group by group: "180 kg × 5, 3 sets of 162.5 kg × 5".
    pub(crate) fn work_of_groups(self, sheet: &LiftSheet) -> String {
        let one = |group: &GroupSheet| {
            let load = sheet.rungs.get(group.rungs().start)?.load;
            let load = self.mass(load, sheet.unit);
            let set = format!("{load} × {}", self.reps_asked(group.reps));
            Some(match group.sets {
                1 => set,
                sets => self.fill(p::SETS_OF, &[&sets.to_string(), &set]),
            })
        };
        let all: Vec<String> = sheet.groups.iter().filter_map(one).collect();
        all.join(", ")
    }

    /// "6", "7.5": RPE from tenths.
    #[must_use]
    pub fn effort(self, tenths: u8) -> String {
        self.number(&domain::decimal::write_rounded(tenths.into(), 10, 1))
    }

    /// All groups of a row, in their order.
    #[must_use]
    pub fn groups(self, row: &Prescription, unit: MassUnit) -> String {
        self.groups_now(row, unit, |_| None)
    }

    /// The same with what each share is in mass now: "80 % of the training max = 144 kg × 5".
    #[must_use]
    pub fn groups_now(
        self,
        row: &Prescription,
        unit: MassUnit,
        now: impl Fn(&SetGroup) -> Option<Mass>,
    ) -> String {
        let each = row.groups();
        let all: Vec<String> = each.map(|g| self.group(g, unit, now(g))).collect();
        let all = all.join(", ");
        match &row.bar {
            Some(bar) => self.fill(p::groups::BAR_OF, &[&all, bar]),
            None => all,
        }
    }

    /// Hundredths of a percent: "82.5 %".
    #[must_use]
    pub fn percent(self, share: u32) -> String {
        let percent = domain::decimal::write_rounded(share.into(), 100, 2);
        self.number(&format!("{percent} %"))
    }

    /// A load as a plan asks for it: "140 kg", "80 % of the training max", "last time + 2.5 kg".
    #[must_use]
    pub fn wish(self, load: LoadWish, unit: MassUnit) -> String {
        let of = |phrase, share| self.fill(phrase, &[&self.percent(share)]);
        match load {
            LoadWish::Mass(mass) => self.mass(mass, unit),
            LoadWish::OfBest(share) => self.percent(share),
            LoadWish::OfTraining(share) => of(p::groups::OF_TRAINING, share),
            LoadWish::OfTop(share) => of(p::groups::OF_TOP, share),
            LoadWish::More(mass) => self.fill(p::groups::MORE, &[&self.mass(mass, unit)]),
            LoadWish::Due => self.say(p::groups::DUE),
        }
    }

    fn group(self, group: &SetGroup, unit: MassUnit, now: Option<Mass>) -> String {
        let reps = self.reps_asked(group.reps);
        let mut load = self.wish(group.load, unit);
        if let Some(now) = now {
            load.push_str(&format!(" = {}", self.mass(now, unit)));
        }
        let one = format!("{load} × {reps}");
        let mut words = match group.sets {
            1 => one,
            sets => self.fill(p::SETS_OF, &[&sets.to_string(), &one]),
        };
        if let Some(effort) = group.effort {
            let effort = self.fill(p::groups::EFFORT, &[&self.effort(effort)]);
            words.push_str(&format!(" {effort}"));
        }
        for said in self.said(&group.manner) {
            words.push_str(&format!(" {said}"));
        }
        if let Some(role) = self.role(group.role) {
            words.push_str(&format!(" ({role})"));
        }
        words
    }

    /// All that a plan says of how sets are done: "hole 6", "belt", "tempo 3-0-1-0".
    fn said(self, manner: &Manner) -> Vec<String> {
        let worn = |on: Option<bool>, with, without| on.map(|on| if on { with } else { without });
        let hole = manner.hole.map(|hole| hole.to_string());
        let block = manner.block.map(crate::whole_mm);
        let words = [
            worn(manner.belt, p::BELT, p::groups::NO_BELT),
            worn(manner.straps, p::STRAPS, p::groups::NO_STRAPS),
        ];
        let mut said: Vec<String> = Vec::new();
        said.extend(hole.map(|hole| self.fill(p::HOLE, &[&hole])));
        said.extend(block.map(|block| self.fill(p::groups::BLOCK, &[&block])));
        said.extend(words.into_iter().flatten().map(|word| self.say(word)));
        said.extend(manner.grip.map(|grip| self.grip(grip)));
        said.extend(self.manner(manner));
        said
    }

    /// "top set", "back-off", "drop set"; nothing for plain work.
    #[must_use]
    pub fn role(self, role: Role) -> Option<String> {
        let word = match role {
            Role::Work => return None,
            Role::Top => p::groups::TOP,
            Role::BackOff => p::groups::BACK_OFF,
            Role::Drop => p::groups::DROP,
        };
        Some(self.say(word))
    }
}
