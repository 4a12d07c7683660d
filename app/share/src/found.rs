//! Found by name: multicast DNS (RFC 6762) and service discovery (RFC 6763) on one interface.
//!
//! Refuses: speaking on interfaces that the page is not served on, and on loopback.
use mdns_sd::{IfKind, ServiceDaemon, ServiceInfo};
use std::net::SocketAddr;

/// The announcement; it ends when this is dropped.
pub struct Announced {
    daemon: ServiceDaemon,
    name: String,
}

impl std::fmt::Debug for Announced {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Announced({})", self.name)
    }
}

impl Drop for Announced {
    fn drop(&mut self) {
        // Neither can be waited for here; what is not taken back ends with its time to live.
        drop(self.daemon.unregister(&self.name));
        drop(self.daemon.shutdown());
    }
}

/// Announces the page at `at` as `HOST.local`, on the interface with that address. `None` on
/// loopback, where nobody could hear it.
///
/// # Errors
/// A sentence, when the system gives no socket or the name cannot be announced. The page is
/// served all the same.
pub fn announce(host: &str, at: SocketAddr, tls: bool) -> Result<Option<Announced>, String> {
    if at.ip().is_loopback() || at.ip().is_unspecified() {
        return Ok(None);
    }
    let told = |error: mdns_sd::Error| {
        format!("{host}.local cannot be announced ({error}); the page is found by its address")
    };
    let daemon = ServiceDaemon::new().map_err(told)?;
    daemon.disable_interface(IfKind::All).map_err(told)?;
    daemon
        .enable_interface(IfKind::Addr(at.ip()))
        .map_err(told)?;
    let kind = if tls {
        "_https._tcp.local."
    } else {
        "_http._tcp.local."
    };
    let service = ServiceInfo::new(
        kind,
        host,
        &format!("{host}.local."),
        at.ip(),
        at.port(),
        &[("path", "/")][..],
    )
    .map_err(told)?;
    let name = service.get_fullname().to_owned();
    daemon.register(service).map_err(told)?;
    Ok(Some(Announced { daemon, name }))
}

#[cfg(test)]
mod tests {
    use super::announce;

    #[test]
    fn loopback_is_not_announced() {
        for at in ["127.0.0.1:8470", "[::1]:8470", "0.0.0.0:8470"] {
            let at = at.parse().expect("an address");
            assert!(announce("pinladder", at, false).expect("silent").is_none());
        }
    }
}
