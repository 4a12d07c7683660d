//! The coach's desk from the kiosk's side: lays out the stick and the copies, carries orders out.
//!
//! Refuses: keeping the owner's thread from a tap for longer than a plan takes to be appended;
//! what takes time runs on threads of its own. A copy is proven there too; to put it back is a
//! matter of two names.
mod handed;
mod watch;

pub(crate) use self::handed::Handed;
use self::handed::Shelf;
use self::watch::{identity, watch};
use crate::clock::{Clock as _, SystemClock};
use crate::copies::{copy_to, lay_out_copies};
use crate::desk::{fault_words, in_words, said};
use crate::folder::Folder;
use crate::input::{Answer, Input, Read, Seen, Tried};
use crate::kiosk::{Kiosk, Proven, make_record, remake_record};
use crate::odd_rows::odd_rows;
use crate::stick::{Stick, StickPlan, write_back};
use plan::{Fault, Words};
use share::{Desk, Order, Told};
use std::path::{Path, PathBuf};
use std::sync::mpsc::Sender;
use std::sync::{Arc, Weak};
use view::Language;
use view::desk::{Errand, StickIn, StickNews};
use view::language::Said;

/// The desk and what lies on it.
#[derive(Debug)]
pub struct CoachDesk {
    folder: Folder,
    desk: Desk,
    inputs: Sender<Input>,
    /// Where sticks appear.
    sticks: Option<PathBuf>,
    /// The second place, and how many copies are kept there.
    copies: Option<(PathBuf, usize)>,
    /// The stick that is laid out.
    stick: Option<(String, Stick)>,
    /// Alive as long as a copy is being proven.
    proving: Weak<()>,
    /// The language in which the screen's desk was told; `None` before.
    told: Option<Language>,
    /// Whether what takes time is waited for.
    waits: bool,
    /// Plans that coaches chose in browsers.
    shelf: Shelf,
}

impl CoachDesk {
    /// Opens the desk, and starts to look for sticks where the settings name a place.
    #[must_use]
    pub fn open(kiosk: &Kiosk, folder: &Folder, desk: Desk, inputs: Sender<Input>) -> Self {
        let coach_desk = Self::laid(kiosk, folder, desk, inputs);
        if let Some(place) = coach_desk.sticks.clone() {
            watch(place, coach_desk.inputs.clone());
        }
        coach_desk
    }

    /// As [`CoachDesk::open`] for a rehearsal: nothing looks for sticks by itself, and what takes
    /// time is done at once, so that every rehearsal goes the same way.
    #[must_use]
    pub fn open_here(kiosk: &Kiosk, folder: &Folder, desk: Desk, inputs: Sender<Input>) -> Self {
        Self {
            waits: true,
            ..Self::laid(kiosk, folder, desk, inputs)
        }
    }

    /// From now on sticks appear at `place`, and what lies there is looked at.
    pub fn plug(&mut self, kiosk: &Kiosk, place: PathBuf) {
        let id = identity(&place);
        self.sticks = Some(place);
        self.look(kiosk, id);
    }

    fn laid(kiosk: &Kiosk, folder: &Folder, desk: Desk, inputs: Sender<Input>) -> Self {
        let config = kiosk.config();
        let coach_desk = Self {
            folder: folder.clone(),
            desk,
            inputs,
            sticks: config.stick.as_ref().map(PathBuf::from),
            copies: config
                .backup
                .as_ref()
                .map(|place| (PathBuf::from(place), usize::from(config.backups))),
            stick: None,
            proving: Weak::new(),
            told: None,
            waits: false,
            shelf: Shelf::default(),
        };
        let orders = coach_desk.inputs.clone();
        coach_desk
            .desk
            .on_order(move |order| drop(orders.send(Input::Order(order))));
        let today = kiosk.date();
        match plan::blank_xlsx(kiosk.gym(), today) {
            Ok(xlsx) => {
                let csv = plan::blank_csv(kiosk.gym(), today).into_bytes();
                coach_desk.desk.offer_blanks(xlsx, csv);
            }
            Err(error) => tracing::warn!(error, "no blank plan is offered"),
        }
        lay_out_copies(
            &coach_desk.desk,
            coach_desk.copies.as_ref().map(|(place, _)| place.as_path()),
        );
        coach_desk
    }

    /// Something has changed where sticks appear: reads it on a thread of its own.
    pub fn look(&self, kiosk: &Kiosk, id: String) {
        let Some(place) = self.sticks.clone() else {
            return;
        };
        let (gym, inputs) = (kiosk.gym().clone(), self.inputs.clone());
        self.aside("stick", move || {
            let stick = Stick::read(&place, &gym).ok();
            if identity(&place) != id {
                return; // It has changed meanwhile, and is told again.
            }
            // Nobody hears it when the kiosk has ended.
            drop(inputs.send(Input::Stick(Seen { id, stick })));
        });
    }

    /// Lays out a stick that was read.
    pub fn lay_out(&mut self, kiosk: &mut Kiosk, seen: Seen) {
        let is_empty = |stick: &Stick| stick.plans.is_empty() && stick.passed.is_empty();
        self.stick = match seen.stick {
            // A place without anything on it is no stick, or one to write the record to.
            Some(stick) if is_empty(&stick) && seen.id.is_empty() => None,
            stick => stick.map(|stick| (seen.id, stick)),
        };
        self.tell(kiosk);
    }

    /// Carries an order out, and answers it.
    pub fn obey(&mut self, kiosk: &mut Kiosk, order: Order) {
        let Order { errand, answer } = order;
        self.carry_out(kiosk, errand, Answer::Page(answer));
    }

    /// Tells the screen's desk what lies here, and carries out what was ordered there.
    pub fn serve(&mut self, kiosk: &mut Kiosk) {
        if self.told.as_ref() != Some(&kiosk.language()) {
            self.told = Some(kiosk.language());
            self.tell(kiosk);
        }
        let counter = self.desk.counter();
        kiosk.tell_copies(counter.has_place.then_some(counter.copies));
        if let Some(errand) = kiosk.errand() {
            let answer = Answer::Screen(self.inputs.clone());
            self.carry_out(kiosk, errand, answer);
        }
    }

    /// Puts the stick on the page's desk and on the screen's.
    fn tell(&self, kiosk: &mut Kiosk) {
        let stick = self.stick.as_ref();
        let lies = stick.map(|(id, stick)| shown(kiosk, id, stick));
        self.desk.lay_out(|counter| counter.stick.clone_from(&lies));
        kiosk.tell_stick(match (&self.sticks, lies) {
            (None, _) => StickNews::Unset,
            (Some(_), None) => StickNews::Out,
            (Some(_), Some(lies)) => StickNews::In(lies),
        });
    }

    fn carry_out(&mut self, kiosk: &mut Kiosk, errand: Errand, answer: Answer) {
        match errand {
            Errand::TakeStick(id) => {
                let told = self.take(kiosk, &id);
                answer.send(told);
            }
            Errand::Coach(deed) => {
                let told = kiosk.coach(&deed);
                answer.send(told);
            }
            Errand::Week(deed) => {
                let told = kiosk.change_week(&deed);
                answer.send(told);
            }
            Errand::ReadPlan(file) => {
                let (gym, inputs) = (kiosk.gym().clone(), self.inputs.clone());
                self.aside("plan", move || {
                    let handed = Handed::read(&file, gym);
                    // Nobody hears it when the kiosk has ended.
                    drop(inputs.send(Input::Handed(Box::new(Read { handed, answer }))));
                });
            }
            Errand::TakePlan { id, mark } => {
                let told = self.shelf.take((kiosk, &self.desk), (&id, &mark), shown);
                self.tell(kiosk);
                answer.send(told);
            }
            Errand::Restore(name) => {
                if let Err((told, answer)) = self.prove(&name, answer) {
                    answer.send(told);
                }
            }
            Errand::WriteStick(id) => {
                let (data, place) = (self.folder.clone(), self.sticks.clone());
                self.aside("write to stick", move || {
                    let told = match place {
                        None => Told::NoSticks,
                        // Without the stick its place is a folder of this machine.
                        Some(place) if identity(&place) != id => Told::OtherStick,
                        Some(place) => written(&data, &place),
                    };
                    answer.send(told);
                });
            }
            Errand::BackUp => {
                let (data, copies, desk) =
                    (self.folder.clone(), self.copies.clone(), self.desk.clone());
                self.aside("copy", move || {
                    let told = copied(&data, copies.as_ref());
                    lay_out_copies(&desk, copies.as_ref().map(|(place, _)| place.as_path()));
                    answer.send(told);
                });
            }
        }
    }

    /// A plan from a browser was read: lays it out.
    pub fn lay_plan(&mut self, kiosk: &Kiosk, Read { handed, answer }: Read) {
        self.shelf.lay((kiosk, &self.desk), handed, shown);
        answer.send(Told::Handed);
    }

    fn take(&mut self, kiosk: &mut Kiosk, id: &str) -> Told {
        let Some((_, stick)) = self.stick.as_ref().filter(|(now, _)| now == id) else {
            return Told::OtherStick;
        };
        if !stick.is_sound() {
            return Told::StickFaults;
        }
        let (name, rows) = stick.together();
        let count = rows.len();
        match kiosk.take_plan(name, rows) {
            Ok(()) => {
                self.tell(kiosk);
                Told::Took(count)
            }
            Err(error) => Told::NotTaken(said(&error)),
        }
    }

    /// Proves a copy on a thread of its own; what comes of it is told as an input. Taps are
    /// answered meanwhile, from the journal that still stands.
    ///
    /// # Errors
    /// Why nothing is done, with the answer's way back.
    fn prove(&mut self, name: &str, answer: Answer) -> Result<(), (Told, Answer)> {
        if self.proving.strong_count() > 0 {
            return Err((Told::PuttingBack, answer));
        }
        let Some((place, _)) = &self.copies else {
            return Err((Told::NoPlace, answer));
        };
        let known = journal::copies(place).unwrap_or_default();
        let is_named = |path: &PathBuf| path.file_name().is_some_and(|n| n == name);
        let Some(copy) = known.into_iter().find(is_named) else {
            return Err((Told::CopyGone, answer));
        };
        let alive = Arc::new(());
        self.proving = Arc::downgrade(&alive);
        let (folder, inputs) = (self.folder.clone(), self.inputs.clone());
        self.aside("prove copy", move || {
            let proven = Proven::of(&copy, &folder);
            // Nobody hears it when the kiosk has ended.
            let tried = Tried {
                proven,
                answer,
                _alive: alive,
            };
            drop(inputs.send(Input::Proven(Box::new(tried))));
        });
        Ok(())
    }

    /// Puts a copy back that was proven, and has the record made again.
    pub fn put_back(&mut self, kiosk: &mut Kiosk, tried: Tried) {
        let Tried { proven, answer, .. } = tried;
        let told = match proven.and_then(|proven| kiosk.put_back(&self.folder, proven)) {
            Ok(events) => {
                let (folder, inputs) = (self.folder.clone(), self.inputs.clone());
                self.aside("make record", move || {
                    make_record(&folder);
                    drop(inputs.send(Input::RecordMade));
                });
                Told::Restored(events)
            }
            Err(error) => Told::NotRestored(said(&error)),
        };
        answer.send(told);
    }

    /// The record was made again.
    pub fn record_made(&self, kiosk: &mut Kiosk) {
        kiosk.follow_anew(&self.folder);
    }

    /// The record was found damaged: it is told, and made again.
    pub fn remake_record(&self, kiosk: &mut Kiosk) {
        kiosk.tell_record();
        let (folder, inputs) = (self.folder.clone(), self.inputs.clone());
        self.aside("make record", move || {
            remake_record(&folder);
            drop(inputs.send(Input::RecordMade));
        });
    }

    /// Runs what takes time on a thread of its own.
    fn aside(&self, name: &'static str, work: impl FnOnce() + Send + 'static) {
        if self.waits {
            work();
            return;
        }
        let work = move || {
            crate::watch::stand_back();
            work();
        };
        if let Err(error) = crate::watch::spawn_once(name, work, |_| {}) {
            tracing::error!(%error, name, "the system gives no thread");
        }
    }
}

/// A stick as a desk shows it.
fn shown(kiosk: &Kiosk, id: &str, stick: &Stick) -> StickIn {
    let words = |fault: &Fault| Said::of(|say| fault_words(say, fault));
    let why = |passed: &Words| Said::of(|say| in_words(say, passed));
    let plan = |plan: &StickPlan| {
        let read = match plan.faults.iter().any(Fault::stops) {
            false => Ok(plan.rows.len()),
            true => Err(plan.faults.iter().map(&words).collect()),
        };
        (plan.name.clone(), read)
    };
    let can_take = stick.is_sound();
    // What was left out of a plan that can be taken is told like what was passed over.
    let left_out = stick
        .plans
        .iter()
        .filter(|plan| !plan.faults.iter().any(Fault::stops));
    let left_out = left_out.flat_map(|plan| plan.faults.iter().map(&words));
    let (name, rows) = stick.together();
    let odd = odd_rows(&name, kiosk.gym(), kiosk.state(), &rows);
    let odd = odd.iter().map(words);
    let passed = stick.passed.iter().map(why).chain(left_out).chain(odd);
    let passed = passed.collect();
    StickIn {
        id: id.to_owned(),
        plans: stick.plans.iter().map(plan).collect(),
        passed,
        changes: match can_take {
            true => stick.changes(kiosk.state()),
            false => Vec::new(),
        },
        can_take,
    }
}

fn written(data: &Folder, place: &Path) -> Told {
    let stamp = SystemClock.local().format("%Y-%m-%d-%H%M%S").to_string();
    match write_back(data.path(), place, &stamp) {
        Ok(_) => Told::Written,
        Err(error) => Told::NotWritten(said(&error)),
    }
}

fn copied(data: &Folder, copies: Option<&(PathBuf, usize)>) -> Told {
    let Some((place, keep)) = copies else {
        return Told::NoPlace;
    };
    let stamp = SystemClock.local().format("%Y-%m-%dT%H%M%S").to_string();
    match copy_to(data.path(), place, &stamp, *keep) {
        Ok(copied) => Told::Copied(copied.report.events),
        Err(error) => Told::NotCopied(said(&error.into())),
    }
}
