//! This kiosk's own page: its language, its light, the door to the coach's desk, what it is, where
//! its page on the network is.
//!
//! Refuses: anything about a lifter.
use crate::language::{Language, c, p};
use crate::list::{List, ListRow, ListState, Page};
use crate::look::{Chosen, DAYLIGHT_HOURS, Light};
use crate::scene::Scene;

/// What a row of the page does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum PanelRow {
    /// A meet or test day that is written and not past.
    Meet,
    /// What ours declare there.
    Cards,
    Speak(Language),
    Shine(Light),
    Desk,
    About,
    Lan,
}

/// The rows, in their order.
const ROWS: [PanelRow; 9] = [
    PanelRow::Speak(Language::English),
    PanelRow::Speak(Language::German),
    PanelRow::Speak(Language::Spanish),
    PanelRow::Shine(Light::ByHour),
    PanelRow::Shine(Light::Daylight),
    PanelRow::Shine(Light::Dim),
    PanelRow::Desk,
    PanelRow::About,
    // Last, since it is there only while the page is on.
    PanelRow::Lan,
];

/// The rows as they are now.
pub(crate) fn rows(scene: &Scene<'_>) -> Vec<PanelRow> {
    let meet = scene.meet.filter(|day| day.date >= scene.date);
    let meet = meet.map(|_| [PanelRow::Meet, PanelRow::Cards]);
    meet.into_iter().flatten().chain(ROWS).collect()
}

pub(crate) fn panel(scene: &Scene<'_>) -> List {
    let say = scene.language();
    let chosen = scene.chosen();
    let row = |row: &PanelRow| match row {
        PanelRow::Meet => {
            let day = scene.meet.map(|day| (day.name.clone(), say.date(day.date)));
            let (name, date) = day.unwrap_or_default();
            ListRow::new(say.say(c::T_MEET_DAY), name).detail(date)
        }
        PanelRow::Cards => ListRow::new(say.say(c::T_CARDS), say.say(c::T_CARDS_VALUE)),
        PanelRow::Speak(language) => ListRow::new(say.say(p::LANGUAGE), language.name())
            .state(is(*language == chosen.language)),
        PanelRow::Shine(light) => {
            let (value, detail) = light_words(say, *light);
            ListRow::new(say.say(p::LIGHT), value)
                .detail(detail)
                .state(is(*light == chosen.light))
        }
        PanelRow::Desk => ListRow::new(say.say(p::DESK), say.say(p::BEHIND_CODE)),
        PanelRow::About => ListRow::new(say.say(p::ABOUT), say.say(p::ABOUT_VALUE)),
        PanelRow::Lan => lan_row(scene),
    };
    let is_there = |row: &&PanelRow| **row != PanelRow::Lan || scene.news.lan.is_told();
    List {
        title: say.say(p::PANEL_TITLE),
        hint: match scene.news.demo {
            true => say.say(p::DEMO_STEPS),
            false => scene.gym.name.clone(),
        },
        rows: rows(scene).iter().filter(is_there).map(row).collect(),
        ..List::default()
    }
}

/// What stands when a row was tapped; `None` for rows that choose nothing.
pub(crate) fn choose(chosen: Chosen, row: PanelRow) -> Option<Chosen> {
    match row {
        PanelRow::Speak(language) => Some(Chosen { language, ..chosen }),
        PanelRow::Shine(light) => Some(Chosen { light, ..chosen }),
        PanelRow::Meet | PanelRow::Cards | PanelRow::Desk | PanelRow::About | PanelRow::Lan => None,
    }
}

fn is(chosen: bool) -> ListState {
    if chosen {
        ListState::Chosen
    } else {
        ListState::Plain
    }
}

fn light_words(say: Language, light: Light) -> (String, String) {
    let (from, to) = DAYLIGHT_HOURS;
    let hours = [from.to_string(), to.to_string()];
    match light {
        Light::ByHour => (
            say.say(p::BY_HOUR),
            say.fill(p::BY_HOUR_DETAIL, &[&hours[0], &hours[1]]),
        ),
        Light::Daylight => (say.say(p::DAYLIGHT), String::new()),
        Light::Dim => (say.say(p::DIM), String::new()),
    }
}

/// What this program is, under which terms, and what it does not promise.
pub(crate) fn about(scene: &Scene<'_>) -> Page {
    let say = scene.language();
    Page {
        title: say.say(p::ABOUT),
        lines: vec![
            say.fill(p::ABOUT_WHAT, &[env!("CARGO_PKG_VERSION")]),
            say.say(p::ABOUT_TERMS),
            say.say(p::ABOUT_PARTS),
            say.say(p::ABOUT_CARE),
        ],
        only: false,
    }
}

fn lan_row(scene: &Scene<'_>) -> ListRow {
    let say = scene.language();
    let card = scene.news.lan.card.clone();
    let on = card.trouble.is_empty();
    let name = if card.name.is_empty() {
        card.address
    } else {
        card.name
    };
    ListRow::new(
        say.say(p::SHARING),
        say.say(if on { p::ON } else { p::OFF }),
    )
    .detail(if on { name } else { card.trouble })
    .state(if on {
        ListState::Plain
    } else {
        ListState::Amiss
    })
}

/// Where the page on the network is, and how to know that it is this kiosk's.
pub(crate) fn lan(scene: &Scene<'_>) -> Page {
    let say = scene.language();
    let card = scene.news.lan.card.clone();
    let mut lines = Vec::new();
    if !card.address.is_empty() {
        let at = match card.name.as_str() {
            "" => card.address,
            name => say.fill(p::LAN_OR, &[name, &card.address]),
        };
        lines.push(say.fill(p::LAN_OPENS, &[&at]));
    }
    if !card.fingerprint.is_empty() {
        // Spaces, so that lines can break.
        let print = card.fingerprint.replace(':', " ");
        lines.push(say.fill(p::LAN_PRINT, &[&print]));
    }
    if !card.root_fingerprint.is_empty() {
        let print = card.root_fingerprint.replace(':', " ");
        lines.push(say.fill(p::LAN_ROOT, &[&print]));
    }
    if card.readable {
        lines.push(say.say(p::LAN_READABLE));
    }
    if !card.trouble.is_empty() {
        lines.push(card.trouble);
    }
    Page {
        title: say.say(p::SHARING),
        lines,
        only: false,
    }
}
