//! Hears the system's signals to end, on a thread that does nothing else: whatever becomes of the
//! page, the kiosk ends when it is asked to.
use crate::input::Input;
use crate::watch::spawn_again;
use std::sync::mpsc::{Sender, channel};
use tokio::signal::unix::{Signal, SignalKind, signal};

/// Starts the thread; SIGINT and SIGTERM become [`Input::Quit`]. On return they are heard, so that
/// a start that is asked to end at once ends in order too.
pub fn start(inputs: Sender<Input>) {
    let (heard, wait) = channel();
    let thread = spawn_again("signals", move || {
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_all()
            .build();
        match runtime {
            Ok(runtime) => {
                runtime.block_on(interrupted(&heard));
                // A send fails only when the owner has ended.
                drop(inputs.send(Input::Quit));
            }
            Err(error) => tracing::error!(%error, "no event loop: signals cannot be heard"),
        }
    });
    if let Err(error) = thread {
        tracing::error!(%error, "signals cannot be heard: the system gives no thread");
    }
    // A thread that ended unheard has told why, and has dropped its end.
    wait.recv().unwrap_or_default();
}

/// Returns when the system asks us to end; tells `heard` as soon as that would be noticed.
async fn interrupted(heard: &Sender<()>) {
    let both = both();
    // The start waits for the first word alone.
    heard.send(()).unwrap_or_default();
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

fn both() -> std::io::Result<(Signal, Signal)> {
    Ok((
        signal(SignalKind::interrupt())?,
        signal(SignalKind::terminate())?,
    ))
}
