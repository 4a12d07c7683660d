desk = coach's desk
behind-code = behind a code
four-digits = type the four digits
choose-code = choose four digits; they open the desk from now on
wrong-code = wrong digits; try again
code = code
new-code = new code
delete-last = delete
keep = save
type-value = type the number, then save
type-name = type the name, then save
not-read = that cannot be read; type it anew
plans = plans
plans-hint = from the folder "plans"; a plan replaces what stood for its lifters and days
no-plans = no plan lies in the folder "plans"
take-plan = take { $name }
plan-rows =
    { $n ->
        [one] 1 row, no fault
       *[other] { $n } rows, no fault
    }
plan-taken = the plan { $name } was taken
lifters = lifters
new-lifter = new lifter
first-lifter = the first lifter
add = add
measured-of = { $n } of { $all } landmarks measured
landmarks-hint = heights above the floor, in the shoes they lift in
not-yet-measured = not measured
unit = unit
rack = rack
racks = racks
new-rack = new rack
measure-hint = measure each figure; a tap types it anew
holes =
    { $n ->
        [one] 1 hole
       *[other] { $n } holes
    }
first-hole = floor to hole 1
spacing = hole to hole
hole-count = holes
pin-diameter = pin, across
hole-diameter = hole, across
mats-title = mats
bars = bars
new-bar = new bar
mass = mass
shaft = shaft, across
sleeve = sleeve, its collar on
collars-title = both collars
condition = condition
condition-hint = the retired one lies on the pins
straight = straight
retired = retired
plates = plates
kinds =
    { $n ->
        [one] 1 kind
       *[other] { $n } kinds
    }
pairs =
    { $n ->
        [one] 1 pair
       *[other] { $n } pairs
    }
programmes = programmes
programmes-hint = their days and lifts are written in programme.toml
days =
    { $n ->
        [one] 1 day
       *[other] { $n } days
    }
weeks =
    { $n ->
        [one] 1 week
       *[other] { $n } weeks
    }
sharing = page on the network
sharing-hint = what is changed here counts at once
interface = address
this-machine = this machine alone
whole-network = whoever is on that network
page-code = the page's code
page-code-set = set
page-code-missing = none
nobody-signs-in = without it nobody can sign in
six-digits = at least six digits, then save
page-name = also found as
fingerprint = the certificate's fingerprint
tls = TLS
tls-on-by-tap = whoever is in this network can read the coach's code; tap to turn it on
lan-by-itself = by itself, since other machines reach the page: its address begins with https
certificate = certificate
lan-stale = the former one is used: { $why }
lan-ends = its last day is { $date }; put a new one in its place
root-fingerprint = SHA-256 of the root
code-was-plain = the old digits can be read in the journal; choose new ones
wait-at-door = too many wrong; wait { $time }
on = on
off = off
checks = checks
checks-hint = of the gym's files as they lie in the folder
hardware = devices
all-well = no fault
faults = faults: { $n }
begin = a gym of your own
new-gym = start over
take-away = take away
hold-it = hold, do not tap
this-kind = this kind

## What still needs a thing.
need-under-way = { $lifter } is lifting with it; end that lift first
need-lifts-there = { $lifter } lifts there; give them another rack first
need-lifts-with = { $lifter } lifts with it; give them another bar first
need-only-rack = the only rack; add another first
need-only-bar = the only bar that serves { $rack }; add another first
need-only-kind = the only kind of its set; add another first
need-weighed = plates of it were weighed; take them out of gym.toml first

## The stick and the copies.
stick = stick
stick-hint = what it brings is taken whole, or not at all
stick-unset = no place for it is set
stick-key = write stick = "..." into kiosk.toml
stick-out = none is in
stick-plans = plans: { $names }
stick-take = take all of it
stick-record = record
stick-write = write to the stick
stick-writing = it is being written to; leave it in
stick-passed = passed over
stick-new = { $n } new
stick-changed = { $n } changed
stick-same = { $n } as before
stick-days = { $from } to { $to }
copies = copies
copies-hint = of the journal, at the second place; each is proven first
copies-unset = no second place is set
copies-key = write backup = "..." into kiosk.toml
copy-now = copy now
copying = it is being copied and proven
put-back = put back
proving = the copy is being proven; go on lifting
on-the-screen = on the screen
write-plan = write a plan
new-row = a lift
row-hint = tap what you want to change, then save
off-the-day = off this day
lift-title = lift
load-title = load, bar counted in
sets-title = work sets
reps-title = reps of each
ladder-title = ladder
ladder-own = the lifter's own
not-yet = not yet

## Next time, ruled by the coach.
next-times = next time
next-times-what = what is due
next-times-hint = what follows from the last time; tap one to change it
nothing-due = nothing was lifted yet, so nothing follows
ruling-hint = choose the load and say why; both stay in the record
why-title = why
note-more = it moved well: take more
note-less = the back is not sure yet: take less
note-tired = tired: take less this time
note-sore = sore or ill: take less this time
note-form = work on how it is done first
note-test = a test or a meet is near
note-stay = stay here once more

## Programmes and rules.
programme = programme
no-programme = none
programme-hint = a tap puts a lifter in, or takes them out
follows = follows it
follows-not = does not follow it
follows-hint = fills the days on which the plan is silent
next-day = comes next
apart-days = from one day to the next
rule = rule
rule-what = when to go up or down
rule-hint = for all lifts; common practice, no source, until the coach writes another figure
r-step = after all reps, back held: up by
r-tries = tries of a load
r-moved-tries = tries once the back moved
r-drop = then down by
r-drops = times down before a reset
r-reset = a reset takes off
r-away-days = days away that are no break
r-away = a break takes off

## Things of the gym.
own-bar = bar from the floor
any-bar = the rack's
stands-by = stands by
every-rack = every rack
mats-hint = to stand on where the holes are coarse
new-mat = new mat
new-kind = new kind
plate-hint = one plate: its mass, how many pairs, how thick, how wide
pairs-title = pairs
thickness = thickness
diameter = diameter

## Refusals, after X_; reasons why no ladder can be loaded, after L_.
x-empty-plan = the plan has no rows; write at least one
x-nothing-planned = the plan has nothing for that day; look again
x-empty-ladder = the sheet has no rungs; check the plan's load
x-under-way = { $lifter } is under way with the { $lift }; end it first
x-no-such-lift = no such lift is under way; choose the lifter again
x-not-the-rung = that set is already entered; look again
x-over = the lift is over; undo to enter more
x-decide-first = the back moved; end the lift or go on first
x-nothing-to-decide = the back did not move; enter the set
x-stale-rotation = the order of turns is out of date; plan it anew
x-not-the-time = the load is settled once, between the last warm-up and the first work set; undo to come back there
x-stale-decision = the lift goes on; decide when it is over
x-nothing-decided = nothing is due after that lift; write the load into the plan
x-load = { $load } is out of range; rule from more than nothing to 1000 kg
x-no-note = the note is missing; say why in a few words
x-note =
    { $n ->
        [one] the note has 1 character; use at most { $most }
       *[other] the note has { $n } characters; use at most { $most }
    }
x-reps = { $n } is out of range; reps go from 0 to { $most }, the moved rep from 1
fault-cell = { $file }, row { $row }, column { $column }
fault-row = { $file }, row { $row }
fault-found = it says { $read }; { $right }
and-more = { $first } (and { $n } more)
went-wrong = that did not work: { $why }
l-range = a figure is out of range
l-bar = the bar alone is heavier
l-inventory = there are too few plates for it
l-sleeve = the plates do not fit on the sleeve
l-big-inside = a big plate would lie outside
l-tolerance = no plates come to it

## The front page, the week, the digits twice.
repeat-code = the same four digits once more
codes-differ = the two were not the same; choose four digits again
saved = saved
no-file = no new file
files-wait =
    { $n ->
        [one] 1 file waits
       *[other] { $n } files wait
    }
week = the week
week-what = lifters by days
week-before = week before
week-after = week after
gym = the gym
gym-what = racks, bars, plates
begin-under-way = { $lifter } is lifting; end that lift first
begin-loses = hold: { $gym } goes, with its lifters ({ $lifters }), racks ({ $racks }) and bars ({ $bars }); the record stays
rest-title = rest
rest-own = as usual
demo-gym = { $gym } (demo)
demo-steps = a demo gym; your own: 1. coach's desk 2. the gym 3. hold "start over"
