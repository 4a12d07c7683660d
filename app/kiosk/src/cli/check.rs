//! `pinladder check FILE...`. Refuses: stopping at the first fault, or changing anything.
use super::{Streams, say};
use crate::error::KioskError;
use crate::folder::{DEMO, Folder};
use domain::Gym;
use plan::Source;
use std::path::{Path, PathBuf};

/// Each file as it was read: path as given, file name, bytes.
type Texts = Vec<(PathBuf, String, Vec<u8>)>;

pub(super) fn check(
    files: &[PathBuf],
    data: Option<&Path>,
    streams: &mut Streams<'_>,
) -> Result<bool, KioskError> {
    let mut texts: Texts = Vec::new();
    for path in files {
        let text = std::fs::read(path).map_err(KioskError::file(path))?;
        let name = path
            .file_name()
            .map(|n| n.to_string_lossy().into_owned())
            .unwrap_or_default();
        texts.push((path.clone(), name, text));
    }
    let gym = gym_for(&texts, data)?;
    let mut well = true;
    for (path, name, text) in &texts {
        let faults = plan::check(Source { name, text }, gym.as_ref());
        if faults.is_empty() {
            say(streams.out, &format!("{}: no fault\n", path.display()));
        }
        for fault in faults {
            well &= !fault.stops();
            say(streams.out, &format!("{fault}\n"));
        }
    }
    Ok(well)
}

/// The gym that plans and lifters are checked against: the files on the command line first, then
/// those in the data folder, then the demo gym's.
fn gym_for(texts: &Texts, data: Option<&Path>) -> Result<Option<Gym>, KioskError> {
    let folder = Folder::open(data)?;
    let find = |name: &str| -> Result<Vec<u8>, KioskError> {
        if let Some((.., text)) = texts.iter().find(|(_, n, _)| n == name) {
            return Ok(text.clone());
        }
        if let Some(text) = folder.text(name)? {
            return Ok(text.into_bytes());
        }
        let demo = DEMO.iter().find(|(n, _)| *n == name).map(|(_, text)| *text);
        Ok(demo.unwrap_or_default().as_bytes().to_vec())
    };
    let (gym, lifters) = (find("gym.toml")?, find("lifters.toml")?);
    let source = |name: &'static str, text| Source { name, text };
    Ok(plan::gym(source("gym.toml", &gym), source("lifters.toml", &lifters)).ok())
}
