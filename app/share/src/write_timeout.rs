//! A connection that gives up on a reader who stops reading.
//!
//! Refuses: holding an answer for ever because nobody takes it.
use std::io;
use std::pin::Pin;
use std::task::{Context, Poll};
use std::time::Duration;
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::time::{Sleep, sleep};

/// `inner`, whose writes fail once nothing could be written for `patience`.
#[derive(Debug)]
pub(crate) struct Impatient<S> {
    inner: S,
    patience: Duration,
    waiting: Option<Pin<Box<Sleep>>>,
}

impl<S> Impatient<S> {
    pub(crate) const fn new(inner: S, patience: Duration) -> Self {
        Self {
            inner,
            patience,
            waiting: None,
        }
    }

    /// Lets time run while `outcome` is pending.
    fn watch<T>(
        &mut self,
        context: &mut Context<'_>,
        outcome: Poll<io::Result<T>>,
    ) -> Poll<io::Result<T>> {
        if outcome.is_ready() {
            self.waiting = None;
            return outcome;
        }
        let patience = self.patience;
        let waiting = self
            .waiting
            .get_or_insert_with(|| Box::pin(sleep(patience)));
        waiting.as_mut().poll(context).map(|()| {
            self.waiting = None;
            Err(io::ErrorKind::TimedOut.into())
        })
    }
}

impl<S: AsyncRead + Unpin> AsyncRead for Impatient<S> {
    fn poll_read(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        into: &mut ReadBuf<'_>,
    ) -> Poll<io::Result<()>> {
        Pin::new(&mut self.inner).poll_read(context, into)
    }
}

impl<S: AsyncWrite + Unpin> AsyncWrite for Impatient<S> {
    fn poll_write(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        bytes: &[u8],
    ) -> Poll<io::Result<usize>> {
        let outcome = Pin::new(&mut self.inner).poll_write(context, bytes);
        self.watch(context, outcome)
    }

    fn poll_write_vectored(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        pieces: &[io::IoSlice<'_>],
    ) -> Poll<io::Result<usize>> {
        let outcome = Pin::new(&mut self.inner).poll_write_vectored(context, pieces);
        self.watch(context, outcome)
    }

    fn is_write_vectored(&self) -> bool {
        self.inner.is_write_vectored()
    }

    fn poll_flush(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        let outcome = Pin::new(&mut self.inner).poll_flush(context);
        self.watch(context, outcome)
    }

    fn poll_shutdown(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        let outcome = Pin::new(&mut self.inner).poll_shutdown(context);
        self.watch(context, outcome)
    }
}

#[cfg(test)]
mod tests {
    use super::Impatient;
    use std::io::ErrorKind;
    use std::time::Duration;
    use tokio::io::{AsyncReadExt as _, AsyncWriteExt as _, duplex};
    use tokio::time::{Instant, sleep};

    const PATIENCE: Duration = Duration::from_secs(30);

    #[tokio::test(start_paused = true)]
    async fn a_reader_who_stops_is_given_up_on() {
        let (near, _far) = duplex(16);
        let mut near = Impatient::new(near, PATIENCE);
        let begun = Instant::now();
        let error = near.write_all(&[0; 17]).await.expect_err("nobody reads");
        assert_eq!(error.kind(), ErrorKind::TimedOut);
        assert_eq!(begun.elapsed(), PATIENCE);
    }

    #[tokio::test(start_paused = true)]
    async fn a_slow_reader_is_waited_for() {
        let (near, mut far) = duplex(16);
        let mut near = Impatient::new(near, PATIENCE);
        let read = async {
            let mut all = Vec::new();
            while all.len() < 160 {
                sleep(PATIENCE - Duration::from_secs(1)).await;
                let mut some = [0; 16];
                let length = far.read(&mut some).await.expect("reads");
                all.extend_from_slice(&some[..length]);
            }
            all
        };
        let (written, read) = tokio::join!(near.write_all(&[7; 160]), read);
        written.expect("took long, and was taken");
        assert_eq!(read, [7; 160]);
    }
}
