//! Plans that coaches choose in browsers, by the kiosk that owns the state: two tabs, the same file
//! twice, days that change between look and press, heaps of faults, a power cut in between. No clock
//! of the wall, no network.
use kiosk::clock::BenchClock;
use kiosk::coach_desk::CoachDesk;
use kiosk::input::Input;
use kiosk::{Folder, Kiosk};
use share::{Desk, Order, Told};
use std::path::Path;
use std::sync::Arc;
use std::sync::mpsc::{Receiver, channel};
use view::desk::{Errand, PlanFile, PlanIn};

const HEAD: &str = "date,lifter,lift,sets,reps,load\n";

struct Gym {
    kiosk: Kiosk,
    coach_desk: CoachDesk,
    desk: Desk,
    inbox: Receiver<Input>,
}

fn gym(data: &Path) -> Gym {
    let folder = Folder::open(Some(data)).expect("opens");
    let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
    let kiosk = Kiosk::open(&folder, Box::new(clock)).expect("opens");
    let (inputs, inbox) = channel();
    let desk = Desk::new(data, || 0);
    let coach_desk = CoachDesk::open_here(&kiosk, &folder, desk.clone(), inputs);
    Gym {
        kiosk,
        coach_desk,
        desk,
        inbox,
    }
}

impl Gym {
    /// What the kiosk answers.
    fn of(&mut self, errand: Errand) -> Told {
        let (answer, mut answered) = tokio::sync::oneshot::channel();
        let mut input = Some(Input::Order(Order { errand, answer }));
        while let Some(next) = input {
            kiosk::run::answer(&mut self.kiosk, &mut self.coach_desk, Ok(next));
            input = self.inbox.try_recv().ok();
        }
        answered.try_recv().expect("an answer")
    }

    fn read(&mut self, id: &str, rows: &str) -> Arc<PlanIn> {
        let file = PlanFile {
            id: id.to_owned(),
            name: "../\u{7}week.csv".to_owned(),
            bytes: format!("{HEAD}{rows}").into_bytes(),
        };
        let before = self.kiosk.seq();
        assert_eq!(self.of(Errand::ReadPlan(Box::new(file))), Told::Handed);
        assert_eq!(self.kiosk.seq(), before, "to read takes nothing");
        self.laid(id).expect("it lies there")
    }

    fn laid(&self, id: &str) -> Option<Arc<PlanIn>> {
        let counter = self.desk.counter();
        counter.handed.into_iter().find(|plan| plan.read.id == id)
    }

    fn take(&mut self, plan: &PlanIn) -> Told {
        self.of(Errand::TakePlan {
            id: plan.read.id.clone(),
            mark: plan.mark.clone(),
        })
    }

    /// Nothing may come of it.
    fn refused(&mut self, plan: &PlanIn) -> Told {
        let before = self.kiosk.seq();
        let told = self.take(plan);
        assert_eq!(self.kiosk.seq(), before, "{told:?}");
        told
    }
}

const WEEK: &str = "2027-03-08,Hamza,rack pull,1,5,180 kg\n2027-03-10,Hamza,deadlift,2,5,150 kg\n";

#[test]
fn it_is_shown_as_understood_and_taken_once() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = gym(data.path());
    let plan = gym.read("a", WEEK);
    assert!(plan.read.can_take, "{plan:?}");
    assert_eq!((plan.rows.len(), plan.rows_count), (2, 2));
    assert_eq!(
        plan.rows[0].work.to(view::Language::English),
        "180 kg \u{d7} 5"
    );
    let change = &plan.read.changes[0];
    assert_eq!((change.new, change.changed, change.same), (2, 0, 0));
    let (name, _) = &plan.read.plans[0];
    assert!(!name.contains('\u{7}'), "{name:?}");
    assert_eq!(gym.take(&plan), Told::TookPlan(2));
    assert!(gym.laid("a").is_none());
    // The press a second time, and the other tab with the same page.
    assert_eq!(gym.refused(&plan), Told::PlanGone);
    // The same file again says that nothing would change.
    let again = gym.read("b", WEEK);
    let change = &again.read.changes[0];
    assert_eq!((change.new, change.changed, change.same), (0, 0, 2));
}

#[test]
fn days_that_changed_since_they_were_shown_are_not_written_over_unseen() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = gym(data.path());
    let first = gym.read("a", WEEK);
    let second = gym.read("b", "2027-03-08,Hamza,rack pull,1,5,190 kg\n");
    assert_eq!(gym.take(&second), Told::TookPlan(1));
    assert_eq!(gym.refused(&first), Told::DaysChanged);
    let now = gym.laid("a").expect("shown anew");
    let change = &now.read.changes[0];
    assert_eq!((change.new, change.changed), (1, 1));
    assert_eq!(gym.take(&now), Told::TookPlan(2));
    // Another lifter's days are of no account.
    let hamza = gym.read("c", "2027-03-15,Hamza,rack pull,1,5,185 kg\n");
    let other = gym.read("d", "2027-03-15,Parvati,deadlift,1,5,100 kg\n");
    assert_eq!(gym.take(&other), Told::TookPlan(1));
    assert_eq!(gym.take(&hamza), Told::TookPlan(1));
}

#[test]
fn faults_are_told_bounded_and_nothing_of_them_is_taken() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = gym(data.path());
    let row = "2026-13-45,Nobody At All,no such lift,minus one,many,heavy\n";
    let plan = gym.read("a", &row.repeat((4 << 20) / row.len() - 2));
    assert!(!plan.read.can_take && plan.rows.is_empty());
    let (_, read) = &plan.read.plans[0];
    let faults = read.as_ref().expect_err("faults").len();
    assert!((1..=201).contains(&faults), "{faults}");
    assert_eq!(gym.refused(&plan), Told::PlanFaults);
    let odd = gym.read("b", "\0\0\0");
    assert!(!odd.read.can_take, "{odd:?}");
}

#[test]
fn a_few_lie_there_and_a_power_cut_leaves_what_stood() {
    let data = tempfile::tempdir().expect("a folder");
    let mut gym = gym(data.path());
    let first = gym.read("0", WEEK);
    for id in ["1", "2", "3", "4", "5"] {
        drop(gym.read(id, WEEK));
    }
    assert_eq!(gym.desk.counter().handed.len(), 4);
    assert_eq!(gym.refused(&first), Told::PlanGone);
    let last = gym.laid("5").expect("it lies there");
    let before = gym.kiosk.seq();
    drop(gym);
    let mut gym = self::gym(data.path());
    assert_eq!(gym.kiosk.seq(), before);
    assert_eq!(gym.refused(&last), Told::PlanGone);
    let anew = gym.read("6", WEEK);
    assert_eq!(gym.take(&anew), Told::TookPlan(2));
}
