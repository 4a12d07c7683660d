## Everywhere; the first ones are written by the window itself, in these words.
all-lifters = all lifters
switch-to = switch to { $a }
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
of = { $a } of { $b }
hole = hole { $a }
from-the-floor = from the floor
from-the-hooks = from the hooks
hooks-hole = hooks in hole { $a }
from-hooks-hole = from the hooks in hole { $a }
from-hooks-any = from the hooks, at the height that suits you
estimated-measure = { $a }; estimated, measure
undo = undo
back = back
cannot-start = The kiosk cannot start
tried-again = It is tried again every few seconds.
belt = belt
straps = straps
from-load = { $a } from { $b }
double-overhand = double overhand
hook-grip = hook grip
double-overhand-grip = double overhand grip
reps =
    { $a ->
        [one] 1 rep
       *[other] { $a } reps
    }
sets-of = { $a } sets of { $b }
no-mat = no mat
mats =
    { $a ->
        [one] 1 mat, { $b } mm
       *[other] { $a } mats, { $b } mm
    }
back-held = back held
back-moved = back moved
back-moved-at-rep = back moved at rep { $a }

## Large, in lines that read well.
stopped-at-rep = back moved at rep { $a }
back-moved-at = back moved at { $a }
warm-up-of = warm-up { $a } of { $b }
work-set = work set
work-set-of = work set { $a } of { $b }

## Heights.
bar-height = bar { $a } mm above your feet, { $b }
on-the-mark = on the mark
under-the-mark = { $a } mm under the mark
over-the-mark = { $a } mm over the mark
shares = shares { $a } with the { $b }
leaves-gap = leaves a gap of { $a } to the { $b }
mm-in = { $a } mm ({ $b } in)
collars = collars { $a }

## Loading.
empty-bar = empty bar
leave-bar = leave the bar as it is
reps-done = { $a } done

## All lifters.
no-lifters = no lifters yet: write them into lifters.toml in the data folder
floor = floor
rest-left = rest { $a }
done-of = { $a } of { $b } done
nothing-today = nothing today
measure-first = measure first

## The end.
nothing-done = nothing done
next = next: { $a }
next-lifter = next lifter
not-done = not done
sets =
    { $a ->
        [one] 1 set
       *[other] { $a } sets
    }
reps-in-all = { $a } reps in all
minutes =
    { $a ->
        [one] 1 minute
       *[other] { $a } minutes
    }
own-record = your record on your phone: opens once, for ten minutes

## Pads.
how-many-reps = how many reps at { $a }?
which-rep = at which rep did the back move?
end-lift = end the lift
did-it = did it all the same
did-all = did all { $a } all the same

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
after = after { $a }
go-now = go now

## Set-up.
start = start
back-to-bar = back to the bar
not-planned = nothing is planned for today; ask the coach
not-a-lifter = { $a } is not in lifters.toml; ask the coach
height-unknown = on the pins, height not known

## The back moved.
set-of = { $a }, { $b } of { $c }
moved-advice = A moved back ends the climb. Pain means stop: see a clinician.
go-on = go on, coach agrees

## No sheet.
missing = no { $a } is called "{ $b }"; write it into the gym's files
nothing-until = nothing today; { $a } on { $b }
goes-on-from = nothing today; { $a } goes on from { $b }
no-training-max = no training max for this day; write it into lifters.toml, or the load as a mass
no-best = no best is recorded; write the load as a mass
no-ladder = { $a }; ask the coach for another load

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
by-hour-detail = daylight from { $a } to { $b } o'clock
about = about Pinladder
about-value = its licences
about-what = Pinladder { $a }: what the rack must show today, and a record of what was lifted.
about-terms = Free software under the GNU General Public License, version 3 only, without any warranty. The source and the whole text of the licence come with it.
about-parts = Drawn by Slint under the same licence; set in Roboto Condensed, whose licence lies beside the font. The other libraries are listed in Cargo.lock.
about-care = Heavy bars hurt people. Figures of steel are a guide, never a certificate. What your coach, your clinician and the rules of your place say comes first.
lan-opens = Open it with another machine of this network: { $a }
lan-or = { $a } or { $b }
lan-print = Before you trust its certificate, see that the browser shows the same SHA-256: { $a }
lan-root = So that a phone trusts it for good, load root.crt from there, and see that it has this SHA-256: { $a }
lan-readable = Without TLS whoever is in this network can read the coach's code; the desk turns it on.

## History.
no-sessions = no work sets yet
moved-warm = in a warm-up
sets-done-of = { $a } of { $b } sets

## Next time.
next-time = next: { $a }
n-up = { $a }, up { $b }
n-again = { $a } again
n-least = { $a } again, the least there is
n-down = { $a }, down { $b }
n-because = { $a }: { $b }
n-back = { $a }, on the way back
n-no-step = { $a }, but the next load that can be made is too far up
n-light = { $a }, on a day lighter than was due
n-try = { $a }, try { $b } of { $c }
n-too-much = { $a }, too early to try { $b } again
n-stuck = { $a }, stuck again without a new best; ask the coach
x-not-hurt = { $a } is not entered as hurt; nothing to lift
x-ill-backwards = { $a } is before { $b }, on which it began; write from, then to
no-hurt = hurt: nothing is due until the coach rules; stop and see a clinician
no-untried = { $a } looks wrong: nothing is recorded that supports it; ask the coach
no-many-reps = { $a } reps of work at { $b } look wrong; ask the coach
no-looks-wrong = { $a } looks wrong: the record supports { $b }; ask the coach
due-then-plan = due { $a }, plan { $b }
plan-then-due = plan { $a }, due { $b }
n-hard = { $a }, harder than asked
n-range = { $a }, not yet the top of the range in every set
n-waiting = { $a }; waits for the coach's word
n-away = { $a } days away beyond the plan
n-anew = { $a } days away beyond the plan; begin anew with the coach
n-ill = ill, { $a } days counted as a break
n-family = the back moved in another pull since
n-over = one pull after the other went wrong; ask the coach
n-long-ago = long ago, while other pulls went on
n-week = a week's rise is used up
n-hurt = hurt: nothing until the coach rules; stop and see a clinician
n-nothing = nothing due: { $a }
n-coach = the coach ruled so
n-coach-said = { $a }, the coach ruled: { $b }
v-raise = raise
v-repeat = repeat
v-drop = drop
v-reset = reset
v-ease = ease
o-well = all reps, back held
o-moved = back moved at rep { $a }{ $b }
o-moved-warm = back moved in a warm-up
o-cut = { $a } of { $b } sets, back held
next-session = next

## Choosing the load on the day. The caution: common practice, no source.
other-load = other load
the-choice = the choice
the-plan = the plan
the-due = due
too-early = too early
over-due = more than is due
work-set-reps = work set, { $a }
work-sets-of = { $a } work sets of { $b }
settle-caution = more only if the back held in every warm-up; the coach decides
keep-load = keep { $a }
first-time = the first time
last-time = last time { $a }, { $b }, on { $c }
as-last-time = as last time
more-than-last = { $a } more than last time
less-than-last = { $a } less than last time
n-well = all reps with the back held
n-short = { $a } of { $b } reps{ $c }
n-moved = the back moved at rep { $a }{ $b }
n-moved-warm = the back moved in a warm-up
n-cut = { $a } of { $b } sets done, and those well
n-in-set = {" "}in set { $a }

## Days.

## What a warning says.
w-no-hole = no hole of { $a } puts the bar at { $b } mm; use blocks, or another rack
w-straight-bar = a straight bar lies on the pins and may take a set; fetch the retired one
w-overlap = the overlap is under the coach's least of { $a } mm; set the pins lower
w-not-loadable = { $a } cannot be loaded here; the nearest is shown
w-too-rough = the { $a } is only estimated, give or take { $b } mm, too rough for holes { $c } mm apart; let the coach measure it, then set the pins
w-at = at { $a }
w-from-to = from { $a } to { $b }
w-low-plates = { $a } small plates leave the bar { $b } too low; raise it by that much
w-estimated = the { $a } is estimated from stature, give or take { $b } mm; measure it
w-estimated-doubtful = the { $a } is estimated from stature, give or take { $b } mm, so the next hole may be the right one; measure it
w-pins-rated = { $a } is over the { $b } that the pins are rated for; take less
w-rack-rated = { $a } is over the { $b } that the rack is rated for; take less
w-bar-rated = { $a } is over the { $b } that the bar is rated for; take another bar
w-set-at-rest = by its maker's figures this load may bend the bar on the pins for good ({ $a } % of yield at rest); take another bar; a guide, never a certificate
w-set-dropped = by its maker's figures a drop of { $a } mm on to the pins bends this bar for good; set it down; a guide, never a certificate
w-not-measured = the { $a } is not measured; let the coach measure it, then set the pins
