//! How many connections one address holds, so that no single machine takes the places of all.
//!
//! Refuses: more than a browser's share. The machine itself is not counted.
use std::collections::BTreeMap;
use std::net::IpAddr;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// Connections that one address may hold: a browser opens six, and a board one that stays.
const OF_ONE: usize = 12;

/// Everybody who is connected, by address; clones are the same crowd.
#[derive(Debug, Clone, Default)]
pub(crate) struct Crowd(Arc<Mutex<BTreeMap<IpAddr, usize>>>);

/// One connection's place; it is free again when this is dropped.
#[derive(Debug)]
pub(crate) struct Place {
    crowd: Crowd,
    from: IpAddr,
}

impl Crowd {
    /// A place for one more connection from there; `None` when it holds enough.
    pub(crate) fn enter(&self, from: IpAddr) -> Option<Place> {
        let mut all = self.all();
        let held = all.entry(from).or_default();
        if *held >= OF_ONE && !from.is_loopback() {
            return None;
        }
        *held += 1;
        drop(all);
        let crowd = self.clone();
        Some(Place { crowd, from })
    }

    /// A lock whose holder panicked still guards whole counts.
    fn all(&self) -> MutexGuard<'_, BTreeMap<IpAddr, usize>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
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
        let crowd = Crowd::default();
        let [here, there, own] = ["192.168.1.7", "192.168.1.8", "127.0.0.1"]
            .map(|text| text.parse().expect("an address"));
        let mut held: Vec<_> = (0..OF_ONE)
            .map(|_| crowd.enter(here).expect("a place"))
            .collect();
        assert!(crowd.enter(here).is_none());
        assert!(crowd.enter(there).is_some(), "others have theirs");
        held.pop();
        held.push(crowd.enter(here).expect("free again"));
        assert!(crowd.enter(here).is_none());
        let many: Vec<_> = (0..OF_ONE * 2).map(|_| crowd.enter(own)).collect();
        assert!(many.iter().all(Option::is_some));
        drop((held, many));
        assert!(crowd.all().is_empty(), "nobody is remembered");
    }
}
