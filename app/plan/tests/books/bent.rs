//! No bytes of a workbook make the reader panic, and no fault lies where nothing is.
use crate::build::{ROW, archive, gym, ods, with, xlsx};
use plan::Source;
use proptest::prelude::*;
use std::io::Read as _;
use std::sync::LazyLock;
use zip::ZipArchive;

static GYM: LazyLock<domain::Gym> = LazyLock::new(gym);

/// The parts of a good workbook.
fn parts(bytes: &[u8]) -> Vec<(String, Vec<u8>)> {
    let mut archive = ZipArchive::new(std::io::Cursor::new(bytes)).expect("an archive");
    let read = |at| {
        let mut part = archive.by_index(at).expect("a part");
        let mut bytes = Vec::new();
        part.read_to_end(&mut bytes).expect("unpacks");
        (part.name().to_owned(), bytes)
    };
    (0..ZipArchive::new(std::io::Cursor::new(bytes))
        .expect("one")
        .len())
        .map(read)
        .collect()
}

static BOOKS: LazyLock<[Vec<u8>; 2]> = LazyLock::new(|| {
    let tables = with(vec![ROW.to_vec(), ROW.to_vec()]);
    [xlsx(&tables), ods(&tables)]
});

type Edit = (prop::sample::Index, u8, u8);

fn edits() -> impl Strategy<Value = Vec<Edit>> {
    let byte = prop_oneof![
        prop::sample::select(b"<>/\"'=&; 0123456789-abcERT".to_vec()),
        any::<u8>(),
    ];
    prop::collection::vec((any::<prop::sample::Index>(), 0..3_u8, byte), 1..8)
}

fn bend(bytes: &mut Vec<u8>, edits: &[Edit]) {
    for (at, how, byte) in edits {
        if bytes.is_empty() {
            return;
        }
        let at = at.index(bytes.len());
        match how {
            0 => bytes[at] = *byte,
            1 => bytes.insert(at, *byte),
            _ => {
                bytes.remove(at);
            }
        }
    }
}

fn read(text: &[u8]) {
    for fault in plan::check(
        Source {
            name: "w.xlsx",
            text,
        },
        Some(&GYM),
    ) {
        let line = fault.to_string();
        assert!(
            line.starts_with("w.xlsx") && !line.contains(['\n', '\r']),
            "{line:?}"
        );
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn bent_archives(which in 0..2_usize, edits in edits()) {
        let mut bytes = BOOKS[which].clone();
        bend(&mut bytes, &edits);
        read(&bytes);
    }

    /// The archive is sound; what is in it is not.
    #[test]
    fn bent_parts(which in 0..2_usize, part in any::<prop::sample::Index>(), edits in edits()) {
        let mut parts = parts(&BOOKS[which]);
        let at = part.index(parts.len());
        bend(&mut parts[at].1, &edits);
        let parts: Vec<_> = parts.iter().map(|(n, b)| (n.as_str(), b.as_slice())).collect();
        read(&archive(&parts));
    }
}
