//! Hears the system's signals to end, on a thread that does nothing else: whatever becomes of the
//! page, the kiosk ends when it is asked to.
use crate::input::Input;
use crate::watch::spawn_again;
use std::sync::mpsc::Sender;
use tokio::signal::unix::{SignalKind, signal};

/// Starts the thread; SIGINT and SIGTERM become [`Input::Quit`].
pub fn start(inputs: Sender<Input>) {
    let thread = spawn_again("signals", move || {
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_all()
            .build();
        match runtime {
            Ok(runtime) => {
                runtime.block_on(interrupted());
                // A send fails only when the owner has ended.
                drop(inputs.send(Input::Quit));
            }
            Err(error) => tracing::error!(%error, "no event loop: signals cannot be heard"),
        }
    });
    if let Err(error) = thread {
        tracing::error!(%error, "signals cannot be heard: the system gives no thread");
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
