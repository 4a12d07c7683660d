## What the hands have to do.
each-side = each side
take-off-line = take off { $plates }
put-on-line = put on { $plates }
then = , then{" "}
look-first = look at the bar first
strip-for-pins = strip to { $load }, then pins to hole { $hole }
strip-for-hooks = strip to { $load }, then hooks to hole { $hole }
strip-for-the-hooks = strip to { $load }, then on to the hooks
strip-for-floor = strip to { $load }, then down to the floor
each-side-holds = each side must hold { $plates }
must-hold = must hold { $plates }
no-plates = no plates
left-right = left { $left }, right { $right }
left-right-lines =
    left { $left }
    right { $right }
weighs = { $plate }, weighs { $mass }
plates-elsewhere = { $plates } is on the { $bar }; take it from there
loaded = loaded
bar-holds = bar holds...

## What the bar holds, said by hand.
holds-question = What is on the { $bar } now?
holds-empty = empty
holds-wanted = as it should be
holds-before = as before
holds-plates = or plate by plate, each side, from the inside
holds-none = no plates so far
holds-save = the bar holds this
holds-total = { $load } with the bar
take-last = take last off
the-word = what the bar holds

## Whose turn it is.
turn-pad = later, skip...
turn-question = { $lifter }: what now?
later = later
later-more = after the next lifter
skip-set = skip this set
skip-set-more = { $set }
longer = I need longer
longer-more = one minute more
leave = I am leaving
leave-more = the lift stays open
mine = my turn now
mine-more = before the others
i-am-back = I am back
back-more = count me in again
away = away
also-up = { $bar }, { $rack }: { $lifter } is up
passed-over = did not come at { $clock }
passed-over-once = did not come
place-next = next
rests = rests { $time }
raise = raise the bar { $mm } mm
not-raised = nothing under the plates
waiting-load = load the bar when it is your turn
x-longer = { $n } s is out of range; ask for 1 to { $most } s
x-nothing-said = nobody said what is on that bar; say what it holds
