//! The phrases of a coach's head: what is due and why, splitting, the single. Refuses: a key
//! without either language.
crate::phrases! {
    // What stands behind the end of a lift.
    WHY: "why", "warum";
    ADVICE: "advice", "Rat";
    NEXT_TIME_TITLE: "next time", "nächstes Mal";
    SINGLE_TITLE: "the single", "das Maximum";
    SPLIT_TITLE: "when to split", "wann teilen";
    BACK_TITLE: "the way back", "der Weg zurück";
    ADVICE_WAITS: "there is advice on the {0}; see why", "es gibt Rat zu: {0}; siehe „warum“";
    // What is due, without the load.
    UP_BY: "up {0}: {1}", "{0} mehr: {1}";
    AGAIN: "again: {0}", "noch einmal: {0}";
    LEAST_AGAIN: "again, the least there is: {0}", "noch einmal, weniger gibt es nicht: {0}";
    DOWN_BY: "down {0}: {1}", "{0} weniger: {1}";
    COACH_RULED: "the coach ruled: {0}", "der Coach: {0}";
    DUE_OF: "{0}, {1}: {2}", "{0}, {1}: {2}";
    DUE_LAST: "{0}; last on {1}", "{0}; zuletzt am {1}";
    // Sets by their reps, and a day of the year.
    FIVES: "fives", "Fünfer";
    SETS_OF_REPS: "sets of {0}", "{0}er-Sätze";
    DAY_OF_YEAR: "{0} {1}", "{0}. {1}";
    JOINED: "{0} and the {1}", "{0} und {1}";
    // When to split. Common practice, no source.
    S_TOO_FEW: "too few sets of {0} of the {1} to see a trend", "{1}: zu wenige {0}er-Sätze, noch ist kein Trend zu sehen";
    S_NONE_WELL: "no {0} of {1} went well lately", "{0}: zuletzt ging kein {1}er-Satz gut";
    S_LIGHT: "{0} {1} at {2}, under the {3} from which a split is thought of", "{0}, {1} bei {2}: unter den {3}, ab denen man ans Teilen denkt";
    S_RISING: "{0} {1} at {2} still rise; go on", "{0}, {1} bei {2}: es geht noch aufwärts; weiter so";
    S_TEST_NEAR: "{0}, but the test on {1} is near; stay with the {2}", "{0}; aber der Test am {1} ist nah: bleib bei {2}";
    S_SPLIT: "{0}; think of the {1} in its place, the coach decides", "{0}; denk an {1} an seiner Stelle, der Coach entscheidet";
    S_STAY: "on the {0}; stay there", "dabei: {0}; dabei bleiben";
    S_STAY_UNTIL: "on the {0}; back to the {1} from {2} before the test on {3}", "dabei: {0}; ab {2} zurück zu {1}, vor dem Test am {3}";
    S_BACK: "the test is on {0}; take up the {1} again, the coach decides", "der Test ist am {0}; {1} wieder aufnehmen, der Coach entscheidet";
    S_SLOW: "{0} {1} at {2} {3} a time where {4} are due, {5} of {6} short or with a moved back", "{0}, {1} bei {2}: {3} je Mal, wo {4} fällig wären; {5} von {6} zu kurz oder mit nachgebendem Rücken";
    S_RISE: "rise by {0}", "{0} mehr";
    S_FALL: "fall by {0}", "{0} weniger";
    S_NO_RECORD: "no {0} in the record yet", "noch nichts verzeichnet: {0}";
    S_BACK_DAY: "{0}: {1} {2}", "{0}: {1} {2}";
    S_BACK_SHARE: "{0}: {1} {2} % of the best × {3}", "{0}: {1} {2} % der Bestleistung × {3}";
    S_BACK_ROW: "back", "zurück";
    KEY: "filled: all reps, back held; ring: reps missed; cross: back moved; line: least squares", "voll: alle Wdh., Rücken hielt; Ring: Wdh. fehlen; Kreuz: Rücken gab nach; Linie: kleinste Quadrate";
    HEAVY_FROM: "heavy from {0}", "schwer ab {0}";
    // Estimates of the single.
    FROM_TO: "{0} to {1}", "{0} bis {1}";
    SINGLE_FROM: "by six published equations, from {0}; they were fitted to other people", "nach sechs veröffentlichten Formeln, aus {0}; an anderen Leuten gefunden";
    SINGLE_HEAD: "single from {0} × {1}: {2} to {3}, by the equation", "Maximum aus {0} × {1}: {2} bis {3}, je nach Formel";
    SINGLE_LINE: "{0} to {1}, by the equation", "{0} bis {1}, je nach Formel";
    // What is due, as a text.
    D_FOR: "{0}, for {1}", "{0}, für {1}";
    D_NOTHING: "nothing done yet that something follows from", "noch nichts gemacht, woraus etwas folgt";
    D_DUE: "due", "dann";
    D_RULES: "rules", "Regeln";
    D_RULE: "rule", "Regel";
    D_SINGLE: "single", "Maximum";
    D_SETS: "{0} sets of {1}", "{0} Sätze zu {1}";
    D_ONE_TRY: "1 try", "1 Versuch";
    D_TRIES: "{0} tries", "{0} Versuche";
    D_ONE_DROP: "1 drop", "1 Abstieg";
    D_DROPS: "{0} drops", "{0} Abstiege";
    D_FIGURES: "add {0}; {1}, where the back moved {2}, then less {3}; {4}, then less {5}; over {6} days away less {7}", "{0} dazu; {1}, wo der Rücken nachgab {2}, dann {3} weniger; {4}, dann {5} weniger; nach mehr als {6} Tagen Pause {7} weniger";
    // Measuring. Common practice, no source.
    M_INTRO: "in the shoes that they lift in, standing tall, weight on both feet; a tape straight up from the floor; measure twice and write the middle", "in den Schuhen zum Heben, aufrecht, Gewicht auf beiden Füßen; das Band gerade vom Boden hoch; zweimal messen, die Mitte aufschreiben";
    M_TUBEROSITY: "the hard bump on the front of the shin, below the kneecap: floor to its middle", "der harte Höcker vorn am Schienbein, unter der Kniescheibe: Boden bis zu seiner Mitte";
    M_PATELLA: "knee straight, thigh loose: floor to the upper edge of the kneecap", "Knie gestreckt, Schenkel locker: Boden bis zum oberen Rand der Kniescheibe";
    M_MID_THIGH: "half-way from the top of the kneecap to the crease of the hip: floor to there", "auf halbem Weg vom oberen Rand der Kniescheibe zur Leiste: Boden bis dorthin";
    M_LOCKOUT: "standing tall with an empty bar in hanging hands: floor to the middle of the bar", "aufrecht mit leerer Stange in hängenden Händen: Boden bis zur Mitte der Stange";
    M_MM: "{0} mm", "{0} mm";
    M_ESTIMATE: "{0} mm by estimate, give or take {1} mm", "{0} mm geschätzt, auf {1} mm genau";
    M_NOT_MEASURED: "not measured", "nicht gemessen";
    M_WRITE: "measure it, and write it into lifters.toml under landmarks", "messen und in lifters.toml unter landmarks eintragen";
    M_ABOVE_FLOOR: "{0} above the floor", "{0} über dem Boden";
    // A meet or a test day.
    T_CAUTION: "a guide: watch the platform, and ask the referee what may be changed", "ein Anhalt: auf die Plattform sehen, und den Kampfrichter fragen, was noch zu ändern ist";
    T_HEAD: "{0}, opener {1} in {2}: attempt {3} of the flight, {4} over, {5} s an attempt", "{0}, Eröffnung {1} in {2}: Versuch {3} der Gruppe, {4} vorbei, {5} s je Versuch";
    T_NOW: "now", "jetzt";
    T_IN: "in {0}", "in {0}";
    T_EACH_SIDE: "each side {0}", "je Seite {0}";
    T_AFTER: "after attempt {0}", "nach Versuch {0}";
    T_MEET_DAY: "meet day", "Wettkampftag";
    T_IN_WORD: "in", "in";
    T_NOTHING_COMES: "nothing comes any more", "es kommt nichts mehr";
    T_SOONER: "a minute earlier", "eine Minute früher";
    T_LATER: "a minute later", "eine Minute später";
    T_BEGIN: "flight begins", "Gruppe beginnt";
    T_ATTEMPT_OVER: "attempt over", "Versuch vorbei";
    T_NEXT_FLIGHT: "next flight", "nächste Gruppe";
    T_NOT_BEGUN: "{0}: not begun", "{0}: noch nicht begonnen";
    T_OVER: "{0}: {1} of {2} attempts over, {3} s each", "{0}: {1} von {2} Versuchen vorbei, je {3} s";
    T_OPENER: "{0}, opener", "{0}, Eröffnung";
    T_TAP: "tap a warm-up once it is taken; {0}", "gemachten Aufwärmsatz antippen; {0}";
    T_LEFT_OUT: "left out", "fällt aus";
    T_NO_TIME: "{0}: no time for it", "{0}: keine Zeit dafür";
    PARTIAL: "on a partial pull these rank a lifter against themselves and predict nothing else", "bei einem Teilzug vergleichen sie dich nur mit dir selbst und sagen sonst nichts voraus";
}
