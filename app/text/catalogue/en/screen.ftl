## Everywhere; the first ones are written by the window itself, in these words.
all-lifters = all lifters
switch-to = switch to { $lifter }
more = more
more-lifters = more lifters
set-up = set-up
other-reps = other reps
history = history
done = done
ready = ready
work = work
warm-up = warm-up
skipped = skipped
of = { $n } of { $all }
hole = hole { $hole }
from-the-floor = from the floor
from-the-hooks = from the hooks
hooks-hole = hooks in hole { $hole }
from-hooks-hole = from the hooks in hole { $hole }
from-hooks-any = from the hooks, at the height that suits you
estimated-measure = { $start }; estimated, measure
undo = undo
back = back
cannot-start = The kiosk cannot start
tried-again = It is tried again every few seconds.
belt = belt
straps = straps
from-load = { $gear } from { $load }
double-overhand = double overhand
hook-grip = hook grip
double-overhand-grip = double overhand grip
reps =
    { $n ->
        [one] 1 rep
       *[other] { $n } reps
    }
sets-of =
    { $n ->
        [one] 1 set of { $set }
       *[other] { $n } sets of { $set }
    }
no-mat = no mat
mats =
    { $n ->
        [one] 1 mat, { $mm } mm
       *[other] { $n } mats, { $mm } mm
    }
back-held = back held
back-moved = back moved
back-moved-at-rep = back moved at rep { $rep }

## Large, in lines that read well.
stopped-at-rep = back moved at rep { $rep }
back-moved-at = back moved at { $rep }
warm-up-of = warm-up { $n } of { $all }
work-set = work set
work-set-of = work set { $n } of { $all }

## Heights.
bar-height = bar { $mm } mm above your feet, { $how }
on-the-mark = on the mark
under-the-mark = { $mm } mm under the mark
over-the-mark = { $mm } mm over the mark
shares = shares { $length } with the { $lift }
leaves-gap = leaves a gap of { $length } to the { $lift }
mm-in = { $mm } mm ({ $inches } in)
collars = collars { $mass }

## Loading.
empty-bar = empty bar
leave-bar = leave the bar as it is
reps-done = { $n } done

## All lifters.
no-lifters = no lifters yet: write them into lifters.toml in the data folder
floor = floor
rest-left = rest { $time }
done-of = { $n } of { $all } done
nothing-today = nothing today
measure-first = measure first

## The end.
nothing-done = nothing done
next = next: { $what }
next-lifter = next lifter
not-done = not done
sets =
    { $n ->
        [one] 1 set
       *[other] { $n } sets
    }
reps-in-all =
    { $n ->
        [one] 1 rep in all
       *[other] { $n } reps in all
    }
minutes =
    { $n ->
        [one] 1 minute
       *[other] { $n } minutes
    }
own-record = your record on your phone: opens once, for ten minutes

## Pads.
how-many-reps = how many reps at { $load }?
which-rep = at which rep did the back move?
end-lift = end the lift
did-it = did it all the same
did-all = did all { $n } all the same

## The floor.
nobody-yet = nobody is lifting yet
up = up
next-up = next

## What undo takes back.
the-start = the start
the-end = the end
going-on = going on
the-skip = the skip

## Rest.
rest = rest
after = after { $set }
go-now = go now

## Set-up.
start = start
back-to-bar = back to the bar
not-planned = nothing is planned for today; ask the coach
not-a-lifter = { $lifter } is not in lifters.toml; ask the coach
height-unknown = on the pins, height not known

## The back moved.
set-of = { $set }, { $n } of { $all }
moved-advice = A moved back ends the climb. Pain means stop: see a clinician.
go-on = go on, coach agrees

## No sheet.
missing = no { $what } is called "{ $name }"; write it into the gym's files
nothing-until = nothing today; { $lift } on { $date }
goes-on-from = nothing today; { $programme } goes on from { $date }
no-training-max = no training max for this day; write it into lifters.toml, or the load as a mass
no-best = no best is recorded; write the load as a mass
no-ladder = { $why }; ask the coach for another load

## Landmarks.
tibial-tuberosity = tibial tuberosity
patella-top = top of the patella
mid-thigh = mid-thigh
lockout = lockout

## This panel.
panel = kiosk
panel-title = This kiosk
language = language
light = light
by-hour = by the hour
daylight = daylight
dim = dim
by-hour-detail = daylight from { $from } to { $to } o'clock
about = about Pinladder
about-value = version and licences
about-what = Pinladder { $version }: what the rack must show today, and a record of what was lifted.
about-terms = Free software under the GNU General Public License, version 3 only, without any warranty. The source and the whole text of the licence come with it.
about-parts = Drawn by Slint under the same licence; set in Roboto Condensed, whose licence lies beside the font. The other libraries are listed in Cargo.lock.
about-care = Heavy bars hurt people. Figures of steel are a guide, never a certificate. What your coach, your clinician and the rules of your place say comes first.
lan-opens = Open it with another machine of this network: { $address }
lan-or = { $first } or { $second }
lan-print = Before you trust its certificate, see that the browser shows the same SHA-256: { $print }
lan-root = So that a phone trusts it for good, load root.crt from there, and see that it has this SHA-256: { $print }
lan-readable = Without TLS anyone on this network can read the coach's code; turn TLS on at the coach's desk.

## History.
no-sessions = no work sets yet
a-best = best
moved-warm = in a warm-up
sets-done-of =
    { $all ->
        [one] { $n } of 1 set
       *[other] { $n } of { $all } sets
    }

## Next time.
next-time = next: { $due }
n-up = { $load }, up { $by }
n-again = { $load } again
n-least = { $load } again, the least there is
n-down = { $load }, down { $by }
n-because = { $change }: { $why }
n-back = { $went }, on the way back
n-no-step = { $went }, but the next load that can be made is too far up
n-light = { $went }, on a day lighter than was due
n-try = { $went }, try { $n } of { $all }
n-too-much = { $went }, too early to try { $load } again
n-stuck = { $went }, stuck again without a new best; ask the coach
x-not-hurt = { $lifter } is not entered as hurt; nothing to lift
x-ill-backwards = { $to } is before { $from }, on which it began; write from, then to
no-hurt = hurt: nothing is due until the coach rules; stop and see a clinician
no-untried = { $load } looks wrong: nothing is recorded that supports it; ask the coach
no-many-reps = { $n } reps of work at { $load } look wrong; ask the coach
no-looks-wrong = { $load } looks wrong: the record supports { $supported }; ask the coach
due-then-plan = due { $due }, plan { $plan }
plan-then-due = plan { $plan }, due { $due }
n-hard = { $went }, harder than asked
n-range = { $went }, not yet the top of the range in every set
n-waiting = { $went }; the coach decides
n-away =
    { $days ->
        [one] 1 day away beyond the plan
       *[other] { $days } days away beyond the plan
    }
n-anew =
    { $days ->
        [one] 1 day away beyond the plan; begin anew with the coach
       *[other] { $days } days away beyond the plan; begin anew with the coach
    }
n-ill =
    { $days ->
        [one] ill, 1 day counted as a break
       *[other] ill, { $days } days counted as a break
    }
n-family = the back moved in another pull since
n-over = one pull after the other went wrong; ask the coach
n-long-ago = long ago, while other pulls went on
n-week = a week's rise is used up
n-hurt = hurt: nothing until the coach rules; stop and see a clinician
n-nothing = nothing due: { $why }
n-coach = set by the coach
n-coach-said = { $load }, set by the coach: { $note }
v-raise = raise
v-repeat = repeat
v-drop = drop
v-reset = reset
v-ease = ease
o-well = all reps, back held
o-moved = back moved at rep { $rep }{ $where }
o-moved-warm = back moved in a warm-up
o-cut =
    { $all ->
        [one] { $n } of 1 set, back held
       *[other] { $n } of { $all } sets, back held
    }
next-session = next

## Choosing the load on the day. The caution: common practice, no source.
other-load = other load
the-choice = the choice
the-plan = the plan
the-due = due
too-early = too early
over-due = more than is due
work-set-reps = work set, { $reps }
work-sets-of =
    { $n ->
        [one] 1 work set of { $reps }
       *[other] { $n } work sets of { $reps }
    }
settle-caution = more only if the back held in every warm-up; the coach decides
keep-load = go with { $load }
first-time = the first time
last-time = last time { $load }, { $went }, on { $date }
as-last-time = as last time
more-than-last = { $by } more than last time
less-than-last = { $by } less than last time
n-well = all reps with the back held
n-short =
    { $all ->
        [one] { $n } of 1 rep{ $where }
       *[other] { $n } of { $all } reps{ $where }
    }
n-moved = the back moved at rep { $rep }{ $where }
n-moved-warm = the back moved in a warm-up
n-cut =
    { $all ->
        [one] { $n } of 1 set, back held
       *[other] { $n } of { $all } sets, back held
    }
n-in-set = {" "}in set { $set }

## What a warning says.
w-no-hole = no hole of { $rack } puts the bar at { $mm } mm; use blocks, or another rack
w-straight-bar = a straight bar lies on the pins and may take a set; fetch the retired one
w-overlap = the overlap is under the coach's least of { $least } mm; set the pins lower
w-not-loadable = { $load } cannot be loaded here; the nearest is shown
w-too-rough = the { $landmark } is only estimated, give or take { $spread } mm, too rough for holes { $spacing } mm apart; let the coach measure it, then set the pins
w-at = at { $load }
w-from-to = from { $from } to { $to }
w-low-plates = { $loads } small plates leave the bar { $raise } too low; raise it by that much
w-estimated = the { $landmark } is estimated from stature, give or take { $spread } mm; measure it
w-estimated-doubtful = the { $landmark } is estimated from stature, give or take { $spread } mm, so the next hole may be the right one; measure it
w-pins-rated = { $load } is over the { $rated } that the pins are rated for; take less
w-rack-rated = { $load } is over the { $rated } that the rack is rated for; take less
w-bar-rated = { $load } is over the { $rated } that the bar is rated for; take another bar
w-set-at-rest = by its maker's figures this load may bend the bar on the pins for good ({ $share } % of yield at rest); take another bar; a guide, never a certificate
w-set-dropped = by its maker's figures a drop of { $mm } mm on to the pins bends this bar for good; set it down; a guide, never a certificate
w-not-measured = the { $landmark } is not measured; let the coach measure it, then set the pins
