//! The phrases of whose turn it is and of what a bar holds, both languages side by side.
crate::phrases! {
    // What the hands have to do.
    EACH_SIDE: "each side", "je Seite";
    TAKE_OFF_LINE: "take off {0}", "{0} abnehmen";
    PUT_ON_LINE: "put on {0}", "{0} auflegen";
    THEN: ", then ", ", dann ";
    LOOK_FIRST: "look at the bar first", "erst auf die Stange schauen";
    STRIP_FOR_PINS: "strip to {0}, then pins to hole {1}", "auf {0} abräumen, dann Bolzen in Loch {1}";
    STRIP_FOR_HOOKS: "strip to {0}, then hooks to hole {1}", "auf {0} abräumen, dann Haken in Loch {1}";
    STRIP_FOR_THE_HOOKS: "strip to {0}, then on to the hooks", "auf {0} abräumen, dann auf die Haken";
    STRIP_FOR_FLOOR: "strip to {0}, then down to the floor", "auf {0} abräumen, dann auf den Boden";
    EACH_SIDE_HOLDS: "each side must hold {0}", "je Seite muss {0} drauf sein";
    MUST_HOLD: "must hold {0}", "es muss {0} drauf sein";
    NO_PLATES: "no plates", "keine Scheiben";
    LEFT_RIGHT: "left {0}, right {1}", "links {0}, rechts {1}";
    LEFT_RIGHT_LINES: "left {0}\nright {1}", "links {0}\nrechts {1}";
    WEIGHS: "{0}, weighs {1}", "{0}, wiegt {1}";
    PLATES_ELSEWHERE: "{0} is on the {1}; take it from there", "{0} hängt noch auf: {1}; von dort holen";
    LOADED: "loaded", "aufgelegt";
    BAR_HOLDS: "bar holds...", "auf der Stange...";
    // What the bar holds, said by hand.
    HOLDS_QUESTION: "What is on the {0} now?", "{0}: was ist jetzt drauf?";
    HOLDS_EMPTY: "empty", "leer";
    HOLDS_WANTED: "as it should be", "wie es sein soll";
    HOLDS_BEFORE: "as before", "wie vorher";
    HOLDS_PLATES: "or plate by plate, each side, from the inside", "oder Scheibe für Scheibe, je Seite, von innen";
    HOLDS_NONE: "no plates so far", "noch keine Scheiben";
    HOLDS_SAVE: "the bar holds this", "das ist drauf";
    HOLDS_TOTAL: "{0} with the bar", "mit Stange {0}";
    TAKE_LAST: "take last off", "letzte weg";
    THE_WORD: "what the bar holds", "was auf der Stange ist";
    // Whose turn it is.
    TURN_PAD: "later, skip...", "nicht jetzt...";
    TURN_QUESTION: "{0}: what now?", "{0}: was jetzt?";
    LATER: "later", "später";
    LATER_MORE: "after the next lifter", "nach dem Nächsten";
    SKIP_SET: "skip this set", "Satz auslassen";
    SKIP_SET_MORE: "{0}", "{0}";
    LONGER: "I need longer", "ich brauche länger";
    LONGER_MORE: "one minute more", "eine Minute mehr";
    LEAVE: "I am leaving", "ich gehe";
    LEAVE_MORE: "the lift stays open", "die Übung bleibt offen";
    MINE: "my turn now", "jetzt ich";
    MINE_MORE: "before the others", "vor den anderen";
    I_AM_BACK: "I am back", "bin wieder da";
    BACK_MORE: "count me in again", "ich mache wieder mit";
    AWAY: "away", "weg";
    ALSO_UP: "{0}, {1}: {2} is up", "{0}, {1}: {2} ist dran";
    PASSED_OVER: "did not come at {0}", "kam um {0} nicht";
    PASSED_OVER_ONCE: "did not come", "kam nicht";
    PLACE_NEXT: "next", "gleich";
    RESTS: "rests {0}", "Pause {0}";
    RAISE: "raise the bar {0} mm", "Stange {0} mm höher";
    NOT_RAISED: "nothing under the plates", "nichts unter den Scheiben";
    WAITING_LOAD: "load the bar when it is your turn", "auflegen, wenn du dran bist";
    X_LONGER: "{0} s is out of range; ask for 1 to {1} s", "{0} s geht nicht; 1 bis {1} s sind möglich";
    X_NOTHING_SAID: "nobody said what is on that bar; say what it holds", "niemand hat gesagt, was auf der Stange ist; sag, was drauf ist";
}
