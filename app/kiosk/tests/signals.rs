//! The kiosk is asked to end by the system where no page's thread lives any more.
use kiosk::input::Input;
use kiosk::signals;
use std::process::Command;
use std::sync::mpsc::channel;
use std::time::Duration;

#[test]
fn a_signal_is_heard_whatever_became_of_the_page() {
    let (inputs, inbox) = channel();
    signals::start(inputs);
    let own = std::process::id();
    // Until the thread listens, a signal would end the test: it is asked for by a look at what the
    // process catches (proc_pid_status(5), SigCgt; SIGTERM is bit 14).
    let caught = || {
        let status = std::fs::read_to_string("/proc/self/status").expect("Linux has it");
        let line = status.lines().find_map(|line| line.strip_prefix("SigCgt:"));
        let mask = u64::from_str_radix(line.expect("is told").trim(), 16).expect("a mask");
        mask & (1 << 14) != 0
    };
    for _ in 0..200 {
        if caught() {
            break;
        }
        std::thread::sleep(Duration::from_millis(50));
    }
    assert!(caught(), "nobody listens");
    let sent = Command::new("sh")
        .args(["-c", &format!("kill -TERM {own}")])
        .status();
    assert!(sent.expect("a shell is there").success());
    let heard = inbox.recv_timeout(Duration::from_secs(20));
    assert!(matches!(heard, Ok(Input::Quit)), "{heard:?}");
}
