//! How often a code may be guessed: few times from one address, not many in all.
//!
//! Refuses: growing with the number of guesses.
use std::collections::VecDeque;
use std::net::{IpAddr, Ipv6Addr};

/// Wrong codes from one address within [`WINDOW_MS`].
pub(crate) const EACH_MAX: usize = 5;
/// Wrong codes in all within [`WINDOW_MS`].
pub(crate) const ALL_MAX: usize = 30;
/// 15 minutes.
pub(crate) const WINDOW_MS: u64 = 15 * 60 * 1_000;

/// The attempts of late, oldest first.
#[derive(Debug, Default)]
pub(crate) struct Attempts(VecDeque<(u64, IpAddr)>);

impl Attempts {
    /// Notes an attempt before it is judged, so that many at once count too.
    ///
    /// # Errors
    /// Milliseconds to wait when there were too many; the attempt is then not to be judged.
    pub(crate) fn begin(&mut self, now: u64, from: IpAddr) -> Result<(), u64> {
        let from = whole(from);
        while self
            .0
            .front()
            .is_some_and(|(at, _)| now.saturating_sub(*at) >= WINDOW_MS)
        {
            self.0.pop_front();
        }
        let ours = || self.0.iter().filter(|(_, address)| *address == from);
        let oldest = if ours().count() >= EACH_MAX {
            ours().next()
        } else if self.0.len() >= ALL_MAX {
            self.0.front()
        } else {
            None
        };
        if let Some((at, _)) = oldest {
            return Err((at + WINDOW_MS).saturating_sub(now));
        }
        self.0.push_back((now, from));
        Ok(())
    }

    /// Forgets the attempts of an address that gave the right code.
    pub(crate) fn well(&mut self, from: IpAddr) {
        let from = whole(from);
        self.0.retain(|(_, address)| *address != from);
    }
}

/// An address that one machine cannot change at will: of IPv6 the network's half.
fn whole(address: IpAddr) -> IpAddr {
    match address.to_canonical() {
        IpAddr::V6(six) => {
            let mut parts = six.segments();
            parts[4..].fill(0);
            IpAddr::V6(Ipv6Addr::from(parts))
        }
        four => four,
    }
}

#[cfg(test)]
mod tests {
    use super::{ALL_MAX, Attempts, EACH_MAX, WINDOW_MS};
    use std::net::{IpAddr, Ipv4Addr};

    fn host(n: usize) -> IpAddr {
        Ipv4Addr::new(
            10,
            0,
            u8::try_from(n / 250).expect("few"),
            u8::try_from(n % 250).expect("few"),
        )
        .into()
    }

    #[test]
    fn few_from_one_and_not_many_in_all() {
        let mut attempts = Attempts::default();
        for _ in 0..EACH_MAX {
            assert_eq!(attempts.begin(1_000, host(1)), Ok(()));
        }
        assert_eq!(attempts.begin(2_000, host(1)), Err(WINDOW_MS - 1_000));
        for n in 0..ALL_MAX - EACH_MAX {
            assert_eq!(attempts.begin(3_000, host(10 + n)), Ok(()));
        }
        assert!(attempts.begin(4_000, host(900)).is_err());
        assert_eq!(attempts.begin(1_000 + WINDOW_MS, host(900)), Ok(()));
        assert_eq!(attempts.begin(1_000 + WINDOW_MS, host(1)), Ok(()));
    }

    #[test]
    fn the_right_code_forgets_the_wrong_ones_of_its_address() {
        let mut attempts = Attempts::default();
        for _ in 0..EACH_MAX {
            attempts.begin(0, host(1)).expect("may");
            attempts.begin(0, host(2)).expect("may");
        }
        attempts.well(host(1));
        assert_eq!(attempts.begin(0, host(1)), Ok(()));
        assert!(attempts.begin(0, host(2)).is_err());
    }

    #[test]
    fn one_network_of_ipv6_is_one_address() {
        let mut attempts = Attempts::default();
        for n in 0..EACH_MAX {
            let from: IpAddr = format!("2001:db8::{n}").parse().expect("an address");
            attempts.begin(0, from).expect("may");
        }
        assert!(
            attempts
                .begin(0, "2001:db8::ffff".parse().expect("one"))
                .is_err()
        );
        assert!(
            attempts
                .begin(0, "2001:db8:0:1::1".parse().expect("one"))
                .is_ok()
        );
        assert!(
            attempts
                .begin(0, "::ffff:10.0.0.1".parse().expect("one"))
                .is_ok()
        );
    }
}
