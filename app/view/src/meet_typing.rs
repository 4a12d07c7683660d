//! What is typed for a card of a meet day: a lot number or a weight.
//!
//! Refuses: a lot of 0, a weight that the table does not take; what was typed stays.
use crate::aside::Aside;
use crate::desk::pad::Typing;
use crate::desk::typing::{DIGITS, NUMBERS, after_key, keys};
use crate::language::{c, p};
use crate::meet_card::{Of, keep, not_taken, of};
use crate::meet_kept::LOAD_MOST;
use crate::meet_log::Step;
use crate::meet_typed::CardTyped;
use crate::scene::Scene;
use crate::stage::Stage;
use crate::tap::Tap;
use domain::meet_order::LOT_MOST;
use domain::{Command, Mass};

/// Digits of a weight with its point, at most, and of a lot number.
const TYPED_MAX: [usize; 2] = [6, 3];

/// The pad for a lot number or a weight.
pub(crate) fn card_typing(scene: &Scene<'_>, typed: &CardTyped) -> Typing {
    let say = scene.language();
    let of = of(scene, typed.starter);
    let unit = of
        .as_ref()
        .map(|of| of.starter.unit.word())
        .unwrap_or_default();
    let who = of.map(|of| of.starter.lifter.clone()).unwrap_or_default();
    let what = say.say(if typed.lot { c::T_LOT } else { c::T_ANOTHER });
    let asked = if typed.lot {
        c::T_TYPE_LOT
    } else {
        c::T_TYPE_LOAD
    };
    Typing {
        title: format!("{who}, {what}"),
        hint: match typed.wrong.as_str() {
            "" => say.say(asked),
            wrong => wrong.to_owned(),
        },
        wrong: !typed.wrong.is_empty(),
        typed: say.number(&typed.text),
        unit: if typed.lot {
            String::new()
        } else {
            unit.into()
        },
        keys: keys(say, typed.keys()),
        other: String::new(),
        delete: say.say(p::DELETE_LAST),
        main: say.say(p::KEEP),
    }
}

impl CardTyped {
    pub(crate) const fn new(starter: usize, lot: bool) -> Self {
        Self {
            starter,
            lot,
            text: String::new(),
            wrong: String::new(),
        }
    }

    /// Whose card it is for.
    pub(crate) const fn starter(&self) -> usize {
        self.starter
    }

    const fn keys(&self) -> &'static str {
        if self.lot { DIGITS } else { NUMBERS }
    }

    /// What was typed; `None` where that is no lot number or no weight.
    fn step(&self, of: &Of<'_>) -> Option<Step> {
        if self.lot {
            let lot = self.text.parse().ok();
            let lot = lot.filter(|lot| (1..=LOT_MOST).contains(lot))?;
            return Some(Step::Lot(of.number, lot));
        }
        let load = Mass::read_in(&self.text, of.starter.unit).ok()?;
        let fits = load > Mass::ZERO && load <= LOAD_MOST;
        fits.then_some(Step::Declared(of.number, load))
    }
}

impl Stage {
    /// What a tap on the pad of a card means. What the table does not take stays typed, and the
    /// pad says so.
    pub(crate) fn tap_card_typing(
        &mut self,
        scene: &Scene<'_>,
        typed: &CardTyped,
        tap: &Tap,
    ) -> Option<Command> {
        let mut typed = typed.clone();
        typed.wrong.clear();
        if *tap == Tap::Main {
            let of = of(scene, typed.starter)?;
            let step = typed.step(&of);
            let kept = step.and_then(|step| keep(scene, &of, step));
            typed.wrong = match (&kept, step) {
                // The lot that it is already.
                (Some(_), _) | (None, Some(Step::Lot(..))) => String::new(),
                (None, Some(Step::Declared(_, load))) => not_taken(scene, &of, load),
                (None, _) => scene.language().say(p::NOT_READ),
            };
            self.aside = Some(match typed.wrong.as_str() {
                "" => Aside::Card(typed.starter),
                _ => Aside::CardTyping(typed),
            });
            return kept;
        }
        let text = after_key(&typed.text, typed.keys(), tap)?;
        if text.chars().count() <= TYPED_MAX[usize::from(typed.lot)] {
            typed.text = text;
        }
        self.aside = Some(Aside::CardTyping(typed));
        None
    }
}
