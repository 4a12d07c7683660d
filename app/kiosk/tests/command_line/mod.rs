//! The command line, run within the test. Refuses: keeping what went wrong to itself.
use kiosk::cli::{Streams, main};
use std::ffi::OsString;
use std::path::Path;

/// Runs one command line on a data folder: whether it went well, what it said, what went wrong.
pub(crate) fn pinladder(data: &Path, words: &[&str]) -> (bool, String, String) {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let mut args: Vec<OsString> = vec!["pinladder".into(), "--data".into(), data.into()];
    args.extend(words.iter().map(OsString::from));
    let code = main(
        args,
        &mut Streams {
            input: &mut std::io::empty(),
            out: &mut out,
            err: &mut err,
        },
    );
    let text = |bytes| String::from_utf8(bytes).expect("words are UTF-8");
    let well = format!("{code:?}") == format!("{:?}", std::process::ExitCode::SUCCESS);
    (well, text(out), text(err))
}
