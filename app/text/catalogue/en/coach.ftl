## What stands behind the end of a lift.
why = why
advice = advice
next-time-title = next time
single-title = the single
split-title = when to split
back-title = the way back
advice-waits = there is advice on the { $a }; see why

## What is due, without the load.
up-by = up { $a }: { $b }
again = again: { $a }
least-again = again, the least there is: { $a }
down-by = down { $a }: { $b }
coach-ruled = the coach ruled: { $a }
due-of = { $a }, { $b }: { $c }
due-last = { $a }; last on { $b }

## Sets by their reps, and a day of the year.
fives = fives
sets-of-reps = sets of { $a }
joined = { $a } and the { $b }

## When to split. Common practice, no source.
s-too-few = too few sets of { $a } of the { $b } to see a trend
s-none-well = no { $a } of { $b } went well lately
s-light = { $a } { $b } at { $c }, under the { $d } from which a split is thought of
s-rising = { $a } { $b } at { $c } still rise; go on
s-test-near = { $a }, but the test on { $b } is near; stay with the { $c }
s-split = { $a }; think of the { $b } in its place, the coach decides
s-stay = on the { $a }; stay there
s-stay-until = on the { $a }; back to the { $b } from { $c } before the test on { $d }
s-back = the test is on { $a }; take up the { $b } again, the coach decides
s-slow = { $a } { $b } at { $c } { $d } a time where { $e } are due, { $f } of { $g } short or with a moved back
s-rise = rise by { $a }
s-fall = fall by { $a }
s-no-record = no { $a } in the record yet
s-back-day = { $a }: { $b } { $c }
s-back-share = { $a }: { $b } { $c } % of the best × { $d }
s-back-row = back
key = filled: all reps, back held; ring: reps missed; cross: back moved; line: least squares
heavy-from = heavy from { $a }

## Estimates of the single.
from-to = { $a } to { $b }
single-from = by six published equations, from { $a }; they were fitted to other people
single-head = single from { $a } × { $b }: { $c } to { $d }, by the equation
single-line = { $a } to { $b }, by the equation

## What is due, as a text.
d-for = { $a }, for { $b }
d-nothing = nothing done yet that something follows from
d-due = due
d-rules = rules
d-rule = rule
d-single = single
d-sets = { $a } sets of { $b }
d-tries =
    { $a ->
        [one] 1 try
       *[other] { $a } tries
    }
d-drops =
    { $a ->
        [one] 1 drop
       *[other] { $a } drops
    }
d-figures = add { $a }; { $b }, where the back moved { $c }, then less { $d }; { $e }, then less { $f }; over { $g } days away less { $h }

## Measuring. Common practice, no source.
m-intro = in the shoes that they lift in, standing tall, weight on both feet; a tape straight up from the floor; measure twice and write the middle
m-tuberosity = the hard bump on the front of the shin, below the kneecap: floor to its middle
m-patella = knee straight, thigh loose: floor to the upper edge of the kneecap
m-mid-thigh = half-way from the top of the kneecap to the crease of the hip: floor to there
m-lockout = standing tall with an empty bar in hanging hands: floor to the middle of the bar
m-mm = { $a } mm
m-estimate = { $a } mm by estimate, give or take { $b } mm
m-not-measured = not measured
m-write = measure it, and write it into lifters.toml under landmarks
m-above-floor = { $a } above the floor

## A meet or a test day.
t-caution = a guide: watch the platform, and ask the referee what may be changed
t-head = { $a }, opener { $b } in { $c }: attempt { $d } of the flight, { $e } over, { $f } s an attempt
t-now = now
t-in = in { $a }
t-each-side = each side { $a }
t-after = after attempt { $a }
t-meet-day = meet day
t-in-word = in
t-nothing-comes = nothing comes any more
t-sooner = a minute earlier
t-later = a minute later
t-begin = flight begins
t-attempt-over = attempt over
t-next-flight = next flight
t-not-begun = { $a }: not begun
t-over = { $a }: { $b } of { $c } attempts over, { $d } s each
t-opener = { $a }, opener
t-tap = tap a warm-up once it is taken; { $a }
t-after-about = after about attempt { $a }
t-reckoned = the place is reckoned: of the others the number alone is known
t-round = { $a }, round { $b }
t-good = good lift
t-no-lift = no lift
t-was-good = good
t-passed = passed
t-second = { $a }, second
t-third = { $a }, third
t-undeclared = not declared: tap here
t-without = { $a } without a lift
t-cards = declarations
t-cards-value = weights and lots of ours
t-so-far = so far
t-the-opener = opener
t-the-second = second attempt
t-the-third = third attempt
t-another = another weight
t-another-first = somebody else lifted first
t-lot = lot
t-no-lot = none
t-same-lot = { $a } has the same: ask the table
t-passes = passes this attempt
t-leaves = leaves the flight
t-type-lot = 1 to 999, as drawn, then keep it
t-type-load = as told at the table, then keep it
t-changes-left = declared; changes left: { $a }
t-declare-in = declare within { $a }; else it is { $b }
t-by-itself = the minute is over: at the table it is { $a }, unless you declared
t-card-over = no attempt to come
t-loaded = the bar is loaded: no change any more
t-below = the bar does not go down: { $a } or more
t-late = openers stand from { $a } before the flight; ask the referee
t-no-change = changes that the table takes: { $a }; ask the referee
t-of-best = { $a } % of the best, { $b }
t-new-best = { $a } over the best
t-no-best = no best on record
t-place = attempt { $a } from now
t-place-about = about attempt { $a } from now
t-left-out = left out
t-no-time = { $a }: no time for it
partial = on a partial pull these rank a lifter against themselves and predict nothing else
