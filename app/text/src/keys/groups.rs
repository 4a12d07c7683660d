//! Keys of set groups.
use crate::phrase::keys;

keys! {
    TOP "groups-top";
    BACK_OFF "groups-back-off";
    DROP "groups-drop";
    OF_TOP "groups-of-top" a;
    OF_TRAINING "groups-of-training" a;
    HEAVY "groups-heavy";
    MEDIUM "groups-medium";
    LIGHT "groups-light";
    MORE "groups-more" a;
    DUE "groups-due";
    EFFORT "groups-effort" a;
    NO_LOAD "groups-no-load";
    AS_MANY "groups-as-many";
    NTH "groups-nth" a b c;
    TEMPO "groups-tempo" a;
    PAUSE "groups-pause" a;
    NO_BELT "groups-no-belt";
    NO_STRAPS "groups-no-straps";
    BLOCK "groups-block" a;
    BAR_OF "groups-bar-of" a b;
    HOW_HARD "groups-how-hard" a;
}
