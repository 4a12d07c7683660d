//! A time cell of a spreadsheet where a rest is meant: "3:00", typed as minutes and seconds, has
//! become three hours there.
//!
//! Refuses: times that can be read in two ways.
use crate::fault::Wrong;
use crate::quantity::rest_s;
use crate::words::words;
use text::keys::checked as k;

/// The shortest and longest rest, seconds.
const SHORTEST: u32 = 15;
const LONGEST: u32 = 1_800;

/// Seconds of a cell that reads "h:mm:ss".
pub(crate) fn rest_of_time(text: &str) -> Result<u32, Wrong> {
    let right = words!(k::WRITE_SECONDS_AS_180_S);
    let mut parts = text.split(':').map(|part| part.parse::<u32>().ok());
    let (Some(Some(hours)), Some(Some(minutes)), Some(Some(seconds))) =
        (parts.next(), parts.next(), parts.next())
    else {
        return Err(Wrong::value(text, words!(k::NOT_A_TIME), right));
    };
    let as_it_is = hours
        .saturating_mul(3_600)
        .saturating_add(minutes * 60 + seconds);
    let as_minutes = hours.saturating_mul(60).saturating_add(minutes);
    let fits = |rest: &u32| (SHORTEST..=LONGEST).contains(rest);
    let readings: [Option<u32>; 2] = [
        Some(as_it_is).filter(fits),
        Some(as_minutes).filter(|rest| seconds == 0 && fits(rest)),
    ];
    match readings {
        [Some(one), None] | [None, Some(one)] => Ok(one),
        [Some(_), Some(_)] => Err(Wrong::value(text, words!(k::A_TIME_THAT_CAN_BE), right)),
        [None, None] => Err(Wrong::value(text, words!(k::A_TIME_THAT_IS_NO), right)),
    }
}

/// A rest as people write it.
pub(crate) fn rest_of_text(text: &str) -> Result<u32, Wrong> {
    rest_s(text).map_err(|wrong| pause_in_rep(text, wrong))
}

/// A rest of a few seconds is a pause in each rep.
fn pause_in_rep(text: &str, wrong: Wrong) -> Wrong {
    let unit = text.trim_start_matches(|c: char| c.is_ascii_digit());
    let number = &text[..text.len() - unit.len()];
    let seconds = unit.trim_start().to_lowercase().starts_with('s');
    match number.parse::<u32>() {
        Ok(1..=14) if seconds => Wrong {
            right: words!(k::WRITE_A_PAUSE_IN_EACH),
            ..wrong
        },
        Ok(_) | Err(_) => wrong,
    }
}

#[cfg(test)]
mod tests {
    use super::rest_of_time;

    #[test]
    fn typed_minutes_are_minutes() {
        let read = |text| rest_of_time(text).ok();
        assert_eq!(read("3:00:00"), Some(180));
        assert_eq!(read("2:30:00"), Some(150));
        assert_eq!(read("0:02:30"), Some(150));
        assert_eq!(read("0:03:00"), Some(180));
        assert_eq!(read("0:45:00"), Some(45));
        assert_eq!(read("0:20:00"), None, "20 min or 20 s");
        assert_eq!(read("31:00:00"), None);
        assert_eq!(read("0:00:10"), None);
        assert_eq!(read("later"), None);
    }
}
