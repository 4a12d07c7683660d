//! Keys of what ships: lifts, cues, cautions, kinds of equipment.
use crate::phrase::{Phrase, keys};

keys! {
    // Lifts.
    RACK_PULL "shipped-rack-pull";
    HALTING_DEADLIFT "shipped-halting-deadlift";
    BARBELL_SHRUG "shipped-barbell-shrug";
    DEADLIFT "shipped-deadlift";
    POWER_CLEAN "shipped-power-clean";
    POWER_SNATCH "shipped-power-snatch";
    // Cues.
    BACK_SET_BEFORE_THE_BAR "shipped-back-set-before-the-bar";
    BAR_AGAINST_THE_LEG "shipped-bar-against-the-leg";
    SHOULDERS_IN_FRONT_OF_THE "shipped-shoulders-in-front-of-the";
    SHINS_NEAR_VERTICAL "shipped-shins-near-vertical";
    PUSH_THE_FLOOR_AWAY "shipped-push-the-floor-away";
    STOP_AT_THE_TOP_OF "shipped-stop-at-the-top-of";
    STAND_TALL_FIRST "shipped-stand-tall-first";
    SHOULDERS_TO_THE_EARS "shipped-shoulders-to-the-ears";
    ARMS_STRAIGHT "shipped-arms-straight";
    SLOW_OFF_THE_FLOOR_FAST "shipped-slow-off-the-floor-fast";
    BAR_CLOSE "shipped-bar-close";
    ELBOWS_THROUGH "shipped-elbows-through";
    WIDE_HOOK_GRIP "shipped-wide-hook-grip";
    // Cautions.
    BACK_MOVED_THE_SET_IS "shipped-back-moved-the-set-is";
    PAIN_STOP_AND_SEE_A "shipped-pain-stop-and-see-a";
    COLLARS_ON_SAME_LOAD_ON "shipped-collars-on-same-load-on";
    // As sheets of an older journal have it.
    COLLARS_ON_PLATES_ALIKE_ON "shipped-collars-on-plates-alike-on";
    PINS_AT_THE_SAME_HOLE "shipped-pins-at-the-same-hole";
    HANDS_AND_FEET_CLEAR_OF "shipped-hands-and-feet-clear-of";
    SET_THE_BAR_DOWN_DO "shipped-set-the-bar-down-do";
    NOBODY_WITHIN_REACH_OF_THE "shipped-nobody-within-reach-of-the";
    MISSED_LET_GO_AND_STEP "shipped-missed-let-go-and-step";
    // Kinds of things in the files.
    LIFT "shipped-lift";
    RACK "shipped-rack";
    BAR "shipped-bar";
    HOLE "shipped-hole";
    PLATE_SET "shipped-plate-set";
    WARM_UP_PATTERN "shipped-warm-up-pattern";
}

/// The lifts that come with the program.
pub const LIFTS: [Phrase; 6] = [
    RACK_PULL,
    HALTING_DEADLIFT,
    BARBELL_SHRUG,
    DEADLIFT,
    POWER_CLEAN,
    POWER_SNATCH,
];
