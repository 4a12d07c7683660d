//! What people say about the bar: that it is loaded, what it holds, and wrong things that they
//! take back.
use super::people::People;
use super::plates::Task;
use kiosk::rehearse::{Answer, Line};
use view::Deed;

/// How often somebody taps undo whose tap was not heard.
const UNDOES: u32 = 3;

impl People {
    /// Says "loaded" after loading, or what the bar holds.
    pub(super) fn say_bar(&mut self) {
        let face = self.face.clone();
        if face.button(Deed::Loaded).is_some() && self.dice.chance(50) {
            self.note("loaded", "");
            if self.load(&face) {
                self.says_loaded(&face);
            }
        } else if face.button(Deed::Holds).is_some() && self.dice.chance(50) {
            self.strip();
        } else if face.button(Deed::Holds).is_some() {
            self.say_what_it_holds();
        }
    }

    /// The bar was loaded as shown, and that is said; where the face changed under the finger,
    /// nobody has heard it.
    fn says_loaded(&mut self, face: &Answer) {
        let known = self.rehearsal.kiosk().state().bars.clone();
        if !self.press(Deed::Loaded) {
            return;
        }
        let heard = self.rehearsal.kiosk().state().bars != known;
        if heard || !self.looks_again(face.sets_logged) {
            self.said(face);
        }
    }

    /// Somebody said the truth about the bar of a face; what others read before is old.
    pub(super) fn said(&mut self, face: &Answer) {
        if let Some(bar) = &face.bar {
            self.bars.said(bar);
            self.read.take_if(|task| task.bar == *bar);
        }
    }

    /// Strips the bar and says so.
    fn strip(&mut self) {
        let face = self.face.clone();
        self.note("strip", "");
        if self.press(Deed::Holds) && self.tap("empty") {
            if let Some(bar) = &face.bar {
                self.bars.strip(bar);
            }
            self.said(&face);
        }
    }

    /// Looks at the bar and says what is on: in one word where one is offered, else plate by plate.
    fn say_what_it_holds(&mut self) {
        let face = self.face.clone();
        let (Some(task), Some(believed)) = (Task::of(&face), &face.believed) else {
            return;
        };
        let own = self.bars.at(&task.bar);
        self.note("holds", format!("{own:?}"));
        let is = |left: &Vec<String>, right: &Vec<String>| own.left == *left && own.right == *right;
        let word = if is(&Vec::new(), &Vec::new()) {
            Some("empty")
        } else if is(&task.to.left, &task.to.right) {
            Some("as it should be")
        } else if is(&believed.left, &believed.right) {
            Some("as before")
        } else {
            None
        };
        if !self.press(Deed::Holds) || self.face.screen != "holds" {
            // The face changed under the finger.
            return;
        }
        match word {
            Some(word) => {
                if !self.tap(word) {
                    self.fault(format!("\"{word}\" cannot be said: {:?}", self.face));
                }
                self.said(&face);
            }
            None if own.alike() => self.plate_by_plate(&face, &own.left),
            None => drop(self.tap("back")),
        }
    }

    fn plate_by_plate(&mut self, face: &Answer, side: &[String]) {
        self.bars.be_loose();
        for plate in side {
            let (number, _) = plate.split_once(' ').unwrap_or((plate, ""));
            let full = plate.split(' ').take(2).collect::<Vec<_>>().join(" ");
            let keys = [format!("+ {number}"), format!("+ {full}")];
            let drawn = |key: &&String| self.face.buttons.iter().any(|b| b.label == **key);
            let Some(key) = keys.iter().find(drawn).cloned() else {
                self.fault(format!("no key for {plate}: {:?}", self.face));
                return;
            };
            self.tap(&key);
        }
        if self.tap("the bar holds this") {
            self.said(face);
        } else {
            self.fault(format!("plates cannot be said: {:?}", self.face));
        }
    }

    /// Says something wrong about the bar by a slip of the finger, and takes it back at once.
    pub(super) fn says_wrong(&mut self) {
        let face = self.face.clone();
        let Some(bar) = face.bar.clone() else { return };
        let known = self.rehearsal.kiosk().state().bars.clone();
        let said = if face.button(Deed::Loaded).is_some() && self.dice.chance(50) {
            self.press(Deed::Loaded)
        } else if face.button(Deed::Holds).is_some() {
            let words = ["empty", "as it should be", "as before"];
            let word = self.dice.pick(&words).copied().unwrap_or("empty");
            let said = self.press(Deed::Holds) && self.tap(word);
            said || {
                self.tap("back");
                false
            }
        } else {
            false
        };
        if !said || self.rehearsal.kiosk().state().bars == known {
            // Nobody heard it: the face changed under the finger.
            return;
        }
        self.note("slip", "said something wrong of the bar");
        self.bars.misled(&bar);
        self.read = None;
        // On a slow disk, or where the face changed under the finger, a tap is not heard: they look.
        for _ in 0..UNDOES {
            let known = self.rehearsal.kiosk().state().bars.clone();
            let pressed = self.press(Deed::Undo);
            if pressed && self.rehearsal.kiosk().state().bars != known {
                return;
            }
        }
        let face = &self.face;
        self.fault(format!("a wrong word cannot be taken back: {face:?}"));
    }

    /// Logs a set that nobody did by a slip of the finger, and takes it back at once.
    pub(super) fn logs_by_mistake(&mut self) {
        let face = self.face.clone();
        let (Some(label), Some(bar)) = (face.button(Deed::Done), face.bar.clone()) else {
            return;
        };
        self.note("mistake", face.lifter.clone().unwrap_or_default());
        self.hear(&Line::tap(label));
        self.bars.misled(&bar);
        self.read = None;
        if self.looks_again(face.sets_logged) {
            return;
        }
        let logged = self.face.sets_logged;
        self.undo_by(1, 0);
        if self.looks_again(logged) {
            self.undo_by(1, 0);
        }
        if self.face.sets_logged != face.sets_logged {
            self.fault(format!("a set logged by mistake stays: {:?}", self.face));
        }
    }
}
