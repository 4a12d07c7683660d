## What stands behind the end of a lift.
why = why
advice = advice
next-time-title = next time
single-title = estimated single
split-title = time to split?
back-title = the way back
advice-waits = there is advice on the { $lift }; see why

## What is due, without the load.
up-by = up { $by }: { $why }
again = again: { $why }
least-again = again, the least there is: { $why }
down-by = down { $by }: { $why }
coach-ruled = set by the coach: { $note }
due-of = { $lift }, { $work }: { $due }
due-last = { $due }; last on { $date }

## Sets by their reps, and a day of the year.
fives = fives
sets-of-reps = sets of { $reps }
joined = { $first } and the { $second }

## When to split. Common practice, no source.
s-too-few = too few sets of { $reps } of the { $lift } to see a trend
s-none-well = no { $lift } of { $reps } went well lately
s-light = { $lift } { $reps } at { $load }, under the { $heavy } from which a split is thought of
s-rising = { $lift } { $reps } at { $load } still rise; go on
s-test-near = { $slow }, but the test on { $date } is near; stay with the { $lift }
s-split = { $slow }; think of the { $partials } in its place, the coach decides
s-stay = on the { $partials }; stay there
s-stay-until = on the { $partials }; back to the { $lift } from { $from } before the test on { $test }
s-back = the test is on { $test }; take up the { $lift } again, the coach decides
s-slow = { $lift } { $reps } at { $load } { $rate } a time where { $step } are due, { $bad } of { $all } short or with a moved back
s-rise = rise by { $by }
s-fall = fall by { $by }
s-no-record = no { $lift } in the record yet
s-back-day = { $date }: { $lift } { $load }
s-back-share = { $date }: { $lift } { $share } % of the best × { $reps }
s-back-row = back
key = filled: all reps, back held; ring: reps missed; cross: back moved; line: least squares
heavy-from = heavy from { $load }

## Estimates of the single.
from-to = { $from } to { $to }
single-from = by six published equations, from { $set }; they were fitted to other people
single-head = single from { $load } × { $reps }: { $from } to { $to }, by the equation
single-line = { $from } to { $to }, by the equation

## What is due, as a text.
d-for = { $lifter }, for { $date }
d-nothing = nothing lifted yet, so nothing is due
d-due = due
d-rules = rules
d-rule = rule
d-single = single
d-sets =
    { $n ->
        [one] 1 set of { $reps }
       *[other] { $n } sets of { $reps }
    }
d-tries =
    { $n ->
        [one] 1 try
       *[other] { $n } tries
    }
d-drops =
    { $n ->
        [one] 1 drop
       *[other] { $n } drops
    }
d-figures =
    { $days ->
        [one] add { $step }; { $tries }, where the back moved { $moved }, then less { $drop }; { $drops }, then less { $reset }; over 1 day away less { $away }
       *[other] add { $step }; { $tries }, where the back moved { $moved }, then less { $drop }; { $drops }, then less { $reset }; over { $days } days away less { $away }
    }

## Measuring. Common practice, no source.
m-intro = in the shoes that they lift in, standing tall, weight on both feet; a tape straight up from the floor; measure twice and write the middle
m-tuberosity = the hard bump on the front of the shin, below the kneecap: floor to its middle
m-patella = knee straight, thigh loose: floor to the upper edge of the kneecap
m-mid-thigh = half-way from the top of the kneecap to the crease of the hip: floor to there
m-lockout = standing tall with an empty bar in hanging hands: floor to the middle of the bar
m-mm = { $mm } mm
m-estimate = { $mm } mm by estimate, give or take { $spread } mm
m-not-measured = not measured
m-write = measure it, and write it into lifters.toml under landmarks
m-above-floor = { $height } above the floor

## A meet or a test day.
t-caution = a guide: watch the platform, and ask the referee what may be changed
t-head = { $lifter }, opener { $load } in { $in }: attempt { $attempt } of the flight, { $over } over, { $each } s an attempt
t-now = now
t-in = in { $time }
t-each-side = each side { $plates }
t-after = after attempt { $attempt }
t-meet-day = meet day
t-in-word = in
t-nothing-comes = no warm-up left
t-sooner = a minute earlier
t-later = a minute later
t-begin = flight begins
t-attempt-over = attempt over
t-next-flight = next flight
t-not-begun = { $flight }: not begun
t-over = { $flight }: { $over } of { $all } attempts over, { $each } s each
t-opener = { $load }, opener
t-tap = tap a warm-up once it is taken; { $caution }
t-after-about = after about attempt { $attempt }
t-reckoned = the place is reckoned: of the others the number alone is known
t-round = { $flight }, round { $round }
t-good = good lift
t-no-lift = no lift
t-was-good = good
t-passed = passed
t-second = { $load }, second
t-third = { $load }, third
t-undeclared = not declared: tap here
t-without = { $lifter } has no good lift
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
t-same-lot = { $lifter } has the same: ask the table
t-passes = passes this attempt
t-leaves = leaves the flight
t-type-lot = 1 to 999, as drawn, then save
t-type-load = as told at the table, then save
t-changes-left = declared; changes left: { $n }
t-declare-in = declare within { $time }; else it is { $load }
t-by-itself = the minute is over: at the table it is { $load }, unless you declared
t-card-over = no attempt to come
t-loaded = the bar is loaded: no change any more
t-below = the bar does not go down: { $load } or more
t-late = openers stand from { $time } before the flight; ask the referee
t-no-change = changes that the table takes: { $n }; ask the referee
t-of-best = { $share } % of the best, { $best }
t-new-best = { $by } over the best
t-no-best = no best on record
t-place = attempt { $n } from now
t-place-about = about attempt { $n } from now
t-left-out = left out
t-no-time = { $load }: no time for it
partial = on a partial pull these rank a lifter against themselves and predict nothing else
t-opener-over = the opener is over what the record supports, { $best }; it is what they make on a bad day: ask the coach
t-head-at = { $lifter }, opener { $load } about { $at }: attempt { $attempt } of the flight, { $each } s an attempt
