//! Templates are filled in one pass, and what nothing stands for stays.
use domain::gaps::fill;
use proptest::prelude::*;

#[test]
fn gaps_by_number_once_or_more() {
    assert_eq!(fill("{1} after {0}, {1}", &["a", "b"]), "b after a, b");
    assert_eq!(fill("{0} of {2}", &["a"]), "a of {2}");
    assert_eq!(
        fill("write { share, reps } {0}{", &["x"]),
        "write { share, reps } x{"
    );
    assert_eq!(fill("{0}", &["{1}", "b"]), "{1}");
}

proptest! {
    /// Whatever stands for a gap comes out as it is.
    #[test]
    fn nothing_read_is_a_gap(first in ".*", second in ".*") {
        let filled = fill("<{0}|{1}>", &[&first, &second]);
        prop_assert_eq!(filled, format!("<{first}|{second}>"));
    }
}
