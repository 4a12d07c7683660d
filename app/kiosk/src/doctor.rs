//! Looks at all that a rack's box needs, and says of each how it is and what to do, a sentence each.
//!
//! Refuses: changing anything in the data folder, and stopping at the first thing that is wrong. It
//! looks beside a running kiosk, and into a damaged folder.
mod data;
mod machine;
mod net;

use crate::clock::{Clock as _, SystemClock};
use serde::Serialize;
use std::path::{Path, PathBuf};

/// How something is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum How {
    /// As it should be.
    Fine,
    /// Not in use, or nobody can tell from here.
    Off,
    /// It works, and somebody should see to it.
    Soon,
    /// It does not work.
    Wrong,
}

/// One finding.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Finding {
    /// What was looked at: data, disk, clock, screen, touch, devices, lan, certificate, copies, hub.
    pub what: &'static str,
    /// How it is.
    pub how: How,
    /// What was found.
    pub found: String,
    /// What to do; empty where there is nothing.
    #[serde(rename = "do")]
    pub to_do: String,
}

impl Finding {
    fn new(what: &'static str, how: How, found: impl Into<String>) -> Self {
        Self {
            what,
            how,
            found: found.into(),
            to_do: String::new(),
        }
    }

    fn so(mut self, to_do: impl Into<String>) -> Self {
        self.to_do = to_do.into();
        self
    }
}

/// A data folder that may not be there, may be damaged, and is only looked at.
#[derive(Debug)]
struct Patient {
    data: PathBuf,
    /// The settings, where they can be read.
    config: Result<plan::Kiosk, String>,
}

impl Patient {
    fn of(data: &Path) -> Self {
        let path = data.join("kiosk.toml");
        let config = match std::fs::read(&path) {
            Ok(text) => {
                let name = "kiosk.toml";
                let source = plan::Source { name, text: &text };
                plan::kiosk(source, None).map_err(|faults| {
                    let first = faults.first().map(ToString::to_string);
                    first.unwrap_or_else(|| "kiosk.toml cannot be read".into())
                })
            }
            Err(why) if why.kind() == std::io::ErrorKind::NotFound => Ok(plan::Kiosk::default()),
            Err(why) => Err(format!("kiosk.toml: {why}")),
        };
        Self {
            data: data.to_owned(),
            config,
        }
    }

    fn settings(&self) -> Option<&plan::Kiosk> {
        self.config.as_ref().ok()
    }
}

/// Looks at everything; `root` is "/", or where a test lays out a machine.
#[must_use]
pub fn look(data: &Path, root: &Path) -> Vec<Finding> {
    let patient = Patient::of(data);
    let now = SystemClock.look();
    let (data, last) = data::journal(&patient);
    let mut all = vec![data];
    all.extend(data::files(&patient));
    all.push(machine::disk(&patient.data));
    all.push(machine::clock(now.wall, last, root));
    all.push(machine::screen(root));
    all.push(machine::touch(root));
    all.push(machine::devices(&patient.data, root));
    all.push(net::lan(&patient));
    all.push(net::certificate(&patient));
    all.push(data::copies(&patient));
    all.push(net::hub(&patient));
    all
}

/// Whether nothing is wrong.
#[must_use]
pub fn is_well(findings: &[Finding]) -> bool {
    findings.iter().all(|finding| finding.how != How::Wrong)
}
