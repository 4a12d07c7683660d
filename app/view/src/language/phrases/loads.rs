//! The phrases of loads that plates make or do not make, both languages side by side.
crate::phrases! {
    NOT_MADE: "the plates do not make {0}; they make {1}; ask the coach for another load", "{0} geht mit diesen Scheiben nicht; es gehen {1}; nach einer anderen Last fragen";
    MADE_BETWEEN: "{0} and {1}", "{0} und {1}";
    MADE_AT_MOST: "{0} at most", "höchstens {0}";
    MADE_AT_LEAST: "{0} at least", "mindestens {0}";
    MADE_NOTHING: "nothing near it", "keine in der Nähe";
}
