//! Sends the events of this kiosk's journal that the hub does not have, in order.
//!
//! Refuses: sending anything where the hub's last event of this kiosk is not in the journal: a box
//! that was put back, or copied, is told, and nothing is overwritten.
use crate::link::{Link, refused, said};
use crate::{Head, HubError};
use journal::{Sealed, SealedReader};
use tokio_postgres::error::SqlState;

/// Events that are sent at once, and bytes of their bodies.
const ROWS: u32 = 1_000;
const BYTES: usize = 1 << 20;

/// How often the hub is asked anew how far this kiosk has come because it took something else.
const TRIES_MAX: u32 = 3;

/// What was sent.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Sent {
    /// How many events.
    pub events: u64,
    /// The last event that the hub has.
    pub upto: u64,
}

/// Sends what the hub does not have. `goes_on` is asked after each portion.
///
/// # Errors
/// [`HubError::Behind`], [`HubError::Forked`] when the journal is not the one that the hub knows;
/// [`HubError::NotTaken`]; else as for all. What arrived before stands.
pub fn send(
    link: &mut Link,
    journal: &SealedReader,
    mut goes_on: impl FnMut() -> bool,
) -> Result<Sent, HubError> {
    let mut head = known(link, journal)?;
    let mut sent = Sent {
        events: 0,
        upto: head.seq,
    };
    let mut tries = 0;
    loop {
        let rows = journal.after(head.seq, ROWS, BYTES)?;
        let Some(last) = rows.last() else {
            return Ok(sent);
        };
        match insert(link, &rows)? {
            Ok(()) => {
                sent.events += rows.len() as u64;
                sent.upto = last.seq;
                (head.seq, head.seal) = (last.seq, last.seal);
            }
            // Somebody sends under this name, or an answer of ours was lost: who is told by the
            // hub's last event.
            Err(detail) => {
                let now = known(link, journal)?;
                tries += 1;
                if now == head || tries > TRIES_MAX {
                    return Err(HubError::NotTaken {
                        kiosk: head.kiosk,
                        seq: head.seq + 1,
                        detail,
                    });
                }
                (sent.upto, head) = (now.seq, now);
            }
        }
        if !goes_on() {
            return Ok(sent);
        }
    }
}

/// How far this kiosk has come in the hub, where its journal has that very event.
fn known(link: &mut Link, journal: &SealedReader) -> Result<Head, HubError> {
    let head = link.head()?;
    let kiosk = head.kiosk.clone();
    match journal.seal_of(head.seq)? {
        Some(seal) if seal == head.seal => Ok(head),
        Some(_) => Err(HubError::Forked {
            kiosk,
            seq: head.seq,
        }),
        None => Err(HubError::Behind {
            kiosk,
            there: head.seq,
            here: journal.last()?.0,
        }),
    }
}

/// Adds rows in one statement. The inner error is that they did not fit what stands.
fn insert(link: &mut Link, rows: &[Sealed]) -> Result<Result<(), String>, HubError> {
    let number = |at: u64| i64::try_from(at).unwrap_or(i64::MAX);
    let seqs: Vec<i64> = rows.iter().map(|row| number(row.seq)).collect();
    let ats: Vec<i64> = rows.iter().map(|row| row.at_ms).collect();
    let version = |row: &Sealed| i32::try_from(row.version).unwrap_or(i32::MAX);
    let versions: Vec<i32> = rows.iter().map(version).collect();
    let kinds: Vec<&str> = rows.iter().map(|row| row.kind.as_str()).collect();
    let bodies: Vec<&str> = rows.iter().map(|row| row.body.as_str()).collect();
    let seals: Vec<&[u8]> = rows.iter().map(|row| &row.seal[..]).collect();
    let sql = "INSERT INTO pinladder.events \
               (kiosk, gym, seq, at_ms, version, kind, body, seal) \
               SELECT session_user::text, (SELECT pinladder.own_gym()), u.* \
               FROM unnest($1::bigint[], $2::bigint[], $3::integer[], $4::text[], $5::text[], \
               $6::bytea[]) AS u";
    let answer = link.answered(async |client| {
        let row = [
            &seqs as &(dyn tokio_postgres::types::ToSql + Sync),
            &ats,
            &versions,
            &kinds,
            &bodies,
            &seals,
        ];
        client.execute(sql, &row).await
    })?;
    let Err(error) = answer else {
        return Ok(Ok(()));
    };
    let unfit = [
        SqlState::UNIQUE_VIOLATION,
        SqlState::T_R_SERIALIZATION_FAILURE,
        SqlState::T_R_DEADLOCK_DETECTED,
    ];
    let code = error.code();
    let unfit = code.is_some_and(|code| unfit.contains(code) || code.code() == "PL001");
    match unfit {
        true => Ok(Err(said(&error))),
        false => Err(refused(link.address(), &error)),
    }
}
