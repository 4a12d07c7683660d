//! The phrases of the screen, both languages side by side. Refuses: a key without either.

pub(crate) mod days;
pub(crate) mod desk;
pub(crate) mod groups;
pub(crate) mod list;
pub(crate) mod loads;
pub(crate) mod turn;

pub(crate) use desk::*;
pub(crate) use loads::*;
pub(crate) use turn::*;

crate::phrases! {
    // Everywhere; the first ones are written by the window itself, in these words.
    ALL_LIFTERS: "all lifters", "alle";
    SWITCH_TO: "switch to {0}", "zu {0}";
    MORE: "more", "mehr";
    MORE_LIFTERS: "more lifters", "mehr Leute";
    SET_UP: "set-up", "Aufbau";
    OTHER_REPS: "other reps", "andere Wdh.";
    HISTORY: "history", "Verlauf";
    DONE: "done", "fertig";
    READY: "ready", "bereit";
    WORK: "work", "Arbeit";
    WARM_UP: "warm-up", "Aufwärmen";
    SKIPPED: "skipped", "ausgelassen";
    OF: "{0} of {1}", "{0} von {1}";
    HOLE: "hole {0}", "Loch {0}";
    FROM_THE_FLOOR: "from the floor", "vom Boden";
    FROM_THE_HOOKS: "from the hooks", "aus den Haken";
    HOOKS_HOLE: "hooks in hole {0}", "Haken in Loch {0}";
    FROM_HOOKS_HOLE: "from the hooks in hole {0}", "aus den Haken in Loch {0}";
    FROM_HOOKS_ANY: "from the hooks, at the height that suits you", "aus den Haken, so hoch wie es dir passt";
    ESTIMATED_MEASURE: "{0}; estimated, measure", "{0}; geschätzt, messen";
    UNDO: "undo", "rückgängig";
    BACK: "back", "zurück";
    CANNOT_START: "The kiosk cannot start", "Der Kiosk kann nicht starten";
    TRIED_AGAIN: "It is tried again every few seconds.", "Es wird alle paar Sekunden wieder versucht.";
    BELT: "belt", "Gürtel";
    STRAPS: "straps", "Zughilfen";
    FROM_LOAD: "{0} from {1}", "{0} ab {1}";
    DOUBLE_OVERHAND: "double overhand", "Obergriff";
    HOOK_GRIP: "hook grip", "Klemmgriff";
    DOUBLE_OVERHAND_GRIP: "double overhand grip", "Obergriff mit beiden Händen";
    REP: "1 rep", "1 Wdh.";
    REPS: "{0} reps", "{0} Wdh.";
    SETS_OF: "{0} sets of {1}", "{0} Sätze {1}";
    NO_MAT: "no mat", "keine Matte";
    ONE_MAT: "1 mat, {0} mm", "1 Matte, {0} mm";
    MATS: "{0} mats, {1} mm", "{0} Matten, {1} mm";
    BACK_HELD: "back held", "Rücken hielt";
    BACK_MOVED: "back moved", "Rücken gab nach";
    BACK_MOVED_AT_REP: "back moved at rep {0}", "Rücken gab bei Wdh. {0} nach";
    // Large, in lines that read well.
    STOPPED_AT_REP: "back moved at rep {0}", "Rücken gab nach:\nWdh. {0}";
    BACK_MOVED_AT: "back moved at {0}", "Rücken bei {0}";
    WARM_UP_OF: "warm-up {0} of {1}", "Aufwärmsatz {0} von {1}";
    WORK_SET: "work set", "Arbeitssatz";
    WORK_SET_OF: "work set {0} of {1}", "Arbeitssatz {0} von {1}";
    // Heights.
    BAR_HEIGHT: "bar {0} mm above your feet, {1}", "Stange {0} mm über den Füßen, {1}";
    ON_THE_MARK: "on the mark", "genau richtig";
    UNDER_THE_MARK: "{0} mm under the mark", "{0} mm unter der Marke";
    OVER_THE_MARK: "{0} mm over the mark", "{0} mm über der Marke";
    SHARES: "shares {0} with the {1}", "{0} gemeinsam mit: {1}";
    LEAVES_GAP: "leaves a gap of {0} to the {1}", "Lücke von {0} zu: {1}";
    MM_IN: "{0} mm ({1} in)", "{0} mm ({1} Zoll)";
    COLLARS: "collars {0}", "Verschlüsse {0}";
    // Loading.
    EMPTY_BAR: "empty bar", "leere Stange";
    LEAVE_BAR: "leave the bar as it is", "Stange so lassen";
    REPS_DONE: "{0} done", "{0} geschafft";
    // All lifters.
    NO_LIFTERS: "no lifters yet: write them into lifters.toml in the data folder", "noch niemand da: trag die Leute in lifters.toml im Datenordner ein";
    FLOOR: "floor", "Übersicht";
    REST_LEFT: "rest {0}", "Pause {0}";
    DONE_OF: "{0} of {1} done", "{0} von {1} fertig";
    NOTHING_TODAY: "nothing today", "heute nichts";
    MEASURE_FIRST: "measure first", "erst messen";
    // The end.
    NOTHING_DONE: "nothing done", "nichts gemacht";
    NEXT: "next: {0}", "weiter: {0}";
    NEXT_LIFTER: "next lifter", "wer ist dran";
    NOT_DONE: "not done", "nicht gemacht";
    ONE_SET: "1 set", "1 Satz";
    SETS: "{0} sets", "{0} Sätze";
    REPS_IN_ALL: "{0} reps in all", "zusammen {0} Wdh.";
    ONE_MINUTE: "1 minute", "1 Minute";
    MINUTES: "{0} minutes", "{0} Minuten";
    OWN_RECORD: "your record on your phone: opens once, for ten minutes", "deine Daten aufs Telefon: öffnet einmal, zehn Minuten lang";
    // Pads.
    HOW_MANY_REPS: "how many reps at {0}?", "Wie viele Wdh. mit {0}?";
    WHICH_REP: "at which rep did the back move?", "Bei welcher Wdh. gab der Rücken nach?";
    END_LIFT: "end the lift", "Übung beenden";
    DID_IT: "did it all the same", "trotzdem gemacht";
    DID_ALL: "did all {0} all the same", "trotzdem alle {0} gemacht";
    // The floor.
    NOBODY_YET: "nobody is lifting yet", "noch hebt niemand";
    UP: "up", "dran";
    NEXT_UP: "next", "gleich";
    // What undo takes back.
    THE_START: "the start", "den Anfang";
    THE_END: "the end", "das Ende";
    GOING_ON: "going on", "„weiter“";
    THE_SKIP: "the skip", "„auslassen“";
    // Rest.
    REST: "rest", "Pause";
    AFTER: "after {0}", "nach {0}";
    GO_NOW: "go now", "jetzt heben";
    // Set-up.
    START: "start", "anfangen";
    BACK_TO_BAR: "back to the bar", "zurück zur Stange";
    NOT_PLANNED: "nothing is planned for today; ask the coach", "für heute ist nichts geplant; frag den Coach";
    NOT_A_LIFTER: "{0} is not in lifters.toml; ask the coach", "{0} steht nicht in lifters.toml; frag den Coach";
    HEIGHT_UNKNOWN: "on the pins, height not known", "auf den Bolzen, Höhe unbekannt";
    // The back moved.
    SET_OF: "{0}, {1} of {2}", "{0}, {1} von {2}";
    MOVED_ADVICE: "A moved back ends the climb. Pain means stop: see a clinician.", "Gibt der Rücken nach, ist Schluss mit Steigern. Bei Schmerz aufhören: zum Arzt.";
    GO_ON: "go on, coach agrees", "weiter, Coach ist dafür";
    // No sheet.
    MISSING: "no {0} is called \"{1}\"; write it into the gym's files", "{0} „{1}“ gibt es nicht; trag es in die Dateien des Studios ein";
    NOTHING_UNTIL: "nothing today; {0} on {1}", "heute nichts; {0} am {1}";
    GOES_ON_FROM: "nothing today; {0} goes on from {1}", "heute nichts; {0} geht weiter ab {1}";
    NO_TRAINING_MAX: "no training max for this day; write it into lifters.toml, or the load as a mass", "kein Trainingsmaximum für diesen Tag; schreib es in lifters.toml oder die Last als Gewicht";
    NO_BEST: "no best is recorded; write the load as a mass", "keine Bestleistung bekannt; schreib die Last als Gewicht";
    NO_LADDER: "{0}; ask the coach for another load", "{0}; frag den Coach nach einer anderen Last";
    // Landmarks.
    TIBIAL_TUBEROSITY: "tibial tuberosity", "Schienbeinhöcker";
    PATELLA_TOP: "top of the patella", "Kniescheibe oben";
    MID_THIGH: "mid-thigh", "Mitte Oberschenkel";
    LOCKOUT: "lockout", "gestreckt";
    // This panel.
    PANEL: "kiosk", "Kiosk";
    PANEL_TITLE: "This kiosk", "Dieser Kiosk";
    LANGUAGE: "language", "Sprache";
    LIGHT: "light", "Licht";
    BY_HOUR: "by the hour", "nach Uhrzeit";
    DAYLIGHT: "daylight", "hell";
    DIM: "dim", "dunkel";
    BY_HOUR_DETAIL: "daylight from {0} to {1} o'clock", "hell von {0} bis {1} Uhr";
    ABOUT: "about Pinladder", "über Pinladder";
    ABOUT_VALUE: "its licences", "Lizenzen";
    ABOUT_WHAT: "Pinladder {0}: what the rack must show today, and a record of what was lifted.", "Pinladder {0}: was das Rack heute zeigen muss, und ein Verzeichnis dessen, was gehoben wurde.";
    ABOUT_TERMS: "Free software under the GNU General Public License, version 3 only, without any warranty. The source and the whole text of the licence come with it.", "Freie Software unter der GNU General Public License, nur Version 3, ohne jede Gewähr. Quelltext und ganzer Lizenztext liegen bei.";
    ABOUT_PARTS: "Drawn by Slint under the same licence; set in Roboto Condensed, whose licence lies beside the font. The other libraries are listed in Cargo.lock.", "Gezeichnet mit Slint unter derselben Lizenz; gesetzt in Roboto Condensed, deren Lizenz bei der Schrift liegt. Die übrigen Bibliotheken stehen in Cargo.lock.";
    ABOUT_CARE: "Heavy bars hurt people. Figures of steel are a guide, never a certificate. What your coach, your clinician and the rules of your place say comes first.", "Schwere Stangen verletzen. Zahlen zum Stahl sind ein Anhalt, keine Zusage. Was Coach, Arzt und die Regeln am Ort sagen, geht vor.";
    LAN_OPENS: "Open it with another machine of this network: {0}", "Mit einem anderen Gerät in diesem Netz zu öffnen: {0}";
    LAN_OR: "{0} or {1}", "{0} oder {1}";
    LAN_PRINT: "Before you trust its certificate, see that the browser shows the same SHA-256: {0}", "Bevor du dem Zertifikat traust, sieh nach, ob der Browser denselben SHA-256 zeigt: {0}";
    LAN_ROOT: "So that a phone trusts it for good, load root.crt from there, and see that it has this SHA-256: {0}", "Damit ein Telefon ihm auf Dauer traut, lade von dort root.crt und sieh nach, ob es diesen SHA-256 hat: {0}";
    LAN_READABLE: "Without TLS whoever is in this network can read the coach's code; the desk turns it on.", "Ohne TLS kann jeder in diesem Netz den Code des Coachs mitlesen; der Schreibtisch schaltet es ein.";
    // History.
    NO_SESSIONS: "no work sets yet", "noch keine Arbeitssätze";
    MOVED_WARM: "in a warm-up", "beim Aufwärmen";
    SETS_DONE_OF: "{0} of {1} sets", "{0} von {1} Sätzen";
    // Next time.
    NEXT_TIME: "next: {0}", "nächstes Mal: {0}";
    N_UP: "{0}, up {1}", "{0}, {1} mehr";
    N_AGAIN: "{0} again", "wieder {0}";
    N_LEAST: "{0} again, the least there is", "wieder {0}, weniger gibt es nicht";
    N_DOWN: "{0}, down {1}", "{0}, {1} weniger";
    N_BECAUSE: "{0}: {1}", "{0}: {1}";
    N_BACK: "{0}, on the way back", "{0}, auf dem Weg zurück";
    N_NO_STEP: "{0}, but the next load that can be made is too far up", "{0}, aber die nächste Last, die hier zu laden ist, liegt zu hoch";
    N_LIGHT: "{0}, on a day lighter than was due", "{0}, an einem leichteren Tag als fällig";
    N_TRY: "{0}, try {1} of {2}", "{0}, Versuch {1} von {2}";
    N_TOO_MUCH: "{0}, too early to try {1} again", "{0}, zu früh, um {1} noch einmal zu versuchen";
    N_STUCK: "{0}, stuck again without a new best; ask the coach", "{0}, wieder ohne neue Bestleistung; frag den Coach";
    X_NOT_HURT: "{0} is not entered as hurt; nothing to lift", "{0} ist nicht als verletzt eingetragen; es gibt nichts aufzuheben";
    X_ILL_BACKWARDS: "{0} is before {1}, on which it began; write from, then to", "{0} liegt vor {1}, an dem es anfing; schreib erst von, dann bis";
    NO_HURT: "hurt: nothing is due until the coach rules; stop and see a clinician", "verletzt: nichts ist fällig, bis der Coach entscheidet; hör auf und geh zum Arzt";
    NO_UNTRIED: "{0} looks wrong: nothing is recorded that supports it; ask the coach", "{0} sieht falsch aus: nichts ist dafür belegt; frag den Coach";
    NO_MANY_REPS: "{0} reps of work at {1} look wrong; ask the coach", "{0} Arbeitswiederholungen mit {1} sehen falsch aus; frag den Coach";
    NO_LOOKS_WRONG: "{0} looks wrong: the record supports {1}; ask the coach", "{0} sieht falsch aus: belegt sind {1}; frag den Coach";
    DUE_THEN_PLAN: "due {0}, plan {1}", "fällig {0}, Plan {1}";
    PLAN_THEN_DUE: "plan {0}, due {1}", "Plan {0}, fällig {1}";
    N_HARD: "{0}, harder than asked", "{0}, schwerer als verlangt";
    N_RANGE: "{0}, not yet the top of the range in every set", "{0}, noch nicht in jedem Satz das obere Ende";
    N_WAITING: "{0}; waits for the coach's word", "{0}; wartet auf das Wort des Coachs";
    N_AWAY: "{0} days away beyond the plan", "{0} Tage länger weg als geplant";
    N_ANEW: "{0} days away beyond the plan; begin anew with the coach", "{0} Tage länger weg als geplant; fang mit dem Coach neu an";
    N_ILL: "ill, {0} days counted as a break", "krank, {0} Tage zählen als Pause";
    N_FAMILY: "the back moved in another pull since", "der Rücken gab seither bei einem anderen Zug nach";
    N_OVER: "one pull after the other went wrong; ask the coach", "ein Zug nach dem anderen ging schief; frag den Coach";
    N_LONG_AGO: "long ago, while other pulls went on", "lange her, während andere Züge weitergingen";
    N_WEEK: "a week's rise is used up", "mehr steigt es in einer Woche nicht";
    N_HURT: "hurt: nothing until the coach rules; stop and see a clinician", "verletzt: nichts, bis der Coach entscheidet; hör auf und geh zum Arzt";
    N_NOTHING: "nothing due: {0}", "nichts fällig: {0}";
    N_COACH: "the coach ruled so", "der Coach will es so";
    N_COACH_SAID: "{0}, the coach ruled: {1}", "{0}, der Coach: {1}";
    V_RAISE: "raise", "mehr";
    V_REPEAT: "repeat", "gleich";
    V_DROP: "drop", "etwas weniger";
    V_RESET: "reset", "deutlich weniger";
    V_EASE: "ease", "sachte";
    O_WELL: "all reps, back held", "alle Wdh., Rücken hielt";
    O_MOVED: "back moved at rep {0}{1}", "Rücken gab bei Wdh. {0}{1} nach";
    O_MOVED_WARM: "back moved in a warm-up", "Rücken gab beim Aufwärmen nach";
    O_CUT: "{0} of {1} sets, back held", "{0} von {1} Sätzen, Rücken hielt";
    NEXT_SESSION: "next", "dann";
    // Choosing the load on the day. The caution: common practice, no source.
    OTHER_LOAD: "other load", "andere Last";
    THE_CHOICE: "the choice", "die Wahl";
    THE_PLAN: "the plan", "laut Plan";
    THE_DUE: "due", "fällig";
    TOO_EARLY: "too early", "zu früh";
    OVER_DUE: "more than is due", "mehr als fällig";
    WORK_SET_REPS: "work set, {0}", "Arbeitssatz, {0}";
    WORK_SETS_OF: "{0} work sets of {1}", "{0} Arbeitssätze zu {1}";
    SETTLE_CAUTION: "more only if the back held in every warm-up; the coach decides", "mehr nur, wenn der Rücken bei jedem Aufwärmsatz hielt; der Coach entscheidet";
    KEEP_LOAD: "keep {0}", "bei {0} bleiben";
    FIRST_TIME: "the first time", "das erste Mal";
    LAST_TIME: "last time {0}, {1}, on {2}", "zuletzt {0}, {1}, am {2}";
    AS_LAST_TIME: "as last time", "wie zuletzt";
    MORE_THAN_LAST: "{0} more than last time", "{0} mehr als zuletzt";
    LESS_THAN_LAST: "{0} less than last time", "{0} weniger als zuletzt";
    N_WELL: "all reps with the back held", "alle Wdh., der Rücken hielt";
    N_SHORT: "{0} of {1} reps{2}", "{0} von {1} Wdh.{2}";
    N_MOVED: "the back moved at rep {0}{1}", "der Rücken gab bei Wdh. {0} nach{1}";
    N_MOVED_WARM: "the back moved in a warm-up", "der Rücken gab beim Aufwärmen nach";
    N_CUT: "{0} of {1} sets done, and those well", "{0} von {1} Sätzen, und die gut";
    N_IN_SET: " in set {0}", " in Satz {0}";
    // Days.
    DATE: "{0} {1} {2}", "{0}, {1}. {2}";
    SHORT_DATE: "{0} {1}", "{0}. {1}";
    // What a warning says.
    W_NO_HOLE: "no hole of {0} puts the bar at {1} mm; use blocks, or another rack", "kein Loch ({0}) bringt die Stange auf {1} mm; nimm Blöcke oder ein anderes Rack";
    W_STRAIGHT_BAR: "a straight bar lies on the pins and may take a set; fetch the retired one", "eine gerade Stange liegt auf den Bolzen und kann krumm werden; hol die ausgemusterte";
    W_OVERLAP: "the overlap is under the coach's least of {0} mm; set the pins lower", "Überlappung unter den {0} mm des Coachs; Bolzen tiefer setzen";
    W_NOT_LOADABLE: "{0} cannot be loaded here; the nearest is shown", "{0} geht hier nicht; gezeigt wird das Nächste";
    W_TOO_ROUGH: "the {0} is only estimated, give or take {1} mm, too rough for holes {2} mm apart; let the coach measure it, then set the pins", "{0} nur geschätzt, auf {1} mm genau, zu grob für Löcher alle {2} mm; erst messen lassen, dann Bolzen setzen";
    W_AT: "at {0}", "bei {0}";
    W_FROM_TO: "from {0} to {1}", "von {0} bis {1}";
    W_LOW_PLATES: "{0} small plates leave the bar {1} too low; raise it by that much", "{0} liegt die Stange auf kleinen Scheiben {1} zu tief; so viel unterlegen";
    W_ESTIMATED: "the {0} is estimated from stature, give or take {1} mm; measure it", "{0} aus der Größe geschätzt, auf {1} mm genau; messen";
    W_ESTIMATED_DOUBTFUL: "the {0} is estimated from stature, give or take {1} mm, so the next hole may be the right one; measure it", "{0} aus der Größe geschätzt, auf {1} mm genau, vielleicht stimmt das nächste Loch; messen";
    W_PINS_RATED: "{0} is over the {1} that the pins are rated for; take less", "{0} ist mehr, als die Bolzen tragen dürfen ({1}); nimm weniger";
    W_RACK_RATED: "{0} is over the {1} that the rack is rated for; take less", "{0} ist mehr, als das Rack tragen darf ({1}); nimm weniger";
    W_BAR_RATED: "{0} is over the {1} that the bar is rated for; take another bar", "{0} ist mehr, als die Stange tragen darf ({1}); nimm eine andere";
    W_SET_AT_REST: "by its maker's figures this load may bend the bar on the pins for good ({0} % of yield at rest); take another bar; a guide, never a certificate", "nach den Zahlen des Herstellers kann diese Last die Stange auf den Bolzen verbiegen ({0} % der Streckgrenze); nimm eine andere; nur ein Anhalt, keine Zusage";
    W_SET_DROPPED: "by its maker's figures a drop of {0} mm on to the pins bends this bar for good; set it down; a guide, never a certificate", "nach den Zahlen des Herstellers verbiegt ein Fall von {0} mm auf die Bolzen diese Stange; absetzen; nur ein Anhalt, keine Zusage";
    W_NOT_MEASURED: "the {0} is not measured; let the coach measure it, then set the pins", "{0} nicht gemessen; erst messen lassen, dann Bolzen setzen";
}
