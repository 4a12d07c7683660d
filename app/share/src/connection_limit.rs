//! How many connections one address holds, so that no single machine takes the places of all.
//!
//! Refuses: more than a browser's share. The machine itself is not counted.
use std::collections::BTreeMap;
use std::net::IpAddr;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// Connections that one address may hold: a browser opens six, and each board one that stays.
const OF_ONE: usize = 16;

/// Everybody who is connected, by address; clones are the same crowd.
#[derive(Debug, Clone, Default)]
pub(crate) struct Crowd {
    held: Arc<Mutex<BTreeMap<IpAddr, usize>>>,
    /// Proxies that the owner named: each speaks for many.
    proxies: Arc<[IpAddr]>,
}

/// One connection's place; it is free again when this is dropped.
#[derive(Debug)]
pub(crate) struct Place {
    crowd: Crowd,
    from: IpAddr,
}

impl Crowd {
    /// Nobody yet; `proxies` may hold as many as they like.
    pub(crate) fn with(proxies: &[IpAddr]) -> Self {
        Self {
            proxies: proxies.into(),
            ..Self::default()
        }
    }

    /// A place for one more connection from there; `None` when it holds enough.
    pub(crate) fn enter(&self, from: IpAddr) -> Option<Place> {
        let mut all = self.all();
        let held = all.entry(from).or_default();
        let is_many = from.is_loopback() || self.proxies.contains(&from.to_canonical());
        if *held >= OF_ONE && !is_many {
            return None;
        }
        *held += 1;
        drop(all);
        let crowd = self.clone();
        Some(Place { crowd, from })
    }

    /// A lock whose holder panicked still guards whole counts.
    fn all(&self) -> MutexGuard<'_, BTreeMap<IpAddr, usize>> {
        self.held.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Drop for Place {
    fn drop(&mut self) {
        let mut all = self.crowd.all();
        if let Some(held) = all.get_mut(&self.from) {
            *held -= 1;
            if *held == 0 {
                all.remove(&self.from);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Crowd, OF_ONE};

    #[test]
    fn one_address_takes_its_share_and_no_more() {
        let [here, there, own, proxy] = ["192.168.1.7", "192.168.1.8", "127.0.0.1", "192.168.1.2"]
            .map(|text| text.parse().expect("an address"));
        let crowd = Crowd::with(&[proxy]);
        let mut held: Vec<_> = (0..OF_ONE)
            .map(|_| crowd.enter(here).expect("a place"))
            .collect();
        assert!(crowd.enter(here).is_none());
        assert!(crowd.enter(there).is_some(), "others have theirs");
        held.pop();
        held.push(crowd.enter(here).expect("free again"));
        assert!(crowd.enter(here).is_none());
        let twice = [own, proxy].repeat(OF_ONE * 2);
        let many: Vec<_> = twice.into_iter().map(|from| crowd.enter(from)).collect();
        assert!(many.iter().all(Option::is_some));
        drop((held, many));
        assert!(crowd.all().is_empty(), "nobody is remembered");
    }
}
