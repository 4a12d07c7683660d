//! Prepares a database for a gym's kiosks: tables, roles, and a password for each kiosk.
use crate::secret;
use crate::{HubError, is_kiosk_name};
use postgres_protocol::password::scram_sha_256;
use std::fmt::Write as _;
use std::path::PathBuf;

/// The tables and what guards them.
pub const SCHEMA: &str = include_str!("schema.sql");

/// Most kiosks of one gym that are prepared at once.
const KIOSKS_MAX: usize = 200;

/// What is to be prepared.
#[derive(Debug, Clone)]
pub struct Prepare {
    /// The gym's name.
    pub gym: String,
    /// Names of its kiosks, each a role.
    pub kiosks: Vec<String>,
    /// Where each kiosk's password lies, or is written: NAME.password.
    pub secrets: PathBuf,
}

impl Prepare {
    /// All of it as SQL in one transaction, for somebody who may make roles. It holds no password,
    /// only what proves one (SCRAM-SHA-256, RFC 5802).
    ///
    /// # Errors
    /// [`HubError::File`] when a name is none, or a password cannot be read or written.
    pub fn sql(&self) -> Result<String, HubError> {
        let wrong = |detail: String| HubError::File {
            path: self.secrets.clone(),
            detail,
        };
        let gym = self.gym.trim();
        if gym.is_empty() || gym.len() > 100 || gym.chars().any(char::is_control) {
            return Err(wrong(
                "the gym's name is empty, or over 100 bytes; name it".into(),
            ));
        }
        if self.kiosks.is_empty() || self.kiosks.len() > KIOSKS_MAX {
            let count = self.kiosks.len();
            return Err(wrong(format!(
                "{count} kiosks; name from 1 to {KIOSKS_MAX}"
            )));
        }
        let gym = quoted(gym);
        let mut sql = format!("BEGIN;\n{SCHEMA}\n");
        for kiosk in &self.kiosks {
            let reserved = kiosk.starts_with("pg_") || kiosk.starts_with("pinladder_");
            if !is_kiosk_name(kiosk) || reserved {
                let form = "use 1 to 40 of a-z, 0-9, - and _, and neither pg_ nor pinladder_ first";
                return Err(wrong(format!("\"{kiosk}\" is no name for a kiosk; {form}")));
            }
            let file = self.secrets.join(format!("{kiosk}.password"));
            let password = secret::password_or_new(&file)?;
            let proof = quoted(&scram_sha_256(password.as_bytes()));
            let name = quoted(kiosk);
            let written = write!(
                sql,
                include_str!("kiosk.sql"),
                kiosk = kiosk,
                name = name,
                gym = gym,
                proof = proof
            );
            written.expect("a text always grows");
        }
        sql.push_str("COMMIT;\n");
        Ok(sql)
    }
}

/// A text as SQL has it.
fn quoted(text: &str) -> String {
    format!("'{}'", text.replace('\'', "''"))
}
