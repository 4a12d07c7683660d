//! Keys of what ships: lifts, cues, cautions, kinds of equipment.
use crate::phrase::rows;

rows! {
    // Lifts.
    "shipped-rack-pull";
    "shipped-halting-deadlift";
    "shipped-barbell-shrug";
    "shipped-deadlift";
    "shipped-power-clean";
    "shipped-power-snatch";
    // Cues.
    "shipped-back-set-before-the-bar";
    "shipped-bar-against-the-leg";
    "shipped-shoulders-in-front-of-the";
    "shipped-shins-near-vertical";
    "shipped-push-the-floor-away";
    "shipped-stop-at-the-top-of";
    "shipped-stand-tall-first";
    "shipped-shoulders-to-the-ears";
    "shipped-arms-straight";
    "shipped-slow-off-the-floor-fast";
    "shipped-bar-close";
    "shipped-elbows-through";
    "shipped-wide-hook-grip";
    // Cautions.
    "shipped-back-moved-the-set-is";
    "shipped-pain-stop-and-see-a";
    "shipped-collars-on-same-load-on";
    // As sheets of an older journal have it.
    "shipped-collars-on-plates-alike-on";
    "shipped-pins-at-the-same-hole";
    "shipped-hands-and-feet-clear-of";
    "shipped-set-the-bar-down-do";
    "shipped-nobody-within-reach-of-the";
    "shipped-missed-let-go-and-step";
    // Kinds of things in the files.
    "shipped-lift";
    "shipped-rack";
    "shipped-bar";
    "shipped-hole";
    "shipped-plate-set";
    "shipped-warm-up-pattern";
}
