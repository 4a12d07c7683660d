## Everywhere.
page-sessions = Sessions
page-plan = Plan
page-desk = Desk
page-floor = Floor
page-pages = Pages
page-sign-out = Sign out
page-coach = Coach
page-language = Language

## The front, signing in, a lifter's link.
page-floor-board = Floor board
page-own-by-code = A lifter's own record opens by the code that the kiosk shows at the end of a lift.
page-page-code = Code
page-sign-in = Sign in
page-your-record = Your record
page-once = This page opens once, and is yours on this phone until midnight.
page-show-record = Show my record
page-nobody = there is no lifter of that name on record; choose one from the list
page-gone = This link was opened already, or ten minutes have passed since the lift. The kiosk shows another at the end of your next lift.
page-trust = So that this phone trusts the page
page-trust-root = the kiosk's root certificate
page-trust-how = Load it, compare its SHA-256 with the one that the kiosk's own page shows, and only then let the phone trust it. It vouches for this gym's names alone.

## The coach's day.
page-today = Today
page-no-day-yet = The kiosk has not told its day yet; look again in a moment.
page-needs-you = Waits for you
page-nobody-waits = Nobody waits for your word.
page-see-record = See the record
page-trains-today = Trains today
page-nobody-trains = Nobody is planned for today.
page-due-and-why = Due, and why
page-on-the-floor = On the floor now
page-last-time = The last time
page-lift = Lift
page-work-sets =
    { $n ->
        [one] 1 work set, { $load }
       *[other] { $n } work sets, up to { $load }
    }
page-short-in =
    { $n ->
        [one] short in 1 set
       *[other] short in { $n } sets
    }
page-back-moved-at = back moved at rep { $rep }
page-back-moved = back moved
page-this-week = This week

## What the coach does on it.
page-own-load = Another load
page-no-reason = no reason given
page-rule-it = Rule
page-meant = It is meant
page-fit-again = Fit again
page-health = Hurt or ill
page-health-hint = What a lifter says; what it is, a clinician says. Who is hurt has nothing due until fit again. An illness is entered up to today; enter it again while it goes on.
page-choose = choose
page-from-day = From
page-to-day = To
page-was-ill = Ill from, to
page-enter = Enter
page-is-hurt = Hurt from
page-rule-others = Rule another load

## What came of it.
page-done-kept = done, and kept in the journal
page-not-done-why = nothing was changed: { $why }
page-already = it is so already; nothing was changed a second time
page-stale = the list has changed since this page was loaded: somebody ruled or lifted meanwhile, or another day has begun. Nothing was changed; look at the list as it is now
page-no-load = that is no load; write it as in 147.5, 147.5 kg or 325 lb. Nothing was changed
page-to-come = of a day to come nobody knows yet; write a day up to today. Nothing was changed
page-slip = that is more than a year ago; look at the year again. Nothing was changed
page-no-lifter = no lifter of this gym is called so; choose one from the list. Nothing was changed

## The coach's list.
page-due-and-waits = Due, and who waits for the coach
page-nothing-due = Nothing done yet that something follows from.
page-state = State
page-why = Why

## The board.
page-waiting = waiting for the kiosk

## Sets.
page-set = Set
page-load = Load
page-reps = Reps
page-back = Back
page-warm-up = warm-up
page-work = work
page-of = { $n } of { $all }
page-kept = kept
page-moved-at = moved at rep { $rep }
page-no-sets-before = No sets were recorded before that day.
page-no-sets = No sets have been recorded yet.
page-all-sets = All sets:
page-downloads = Downloads
page-database = Database
page-lifters = Lifters
page-further = Further
page-latest = Latest
page-older = Older

## A lifter's weeks.
page-nothing-of = Nothing is recorded of that name.
page-sets = Sets
page-latest-sets =
    { $all ->
        [one] The latest { $n } of 1 set.
       *[other] The latest { $n } of { $all } sets.
    }
page-loads-chart = Heaviest work load by week, { $unit }; a square: the back moved
page-reps-chart = Reps made by week; pale: planned
page-backs-chart = Work sets by week, pale; in front: the back moved
page-week-of = Week of
page-heaviest = Heaviest
page-moved-in = moved in { $n } of { $all }

## The plan and what was done.
page-plan-and-done = Plan and done
page-no-plan = No plan is kept.
page-no-plan-here = No plan is kept for these days.
page-day = Day
page-lifter = Lifter
page-planned = Planned
page-done = Done
page-at-load = { $sets } at { $load }
page-of-best = { $share } of the best
page-programme = by the programme
page-programme-of = by the programme: { $name }
page-done-sets =
    { $sets } of { $of_sets ->
        [one] 1 set
       *[other] { $of_sets } sets
    }, { $reps } of{" "}{ $of_reps ->
        [one] 1 rep
       *[other] { $of_reps } reps
    }
page-back-held = back held
page-back-moved-in = back moved in { $n }

## Plans from a browser.
page-hand-in = Hand in a plan
page-choose-plan = Choose a plan, or drop it here (CSV, XLSX, ODS; 4 MB at most)
page-read-it = Read it
page-not-yet-taken = Read, not yet taken
page-nothing-taken-yet = This is how the plan reads. Nothing is taken yet.
page-understood = As understood
page-first-rows = The first { $n } of { $all } rows; all of them are taken together.
page-take-plan = Take this plan
page-mend-it = Mend the file and choose it again; nothing of it is taken until it has no fault.
page-another-file = Another file
page-took-rows =
    { $n ->
        [one] took 1 row; it is kept in the journal
       *[other] took { $n } rows; they are kept in the journal
    }
page-plan-gone = that plan lies here no longer: it was taken, others came after it, or the kiosk began anew. Nothing was taken now; look at the plan, and choose the file again
page-plan-faults = refused: the plan has faults; nothing was taken. Mend the file and choose it again
page-gym-changed = the gym's files have changed since this plan was read; nothing was taken. Choose the file again
page-days-changed = somebody changed one of these days since this page was loaded; nothing was taken. Look at what would change now, and take it then
page-plan-busy = another plan is being read; try again in a moment
page-plan-long = the file is longer than 4 MB; split the plan
page-plan-slow = the file did not come within 60 s; try again nearer to the kiosk
page-file-kind = send the file as multipart/form-data
page-no-file = no file was chosen, or it is empty; choose a plan

## The coach's desk.
page-stick = Stick
page-no-stick = No stick is in, or kiosk.toml names no place for sticks.
page-no-plan-on-it = No plan is on it.
page-passed-over = Passed over { $what }
page-rows =
    { $n ->
        [one] 1 row
       *[other] { $n } rows
    }
page-faults =
    { $n ->
        [one] 1 fault
       *[other] { $n } faults
    }
page-what-changes = What changes
page-change = { $lifter }: { $span }, { $days }
page-span = { $from } to { $to }
page-new-days =
    { $n ->
        [one] 1 new day
       *[other] { $n } new days
    }
page-changed-days =
    { $n ->
        [one] 1 changed day
       *[other] { $n } changed days
    }
page-same-days =
    { $n ->
        [one] 1 day as before
       *[other] { $n } days as before
    }
page-take-all = Take all of it
page-write-to-it = Write the record to it
page-copies = Copies of the journal
page-copy-now = Copy now
page-copies-count =
    { $n ->
        [one] 1 copy
       *[other] { $n } copies
    }
page-copied-at-night =
    { $n ->
        [one] Last nightly copy: { $day }, 1 event.
       *[other] Last nightly copy: { $day }, { $n } events.
    }
page-not-at-night = No nightly copy on { $day }; it is tried again every quarter of an hour: { $why }
page-restore = Restore this copy
page-blank-plan = A blank plan
page-certificate = This page's certificate

## Answers of the desk.
page-no-orders = this kiosk takes no orders
page-not-yet = the kiosk has not answered yet; look again in a moment
page-took =
    { $n ->
        [one] took 1 row; the stick may be pulled
       *[other] took { $n } rows; the stick may be pulled
    }
page-not-taken = nothing was taken: { $why }
page-other-stick = another stick is in by now, or none; look again
page-stick-faults = refused: the stick has faults; nothing was taken
page-no-place-sticks = no place for sticks is set; write stick = "..." into kiosk.toml
page-written = the record is on the stick; it may be pulled
page-not-written = the record is not on the stick: { $why }
page-no-place = no second place is set; write backup = "..." into kiosk.toml
page-copied =
    { $n ->
        [one] copied and proven: 1 event
       *[other] copied and proven: { $n } events
    }
page-not-copied = no copy: { $why }
page-putting-back = a copy is being put back already; wait for it
page-copy-gone = that copy is gone; look again
page-restored =
    { $n ->
        [one] restored 1 event; the journal before is kept beside it
       *[other] restored { $n } events; the journal before is kept beside it
    }
page-not-restored = nothing was restored: { $why }

## Why somebody is not signed in.
page-no-code = no code is set; the owner sets one with: pinladder code
page-wrong = that is not the code; ask the owner for it
page-wait = too many wrong codes; try again in { $seconds } s
page-not-judged = the code cannot be judged now; the kiosk's log says why

## The week.
page-week = Week
page-week-from-to = Week, { $from } to { $to }
page-week-before = the week before
page-week-after = the week after
page-is-planned = planned
page-in-part = in part
page-is-done = done
page-not-lifted = not done
page-add-for = { $lifter }, { $day }: write a row
page-filled-here = The programme fills this day; a row of the plan goes before it.
page-begun-stays = It has been begun at the rack, and stays as it is.
page-day-is-over = This day is over: nothing is written into it any more.
page-leave-as-it-is = Leave it as it is
page-keep-row = Keep
page-row-of-file = this row says more than these cells can; change it in the plan's file
page-take-off = Take { $lift } off
page-what-moves = What moves
page-whole-day = the whole day
page-to-which-day = To which day
page-move-it = Move it
page-beside = also where something stands already; a plan goes before a programme
page-one-more = One row more
page-plan-stale = somebody changed this lifter's plan since this page was loaded. Nothing was changed now; look at the week as it is
page-is-begun = that lift has been begun at the rack on one of the two days; nothing was changed
page-is-over = that day is over, or lies outside these two weeks; choose one from today on. Nothing was changed
page-is-taken = something stands on that day already; tick the box if both are meant, or choose another day. Nothing was changed
page-lift-twice = the same lift would stand twice on that day; nothing was changed
page-row-grouped = that row has several set groups, a track or a bar of its own; change it in the plan's file. Nothing was changed
page-done-odd = done, and kept in the journal. Odd all the same: { $what }
page-no-from-day = from and day must be days such as 2026-03-31
page-no-such-change = do must be move, row, add or off, with its fields

## For programs.
page-query-day = since, from and to must be days such as 2026-03-31
page-query-twice = a part of the query stands there twice, or is no text
page-bad-token = that token opens nothing: it was taken back, its day is over, or it never was
page-token-reads = that token may read, and hand in nothing
page-near-only = this is told to this machine itself, or to a token that reads
page-plan-kind = send the plan's file itself, its name as name= ending in .csv, .tsv, .xlsx or .ods
page-not-up = the kiosk has not told its day yet, or its record cannot be read
page-tokens = Programs of the gym's
page-tokens-hint = A token lets a program read the record, or hand in plans, without the code. It is shown once; only its hash is kept.
page-no-tokens = No program has a token.
page-token-name = Name of the program
page-token-may = It may
page-may-read = read
page-may-plans = read, and hand in plans
page-token-until = Up to and with
page-token-make = Make a token
page-token-back = Take back: { $name }
page-token-holds = may { $may }, until { $day }
page-token-over = over since { $day }
page-token-made = The token of { $name }. It is shown this once; put it where the program finds it, and nobody else:
page-token-gone = the token of { $name } opens nothing any more
page-token-no-name = a name has 1 to 40 letters, and no other token has it; nothing was made
page-token-no-day = a token holds until a day from today on, a year from now at most; nothing was made
page-tokens-full = there are 20 tokens; take one back first. Nothing was made
page-token-unknown = no token has that name; nothing was changed
page-token-not-kept = the tokens' file cannot be used; nothing was changed. The kiosk's log says why

## A lift's course.
page-course-chart = Heaviest work set of each day, { $unit }
page-day-heaviest = heaviest of the day
page-a-best = a best
page-estimate = single, estimated
page-reps-missed = reps missed
page-comes-next = comes next
page-volume = Volume
page-volume-chart = Volume by week, { $unit } times reps
page-hard-sets = Hard sets
page-hard-chart = Work sets by week, pale; in front: hard ones
page-hard-hint = Hard: reps were missed, or the estimate is within 10 % of the best one up to that day. An estimate is load times (1 + reps / 30), of sets of up to 10 reps. Common practice, no source: a guide, no judgement.
page-plan-chart = Reps made by week; pale: planned
page-in-numbers = The same in numbers
page-compare = Compare with
page-nobody-else = nobody
page-all-lifts = all lifts
page-show = Show
page-compared = Compared: the estimated single of each, in % of their own best
page-no-course = Nothing is recorded for these days and lifts.
page-take-home = Take it home
page-take-home-hint = These files are yours. This page prints, too.

## Problems.
page-not-done = That did not work
page-to-front = To the first page
page-sign-in-first = sign in at /sign-in with the coach's code first
page-name-no-text = the name in the address is no text
page-no-blanks = this kiosk offers no blank plan; pinladder plan blank writes one
page-nothing-here = nothing is here; /openapi.json says what there is
page-no-day = before must be a day such as 2026-03-31
page-no-such-order = order must be take, write, copy or restore
page-no-such-deed = do must be rule, meant, hurt, fit or ill, with its fields
page-no-date = write a day such as 2026-03-31
page-no-such-language = language must be en, de or es
page-form-kind = send the form as application/x-www-form-urlencoded
page-form-long = the form is longer than it can be, or broke off
page-form-slow = the form did not come within 10 s
page-form-broken = the form is no form
page-field = a field of the form is missing, or there twice
page-too-many-codes = too many wrong codes; wait, and ask the owner for the code
page-method = this address does not take that method; Allow says which it takes
page-long-address = the address is longer than 1024 bytes
page-one-host = the request must name one host
page-other-host = this server answers to its IP address, to localhost, to names in .local and to those in kiosk.toml (hosts)
page-no-root = this page has no root of its own to trust
page-only-tls = this page takes forms under TLS alone; open it with https:// and type it again
page-other-site = a page of another site may not ask for this
page-many-boards = too many boards follow at once; close one
page-many-readers = too many are reading at once; try again in a moment
page-unreadable = the record cannot be read; the kiosk's log says why
page-slow = the record is slow to read just now; try again in a moment
