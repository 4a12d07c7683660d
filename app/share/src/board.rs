//! The floor board for a TV: who is up at each rack, live by server-sent events (HTML Living
//! Standard, 9.2).
//!
//! Refuses: names beyond those on the kiosk, more screens than a gym has, events faster than
//! eyes.
use crate::problem::Problem;
use crate::words as w;
use axum::body::{Body, Bytes};
use axum::http::StatusCode;
use futures_core::Stream;
use serde::Serialize;
use std::io;
use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll};
use std::time::Duration;
use tokio::sync::{OwnedSemaphorePermit, Semaphore, watch};
use tokio::time::{sleep, timeout};
use view::Language;

/// Screens that may follow at once.
pub(crate) const FOLLOWERS: usize = 16;
/// The least time between two events.
const GAP: Duration = Duration::from_millis(250);
/// Without an event a comment is sent, so that a dead connection is noticed.
const SILENCE: Duration = Duration::from_secs(15);

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

/// The seats of those who follow.
#[derive(Debug, Clone)]
pub(crate) struct Seats(Arc<Semaphore>);

impl Seats {
    pub(crate) fn new() -> Self {
        Self(Arc::new(Semaphore::new(FOLLOWERS)))
    }

    /// The board of now and every one that follows, as a body of events.
    pub(crate) fn follow(&self, board: watch::Receiver<Arc<str>>) -> Result<Body, Problem> {
        let seat = Arc::clone(&self.0)
            .try_acquire_owned()
            .map_err(|_| Problem::new(StatusCode::SERVICE_UNAVAILABLE, w::MANY_BOARDS))?;
        Ok(Body::from_stream(Live {
            step: Box::pin(first(board)),
            seat,
        }))
    }
}

type Step = Pin<Box<dyn Future<Output = Option<(Bytes, watch::Receiver<Arc<str>>)>> + Send>>;

/// The body: one event after another until the kiosk ends.
struct Live {
    step: Step,
    #[expect(dead_code, reason = "held until the screen goes away")]
    seat: OwnedSemaphorePermit,
}

impl Stream for Live {
    type Item = io::Result<Bytes>;

    fn poll_next(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<Option<Self::Item>> {
        match self.step.as_mut().poll(context) {
            Poll::Pending => Poll::Pending,
            Poll::Ready(None) => Poll::Ready(None),
            Poll::Ready(Some((event, board))) => {
                self.step = Box::pin(next(board));
                Poll::Ready(Some(Ok(event)))
            }
        }
    }
}

async fn first(mut board: watch::Receiver<Arc<str>>) -> Option<(Bytes, watch::Receiver<Arc<str>>)> {
    let shown = format!("retry: 2000\n{}", event(&board.borrow_and_update()));
    Some((shown.into(), board))
}

/// The latest board once it has changed; those between are left out.
async fn next(mut board: watch::Receiver<Arc<str>>) -> Option<(Bytes, watch::Receiver<Arc<str>>)> {
    sleep(GAP).await;
    match timeout(SILENCE, board.changed()).await {
        Ok(Ok(())) => {
            let shown = event(&board.borrow_and_update());
            Some((shown.into(), board))
        }
        Ok(Err(_)) => None,
        Err(_) => Some((Bytes::from_static(b":\n\n"), board)),
    }
}

/// JSON has no line breaks of its own, so one line holds it.
fn event(board: &str) -> String {
    format!("data: {board}\n\n")
}
