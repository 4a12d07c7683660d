//! The page on the network at the desk: on or off, on which interface, its code, how it stands.
//!
//! Refuses: an address of all interfaces; the page is for one network.
use super::place::{Act, Rows, What};
use super::rows::chosen;
use super::wish::{Edit, Key, Wish};
use crate::language::p;
use crate::list::{ListRow, ListState};
use crate::scene::Scene;

const FILE: &str = "kiosk.toml";

/// Whether the page is served, and where; a tap changes it at once.
pub(crate) fn sharing(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let lan = &scene.news.lan;
    let set = |key, value: String| {
        Act::Want(Wish::set(Edit {
            file: FILE,
            entry: None,
            path: vec![Key::Name(key)],
            value,
        }))
    };
    let value = say.say(if lan.on { p::ON } else { p::OFF });
    let (detail, state) = match (lan.on, &lan.card) {
        (true, card) if !card.trouble.is_empty() => (card.trouble.clone(), ListState::Amiss),
        (true, card) => (card.address.clone(), ListState::Plain),
        (false, _) => (String::new(), ListState::Plain),
    };
    let page = ListRow::new(say.say(p::SHARING), value).detail(detail);
    let mut rows: Rows = vec![(page.state(state), set("share", (!lan.on).to_string()))];
    let (words, state) = match lan.has_code {
        true => (p::PAGE_CODE_SET, ListState::Plain),
        false => (p::PAGE_CODE_MISSING, ListState::Amiss),
    };
    let code = ListRow::new(say.say(p::PAGE_CODE), say.say(words)).state(state);
    let code = match lan.has_code {
        true => code,
        false => code.detail(say.say(p::NOBODY_SIGNS_IN)),
    };
    rows.push((code, Act::Type(What::PageCode)));
    rows.extend(tls(scene, set("tls", "true".to_owned())));
    let address = |address: &String| {
        let alone = address.starts_with("127.") || address == "::1";
        let who = if alone {
            p::THIS_MACHINE
        } else {
            p::WHOLE_NETWORK
        };
        let row = ListRow::new(say.say(p::INTERFACE), address.clone()).detail(say.say(who));
        let is = *address == lan.address;
        let act = if is {
            Act::Nothing
        } else {
            set("address", format!("\"{address}\""))
        };
        (row.state(chosen(is)), act)
    };
    rows.extend(lan.addresses.iter().map(address));
    let told = |title, value: &String| {
        let row = ListRow::new(say.say(title), value.clone()).state(ListState::Told);
        (!value.is_empty()).then_some((row, Act::Nothing))
    };
    rows.extend(told(p::PAGE_NAME, &lan.card.name));
    let prints = [
        (p::FINGERPRINT, &lan.card.fingerprint),
        (p::ROOT_FINGERPRINT, &lan.card.root_fingerprint),
    ];
    for (title, print) in prints {
        if !print.is_empty() {
            let row = ListRow::new(say.say(title), String::new());
            let row = row.detail(print.clone()).state(ListState::Told);
            rows.push((row, Act::Nothing));
        }
    }
    rows
}

/// What somebody has to know of TLS: that there is none, which a tap mends; that it came on by
/// itself; how it stands with the owner's certificate.
fn tls(scene: &Scene<'_>, turn_on: Act) -> Rows {
    let say = scene.language();
    let card = &scene.news.lan.card;
    let mut rows = Rows::new();
    if card.readable {
        let row = ListRow::new(say.say(p::TLS), say.say(p::OFF)).detail(say.say(p::TLS_ON_BY_TAP));
        rows.push((row.state(ListState::Amiss), turn_on));
    }
    if card.tls_by_itself {
        let row = ListRow::new(say.say(p::TLS), say.say(p::ON)).detail(say.say(p::LAN_BY_ITSELF));
        rows.push((row.state(ListState::Told), Act::Nothing));
    }
    let amiss = |detail: String| {
        let row = ListRow::new(say.say(p::CERTIFICATE), String::new()).detail(detail);
        (row.state(ListState::Amiss), Act::Nothing)
    };
    if !card.certificate_trouble.is_empty() {
        rows.push(amiss(say.fill(p::LAN_STALE, &[&card.certificate_trouble])));
    }
    if let Some(day) = card.certificate_ends {
        rows.push(amiss(say.fill(p::LAN_ENDS, &[&say.date(day)])));
    }
    rows
}
