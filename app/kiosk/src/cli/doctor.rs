//! `pinladder doctor`: what is well and what is not, and what to do. Refuses: changing anything.
use super::say;
use crate::doctor::{How, is_well, look};
use crate::error::KioskError;
use std::io::Write;
use std::path::Path;

pub(super) fn doctor(data: &Path, json: bool, out: &mut dyn Write) -> Result<bool, KioskError> {
    let findings = look(data, Path::new("/"));
    let well = is_well(&findings);
    if json {
        let all = serde_json::json!({ "well": well, "findings": findings });
        say(out, &format!("{all:#}\n"));
        return Ok(well);
    }
    for finding in &findings {
        let how = match finding.how {
            How::Fine => "fine",
            How::Off => "off",
            How::Soon => "see to it",
            How::Wrong => "wrong",
        };
        say(
            out,
            &format!("{} ({how}): {}\n", finding.what, finding.found),
        );
        if !finding.to_do.is_empty() {
            say(out, &format!("    {}\n", finding.to_do));
        }
    }
    Ok(well)
}
