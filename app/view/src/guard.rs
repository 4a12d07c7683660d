//! Which taps count: a finger that ended one set cannot enter anything on the next face.
//!
//! Time comes in as milliseconds of a clock that never goes back. Refuses: what a tap means.
use crate::face::{Frame, Screen};
use crate::meaning::meaning;
use crate::tap::{Meant, Tap};
use std::mem::{Discriminant, discriminant};

/// After another lifter, screen or rung the main button fills this long, and where the last tap
/// was nothing is entered; milliseconds.
pub const FILL_MS: u64 = 1_500;
/// After an accepted tap, presses are swallowed this long: a finger bounces.
pub const BOUNCE_MS: u64 = 250;
/// After several fingers at once, presses are swallowed this long.
pub const PALM_MS: u64 = 600;
/// An answer that takes longer than this is told.
pub const SAVING_MS: u64 = 300;
/// What is nearer to the last tap than this is the same place.
pub const SAME_PLACE_MM: f32 = 20.0;
/// Reference pixels in a millimetre of the panel.
pub const PIXELS_PER_MM: f32 = 5.9;

/// How heavy a button weighs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Weight {
    /// The main button: it fills before it takes a tap.
    Main,
    /// Enters, changes or leads elsewhere: not where the last tap was, until the new face was
    /// seen.
    Entry,
    /// Made to be tapped again and again in one place (keys of a text, rows of a list): not where
    /// the last tap was when another page has just come up, else at once.
    Quick,
}

/// Where a tap comes from.
#[derive(Debug, Clone, PartialEq)]
pub enum Place {
    /// A finger: right and down from the top left, millimetres.
    At(f32, f32),
    /// A key, by its text.
    Key(String),
    /// A button or foot switch, by what it stands for.
    Switch(u8),
}

impl Place {
    /// A place of the screen in pixels of the reference panel.
    #[must_use]
    pub fn pixels(x: f32, y: f32) -> Self {
        Self::At(x / PIXELS_PER_MM, y / PIXELS_PER_MM)
    }

    fn is_near(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::At(x, y), Self::At(to_x, to_y)) => (x - to_x).hypot(y - to_y) <= SAME_PLACE_MM,
            _ => self == other,
        }
    }
}

/// What a page is to a finger that taps on and on: which screen, whose, of what.
type Page = (Discriminant<Screen>, bool, String, String);

/// A tap that no answer has come for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Pending {
    id: u64,
    since: u64,
}

/// A press that has begun.
#[derive(Debug, Clone, PartialEq)]
struct Down {
    finger: i32,
    place: Place,
    number: u64,
}

/// What is guarded now.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Guard {
    /// What the main button would do, and when it has filled.
    face: Option<Box<Frame>>,
    full_at: u64,
    /// The number that is shown, and until when the last place enters nothing.
    number: u64,
    open_at: u64,
    /// What page it is, and until when the last place on it is held.
    page: Option<Page>,
    turned_at: u64,
    asleep: bool,
    last: Option<Place>,
    down: Option<Down>,
    quiet_until: u64,
    palm_until: u64,
    sent: u64,
    pending: Option<Pending>,
}

impl Guard {
    /// A frame is drawn.
    pub fn shown(&mut self, now: u64, frame: &Frame) {
        if self.pending.is_some_and(|p| frame.answers >= p.id) {
            self.pending = None;
        }
        let face = Some(Box::new(face(frame)));
        if self.face != face {
            self.face = face;
            self.full_at = now + FILL_MS;
            self.open_at = now + FILL_MS;
        }
        if self.number != frame.number {
            self.number = frame.number;
            self.open_at = now + FILL_MS;
        }
        let page = Some(page(frame));
        if self.page != page {
            self.page = page;
            self.turned_at = now + FILL_MS;
        }
        self.asleep = frame.asleep;
    }

    /// As if the face had been shown for long: for pictures.
    pub fn settle(&mut self) {
        (self.full_at, self.open_at, self.turned_at) = (0, 0, 0);
    }

    /// Whether a button of that weight takes a tap at that place now.
    #[must_use]
    pub fn takes(&self, now: u64, weight: Weight, place: &Place) -> bool {
        let busy = self.asleep || self.pending.is_some();
        if busy || now < self.quiet_until || now < self.palm_until {
            return false;
        }
        let elsewhere = !self.last.as_ref().is_some_and(|last| last.is_near(place));
        match weight {
            Weight::Main => now >= self.full_at,
            Weight::Entry => now >= self.open_at || elsewhere,
            Weight::Quick => now >= self.turned_at || elsewhere,
        }
    }

    /// A finger came down on a button: does the press count?
    pub fn down(&mut self, now: u64, finger: i32, weight: Weight, place: Place) -> bool {
        if now < self.palm_until {
            // It is still rolling off.
            self.palm_until = now + PALM_MS;
        }
        let takes = self.takes(now, weight, &place);
        if !takes {
            self.holds_on(now, weight, &place);
        }
        let number = self.number;
        self.down = Some(Down {
            finger,
            place,
            number,
        });
        takes
    }

    /// Whoever taps on and on has not looked: what is held back is held for as long again.
    fn holds_on(&mut self, now: u64, weight: Weight, place: &Place) {
        let again = self.last.as_ref().is_some_and(|last| last.is_near(place));
        match weight {
            Weight::Main if now < self.full_at => self.full_at = now + FILL_MS,
            Weight::Entry if now < self.open_at && again => self.open_at = now + FILL_MS,
            Weight::Main | Weight::Entry | Weight::Quick => {}
        }
    }

    /// A finger left the button that it came down on, or held it long enough: does the tap count?
    /// Slint lets go of the first finger when a second one comes down, in the second one's name.
    pub fn up(&mut self, now: u64, finger: i32) -> bool {
        let Some(down) = self.down.as_ref().filter(|down| down.finger == finger) else {
            self.palm_until = now + PALM_MS;
            return false;
        };
        self.last = Some(down.place.clone());
        self.quiet_until = now + BOUNCE_MS;
        true
    }

    /// A tap without a finger: by a key, a switch or an assistive tool.
    pub fn act(&mut self, now: u64, weight: Weight, place: Place) -> bool {
        self.down(now, 0, weight, place) && self.up(now, 0)
    }

    /// A touch or key of a sleeping screen: the tap that wakes it, unless one is on its way.
    pub fn wake(&mut self, now: u64, place: Place) -> bool {
        if !self.asleep || self.pending.is_some() {
            return false;
        }
        (self.last, self.quiet_until) = (Some(place.clone()), now + BOUNCE_MS);
        self.down = Some(Down {
            finger: 0,
            place,
            number: self.number,
        });
        true
    }

    /// A tap that counted goes on its way.
    pub fn send(&mut self, now: u64, tap: Tap) -> Meant {
        self.sent += 1;
        let (id, since) = (self.sent, now);
        self.pending = Some(Pending { id, since });
        let number = self.down.as_ref().map_or(self.number, |down| down.number);
        Meant { tap, number, id }
    }

    /// When the main button began to fill, while it does.
    #[must_use]
    pub fn fills_since(&self, now: u64) -> Option<u64> {
        (now < self.full_at).then(|| self.full_at.saturating_sub(FILL_MS))
    }

    /// Whether it is to be told that a tap is not answered yet.
    #[must_use]
    pub fn is_saving(&self, now: u64) -> bool {
        self.pending.is_some_and(|p| now >= p.since + SAVING_MS)
    }

    /// When any of this changes by itself the next time.
    #[must_use]
    pub fn changes_at(&self, now: u64) -> Option<u64> {
        let saving = self.pending.map_or(0, |p| p.since + SAVING_MS);
        let all = [
            self.full_at,
            self.open_at,
            self.turned_at,
            self.quiet_until,
            self.palm_until,
            saving,
        ];
        all.into_iter().filter(|at| *at > now).min()
    }
}

/// What a face is to its main button: who, which screen, which rung. Whom the others are, what an
/// undo would do and which call of a meet comes next do not matter to it.
fn face(frame: &Frame) -> Frame {
    let mut face = Frame {
        chips: Vec::new(),
        undo: String::new(),
        undo_detail: String::new(),
        ..meaning(frame)
    };
    if let Screen::Meet(page) = &mut face.screen {
        page.calls.clear();
    }
    face
}

/// The page of a frame.
fn page(frame: &Frame) -> Page {
    let title = match &frame.screen {
        Screen::List(list) => &list.title,
        Screen::Page(page) => &page.title,
        Screen::Typing(typing) => &typing.title,
        Screen::Choose(_)
        | Screen::SetUp(_)
        | Screen::Bar(_)
        | Screen::Entry(_)
        | Screen::Turn(_)
        | Screen::Holds(_)
        | Screen::Rest(_)
        | Screen::Stop(_)
        | Screen::Settle(_)
        | Screen::End(_)
        | Screen::Floor(_)
        | Screen::History(_)
        | Screen::Why(_)
        | Screen::Meet(_) => &frame.lift,
    };
    let which = discriminant(&frame.screen);
    (which, frame.asleep, frame.lifter.clone(), title.clone())
}

/// How heavy the main button weighs on a screen. It fills but where it only turns pages, or keeps
/// what was typed.
#[must_use]
pub fn weight_of_main(screen: &Screen) -> Weight {
    if matches!(screen, Screen::History(_) | Screen::Why(_)) {
        Weight::Quick
    } else if matches!(
        screen,
        Screen::List(_) | Screen::Page(_) | Screen::Typing(_)
    ) {
        Weight::Entry
    } else {
        Weight::Main
    }
}

/// How heavy the button at the bottom left weighs, and a digit by a key: both are quick where
/// nothing of a lift is entered.
#[must_use]
pub fn weight_of_others(screen: &Screen) -> Weight {
    let turns_pages = matches!(
        screen,
        Screen::History(_) | Screen::Why(_) | Screen::List(_) | Screen::Page(_) | Screen::Typing(_)
    );
    if turns_pages {
        Weight::Quick
    } else {
        Weight::Entry
    }
}
