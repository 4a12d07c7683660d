//! How one kiosk's screen looks: its language and its light, chosen on the screen and kept.
//!
//! Refuses: colours; the window has those.
use crate::language::Language;

/// The name under which the choice is kept among the files taken; no folder has such a file, so
/// that the choice is this kiosk's alone.
pub const SCREEN_FILE: &str = "screen.toml";
/// The hour from which, and until which, daylight is shown by the hour.
pub const DAYLIGHT_HOURS: (u32, u32) = (7, 18);

/// What somebody chose for this screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Chosen {
    /// The language.
    pub language: Language,
    /// The light.
    pub light: Light,
}

/// Which of the two looks is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Light {
    /// Daylight from morning to evening, dim else.
    #[default]
    ByHour,
    /// Always daylight.
    Daylight,
    /// Always dim.
    Dim,
}

/// The look of now.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Look {
    /// Dark on light, for a bright room.
    Daylight,
    /// Light on dark, for a dim one.
    #[default]
    Dim,
}

impl Light {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::ByHour, Self::Daylight, Self::Dim];

    const fn key(self) -> &'static str {
        match self {
            Self::ByHour => "by-hour",
            Self::Daylight => "daylight",
            Self::Dim => "dim",
        }
    }
}

impl Chosen {
    /// Reads what [`Chosen::write`] wrote; whatever it does not know stays as it comes.
    #[must_use]
    pub fn read(text: &str) -> Self {
        let mut chosen = Self::default();
        for line in text.lines() {
            let Some((key, value)) = line.split_once('=') else {
                continue;
            };
            let value = value.trim().trim_matches('"');
            match key.trim() {
                "language" => {
                    chosen.language = Language::of_code(value).unwrap_or(chosen.language);
                }
                "light" => {
                    let light = Light::ALL.into_iter().find(|light| light.key() == value);
                    chosen.light = light.unwrap_or(chosen.light);
                }
                _ => {}
            }
        }
        chosen
    }

    /// As kept: TOML.
    #[must_use]
    pub fn write(self) -> String {
        let (language, light) = (self.language.code(), self.light.key());
        format!("language = \"{language}\"\nlight = \"{light}\"\n")
    }

    /// The look at a time of day such as "18:42".
    #[must_use]
    pub fn look(self, clock: &str) -> Look {
        let hour = clock.split(':').next().and_then(|hour| hour.parse().ok());
        let (from, to) = DAYLIGHT_HOURS;
        match self.light {
            Light::Daylight => Look::Daylight,
            Light::Dim => Look::Dim,
            Light::ByHour if hour.is_some_and(|h: u32| (from..to).contains(&h)) => Look::Daylight,
            Light::ByHour => Look::Dim,
        }
    }
}
