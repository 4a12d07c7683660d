//! The floor board for a TV: who is up at each rack, live by server-sent events (HTML Living
//! Standard, 9.2).
//!
//! Refuses: names beyond those on the kiosk, events faster than eyes.
use crate::seats::Seat;
use crate::words as w;
use axum::body::{Body, Bytes};
use futures_core::Stream;
use serde::Serialize;
use std::io;
use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll};
use std::time::Duration;
use tokio::sync::{Notify, watch};
use tokio::time::{sleep, timeout};
use view::Language;

/// The least time between two events.
const GAP: Duration = Duration::from_millis(250);
/// Without a new board so much is said, so that a dead connection is noticed at both ends.
const SILENCE: Duration = Duration::from_secs(15);
const ALIVE: &[u8] = b"event: alive\ndata: 1\n\n";
/// Of the page and its script.
pub(crate) const VERSION: &str = env!("CARGO_PKG_VERSION");

/// What the board shows.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
pub struct Board {
    /// The language of its words (ISO 639-1): the kiosk's.
    pub language: String,
    /// "Floor", in it.
    pub title: String,
    /// What to say while the kiosk cannot be reached, in it.
    pub waiting: String,
    /// Time of day, "18:42".
    pub clock: String,
    /// A sentence when nobody lifts, or empty.
    pub empty: String,
    /// The racks.
    pub racks: Vec<BoardRack>,
}

/// The turns at one rack.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
pub struct BoardRack {
    /// The rack.
    pub name: String,
    /// Whose turn it is.
    pub up: Option<BoardTurn>,
    /// Who is next.
    pub next: Option<BoardTurn>,
    /// Who then.
    pub then: Vec<BoardTurn>,
}

/// One turn.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
pub struct BoardTurn {
    /// Name, as on the kiosk.
    pub lifter: String,
    /// "rack pull, work set".
    pub lift: String,
    /// "160 kg".
    pub load: String,
    /// "5 reps".
    pub reps: String,
    /// "hole 9, 1 mat, 20 mm": where the bar starts, and what is stood on.
    pub spot: String,
    /// "belt, straps": what is worn for this set, or empty.
    pub gear: String,
    /// "up", "rest 2:10".
    pub word: String,
    /// What the hands have to do, each side, or empty.
    pub change: String,
}

impl Board {
    /// An empty board in a language.
    #[must_use]
    pub fn of(say: Language) -> Self {
        Self {
            language: say.code().to_owned(),
            title: say.say(w::FLOOR),
            waiting: say.say(w::WAITING),
            ..Self::default()
        }
    }

    pub(crate) fn to_json(&self) -> Arc<str> {
        let text = serde_json::to_string(self).expect("texts always write");
        text.into()
    }
}

/// The board of now and every one that follows, as a body of events, for as long as the seat is
/// this board's.
pub(crate) fn follow(seat: Seat, board: watch::Receiver<Arc<str>>) -> Body {
    let follower = Follower {
        board,
        asked_to_go: seat.asked_to_go(),
    };
    Body::from_stream(Live {
        step: Box::pin(first(follower)),
        seat,
    })
}

/// Whoever follows; `asked_to_go` is told when another has the seat.
struct Follower {
    board: watch::Receiver<Arc<str>>,
    asked_to_go: Arc<Notify>,
}

type Step = Pin<Box<dyn Future<Output = Option<(Bytes, Option<Follower>)>> + Send>>;

/// The body: one event after another until the kiosk ends, or the seat is another's.
struct Live {
    step: Step,
    #[expect(dead_code, reason = "held until the screen goes away")]
    seat: Seat,
}

impl Stream for Live {
    type Item = io::Result<Bytes>;

    fn poll_next(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<Option<Self::Item>> {
        match self.step.as_mut().poll(context) {
            Poll::Pending => Poll::Pending,
            Poll::Ready(None) => Poll::Ready(None),
            Poll::Ready(Some((event, follower))) => {
                self.step = match follower {
                    Some(follower) => Box::pin(next(follower)),
                    None => Box::pin(async { None }),
                };
                Poll::Ready(Some(Ok(event)))
            }
        }
    }
}

/// What the page is, so that one of an older kiosk is loaded anew, and the board.
async fn first(mut follower: Follower) -> Option<(Bytes, Option<Follower>)> {
    let board = event(&follower.board.borrow_and_update());
    let shown = format!("retry: 2000\nevent: version\ndata: {VERSION}\n\n{board}");
    Some((shown.into(), Some(follower)))
}

/// The latest board once it has changed; those between are left out.
async fn next(mut follower: Follower) -> Option<(Bytes, Option<Follower>)> {
    sleep(GAP).await;
    let asked_to_go = Arc::clone(&follower.asked_to_go);
    let changed = tokio::select! {
        changed = timeout(SILENCE, follower.board.changed()) => changed,
        // It comes back later, so that boards of one machine do not chase one another.
        () = asked_to_go.notified() => return Some((Bytes::from_static(b"retry: 60000\n\n"), None)),
    };
    let event = match changed {
        Ok(Ok(())) => event(&follower.board.borrow_and_update()).into(),
        Ok(Err(_)) => return None,
        Err(_) => Bytes::from_static(ALIVE),
    };
    Some((event, Some(follower)))
}

/// JSON has no line breaks of its own, so one line holds it.
fn event(board: &str) -> String {
    format!("data: {board}\n\n")
}
