//! A thread that looks at what lies around the kiosk, and tells the owner what has changed.
use crate::folder::Folder;
use crate::input::Input;
use crate::kiosk::Kiosk;
use crate::nearby::Nearby;
use crate::watch::{spawn_again, stand_back};
use domain::Gym;
use std::sync::Arc;
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::time::Duration;

/// Between two looks.
const LOOK: Duration = Duration::from_secs(2);

/// Whoever looks.
#[derive(Debug)]
pub(crate) struct Looker {
    gyms: Sender<Arc<Gym>>,
    told: Option<Arc<Gym>>,
}

impl Looker {
    /// Starts the thread; what has changed comes as [`Input::Nearby`].
    pub(crate) fn start(folder: &Folder, inputs: Sender<Input>) -> Self {
        let (gyms, inbox) = channel();
        let folder = folder.clone();
        let thread = spawn_again("nearby", move || {
            stand_back();
            look_on(&folder, &inbox, &inputs);
        });
        if let Err(error) = thread {
            tracing::error!(%error, "plans are not looked at: the system gives no thread");
        }
        Self { gyms, told: None }
    }

    /// Hands over the gym that plans are read with, where it has changed.
    pub(crate) fn follow(&mut self, kiosk: &Kiosk) {
        let gym = kiosk.shared_gym();
        if self
            .told
            .as_ref()
            .is_none_or(|told| !Arc::ptr_eq(told, gym))
        {
            self.told = Some(gym.clone());
            // It fails where there is no thread, which was told.
            drop(self.gyms.send(gym.clone()));
        }
    }
}

/// Looks again and again, and tells what has changed, until nobody listens.
fn look_on(folder: &Folder, inbox: &Receiver<Arc<Gym>>, inputs: &Sender<Input>) {
    let Ok(mut gym) = inbox.recv() else { return };
    let mut last = Nearby::default();
    loop {
        let now = Nearby::look(folder, &gym, &last);
        let news = !now.is_as(&last);
        last = now;
        if news && inputs.send(Input::Nearby(Box::new(last.clone()))).is_err() {
            return;
        }
        match inbox.recv_timeout(LOOK) {
            Ok(next) => gym = next,
            Err(RecvTimeoutError::Timeout) => {}
            Err(RecvTimeoutError::Disconnected) => return,
        }
    }
}
