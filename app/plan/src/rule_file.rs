//! The rules of next time in programme.toml. Refuses: raises beyond a tenth of the load.
use crate::coach_names::Names;
use crate::fault::Wrong;
use crate::fields;
use crate::quantity::{mass, percent};
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::words::words;
use domain::next::{RAISE_MOST, Rule, Step};
use domain::programme::RuleLine;
use domain::{Mass, MassUnit};
use text::keys::checked as k;

/// Most rules of a gym.
const RULES_MAX: usize = 500;

/// Reads all rules, in the order of the file.
pub(crate) fn read(doc: &mut Doc<'_>, top: &Entry<'_>, against: &Names) -> Vec<RuleLine> {
    let entries = top.entries(doc, "rule", RULES_MAX, &fields::RULE);
    entries
        .iter()
        .map(|entry| rule(doc, entry, against))
        .collect()
}

fn rule(doc: &mut Doc<'_>, entry: &Entry<'_>, against: &Names) -> RuleLine {
    let share = |text: &str| percent(text, &(100..=5_000));
    let line = RuleLine {
        lift: entry.text(doc, "lift", |text| against.lifts.find(text)),
        lifter: entry.text(doc, "lifter", |text| against.lifters.find(text)),
        step: entry.text(doc, "step", step),
        tries: entry.whole(doc, "tries", &(1..=10)),
        moved_tries: entry.whole(doc, "moved_tries", &(1..=10)),
        drop: entry.text(doc, "drop", share),
        drops: entry.whole(doc, "drops", &(0..=10)),
        reset: entry.text(doc, "reset", share),
        away_days: entry.whole(doc, "away_days", &(1..=365)),
        away: entry.text(doc, "away", |text| percent(text, &(0..=5_000))),
        late_days: entry.whole(doc, "late_days", &(0..=60)),
        away_step_days: entry.whole(doc, "away_step_days", &(1..=365)),
        anew_days: entry.whole(doc, "anew_days", &(7..=730)),
        ill: entry.whole(doc, "ill", &(0..=10)),
        week: entry.text(doc, "week", share),
        coarse: entry.text(doc, "coarse", |text| percent(text, &(RAISE_MOST..=10_000))),
        over: entry.whole(doc, "over", &(2..=10)),
        over_days: entry.whole(doc, "over_days", &(1..=365)),
        light_days: entry.whole(doc, "light_days", &(1..=365)),
    };
    let drop = line.drop.unwrap_or(Rule::SHIPPED.drop);
    let reset = line.reset.unwrap_or(Rule::SHIPPED.reset);
    if (line.drop.is_some() || line.reset.is_some()) && reset < drop {
        let key = if line.reset.is_some() {
            "reset"
        } else {
            "drop"
        };
        let right = words!(k::LET_A_RESET_TAKE_OFF);
        let read = words!(k::A_RESET_THAT_TAKES_OFF);
        doc.odd(&entry.at_value(key), Wrong::plain(read, right));
    }
    line
}

/// Reads "2.5 kg" or "2.5 %".
fn step(text: &str) -> Result<Step, Wrong> {
    if text.contains('%') {
        return percent(text, &(10..=RAISE_MOST)).map(Step::Share);
    }
    let range = Mass::of(MassUnit::Kg, 100)..=Mass::of(MassUnit::Kg, 20_000);
    mass(text, &range).map(|(mass, _)| Step::Mass(mass))
}
