## Tables, as they stand in a sentence that begins with them.
checked-the-gym-s-file = the gym's file
checked-the-lifters-file = the lifters' file
checked-the-coach-s-file = the coach's file
checked-the-meet-s-file = the meet's file
checked-the-kiosk-s-file = the kiosk's file
checked-a-rack = a rack
checked-a-calibration = a calibration
checked-a-bar = a bar
checked-a-plate-set = a plate set
checked-a-weighed-plate = a weighed plate
checked-a-plate = a plate
checked-a-lift = a lift
checked-a-pattern = a pattern
checked-a-step = a step
checked-a-place-in-the-queue = a place in the queue
checked-a-day = a day
checked-a-task = a task
checked-a-lift-to-do = a lift to do
checked-a-rule = a rule
checked-a-split = a split
checked-a-flight = a flight
checked-a-lifter-of-a-flight = a lifter of a flight
checked-a-lifter = a lifter
checked-a-set-of-landmarks = a set of landmarks

## Things by name.
checked-plate-set = plate set
checked-rack = rack
checked-bar = bar
checked-warm-up-pattern = warm-up pattern
checked-lift = lift
checked-lifter = lifter
checked-programme = programme
checked-day = day
checked-add-at-least-one-as = add at least one, as [[{ $a }]]
checked-no = no { $a }
checked-give-each-a-name-of = give each { $a } a name of its own
checked-a-name-that-row-has = a name that row { $a } has already
checked-no-of-that-name = no { $a } of that name
checked-write-the-name-of-a = write the name of a { $a } of the gym

## TOML.
checked-split-it-or-shorten-it = split it or shorten it
checked-a-character-that-is-not = a character that is not UTF-8 text
checked-save-the-file-as-utf = save the file as UTF-8
checked-see-that-keys-quotes-and = see that keys, quotes and brackets are whole
checked-write-there = write { $a } there
checked-broken-toml = broken TOML: { $a }
checked-a-key-that-does-not = a key that { $a } does not have
checked-write-as = write { $a } as { $b }
checked-without = { $a } without { $b }
checked-a-whole-number = a whole number
checked-true-or-false = true or false
checked-a-list = a list
checked-a-table = a table
checked-a-text-in-quotes = a text in quotes
checked-not = not { $a }
checked-a-text = a text, { $a }
checked-a-list-of = a list, { $a }
checked-a-table-of = a table, { $a }
checked-entries-under-more-than-the = { $a } entries under { $b }, more than the most, { $c }
checked-leave-some-out = leave some out
checked-leave-it-out = leave it out
checked-leave-one-of-them-out = leave one of them out
checked-add = add { $a }
checked-write-key-as-value = write { $a } = { $b }

## Quantities.
checked-a-mass = a mass
checked-a-length = a length
checked-a-stress = a stress
checked-write-such-as = write { $a } such as { $b }
checked-without-a-unit = { $a } without a unit
checked-in-a-unit-not-known = { $a } in a unit not known here
checked-that-cannot-be-kept-exactly = { $a } that cannot be kept exactly
checked-write-fewer-decimals-or-a = write fewer decimals, or a fraction in halves down to 64ths
checked-larger-than-anything-in-a = { $a } larger than anything in a gym
checked-less-than-the-least = less than the least, { $a }
checked-more-than-the-most = more than the most, { $a }
checked-write-from-to = write from { $a } to { $b }
checked-write-lb-or-kg = write "{ $a } lb" or "{ $b } kg"
checked-write-mm-or-in = write "{ $a } mm" or "{ $b } in"
checked-write-mpa-gpa-or-psi = write "{ $a } MPa", "{ $b } GPa" or "{ $c } psi"
checked-write-a-whole-number-from = write a whole number from { $a } to { $b }
checked-not-a-whole-number = not a whole number
checked-write-seconds-as-180-or = write seconds as "180" or "180 s", or minutes as "3 min" or "3:00"
checked-write-min-or-seconds-from = write "{ $a } min", or seconds from 15 on
checked-a-rest-of-s = a rest of { $a } s
checked-not-whole-seconds = not whole seconds
checked-write-a-percentage-such-as = write a percentage such as "80 %"
checked-a-share-without = a share without %
checked-a-percentage-with-more-than = a percentage with more than two decimals
checked-not-a-percentage = not a percentage
checked-a-percentage-far-too-large = a percentage far too large

## Racks, bars, plates.
checked-add-a-straight-bar-for = add a straight bar for lifts from the floor at { $a }
checked-no-bar-that-serves-the = no bar that serves the rack { $a }
checked-no-straight-bar-that-serves = no straight bar that serves the rack { $a }
checked-a-hole-of-less-than = a hole of { $a }, less than its pin of { $b }
checked-measure-both-again-a-hole = measure both again; a hole is at least as wide as its pin
checked-across-not-less-than-the = { $a } across, not less than the spacing of { $b }
checked-write-the-spacing-from-centre = write the spacing from centre to centre
checked-a-bar-height-of-with = a bar height of { $a } with the pins in hole { $b }, whose centre is at { $c }
checked-measure-again-floor-to-the = measure again, floor to the centre of the bar
checked-write-one-line-for-each = write one line for each kind of plate
checked-no-plate-that-can-be = no plate that can be used
checked-the-plate-a-second-time = the { $a } plate a second time
checked-write-it-once-with-all = write it once, with all its pairs
checked-the-mark-a-second-time = the mark "{ $a }" a second time
checked-give-every-plate-its-own = give every plate its own mark
checked-a-label-of-that-the = a label of { $a } that the set does not have
checked-write-the-mass-of-one = write the mass of one of its plates
checked-for-a-plate-of = { $a } for a plate of { $b }
checked-weigh-it-again-or-keep = weigh it again, or keep it off the bar
checked-more-than-plates-of = more than { $a } plates of { $b }
checked-write-the-sixteen-that-are = write the sixteen that are used

## Lifts and lifters.
checked-write-the-other-lift-of = write the other lift of the two, or leave it out
checked-the-lift-itself-as-its = the lift itself as its partner
checked-for-a-lift-from-hooks = "{ $a }" for a lift from hooks, which is no pull
checked-write-start-floor-start-pins = write start = "floor", start = "pins" or start = "hooks"
checked-a-new-lift-without-start = a new lift without "start"
checked-for-a-lift-from = "{ $a }" for a lift from { $b }
checked-leave-it-out-or-write = leave it out, or write start = "pins"
checked-write-landmark-tibial-tuberosity-or = write landmark = "tibial tuberosity" or another
checked-a-lift-from-pins-without = a lift from pins without "landmark"
checked-write-rung-3-100-kg = write "rung 3", "100 kg", "225 lb" or "never"
checked-not-a-rung-from-1 = not a rung from 1 to 20
checked-neither-a-rung-nor-a = neither a rung, nor a load, nor never
checked-a-at-not-above-the = a { $a } at { $b }, not above the { $c } at { $d }
checked-measure-both-again-to-be = measure both again to be sure
checked-from-the-tibial-tuberosity-to = { $a } from the tibial tuberosity to the top of the patella
checked-measure-both-again-to-be-sure = measure both again to be sure; 75 to 100 mm is usual
checked-write-hole-14 = write "hole 14"
checked-not-a-hole-from-1 = not a hole from 1 to 500
checked-a-second-hole-for = a second hole for { $a }
checked-a-training-max = a training max
checked-a-second-training-max-of = a second training max of { $a } from one day on
checked-keep-one-of-them-or = keep one of them, or write another "since"
checked-a-second-best-for = a second best for { $a }

## Patterns, programmes, rules.
checked-write-one-share-reps-for = write one {"{"} share, reps {"}"} for each warm-up
checked-no-step-that-can-be = no step that can be used
checked-after = { $a } % after { $b } %
checked-let-each-step-be-heavier = let each step be heavier than the one before
checked-add-programme-day-tables = add [[programme.day]] tables
checked-a-new-programme-without-day = a new programme without "day"
checked-add-programme-day-tables-or = add [[programme.day]] tables, or leave it out
checked-no-day = no day
checked-write-one-for-each-day = write one for each day of the programme, or for none
checked-a-day-without-weekday-among = a day without "weekday" among others with one
checked-for-a-second-day-of-the = { $a } for a second day of the programme
checked-give-each-day-its-own = give each day its own day of the week
checked-apart-days-beside-days-of = "apart_days" beside days of the week
checked-who-is-in-already = { $a }, who is in { $b } already
checked-name-each-lifter-once = name each lifter once
checked-write-at-least-one-lift = write at least one lift
checked-no-lift = no lift
checked-write-at-least-one = write at least one
checked-no-task = no task
checked-let-a-reset-take-off = let a reset take off at least as much as a drop
checked-a-reset-that-takes-off = a reset that takes off less than a drop

## Meets.
checked-write-one-flight-for-each = write one [[flight]] for each flight of yours
checked-no-flight-that-can-be = no flight that can be used
checked-s-for-less-than-the = { $a } s for "{ $b }", less than the { $c } s of "{ $d }_least"
checked-write-as-long-as-least = write "{ $a }" as long as "{ $b }_least", or longer
checked-write-one-flight-lifter-for = write one [[flight.lifter]] for each of yours
checked-a-flight-with-none-of = a flight with none of yours
checked-a-lifter-of-another-gym = a lifter of another gym
checked-with-before-with = { $a } with { $b } before { $c } with { $d }
checked-the-lighter-goes-first-then = the lighter goes first, then the lower lot: mend an opener, a lot or the order
checked-lot-for-which-is-the = lot { $a } for { $b }, which is the lot of { $c } too
checked-ask-the-table-until-then = ask the table; until then whoever came first goes first
checked-for-whose-best-is = { $a } for { $b }, whose best is { $c }
checked-an-opener-is-what-they = an opener is what they make on a bad day: ask the coach
checked-write-hours-and-minutes-as = write hours and minutes as "10:30"
checked-not-a-time-of-day = not a time of day
checked-a-second-time-in-this = { $a } a second time in this flight
checked-attempts-before-where-order-has = { $a } attempts before, where "order" has { $b }
checked-mend-the-order-or-leave = mend the order, or leave one of the two out
checked-without-a-place-in-the = { $a } without a place in the order
checked-write-before-24-or-the = write before = 24, or the name into the flight's "order"
checked-for-which-these-plates-do = { $a } for { $b }, which these plates do not make
checked-ask-for-what-they-make = ask for what they make, such as { $a }
checked-for = { $a } for { $b }: { $c }
checked-write-another-opener-or-other = write another opener, or other plates

## The kiosk.
checked-write-numbers-such-as-127 = write numbers such as "127.0.0.1" or "192.168.1.20"
checked-not-an-address-in-numbers = not an address in numbers
checked-an-address-of-all-interfaces = an address of all interfaces or of none
checked-write-the-address-of-the = write the address of the one interface that may see the page
checked-write-both-certificate-and-key = write both "certificate" and "key", or neither
checked-a-certificate-and-its-key = a certificate and its key, of which one is missing
checked-name-a-rack-or-leave = name a rack, or leave "racks" out to show all
checked-no-rack-to-show = no rack to show
checked-write-the-whole-path-such = write the whole path, such as "/media/pinladder"
checked-not-an-absolute-path = not an absolute path
checked-a-path-that-goes-back = a path that goes back on itself
checked-write-from-1-to-40 = write from 1 to 40 letters, digits and hyphens, such as "north-rack"
checked-not-a-name-for-a = not a name for a machine
checked-not-a-name-of-a = not a name of a host
checked-write-the-name-alone-such = write the name alone, such as "rack.gym.example"
checked-not-the-address-of-a-hub = not the address of a hub
checked-write-a-hub-such-as = write postgresql://KIOSK@HOST/DATABASE, such as "postgresql://north@192.168.1.5/pinladder"
checked-a-hub-with-a-password = the address of a hub with a password in it
checked-write-the-password-into = leave it out and write it into hub.password beside this file; these settings are kept in the journal
