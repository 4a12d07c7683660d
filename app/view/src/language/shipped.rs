//! The words of what ships in another language: lifts, cues, cautions, kinds of equipment.
//!
//! Refuses: words that people wrote into their files; those are theirs.

/// English as in `domain`, German as on the screen.
pub(crate) const WORDS: &[(&str, &str)] = &[
    // Lifts.
    ("rack pull", "Rack Pull"),
    ("halting deadlift", "Kreuzheben bis Knie"),
    ("barbell shrug", "Schulterheben"),
    ("deadlift", "Kreuzheben"),
    ("power clean", "Standumsetzen"),
    ("power snatch", "Standreißen"),
    // Cues.
    (
        "back set before the bar moves",
        "Rücken fest, bevor sich die Stange hebt",
    ),
    ("bar against the leg", "Stange am Bein"),
    ("shoulders in front of the bar", "Schultern vor der Stange"),
    ("shins near vertical", "Schienbeine fast senkrecht"),
    ("push the floor away", "Boden wegdrücken"),
    (
        "stop at the top of the patella",
        "oben an der Kniescheibe anhalten",
    ),
    ("stand tall first", "erst ganz aufrichten"),
    ("shoulders to the ears", "Schultern zu den Ohren"),
    ("arms straight", "Arme gestreckt"),
    (
        "slow off the floor, fast past the knee",
        "langsam vom Boden, schnell ab dem Knie",
    ),
    ("bar close", "Stange nah am Körper"),
    ("elbows through", "Ellbogen durch"),
    ("wide hook grip", "breiter Klemmgriff"),
    // Cautions.
    (
        "back moved: the set is over",
        "Rücken gibt nach: Satz ist vorbei",
    ),
    (
        "pain: stop, and see a coach or a clinician",
        "Schmerz: aufhören, zu Coach oder Arzt",
    ),
    (
        "collars on, same load on both sides",
        "Verschlüsse zu, beide Seiten gleich schwer",
    ),
    // As sheets of an older journal have it.
    (
        "collars on, plates alike on both sides",
        "Verschlüsse zu, Seiten gleich",
    ),
    (
        "pins at the same hole on both sides, bar centred on them",
        "Bolzen beidseits gleich, Stange mittig",
    ),
    (
        "hands and feet clear of the pins",
        "Hände und Füße weg von den Bolzen",
    ),
    (
        "set the bar down; do not drop it on the pins",
        "Stange absetzen, nicht auf die Bolzen fallen lassen",
    ),
    (
        "nobody within reach of the bar",
        "niemand in Reichweite der Stange",
    ),
    (
        "missed: let go and step away from the bar",
        "misslungen: loslassen und weg von der Stange",
    ),
    // Kinds of things in the files.
    ("lift", "die Übung"),
    ("rack", "das Rack"),
    ("bar", "die Stange"),
    ("hole", "das Loch"),
    ("plate set", "der Scheibensatz"),
    ("warm-up pattern", "das Aufwärmmuster"),
];
