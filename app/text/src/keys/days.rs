//! Keys of days and clocks.
use crate::phrase::keys;

keys! {
    LEFT_OPEN "days-left-open";
    LEFT_OPEN_CLOSED "days-left-open-closed";
    LEFT_OPEN_HINT "days-left-open-hint";
    LEFT_OPEN_NONE "days-left-open-none";
    LEFT_OPEN_ROW "days-left-open-row" lifter lift date sets;
    LEFT_OPEN_TOLD "days-left-open-told" lift date sets;
    REOPENED "days-reopened" lifter lift date;
    CLOCK_UNSET "days-clock-unset";
    X_NOT_LEFT_OPEN "days-x-not-left-open";
    X_LEFT_OPEN "days-x-left-open";
    X_DATE_KNOWN "days-x-date-known";
    X_DONE_ELSEWHERE "days-x-done-elsewhere";
    X_KNOWN_ELSEWHERE "days-x-known-elsewhere";
}
