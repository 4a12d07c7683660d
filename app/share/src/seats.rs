//! The seats of the boards that follow: many in all, few for one machine, and whoever comes last
//! sits, in the place of that machine's oldest, which is often one whose TV was switched off.
//!
//! Refuses: one machine taking the seats of others.
use std::collections::BTreeMap;
use std::net::IpAddr;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use tokio::sync::Notify;

/// Boards in all.
pub(crate) const ALL: usize = 300;
/// Boards of one machine.
pub(crate) const OF_ONE: usize = 8;

/// Everybody who sits; clones are the same seats.
#[derive(Debug, Clone, Default)]
pub(crate) struct Seats(Arc<Mutex<Rows>>);

#[derive(Debug, Default)]
struct Rows {
    /// The number of the last one who came.
    last: u64,
    /// Who sits, oldest first.
    sitting: BTreeMap<u64, (IpAddr, Arc<Notify>)>,
}

/// One board's seat; it is free again when this is dropped.
#[derive(Debug)]
pub(crate) struct Seat {
    seats: Seats,
    no: u64,
    asked_to_go: Arc<Notify>,
}

impl Seats {
    /// A seat for a board of `from`; `None` when all are taken and none is one too many.
    pub(crate) fn sit(&self, from: IpAddr) -> Option<Seat> {
        let mut rows = self.rows();
        let of = |rows: &Rows, who: IpAddr| {
            rows.sitting
                .values()
                .filter(|(from, _)| *from == who)
                .count()
        };
        // The kiosk's own machine is a proxy for many, or a test of many.
        let is_full = !from.is_loopback() && of(&rows, from) >= OF_ONE;
        if is_full || rows.sitting.len() >= ALL {
            let goes = if is_full {
                Some(from)
            } else {
                let most = rows.sitting.values().map(|(who, _)| *who);
                let most = most.max_by_key(|who| of(&rows, *who));
                // Whoever has one seat keeps it.
                most.filter(|who| of(&rows, *who) > of(&rows, from).max(1))
            };
            let goes = goes?;
            let oldest = rows.sitting.iter().find(|(_, (who, _))| *who == goes);
            let oldest = oldest.map(|(no, _)| *no)?;
            if let Some((_, told)) = rows.sitting.remove(&oldest) {
                told.notify_one();
            }
        }
        rows.last += 1;
        let (no, asked_to_go) = (rows.last, Arc::new(Notify::new()));
        rows.sitting.insert(no, (from, Arc::clone(&asked_to_go)));
        drop(rows);
        let seats = self.clone();
        Some(Seat {
            seats,
            no,
            asked_to_go,
        })
    }

    /// A lock whose holder panicked still guards whole rows.
    fn rows(&self) -> MutexGuard<'_, Rows> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Seat {
    /// Told once the seat is another's.
    pub(crate) fn asked_to_go(&self) -> Arc<Notify> {
        Arc::clone(&self.asked_to_go)
    }
}

impl Drop for Seat {
    fn drop(&mut self) {
        self.seats.rows().sitting.remove(&self.no);
    }
}

#[cfg(test)]
mod tests {
    use super::{ALL, OF_ONE, Seats};
    use std::net::{IpAddr, Ipv4Addr};

    fn machine(n: usize) -> IpAddr {
        let part = |n: usize| u8::try_from(n).expect("few");
        Ipv4Addr::new(10, 0, part(n / 250), part(n % 250)).into()
    }

    fn holds(seats: &Seats, seat: &super::Seat) -> bool {
        seats.rows().sitting.contains_key(&seat.no)
    }

    #[test]
    fn two_hundred_boards_sit_and_one_machine_takes_nobody_s_seat() {
        let seats = Seats::default();
        let boards: Vec<_> = (0..200)
            .map(|n| seats.sit(machine(n)).expect("a seat"))
            .collect();
        // A phone that opens the board again and again, and never goes.
        let greedy: Vec<_> = (0..1_000).map(|_| seats.sit(machine(900))).collect();
        assert!(
            greedy.iter().all(Option::is_some),
            "the last one always sits"
        );
        assert!(boards.iter().all(|seat| holds(&seats, seat)));
        let greedy: Vec<_> = greedy.into_iter().flatten().collect();
        let (old, new) = greedy.split_at(1_000 - OF_ONE);
        assert!(old.iter().all(|seat| !holds(&seats, seat)));
        assert!(new.iter().all(|seat| holds(&seats, seat)));
    }

    #[test]
    fn where_all_are_taken_whoever_has_most_gives_one_up() {
        let seats = Seats::default();
        let many: Vec<_> = (0..OF_ONE).map(|_| seats.sit(machine(0))).collect();
        let mut all: Vec<_> = (1..=ALL - OF_ONE).map(|n| seats.sit(machine(n))).collect();
        all.extend((400..400 + OF_ONE - 1).map(|n| seats.sit(machine(n))));
        assert!(all.iter().all(Option::is_some));
        let left = many.iter().flatten().filter(|seat| holds(&seats, seat));
        assert_eq!(left.count(), 1);
        assert!(seats.sit(machine(800)).is_none(), "everybody has one");
        all.pop();
        assert!(seats.sit(machine(800)).is_some(), "a seat came free");
        drop((many, all));
        assert!(seats.rows().sitting.is_empty(), "nobody is remembered");
    }
}
