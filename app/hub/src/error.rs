//! What can go wrong with the hub, and what to do about it. None of it keeps the rack from working.
use journal::JournalError;
use std::io;
use std::path::PathBuf;
use thiserror::Error;

/// Why nothing was exchanged.
#[derive(Debug, Error)]
pub enum HubError {
    /// No answer.
    #[error(
        "the hub at {server} does not answer ({detail}); this rack works alone and catches up when it does"
    )]
    Away {
        /// Host and port.
        server: String,
        /// In the library's words.
        detail: String,
    },
    /// It answers, and lets us not in.
    #[error(
        "the hub at {server} does not let {kiosk} in ({detail}); check hub.password, and that `pinladder hub prepare` made this kiosk"
    )]
    Refused {
        /// Host and port.
        server: String,
        /// As whom.
        kiosk: String,
        /// In its words.
        detail: String,
    },
    /// A database without our tables, or a role without a row.
    #[error("the database of {server} knows no kiosk {kiosk}; run `pinladder hub prepare` for it")]
    Unprepared {
        /// Host and port.
        server: String,
        /// As whom.
        kiosk: String,
    },
    /// It did something else than it should.
    #[error("the hub at {server} failed ({detail}); its log tells more, and this rack works alone")]
    Failed {
        /// Host and port.
        server: String,
        /// In its words.
        detail: String,
    },
    /// The hub has more of this kiosk than its journal: an older one was put back.
    #[error(
        "the hub knows {there} events of {kiosk} and this journal has {here}: an older copy was put back, or another box runs under this name; nothing is sent. Put the newest copy of the data folder back, or give this box a name of its own (`pinladder hub prepare`)"
    )]
    Behind {
        /// As whom.
        kiosk: String,
        /// Events in the hub.
        there: u64,
        /// Events here.
        here: u64,
    },
    /// The hub has something else of this kiosk.
    #[error(
        "the hub has another event {seq} of {kiosk} than this journal: another box runs under this name, or this one was set up anew or put back; nothing is sent or overwritten. Give this box a name of its own (`pinladder hub prepare`)"
    )]
    Forked {
        /// As whom.
        kiosk: String,
        /// The last event that the hub has.
        seq: u64,
    },
    /// Sent, and not taken, though it followed.
    #[error("the hub does not take event {seq} of {kiosk} ({detail}); nothing is lost here")]
    NotTaken {
        /// As whom.
        kiosk: String,
        /// The first that was sent.
        seq: u64,
        /// In its words.
        detail: String,
    },
    /// No TLS, and no word that none is needed.
    #[error(
        "the way to {server} is open to others without TLS; lay the server's certificate into the data folder as hub.pem, or write ?tls=off where a tunnel or a cable of its own keeps strangers out"
    )]
    Open {
        /// Host and port.
        server: String,
    },
    /// The password's or the certificates' file.
    #[error("{} cannot be used ({detail})", .path.display())]
    File {
        /// The file.
        path: PathBuf,
        /// Why, and what to do.
        detail: String,
    },
    /// This kiosk's own journal, or what was read of another.
    #[error(transparent)]
    Journal(#[from] JournalError),
    /// The system.
    #[error("the system gives no runtime for the hub ({0}); start again")]
    System(#[from] io::Error),
}

/// What is wrong with what the hub tells of another kiosk.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum OtherFault {
    /// The hub has another event than was read before.
    #[error(
        "{kiosk}: the hub has another event {seq} than was read before; find out which box is the right one, then delete the folder others/{kiosk} here"
    )]
    Forked {
        /// Which kiosk.
        kiosk: String,
        /// Which event.
        seq: u64,
    },
    /// It does not follow, or cannot be read.
    #[error("{kiosk}: {detail}")]
    Unread {
        /// Which kiosk.
        kiosk: String,
        /// Why, and what to do.
        detail: String,
    },
}
