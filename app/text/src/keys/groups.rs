//! Keys of set groups.
use crate::phrase::keys;

keys! {
    TOP "groups-top";
    BACK_OFF "groups-back-off";
    DROP "groups-drop";
    OF_TOP "groups-of-top" share;
    OF_TRAINING "groups-of-training" share;
    HEAVY "groups-heavy";
    MEDIUM "groups-medium";
    LIGHT "groups-light";
    MORE "groups-more" by;
    DUE "groups-due";
    EFFORT "groups-effort" effort;
    NO_LOAD "groups-no-load";
    AS_MANY "groups-as-many";
    NTH "groups-nth" role n all;
    TEMPO "groups-tempo" tempo;
    PAUSE "groups-pause" seconds;
    NO_BELT "groups-no-belt";
    NO_STRAPS "groups-no-straps";
    BLOCK "groups-block" mm;
    BAR_OF "groups-bar-of" work bar;
    HOW_HARD "groups-how-hard" effort;
}
