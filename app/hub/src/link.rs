//! One connection to the hub, asked from a thread that may wait.
//!
//! Refuses: waiting without end; whoever pulls the cable is noticed after [`PATIENCE`].
use crate::secret;
use crate::tls::Tls;
use crate::{Address, HubError};
use journal::{Seal, Sealed};
use std::path::PathBuf;
use std::pin::Pin;
use std::time::Duration;
use tokio::runtime::{Builder, Runtime};
use tokio_postgres::config::SslMode;
use tokio_postgres::error::SqlState;
use tokio_postgres::{Client, Config, Error, NoTls, Row};

/// How long an answer is waited for.
pub(crate) const PATIENCE: Duration = Duration::from_secs(30);
const CONNECT: Duration = Duration::from_secs(10);

/// Files beside the address.
#[derive(Debug, Clone)]
pub struct Places {
    /// The password's.
    pub password: PathBuf,
    /// The certificates' by which the server is believed.
    pub roots: PathBuf,
}

/// How far a kiosk has come in the hub.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Head {
    /// Its name.
    pub kiosk: String,
    /// The number of its last event.
    pub seq: u64,
    /// That event's seal.
    pub seal: Seal,
}

type Waiting = Pin<Box<dyn Future<Output = Result<(), Error>> + Send>>;

/// An open connection. After an error it is to be dropped.
pub struct Link {
    runtime: Runtime,
    client: Client,
    connection: Waiting,
    address: Address,
}

impl std::fmt::Debug for Link {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_tuple("Link").field(&self.address).finish()
    }
}

impl Link {
    /// Goes to the hub and says who we are.
    ///
    /// # Errors
    /// [`HubError`]: no answer, not let in, a way that is open to others.
    pub fn open(address: &Address, places: &Places) -> Result<Self, HubError> {
        let mut config = Config::new();
        config
            .host(&address.host)
            .port(address.port)
            .user(&address.kiosk)
            .dbname(&address.database)
            .application_name("pinladder")
            .connect_timeout(CONNECT)
            .tcp_user_timeout(PATIENCE)
            .keepalives_idle(PATIENCE)
            .options("-c statement_timeout=25s -c lock_timeout=10s");
        if let Some(password) = secret::password(&places.password)? {
            config.password(password);
        }
        let tls = Tls::by(&places.roots)?;
        if tls.is_none() && !address.is_without_tls() {
            let server = address.server();
            return Err(HubError::Open { server });
        }
        let runtime = Builder::new_current_thread().enable_all().build()?;
        let begun =
            runtime.block_on(async { tokio::time::timeout(CONNECT * 2, begin(config, tls)).await });
        let (client, connection) = match begun {
            Ok(begun) => begun.map_err(|error| refused(address, &error))?,
            Err(_) => return Err(silent(address)),
        };
        Ok(Self {
            runtime,
            client,
            connection,
            address: address.clone(),
        })
    }

    /// As whom, and where.
    #[must_use]
    pub fn address(&self) -> &Address {
        &self.address
    }

    /// How far this kiosk has come.
    ///
    /// # Errors
    /// [`HubError::Unprepared`] when the hub has no such kiosk; else as for all.
    pub fn head(&mut self) -> Result<Head, HubError> {
        let heads = self.heads()?;
        let own = heads
            .into_iter()
            .find(|head| head.kiosk == self.address.kiosk);
        own.ok_or_else(|| unprepared(&self.address))
    }

    /// How far each kiosk of this one's gym has come, by name.
    ///
    /// # Errors
    /// [`HubError`].
    pub fn heads(&mut self) -> Result<Vec<Head>, HubError> {
        let sql = "SELECT kiosk, last_seq, last_seal FROM pinladder.kiosks ORDER BY kiosk";
        let rows = self.ask(async |client| client.query(sql, &[]).await)?;
        let head = |row: &Row| {
            Some(Head {
                kiosk: row.try_get(0).ok()?,
                seq: u64::try_from(row.try_get::<_, i64>(1).ok()?).ok()?,
                seal: row.try_get::<_, &[u8]>(2).ok()?.try_into().ok()?,
            })
        };
        let heads: Option<Vec<Head>> = rows.iter().map(head).collect();
        heads.ok_or_else(|| self.odd())
    }

    /// Events of a kiosk from number `from` on, oldest first, at most `most`.
    ///
    /// # Errors
    /// [`HubError`].
    pub fn events(&mut self, kiosk: &str, from: u64, most: i64) -> Result<Vec<Sealed>, HubError> {
        let sql = "SELECT seq, at_ms, version, kind, body, seal FROM pinladder.events \
                   WHERE kiosk = $1 AND seq >= $2 ORDER BY seq LIMIT $3";
        let from = i64::try_from(from).unwrap_or(i64::MAX);
        let rows = self.ask(async |client| client.query(sql, &[&kiosk, &from, &most]).await)?;
        let sealed = |row: &Row| {
            Some(Sealed {
                seq: u64::try_from(row.try_get::<_, i64>(0).ok()?).ok()?,
                at_ms: row.try_get(1).ok()?,
                version: u32::try_from(row.try_get::<_, i32>(2).ok()?).ok()?,
                kind: row.try_get(3).ok()?,
                body: row.try_get(4).ok()?,
                seal: row.try_get::<_, &[u8]>(5).ok()?.try_into().ok()?,
            })
        };
        let events: Option<Vec<Sealed>> = rows.iter().map(sealed).collect();
        events.ok_or_else(|| self.odd())
    }

    /// Runs statements without an answer.
    ///
    /// # Errors
    /// [`HubError`].
    pub fn run(&mut self, sql: &str) -> Result<(), HubError> {
        self.ask(async |client| client.batch_execute(sql).await)
    }

    /// Asks, and waits for the answer.
    fn ask<T>(
        &mut self,
        work: impl AsyncFnOnce(&Client) -> Result<T, Error>,
    ) -> Result<T, HubError> {
        let answered = self.answered(work)?;
        answered.map_err(|error| refused(&self.address, &error))
    }

    /// As [`Link::ask`], with the library's error where the hub answered.
    pub(crate) fn answered<T>(
        &mut self,
        work: impl AsyncFnOnce(&Client) -> Result<T, Error>,
    ) -> Result<Result<T, Error>, HubError> {
        let (client, connection) = (&self.client, &mut self.connection);
        let answer = self.runtime.block_on(async {
            let both = async {
                tokio::select! {
                    answer = work(client) => Some(answer),
                    ended = connection.as_mut() => match ended {
                        Err(error) => Some(Err(error)),
                        Ok(()) => None,
                    },
                }
            };
            tokio::time::timeout(PATIENCE, both).await
        });
        match answer {
            Ok(Some(answer)) => Ok(answer),
            Ok(None) | Err(_) => Err(silent(&self.address)),
        }
    }

    fn odd(&self) -> HubError {
        HubError::Failed {
            server: self.address.server(),
            detail: "its rows are not those of this program".into(),
        }
    }
}

async fn begin(config: Config, tls: Option<Tls>) -> Result<(Client, Waiting), Error> {
    let mut config = config;
    if let Some(tls) = tls {
        config.ssl_mode(SslMode::Require);
        let (client, connection) = config.connect(tls).await?;
        return Ok((client, Box::pin(connection)));
    }
    config.ssl_mode(SslMode::Disable);
    let (client, connection) = config.connect(NoTls).await?;
    Ok((client, Box::pin(connection)))
}

fn silent(address: &Address) -> HubError {
    HubError::Away {
        server: address.server(),
        detail: "no answer".into(),
    }
}

fn unprepared(address: &Address) -> HubError {
    HubError::Unprepared {
        server: address.server(),
        kiosk: address.kiosk.clone(),
    }
}

/// What the library says, with what lies beneath.
pub(crate) fn said(error: &Error) -> String {
    if let Some(told) = error.as_db_error() {
        return told.message().to_owned();
    }
    let beneath = std::error::Error::source(error);
    beneath.map_or_else(|| error.to_string(), ToString::to_string)
}

/// What an error of the library means here.
pub(crate) fn refused(address: &Address, error: &Error) -> HubError {
    let (server, kiosk, detail) = (address.server(), address.kiosk.clone(), said(error));
    let Some(code) = error.code() else {
        return HubError::Away { server, detail };
    };
    let unknown = [
        SqlState::UNDEFINED_TABLE,
        SqlState::INVALID_SCHEMA_NAME,
        SqlState::INVALID_CATALOG_NAME,
        SqlState::INSUFFICIENT_PRIVILEGE,
        SqlState::UNDEFINED_FUNCTION,
    ];
    if unknown.contains(code) {
        return HubError::Unprepared { server, kiosk };
    }
    match code.code().get(..2) {
        Some("28") => HubError::Refused {
            server,
            kiosk,
            detail,
        },
        // Starting, ending, full, cancelled.
        Some("57" | "53" | "08") => HubError::Away { server, detail },
        _ => HubError::Failed { server, detail },
    }
}
