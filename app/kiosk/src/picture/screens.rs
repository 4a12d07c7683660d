//! The screens that can be drawn, each with the way to it. Refuses: screens that no finger reaches.
use super::Shown;
use crate::walk::Walk;
use domain::MassUnit;
use view::why::Part;

/// The screens that can be drawn.
pub const SCREENS: [Shown; 42] = [
    Shown {
        name: "choose",
        about: "all lifters of the day",
        walk: Walk::Choose,
    },
    Shown {
        name: "floor",
        about: "whose turn it is, who is next, at each rack",
        walk: Walk::Floor,
    },
    Shown {
        name: "floor-2-kilo",
        about: "two lifters at one rack, in kilos",
        walk: Walk::Crowd(MassUnit::Kg, 2),
    },
    Shown {
        name: "floor-4-kilo",
        about: "four lifters at one rack, in kilos",
        walk: Walk::Crowd(MassUnit::Kg, 4),
    },
    Shown {
        name: "floor-6-kilo",
        about: "six lifters at one rack, in kilos",
        walk: Walk::Crowd(MassUnit::Kg, 6),
    },
    Shown {
        name: "floor-2-pound",
        about: "two lifters at one rack, in pounds",
        walk: Walk::Crowd(MassUnit::Lb, 2),
    },
    Shown {
        name: "floor-4-pound",
        about: "four lifters at one rack, in pounds",
        walk: Walk::Crowd(MassUnit::Lb, 4),
    },
    Shown {
        name: "floor-6-pound",
        about: "six lifters at one rack, in pounds",
        walk: Walk::Crowd(MassUnit::Lb, 6),
    },
    Shown {
        name: "setup",
        about: "rack, pins, gear and cautions of a lift",
        walk: Walk::SetUp,
    },
    Shown {
        name: "bar-first",
        about: "at the bar, first rung",
        walk: Walk::First,
    },
    Shown {
        name: "bar",
        about: "at the bar, half-way up the ladder",
        walk: Walk::Bar,
    },
    Shown {
        name: "bar-beside",
        about: "the same, with simulated devices drawn beside it",
        walk: Walk::Beside,
    },
    Shown {
        name: "entry-reps",
        about: "the pad of other reps",
        walk: Walk::Reps,
    },
    Shown {
        name: "entry-moved",
        about: "the pad of the moved back",
        walk: Walk::Moved,
    },
    Shown {
        name: "rest",
        about: "between two rungs",
        walk: Walk::Rest,
    },
    Shown {
        name: "settle",
        about: "work loads to choose from, after the last warm-up",
        walk: Walk::Settle,
    },
    Shown {
        name: "stop",
        about: "after a moved back",
        walk: Walk::Stop,
    },
    Shown {
        name: "end",
        about: "the lift is over",
        walk: Walk::End,
    },
    Shown {
        name: "end-advice",
        about: "the lift is over, and there is advice",
        walk: Walk::Stall(None),
    },
    Shown {
        name: "why-next",
        about: "what is due the next time, and what it follows from",
        walk: Walk::Stall(Some(Part::Next)),
    },
    Shown {
        name: "why-split",
        about: "the advice to split the deadlift, with its evidence",
        walk: Walk::Stall(Some(Part::Split)),
    },
    Shown {
        name: "why-single",
        about: "the single by the published equations, side by side",
        walk: Walk::Stall(Some(Part::Single)),
    },
    Shown {
        name: "meet",
        about: "a meet or test day: what to take when",
        walk: Walk::Meet { card: false },
    },
    Shown {
        name: "meet-card",
        about: "the attempts of one of ours, and what the next one may be",
        walk: Walk::Meet { card: true },
    },
    Shown {
        name: "history",
        about: "what a lifter did, session by session",
        walk: Walk::History,
    },
    Shown {
        name: "panel",
        about: "this kiosk: language, light, what it is",
        walk: Walk::Panel,
    },
    Shown {
        name: "desk",
        about: "the coach's desk",
        walk: Walk::Desk,
    },
    Shown {
        name: "desk-door",
        about: "the code before it",
        walk: Walk::Door,
    },
    Shown {
        name: "desk-lifter",
        about: "a lifter's landmarks",
        walk: Walk::Landmarks,
    },
    Shown {
        name: "desk-typing",
        about: "a height on the pad",
        walk: Walk::Typing,
    },
    Shown {
        name: "desk-week",
        about: "the week, lifters by days",
        walk: Walk::Page(&["the week"]),
    },
    Shown {
        name: "desk-day",
        about: "what the plan has for a day",
        walk: Walk::Page(&["the week", "Hamza, Wednesday 25 November"]),
    },
    Shown {
        name: "desk-row",
        about: "a row of the plan",
        walk: Walk::Page(&["the week", "Hamza, Wednesday 25 November", "rack pull"]),
    },
    Shown {
        name: "desk-next",
        about: "what is due, for the coach to rule otherwise",
        walk: Walk::Ruling,
    },
    Shown {
        name: "desk-programme",
        about: "who follows a programme",
        walk: Walk::Page(&["programmes", "split pulls"]),
    },
    Shown {
        name: "desk-follows",
        about: "the programme of a lifter, and the day that comes next",
        walk: Walk::Page(&["lifters", "Tevita", "programme"]),
    },
    Shown {
        name: "desk-rule",
        about: "the figures of next time",
        walk: Walk::Page(&["lifters", "Tevita", "rule"]),
    },
    Shown {
        name: "desk-sharing",
        about: "the page on the network",
        walk: Walk::Page(&["kiosk", "page on the network"]),
    },
    Shown {
        name: "desk-plate",
        about: "a kind of plate",
        walk: Walk::Page(&["the gym", "plates", "kilo plates", "25 kg"]),
    },
    Shown {
        name: "desk-stick",
        about: "a stick with plans, and what they change",
        walk: Walk::Page(&["plans", "stick"]),
    },
    Shown {
        name: "desk-copies",
        about: "copies of the journal in the second place",
        walk: Walk::Page(&["kiosk", "copies"]),
    },
    Shown {
        name: "about",
        about: "what it is, and its licences",
        walk: Walk::About,
    },
];
