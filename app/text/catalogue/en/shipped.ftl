## Lifts.
shipped-rack-pull = rack pull
shipped-halting-deadlift = halting deadlift
shipped-barbell-shrug = barbell shrug
shipped-deadlift = deadlift
shipped-power-clean = power clean
shipped-power-snatch = power snatch

## Cues.
shipped-back-set-before-the-bar = back set before the bar moves
shipped-bar-against-the-leg = bar against the leg
shipped-shoulders-in-front-of-the = shoulders in front of the bar
shipped-shins-near-vertical = shins near vertical
shipped-push-the-floor-away = push the floor away
shipped-stop-at-the-top-of = stop at the top of the patella
shipped-stand-tall-first = stand tall first
shipped-shoulders-to-the-ears = shoulders to the ears
shipped-arms-straight = arms straight
shipped-slow-off-the-floor-fast = slow off the floor, fast past the knee
shipped-bar-close = bar close
shipped-elbows-through = elbows through
shipped-wide-hook-grip = wide hook grip

## Cautions.
shipped-back-moved-the-set-is = back moved: the set is over
shipped-pain-stop-and-see-a = pain: stop, and see a coach or a clinician
shipped-collars-on-same-load-on = collars on, same load on both sides

## As sheets of an older journal have it.
shipped-collars-on-plates-alike-on = collars on, plates alike on both sides
shipped-pins-at-the-same-hole = pins at the same hole on both sides, bar centred on them
shipped-hands-and-feet-clear-of = hands and feet clear of the pins
shipped-set-the-bar-down-do = set the bar down; do not drop it on the pins
shipped-nobody-within-reach-of-the = nobody within reach of the bar
shipped-missed-let-go-and-step = missed: let go and step away from the bar

## Kinds of things in the files.
shipped-lift = lift
shipped-rack = rack
shipped-bar = bar
shipped-hole = hole
shipped-plate-set = plate set
shipped-warm-up-pattern = warm-up pattern
