//! `kiosk.toml`, read. Refuses: judging it; `plan` has told every fault before.
use serde::Deserialize;
use std::net::{IpAddr, Ipv4Addr, SocketAddr};

/// The kiosk's own settings.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(default)]
pub struct Config {
    /// Address of the LAN page.
    pub address: IpAddr,
    /// Its port.
    pub port: u16,
    /// Whether there is a LAN page.
    pub share: bool,
    /// Racks shown on this kiosk; all when empty.
    pub racks: Vec<String>,
}

impl Default for Config {
    fn default() -> Self {
        Self {
            address: Ipv4Addr::LOCALHOST.into(),
            port: 8470,
            share: true,
            racks: Vec::new(),
        }
    }
}

impl Config {
    /// Reads a text that the checker has passed; anything else gives the defaults.
    #[must_use]
    pub fn read(text: &str) -> Self {
        toml::from_str(text).unwrap_or_default()
    }

    /// Address and port of the LAN page; `None` when it is off.
    #[must_use]
    pub fn lan(&self) -> Option<SocketAddr> {
        self.share.then(|| SocketAddr::new(self.address, self.port))
    }
}
