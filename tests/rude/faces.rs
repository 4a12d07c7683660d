//! What must be true of every face, and of two faces that should be the same.
use super::people::People;
use kiosk::rehearse::{Answer, BothSides, Rehearsal};
use view::{Frame, Screen};

/// Where one lifter's turn can be spoken of, the button for it is drawn; chips and lists agree.
pub(super) fn sound(face: &Answer, frame: &Frame) -> Result<(), String> {
    let drawn = |label: &str| face.buttons.iter().any(|b| b.label == label);
    // In whatever language somebody chose meanwhile.
    if has_turn(frame) && (frame.turn.is_empty() || !drawn(&frame.turn)) {
        return Err(format!("nobody can put the turn off on {}", face.screen));
    }
    let mut names: Vec<&str> = frame
        .chips
        .iter()
        .map(|chip| chip.lifter.as_str())
        .collect();
    names.sort_unstable();
    if names.windows(2).any(|two| two[0] == two[1]) {
        return Err(format!("a name comes twice: {:?}", frame.chips));
    }
    let (Some(left), Some(right)) = (&face.left, &face.right) else {
        return Ok(());
    };
    let (Some(off), Some(on), Some(believed)) = (&face.take_off, &face.put_on, &face.believed)
    else {
        return Err("the plates to move are not told".into());
    };
    follows(&believed.left, &off.left, &on.left, left)?;
    follows(&believed.right, &off.right, &on.right, right)
}

/// Whether this is a screen of somebody under way: two taps at most must tell that they go later,
/// skip, need longer, leave or are back.
fn has_turn(frame: &Frame) -> bool {
    match &frame.screen {
        Screen::Bar(_)
        | Screen::Settle(_)
        | Screen::Stop(_)
        | Screen::Entry(_)
        | Screen::Rest(_)
        | Screen::Holds(_) => true,
        Screen::SetUp(setup) => setup.main == "back to the bar",
        Screen::Turn(_)
        | Screen::History(_)
        | Screen::Why(_)
        | Screen::Choose(_)
        | Screen::Floor(_)
        | Screen::End(_)
        | Screen::Meet(_)
        | Screen::List(_)
        | Screen::Page(_)
        | Screen::Typing(_) => false,
    }
}

/// From what is believed by what is moved to what is wanted.
fn follows(
    believed: &[String],
    off: &[String],
    on: &[String],
    wanted: &[String],
) -> Result<(), String> {
    let stays = believed
        .len()
        .checked_sub(off.len())
        .ok_or("too much off")?;
    let (inner, outer) = believed.split_at(stays);
    let outermost_first = outer.iter().rev().eq(off);
    if !outermost_first || !inner.iter().chain(on).eq(wanted) {
        return Err(format!(
            "{believed:?} less {off:?} and {on:?} is not {wanted:?}"
        ));
    }
    Ok(())
}

/// Whether something is looked at beside the ladder: after a restart it is what is under it.
pub(super) fn is_aside(frame: &Frame) -> bool {
    matches!(
        frame.screen,
        Screen::History(_)
            | Screen::Why(_)
            | Screen::Meet(_)
            | Screen::List(_)
            | Screen::Page(_)
            | Screen::Typing(_)
    )
}

/// The same face: every word, plate and timer that is drawn.
pub(super) fn same(before: &Frame, after: &Frame) -> Result<(), String> {
    let plain = |frame: &Frame| Frame {
        number: 0,
        answers: 0,
        asleep: false,
        shift: (0, 0),
        notice: String::new(),
        ..frame.clone()
    };
    let (before, after) = (plain(before), plain(after));
    if before == after {
        return Ok(());
    }
    let (before, after) = (format!("{before:?}"), format!("{after:?}"));
    let differ = before.bytes().zip(after.bytes()).position(|(a, b)| a != b);
    let from = differ.unwrap_or(0).saturating_sub(120);
    let part = |text: &str| {
        let tail = text.chars().skip(from).take(300);
        tail.collect::<String>()
    };
    let whole: String = before.chars().take(200).collect();
    Err(format!(
        "{whole}... was, then ...{} became ...{}",
        part(&before),
        part(&after)
    ))
}

/// The same work for the same lifter, whatever the clock on the wall says.
pub(super) fn same_work(before: &Answer, after: &Answer) -> Result<(), String> {
    let key = |a: &Answer| {
        format!(
            "{:?}",
            (
                (a.screen, &a.lifter, &a.lift, &a.load, a.reps, &a.bar),
                (&a.left, &a.right, &a.take_off, &a.put_on),
                (a.hole, &a.mats, a.sets_logged, a.rest_s),
            )
        )
    };
    if key(before) == key(after) {
        return Ok(());
    }
    Err(format!("{} became {}", key(before), key(after)))
}

/// The set that was logged last is that of the lifter, load and reps of the face.
pub(super) fn belongs(
    rehearsal: &Rehearsal,
    who: &str,
    face: &Answer,
    reps: Option<u8>,
) -> Result<(), String> {
    let (state, date) = (rehearsal.kiosk().state(), rehearsal.kiosk().date());
    let last = state.lifts_of(who, date).filter_map(|run| {
        let at = run.passed().count().checked_sub(1)?;
        let rung = run.sheet.rungs.get(at)?;
        let entry = run.last_set()?;
        let domain::state::Entered::Set { reps, .. } = entry.what else {
            return None;
        };
        Some((entry.at, rung.load.words(run.sheet.unit), reps))
    });
    let last = last.max_by_key(|(at, ..)| *at);
    let logged = last.map(|(_, load, reps)| (Some(load), Some(reps)));
    let shown = face.load.as_ref().map(|load| load.replace(',', "."));
    if logged == Some((shown, reps)) {
        return Ok(());
    }
    Err(format!(
        "{who} lifted {:?} for {reps:?}, logged is {logged:?}",
        face.load
    ))
}

impl People {
    /// What the floor says of each lifter is what their own screen says.
    pub(super) fn floor(&mut self) {
        self.note("floor", "");
        self.out.floors += 1;
        self.tap("all lifters");
        if !self.tap("floor") {
            return;
        }
        let Screen::Floor(floor) = self.rehearsal.frame().screen.clone() else {
            return;
        };
        for rack in floor.racks {
            let later = rack.next.iter().chain(&rack.then).map(|turn| (turn, false));
            let turns: Vec<_> = rack.up.iter().map(|up| (up, true)).chain(later).collect();
            let mut seen: Vec<&str> = Vec::new();
            for (turn, up) in turns {
                // A lifter's second turn is not on their own screen yet.
                if seen.contains(&turn.lifter.as_str()) {
                    continue;
                }
                seen.push(&turn.lifter);
                self.tap("all lifters");
                if !self.tap(&turn.lifter) {
                    continue;
                }
                let own = self.face.clone();
                let told = agrees(turn, up, &own, self.rehearsal.frame());
                // Somebody may have been passed over on the way there: then the floor says so too.
                if let Err(fault) = told
                    && self.still_says(turn)
                {
                    self.fault(format!("{fault}: floor {turn:?}, own screen {own:?}"));
                    return;
                }
            }
        }
    }
}

impl People {
    /// Whether the floor of now has that turn as it was read before.
    fn still_says(&mut self, turn: &view::floor::FloorTurn) -> bool {
        self.tap("all lifters");
        self.tap("floor");
        let Screen::Floor(floor) = &self.rehearsal.frame().screen else {
            return false;
        };
        let same = |other: &view::floor::FloorTurn| {
            (&other.lifter, &other.lift, &other.order) == (&turn.lifter, &turn.lift, &turn.order)
        };
        let turns = floor.racks.iter();
        let mut turns = turns.flat_map(|rack| rack.up.iter().chain(&rack.next).chain(&rack.then));
        turns.any(same)
    }
}

/// One turn of the floor beside its lifter's own screen.
fn agrees(
    turn: &view::floor::FloorTurn,
    up: bool,
    own: &Answer,
    frame: &Frame,
) -> Result<(), &'static str> {
    if own.lifter.as_ref() != Some(&turn.lifter) {
        return Err("another lifter's screen");
    }
    if !matches!(own.screen, "bar" | "rest") {
        return Ok(());
    }
    if own.load != Some(format!("{} {}", turn.load, turn.unit)) {
        return Err("another load");
    }
    let (reps, spot) = if let Screen::Bar(bar) = &frame.screen {
        (&bar.reps, &bar.spot)
    } else if let Screen::Rest(rest) = &frame.screen {
        (&rest.reps, &rest.spot)
    } else {
        return Ok(());
    };
    if *reps != turn.reps {
        return Err("other reps");
    }
    if *spot != turn.spot {
        return Err("another hole, mat, height or gear");
    }
    if !up {
        return if own.screen == "bar" {
            Err("at the bar, and not up")
        } else {
            Ok(())
        };
    }
    let Some(order) = &turn.order else {
        return Err("up, and no plates are told");
    };
    let both = |lists: &view::loading::SideLists| BothSides {
        left: lists.left.clone(),
        right: lists.right.clone(),
    };
    let told = own.left.as_ref() == Some(&order.holds.left)
        && own.right.as_ref() == Some(&order.holds.right)
        && own.take_off == Some(both(&order.take_off))
        && own.put_on == Some(both(&order.put_on))
        && own.believed.as_ref().map(|b| b.in_doubt) == Some(order.in_doubt);
    if told { Ok(()) } else { Err("other plates") }
}
