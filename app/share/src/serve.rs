//! Takes connections and answers them with a router, within limits of time and number.
//!
//! Refuses: slow headers, stalled readers, endless connections, more of them than a kiosk bears,
//! whoever comes in by another interface than the page's.
use crate::app::Front;
use crate::connection_limit::Crowd;
use crate::request_rules::Peer;
use crate::tls::Identity;
use crate::to_tls;
use crate::write_timeout::Impatient;
use axum::{Extension, Router};
use hyper::server::conn::http1;
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::service::TowerToHyperService;
use std::io;
use std::net::{IpAddr, SocketAddr};
use std::pin::pin;
use std::sync::Arc;
use std::time::Duration;
use thiserror::Error;
use tokio::io::{AsyncRead, AsyncWrite};
use tokio::net::{TcpListener, TcpSocket, TcpStream};
use tokio::sync::{Semaphore, watch};
use tokio::task::JoinSet;
use tokio::time::{sleep, timeout};
use tokio_rustls::TlsAcceptor;

/// Connections at once, most of them boards; more wait to be taken.
const CONNECTIONS: usize = 400;
/// The first byte of whoever begins TLS: a handshake's record (RFC 8446, 5.1).
const HANDSHAKE: u8 = 22;
/// For the head of a request, also between two of one connection.
const HEAD: Duration = Duration::from_secs(10);
/// Without a byte taken by the reader.
const STALL: Duration = Duration::from_secs(30);
/// Connections that wait to be taken.
const WAITING: u32 = 1_024;
/// For one connection in all.
const WHOLE: Duration = Duration::from_secs(900);
/// For answers under way when told to end.
const ENDING: Duration = Duration::from_secs(3);

/// Why nothing can be shared.
#[derive(Debug, Error)]
pub enum ShareError {
    /// Another program has the port.
    #[error("port {} of {} is taken by another program; choose another port, or close that program", .at.port(), .at.ip())]
    Taken {
        /// Where.
        at: SocketAddr,
    },
    /// The address is none of this machine's.
    #[error("{} is no address of this machine; choose one that is, or 127.0.0.1", .at.ip())]
    NotHere {
        /// Where.
        at: SocketAddr,
    },
    /// The port is kept for the system.
    #[error("this user may not take port {}; choose one from 1024 up", .at.port())]
    NotAllowed {
        /// Where.
        at: SocketAddr,
    },
    /// Anything else that the system reports.
    #[error("{at} cannot be taken ({source}); choose another address and port")]
    Other {
        /// Where.
        at: SocketAddr,
        /// In the system's words.
        source: io::Error,
    },
}

/// Takes the address and port, on the interface that has the address and on no other.
///
/// # Errors
/// [`ShareError`] when they cannot be had. The kiosk goes on without.
pub fn bind(at: SocketAddr) -> Result<TcpListener, ShareError> {
    listen(at).map_err(|source| {
        let kind = source.kind();
        if kind == io::ErrorKind::AddrInUse {
            ShareError::Taken { at }
        } else if kind == io::ErrorKind::AddrNotAvailable {
            ShareError::NotHere { at }
        } else if kind == io::ErrorKind::PermissionDenied {
            ShareError::NotAllowed { at }
        } else {
            ShareError::Other { at, source }
        }
    })
}

fn listen(at: SocketAddr) -> io::Result<TcpListener> {
    let socket = match at {
        SocketAddr::V4(_) => TcpSocket::new_v4()?,
        SocketAddr::V6(_) => TcpSocket::new_v6()?,
    };
    // An address that was let go a moment ago may be taken again.
    socket.set_reuseaddr(true)?;
    // Linux takes what is for an address of its own on whichever interface it comes in.
    if let Some(interface) = interface_of(at.ip())
        && let Err(error) = socket.bind_device(Some(interface.as_bytes()))
    {
        tracing::warn!(%error, interface, "the page is heard on other interfaces too");
    }
    socket.bind(at)?;
    socket.listen(WAITING)
}

/// The name of the interface with this address; `None` for loopback, which nothing from outside
/// reaches.
fn interface_of(ip: IpAddr) -> Option<String> {
    if ip.is_loopback() {
        return None;
    }
    let all = if_addrs::get_if_addrs().ok()?;
    let found = all.into_iter().find(|one| one.ip() == ip)?;
    Some(found.name)
}

/// Answers connections of `listener` with `router` until `shutdown` is done; answers under way
/// then have a moment to end. Where `front` has a certificate, only under TLS; whoever asks plainly
/// is led on to it. Runs on any tokio runtime with time and network.
///
/// # Errors
/// When the listener itself fails for good. A single connection that fails ends alone.
pub async fn serve(
    listener: TcpListener,
    router: Router,
    front: &Front,
    shutdown: impl Future<Output = ()>,
) -> io::Result<()> {
    let tls = front.identity.as_ref().map(Identity::acceptor);
    let seats = Arc::new(Semaphore::new(CONNECTIONS));
    let crowd = Crowd::with(&front.proxies);
    let (end, ending) = watch::channel(());
    let mut connections = JoinSet::new();
    let mut shutdown = pin!(shutdown);
    let outcome = loop {
        let taken = async {
            let seat = Arc::clone(&seats).acquire_owned().await;
            (seat, listener.accept().await)
        };
        tokio::select! {
            () = &mut shutdown => break Ok(()),
            Some(ended) = connections.join_next() => {
                if let Err(error) = ended {
                    tracing::error!(%error, "an answer broke off");
                }
            }
            (seat, taken) = taken => match taken {
                Ok((stream, from)) => {
                    // Closed without a word: an answer would cost what is to be saved.
                    let Some(place) = crowd.enter(from.ip()) else {
                        tracing::debug!(%from, "holds too many connections");
                        continue;
                    };
                    let router = router.clone().layer(Extension(Peer(from.ip())));
                    let connection = welcome(stream, router, tls.clone(), ending.clone());
                    connections.spawn(async move {
                        if let Err(error) = connection.await {
                            tracing::debug!(%from, error, "a connection ended early");
                        }
                        drop((seat, place));
                    });
                }
                Err(error) if is_passing(&error) => {
                    tracing::warn!(%error, "a connection could not be taken");
                    sleep(Duration::from_millis(500)).await;
                }
                Err(error) => break Err(error),
            },
        }
    };
    drop(listener);
    drop(end);
    let ended = async { while connections.join_next().await.is_some() {} };
    if timeout(ENDING, ended).await.is_err() {
        connections.shutdown().await;
    }
    outcome
}

/// Of one connection, or of a shortage that may pass.
fn is_passing(error: &io::Error) -> bool {
    !matches!(
        error.kind(),
        io::ErrorKind::InvalidInput | io::ErrorKind::NotConnected | io::ErrorKind::Unsupported
    )
}

/// Answers one connection with `router` within the limits of [`serve`], whatever it runs over, until
/// one of the two ends it.
///
/// # Errors
/// What ended it early: bytes that are no HTTP, a reader who stalls, too long a time.
pub async fn converse(
    stream: impl AsyncRead + AsyncWrite + Unpin + Send + 'static,
    router: Router,
) -> Result<(), Box<dyn std::error::Error + Send + Sync>> {
    // Nobody ends it from here, as long as this end of the channel lives.
    let (_goes_on, ending) = watch::channel(());
    answer(stream, router, ending).await
}

type Ended = Result<(), Box<dyn std::error::Error + Send + Sync>>;

/// Shakes hands where there is TLS, and answers.
async fn welcome(
    stream: TcpStream,
    router: Router,
    tls: Option<TlsAcceptor>,
    ending: watch::Receiver<()>,
) -> Ended {
    stream.set_nodelay(true)?;
    match tls {
        None => answer(stream, router, ending).await,
        Some(tls) => {
            let mut first = [0];
            if timeout(HEAD, stream.peek(&mut first)).await?? == 0 {
                return Ok(());
            }
            if first != [HANDSHAKE] {
                return answer(stream, to_tls::router(), ending).await;
            }
            let stream = timeout(HEAD, tls.accept(stream)).await??;
            answer(stream, router, ending).await
        }
    }
}

async fn answer(
    stream: impl AsyncRead + AsyncWrite + Unpin + Send + 'static,
    router: Router,
    mut ending: watch::Receiver<()>,
) -> Ended {
    let stream = TokioIo::new(Impatient::new(stream, STALL));
    let connection = http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(HEAD)
        .serve_connection(stream, TowerToHyperService::new(router));
    let mut connection = pin!(connection);
    let mut whole = pin!(sleep(WHOLE));
    let mut told = false;
    loop {
        tokio::select! {
            done = connection.as_mut() => return Ok(done?),
            () = &mut whole => return Err("it was open for too long".into()),
            // The sender sends nothing: it goes away when the server ends.
            _ = ending.changed(), if !told => {
                told = true;
                connection.as_mut().graceful_shutdown();
            }
        }
    }
}
