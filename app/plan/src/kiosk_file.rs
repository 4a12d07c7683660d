//! kiosk.toml: where one kiosk serves its page, and which racks it shows.
//!
//! Refuses: racks that the gym does not have, addresses that are names.
use crate::Source;
use crate::fault::{Fault, Wrong};
use crate::fields;
use crate::known::Known;
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use domain::Gym;
use std::net::{IpAddr, Ipv4Addr};

/// What one kiosk is set to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Kiosk {
    /// The address that the page is served on.
    pub address: IpAddr,
    /// The port that the page is served on, 1 to 65535.
    pub port: u16,
    /// Whether the page is served at all.
    pub share: bool,
    /// Names of the racks shown; `None` for all of the gym's.
    pub racks: Option<Vec<String>>,
}

impl Default for Kiosk {
    fn default() -> Self {
        Self {
            address: IpAddr::V4(Ipv4Addr::LOCALHOST),
            port: 8470,
            share: true,
            racks: None,
        }
    }
}

/// Reads kiosk.toml; without a gym the racks' names are taken as they stand.
///
/// # Errors
/// Every fault of the file, by row.
pub fn kiosk(source: Source<'_>, gym: Option<&Gym>) -> Result<Kiosk, Vec<Fault>> {
    let (kiosk, faults) = kiosk_noted(source, gym);
    kiosk.ok_or(faults)
}

/// As [`kiosk()`], with what is merely odd beside a file that was taken.
#[must_use]
pub fn kiosk_noted(source: Source<'_>, gym: Option<&Gym>) -> (Option<Kiosk>, Vec<Fault>) {
    let (mut doc, root) = match Doc::open(source) {
        Ok(opened) => opened,
        Err(faults) => return (None, faults),
    };
    let known = gym.map_or_else(
        || Known::open("rack"),
        |gym| Known::of("rack", gym.racks.iter().map(|rack| rack.name.as_str())),
    );
    let top = Entry::open(&mut doc, root.get_ref(), 0..0, &fields::KIOSK);
    let default = Kiosk::default();
    let address = top.text(&mut doc, "address", |text| {
        let right = "write numbers such as \"127.0.0.1\" or \"192.168.1.20\"";
        let read = text.trim().parse::<IpAddr>();
        read.map_err(|_| Wrong::value(text, "not an address in numbers", right))
    });
    let port = top.whole(&mut doc, "port", &(1..=u16::MAX));
    let share = top.flag(&mut doc, "share", default.share);
    let racks = top.texts(&mut doc, "racks", RACKS_MAX, |text| known.find(text));
    let given = top.has("racks");
    if top.is_empty_list("racks") {
        let right = "name a rack, or leave \"racks\" out to show all";
        doc.missing(
            &top.at_value("racks"),
            Wrong::plain("no rack to show", right),
        );
    }
    let kiosk = Kiosk {
        address: address.unwrap_or(default.address),
        port: port.unwrap_or(default.port),
        share,
        racks: given.then_some(racks),
    };
    let faults = doc.close();
    let wrong = faults.iter().any(Fault::stops);
    ((!wrong).then_some(kiosk), faults)
}

/// Most racks that a kiosk can name.
const RACKS_MAX: usize = 50;
