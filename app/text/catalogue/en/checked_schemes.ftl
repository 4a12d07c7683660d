## Whom, what and when.
checked-a-row-that-says-otherwise = a row that says otherwise than the header above it
checked-keep-one-of-the-two-words = keep one of the two
checked-on-what-is-headed = { $a } on what is headed { $b }
checked-move-the-row-to-a = move the row to a sheet of its own, or rename the sheet
checked-write-the-date = write the date
checked-a-week-without-a-day = a week without a day of it
checked-write-the-weekday-or-the = write the weekday, or the date
checked-a-weekday-without-the-monday = a weekday without the Monday that week 1 begins on
checked-write-first-monday-2026-12 = write "first Monday: 2026-12-07" above the plan, give --monday 2026-12-07, or write the dates
checked-which-is-no = { $a }, which is no { $b }
checked-write-the-date-or-the = write the date or the weekday that is meant
checked-two-first-mondays-and = two first Mondays, { $a } and { $b }
checked-monday = Monday
checked-tuesday = Tuesday
checked-wednesday = Wednesday
checked-thursday = Thursday
checked-friday = Friday
checked-saturday = Saturday
checked-sunday = Sunday
checked-write-a-day-such-as = write a day such as "Monday"
checked-not-a-day-of-the = not a day of the week
checked-no-lifter = no lifter
checked-name-the-sheet-after-the = name the sheet after the lifter, or add the column "lifter"
checked-write-the-lift-in-front = write the lift in front, or add the column "lift"
checked-a-first-day-that-is = a first day that is no Monday
checked-write-the-monday-of-week = write the Monday of week 1, such as { $a }
checked-write-its-weekday-or-its = write its weekday or its date
checked-a-day-by-its-number = a day by its number
checked-write-the-monday-of-the-week = write the Monday of the week
checked-a-week-that-begins-on = a week that begins on a Sunday
checked-a-week-of-the-calendar = a week of the calendar without a year
checked-write-the-year-with-it = write the year with it, as "KW 49/2026", or the dates
checked-a-weekday-that-is-not = a weekday that is not the date's own
checked-a-day-without-a-year = a day without a year
checked-a-short-name-that-has = a short name that { $a } has
checked-give-it-to-one-of = give it to one of the two

## Headers and lines beside the plan.
checked-sets-and-reps-under-a = sets and reps under a header that is not known, { $a }
checked-write-a-week-a-day = write a week, a day or a lifter into the header, or "note"
checked-a-first-row-that-names-one = a first row that names one column alone
checked-show-it-in-the-spreadsheet = show it in the spreadsheet if it belongs to the plan
checked-column-hidden-left-out = column { $a } hidden, left out
checked-take-the-line-away-if = take the line away if it belongs to the plan
checked-a-hidden-row-left-out = a hidden row, left out
checked-a-row-struck-through-left = a row struck through, left out
checked-text-struck-through-left-out = text struck through, left out
checked-a-line-of-words-left = a line of words, left out
checked-put-it-under-note-if = put it under "note" if somebody should read it

## Cells.
checked-a-day-which-a-spreadsheet = a day, which a spreadsheet makes of "3-5"
checked-a-time-which-a-spreadsheet = a time, which a spreadsheet makes of "3:00"
checked-format-the-cell-as-text = format the cell as text and write it again
checked-which-could-be-or-a = which could be { $a } or a share
checked-write-or-the-load-with = write { $a }, or the load with its unit
checked-more-than-letters-in-one = more than { $a } letters in one cell
checked-write-a-row-for-each-lift = write a row for each lift, and remarks into the note
checked-more-than-set-groups = more than { $a } set groups
checked-split-it-over-days = split it over days
checked-write-the-top-set-before = write the top set before it, as "1x5 @ RPE 8, 3x5 @ 90 % of top set"
checked-a-share-of-today-s = a share of today's top set without a top set before it
checked-a-load-without-a-unit = a load without a unit
checked-write-the-unit = write the unit
checked-too-many-numbers-with-a = too many numbers with a times sign between
checked-write-sets-x-reps-load = write sets x reps @ load, as "5x3 @ 140 kg"
checked-write-or = write { $a } or { $b }
checked-one-set-of-reps-or = one set of { $a } reps or { $b } sets
checked-which-can-mean = which can mean { $a }
checked-which-can-mean-so-many = which can mean so many sets or so much load
checked-in-which-sets-and-reps = in which sets and reps can stand in either order
checked-not-sets-x-reps = not sets x reps
checked-write-1-to-sets-x = write 1 to { $a } sets x 1 to { $b } reps, as "5x3 @ 140 kg"
checked-sets-where-the-column-beside =
    { $a ->
        [one] 1 set, where the column beside says { $b }
       *[other] { $a } sets, where the column beside says { $b }
    }
checked-write-sets-x-reps-as = write sets x reps, as { $a }
checked-an-effort-without-its-number = an effort without its number
checked-no-reps = no reps
checked-write-with-your-sets-and = write { $a } with your sets and reps
checked-a-load-without-sets-and = a load without sets and reps
checked-more-numbers-than-sets-reps = more numbers than sets, reps and a load ({ $a })
checked-write-it-as-5x3-140 = write it as "5x3 @ 140 kg", and remarks in brackets or into the note
checked-sets-reps-for-loads-for = sets: { $a }, reps for { $b }, loads for { $c }
checked-write-the-sets-alone-here = write the sets alone here, and the reps under "reps"
checked-sets-and-reps-in-one = sets and reps in one cell
checked-write-as-many-of-each = write as many of each as there are sets, or one for all
checked-write-where-a-share-is = write { $a } where a share is meant
checked-an-effort-or-a-load = an effort or a load below 1
checked-write-the-step-as-a = write the step as a mass, as "+2.5 kg"
checked-a-step-in-percent = a step in percent
checked-a-step-without-a-unit = a step without a unit
checked-write-a-range-rising-as = write a range rising as "3-5", and one set after another as "5/3/1"
checked-reps-that-do-not-rise = reps that do not rise
checked-write-one-load-as-140 = write one load, as "140 kg"
checked-a-load-from-one-to = a load from one to another
checked-a-share-of-which-is = a share of { $a }, which is not known here
checked-write-the-share-of-best = write the share of "best", "training max" or "top set"
checked-write-one-number-of-reps = write one number of reps in reserve from 0 to 9, such as "RIR 2"
checked-write-one-rpe-from-1 = write one RPE from 1 to 10 in halves, such as "RPE 8.5"
checked-not-an-effort = not an effort
checked-an-effort-from-one-to = an effort from one to another
checked-an-effort-that-no-scale = an effort that no scale has
checked-write-it-once-for-each = write it once for each set group
checked-two-loads-for-the-same = two loads for the same sets
checked-two-efforts-for-the-same = two efforts for the same sets
checked-write-the-load-alone-as = write the load alone, as "140 kg", "80 %", "+2.5 kg" or "RPE 8"
checked-more-than-a-load = more than a load
checked-not-understood-from-on = not understood from { $a } on
checked-a-load-of-one-side = a load of one side
checked-put-a-comma-between-set = put a comma between set groups
checked-two-set-groups-in-a = two set groups in a row
checked-a-time-that-nobody-has = a time that nobody has named a rest
checked-rising-from-1-row-by = { $a } rising from 1, row by row, which can number the sets or count them
checked-write-alike-sets-in-one = write alike sets in one row, as "3x5 @ 140 kg", and 1 in each row where they differ
checked-a-warm-up-the-ladder = a warm-up: the ladder makes them from the work load
checked-take-the-row-out-or = take the row out, or name a pattern of warm-ups under "ladder"
checked-a-drop-that-could-be = a drop that could be by { $a } or to { $a }
checked-write-for-so-much-less = write { $a } for so much less than the top set, or { $b }
checked-the-same-as-what-is = the same as what is not said
checked-write-for-the-load-of = write { $a } for the load of last time, or the load
checked-write-a-pause-in-each = write a pause in each rep under "hold", and a rest from 15 s to 30 min here

## Days of a month, shares of what.
checked-a-day-that-the-month = a day that { $a } does not have
checked-taken-as-a-share-of = { $a }, taken as a share of the best
checked-write-of-top-set-where = write "{ $a } of top set" where the sets before it are meant, or "{ $a } of best"

## What the rack cannot show yet.
checked-read-but-the-rack-cannot = read, but the rack cannot show it yet; write sets x reps @ a load or a share of the best
checked-a-row-without-sets = a row without sets
checked-a-share-of-a-top = a share of a top set that nothing is before
checked-sets-without-a-load = sets without a load
checked-a-lift-and-more = { $a } and more words
checked-write-the-lift-and-how = write { $a } here and how it is done beside the sets, as "3x5 @ 140 kg pause 2 s", or give the gym a lift of this name
