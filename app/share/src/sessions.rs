//! Who has signed in: coaches by code, lifters by a link that opens once.
//!
//! Refuses: sessions without end, more of them than a gym has people, keeping tokens.
use crate::token::{self, TokenHash};
use std::collections::BTreeMap;

/// A coach's session: two hours.
pub(crate) const COACH_MS: u64 = 2 * 60 * 60 * 1_000;
/// A lifter's link: ten minutes. What it opens is open until midnight.
pub const LINK_MS: u64 = 10 * 60 * 1_000;
/// Most sessions at once; the one that ends first makes room.
const SESSIONS_MAX: usize = 200;
/// Most links at once.
const LINKS_MAX: usize = 200;

/// What a session may see.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Who {
    /// Everything; signed in with the code whose kept text has this hash.
    Coach(TokenHash),
    /// One lifter's record, by the link whose token has this hash.
    Lifter {
        /// Name.
        lifter: String,
        /// Of the link.
        link: TokenHash,
    },
}

#[derive(Debug)]
struct Session {
    until: u64,
    who: Who,
}

/// A lifter's link that nobody has opened yet.
#[derive(Debug)]
struct Link {
    lift: u32,
    lifter: String,
    token: String,
    until: u64,
    used: bool,
}

/// All sessions and links of now.
#[derive(Debug, Default)]
pub(crate) struct Sessions {
    open: BTreeMap<TokenHash, Session>,
    links: Vec<Link>,
}

impl Sessions {
    /// Begins a session and returns its token; `None` without random numbers.
    pub(crate) fn begin(&mut self, now: u64, until: u64, who: Who) -> Option<String> {
        self.open.retain(|_, session| session.until > now);
        if self.open.len() >= SESSIONS_MAX {
            // Lifters' phones, open until midnight, make room before any coach does.
            let of_coach = |session: &Session| matches!(session.who, Who::Coach(_));
            let order = |session: &Session| (of_coach(session), session.until);
            let first = self.open.iter().min_by_key(|(_, session)| order(session));
            let first = first.map(|(token, _)| *token)?;
            self.open.remove(&first);
        }
        let token = token::fresh()?;
        self.open
            .insert(token::hash(&token), Session { until, who });
        Some(token)
    }

    /// Who a token's session is of.
    pub(crate) fn who(&self, now: u64, token: &str) -> Option<&Who> {
        let session = self.open.get(&token::hash(token))?;
        (session.until > now).then_some(&session.who)
    }

    /// Ends a session.
    pub(crate) fn end(&mut self, token: &str) {
        self.open.remove(&token::hash(token));
    }

    /// The token of the link for a lift: the one there is while it is valid and unopened, a new
    /// one when there was none; `None` when it was opened or is over.
    pub(crate) fn link(&mut self, now: u64, lift: u32, lifter: &str, until: u64) -> Option<String> {
        // What is over stays for as long again, so that no second link follows the first.
        self.links.retain(|link| link.until + LINK_MS > now);
        let same = |link: &&Link| link.lift == lift && link.lifter == lifter;
        if let Some(link) = self.links.iter().find(same) {
            return (!link.used && link.until > now).then(|| link.token.clone());
        }
        if until <= now {
            return None;
        }
        if self.links.len() >= LINKS_MAX {
            self.links.remove(0);
        }
        let token = token::fresh()?;
        self.links.push(Link {
            lift,
            lifter: lifter.to_owned(),
            token: token.clone(),
            until,
            used: false,
        });
        Some(token)
    }

    /// Whether a link of this token was given out of late, whatever became of it.
    pub(crate) fn knows_link(&self, token: &str) -> bool {
        let hash = token::hash(token);
        self.links
            .iter()
            .any(|link| token::hash(&link.token) == hash)
    }

    /// Whether a link of this token may still be opened.
    pub(crate) fn is_link(&self, now: u64, token: &str) -> bool {
        let hash = token::hash(token);
        let fits = |link: &Link| !link.used && link.until > now && token::hash(&link.token) == hash;
        self.links.iter().any(fits)
    }

    /// Opens a link, once: the session that it gives until midnight, its token and end.
    pub(crate) fn open_link(
        &mut self,
        (now, midnight): (u64, u64),
        token: &str,
    ) -> Option<(String, u64, String)> {
        let hash = token::hash(token);
        let fits =
            |link: &&mut Link| !link.used && link.until > now && token::hash(&link.token) == hash;
        let link = self.links.iter_mut().find(fits)?;
        link.used = true;
        let (lifter, until) = (link.lifter.clone(), link.until.max(midnight));
        let who = Who::Lifter {
            lifter: lifter.clone(),
            link: hash,
        };
        let session = self.begin(now, until, who)?;
        Some((session, until, lifter))
    }
}

#[cfg(test)]
mod tests {
    use super::{LINK_MS, SESSIONS_MAX, Sessions, Who};

    #[test]
    fn a_link_opens_once_and_for_ten_minutes() {
        let mut all = Sessions::default();
        let token = all.link(0, 7, "Ada", LINK_MS).expect("a link");
        assert_eq!(all.link(5, 7, "Ada", LINK_MS + 5), Some(token.clone()));
        assert_eq!(all.open_link((6, 0), &"0".repeat(64)), None);
        let (session, until, lifter) = all.open_link((10, 0), &token).expect("opens");
        assert_eq!((until, lifter.as_str()), (LINK_MS, "Ada"));
        assert_eq!(all.open_link((11, 0), &token), None, "once");
        assert_eq!(all.link(12, 7, "Ada", LINK_MS + 12), None, "no second one");
        assert!(matches!(
            all.who(LINK_MS - 1, &session),
            Some(Who::Lifter { .. })
        ));
        assert_eq!(all.who(LINK_MS, &session), None);
        let late = all.link(20, 8, "Ada", LINK_MS + 20).expect("another lift");
        assert_eq!(all.open_link((LINK_MS + 20, 0), &late), None);
    }

    #[test]
    fn sessions_end_and_are_bounded() {
        let mut all = Sessions::default();
        let first = all.begin(0, 100, Who::Coach([0; 32])).expect("random");
        assert!(all.who(99, &first).is_some() && all.who(100, &first).is_none());
        assert!(all.who(0, "").is_none() && all.who(0, &first[1..]).is_none());
        for _ in 0..SESSIONS_MAX {
            all.begin(0, 200, Who::Coach([0; 32])).expect("random");
        }
        assert!(all.who(0, &first).is_none(), "the first to end made room");
        let last = all.begin(0, 300, Who::Coach([0; 32])).expect("random");
        all.end(&last);
        assert!(all.who(0, &last).is_none());
    }
}
