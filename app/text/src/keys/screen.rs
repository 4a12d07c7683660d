//! Keys of what stands on every screen: sets, loads, heights, what is due, warnings.
use crate::phrase::keys;

keys! {
    // Everywhere; the first ones are written by the window itself, in these words.
    ALL_LIFTERS "all-lifters";
    SWITCH_TO "switch-to" lifter;
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
    OF "of" n all;
    HOLE "hole" hole;
    FROM_THE_FLOOR "from-the-floor";
    FROM_THE_HOOKS "from-the-hooks";
    HOOKS_HOLE "hooks-hole" hole;
    FROM_HOOKS_HOLE "from-hooks-hole" hole;
    FROM_HOOKS_ANY "from-hooks-any";
    ESTIMATED_MEASURE "estimated-measure" start;
    UNDO "undo";
    BACK "back";
    CANNOT_START "cannot-start";
    TRIED_AGAIN "tried-again";
    BELT "belt";
    STRAPS "straps";
    FROM_LOAD "from-load" gear load;
    DOUBLE_OVERHAND "double-overhand";
    HOOK_GRIP "hook-grip";
    DOUBLE_OVERHAND_GRIP "double-overhand-grip";
    REPS "reps" n;
    SETS_OF "sets-of" n set;
    NO_MAT "no-mat";
    MATS "mats" n mm;
    BACK_HELD "back-held";
    BACK_MOVED "back-moved";
    BACK_MOVED_AT_REP "back-moved-at-rep" rep;
    // Large, in lines that read well.
    STOPPED_AT_REP "stopped-at-rep" rep;
    BACK_MOVED_AT "back-moved-at" rep;
    WARM_UP_OF "warm-up-of" n all;
    WORK_SET "work-set";
    WORK_SET_OF "work-set-of" n all;
    // Heights.
    BAR_HEIGHT "bar-height" mm how;
    ON_THE_MARK "on-the-mark";
    UNDER_THE_MARK "under-the-mark" mm;
    OVER_THE_MARK "over-the-mark" mm;
    SHARES "shares" length lift;
    LEAVES_GAP "leaves-gap" length lift;
    MM_IN "mm-in" mm inches;
    COLLARS "collars" mass;
    // Loading.
    EMPTY_BAR "empty-bar";
    LEAVE_BAR "leave-bar";
    REPS_DONE "reps-done" n;
    // All lifters.
    NO_LIFTERS "no-lifters";
    FLOOR "floor";
    REST_LEFT "rest-left" time;
    DONE_OF "done-of" n all;
    NOTHING_TODAY "nothing-today";
    MEASURE_FIRST "measure-first";
    // The end.
    NOTHING_DONE "nothing-done";
    NEXT "next" what;
    NEXT_LIFTER "next-lifter";
    NOT_DONE "not-done";
    SETS "sets" n;
    REPS_IN_ALL "reps-in-all" n;
    MINUTES "minutes" n;
    OWN_RECORD "own-record";
    // Pads.
    HOW_MANY_REPS "how-many-reps" load;
    WHICH_REP "which-rep";
    END_LIFT "end-lift";
    DID_IT "did-it";
    DID_ALL "did-all" n;
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
    AFTER "after" set;
    GO_NOW "go-now";
    // Set-up.
    START "start";
    BACK_TO_BAR "back-to-bar";
    NOT_PLANNED "not-planned";
    NOT_A_LIFTER "not-a-lifter" lifter;
    HEIGHT_UNKNOWN "height-unknown";
    // The back moved.
    SET_OF "set-of" set n all;
    MOVED_ADVICE "moved-advice";
    GO_ON "go-on";
    // No sheet.
    MISSING "missing" what name;
    NOTHING_UNTIL "nothing-until" lift date;
    GOES_ON_FROM "goes-on-from" programme date;
    NO_TRAINING_MAX "no-training-max";
    NO_BEST "no-best";
    NO_LADDER "no-ladder" why;
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
    BY_HOUR_DETAIL "by-hour-detail" from to;
    ABOUT "about";
    ABOUT_VALUE "about-value";
    ABOUT_WHAT "about-what" version;
    ABOUT_TERMS "about-terms";
    ABOUT_PARTS "about-parts";
    ABOUT_CARE "about-care";
    LAN_OPENS "lan-opens" address;
    LAN_OR "lan-or" first second;
    LAN_PRINT "lan-print" print;
    LAN_ROOT "lan-root" print;
    LAN_READABLE "lan-readable";
    // History.
    NO_SESSIONS "no-sessions";
    A_BEST "a-best";
    MOVED_WARM "moved-warm";
    SETS_DONE_OF "sets-done-of" n all;
    // Next time.
    NEXT_TIME "next-time" due;
    N_UP "n-up" load by;
    N_AGAIN "n-again" load;
    N_LEAST "n-least" load;
    N_DOWN "n-down" load by;
    N_BECAUSE "n-because" change why;
    N_BACK "n-back" went;
    N_NO_STEP "n-no-step" went;
    N_LIGHT "n-light" went;
    N_TRY "n-try" went n all;
    N_TOO_MUCH "n-too-much" went load;
    N_STUCK "n-stuck" went;
    X_NOT_HURT "x-not-hurt" lifter;
    X_ILL_BACKWARDS "x-ill-backwards" to from;
    NO_HURT "no-hurt";
    NO_UNTRIED "no-untried" load;
    NO_MANY_REPS "no-many-reps" n load;
    NO_LOOKS_WRONG "no-looks-wrong" load supported;
    DUE_THEN_PLAN "due-then-plan" due plan;
    PLAN_THEN_DUE "plan-then-due" plan due;
    N_HARD "n-hard" went;
    N_RANGE "n-range" went;
    N_WAITING "n-waiting" went;
    N_AWAY "n-away" days;
    N_ANEW "n-anew" days;
    N_ILL "n-ill" days;
    N_FAMILY "n-family";
    N_OVER "n-over";
    N_LONG_AGO "n-long-ago";
    N_WEEK "n-week";
    N_HURT "n-hurt";
    N_NOTHING "n-nothing" why;
    N_COACH "n-coach";
    N_COACH_SAID "n-coach-said" load note;
    V_RAISE "v-raise";
    V_REPEAT "v-repeat";
    V_DROP "v-drop";
    V_RESET "v-reset";
    V_EASE "v-ease";
    O_WELL "o-well";
    O_MOVED "o-moved" rep where;
    O_MOVED_WARM "o-moved-warm";
    O_CUT "o-cut" n all;
    NEXT_SESSION "next-session";
    // Choosing the load on the day. The caution: common practice, no source.
    OTHER_LOAD "other-load";
    THE_CHOICE "the-choice";
    THE_PLAN "the-plan";
    THE_DUE "the-due";
    TOO_EARLY "too-early";
    OVER_DUE "over-due";
    WORK_SET_REPS "work-set-reps" reps;
    WORK_SETS_OF "work-sets-of" n reps;
    SETTLE_CAUTION "settle-caution";
    KEEP_LOAD "keep-load" load;
    FIRST_TIME "first-time";
    LAST_TIME "last-time" load went date;
    AS_LAST_TIME "as-last-time";
    MORE_THAN_LAST "more-than-last" by;
    LESS_THAN_LAST "less-than-last" by;
    N_WELL "n-well";
    N_SHORT "n-short" n all where;
    N_MOVED "n-moved" rep where;
    N_MOVED_WARM "n-moved-warm";
    N_CUT "n-cut" n all;
    N_IN_SET "n-in-set" set;
    // Days.
    // What a warning says.
    W_NO_HOLE "w-no-hole" rack mm;
    W_STRAIGHT_BAR "w-straight-bar";
    W_OVERLAP "w-overlap" least;
    W_NOT_LOADABLE "w-not-loadable" load;
    W_TOO_ROUGH "w-too-rough" landmark spread spacing;
    W_AT "w-at" load;
    W_FROM_TO "w-from-to" from to;
    W_LOW_PLATES "w-low-plates" loads raise;
    W_ESTIMATED "w-estimated" landmark spread;
    W_ESTIMATED_DOUBTFUL "w-estimated-doubtful" landmark spread;
    W_PINS_RATED "w-pins-rated" load rated;
    W_RACK_RATED "w-rack-rated" load rated;
    W_BAR_RATED "w-bar-rated" load rated;
    W_SET_AT_REST "w-set-at-rest" share;
    W_SET_DROPPED "w-set-dropped" mm;
    W_NOT_MEASURED "w-not-measured" landmark;
}
