//! The LAN's thread: the page, and the system's signals.
//!
//! Refuses: delaying a tap; it shares nothing with the owner but a file that it only reads.
use crate::run::Input;
use crate::watch::spawn_again;
use std::net::SocketAddr;
use std::path::{Path, PathBuf};
use std::sync::mpsc::Sender;
use std::time::Duration;
use tokio::signal::unix::{SignalKind, signal};

/// Before an address that is taken is tried again.
const AGAIN_AFTER: Duration = Duration::from_secs(10);

/// Starts the thread; without an address it only listens for signals.
pub fn start(at: Option<SocketAddr>, record: PathBuf, inputs: Sender<Input>) {
    let thread = spawn_again("lan", move || {
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_all()
            .build();
        match runtime {
            Ok(runtime) => runtime.block_on(both(at, &record, &inputs)),
            Err(error) => tracing::error!(%error, "no LAN page: the system gives no event loop"),
        }
    });
    if let Err(error) = thread {
        tracing::error!(%error, "no LAN page: the system gives no thread");
    }
}

async fn both(at: Option<SocketAddr>, record: &Path, inputs: &Sender<Input>) {
    tokio::select! {
        () = interrupted() => drop(inputs.send(Input::Quit)),
        () = serve(at, record) => {}
    }
}

/// Returns when the system asks us to end.
async fn interrupted() {
    let both =
        signal(SignalKind::interrupt()).and_then(|i| Ok((i, signal(SignalKind::terminate())?)));
    match both {
        Ok((mut interrupt, mut terminate)) => tokio::select! {
            _ = interrupt.recv() => {}
            _ = terminate.recv() => {}
        },
        Err(error) => {
            tracing::error!(%error, "signals cannot be heard; the kiosk ends only by force");
            std::future::pending::<()>().await;
        }
    }
}

/// Serves the page for ever; an address that is taken is tried again.
async fn serve(at: Option<SocketAddr>, record: &Path) {
    let Some(at) = at else {
        return std::future::pending().await;
    };
    loop {
        match share::bind(at).await {
            Ok(listener) => {
                tracing::info!(%at, "the LAN page is on");
                let router = share::router(record.to_path_buf());
                if let Err(error) =
                    share::serve(listener, router, std::future::pending::<()>()).await
                {
                    tracing::error!(%error, "the LAN page ended");
                }
            }
            Err(error) => {
                tracing::error!(%error, "no LAN page");
            }
        }
        tokio::time::sleep(AGAIN_AFTER).await;
    }
}
