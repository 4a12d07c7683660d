//! The phrases of the coach's list and of hurt and illness, both languages side by side.
crate::phrases! {
    FOR_ALL: "due on {0}, for everybody", "fällig am {0}, für alle";
    NOBODY: "nothing done yet that something follows from", "noch nichts gemacht, woraus etwas folgt";
    HURT: "hurt", "verletzt";
    HURT_SINCE: "since {0}: {1}", "seit {0}: {1}";
    WRONG: "looks wrong", "sieht falsch aus";
    WRONG_ON: "plan of {0}: {1}, the record supports {2}", "Plan für {0}: {1}, belegt sind {2}";
    UNTRIED_ON: "plan of {0}: {1}, and nothing is recorded that supports it", "Plan für {0}: {1}, und nichts ist dafür belegt";
    MANY_REPS_ON: "plan of {0}: {1} reps of work at {2}", "Plan für {0}: {1} Arbeitswiederholungen mit {2}";
    WRONG_TAP: "tap if it is meant", "antippen, wenn es so gemeint ist";
    OVER: "over-reaching", "überlastet";
    STUCK: "stuck", "steckt fest";
    ANEW: "begin anew", "neu anfangen";
    WAITS: "waits for you", "wartet auf dich";
    DIFFERS: "plan and due differ", "Plan und Fälliges verschieden";
    DIFFERS_ON: "plan of {0}: {1}; due {2}", "Plan für {0}: {1}; fällig {2}";
    AWAY: "away", "weg";
    DUE: "due", "fällig";
    TITLE: "due, and who waits", "fällig, und wer wartet";
    HINT: "who waits for the coach comes first; tap one to rule", "wer auf den Coach wartet, steht vorn; antippen, um zu entscheiden";
    WAITING: "{0} wait for the coach", "{0} warten auf den Coach";
    NONE_WAITS: "nobody waits", "niemand wartet";
    COACH_CODE: "the coach's word", "Wort des Coachs";
    HEALTH: "hurt or ill", "verletzt oder krank";
    HEALTH_HINT: "what a lifter says; what it is, a clinician says", "was jemand sagt; was es ist, sagt ein Arzt";
    FIT: "fit", "gesund";
    FIT_AGAIN: "fit again", "wieder gesund";
    HURT_NOW: "from today: nothing is due until fit again", "ab heute: nichts ist fällig, bis zur Besserung";
    ILL: "ill", "krank";
    ILL_TODAY: "today", "heute";
    ILL_DAYS: "the last {0} days", "die letzten {0} Tage";
    ILL_FROM_TO: "{0} to {1}", "{0} bis {1}";
    NOTE_AT_DESK: "entered at the desk", "am Schreibtisch eingetragen";
    NOTE_ON_PAGE: "entered on the page", "auf der Seite eingetragen";
    AS_DUE: "what is due", "was fällig ist";
    AS_BEFORE: "as the last time", "wie beim letzten Mal";
    AS_PLANNED: "the plan's", "wie im Plan";
}
