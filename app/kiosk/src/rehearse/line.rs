//! One line of a rehearsal as it is written: a JSON object with one thing to do.
//!
//! Refuses: guessing; what is not understood is told, with what would be right.
use crate::clock::Clock as _;
use chrono::NaiveDateTime;
use serde::Deserialize;
use std::path::PathBuf;

/// Taps of one line at most.
pub const TIMES_MAX: u32 = 100;
/// Between two taps of one line at most, milliseconds.
pub const GAP_MAX_MS: u64 = 60_000;
/// One wait at most, seconds: a week.
pub const WAIT_MAX_S: u64 = 7 * 24 * 3_600;
/// Between two taps where nothing is said, milliseconds: a finger that taps twice.
const GAP_MS: u64 = 350;

/// What to do.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Line {
    /// A finger taps.
    Tap {
        /// The button's accessible label, or its beginning where that is unique.
        label: String,
        /// How often, from 1 to [`TIMES_MAX`], always at the same place.
        times: u32,
        /// From one tap to the next, milliseconds, from 1 to [`GAP_MAX_MS`].
        gap_ms: u64,
    },
    /// A finger stays on a button until it counts.
    Hold(String),
    /// Nobody does anything for so many milliseconds.
    Wait(u64),
    /// The wall clock jumps.
    Clock(NaiveDateTime),
    /// The kiosk is started anew, within the same boot.
    Restart,
    /// A stick is plugged in: a folder.
    Plug(PathBuf),
}

/// The keys of a line.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct Keys {
    tap: Option<String>,
    times: Option<u32>,
    gap_ms: Option<u64>,
    hold: Option<String>,
    wait_s: Option<f64>,
    clock: Option<String>,
    restart: Option<bool>,
    plug: Option<PathBuf>,
}

impl Line {
    /// One tap.
    #[must_use]
    pub fn tap(label: impl Into<String>) -> Self {
        Self::Tap {
            label: label.into(),
            times: 1,
            gap_ms: GAP_MS,
        }
    }

    /// Reads one line.
    ///
    /// # Errors
    /// A sentence on what is wrong and what would be right.
    pub fn read(text: &str) -> Result<Self, String> {
        let keys: Keys = serde_json::from_str(text)
            .map_err(|error| format!("this is no line of a rehearsal ({error}); {WRITE_ONE_OF}"))?;
        let repeats = keys.times.is_some() || keys.gap_ms.is_some();
        let mut found = Vec::new();
        if let Some(label) = keys.tap {
            found.push(tap(label, keys.times, keys.gap_ms)?);
        } else if repeats {
            return Err("times and gap_ms belong to a tap; write \"tap\" beside them".into());
        }
        found.extend(keys.hold.map(Self::Hold));
        if let Some(seconds) = keys.wait_s {
            found.push(wait(seconds)?);
        }
        if let Some(text) = keys.clock {
            found.push(Self::Clock(moment(&text)?));
        }
        match keys.restart {
            Some(true) => found.push(Self::Restart),
            Some(false) => return Err("restart is true or is left out".into()),
            None => {}
        }
        found.extend(keys.plug.map(Self::Plug));
        match (found.pop(), found.is_empty()) {
            (Some(line), true) => Ok(line),
            _ => Err(format!("a line says one thing; {WRITE_ONE_OF}")),
        }
    }
}

/// What a line may be.
const WRITE_ONE_OF: &str =
    "write {\"tap\": \"LABEL\"}, hold, wait_s, clock, restart or plug, one in a line";

fn tap(label: String, times: Option<u32>, gap_ms: Option<u64>) -> Result<Line, String> {
    let (times, gap_ms) = (times.unwrap_or(1), gap_ms.unwrap_or(GAP_MS));
    if !(1..=TIMES_MAX).contains(&times) {
        return Err(format!(
            "times is {times}; it must be from 1 to {TIMES_MAX}"
        ));
    }
    if !(1..=GAP_MAX_MS).contains(&gap_ms) {
        return Err(format!(
            "gap_ms is {gap_ms}; it must be from 1 to {GAP_MAX_MS}"
        ));
    }
    Ok(Line::Tap {
        label,
        times,
        gap_ms,
    })
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    clippy::cast_precision_loss,
    reason = "bounded before; a wait is no load"
)]
fn wait(seconds: f64) -> Result<Line, String> {
    if !(0.0..=WAIT_MAX_S as f64).contains(&seconds) {
        return Err(format!(
            "wait_s is {seconds}; it must be from 0 to {WAIT_MAX_S}"
        ));
    }
    Ok(Line::Wait((seconds * 1_000.0).round() as u64))
}

/// A time at the gym, as in 2026-12-02T18:00, with seconds or without.
///
/// # Errors
/// A sentence on what would be right.
pub fn moment(text: &str) -> Result<NaiveDateTime, String> {
    ["%Y-%m-%dT%H:%M:%S", "%Y-%m-%dT%H:%M"]
        .iter()
        .find_map(|form| NaiveDateTime::parse_from_str(text, form).ok())
        .ok_or_else(|| format!("{text} is no time; write it as in 2026-12-02T18:00"))
}

/// Now, where nothing else is said.
pub(crate) fn now() -> NaiveDateTime {
    crate::clock::SystemClock.local()
}

#[cfg(test)]
mod tests {
    use super::Line;

    #[test]
    fn what_is_written_is_read_or_told() {
        let tap = |times, gap_ms| {
            Ok(Line::Tap {
                label: "start".into(),
                times,
                gap_ms,
            })
        };
        assert_eq!(Line::read("{\"tap\": \"start\"}"), tap(1, 350));
        assert_eq!(
            Line::read("{\"tap\": \"start\", \"times\": 2, \"gap_ms\": 40}"),
            tap(2, 40)
        );
        assert_eq!(Line::read("{\"wait_s\": 0.5}"), Ok(Line::Wait(500)));
        assert_eq!(Line::read("{\"restart\": true}"), Ok(Line::Restart));
        assert!(Line::read("{\"clock\": \"2026-12-02T17:30\"}").is_ok());
        for wrong in [
            "",
            "tap start",
            "{}",
            "[]",
            "{\"tap\": 3}",
            "{\"tap\": \"a\", \"hold\": \"b\"}",
            "{\"times\": 2}",
            "{\"tap\": \"a\", \"times\": 0}",
            "{\"tap\": \"a\", \"gap_ms\": 0}",
            "{\"tap\": \"a\", \"gap_ms\": -4}",
            "{\"wait_s\": -1}",
            "{\"wait_s\": 1e99}",
            "{\"clock\": \"half past six\"}",
            "{\"restart\": false}",
            "{\"unplug\": true}",
        ] {
            let told = Line::read(wrong).expect_err(wrong);
            assert!(told.len() > 20, "{wrong}: {told}");
        }
    }
}
