//! The linux side on lines that the kernel simulates (its gpio-sim module, driven over configfs:
//! Documentation/admin-guide/gpio/gpio-sim.rst). Where the machine has no such module, or may not
//! use it, a sentence says so and nothing is tested.
#![cfg(target_os = "linux")]
#![allow(clippy::print_stdout, reason = "says what was left out")]
use hardware::{Config, Faults, Glow, Press, Tune, Wanted, open};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

const ROOT: &str = "/sys/kernel/config/gpio-sim";

/// A chip of four lines, gone when dropped.
struct SimChip {
    group: PathBuf,
    device: PathBuf,
    lines: PathBuf,
}

impl SimChip {
    fn make() -> io::Result<Self> {
        let group = Path::new(ROOT).join(format!("pinladder-{}", std::process::id()));
        fs::create_dir(&group)?;
        let bank = group.join("bank0");
        fs::create_dir(&bank)?;
        fs::write(bank.join("num_lines"), "4")?;
        fs::write(group.join("live"), "1")?;
        let word = |path: PathBuf| fs::read_to_string(path).map(|text| text.trim().to_owned());
        let (platform, chip) = (word(group.join("dev_name"))?, word(bank.join("chip_name"))?);
        Ok(Self {
            group,
            device: Path::new("/dev").join(&chip),
            lines: Path::new("/sys/devices/platform").join(platform).join(chip),
        })
    }

    fn pull(&self, line: u32, up: bool) {
        let path = self.lines.join(format!("sim_gpio{line}/pull"));
        fs::write(path, if up { "pull-up" } else { "pull-down" }).expect("the line is pulled");
    }

    fn value(&self, line: u32) -> bool {
        let path = self.lines.join(format!("sim_gpio{line}/value"));
        fs::read_to_string(path).expect("the line is read").trim() == "1"
    }
}

impl Drop for SimChip {
    fn drop(&mut self) {
        drop(fs::write(self.group.join("live"), "0"));
        drop(fs::remove_dir(self.group.join("bank0")));
        drop(fs::remove_dir(&self.group));
    }
}

#[test]
fn a_switch_a_buzzer_and_a_lamp_on_simulated_lines() {
    let chip = match SimChip::make() {
        Ok(chip) => chip,
        Err(error) => {
            println!("not tested: this machine gives no simulated GPIO ({ROOT}: {error})");
            return;
        }
    };
    let at = chip.device.display();
    let text = format!(
        "kind = \"linux\"\n[[switch]]\nname = \"foot switch\"\ndoes = \"done\"\n\
         chip = \"{at}\"\nline = 0\n[buzzer]\nchip = \"{at}\"\nline = 1\n\
         [lamp]\nchip = \"{at}\"\nline = 2\nactive_low = true\n"
    );
    chip.pull(0, true);
    let faults = Faults::default();
    let mut opened = open(&Config::read(&text).expect("fine"), &faults);
    assert!(faults.list().is_empty(), "{:?}", faults.list());
    assert!(
        chip.value(2) && !chip.value(1),
        "off from the first instant"
    );

    let mut presses = Vec::new();
    for now in 0..40 {
        chip.pull(0, now < 10);
        presses.extend(opened.switches.step(now * 5));
    }
    assert_eq!(presses, [Press::Done]);

    let lit = Wanted {
        lamp: Glow::Lit,
        ..Wanted::default()
    };
    opened.outputs.play(0, Tune::YourTurn);
    opened.outputs.step(1, &lit);
    assert!(
        chip.value(1) && !chip.value(2),
        "it sounds, and the lamp is lit"
    );
    opened.outputs.step(2_000, &Wanted::default());
    assert!(!chip.value(1) && chip.value(2), "silent and dark again");
    assert!(faults.list().is_empty(), "{:?}", faults.list());
}
