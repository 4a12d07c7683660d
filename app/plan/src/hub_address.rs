//! Where the hub is, as one line of kiosk.toml says it.
//!
//! Refuses: a password in it; the settings are kept in the journal, and the journal goes about.
use thiserror::Error;

/// Where the hub is, and as whom this kiosk speaks there.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HubAddress {
    /// The kiosk's name, which is its role in the database: 1 to 40 of a-z, 0-9, - and _.
    pub kiosk: String,
    /// A host's name or address.
    pub host: String,
    /// Its port, 5432 where none is written.
    pub port: u16,
    /// The database.
    pub database: String,
    /// Whether the line says that the way there is closed to strangers by itself: the same machine,
    /// a cable of its own, a tunnel.
    pub is_plain: bool,
}

/// Why a line is no hub's address.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum AddressFault {
    /// Not of the form.
    #[error("it is not of the form postgresql://KIOSK@HOST/DATABASE")]
    Form,
    /// With a password.
    #[error("it holds a password, which would be kept in the journal; write it into hub.password")]
    Password,
    /// The kiosk's name.
    #[error("the kiosk's name has other letters than a-z, 0-9, - and _, or not from 1 to 40")]
    Kiosk,
    /// Something behind the question mark.
    #[error("only tls=off can stand behind the question mark")]
    Option,
}

/// Whether a kiosk may be called so.
#[must_use]
pub fn is_kiosk_name(name: &str) -> bool {
    let fits = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-' || c == '_';
    (1..=40).contains(&name.len()) && name.chars().all(fits)
}

impl HubAddress {
    /// Reads "postgresql://north@10.0.0.5:5432/pinladder", with "?tls=off" behind it where the way
    /// is closed by itself.
    ///
    /// # Errors
    /// [`AddressFault`].
    pub fn read(text: &str) -> Result<Self, AddressFault> {
        let rest = text.trim().strip_prefix("postgresql://");
        let rest = rest.ok_or(AddressFault::Form)?;
        let (rest, option) = rest
            .split_once('?')
            .map_or((rest, None), |(r, o)| (r, Some(o)));
        let (kiosk, rest) = rest.split_once('@').ok_or(AddressFault::Form)?;
        if kiosk.contains(':') {
            return Err(AddressFault::Password);
        }
        if !is_kiosk_name(kiosk) {
            return Err(AddressFault::Kiosk);
        }
        let (place, database) = rest.split_once('/').ok_or(AddressFault::Form)?;
        let (host, port) = host_and_port(place)?;
        let plain = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == '_';
        if database.is_empty() || database.len() > 60 || !database.chars().all(plain) {
            return Err(AddressFault::Form);
        }
        let is_plain = match option {
            None => false,
            Some("tls=off") => true,
            Some(_) => return Err(AddressFault::Option),
        };
        Ok(Self {
            kiosk: kiosk.into(),
            host,
            port,
            database: database.into(),
            is_plain,
        })
    }

    /// Whether the way goes over a network without TLS of its own, and may: on this machine, or
    /// where the line says so.
    #[must_use]
    pub fn is_without_tls(&self) -> bool {
        let address = self.host.parse::<std::net::IpAddr>();
        let here = self.host == "localhost" || address.is_ok_and(|at| at.is_loopback());
        self.is_plain || here
    }

    /// For messages: the host and its port.
    #[must_use]
    pub fn server(&self) -> String {
        match self.host.contains(':') {
            true => format!("[{}]:{}", self.host, self.port),
            false => format!("{}:{}", self.host, self.port),
        }
    }
}

/// "10.0.0.5", "[fd00::5]:5433", "gym.example:5432".
fn host_and_port(place: &str) -> Result<(String, u16), AddressFault> {
    let (host, port) = if let Some(rest) = place.strip_prefix('[') {
        let (host, port) = rest.split_once(']').ok_or(AddressFault::Form)?;
        let address = host.parse::<std::net::Ipv6Addr>();
        address.map_err(|_| AddressFault::Form)?;
        match port {
            "" => (host, None),
            port => (
                host,
                Some(port.strip_prefix(':').ok_or(AddressFault::Form)?),
            ),
        }
    } else {
        let split = place.split_once(':');
        split.map_or((place, None), |(host, port)| (host, Some(port)))
    };
    let fits = |c: char| c.is_ascii_alphanumeric() || matches!(c, '-' | '.' | ':');
    if host.is_empty() || host.len() > 253 || !host.chars().all(fits) {
        return Err(AddressFault::Form);
    }
    let port = match port {
        None => 5432,
        Some(text) => text
            .parse()
            .ok()
            .filter(|port| *port > 0)
            .ok_or(AddressFault::Form)?,
    };
    Ok((host.into(), port))
}
