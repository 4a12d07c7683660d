//! Keys of what stands on every screen: sets, loads, heights, what is due, warnings.
use crate::phrase::keys;

keys! {
    // Everywhere; the first ones are written by the window itself, in these words.
    ALL_LIFTERS "all-lifters";
    SWITCH_TO "switch-to" a;
    MORE "more";
    MORE_LIFTERS "more-lifters";
    SET_UP "set-up";
    OTHER_REPS "other-reps";
    HISTORY "history";
    DONE "done";
    READY "ready";
    WORK "work";
    WARM_UP "warm-up";
    SKIPPED "skipped";
    OF "of" a b;
    HOLE "hole" a;
    FROM_THE_FLOOR "from-the-floor";
    FROM_THE_HOOKS "from-the-hooks";
    HOOKS_HOLE "hooks-hole" a;
    FROM_HOOKS_HOLE "from-hooks-hole" a;
    FROM_HOOKS_ANY "from-hooks-any";
    ESTIMATED_MEASURE "estimated-measure" a;
    UNDO "undo";
    BACK "back";
    CANNOT_START "cannot-start";
    TRIED_AGAIN "tried-again";
    BELT "belt";
    STRAPS "straps";
    FROM_LOAD "from-load" a b;
    DOUBLE_OVERHAND "double-overhand";
    HOOK_GRIP "hook-grip";
    DOUBLE_OVERHAND_GRIP "double-overhand-grip";
    REPS "reps" a;
    SETS_OF "sets-of" a b;
    NO_MAT "no-mat";
    MATS "mats" a b;
    BACK_HELD "back-held";
    BACK_MOVED "back-moved";
    BACK_MOVED_AT_REP "back-moved-at-rep" a;
    // Large, in lines that read well.
    STOPPED_AT_REP "stopped-at-rep" a;
    BACK_MOVED_AT "back-moved-at" a;
    WARM_UP_OF "warm-up-of" a b;
    WORK_SET "work-set";
    WORK_SET_OF "work-set-of" a b;
    // Heights.
    BAR_HEIGHT "bar-height" a b;
    ON_THE_MARK "on-the-mark";
    UNDER_THE_MARK "under-the-mark" a;
    OVER_THE_MARK "over-the-mark" a;
    SHARES "shares" a b;
    LEAVES_GAP "leaves-gap" a b;
    MM_IN "mm-in" a b;
    COLLARS "collars" a;
    // Loading.
    EMPTY_BAR "empty-bar";
    LEAVE_BAR "leave-bar";
    REPS_DONE "reps-done" a;
    // All lifters.
    NO_LIFTERS "no-lifters";
    FLOOR "floor";
    REST_LEFT "rest-left" a;
    DONE_OF "done-of" a b;
    NOTHING_TODAY "nothing-today";
    MEASURE_FIRST "measure-first";
    // The end.
    NOTHING_DONE "nothing-done";
    NEXT "next" a;
    NEXT_LIFTER "next-lifter";
    NOT_DONE "not-done";
    SETS "sets" a;
    REPS_IN_ALL "reps-in-all" a;
    MINUTES "minutes" a;
    OWN_RECORD "own-record";
    // Pads.
    HOW_MANY_REPS "how-many-reps" a;
    WHICH_REP "which-rep";
    END_LIFT "end-lift";
    DID_IT "did-it";
    DID_ALL "did-all" a;
    // The floor.
    NOBODY_YET "nobody-yet";
    UP "up";
    NEXT_UP "next-up";
    // What undo takes back.
    THE_START "the-start";
    THE_END "the-end";
    GOING_ON "going-on";
    THE_SKIP "the-skip";
    // Rest.
    REST "rest";
    AFTER "after" a;
    GO_NOW "go-now";
    // Set-up.
    START "start";
    BACK_TO_BAR "back-to-bar";
    NOT_PLANNED "not-planned";
    NOT_A_LIFTER "not-a-lifter" a;
    HEIGHT_UNKNOWN "height-unknown";
    // The back moved.
    SET_OF "set-of" a b c;
    MOVED_ADVICE "moved-advice";
    GO_ON "go-on";
    // No sheet.
    MISSING "missing" a b;
    NOTHING_UNTIL "nothing-until" a b;
    GOES_ON_FROM "goes-on-from" a b;
    NO_TRAINING_MAX "no-training-max";
    NO_BEST "no-best";
    NO_LADDER "no-ladder" a;
    // Landmarks.
    TIBIAL_TUBEROSITY "tibial-tuberosity";
    PATELLA_TOP "patella-top";
    MID_THIGH "mid-thigh";
    LOCKOUT "lockout";
    // This panel.
    PANEL "panel";
    PANEL_TITLE "panel-title";
    LANGUAGE "language";
    LIGHT "light";
    BY_HOUR "by-hour";
    DAYLIGHT "daylight";
    DIM "dim";
    BY_HOUR_DETAIL "by-hour-detail" a b;
    ABOUT "about";
    ABOUT_VALUE "about-value";
    ABOUT_WHAT "about-what" a;
    ABOUT_TERMS "about-terms";
    ABOUT_PARTS "about-parts";
    ABOUT_CARE "about-care";
    LAN_OPENS "lan-opens" a;
    LAN_OR "lan-or" a b;
    LAN_PRINT "lan-print" a;
    LAN_ROOT "lan-root" a;
    LAN_READABLE "lan-readable";
    // History.
    NO_SESSIONS "no-sessions";
    MOVED_WARM "moved-warm";
    SETS_DONE_OF "sets-done-of" a b;
    // Next time.
    NEXT_TIME "next-time" a;
    N_UP "n-up" a b;
    N_AGAIN "n-again" a;
    N_LEAST "n-least" a;
    N_DOWN "n-down" a b;
    N_BECAUSE "n-because" a b;
    N_BACK "n-back" a;
    N_NO_STEP "n-no-step" a;
    N_LIGHT "n-light" a;
    N_TRY "n-try" a b c;
    N_TOO_MUCH "n-too-much" a b;
    N_STUCK "n-stuck" a;
    X_NOT_HURT "x-not-hurt" a;
    X_ILL_BACKWARDS "x-ill-backwards" a b;
    NO_HURT "no-hurt";
    NO_UNTRIED "no-untried" a;
    NO_MANY_REPS "no-many-reps" a b;
    NO_LOOKS_WRONG "no-looks-wrong" a b;
    DUE_THEN_PLAN "due-then-plan" a b;
    PLAN_THEN_DUE "plan-then-due" a b;
    N_HARD "n-hard" a;
    N_RANGE "n-range" a;
    N_WAITING "n-waiting" a;
    N_AWAY "n-away" a;
    N_ANEW "n-anew" a;
    N_ILL "n-ill" a;
    N_FAMILY "n-family";
    N_OVER "n-over";
    N_LONG_AGO "n-long-ago";
    N_WEEK "n-week";
    N_HURT "n-hurt";
    N_NOTHING "n-nothing" a;
    N_COACH "n-coach";
    N_COACH_SAID "n-coach-said" a b;
    V_RAISE "v-raise";
    V_REPEAT "v-repeat";
    V_DROP "v-drop";
    V_RESET "v-reset";
    V_EASE "v-ease";
    O_WELL "o-well";
    O_MOVED "o-moved" a b;
    O_MOVED_WARM "o-moved-warm";
    O_CUT "o-cut" a b;
    NEXT_SESSION "next-session";
    // Choosing the load on the day. The caution: common practice, no source.
    OTHER_LOAD "other-load";
    THE_CHOICE "the-choice";
    THE_PLAN "the-plan";
    THE_DUE "the-due";
    TOO_EARLY "too-early";
    OVER_DUE "over-due";
    WORK_SET_REPS "work-set-reps" a;
    WORK_SETS_OF "work-sets-of" a b;
    SETTLE_CAUTION "settle-caution";
    KEEP_LOAD "keep-load" a;
    FIRST_TIME "first-time";
    LAST_TIME "last-time" a b c;
    AS_LAST_TIME "as-last-time";
    MORE_THAN_LAST "more-than-last" a;
    LESS_THAN_LAST "less-than-last" a;
    N_WELL "n-well";
    N_SHORT "n-short" a b c;
    N_MOVED "n-moved" a b;
    N_MOVED_WARM "n-moved-warm";
    N_CUT "n-cut" a b;
    N_IN_SET "n-in-set" a;
    // Days.
    // What a warning says.
    W_NO_HOLE "w-no-hole" a b;
    W_STRAIGHT_BAR "w-straight-bar";
    W_OVERLAP "w-overlap" a;
    W_NOT_LOADABLE "w-not-loadable" a;
    W_TOO_ROUGH "w-too-rough" a b c;
    W_AT "w-at" a;
    W_FROM_TO "w-from-to" a b;
    W_LOW_PLATES "w-low-plates" a b;
    W_ESTIMATED "w-estimated" a b;
    W_ESTIMATED_DOUBTFUL "w-estimated-doubtful" a b;
    W_PINS_RATED "w-pins-rated" a b;
    W_RACK_RATED "w-rack-rated" a b;
    W_BAR_RATED "w-bar-rated" a b;
    W_SET_AT_REST "w-set-at-rest" a;
    W_SET_DROPPED "w-set-dropped" a;
    W_NOT_MEASURED "w-not-measured" a;
}
