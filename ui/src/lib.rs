//! The window of the kiosk: theme, widgets and screens in Slint, and the thin Rust that fills
//! them from `view`'s plain structs and reports taps.
//!
//! Refuses: state, time of day, files, any decision about a set. It knows nothing but `view`.
//!
//! # Taps and their labels
//! Whatever can be pressed has the accessible role `button` and an accessible label that equals
//! the words one sees, so that a test or an assistive tool finds it:
//!
//! | Label | Where | [`view::Tap`] |
//! |---|---|---|
//! | the lifter's name | tile on the screen of all lifters | `Lifter(name)` |
//! | `switch to NAME` (shows the name and a word) | chip in the header | `Lifter(name)` |
//! | `all lifters` | header; the floor | `All` |
//! | the frame's `undo`: `undo`, `back` | bottom left | `Undo` |
//! | the screen's `main`, then `, ` and `main_detail` if there is one: `2 done, back held` | bottom right | `Main` |
//! | `other reps` | at the bar | `OtherReps` |
//! | `back moved` | at the bar | `BackMoved` |
//! | `set-up` | at the bar, rest | `SetUp` |
//! | the screen's `settle`: `other load` | at the bar, rest, before the first work set | `Settle` |
//! | load and unit: `182.5 kg` | work loads to choose from | `Choose(n)` |
//! | `1`, `2`, ... | pad | `Number(n)` |
//! | the pad's `through`: `stopped there`, `did all 5` | pad of the moved back | `WentThrough` |
//! | the pad's `skip`: `skip this rung` | pad of reps | `Skip` |
//! | the pad's `stop`: `end the lift` | pad of reps | `Stop` |
//! | the screen's `go_on`: `go on, coach agrees` | the back moved | `GoOn` |
//! | the screen's `floor`: `floor` | screen of all lifters | `Floor` |
//! | the lifter's name | a turn on the floor | `Lifter(name)` |
//! | `history` | set-up, end | `History` |
//! | `LIFTER, LOAD SET`: `Hamza, 140 kg × 2` | meet day | `Row(n)` |
//! | the screen's `sooner`, `later`: `a minute later` | meet day | `Sooner`, `Later` |
//! | the screen's `why`: `why` | end | `Why` |
//! | the screen's `panel`: `kiosk` | screen of all lifters | `Panel` |
//! | a row's title, then `, ` and its value | a list | `Row(n)` |
//! | `more` | a list of many rows; the window turns the page itself | none |
//! | `more lifters` | more lifters than tiles; the window turns the page itself | none |
//!
//! A second press within a quarter of a second of an accepted one is swallowed, wherever it
//! lands: a double bounce of one finger is one tap.

mod backend;
mod bar;
mod beside;
mod choose;
mod draw;
mod end;
mod entry;
mod face;
mod finger;
mod floor;
mod frame;
mod headless;
mod history;
mod holds;
mod list;
mod meet;
mod only_window;
mod picture;
mod prompt;
mod rest;
mod rows;
mod settle;
mod setup;
mod stop;
mod turn;
mod typing;
mod why;

#[allow(
    clippy::all,
    clippy::pedantic,
    clippy::restriction,
    missing_debug_implementations,
    unreachable_pub,
    unused_qualifications,
    unused_lifetimes,
    elided_lifetimes_in_paths,
    let_underscore_drop,
    reason = "Slint writes this code, not we"
)]
mod generated {
    slint::include_modules!();
}

pub use backend::{display_is_there, open_backend, quit_event_loop, run_event_loop};
pub use face::{Face, FaceHandle};
pub use generated::{Discs, KioskWindow, Shade, Theme};
pub use headless::{Headless, Place, Pressable};
pub use picture::{Picture, picture};
pub use slint;
