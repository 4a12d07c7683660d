//! Keys of what the checkers say of how sets are done.
use crate::phrase::rows;

rows! {
    "checked-write-four-down-bottom-up";
    "checked-a-tempo-of-figures" a;
    "checked-a-tempo-with-figures-that" a;
    "checked-two-things-said-of-the" a;
    "checked-two-ways-of-doing-the";
    "checked-not-a-pause-within-a";
    "checked-write-whole-seconds-from-1" a;
    "checked-which-could-be-a-rest";
    "checked-a-mixed-grip-which-is";
    "checked-write-double-overhand-hook-grip";
    "checked-a-hole-where-holes-count" a;
    "checked-write-it-as-hole-6";
    "checked-blocks-without-their-height";
    "checked-write-it-as-blocks-100";
    "checked-a-bar-for-some-of";
    "checked-write-the-sets-on-another";
    "checked-not-understood-as-where-or";
    "checked-write-hole-6-blocks-100";
    "checked-which-could-be-a-load";
    "checked-a-cell-that-says-otherwise";
    "checked-which-could-be-or" a b;
    "checked-write-the-bar-s-whole";
    "checked-a-hole-for-some-set";
    "checked-write-the-hole-with-each";
    "checked-blocks-for-some-set-groups";
    "checked-write-the-blocks-with-each";
    "checked-which-the-has-not-it" a;
    "checked-write-blocks-100-mm-or";
    "checked-which-the-has-not-it-starts" a;
    "checked-write-hole-6-or-leave";
    "checked-where-the-of-has-holes" a b c;
    "checked-write-a-hole-from-1" a;
    "checked-which-does-not-stand-by" a b;
    "checked-write-a-bar-of-that" a;
}
