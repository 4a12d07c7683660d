//! Keys of loads that plates make or do not make.
use crate::phrase::keys;

keys! {
    NOT_MADE "loads-not-made" a b;
    MADE_BETWEEN "loads-made-between" a b;
    MADE_AT_MOST "loads-made-at-most" a;
    MADE_AT_LEAST "loads-made-at-least" a;
    MADE_NOTHING "loads-made-nothing";
}
