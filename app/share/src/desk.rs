//! What the kiosk and its page share: the board of now, links for lifters, who is signed in.
//!
//! Refuses: the record and the journal; those are files that the page only reads.
use crate::attempts::{Attempts, Guesser};
use crate::board::Board;
use crate::code::{self, CodeError};
use crate::desk_page::{Counter, Order, Told};
use crate::known;
use crate::life::Life;
use crate::not_in::NotIn;
use crate::programme::{Filled, Laid, ShareOf, Today};
use crate::sessions::{COACH_MS, LINK_MS, Sessions, Who};
use crate::token;
use journal::{Mass, MassUnit};
use std::collections::BTreeMap;
use std::fmt;
use std::net::IpAddr;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::Duration;
use tokio::sync::{Semaphore, oneshot, watch};
use tokio::time::timeout;
use view::Language;
use view::desk::Errand;

/// Shared by the owner's thread and the page's; clones are the same desk.
#[derive(Clone)]
pub struct Desk(Arc<Inner>);

struct Inner {
    folder: PathBuf,
    clock: Box<dyn Fn() -> u64 + Send + Sync>,
    attempts: Mutex<Attempts>,
    sessions: Mutex<Sessions>,
    board: watch::Sender<Arc<str>>,
    /// The board as it was last shown, and when; for screens without scripts.
    shown: Mutex<Option<(u64, Arc<Board>)>>,
    /// When a board was last loaded.
    looked: Mutex<Option<u64>>,
    counter: Mutex<Counter>,
    orders: Mutex<Option<Orders>>,
    blanks: Mutex<[Arc<[u8]>; 2]>,
    /// The kiosk's language, which is a page's too until somebody chooses.
    language: Mutex<Language>,
    laid: Mutex<Laid>,
    /// One code is judged at a time: each takes memory and time on purpose.
    judging: Semaphore,
    life: Life,
}

impl fmt::Debug for Desk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Desk")
    }
}

/// Takes orders on to the kiosk.
type Orders = Box<dyn Fn(Order) + Send>;

/// How long a screen counts as following that was loaded.
const LOOKED_MS: u64 = 60_000;
/// How old a board may be that is loaded; the kiosk shows one at every tick.
const FRESH_MS: u64 = 5_000;
/// How long the answer to an order is waited for.
const ORDER: Duration = Duration::from_secs(120);

impl Desk {
    /// A desk for the data folder `folder`. `clock` gives milliseconds that never go back.
    pub fn new(folder: &Path, clock: impl Fn() -> u64 + Send + Sync + 'static) -> Self {
        Self(Arc::new(Inner {
            folder: folder.to_owned(),
            clock: Box::new(clock),
            attempts: Mutex::default(),
            sessions: Mutex::default(),
            board: watch::Sender::new(Board::of(Language::default()).to_json()),
            shown: Mutex::default(),
            looked: Mutex::default(),
            counter: Mutex::default(),
            orders: Mutex::default(),
            blanks: Mutex::default(),
            language: Mutex::default(),
            laid: Mutex::default(),
            judging: Semaphore::new(1),
            life: Life::default(),
        }))
    }

    /// The language that the kiosk speaks from now on.
    pub fn speak(&self, say: Language) {
        let former = std::mem::replace(&mut *lock(&self.0.language), say);
        if former != say && !self.is_followed() {
            self.show(&Board::of(say));
        }
    }

    /// The language that the kiosk speaks.
    #[must_use]
    pub fn language(&self) -> Language {
        *lock(&self.0.language)
    }

    /// Lays out the days that programmes fill, in place of those that lay there.
    pub fn fill_days(&self, filled: Vec<Filled>) {
        lock(&self.0.laid).filled = filled.into();
    }

    /// In what each lifter of the gym reads loads.
    pub fn know_units(&self, units: BTreeMap<String, MassUnit>) {
        lock(&self.0.laid).units = units.into();
    }

    /// What shares of the days to come are in mass.
    pub fn know_shares(&self, shares: BTreeMap<ShareOf, Mass>) {
        lock(&self.0.laid).shares = shares.into();
    }

    /// The kiosk's day and gym from now on.
    pub fn begin_day(&self, today: Today) {
        lock(&self.0.laid).today = Some(today);
    }

    pub(crate) fn laid(&self) -> Laid {
        lock(&self.0.laid).clone()
    }

    /// From now on orders of the coach's desk go to `take`, which must not wait.
    pub fn on_order(&self, take: impl Fn(Order) + Send + 'static) {
        *lock(&self.0.orders) = Some(Box::new(take));
    }

    /// Changes what the coach's desk shows.
    pub fn lay_out(&self, change: impl FnOnce(&mut Counter)) {
        change(&mut lock(&self.0.counter));
    }

    /// What the coach's desk shows.
    #[must_use]
    pub fn counter(&self) -> Counter {
        lock(&self.0.counter).clone()
    }

    /// Blank plans to be had at the desk: XLSX and CSV.
    pub fn offer_blanks(&self, xlsx: Vec<u8>, csv: Vec<u8>) {
        *lock(&self.0.blanks) = [xlsx.into(), csv.into()];
    }

    /// The blank plan as XLSX and as CSV; empty where none is offered.
    pub(crate) fn blanks(&self) -> [Arc<[u8]>; 2] {
        lock(&self.0.blanks).clone()
    }

    /// Hands an order on, once its code is right, and waits for its answer.
    pub(crate) async fn order(
        &self,
        errand: Errand,
        code: String,
        from: Guesser,
    ) -> Result<Told, NotIn> {
        self.confirm(code, from).await?;
        tracing::info!(?from, ?errand, "an order at the desk");
        Ok(self.hand_on(errand).await)
    }

    /// Whether a code is the coach's, given once more.
    pub(crate) async fn confirm(&self, code: String, from: Guesser) -> Result<(), NotIn> {
        let kept = self.kept()?;
        self.judge_slowly(kept, code, from).await
    }

    /// Hands on what a coach who has signed in wants of the kiosk, and waits for its answer.
    pub(crate) async fn hand_on(&self, errand: Errand) -> Told {
        let (answer, answered) = oneshot::channel();
        match &*lock(&self.0.orders) {
            Some(take) => take(Order { errand, answer }),
            None => return Told::NoOrders,
        }
        let answered = timeout(ORDER, answered).await;
        answered.ok().and_then(Result::ok).unwrap_or(Told::NotYet)
    }

    /// Shows a board on every floor screen that follows; the same one again costs nothing.
    pub fn show(&self, board: &Board) {
        let text = board.to_json();
        *lock(&self.0.shown) = Some((self.now(), Arc::new(board.clone())));
        self.0.board.send_if_modified(|shown| {
            let new = *shown != text;
            if new {
                *shown = text;
            }
            new
        });
    }

    /// Whether any floor screen follows, or has been loaded of late: one without scripts is loaded
    /// again and again.
    #[must_use]
    pub fn is_followed(&self) -> bool {
        let looked = *lock(&self.0.looked);
        let of_late = looked.is_some_and(|at| self.now().saturating_sub(at) < LOOKED_MS);
        of_late || self.0.board.receiver_count() > 0
    }

    /// The board for a screen that is loaded now; `None` where nobody followed, so that the last
    /// one shown is old.
    pub(crate) fn board_of_now(&self) -> Option<Arc<Board>> {
        let now = self.now();
        *lock(&self.0.looked) = Some(now);
        let shown = lock(&self.0.shown);
        let (at, board) = shown.as_ref()?;
        (now.saturating_sub(*at) < FRESH_MS).then(|| Arc::clone(board))
    }

    pub(crate) fn board(&self) -> watch::Receiver<Arc<str>> {
        self.0.board.subscribe()
    }

    /// The path of the link that shows `lifter`'s own record, once, within ten minutes of the end
    /// of lift number `lift`, `ended_ms` milliseconds ago: "/mine/TOKEN". `None` when it was
    /// opened already, or the time is over.
    #[must_use]
    pub fn link(&self, lift: u32, lifter: &str, ended_ms: u64) -> Option<String> {
        let now = self.now();
        let until = now + LINK_MS.checked_sub(ended_ms).filter(|left| *left > 0)?;
        let token = self.sessions().link(now, lift, lifter, until)?;
        Some(format!("/mine/{token}"))
    }

    /// Signs a coach in: the session's token and how long it holds, seconds. Blocks for the time
    /// that the hash takes.
    pub(crate) async fn sign_in(
        &self,
        code: String,
        from: Guesser,
    ) -> Result<(String, u64), NotIn> {
        let kept = self.kept()?;
        self.judge_slowly(kept.clone(), code, from).await?;
        let who = Who::Coach(token::hash(&kept));
        let now = self.now();
        let token = self.sessions().begin(now, now + COACH_MS, who);
        token.map(|t| (t, COACH_MS / 1_000)).ok_or(NotIn::Failed)
    }

    /// Judges a code on a thread of its own, within the limit on guesses.
    async fn judge_slowly(&self, kept: String, code: String, from: Guesser) -> Result<(), NotIn> {
        let begun = self.attempts().begin(self.now(), from);
        begun.map_err(|wait_ms| NotIn::Wait(wait_ms.div_ceil(1_000)))?;
        let judge = self.0.judging.acquire().await;
        let judged = tokio::task::spawn_blocking(move || code::is_code(&kept, &code)).await;
        drop(judge);
        if !judged.map_err(|_| NotIn::Failed)? {
            return Err(NotIn::Wrong);
        }
        self.attempts().well(from);
        Ok(())
    }

    /// Judges a code that was given at the kiosk itself, as few times as from one address; what
    /// others guess over the network does not count there. Blocks for the time that the hash takes.
    ///
    /// # Errors
    /// A sentence that says what to do.
    pub fn judge(&self, code: &str) -> Result<(), String> {
        let say = self.language();
        let kept = self.kept().map_err(|why| why.words(say))?;
        let from = Guesser::Kiosk;
        let begun = self.attempts().begin(self.now(), from);
        begun.map_err(|ms| NotIn::Wait(ms.div_ceil(1_000)).words(say))?;
        if !code::is_code(&kept, code) {
            return Err(NotIn::Wrong.words(say));
        }
        self.attempts().well(from);
        Ok(())
    }

    /// Who guesses a code: a browser with the word of an earlier sign-in, else an address. The word
    /// holds for the code of now alone.
    pub(crate) fn guesser(&self, word: Option<&str>, from: IpAddr) -> Guesser {
        let known = word.and_then(|word| known::id(&self.kept().ok()?, word));
        known.map_or(Guesser::Address(from), Guesser::Known)
    }

    /// The word by which a browser is known again after it gave the right code.
    pub(crate) fn known_word(&self) -> Option<String> {
        known::word(&self.kept().ok()?)
    }

    /// Whether a session's token is a coach's, signed in with the code of now.
    pub(crate) fn is_coach(&self, token: &str) -> bool {
        let Ok(kept) = self.kept() else {
            return false;
        };
        let now = self.now();
        self.sessions().who(now, token) == Some(&Who::Coach(token::hash(&kept)))
    }

    /// The lifter whose record a session's token opens, and the hash of the link it came by.
    pub(crate) fn lifter(&self, token: &str) -> Option<(String, token::TokenHash)> {
        let now = self.now();
        match self.sessions().who(now, token)? {
            Who::Lifter { lifter, link } => Some((lifter.clone(), *link)),
            Who::Coach(_) => None,
        }
    }

    /// Opens a lifter's link: the session's token, seconds that it holds.
    pub(crate) fn open_link(&self, token: &str) -> Option<(String, u64)> {
        let now = self.now();
        let midnight = self.midnight().unwrap_or(now);
        let (session, until, _) = self.sessions().open_link((now, midnight), token)?;
        Some((session, until.saturating_sub(now) / 1_000))
    }

    /// Whether a token is a link's that may still be opened.
    pub(crate) fn is_link(&self, token: &str) -> bool {
        self.sessions().is_link(self.now(), token)
    }

    /// Whether a token was a link's of late: one that was opened, or whose time is over.
    pub(crate) fn knows_link(&self, token: &str) -> bool {
        self.sessions().knows_link(token)
    }

    pub(crate) fn sign_out(&self, token: &str) {
        self.sessions().end(token);
    }

    pub(crate) fn has_code(&self) -> bool {
        self.kept().is_ok()
    }

    fn kept(&self) -> Result<String, NotIn> {
        match code::kept_code(&self.0.folder) {
            Ok(Some(kept)) => Ok(kept),
            Ok(None) => Err(NotIn::NoCode),
            Err(error @ (CodeError::File { .. } | CodeError::Hash(_))) => {
                tracing::error!(%error, "the coach's code cannot be read");
                Err(NotIn::Failed)
            }
            Err(CodeError::Length(_) | CodeError::Plain(_)) => Err(NotIn::Failed),
        }
    }

    pub(crate) fn folder(&self) -> &Path {
        &self.0.folder
    }

    pub(crate) fn board_count(&self) -> usize {
        self.0.board.receiver_count()
    }

    pub(crate) fn life(&self) -> &Life {
        &self.0.life
    }

    pub(crate) fn now(&self) -> u64 {
        (self.0.clock)()
    }

    fn attempts(&self) -> MutexGuard<'_, Attempts> {
        lock(&self.0.attempts)
    }

    fn sessions(&self) -> MutexGuard<'_, Sessions> {
        lock(&self.0.sessions)
    }
}

/// A lock whose holder panicked still guards whole values: each change is one assignment.
pub(crate) fn lock<T>(of: &Mutex<T>) -> MutexGuard<'_, T> {
    of.lock().unwrap_or_else(PoisonError::into_inner)
}
