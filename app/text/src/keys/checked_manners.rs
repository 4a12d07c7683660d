//! Keys of what the checkers say of how sets are done.
use crate::phrase::keys;

keys! {
    WRITE_FOUR_DOWN_BOTTOM_UP "checked-write-four-down-bottom-up";
    A_TEMPO_OF_FIGURES "checked-a-tempo-of-figures" a;
    A_TEMPO_WITH_FIGURES_THAT "checked-a-tempo-with-figures-that" a;
    TWO_THINGS_SAID_OF_THE "checked-two-things-said-of-the" a;
    TWO_WAYS_OF_DOING_THE "checked-two-ways-of-doing-the";
    NOT_A_PAUSE_WITHIN_A "checked-not-a-pause-within-a";
    WRITE_WHOLE_SECONDS_FROM_1 "checked-write-whole-seconds-from-1" a;
    WHICH_COULD_BE_A_REST "checked-which-could-be-a-rest";
    A_MIXED_GRIP_WHICH_IS "checked-a-mixed-grip-which-is";
    WRITE_DOUBLE_OVERHAND_HOOK_GRIP "checked-write-double-overhand-hook-grip";
    A_HOLE_WHERE_HOLES_COUNT "checked-a-hole-where-holes-count" a;
    WRITE_IT_AS_HOLE_6 "checked-write-it-as-hole-6";
    BLOCKS_WITHOUT_THEIR_HEIGHT "checked-blocks-without-their-height";
    WRITE_IT_AS_BLOCKS_100 "checked-write-it-as-blocks-100";
    A_BAR_FOR_SOME_OF "checked-a-bar-for-some-of";
    WRITE_THE_SETS_ON_ANOTHER "checked-write-the-sets-on-another";
    NOT_UNDERSTOOD_AS_WHERE_OR "checked-not-understood-as-where-or";
    WRITE_HOLE_6_BLOCKS_100 "checked-write-hole-6-blocks-100";
    WHICH_COULD_BE_A_LOAD "checked-which-could-be-a-load";
    A_CELL_THAT_SAYS_OTHERWISE "checked-a-cell-that-says-otherwise";
    WHICH_COULD_BE_OR "checked-which-could-be-or" a b;
    WRITE_THE_BAR_S_WHOLE "checked-write-the-bar-s-whole";
    A_HOLE_FOR_SOME_SET "checked-a-hole-for-some-set";
    WRITE_THE_HOLE_WITH_EACH "checked-write-the-hole-with-each";
    BLOCKS_FOR_SOME_SET_GROUPS "checked-blocks-for-some-set-groups";
    WRITE_THE_BLOCKS_WITH_EACH "checked-write-the-blocks-with-each";
    WHICH_THE_HAS_NOT_IT "checked-which-the-has-not-it" a;
    WRITE_BLOCKS_100_MM_OR "checked-write-blocks-100-mm-or";
    WHICH_THE_HAS_NOT_IT_STARTS "checked-which-the-has-not-it-starts" a;
    WRITE_HOLE_6_OR_LEAVE "checked-write-hole-6-or-leave";
    WHERE_THE_OF_HAS_HOLES "checked-where-the-of-has-holes" a b c;
    WRITE_A_HOLE_FROM_1 "checked-write-a-hole-from-1" a;
    WHICH_DOES_NOT_STAND_BY "checked-which-does-not-stand-by" a b;
    WRITE_A_BAR_OF_THAT "checked-write-a-bar-of-that" a;
}
