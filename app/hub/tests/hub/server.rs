//! A PostgreSQL server of the system's packages on loopback, begun and ended by the test.
//!
//! Where none is installed the test says that it was not run, unless PINLADDER_POSTGRES=1 asks for
//! it.
use std::fs;
use std::net::{Ipv4Addr, TcpListener};
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

pub(crate) const OWNER: &str = "owner";
const DATABASE: &str = "pinladder";

/// A server with an empty database and its owner.
pub(crate) struct Server {
    programs: PathBuf,
    folder: tempfile::TempDir,
    pub(crate) port: u16,
}

/// The folder of the server's programs, of the latest version that is installed.
fn programs() -> Option<PathBuf> {
    let mut found: Vec<(u32, PathBuf)> = fs::read_dir("/usr/lib/postgresql")
        .into_iter()
        .flatten()
        .flatten()
        .filter_map(|entry| {
            let version = entry.file_name().to_str()?.parse().ok()?;
            let bin = entry.path().join("bin");
            bin.join("initdb").is_file().then_some((version, bin))
        })
        .collect();
    found.sort();
    Some(found.pop()?.1)
}

/// The server refuses to run as root: then it runs as the user that its package made.
fn unprivileged(program: &Path) -> Command {
    let id = Command::new("id").arg("-u").output().expect("id is there");
    if id.stdout.trim_ascii() != b"0" {
        return Command::new(program);
    }
    let mut command = Command::new("runuser");
    command.args(["-u", "postgres", "--"]).arg(program);
    command
}

fn done(what: &str, output: &Output) {
    let said = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{what}: {said}");
}

#[allow(clippy::print_stderr, reason = "a test that is not run says so")]
fn not_run(why: &str) {
    eprintln!("not run: {why}");
}

impl Server {
    /// A server, or nothing where none is installed and none is asked for.
    pub(crate) fn start() -> Option<Self> {
        Self::start_with("fsync=off")
    }

    /// As [`Server::start`], with one setting.
    pub(crate) fn start_with(setting: &str) -> Option<Self> {
        let Some(programs) = programs() else {
            assert!(
                std::env::var_os("PINLADDER_POSTGRES").is_none_or(|asked| asked != "1"),
                "PINLADDER_POSTGRES=1 asks for it, and no server is under /usr/lib/postgresql"
            );
            not_run("no PostgreSQL server is installed (apt-get install postgresql)");
            return None;
        };
        let folder = tempfile::tempdir().expect("a folder");
        let secret = folder.path().join("owner.password");
        fs::write(&secret, "invented-for-the-test\n").expect("writes");
        let chmod = Command::new("chmod").arg("777").arg(folder.path()).status();
        assert!(chmod.expect("chmod is there").success());
        let data = folder.path().join("data");
        let made = unprivileged(&programs.join("initdb"))
            .args([
                "--auth=scram-sha-256",
                "--encoding=UTF8",
                "--locale=C",
                "--no-sync",
            ])
            .args(["-U", OWNER])
            .arg(format!("--pwfile={}", secret.display()))
            .arg(format!("--pgdata={}", data.display()))
            .output();
        done("initdb", &made.expect("initdb runs"));
        private(&secret);
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).expect("loopback");
        let port = listener.local_addr().expect("an address").port();
        drop(listener);
        let server = Self {
            programs,
            folder,
            port,
        };
        server.set(&format!("{setting}\nautovacuum=off\n"));
        server.up();
        let made = server.psql("postgres", &format!("CREATE DATABASE {DATABASE}"));
        done("create database", &made);
        Some(server)
    }

    fn data(&self) -> PathBuf {
        self.folder.path().join("data")
    }

    fn set(&self, settings: &str) {
        let text = format!(
            "listen_addresses='127.0.0.1'\nport={}\nunix_socket_directories='{}'\n{settings}",
            self.port,
            self.folder.path().display()
        );
        fs::write(self.folder.path().join("own.conf"), text).expect("writes");
        let include = format!(
            "include '{}'\n",
            self.folder.path().join("own.conf").display()
        );
        let main = self.data().join("postgresql.conf");
        let mut all = fs::read_to_string(&main).expect("reads");
        if !all.contains(&include) {
            all.push_str(&include);
            fs::write(&main, all).expect("writes");
        }
    }

    fn pg_ctl(&self, args: &[&str]) -> Output {
        let mut command = unprivileged(&self.programs.join("pg_ctl"));
        command.arg("-D").arg(self.data()).args(args);
        command.stdin(Stdio::null());
        command.output().expect("pg_ctl runs")
    }

    /// Starts it.
    pub(crate) fn up(&self) {
        let log = self.folder.path().join("log");
        // Without the pipes, which the server would hold open for ever.
        let mut command = unprivileged(&self.programs.join("pg_ctl"));
        command
            .arg("-D")
            .arg(self.data())
            .args(["-w", "start", "-l"])
            .arg(&log);
        command
            .stdin(Stdio::null())
            .stdout(Stdio::null())
            .stderr(Stdio::null());
        let status = command.status().expect("pg_ctl runs");
        let said = fs::read_to_string(&log).unwrap_or_default();
        assert!(status.success(), "the server does not start: {said}");
    }

    /// Ends it at once, as a cut plug does.
    pub(crate) fn kill(&self) {
        drop(self.pg_ctl(&["-m", "immediate", "stop"]));
    }

    /// A copy of all that it holds, while it is down.
    pub(crate) fn keep(&self, name: &str) {
        self.copy(&self.data(), &self.folder.path().join(name));
    }

    /// Puts such a copy back, while it is down.
    pub(crate) fn put_back(&self, name: &str) {
        let gone = Command::new("rm").arg("-rf").arg(self.data()).status();
        assert!(gone.expect("rm is there").success());
        self.copy(&self.folder.path().join(name), &self.data());
    }

    fn copy(&self, from: &Path, to: &Path) {
        let copied = Command::new("cp").arg("-a").arg(from).arg(to).status();
        assert!(copied.expect("cp is there").success());
    }

    /// One statement as the owner of all.
    pub(crate) fn sql(&self, sql: &str) -> String {
        let output = self.psql(DATABASE, sql);
        done(sql, &output);
        String::from_utf8_lossy(&output.stdout).trim().to_owned()
    }

    /// Statements as somebody, and whether they were taken.
    pub(crate) fn sql_as(&self, who: &str, password: &str, sql: &str) -> Result<String, String> {
        let output = self.ask(DATABASE, (who, password), sql);
        if output.status.success() {
            return Ok(String::from_utf8_lossy(&output.stdout).trim().to_owned());
        }
        Err(String::from_utf8_lossy(&output.stderr).into_owned())
    }

    fn psql(&self, database: &str, sql: &str) -> Output {
        self.ask(database, (OWNER, "invented-for-the-test"), sql)
    }

    fn ask(&self, database: &str, (who, password): (&str, &str), sql: &str) -> Output {
        use std::io::Write as _;
        let mut psql = Command::new(self.programs.join("psql"))
            .args(["-X", "-q", "-A", "-t", "-v", "ON_ERROR_STOP=1", "-f", "-"])
            .args([
                "-h",
                "127.0.0.1",
                "-p",
                &self.port.to_string(),
                "-U",
                who,
                database,
            ])
            .env("PGPASSWORD", password)
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .expect("psql runs");
        let mut input = psql.stdin.take().expect("its input");
        input.write_all(sql.as_bytes()).expect("it reads");
        drop(input);
        psql.wait_with_output().expect("it ends")
    }

    /// The address of one who speaks there.
    pub(crate) fn address(&self, who: &str) -> hub::Address {
        let text = format!("postgresql://{who}@127.0.0.1:{}/{DATABASE}", self.port);
        hub::Address::read(&text).expect("an address")
    }

    /// Has it speak TLS from now on with a certificate of that name, made by OpenSSL; gives the
    /// certificate's file. Nothing where there is no OpenSSL.
    pub(crate) fn under_tls(&self, name: &str) -> Option<PathBuf> {
        let place = |end: &str| self.folder.path().join(format!("{name}.{end}"));
        if !place("crt").exists() {
            let made = Command::new("openssl")
                .args([
                    "req", "-new", "-x509", "-days", "2", "-nodes", "-subj", "/CN=hub", "-keyout",
                ])
                .arg(place("key"))
                .arg("-out")
                .arg(place("crt"))
                .output();
            let Ok(made) = made else {
                not_run("no openssl is installed");
                return None;
            };
            done("openssl", &made);
        }
        let mut own = Command::new("chown");
        own.arg("--reference")
            .arg(self.data())
            .arg(place("key"))
            .arg(place("crt"));
        assert!(own.status().expect("chown is there").success());
        private(&place("key"));
        let (crt, key) = (place("crt"), place("key"));
        let (crt, key) = (crt.display(), key.display());
        self.set(&format!(
            "fsync=off\nssl=on\nssl_cert_file='{crt}'\nssl_key_file='{key}'\n"
        ));
        self.kill();
        self.up();
        Some(place("crt"))
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        drop(self.pg_ctl(&["-m", "immediate", "stop"]));
        let gone = Command::new("rm").arg("-rf").arg(self.data()).status();
        drop(gone);
    }
}

fn private(path: &Path) {
    use std::os::unix::fs::PermissionsExt as _;
    fs::set_permissions(path, fs::Permissions::from_mode(0o600)).expect("is ours");
}
