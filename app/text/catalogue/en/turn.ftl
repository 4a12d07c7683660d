## What the hands have to do.
each-side = each side
take-off-line = take off { $a }
put-on-line = put on { $a }
then = , then{" "}
look-first = look at the bar first
strip-for-pins = strip to { $a }, then pins to hole { $b }
strip-for-hooks = strip to { $a }, then hooks to hole { $b }
strip-for-the-hooks = strip to { $a }, then on to the hooks
strip-for-floor = strip to { $a }, then down to the floor
each-side-holds = each side must hold { $a }
must-hold = must hold { $a }
no-plates = no plates
left-right = left { $a }, right { $b }
left-right-lines =
    left { $a }
    right { $b }
weighs = { $a }, weighs { $b }
plates-elsewhere = { $a } is on the { $b }; take it from there
loaded = loaded
bar-holds = bar holds...

## What the bar holds, said by hand.
holds-question = What is on the { $a } now?
holds-empty = empty
holds-wanted = as it should be
holds-before = as before
holds-plates = or plate by plate, each side, from the inside
holds-none = no plates so far
holds-save = the bar holds this
holds-total = { $a } with the bar
take-last = take last off
the-word = what the bar holds

## Whose turn it is.
turn-pad = later, skip...
turn-question = { $a }: what now?
later = later
later-more = after the next lifter
skip-set = skip this set
skip-set-more = { $a }
longer = I need longer
longer-more = one minute more
leave = I am leaving
leave-more = the lift stays open
mine = my turn now
mine-more = before the others
i-am-back = I am back
back-more = count me in again
away = away
also-up = { $a }, { $b }: { $c } is up
passed-over = did not come at { $a }
passed-over-once = did not come
place-next = next
rests = rests { $a }
raise = raise the bar { $a } mm
not-raised = nothing under the plates
waiting-load = load the bar when it is your turn
x-longer = { $a } s is out of range; ask for 1 to { $b } s
x-nothing-said = nobody said what is on that bar; say what it holds
