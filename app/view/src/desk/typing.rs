//! What is typed at the desk: the code, a number with its unit, a name. A pad of our own.
//!
//! Refuses: values that cannot be read; it says so and keeps what was typed.
use super::pad::Typing;
use super::place::{AtDoor, Kind, New, Place, Typed, What};
use super::wish::{Change, Edit, Wish, quoted};
use crate::aside::Aside;
use crate::desk::gym;
use crate::language::{Language, Phrase, p};
use crate::scene::Scene;
use crate::stage::Stage;
use crate::tap::Tap;
use domain::Command;

/// Digits of the code.
pub(crate) const CODE_DIGITS: usize = 4;
/// Digits of the page's code, at most; the least are told by whoever keeps it.
const PAGE_DIGITS_MAX: usize = 12;
/// The keys of numbers and of names, in the order of the pads.
pub(crate) const DIGITS: &str = "1234567890";
pub(crate) const NUMBERS: &str = "1234567890.";
const LETTERS: [&str; 3] = ["ABCDEFGHIJKLMNOP", "QRSTUVWXYZÄÖÜß -", "1234567890.'ÉŠŽÇ"];
/// What the button to each of those pages says.
const LETTER_PAGES: [&str; 3] = ["A–P", "Q–Z, ÄÖÜ", "1–0, ÉŠ"];
/// Letters of a name, and figures of a number, at most.
const NAME_MAX: usize = 24;
const NUMBER_MAX: usize = 8;

impl Typed {
    pub(crate) fn new(what: What, from: Place) -> Self {
        Self {
            page: what.first_page(),
            what,
            text: String::new(),
            wrong: false,
            from,
        }
    }

    fn keys(&self) -> &'static str {
        match &self.what {
            What::Code(_)
            | What::PageCode
            | What::Value {
                kind: Kind::Count, ..
            }
            | What::Field {
                kind: Kind::Count, ..
            } => DIGITS,
            What::Value { .. } | What::Field { .. } => NUMBERS,
            What::Name(_) => LETTERS[self.page % LETTERS.len()],
        }
    }

    fn units(&self) -> &'static [&'static str] {
        self.what.kind().map(Kind::units).unwrap_or_default()
    }

    fn unit(&self) -> &'static str {
        let units = self.units();
        units.get(self.page % units.len().max(1)).unwrap_or(&"")
    }

    fn other(&self) -> String {
        match &self.what {
            What::Name(_) => LETTER_PAGES[(self.page + 1) % LETTERS.len()].to_owned(),
            What::Code(_) | What::PageCode | What::Value { .. } | What::Field { .. } => {
                let units = self.units();
                let next = units.get((self.page + 1) % units.len().max(1));
                let next = next.filter(|_| units.len() > 1);
                next.map(|unit| (*unit).to_owned()).unwrap_or_default()
            }
        }
    }

    pub(crate) fn screen(&self, say: Language) -> Typing {
        let (title, asked): (String, Phrase) = match &self.what {
            What::Code(None) => (say.say(p::NEW_CODE), p::FOUR_DIGITS),
            What::Code(Some(_)) => (say.say(p::NEW_CODE), p::REPEAT_CODE),
            What::PageCode => (say.say(p::PAGE_CODE), p::SIX_DIGITS),
            What::Value { title, .. } | What::Field { title, .. } => (title.clone(), p::TYPE_VALUE),
            What::Name(new) => (
                say.say(match new {
                    New::Lifter => p::NEW_LIFTER,
                    New::Rack => p::NEW_RACK,
                    New::Bar => p::NEW_BAR,
                    New::Gym(None) => p::NEW_GYM,
                    New::Gym(Some(_)) => p::FIRST_LIFTER,
                }),
                p::TYPE_NAME,
            ),
        };
        Typing {
            title,
            hint: say.say(if self.wrong { p::NOT_READ } else { asked }),
            wrong: self.wrong,
            typed: say.number(&self.text),
            unit: self.unit().into(),
            keys: keys(say, self.keys()),
            other: self.other(),
            delete: say.say(p::DELETE_LAST),
            main: say.say(p::KEEP),
        }
    }

    /// The value as TOML writes it; `None` when it cannot be read.
    fn value(&self, kind: Kind) -> Option<String> {
        let read = kind.read(&self.text, self.unit())?;
        Some(if kind == Kind::Count {
            read
        } else {
            quoted(&read)
        })
    }
}

/// The keys as they stand on the pad.
pub(crate) fn keys(say: Language, keys: &str) -> Vec<String> {
    let key = |c: char| match c {
        ' ' => "␣".to_owned(),
        c => say.number(&c.to_string()),
    };
    keys.chars().map(key).collect()
}

/// The text after a key of the pad or of a keyboard; `None` for a key that is none.
pub(crate) fn after_key(text: &str, keys: &str, tap: &Tap) -> Option<String> {
    let count = keys.chars().count();
    let mut text = text.to_owned();
    if let Tap::Number(n) = tap {
        text.push(char::from_digit(u32::from(*n), 10)?);
        return Some(text);
    }
    let Tap::Row(at) = tap else { return None };
    if *at == count + 1 {
        text.pop();
    } else {
        text.push(keys.chars().nth(*at)?);
    }
    Some(text)
}

/// The door: four digits, shown as points.
pub(crate) fn door(scene: &Scene<'_>, at: &AtDoor) -> Typing {
    let say = scene.language();
    let wait = waits(scene);
    let hint = match wait {
        Some(seconds) => say.fill(p::WAIT_AT_DOOR, &[&crate::words::minutes(seconds)]),
        None if at.wrong && !scene.news.door.has_code => say.say(p::CODES_DIFFER),
        None if at.wrong => say.say(p::WRONG_CODE),
        None if at.first.is_some() => say.say(p::REPEAT_CODE),
        None if scene.news.door.has_code => say.say(p::FOUR_DIGITS),
        None => say.say(p::CHOOSE_CODE),
    };
    Typing {
        title: say.say(p::DESK),
        hint,
        wrong: at.wrong || wait.is_some(),
        typed: "•".repeat(at.typed.chars().count()),
        unit: String::new(),
        keys: keys(say, DIGITS),
        other: String::new(),
        delete: say.say(p::DELETE_LAST),
        main: String::new(),
    }
}

/// Seconds until a code is tried again.
pub(crate) fn waits(scene: &Scene<'_>) -> Option<u32> {
    let left = scene.now.seconds_until(scene.news.door.until?);
    (left > 0).then_some(left)
}

impl Stage {
    /// What a tap means on the pad.
    pub(crate) fn tap_typing(
        &mut self,
        scene: &Scene<'_>,
        typed: &Typed,
        tap: &Tap,
    ) -> Option<Command> {
        let mut typed = typed.clone();
        typed.wrong = false;
        let count = typed.keys().chars().count();
        if *tap == Tap::Main {
            return self.keep(scene, typed);
        }
        if *tap == Tap::Row(count) {
            typed.page += 1;
        } else {
            let most = match typed.what {
                What::Name(_) => NAME_MAX,
                What::Value { .. } | What::Field { .. } => NUMBER_MAX,
                What::Code(_) => CODE_DIGITS,
                What::PageCode => PAGE_DIGITS_MAX,
            };
            let text = after_key(&typed.text, typed.keys(), tap)?;
            if text.chars().count() <= most {
                typed.text = text;
            }
        }
        self.aside = Some(Aside::Desk(Place::Typing(Box::new(typed))));
        None
    }

    /// Keeps what was typed, or says that it cannot be read.
    fn keep(&mut self, scene: &Scene<'_>, mut typed: Typed) -> Option<Command> {
        let from = typed.from.clone();
        let name = title_case(typed.text.trim());
        let done = match &typed.what {
            What::Code(None) if typed.text.chars().count() == CODE_DIGITS => {
                typed.what = What::Code(Some(std::mem::take(&mut typed.text)));
                self.aside = Some(Aside::Desk(Place::Typing(Box::new(typed))));
                return None;
            }
            What::Code(Some(first)) if *first == typed.text => Some(Wish::Code(first.clone())),
            What::PageCode if !typed.text.is_empty() => Some(Wish::PageCode(typed.text.clone())),
            What::Value {
                edit, kind, more, ..
            } => typed.value(*kind).map(|value| {
                let edit = Edit {
                    value,
                    ..edit.clone()
                };
                let change = if *more {
                    Change::Push(edit)
                } else {
                    Change::Set(edit)
                };
                Wish::Change(vec![change])
            }),
            What::Field { form, at, kind, .. } => {
                if let Some(value) = kind.read(&typed.text, typed.unit()) {
                    let form = Box::new(form.with(*at, Some(value)));
                    self.aside = Some(Aside::Desk(Place::Form(form)));
                    return None;
                }
                None
            }
            What::Name(New::Gym(None)) if !name.is_empty() => {
                typed.what = What::Name(New::Gym(Some(name)));
                typed.text.clear();
                typed.page = 0;
                self.aside = Some(Aside::Desk(Place::Typing(Box::new(typed))));
                return None;
            }
            What::Name(new) if !name.is_empty() => Some(gym::wish_for(scene, new, &name)),
            What::Code(_) | What::PageCode | What::Name(_) => None,
        };
        match done {
            Some(wish) => {
                self.wish = Some(wish);
                self.aside = Some(Aside::Desk(from));
            }
            None => {
                typed.wrong = true;
                if matches!(typed.what, What::Code(Some(_))) {
                    // Two that differ: neither counts.
                    typed.what = What::Code(None);
                    typed.text.clear();
                }
                self.aside = Some(Aside::Desk(Place::Typing(Box::new(typed))));
            }
        }
        None
    }
}

/// "ANNA MARIA" as it is written: "Anna Maria".
fn title_case(name: &str) -> String {
    let word = |word: &str| {
        let mut letters = word.chars();
        let first = letters.next().map(String::from).unwrap_or_default();
        first + &letters.as_str().to_lowercase()
    };
    name.split_whitespace()
        .map(word)
        .collect::<Vec<_>>()
        .join(" ")
}
