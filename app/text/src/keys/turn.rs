//! Keys of whose turn it is, and of what a bar holds.
use crate::phrase::keys;

keys! {
    // What the hands have to do.
    EACH_SIDE "each-side";
    TAKE_OFF_LINE "take-off-line" plates;
    PUT_ON_LINE "put-on-line" plates;
    THEN "then";
    LOOK_FIRST "look-first";
    STRIP_FOR_PINS "strip-for-pins" load hole;
    STRIP_FOR_HOOKS "strip-for-hooks" load hole;
    STRIP_FOR_THE_HOOKS "strip-for-the-hooks" load;
    STRIP_FOR_FLOOR "strip-for-floor" load;
    EACH_SIDE_HOLDS "each-side-holds" plates;
    MUST_HOLD "must-hold" plates;
    NO_PLATES "no-plates";
    LEFT_RIGHT "left-right" left right;
    LEFT_RIGHT_LINES "left-right-lines" left right;
    WEIGHS "weighs" plate mass;
    PLATES_ELSEWHERE "plates-elsewhere" plates bar;
    LOADED "loaded";
    BAR_HOLDS "bar-holds";
    // What the bar holds, said by hand.
    HOLDS_QUESTION "holds-question" bar;
    HOLDS_EMPTY "holds-empty";
    HOLDS_WANTED "holds-wanted";
    HOLDS_BEFORE "holds-before";
    HOLDS_PLATES "holds-plates";
    HOLDS_NONE "holds-none";
    HOLDS_SAVE "holds-save";
    HOLDS_TOTAL "holds-total" load;
    TAKE_LAST "take-last";
    THE_WORD "the-word";
    // Whose turn it is.
    TURN_PAD "turn-pad";
    TURN_QUESTION "turn-question" lifter;
    LATER "later";
    LATER_MORE "later-more";
    SKIP_SET "skip-set";
    SKIP_SET_MORE "skip-set-more" set;
    LONGER "longer";
    LONGER_MORE "longer-more";
    LEAVE "leave";
    LEAVE_MORE "leave-more";
    MINE "mine";
    MINE_MORE "mine-more";
    I_AM_BACK "i-am-back";
    BACK_MORE "back-more";
    AWAY "away";
    ALSO_UP "also-up" bar rack lifter;
    PASSED_OVER "passed-over" clock;
    PASSED_OVER_ONCE "passed-over-once";
    PLACE_NEXT "place-next";
    RESTS "rests" time;
    RAISE "raise" mm;
    NOT_RAISED "not-raised";
    WAITING_LOAD "waiting-load";
    X_LONGER "x-longer" n most;
    X_NOTHING_SAID "x-nothing-said";
}
