//! How often a code may be guessed: few times from one address, not many in all. Who has given the
//! right code before is counted apart, so that strangers cannot shut the coach out.
//!
//! Refuses: growing with the number of guesses.
use crate::token::TokenHash;
use std::collections::VecDeque;
use std::fmt;
use std::net::{IpAddr, Ipv6Addr};

/// Wrong codes from one address within [`WINDOW_MS`].
pub(crate) const EACH_MAX: usize = 5;
/// Wrong codes in all within [`WINDOW_MS`].
pub(crate) const ALL_MAX: usize = 30;
/// 15 minutes.
pub(crate) const WINDOW_MS: u64 = 15 * 60 * 1_000;

/// Who guesses.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum Guesser {
    /// Somebody at an address.
    Address(IpAddr),
    /// A browser that a coach has signed in from before.
    Known(TokenHash),
    /// Somebody at the kiosk itself.
    Kiosk,
}

impl fmt::Debug for Guesser {
    /// For the log: an address, never what a browser is known by.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Address(address) => write!(f, "{address}"),
            Self::Known(_) => f.write_str("a known browser"),
            Self::Kiosk => f.write_str("the kiosk"),
        }
    }
}

impl Guesser {
    /// As it is counted: one machine cannot be many.
    fn whole(self) -> Self {
        match self {
            Self::Address(address) => Self::Address(whole(address)),
            Self::Known(_) | Self::Kiosk => self,
        }
    }
}

/// The attempts of late, oldest first.
#[derive(Debug, Default)]
pub(crate) struct Attempts(VecDeque<(u64, Guesser)>);

impl Attempts {
    /// Notes an attempt before it is judged, so that many at once count too.
    ///
    /// # Errors
    /// Milliseconds to wait when there were too many; the attempt is then not to be judged.
    pub(crate) fn begin(&mut self, now: u64, from: Guesser) -> Result<(), u64> {
        let from = from.whole();
        while self
            .0
            .front()
            .is_some_and(|(at, _)| now.saturating_sub(*at) >= WINDOW_MS)
        {
            self.0.pop_front();
        }
        let oldest_of = |most: usize, counts: &dyn Fn(&Guesser) -> bool| {
            let mut counted = self.0.iter().filter(|(_, who)| counts(who));
            let oldest = counted.next().map(|(at, _)| *at);
            oldest.filter(|_| counted.count() + 1 >= most)
        };
        let is_stranger = |who: &Guesser| matches!(who, Guesser::Address(_));
        let full = oldest_of(EACH_MAX, &|who| *who == from).or_else(|| {
            let strange = is_stranger(&from);
            strange.then(|| oldest_of(ALL_MAX, &is_stranger)).flatten()
        });
        if let Some(at) = full {
            return Err((at + WINDOW_MS).saturating_sub(now));
        }
        self.0.push_back((now, from));
        Ok(())
    }

    /// Forgets the attempts of whoever gave the right code.
    pub(crate) fn well(&mut self, from: Guesser) {
        let from = from.whole();
        self.0.retain(|(_, who)| *who != from);
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
    use super::{ALL_MAX, Attempts, EACH_MAX, Guesser, WINDOW_MS};
    use std::net::{IpAddr, Ipv4Addr};

    fn host(n: usize) -> Guesser {
        let part = |n: usize| u8::try_from(n).expect("few");
        let address = Ipv4Addr::new(10, 0, part(n / 250), part(n % 250));
        Guesser::Address(address.into())
    }

    fn at(text: &str) -> Guesser {
        Guesser::Address(text.parse::<IpAddr>().expect("an address"))
    }

    #[test]
    fn strangers_shut_out_neither_a_known_browser_nor_the_kiosk() {
        let mut attempts = Attempts::default();
        for n in 0..ALL_MAX {
            attempts.begin(0, host(n)).expect("may");
        }
        assert!(attempts.begin(1, host(900)).is_err());
        for known in [Guesser::Known([7; 32]), Guesser::Kiosk] {
            for _ in 0..EACH_MAX {
                assert_eq!(attempts.begin(1, known), Ok(()));
            }
            // Nor does it guess on and on.
            assert_eq!(attempts.begin(2, known), Err(WINDOW_MS - 1));
        }
        assert_eq!(attempts.begin(2, Guesser::Known([8; 32])), Ok(()));
    }

    #[test]
    fn those_who_are_known_take_no_stranger_s_place() {
        let mut attempts = Attempts::default();
        for n in 0..10 {
            for _ in 0..EACH_MAX {
                attempts.begin(0, Guesser::Known([n; 32])).expect("may");
            }
        }
        assert_eq!(attempts.begin(0, host(1)), Ok(()));
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
            attempts
                .begin(0, at(&format!("2001:db8::{n}")))
                .expect("may");
        }
        assert!(attempts.begin(0, at("2001:db8::ffff")).is_err());
        assert!(attempts.begin(0, at("2001:db8:0:1::1")).is_ok());
        assert!(attempts.begin(0, at("::ffff:10.0.0.1")).is_ok());
    }
}
