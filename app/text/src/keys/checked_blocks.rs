//! Keys of what the checkers say of programmes of blocks.
use crate::phrase::rows;

rows! {
    "checked-block";
    "checked-a-block";
    "checked-a-day-of-a-block";
    "checked-a-lift-of-a-block";
    "checked-no-block";
    "checked-add-programme-block-tables-or";
    "checked-add-programme-block-day-tables";
    "checked-rounds-without-block";
    "checked-beside-block" a;
    "checked-put-the-days-into-the";
    "checked-leave-it-out-days-of";
    "checked-leave-it-out-starts-of";
    "checked-the-first-block-without-starts";
    "checked-write-the-monday-of-its";
    "checked-which-is-no-monday" a;
    "checked-write-the-monday-of-the" a;
    "checked-while-still-goes-on-to" a b c;
    "checked-write-or-later-or-leave" a;
    "checked-light-every-without-light";
    "checked-write-how-light-as-light";
    "checked-a-light-week-in-a";
    "checked-leave-it-out-or-give";
    "checked-the-again-on-the-same" a;
    "checked-write-its-sets-as-one";
    "checked-a-day-without-a-lift";
    "checked-for-a-second-day-of" a;
    "checked-a-block-without-a-day";
    "checked-weeks-in-all-more-than" a b;
    "checked-starts-of-a-later-block";
    "checked-scheme-beside-weeks";
    "checked-a-lift-without-scheme-and";
    "checked-write-scheme-3x5-for-all";
    "checked-a-lift-that-no-week";
    "checked-schemes-for-weeks-in-a" a b;
    "checked-write-one-for-each-week";
    "checked-a-scheme-for-each-week";
    "checked-write-the-light-weeks-own";
    "checked-a-share-of-a-training" a b c;
}
