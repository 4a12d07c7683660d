//! Keys of loads that plates make or do not make.
use crate::phrase::keys;

keys! {
    NOT_MADE "loads-not-made" load made;
    MADE_BETWEEN "loads-made-between" below above;
    MADE_AT_MOST "loads-made-at-most" most;
    MADE_AT_LEAST "loads-made-at-least" least;
    MADE_NOTHING "loads-made-nothing";
}
