list-for-all = due on { $date }, for everybody
list-nobody = nobody has lifted yet, so nothing is due
list-hurt = hurt
list-hurt-since = since { $date }: { $why }
list-wrong = looks wrong
list-wrong-on = plan of { $date }: { $load }, the record supports { $supported }
list-untried-on = plan of { $date }: { $load }, and nothing is recorded that supports it
list-many-reps-on = plan of { $date }: { $n } reps of work at { $load }
list-wrong-tap = tap if it is meant
list-over = over-reaching
list-stuck = stuck
list-anew = begin anew
list-waits = waits for you
list-differs = plan and due differ
list-differs-on = plan of { $date }: { $plan }; due { $due }
list-away = away
list-due = due
list-title = due, and who waits
list-hint = whoever waits for you comes first; tap one to decide
list-waiting =
    { $n ->
        [one] 1 waits for the coach
       *[other] { $n } wait for the coach
    }
list-none-waits = nobody waits
list-coach-code = the coach's digits
list-health = hurt or ill
list-health-hint = what a lifter says; what it is, a clinician says
list-fit = fit
list-fit-again = fit again
list-hurt-now = from today: nothing is due until fit again
list-ill = ill
list-ill-today = today
list-ill-days =
    { $n ->
        [one] the last day
       *[other] the last { $n } days
    }
list-ill-from-to = { $from } to { $to }
list-note-at-desk = entered at the desk
list-note-on-page = entered on the page
list-as-due = what is due
list-as-before = as the last time
list-as-planned = the plan's
list-more =
    { $n ->
        [one] 1 more
       *[other] { $n } more
    }
