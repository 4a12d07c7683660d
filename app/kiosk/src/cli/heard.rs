//! Standard output that remembers whether all of it was written, so that the exit code is true.
use std::io::{self, ErrorKind, Write};

/// An output, and the first thing that went wrong with it.
pub(super) struct Heard<'a> {
    out: &'a mut dyn Write,
    failed: Option<io::Error>,
}

impl<'a> Heard<'a> {
    pub(super) fn new(out: &'a mut dyn Write) -> Self {
        Self { out, failed: None }
    }

    /// Whether all was written; if not, `err` is told, unless it was the reader who had enough.
    pub(super) fn all(&mut self, err: &mut dyn Write) -> bool {
        drop(self.flush());
        match &self.failed {
            None => true,
            Some(why) if why.kind() == ErrorKind::BrokenPipe => false,
            Some(why) => {
                let told = "the answer could not be written";
                let advice = "free some space, or choose another place for it";
                drop(writeln!(err, "pinladder: {told} ({why}); {advice}"));
                false
            }
        }
    }

    fn note<T>(&mut self, done: io::Result<T>) -> io::Result<T> {
        done.map_err(|error| {
            let kind = error.kind();
            if kind != ErrorKind::Interrupted {
                self.failed.get_or_insert(error);
            }
            kind.into()
        })
    }
}

impl Write for Heard<'_> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let done = self.out.write(bytes);
        self.note(done)
    }

    fn flush(&mut self) -> io::Result<()> {
        let done = self.out.flush();
        self.note(done)
    }
}
