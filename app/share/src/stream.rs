//! Reads the record on a thread of its own and hands it on in pieces, so that a long record is
//! never held whole.
//!
//! Refuses: more readers at once than a kiosk can bear, and passing off a broken answer as whole.
use crate::problem::Problem;
use crate::words as w;
use axum::body::{Body, Bytes};
use axum::http::StatusCode;
use futures_core::Stream;
use journal::{RecordError, RecordReader};
use std::io;
use std::path::{Path, PathBuf};
use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll, ready};
use std::time::Duration;
use tokio::sync::{Semaphore, mpsc};
use tokio::task::{JoinHandle, spawn_blocking};
use tokio::time::timeout;

/// How many may read the record at once.
const READERS: usize = 8;
/// Bytes of one piece.
const PIECE: usize = 32 * 1_024;
/// Pieces read ahead of the network.
const AHEAD: usize = 2;
/// How many may have the database copied at once.
const COPIES: usize = 1;
/// How long the first piece may take.
const FIRST: Duration = Duration::from_secs(10);
/// How long the first piece of a copy may take.
const FIRST_OF_COPY: Duration = Duration::from_secs(120);

/// The files that are shown; each is only read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Places {
    /// The record, which need not exist yet.
    pub record: PathBuf,
    /// The journal.
    pub journal: PathBuf,
}

/// Where the record lies, and who may read it now.
#[derive(Debug, Clone)]
pub(crate) struct Source {
    places: Places,
    seats: Arc<Semaphore>,
    copies: Arc<Semaphore>,
}

/// Why no more is written.
#[derive(Debug)]
pub(crate) enum Stop {
    /// Who asked has gone, or the place that is written to.
    Gone(io::Error),
    /// The record cannot be read.
    Record(RecordError),
    /// No copy of the journal could be made or read.
    Copy(io::Error),
    /// There is nothing of that name.
    Nobody,
}

impl From<RecordError> for Stop {
    fn from(error: RecordError) -> Self {
        Self::Record(error)
    }
}

impl From<io::Error> for Stop {
    /// A writer has no other error.
    fn from(error: io::Error) -> Self {
        Self::Gone(error)
    }
}

impl Source {
    pub(crate) fn new(places: Places) -> Self {
        Self {
            places,
            seats: Arc::new(Semaphore::new(READERS)),
            copies: Arc::new(Semaphore::new(COPIES)),
        }
    }

    /// Lets `write` write what it reads of the record (`None` when there is none yet), and
    /// returns it as a body once the first piece is there.
    pub(crate) async fn stream(
        &self,
        write: impl FnOnce(Option<&RecordReader>, &mut Sink) -> Result<(), Stop> + Send + 'static,
    ) -> Result<Body, Problem> {
        let record = self.places.record.clone();
        pieces(&self.seats, FIRST, move |sink| {
            let reader = RecordReader::open(&record)?;
            write(reader.as_ref(), sink)
        })
        .await
    }

    /// By which the record's content is known; `None` where it cannot be read, "" before the first.
    pub(crate) async fn version(&self) -> Option<String> {
        let record = self.places.record.clone();
        let read = spawn_blocking(move || match RecordReader::open(&record)? {
            Some(reader) => reader.version(),
            None => Ok(String::new()),
        });
        read.await.ok()?.ok()
    }

    /// The last event of the journal in the record; `None` where it cannot be read.
    pub(crate) async fn upto(&self) -> Option<u64> {
        let version = self.version().await?;
        let upto = version.split('-').next().unwrap_or_default();
        Some(upto.parse().unwrap_or(0))
    }

    /// As [`Source::stream`], for what is read of the journal's file.
    pub(crate) async fn stream_database(
        &self,
        write: impl FnOnce(&Path, &mut Sink) -> Result<(), Stop> + Send + 'static,
    ) -> Result<Body, Problem> {
        let journal = self.places.journal.clone();
        pieces(&self.copies, FIRST_OF_COPY, move |sink| {
            write(&journal, sink)
        })
        .await
    }
}

/// Runs `write` on a thread of its own, while there is a seat, and hands on what it writes.
async fn pieces(
    seats: &Arc<Semaphore>,
    first: Duration,
    write: impl FnOnce(&mut Sink) -> Result<(), Stop> + Send + 'static,
) -> Result<Body, Problem> {
    let seat = Arc::clone(seats)
        .try_acquire_owned()
        .map_err(|_| Problem::new(StatusCode::SERVICE_UNAVAILABLE, w::MANY_READERS))?;
    let (sender, mut pieces) = mpsc::channel(AHEAD);
    let worker = spawn_blocking(move || {
        let mut sink = Sink {
            piece: Vec::with_capacity(PIECE),
            sender,
        };
        let outcome = write(&mut sink).and_then(|()| Ok(sink.send()?));
        match outcome {
            Ok(()) | Err(Stop::Gone(_)) => {}
            Err(Stop::Record(error)) => {
                tracing::error!(%error, "the record cannot be shown");
                sink.fail(io::ErrorKind::Other);
            }
            Err(Stop::Copy(error)) => {
                tracing::error!(%error, "the database cannot be copied");
                sink.fail(io::ErrorKind::Other);
            }
            Err(Stop::Nobody) => sink.fail(io::ErrorKind::NotFound),
        }
        drop(seat);
    });
    let unreadable = Problem::new(StatusCode::INTERNAL_SERVER_ERROR, w::UNREADABLE);
    match timeout(first, pieces.recv()).await {
        Ok(Some(Ok(first))) => Ok(Body::from_stream(Pieces {
            first: Some(first),
            rest: pieces,
            worker,
        })),
        Ok(Some(Err(error))) if error.kind() == io::ErrorKind::NotFound => {
            Err(Problem::new(StatusCode::NOT_FOUND, w::NOBODY))
        }
        Ok(Some(Err(_)) | None) => Err(unreadable),
        Err(_) => Err(Problem::new(StatusCode::SERVICE_UNAVAILABLE, w::SLOW)),
    }
}

/// Takes what is written, and sends it on piece by piece.
#[derive(Debug)]
pub(crate) struct Sink {
    piece: Vec<u8>,
    sender: mpsc::Sender<io::Result<Bytes>>,
}

impl Sink {
    fn send(&mut self) -> io::Result<()> {
        let piece = std::mem::replace(&mut self.piece, Vec::with_capacity(PIECE));
        self.sender
            .blocking_send(Ok(piece.into()))
            .map_err(|_| io::ErrorKind::BrokenPipe.into())
    }

    /// Ends the answer as broken, so that nobody takes it for whole.
    fn fail(&self, kind: io::ErrorKind) {
        let broken = io::Error::new(kind, "the record could not be read to its end");
        // Who has gone need not know.
        drop(self.sender.blocking_send(Err(broken)));
    }
}

impl io::Write for Sink {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        self.piece.extend_from_slice(bytes);
        if self.piece.len() >= PIECE {
            self.send()?;
        }
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

/// The body: pieces, then the worker's own end, so that a panic there does not look like the end.
struct Pieces {
    first: Option<Bytes>,
    rest: mpsc::Receiver<io::Result<Bytes>>,
    worker: JoinHandle<()>,
}

impl Stream for Pieces {
    type Item = io::Result<Bytes>;

    fn poll_next(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<Option<Self::Item>> {
        if let Some(first) = self.first.take() {
            return Poll::Ready(Some(Ok(first)));
        }
        if let Some(piece) = ready!(self.rest.poll_recv(context)) {
            return Poll::Ready(Some(piece));
        }
        match ready!(Pin::new(&mut self.worker).poll(context)) {
            Ok(()) => Poll::Ready(None),
            Err(error) => Poll::Ready(Some(Err(io::Error::other(error)))),
        }
    }
}
