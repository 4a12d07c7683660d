//! What happens to the kiosk itself: restarts, cut power, a clock that is set, a slow disk, time.
use super::faces;
use super::people::People;
use domain::believed::Said;
use domain::event::Fact;
use journal::Journal;
use kiosk::Folder;
use kiosk::rehearse::{Line, moment};
use view::{Deed, Frame};

/// Milliseconds of a slow disk at most.
const SLOW_MAX_MS: u64 = 2_500;

impl People {
    /// Nobody does anything: for a rest, a talk, a meal.
    pub(super) fn pass_time(&mut self) {
        let s = match self.dice.roll(20) {
            0 => 300 + self.dice.roll(1_500),
            1 => 7_000 + self.dice.roll(2_000),
            _ => 10 + self.dice.roll(240),
        };
        self.note("wait", format!("{s} s"));
        self.line(&Line::Wait(s * 1_000));
    }

    /// The kiosk is started anew at any instant: the face is the same, and every timer.
    pub(super) fn restart(&mut self) {
        let ms = self.dice.roll(3_000);
        self.line(&Line::Wait(ms));
        self.note("restart", format!("after {ms} ms"));
        self.out.restarts += 1;
        let (before, told) = (self.rehearsal.frame().clone(), self.face.clone());
        self.line(&Line::Restart);
        if let Err(fault) = faces::same(&before, self.rehearsal.frame()) {
            self.fault(format!("restart: {fault}; {told:?}"));
        }
    }

    /// The power is cut in the midst of a tap, between two of its events: the next start shows
    /// what the tap would have shown.
    pub(super) fn cut_in_tap(&mut self) {
        let open = self.face.buttons.iter().filter(|b| b.enabled);
        let deeds = [
            Deed::Done,
            Deed::Start,
            Deed::Mine,
            Deed::Go,
            Deed::Undo,
            Deed::Later,
            Deed::Leave,
            Deed::Longer,
            Deed::Skip,
            Deed::Choose,
        ];
        let words = deeds.map(Deed::word);
        let open = open.filter(|b| words.contains(&b.does));
        let open: Vec<_> = open.map(|b| (b.label.clone(), b.does)).collect();
        let Some((label, does)) = self.dice.pick(&open).cloned() else {
            return;
        };
        let face = self.face.clone();
        if does == Deed::Done.word() && !self.load(&face) {
            return;
        }
        let from = self.rehearsal.kiosk().seq();
        self.note("cut", format!("in {label}"));
        self.hear(&Line::tap(label.clone()));
        if does == Deed::Done.word() {
            self.logged_once(&face, face.reps);
        }
        self.cut_after(from);
    }

    /// As many of the events after `from` as by chance, on a journal of their own.
    fn cut_after(&mut self, from: u64) {
        let journal = Journal::open(&self.rehearsal.folder().journal()).expect("a journal");
        let events = journal.events_after(0).expect("events");
        let new = events.iter().filter(|(seq, _)| *seq > from).count();
        if new < 2 || faces::is_aside(self.rehearsal.frame()) {
            return;
        }
        let cut = usize::try_from(self.dice.roll(new as u64 - 1)).unwrap_or(0);
        let mut kept = events.len() - 1 - cut;
        // Where nothing of the tap was written but what the machine says of itself, it was not
        // heard; somebody who was passed over meanwhile is another matter than the tap.
        let new = || events.iter().filter(|(seq, _)| *seq > from);
        let passed = new().any(|(_, event)| matches!(event.fact, Fact::TurnPassed { .. }));
        let heard = |event: &domain::Event| {
            let of_machine = matches!(event.fact, Fact::ClockSet { .. } | Fact::ScreenShown(_));
            !of_machine
        };
        let kept_of_it = kept.saturating_sub(events.len() - new().count());
        if passed || !new().take(kept_of_it).any(|(_, event)| heard(event)) {
            return;
        }
        // A set and its plates are written in one piece.
        let last = events.get(kept - 1).map(|(_, event)| &event.fact);
        if matches!(last, Some(Fact::BarSaid(word)) if matches!(word.said, Said::Set(_))) {
            kept += 1;
        }
        let kept: Vec<_> = events.into_iter().take(kept).map(|(_, e)| e).collect();
        let frame = self.started_after(&kept);
        self.out.cuts += 1;
        if let Err(fault) = faces::same(self.rehearsal.frame(), &frame) {
            let last: Vec<_> = kept.iter().rev().take(2).map(|e| &e.fact).collect();
            let fault = format!("cut {} events before the last: {fault}; {last:?}", cut + 1);
            self.fault(fault);
        }
    }

    /// The face of a kiosk that starts now on a journal of these events.
    fn started_after(&self, events: &[domain::Event]) -> Frame {
        let place = tempfile::tempdir().expect("a folder");
        let folder = Folder::open(Some(place.path())).expect("a folder");
        let mut journal = Journal::open(&folder.journal()).expect("a journal");
        journal.append(0, events).expect("events");
        drop(journal);
        self.rehearsal.face_on(&folder).expect("it starts")
    }

    pub(super) fn clock(&mut self) {
        let times = [
            "2026-12-02T17:00",
            "2026-12-02T18:00",
            "2026-12-02T23:59",
            "2026-12-03T00:01",
            "1970-01-01T00:00",
            "2027-06-01T12:00",
        ];
        let time = self.dice.pick(&times).copied().unwrap_or(times[0]);
        self.note("clock", time);
        // Whoever is to be passed over by now is.
        self.line(&Line::Wait(600));
        let (before, day) = (self.face.clone(), self.rehearsal.kiosk().date());
        let at = moment(time).expect("a time");
        self.line(&Line::Clock(at));
        // Where nobody was under way it is another day.
        let same_day = self.rehearsal.kiosk().date() == day;
        let told = faces::same_work(&before, &self.face);
        if same_day && let Err(fault) = told {
            self.fault(format!("the clock was set to {time}: {fault}"));
        }
    }

    /// From now on taps are answered late, or at once again.
    pub(super) fn slow_disk(&mut self) {
        let ms = if self.dice.chance(60) {
            50 + self.dice.roll(SLOW_MAX_MS)
        } else {
            0
        };
        self.note("slow", format!("{ms} ms"));
        self.rehearsal.be_slow(ms);
    }

    /// Taps in the very moment in which the rest ends and the face changes by itself.
    pub(super) fn last_moment(&mut self) {
        let going = self.face.button(Deed::Go).or(self.face.button(Deed::Mine));
        let (Some(label), Some(rest_s)) = (going.map(str::to_owned), self.face.rest_s) else {
            return;
        };
        let ms = (u64::from(rest_s) * 1_000).saturating_sub(self.dice.roll(1_500));
        self.note("last moment", format!("{label} after {ms} ms"));
        self.line(&Line::Wait(ms.saturating_sub(2_000)));
        self.rehearsal.pass_unseen(ms.min(2_000));
        self.line(&Line::tap(label));
    }
}
