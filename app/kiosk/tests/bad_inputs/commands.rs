//! The bad inputs of the other commands: of the journal, of sticks, meets and pictures, and what is
//! piped in.
use crate::cases::{Case, LONG, NAMES};

/// All of them.
pub(crate) fn all() -> Vec<Case> {
    let mut cases = journal();
    cases.extend(hubs());
    cases.extend(solve());
    cases.extend(others());
    cases.extend(meets());
    cases.extend(piped_in());
    cases
}

fn hubs() -> Vec<Case> {
    let prepare = |more: &str| format!("hub prepare --secrets ROOM {more}");
    vec![
        Case::line("a hub that no file names", "hub look"),
        Case::line("a hub that no file names", "hub exchange"),
        Case::line("a command that is none", "hub meet").usage(),
        Case::line("no gym", &prepare("--kiosk a --print")).usage(),
        Case::line("no kiosk", &prepare("--gym Yard --print")).usage(),
        Case::line("neither print nor server", &prepare("--gym Yard --kiosk a")).usage(),
        Case::line(
            "a kiosk in capitals",
            &prepare("--gym Yard --kiosk North --print"),
        ),
        Case::line(
            "a kiosk by the server's own name",
            &prepare("--gym Yard --kiosk pg_a --print"),
        ),
        Case::line(
            "a server that is none",
            &prepare("--gym Yard --kiosk a --server nowhere"),
        ),
        Case::line(
            "a password in the address",
            &prepare("--gym Yard --kiosk a --server postgresql://a:b@127.0.0.1/c"),
        ),
        Case::line("a word too many", "doctor now").usage(),
    ]
}

fn journal() -> Vec<Case> {
    let mut cases = Vec::new();
    for (what, file) in NAMES {
        for words in [&["journal", "restore"][..], &["stick"]] {
            let words: Vec<&str> = words.iter().copied().chain([file]).collect();
            let case = Case::of(what, &words);
            cases.push(match (file, words[0]) {
                ("", _) => case.usage(),
                // It brings nothing, and that is told.
                ("ROOM/folder.csv", "stick") => case.told(),
                _ => case,
            });
        }
    }
    for kind in ["empty", "noise", "zeros"] {
        let file = format!("ROOM/{kind}.sqlite");
        cases.push(Case::of(
            &format!("{kind} as copy"),
            &["journal", "restore", &file],
        ));
    }
    cases.push(Case::line(
        "a place that is a file",
        "journal backup --to ROOM/head.csv",
    ));
    cases.push(Case::line(
        "the data folder as place",
        "journal backup --to ROOM/gym",
    ));
    cases.push(Case::line(
        "a place that cannot be made",
        "journal backup --to /proc/none",
    ));
    cases.push(Case::line("no copies kept", "journal backup --to ROOM/stick --keep 0").usage());
    cases.push(
        Case::line(
            "copies without number",
            "journal backup --to ROOM/stick --keep all",
        )
        .usage(),
    );
    cases.push(Case::line("no place", "journal backup").usage());
    cases.push(Case::line("a number below nothing", "journal mend --give-up=-1").usage());
    cases.push(Case::line("a command that is none", "journal prove").usage());
    cases
}

fn solve() -> Vec<Case> {
    let mut cases = vec![
        Case::line("a problem that is none", "solve everything"),
        Case::of("a problem of ten thousand letters", &["solve", LONG]),
        Case::line("a time that is none", "solve ladder --within soon").usage(),
        Case::line("solved no times", "solve ladder --times 0")
            .with("{}")
            .usage(),
    ];
    let deep = "[".repeat(100_000);
    for problem in ["ladder", "rotation", "hole", "bar", "balance", "next"] {
        for (what, input) in [
            ("nothing", b"".as_slice()),
            ("no JSON", b"rack pull, please".as_slice()),
            ("a list", b"[]"),
            ("an object with nothing in it", b"{}"),
            ("bytes that are no text", b"\xff\xfe{}"),
            ("a text that ends early", b"{\"bar\": \"20"),
            ("a hundred thousand brackets", deep.as_bytes()),
            ("a number beyond all bounds", b"{\"bar\": 1e999}"),
            ("a key twice", b"{\"bar\": \"20 kg\", \"bar\": \"15 kg\"}"),
            ("a key that is none", b"{\"barbell\": \"20 kg\"}"),
        ] {
            let what = format!("{problem}: {what}");
            cases.push(Case::of(&what, &["solve", problem]).with(input));
        }
    }
    cases
}

/// Longer than any code may be.
const TOO_LONG: &[u8] = &[b'7'; 2_000];

fn others() -> Vec<Case> {
    vec![
        Case::line("no screen", "picture").usage(),
        Case::line("a screen that is none", "picture roof --out ROOM/x.png"),
        Case::line(
            "a size that is none",
            "picture choose --size big --out ROOM/x.png",
        )
        .usage(),
        Case::line(
            "a size of nothing",
            "picture choose --size 0x0 --out ROOM/x.png",
        )
        .usage(),
        Case::line(
            "a size beyond all bounds",
            "picture choose --size 999999x999999 --out ROOM/x.png",
        )
        .usage(),
        Case::of(
            "a screen of ten thousand letters",
            &["picture", LONG, "--out", "ROOM/x.png"],
        ),
        Case::line("a lift that was not left open", "reopen 7"),
        Case::line("a word as number", "reopen last").usage(),
        Case::line(
            "a plan that is there already",
            "plan blank --out ROOM/there.csv",
        ),
        Case::line("an ending that is none", "plan blank --out ROOM/new.pdf"),
        Case::line(
            "a folder that is not there",
            "plan blank --out ROOM/none/new.csv",
        ),
        Case::line(
            "a folder that is not there",
            "measure --lifter Hamza --svg ROOM/none/x.svg",
        ),
        Case::line("plans with faults and no code", "stick ROOM/stick"),
        Case::line("no code is set", "stick --accept ROOM/stick").with("123456\n"),
    ]
}

fn meets() -> Vec<Case> {
    let mut cases = vec![
        Case::line("before by nobody", "meet --lifter Hamza --opener 200~kg").usage(),
        Case::line(
            "before below nothing",
            "meet --lifter Hamza --opener 200~kg --before=-1",
        )
        .usage(),
        Case::line(
            "a lift that nobody knows",
            "meet --lifter Hamza --opener 200~kg --before 5 --lift juggling",
        ),
        Case::line(
            "a pattern that nobody knows",
            "meet --lifter Hamza --opener 200~kg --before 5 --ladder stairs",
        ),
        Case::line("a flight of no meet", "meet --flight 2").usage(),
    ];
    for (what, file) in [
        ("a meet that is not there", "ROOM/none.toml"),
        ("a meet with faults", "ROOM/meet.toml"),
        ("noise as meet", "ROOM/noise.toml"),
        ("a folder as meet", "ROOM/folder"),
    ] {
        cases.push(Case::of(what, &["meet", "--file", file]));
    }
    cases
}

fn piped_in() -> Vec<Case> {
    let mut cases = Vec::new();
    for (what, code) in [
        ("nothing as code", b"".as_slice()),
        ("a code that is too short", b"12\n"),
        ("a code that is too long", TOO_LONG),
        ("bytes that are no text", b"\xff\xfe\n"),
    ] {
        cases.push(Case::line(what, "code").with(code));
    }
    for (what, line) in [
        ("a line that is no JSON", b"tap the bar\n".as_slice()),
        ("a line that says nothing", b"{}\n"),
        ("a key that is none", b"{\"shake\": 1}\n"),
        ("a time below nothing", b"{\"wait_s\": -1}\n"),
        ("a clock that is none", b"{\"clock\": \"noon\"}\n"),
        ("a stick that is not there", b"{\"plug\": \"/none\"}\n"),
        ("bytes that are no text", b"\xff\xfe\n"),
    ] {
        cases.push(
            Case::line(what, "rehearse --at 2026-12-02T18:00")
                .with(line)
                .told(),
        );
    }
    let rehearse = ["rehearse", "--at", "2026-12-02T18:00"];
    for (what, key) in [
        ("a label of ten thousand letters", "tap"),
        ("a clock of ten thousand letters", "clock"),
        ("a stick of ten thousand letters", "plug"),
        ("a key of ten thousand letters", LONG),
    ] {
        let line = format!("{{\"{key}\": \"{LONG}\"}}\n");
        cases.push(Case::of(what, &rehearse).with(line).told());
    }
    let label = "{\"tap\": \"no such label\"}\n";
    cases.push(
        Case::of("a label that is not there", &rehearse)
            .with(label)
            .told(),
    );
    cases
}
