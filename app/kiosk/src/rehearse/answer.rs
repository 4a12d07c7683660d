//! What a rehearsal answers: the face as somebody reads it, as one line of JSON.
//!
//! Refuses: reading the frame; see `read`.
use serde::Serialize;

/// The face after a line. A field that the screen does not show is `None`, and absent in JSON.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct Answer {
    /// Which screen: "bar", "rest".
    pub screen: &'static str,
    /// The time at the gym: "2026-12-02T18:00:00".
    pub at: String,
    /// The rack.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rack: Option<String>,
    /// The bar.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bar: Option<String>,
    /// Whose screen it is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lifter: Option<String>,
    /// The lift.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lift: Option<String>,
    /// The load with its unit: "110 kg".
    #[serde(skip_serializing_if = "Option::is_none")]
    pub load: Option<String>,
    /// Reps.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reps: Option<u8>,
    /// What must be on the left sleeve, inside to outside: "20 kg".
    #[serde(skip_serializing_if = "Option::is_none")]
    pub left: Option<Vec<String>>,
    /// The same on the right.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub right: Option<Vec<String>>,
    /// What comes off, outermost first.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub take_off: Option<BothSides>,
    /// What goes on, inside to outside.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub put_on: Option<BothSides>,
    /// What is on the bar as far as anybody said.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub believed: Option<Believed>,
    /// The hole of the pins.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hole: Option<u16>,
    /// Mats under the feet: "20 mm".
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mats: Option<Vec<String>>,
    /// Seconds of rest that are left.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rest_s: Option<u32>,
    /// Everything that can be pressed, as it is drawn.
    pub buttons: Vec<ButtonSeen>,
    /// Every text that is drawn.
    pub texts: Vec<String>,
    /// What the screen warns of.
    pub warnings: Vec<String>,
    /// Sets that stand, warm-ups too.
    pub sets_logged: usize,
    /// Why nothing was done.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refused: Option<String>,
}

/// Plates of both sleeves.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
pub struct BothSides {
    /// Left.
    pub left: Vec<String>,
    /// Right.
    pub right: Vec<String>,
}

/// Plates that are believed to be on the bar, inside to outside.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
pub struct Believed {
    /// On the left sleeve.
    pub left: Vec<String>,
    /// On the right sleeve.
    pub right: Vec<String>,
    /// Whether somebody should look at the bar first.
    pub in_doubt: bool,
}

/// A button as it is drawn.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ButtonSeen {
    /// Its accessible label.
    pub label: String,
    /// Whether it does anything when it is pressed.
    pub enabled: bool,
    /// What it does, as [`view::Deed::word`] has it.
    pub does: &'static str,
}

impl Answer {
    /// One line of JSON, without the line's end.
    #[must_use]
    pub fn json(&self) -> String {
        serde_json::to_string(self).unwrap_or_default()
    }

    /// The button that does this, where one is drawn and enabled.
    #[must_use]
    pub fn button(&self, does: view::Deed) -> Option<&str> {
        let found = self
            .buttons
            .iter()
            .find(|b| b.enabled && b.does == does.word());
        found.map(|button| button.label.as_str())
    }
}
