//! Feeds the system's watchdog (`sd_notify(3)`, `WatchdogSec=` of `systemd.service(5)`) only while the
//! owner of the state answers and the window's thread takes what it is to draw. A kiosk that hangs
//! is not fed, and so ended and started again, on the same face.
use crate::watch::spawn_again;
use std::ffi::OsStr;
use std::os::linux::net::SocketAddrExt as _;
use std::os::unix::ffi::OsStrExt as _;
use std::os::unix::net::{SocketAddr, UnixDatagram};
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Duration;

/// A part of the kiosk beats each time it has done something; clones are the same part.
#[derive(Debug, Clone, Default)]
pub struct Beat(Arc<AtomicU64>);

impl Beat {
    /// It is alive.
    pub fn beat(&self) {
        self.0.fetch_add(1, Ordering::Relaxed);
    }

    fn count(&self) -> u64 {
        self.0.load(Ordering::Relaxed)
    }
}

/// What the system has told of its watchdog, and how far those it watches had come.
#[derive(Debug)]
pub struct Watchdog {
    socket: SocketAddr,
    /// How long it waits before it ends the process; `None` where it does not watch.
    patience: Option<Duration>,
    owner: Beat,
    window: Beat,
    seen: (u64, u64),
}

impl Watchdog {
    /// By what the system's service manager left in the surroundings; `None` without one.
    #[must_use]
    pub fn here(owner: Beat, window: Beat) -> Option<Self> {
        let socket = std::env::var_os("NOTIFY_SOCKET")?;
        let number = |name| std::env::var(name).ok()?.parse::<u64>().ok();
        let ours = number("WATCHDOG_PID").is_none_or(|pid| pid == u64::from(std::process::id()));
        let patience = number("WATCHDOG_USEC").filter(|_| ours);
        Self::at(&socket, patience.map(Duration::from_micros), owner, window)
    }

    /// By a socket's name; `None` where it is none.
    #[must_use]
    pub fn at(
        socket: &OsStr,
        patience: Option<Duration>,
        owner: Beat,
        window: Beat,
    ) -> Option<Self> {
        Some(Self {
            socket: address(socket)?,
            patience,
            owner,
            window,
            seen: (0, 0),
        })
    }

    /// The kiosk shows its face, or why it cannot.
    pub fn ready(&self) {
        self.say("READY=1");
    }

    /// One look: whether both have beaten since the last one. Then it is fed.
    pub fn look(&mut self) -> bool {
        let now = (self.owner.count(), self.window.count());
        let alive = now.0 != self.seen.0 && now.1 != self.seen.1;
        self.seen = now;
        if alive {
            self.say("WATCHDOG=1");
        } else {
            tracing::warn!(owner = now.0, window = now.1, "a part of the kiosk hangs");
        }
        alive
    }

    fn say(&self, what: &str) {
        let sent = UnixDatagram::unbound()
            .and_then(|socket| socket.send_to_addr(what.as_bytes(), &self.socket));
        if let Err(error) = sent {
            tracing::warn!(%error, what, "the service manager is not told");
        }
    }
}

/// A path, or a name of the abstract kind with an @ before it.
fn address(name: &OsStr) -> Option<SocketAddr> {
    match name.as_bytes() {
        [b'@', hidden @ ..] => SocketAddr::from_abstract_name(hidden).ok(),
        [b'/', ..] => SocketAddr::from_pathname(name).ok(),
        _ => None,
    }
}

/// Tells the service manager that the kiosk is ready and, where it watches, starts the thread that
/// feeds it; `poke` asks the window for a beat before each look.
pub(crate) fn start(owner: &Beat, window: &Beat, poke: impl Fn() + Send + 'static) {
    let Some(mut watchdog) = Watchdog::here(owner.clone(), window.clone()) else {
        return;
    };
    watchdog.ready();
    let Some(patience) = watchdog.patience else {
        return;
    };
    let thread = spawn_again("watchdog", move || {
        loop {
            poke();
            std::thread::sleep(patience / 3);
            watchdog.look();
        }
    });
    if let Err(error) = thread {
        tracing::error!(%error, "the watchdog is not fed: the system gives no thread");
    }
}
