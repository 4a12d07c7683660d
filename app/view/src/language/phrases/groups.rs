//! The phrases of set groups, both languages side by side.
crate::phrases! {
    TOP: "top set", "Topsatz";
    BACK_OFF: "back-off", "Back-off";
    DROP: "drop set", "Reduktionssatz";
    OF_TOP: "{0} of the top set", "{0} des Topsatzes";
    OF_TRAINING: "{0} of the training max", "{0} des Trainingsmaximums";
    HEAVY: "heavy", "schwer";
    MEDIUM: "medium", "mittel";
    LIGHT: "light", "leicht";
    MORE: "last time + {0}", "letztes Mal + {0}";
    DUE: "what is due", "was fällig ist";
    EFFORT: "RPE {0}", "RPE {0}";
    NO_LOAD: "nothing is due of it yet; write a load into the plan", "davon ist noch nichts fällig; eine Last in den Plan schreiben";
    AS_MANY: "how many?", "wie viele?";
    NTH: "{0} {1} of {2}", "{0} {1} von {2}";
    TEMPO: "tempo {0}", "Tempo {0}";
    PAUSE: "pause {0} s", "{0} s halten";
    NO_BELT: "no belt", "ohne Gürtel";
    NO_STRAPS: "no straps", "ohne Zughilfen";
    BLOCK: "blocks {0} mm", "Blöcke {0} mm";
    BAR_OF: "{0} with the {1}", "{0}, Stange: {1}";
    HOW_HARD: "how hard was it? RPE {0} was asked; 10: nothing left", "wie schwer war es? Verlangt war RPE {0}; 10: nichts mehr drin";
}
