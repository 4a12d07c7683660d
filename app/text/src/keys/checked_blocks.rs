//! Keys of what the checkers say of programmes of blocks.
use crate::phrase::keys;

keys! {
    BLOCK "checked-block";
    A_BLOCK "checked-a-block";
    A_DAY_OF_A_BLOCK "checked-a-day-of-a-block";
    A_LIFT_OF_A_BLOCK "checked-a-lift-of-a-block";
    NO_BLOCK "checked-no-block";
    ADD_PROGRAMME_BLOCK_TABLES_OR "checked-add-programme-block-tables-or";
    ADD_PROGRAMME_BLOCK_DAY_TABLES "checked-add-programme-block-day-tables";
    ROUNDS_WITHOUT_BLOCK "checked-rounds-without-block";
    BESIDE_BLOCK "checked-beside-block" a;
    PUT_THE_DAYS_INTO_THE "checked-put-the-days-into-the";
    LEAVE_IT_OUT_DAYS_OF "checked-leave-it-out-days-of";
    LEAVE_IT_OUT_STARTS_OF "checked-leave-it-out-starts-of";
    THE_FIRST_BLOCK_WITHOUT_STARTS "checked-the-first-block-without-starts";
    WRITE_THE_MONDAY_OF_ITS "checked-write-the-monday-of-its";
    WHICH_IS_NO_MONDAY "checked-which-is-no-monday" a;
    WRITE_THE_MONDAY_OF_THE "checked-write-the-monday-of-the" a;
    WHILE_STILL_GOES_ON_TO "checked-while-still-goes-on-to" a b c;
    WRITE_OR_LATER_OR_LEAVE "checked-write-or-later-or-leave" a;
    LIGHT_EVERY_WITHOUT_LIGHT "checked-light-every-without-light";
    WRITE_HOW_LIGHT_AS_LIGHT "checked-write-how-light-as-light";
    A_LIGHT_WEEK_IN_A "checked-a-light-week-in-a";
    LEAVE_IT_OUT_OR_GIVE "checked-leave-it-out-or-give";
    THE_AGAIN_ON_THE_SAME "checked-the-again-on-the-same" a;
    WRITE_ITS_SETS_AS_ONE "checked-write-its-sets-as-one";
    A_DAY_WITHOUT_A_LIFT "checked-a-day-without-a-lift";
    FOR_A_SECOND_DAY_OF "checked-for-a-second-day-of" a;
    A_BLOCK_WITHOUT_A_DAY "checked-a-block-without-a-day";
    WEEKS_IN_ALL_MORE_THAN "checked-weeks-in-all-more-than" a b;
    STARTS_OF_A_LATER_BLOCK "checked-starts-of-a-later-block";
    SCHEME_BESIDE_WEEKS "checked-scheme-beside-weeks";
    A_LIFT_WITHOUT_SCHEME_AND "checked-a-lift-without-scheme-and";
    WRITE_SCHEME_3X5_FOR_ALL "checked-write-scheme-3x5-for-all";
    A_LIFT_THAT_NO_WEEK "checked-a-lift-that-no-week";
    SCHEMES_FOR_WEEKS_IN_A "checked-schemes-for-weeks-in-a" a b;
    WRITE_ONE_FOR_EACH_WEEK "checked-write-one-for-each-week";
    A_SCHEME_FOR_EACH_WEEK "checked-a-scheme-for-each-week";
    WRITE_THE_LIGHT_WEEKS_OWN "checked-write-the-light-weeks-own";
    A_SHARE_OF_A_TRAINING "checked-a-share-of-a-training" a b c;
}
