//! kiosk.toml: where one kiosk serves its page, which racks it shows, where its copies and sticks
//! are.
//!
//! Refuses: racks that the gym does not have, addresses that are names or stand for all
//! interfaces, places that depend on where the program was started.
use crate::Source;
use crate::fault::{Fault, Wrong};
use crate::fields;
use crate::hub_address::{AddressFault, HubAddress};
use crate::known::Known;
use crate::quantity::time_ms;
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::words::{term, words};
use domain::Gym;
use std::net::{IpAddr, Ipv4Addr};
use std::ops::RangeInclusive;
use text::keys::checked as k;

/// What one kiosk is set to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Kiosk {
    /// The address that the page is served on.
    pub address: IpAddr,
    /// The port that the page is served on, 1 to 65535.
    pub port: u16,
    /// Whether the page is served at all.
    pub share: bool,
    /// Whether it is served under TLS, where the file says so; see [`Kiosk::is_under_tls`].
    pub tls: Option<bool>,
    /// The owner's certificate and key, absolute paths; `None` for one made on the device.
    pub certificate: Option<(String, String)>,
    /// The name that is announced on the network, without ".local".
    pub name: String,
    /// Other names by which the page is asked for, in small letters.
    pub hosts: Vec<String>,
    /// Addresses of proxies whose word is taken for who asks.
    pub proxies: Vec<IpAddr>,
    /// Names of the racks shown; `None` for all of the gym's.
    pub racks: Option<Vec<String>>,
    /// Where the nightly copy of the journal goes, an absolute path; `None` for nowhere.
    pub backup: Option<String>,
    /// How many copies are kept there, 1 to 400.
    pub backups: u16,
    /// Where sticks appear, an absolute path; `None` for nowhere.
    pub stick: Option<String>,
    /// How long a screen stays that nobody touches, milliseconds, before the floor or all lifters
    /// are shown; `None` for ever.
    pub floor_after_ms: Option<u32>,
    /// How long nobody touches the screen before it is dark, milliseconds; `None` for ever.
    pub sleep_after_ms: Option<u32>,
    /// The hub where the journals of the gym's kiosks meet; `None` for a rack by itself.
    pub hub: Option<HubAddress>,
}

impl Default for Kiosk {
    fn default() -> Self {
        Self {
            address: IpAddr::V4(Ipv4Addr::LOCALHOST),
            port: 8470,
            share: false,
            tls: None,
            certificate: None,
            name: "pinladder".into(),
            hosts: Vec::new(),
            proxies: Vec::new(),
            racks: None,
            backup: None,
            backups: 14,
            stick: None,
            floor_after_ms: Some(300_000),
            sleep_after_ms: Some(900_000),
            hub: None,
        }
    }
}

impl Kiosk {
    /// Whether the page is served under TLS: as the file says, else wherever other machines reach
    /// it, since a code would travel readable.
    #[must_use]
    pub fn is_under_tls(&self) -> bool {
        self.tls.unwrap_or(!self.address.is_loopback())
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
        || Known::open(term!(k::RACK)),
        |gym| {
            Known::of(
                term!(k::RACK),
                gym.racks.iter().map(|rack| rack.name.as_str()),
            )
        },
    );
    let top = Entry::open(&mut doc, root.get_ref(), 0..0, &fields::KIOSK);
    let default = Kiosk::default();
    let proxies = top.texts(&mut doc, "proxies", PROXIES_MAX, address);
    let address = top.text(&mut doc, "address", address);
    let port = top.whole(&mut doc, "port", &(1..=u16::MAX));
    let share = top.flag(&mut doc, "share", default.share);
    let tls = top.flag(&mut doc, "tls", false);
    let certificate = certificate(&mut doc, &top);
    let name = top.text(&mut doc, "name", host);
    let hosts = top.texts(&mut doc, "hosts", HOSTS_MAX, host_name);
    let backup = top.text(&mut doc, "backup", place);
    let backups = top.whole(&mut doc, "backups", &(1..=400));
    let stick = top.text(&mut doc, "stick", place);
    let floor_after = top.text(&mut doc, "floor_after", idle);
    let sleep_after = top.text(&mut doc, "sleep_after", idle);
    let hub = top.text(&mut doc, "hub", hub);
    let racks = top.texts(&mut doc, "racks", RACKS_MAX, |text| known.find(text));
    let given = top.has("racks");
    if top.is_empty_list("racks") {
        let right = words!(k::NAME_A_RACK_OR_LEAVE);
        doc.missing(
            &top.at_value("racks"),
            Wrong::plain(words!(k::NO_RACK_TO_SHOW), right),
        );
    }
    let kiosk = Kiosk {
        address: address.unwrap_or(default.address),
        port: port.unwrap_or(default.port),
        share,
        tls: top.has("tls").then_some(tls),
        certificate,
        name: name.unwrap_or(default.name),
        hosts,
        proxies,
        backup,
        backups: backups.unwrap_or(default.backups),
        stick,
        floor_after_ms: floor_after.unwrap_or(default.floor_after_ms),
        sleep_after_ms: sleep_after.unwrap_or(default.sleep_after_ms),
        racks: given.then_some(racks),
        hub,
    };
    let faults = doc.close();
    let wrong = faults.iter().any(Fault::stops);
    ((!wrong).then_some(kiosk), faults)
}

/// Reads the owner's certificate and key, both or neither.
fn certificate(doc: &mut Doc<'_>, top: &Entry<'_>) -> Option<(String, String)> {
    let certificate = top.text(doc, "certificate", place);
    let key = top.text(doc, "key", place);
    if top.has("certificate") != top.has("key") {
        let present = if top.has("key") { "key" } else { "certificate" };
        let right = words!(k::WRITE_BOTH_CERTIFICATE_AND_KEY);
        let wrong = Wrong::plain(words!(k::A_CERTIFICATE_AND_ITS_KEY), right);
        doc.missing(&top.at_value(present), wrong);
    }
    certificate.zip(key)
}

/// Reads the address of one interface.
fn address(text: &str) -> Result<IpAddr, Wrong> {
    let right = words!(k::WRITE_NUMBERS_SUCH_AS_127);
    let read = text.trim().parse::<IpAddr>();
    let read = read.map_err(|_| Wrong::value(text, words!(k::NOT_AN_ADDRESS_IN_NUMBERS), right))?;
    if read.is_unspecified() || read.is_multicast() {
        let what = words!(k::AN_ADDRESS_OF_ALL_INTERFACES);
        let right = words!(k::WRITE_THE_ADDRESS_OF_THE);
        return Err(Wrong::value(text, what, right));
    }
    Ok(read)
}

/// Reads how long is waited for a touch, milliseconds; `None` for ever.
fn idle(text: &str) -> Result<Option<u32>, Wrong> {
    if text.trim() == "never" {
        return Ok(None);
    }
    time_ms(text, &IDLE_MS).map(Some)
}

/// What is shorter takes the screen away from whoever reads it.
const IDLE_MS: RangeInclusive<u32> = 30_000..=43_200_000;

/// Reads an absolute path.
fn place(text: &str) -> Result<String, Wrong> {
    let right = words!(k::WRITE_THE_WHOLE_PATH_SUCH);
    let text = text.trim();
    if !text.starts_with('/') || text.len() > 400 || text.chars().any(char::is_control) {
        return Err(Wrong::value(text, words!(k::NOT_AN_ABSOLUTE_PATH), right));
    }
    if text.split('/').any(|part| part == "..") {
        return Err(Wrong::value(text, words!(k::A_PATH_THAT_GOES_BACK), right));
    }
    Ok(text.to_owned())
}

/// Reads where the hub is.
fn hub(text: &str) -> Result<HubAddress, Wrong> {
    HubAddress::read(text).map_err(|fault| match fault {
        // What was written is not told again: it is in the journal then, and on the screen.
        AddressFault::Password => Wrong::plain(
            words!(k::A_HUB_WITH_A_PASSWORD),
            words!(k::WRITE_THE_PASSWORD_INTO),
        ),
        AddressFault::Form | AddressFault::Kiosk | AddressFault::Option => {
            let right = words!(k::WRITE_A_HUB_SUCH_AS);
            Wrong::value(text, words!(k::NOT_THE_ADDRESS_OF_A_HUB), right)
        }
    })
}

/// Reads one label of a host name (RFC 1123).
fn host(text: &str) -> Result<String, Wrong> {
    let text = text.trim();
    let fits = |c: char| c.is_ascii_alphanumeric() || c == '-';
    let edge = text.starts_with('-') || text.ends_with('-');
    if text.is_empty() || text.len() > 40 || edge || !text.chars().all(fits) {
        let right = words!(k::WRITE_FROM_1_TO_40);
        return Err(Wrong::value(text, words!(k::NOT_A_NAME_FOR_A), right));
    }
    Ok(text.to_lowercase())
}

/// Reads a whole host name (RFC 1123), as a router or a name server knows it.
fn host_name(text: &str) -> Result<String, Wrong> {
    let name = text.trim().trim_end_matches('.');
    let fits = |c: char| c.is_ascii_alphanumeric() || c == '-';
    let is_label = |label: &str| {
        let edge = label.starts_with('-') || label.ends_with('-');
        (1..=63).contains(&label.len()) && !edge && label.chars().all(fits)
    };
    // What ends in digits is read as an address by browsers (URL Standard, 3.5).
    let digits = |label: &str| label.bytes().all(|b| b.is_ascii_digit());
    let last = name.rsplit('.').next().unwrap_or_default();
    if name.len() > 253 || digits(last) || !name.split('.').all(is_label) {
        let right = words!(k::WRITE_THE_NAME_ALONE_SUCH);
        return Err(Wrong::value(text, words!(k::NOT_A_NAME_OF_A), right));
    }
    Ok(name.to_lowercase())
}

/// Most racks that a kiosk can name.
const RACKS_MAX: usize = 50;
/// Most names by which a page is asked for.
const HOSTS_MAX: usize = 20;
/// Most proxies that a page can stand behind.
const PROXIES_MAX: usize = 10;
