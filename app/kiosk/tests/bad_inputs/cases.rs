//! Bad files, days, names and loads, and the commands that take them.

/// How it must end.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Want {
    /// Exit code 1.
    Refusal,
    /// Exit code 2.
    Usage,
    /// Exit code 0, and the answer tells it.
    Told,
}

/// One command line with what is piped in.
#[derive(Debug, Clone)]
pub(crate) struct Case {
    pub(crate) what: String,
    pub(crate) words: Vec<String>,
    pub(crate) input: Vec<u8>,
    pub(crate) want: Want,
    /// Whether the data folder is named before the words.
    pub(crate) in_folder: bool,
}

impl Case {
    pub(crate) fn of(what: &str, words: &[&str]) -> Self {
        Self {
            what: what.to_owned(),
            words: words.iter().map(|word| (*word).to_owned()).collect(),
            input: Vec::new(),
            want: Want::Refusal,
            in_folder: true,
        }
    }

    /// Words parted by blanks; a blank within a word is written "~".
    pub(crate) fn line(what: &str, words: &str) -> Self {
        let words: Vec<String> = words
            .split(' ')
            .map(|word| word.replace('~', " "))
            .collect();
        let words: Vec<&str> = words.iter().map(String::as_str).collect();
        Self::of(what, &words)
    }

    pub(crate) fn usage(self) -> Self {
        let want = Want::Usage;
        Self { want, ..self }
    }

    pub(crate) fn told(self) -> Self {
        let want = Want::Told;
        Self { want, ..self }
    }

    pub(crate) fn with(self, input: impl Into<Vec<u8>>) -> Self {
        let input = input.into();
        Self { input, ..self }
    }

    /// The command, as the table's heading has it.
    pub(crate) fn surface(&self) -> &'static str {
        const TWO: [&str; 10] = [
            "hub prepare",
            "hub look",
            "hub exchange",
            "plan read",
            "plan blank",
            "journal verify",
            "journal backup",
            "journal restore",
            "journal mend",
            "journal rebuild",
        ];
        const ONE: [&str; 15] = [
            "doctor", "take", "check", "stick", "code", "sheet", "next", "reopen", "split",
            "single", "measure", "meet", "solve", "rehearse", "picture",
        ];
        let start = self
            .words
            .iter()
            .take(2)
            .cloned()
            .collect::<Vec<_>>()
            .join(" ");
        let two = TWO.into_iter().find(|name| start.starts_with(name));
        let first = self.words.first().cloned().unwrap_or_default();
        let one = ONE.into_iter().find(|name| *name == first);
        two.or(one).unwrap_or("pinladder")
    }
}

/// Bad files, by name.
pub(crate) fn files() -> Vec<(&'static str, Vec<u8>)> {
    let noise: Vec<u8> = (0..4_096_u32).map(|n| (n * 7_919 % 251) as u8).collect();
    let mut files = Vec::new();
    for ending in ["csv", "xlsx", "ods", "toml", "sqlite"] {
        let name = |stem: &str| -> &'static str { format!("{stem}.{ending}").leak() };
        files.push((name("empty"), Vec::new()));
        files.push((name("noise"), noise.clone()));
        files.push((name("zeros"), vec![0; 8_192]));
    }
    let head = b"date,lifter,lift,sets,reps,load\n".to_vec();
    files.push(("head.csv", head.clone()));
    let row = |row: &str| [head.clone(), row.as_bytes().to_vec()].concat();
    files.push(("day.csv", row("2026-13-45,Hamza,rack pull,3,5,100 kg\n")));
    files.push(("who.csv", row("2026-12-02,Nobody,rack pull,3,5,100 kg\n")));
    files.push(("what.csv", row("2026-12-02,Hamza,juggling,3,5,100 kg\n")));
    files.push(("load.csv", row("2026-12-02,Hamza,rack pull,3,5,9e99 kg\n")));
    files.push(("minus.csv", row("2026-12-02,Hamza,rack pull,3,5,-5 kg\n")));
    files.push((
        "sets.csv",
        row("2026-12-02,Hamza,rack pull,4000000000,5,100 kg\n"),
    ));
    files.push(("short.csv", row("2026-12-02,Hamza\n")));
    files.push((
        "quote.csv",
        row("2026-12-02,\"Hamza,rack pull,3,5,100 kg\n"),
    ));
    files.push(("plan.pdf", b"%PDF-1.7\n".to_vec()));
    files.push(("there.csv", head));
    files.push(("gym.toml", b"[[rack]]\nholes = -3\n".to_vec()));
    files.push(("lifters.toml", b"[[lifter]]\nname = 5\n".to_vec()));
    files.push(("programme.toml", b"nonsense = true\n".to_vec()));
    files.push(("kiosk.toml", b"port = 99999999\n".to_vec()));
    files.push(("meet.toml", b"[[lifter]]\nopener = \"yes\"\n".to_vec()));
    files.push(("twice.toml", b"a = 1\na = 2\n".to_vec()));
    files
}

/// A file's name that is bad in a way that every reader of files meets.
pub(crate) const NAMES: [(&str, &str); 4] = [
    ("a file that is not there", "ROOM/none.csv"),
    ("a folder in its place", "ROOM/folder.csv"),
    ("nothing for a name", ""),
    ("a name of ten thousand letters", LONG),
];

pub(crate) const LONG: &str = {
    const LETTERS: [u8; 10_000] = [b'x'; 10_000];
    match std::str::from_utf8(&LETTERS) {
        Ok(text) => text,
        Err(_) => "",
    }
};

fn plans(command: &[&str]) -> Vec<Case> {
    let mut cases = Vec::new();
    let mut add = |what: &str, file: &str| {
        let words: Vec<&str> = command.iter().copied().chain([file]).collect();
        let case = Case::of(what, &words);
        cases.push(if file.is_empty() { case.usage() } else { case });
    };
    for (what, file) in NAMES {
        add(what, file);
    }
    for ending in ["csv", "xlsx", "ods"] {
        add(
            &format!("an empty {ending}"),
            &format!("ROOM/empty.{ending}"),
        );
        add(
            &format!("noise as {ending}"),
            &format!("ROOM/noise.{ending}"),
        );
        add(
            &format!("zeros as {ending}"),
            &format!("ROOM/zeros.{ending}"),
        );
    }
    add("a PDF", "ROOM/plan.pdf");
    for (what, name) in [
        ("titles and no row", "head"),
        ("a day that no month has", "day"),
        ("a lifter who is not in the gym", "who"),
        ("a lift that nobody knows", "what"),
        ("a load beyond all bounds", "load"),
        ("a load below nothing", "minus"),
        ("sets beyond all bounds", "sets"),
        ("a row that ends early", "short"),
        ("a quotation mark that is not closed", "quote"),
    ] {
        add(what, &format!("ROOM/{name}.csv"));
    }
    cases
}

/// Those of files, days, names and loads.
pub(crate) fn all() -> Vec<Case> {
    let mut cases = whole();
    cases.extend(plans(&["take"]));
    cases.extend(plans(&["plan", "read"]));
    cases.extend(plans(&["check"]));
    for name in [
        "gym",
        "lifters",
        "programme",
        "kiosk",
        "meet",
        "twice",
        "empty",
        "noise",
    ] {
        let file = format!("ROOM/{name}.toml");
        cases.push(Case::of(&format!("a bad {name}.toml"), &["check", &file]));
    }
    cases.extend(days_and_names());
    cases.extend(loads());
    cases.extend(words_of_a_coach());
    cases
}

fn whole() -> Vec<Case> {
    let outside = |what: &str, words: &[&str]| Case {
        in_folder: false,
        ..Case::of(what, words)
    };
    vec![
        Case::line("a command that is none", "lift").usage(),
        Case::line("an option that is none", "--heavy").usage(),
        Case::line("a command twice", "sheet sheet").usage(),
        outside(
            "a data folder that is a file",
            &["--data", "ROOM/head.csv", "sheet"],
        ),
        outside(
            "a data folder in one that is not there",
            &["--data", "/proc/none/x", "sheet"],
        ),
        outside("no data folder behind --data", &["--data"]).usage(),
        outside("nothing as data folder", &["--data", "", "sheet"]).usage(),
    ]
}

fn days_and_names() -> Vec<Case> {
    let mut cases = Vec::new();
    for (what, day) in [
        ("a thirteenth month", "2026-13-01"),
        ("a 30 February", "2026-02-30"),
        ("a word as day", "tomorrow"),
        ("nothing as day", ""),
    ] {
        cases.push(Case::of(what, &["sheet", "--date", day]).usage());
        cases.push(Case::of(what, &["next", "--lifter", "Hamza", "--date", day]).usage());
        cases.push(Case::of(what, &["split", "--lifter", "Hamza", "--date", day]).usage());
        cases.push(Case::of(what, &["take", "ROOM/head.csv", "--monday", day]).usage());
        cases.push(Case::of(what, &["rehearse", "--at", day]).usage());
    }
    for (what, name) in [
        ("a lifter whom nobody knows", "Nobody"),
        ("nothing as lifter", ""),
        ("a lifter of ten thousand letters", LONG),
    ] {
        cases.push(Case::of(what, &["sheet", "--lifter", name]));
        cases.push(Case::of(what, &["next", "--lifter", name]));
        cases.push(Case::of(what, &["split", "--lifter", name]));
        cases.push(Case::of(what, &["measure", "--lifter", name]));
        let meet = [
            "meet", "--lifter", name, "--opener", "200 kg", "--before", "5",
        ];
        cases.push(Case::of(what, &meet));
    }
    cases
}

fn loads() -> Vec<Case> {
    let mut cases = Vec::new();
    for (what, load) in [
        ("a load without unit", "180"),
        ("a word as load", "heavy"),
        ("a load below nothing", "-5 kg"),
        ("a load of nothing", "0 kg"),
        ("a load beyond all bounds", "99999999999999999999 kg"),
        ("nothing as load", ""),
        ("a load of ten thousand letters", LONG),
    ] {
        let load_of = format!("--load={load}");
        let start = "next --lifter Hamza --lift rack~pull --note x";
        let mut rule = Case::line(what, start);
        rule.words.push(load_of);
        cases.push(rule);
        cases.push(Case::of(what, &["single", "--", load, "5"]));
        let opener = format!("--opener={load}");
        cases.push(Case::of(
            what,
            &["meet", "--lifter", "Hamza", &opener, "--before", "5"],
        ));
    }
    for (what, reps) in [("no reps", "0"), ("reps beyond all estimates", "255")] {
        cases.push(Case::of(what, &["single", "180 kg", reps]));
    }
    cases.push(Case::line("reps below nothing", "single 180~kg -- -1").usage());
    cases.push(Case::line("reps that are none", "single 180~kg some").usage());
    cases
}

fn words_of_a_coach() -> Vec<Case> {
    let hamza = |what: &str, rest: &str| Case::line(what, &format!("next --lifter Hamza {rest}"));
    vec![
        hamza("a lift that nobody knows", "--lift juggling"),
        hamza("a load without a note", "--lift rack~pull --load 9~kg").usage(),
        hamza(
            "an illness that ends before it begins",
            "--note x --ill 2026-12-06..2026-12-01",
        ),
        hamza("an illness without an end", "--note x --ill 2026-12-06"),
        hamza("hurt and fit at once", "--note x --fit --hurt 2026-12-01").usage(),
        hamza("fit who was not hurt", "--note x --fit"),
        hamza("a language that is none", "--language xx").usage(),
        Case::of(
            "a lift of ten thousand letters",
            &["next", "--lifter", "Hamza", "--lift", LONG],
        ),
        Case::of(
            "two days of ten thousand letters",
            &["next", "--lifter", "Hamza", "--note", "x", "--ill", LONG],
        ),
        Case::of(
            "a day of ten thousand letters",
            &["next", "--lifter", "Hamza", "--date", LONG],
        )
        .usage(),
    ]
}
