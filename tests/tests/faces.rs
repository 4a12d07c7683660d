//! Every screen's plain struct, as the demo gym gives it: words and drawings before any pixel.
//!
//! Refuses: looks; those are in `pictures`.
use kiosk::picture::{SCREENS, frame_of};

#[test]
fn every_screen_says_what_it_said() {
    for shown in SCREENS {
        let frame = frame_of(shown.name, None, None).expect("the screen is reached");
        insta::assert_debug_snapshot!(shown.name, frame);
    }
}

#[test]
fn every_lifter_of_a_demo_week_reaches_every_screen() {
    let first = chrono::NaiveDate::from_ymd_opt(2026, 11, 23).expect("a day");
    let mut drawn = 0;
    for offset in 0..7 {
        let day = first + chrono::Days::new(offset);
        for name in [
            "Tevita", "Hamza", "Olumide", "Željka", "Ilkka", "Marisol", "Parvati", "Saoirse",
        ] {
            for shown in SCREENS {
                // Refused where the lifter has nothing on that day; it must never panic.
                drawn += usize::from(frame_of(shown.name, Some(name), Some(day)).is_ok());
            }
        }
    }
    assert!(drawn > 100, "only {drawn} screens were reached");
}
