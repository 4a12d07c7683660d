//! The keys of a rule in programme.toml, as the problem `next` takes them.
use super::read::{Fault, Object, Value};
use domain::decimal;
use domain::next::{Limits, RAISE_MOST, Rule, Step};
use domain::{Mass, MassUnit};

/// The rule and what holds on the day: as shipped, but for what is written.
pub(super) fn rule(input: &Object<'_>) -> Result<(Rule, Limits), Fault> {
    let (mut rule, mut limits) = (Rule::SHIPPED, Limits::SHIPPED);
    let Some(value) = input.get("rule") else {
        return Ok((rule, limits));
    };
    let keys = value.object()?;
    keys.only(&[
        "step",
        "tries",
        "moved_tries",
        "drop",
        "drops",
        "reset",
        "away_days",
        "away",
        "late_days",
        "away_step_days",
        "anew_days",
        "ill",
        "week",
        "coarse",
        "over",
        "over_days",
        "light_days",
    ])?;
    if let Some(value) = keys.get("step") {
        rule.step = step(&value)?;
    }
    let small = |name, (least, most), to: &mut u8| -> Result<(), Fault> {
        if let Some(value) = keys.get(name) {
            *to = u8::try_from(value.whole(least, most, "times")?).unwrap_or(u8::MAX);
        }
        Ok(())
    };
    small("tries", (1, 10), &mut rule.tries)?;
    small("moved_tries", (1, 10), &mut rule.moved_tries)?;
    small("drops", (0, 10), &mut rule.drops)?;
    small("ill", (0, 10), &mut limits.ill)?;
    small("over", (2, 10), &mut limits.over)?;
    let days = |name, (least, most), to: &mut u16| -> Result<(), Fault> {
        if let Some(value) = keys.get(name) {
            *to = value.whole(least, most, "days")?;
        }
        Ok(())
    };
    days("away_days", (1, 365), &mut rule.away_days)?;
    days("late_days", (0, 60), &mut limits.late_days)?;
    days("away_step_days", (1, 365), &mut limits.away_step_days)?;
    days("anew_days", (7, 730), &mut limits.anew_days)?;
    days("over_days", (1, 365), &mut limits.over_days)?;
    days("light_days", (1, 365), &mut limits.light_days)?;
    let share = |name, (least, most), to: &mut u32| -> Result<(), Fault> {
        if let Some(value) = keys.get(name) {
            *to = share(&value, least, most)?;
        }
        Ok(())
    };
    share("drop", (100, 5_000), &mut rule.drop)?;
    share("reset", (100, 5_000), &mut rule.reset)?;
    share("away", (0, 5_000), &mut rule.away)?;
    share("week", (100, 5_000), &mut limits.week)?;
    share("coarse", (RAISE_MOST, 10_000), &mut limits.coarse)?;
    Ok((rule, limits))
}

/// "2.5 kg" or "2.5 %".
fn step(value: &Value<'_>) -> Result<Step, Fault> {
    let text = value.text("a step such as \"2.5 kg\" or \"2.5 %\"")?;
    if text.contains('%') {
        return share(value, 10, RAISE_MOST).map(Step::Share);
    }
    let (mass, _) = value.mass()?;
    let (least, most) = (Mass::of(MassUnit::Kg, 100), Mass::of(MassUnit::Kg, 20_000));
    if mass < least || mass > most {
        let text = format!("{text:?} is out of range: write from 0.1 kg to 20 kg");
        return Err(Fault::new(&value.path, text));
    }
    Ok(Step::Mass(mass))
}

/// "5 %" in hundredths of a percent.
fn share(value: &Value<'_>, least: u32, most: u32) -> Result<u32, Fault> {
    let text = value.text("a share such as \"5 %\"")?;
    let wrong = || {
        let ends = [least, most].map(|end| decimal::write_rounded(i64::from(end), 100, 2));
        let told = format!(
            "{text:?} is out of range: write from \"{} %\" to \"{} %\"",
            ends[0], ends[1]
        );
        Fault::new(&value.path, told)
    };
    let number = text.trim().strip_suffix('%').ok_or_else(wrong)?.trim();
    let hundredths = decimal::read(number, 100, 100_000).map_err(|_| wrong())?;
    let hundredths = u32::try_from(hundredths).map_err(|_| wrong())?;
    if (least..=most).contains(&hundredths) {
        Ok(hundredths)
    } else {
        Err(wrong())
    }
}
