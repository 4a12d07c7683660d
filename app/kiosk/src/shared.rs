//! What the kiosk gives to its page: the floor for the boards, and at the end of a lift the link
//! to the lifter's own record.
//!
//! Refuses: names beyond those on the floor, a link that nobody else can reach (on loopback), and
//! any wait.
use share::{Board, BoardRack, BoardTurn, Desk};
use std::net::SocketAddr;
use view::end::Link;
use view::floor::{Floor, FloorRack, FloorTurn};
use view::{Frame, Language, Scene, Screen};

/// The desk, and what of it is on the screen.
#[derive(Debug)]
pub struct Shared {
    desk: Desk,
    /// `http://192.168.1.20:8470`; `None` where only this machine can reach the page.
    base: Option<String>,
    /// The last link that was drawn, and its drawing.
    drawn: Option<(String, Link)>,
}

impl Shared {
    /// The desk of a page that is reached at `base`.
    #[must_use]
    pub fn new(desk: Desk, base: Option<String>) -> Self {
        Self {
            desk,
            base,
            drawn: None,
        }
    }

    /// Shows the floor on the boards that follow, and puts the link on the end of a lift.
    pub fn follow(&mut self, scene: &Scene<'_>, frame: &mut Frame) {
        if self.desk.is_followed() {
            self.desk.show(&board(scene));
        }
        if let Screen::End(end) = &mut frame.screen {
            end.link = self.link(scene, &frame.lifter);
        }
    }

    fn link(&mut self, scene: &Scene<'_>, lifter: &str) -> Option<Link> {
        let base = self.base.as_ref()?;
        let run = scene.run(lifter)?;
        let ended = run.entries.last()?.at;
        let ago = u64::try_from(scene.now.0.saturating_sub(ended.0)).unwrap_or(0);
        let path = self.desk.link(run.no.0, lifter, ago)?;
        if self.drawn.as_ref().is_none_or(|(drawn, _)| *drawn != path) {
            let qr = share::qr(&format!("{base}{path}"))?;
            let link = Link {
                words: scene.language().own_record(),
                size: qr.size,
                dark: qr.dark,
            };
            self.drawn = Some((path, link));
        }
        self.drawn.as_ref().map(|(_, link)| link.clone())
    }
}

/// Where others reach a page at `at`.
#[must_use]
pub fn base(at: SocketAddr, tls: bool) -> Option<String> {
    (!at.ip().is_loopback()).then(|| format!("{}://{at}", scheme(tls)))
}

/// "https" or "http".
#[must_use]
pub fn scheme(tls: bool) -> &'static str {
    if tls { "https" } else { "http" }
}

fn board(scene: &Scene<'_>) -> Board {
    let Floor { racks, empty } = view::floor::floor(scene);
    Board {
        clock: scene.clock.into(),
        empty,
        racks: racks
            .into_iter()
            .map(|of| rack(scene.language(), of))
            .collect(),
    }
}

fn rack(say: Language, rack: FloorRack) -> BoardRack {
    BoardRack {
        name: rack.name,
        up: rack.up.map(|of| turn(say, of)),
        next: rack.next.map(|of| turn(say, of)),
        then: rack.then.into_iter().map(|of| turn(say, of)).collect(),
    }
}

fn turn(say: Language, turn: FloorTurn) -> BoardTurn {
    let hole = match turn.hole.as_str() {
        "" => String::new(),
        hole => say.hole(hole),
    };
    BoardTurn {
        lifter: turn.lifter,
        lift: turn.lift,
        load: format!("{} {}", turn.load, turn.unit),
        reps: turn.reps,
        hole,
        word: turn.word,
        change: turn.change.sentence,
    }
}
