//! The machine: disk, clock, screen, touch panel, devices on its pins.
use super::{Finding, How};
use crate::devices;
use domain::Moment;
use domain::steady::KNOWN_FROM;
use rustix::fs::{Access, StatVfsMountFlags, access, statvfs};
use std::path::{Path, PathBuf};

/// Free bytes under which somebody should see to it, and under which it is told as wrong.
const FREE_SOON: u64 = 1 << 30;
const FREE_WRONG: u64 = 64 << 20;

/// Room on the disk, and whether it takes anything.
pub(super) fn disk(data: &Path) -> Finding {
    let what = "disk";
    // The nearest folder that is there.
    let there = data.ancestors().find(|path| path.exists()).unwrap_or(data);
    let about = match statvfs(there) {
        Ok(about) => about,
        Err(why) => {
            let told = Finding::new(what, How::Wrong, format!("{}: {why}", there.display()));
            return told.so("check the disk's cable and the system's log");
        }
    };
    let free = about.f_bavail.saturating_mul(about.f_frsize);
    let told = format!("{} MiB are free under {}", free >> 20, there.display());
    if about.f_flag.contains(StatVfsMountFlags::RDONLY) {
        let told = Finding::new(what, How::Wrong, format!("{told}, and it takes nothing"));
        return told
            .so("the system has made the disk read-only, often because it fails: replace it");
    }
    if about.f_favail == 0 && about.f_files > 0 {
        let told = Finding::new(
            what,
            How::Wrong,
            format!("{told}, and no room for more files"),
        );
        return told.so("delete files that nobody needs");
    }
    match free {
        ..FREE_WRONG => Finding::new(what, How::Wrong, told)
            .so("free some space: entries are refused on a full disk"),
        FREE_WRONG..FREE_SOON => {
            Finding::new(what, How::Soon, told).so("free some space before it is full")
        }
        _ => Finding::new(what, How::Fine, told),
    }
}

/// The wall clock, held to when it was known to be later.
pub(super) fn clock(now: Moment, last: Option<Moment>, root: &Path) -> Finding {
    let what = "clock";
    let shown = |at: Moment| {
        let utc = chrono::DateTime::from_timestamp_millis(at.0);
        utc.map_or_else(
            || "no date".into(),
            |at| at.format("%Y-%m-%d %H:%M UTC").to_string(),
        )
    };
    if now < KNOWN_FROM {
        let told = Finding::new(what, How::Wrong, format!("it says {}", shown(now)));
        return told.so("set it, or put a battery to it: until then each day's date is a guess");
    }
    if let Some(last) = last.filter(|last| now.since(*last) < -60_000) {
        let found = format!(
            "it says {}, and the last entry was at {}",
            shown(now),
            shown(last)
        );
        let told = Finding::new(what, How::Wrong, found);
        return told.so("set it right; rests and days go on by the machine's own time meanwhile");
    }
    let kept = [
        "run/systemd/timesync/synchronized",
        "run/chrony/chronyd.pid",
        "run/ntpd.pid",
    ];
    let is_kept = kept.iter().any(|path| root.join(path).exists());
    let told = format!("it says {}", shown(now));
    match is_kept {
        true => Finding::new(what, How::Fine, format!("{told}, kept by the network")),
        false => Finding::new(
            what,
            How::Soon,
            format!("{told}, and nothing keeps it right"),
        )
        .so("look whether that is so; on a network, timedatectl set-ntp true keeps it"),
    }
}

/// Whether there is something to draw on.
pub(super) fn screen(root: &Path) -> Finding {
    let what = "screen";
    if ui::display_is_there() {
        return Finding::new(what, How::Fine, "a display answers");
    }
    let cards = named(&root.join("dev/dri"), "card");
    match cards.first() {
        Some(card) if is_open(card) => {
            let card = card.display();
            Finding::new(
                what,
                How::Off,
                format!("no display answers this user; {card} is there"),
            )
            .so("run it as the service does, or set DISPLAY; without one the page is served alone")
        }
        Some(card) => Finding::new(
            what,
            How::Wrong,
            format!("{} is closed to this user", card.display()),
        )
        .so("add the user to the groups video and render"),
        None => Finding::new(
            what,
            How::Off,
            "no display answers and no graphics card is there",
        )
        .so("plug the screen in and start the machine again; the page is served all the same"),
    }
}

/// Whether a touch panel is there and open to this user.
pub(super) fn touch(root: &Path) -> Finding {
    let what = "touch";
    let known = root.join("run/udev/data");
    let mut panels: Vec<PathBuf> = Vec::new();
    for entry in std::fs::read_dir(&known).into_iter().flatten().flatten() {
        let name = entry.file_name().to_string_lossy().into_owned();
        let text = std::fs::read_to_string(entry.path()).unwrap_or_default();
        if !name.starts_with("c13:") || !text.contains("E:ID_INPUT_TOUCHSCREEN=1") {
            continue;
        }
        let minor = name
            .trim_start_matches("c13:")
            .parse::<u32>()
            .unwrap_or_default();
        // Major 13 from minor 64 on (the kernel's admin-guide/devices.txt).
        if let Some(event) = minor.checked_sub(64) {
            panels.push(root.join(format!("dev/input/event{event}")));
        }
    }
    panels.sort();
    match panels.iter().find(|panel| is_open(panel)) {
        Some(panel) => Finding::new(
            what,
            How::Fine,
            format!("{} is a touch panel", panel.display()),
        ),
        None => match panels.first() {
            Some(panel) => {
                let told = format!("{} is closed to this user", panel.display());
                Finding::new(what, How::Wrong, told).so("add the user to the group input")
            }
            None => Finding::new(what, How::Off, "no touch panel is known to the system")
                .so("check the panel's own USB or ribbon cable; a mouse does meanwhile"),
        },
    }
}

/// What hardware.toml names.
pub(super) fn devices(data: &Path, root: &Path) -> Finding {
    let what = "devices";
    let path = data.join(devices::FILE);
    let text = match std::fs::read_to_string(&path) {
        Ok(text) => text,
        Err(why) if why.kind() == std::io::ErrorKind::NotFound => {
            return Finding::new(
                what,
                How::Off,
                "no hardware.toml: no buttons, buzzer or lamp",
            );
        }
        Err(why) => {
            let told = Finding::new(what, How::Wrong, format!("hardware.toml: {why}"));
            return told.so("let this user read it");
        }
    };
    let config = match hardware::Config::read(&text) {
        Ok(config) => config,
        Err(fault) => {
            let told = Finding::new(what, How::Wrong, format!("hardware.toml: {fault}"));
            return told.so("put it right; until then no device is used, and every set is logged");
        }
    };
    if config.kind != hardware::config::Kind::Linux {
        return Finding::new(what, How::Fine, "hardware.toml asks for simulated devices");
    }
    let chips = named(&root.join("dev"), "gpiochip");
    match chips.iter().find(|chip| is_open(chip)) {
        Some(chip) => Finding::new(
            what,
            How::Fine,
            format!("{} is open to this user", chip.display()),
        ),
        None if chips.is_empty() => Finding::new(what, How::Wrong, "the machine has no GPIO lines")
            .so("write kind = \"simulated\", or take hardware.toml away"),
        None => Finding::new(what, How::Wrong, "the GPIO lines are closed to this user")
            .so("lay deploy's rules for udev into /etc/udev/rules.d, and start again"),
    }
}

/// Entries of a folder whose names begin so, in order.
fn named(folder: &Path, start: &str) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(folder).into_iter().flatten().flatten();
    let named = entries.filter(|entry| entry.file_name().to_string_lossy().starts_with(start));
    let mut all: Vec<PathBuf> = named.map(|entry| entry.path()).collect();
    all.sort();
    all
}

fn is_open(path: &Path) -> bool {
    access(path, Access::READ_OK | Access::WRITE_OK).is_ok()
}
