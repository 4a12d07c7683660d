//! The phrases of whose turn it is and of what a bar holds, both languages side by side.
crate::phrases! {
    X_LONGER: "{0} s is out of range; ask for 1 to {1} s", "{0} s geht nicht; 1 bis {1} s sind möglich";
    X_NOTHING_SAID: "nobody said what is on that bar; say what it holds", "niemand hat gesagt, was auf der Stange ist; sag, was drauf ist";
}
