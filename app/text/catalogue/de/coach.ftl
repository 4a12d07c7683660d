## What stands behind the end of a lift.
why = warum
advice = Rat
next-time-title = nächstes Mal
single-title = geschätztes Maximum
split-title = aufteilen?
back-title = der Weg zurück
advice-waits = es gibt Rat zu: { $lift }; siehe „warum“

## What is due, without the load.
up-by = { $by } mehr: { $why }
again = noch einmal: { $why }
least-again = noch einmal, weniger gibt es nicht: { $why }
down-by = { $by } weniger: { $why }
coach-ruled = vom Coach: { $note }
due-of = { $lift }, { $work }: { $due }
due-last = { $due }; zuletzt am { $date }

## Sets by their reps, and a day of the year.
fives = Fünfer
sets-of-reps = { $reps }er-Sätze
joined = { $first } und { $second }

## When to split. Common practice, no source.
s-too-few = { $lift }: zu wenige { $reps }er-Sätze, noch ist kein Trend zu sehen
s-none-well = { $lift }: zuletzt ging kein { $reps }er-Satz gut
s-light = { $lift }, { $reps } bei { $load }: unter den { $heavy }, ab denen man ans Teilen denkt
s-rising = { $lift }, { $reps } bei { $load }: es geht noch aufwärts; weiter so
s-test-near = { $slow }; aber der Test am { $date } ist nah: bleib bei { $lift }
s-split = { $slow }; denk an { $partials } an seiner Stelle, der Coach entscheidet
s-stay = dabei: { $partials }; dabei bleiben
s-stay-until = dabei: { $partials }; ab { $from } zurück zu { $lift }, vor dem Test am { $test }
s-back = der Test ist am { $test }; { $lift } wieder aufnehmen, der Coach entscheidet
s-slow = { $lift }, { $reps } bei { $load }: { $rate } je Mal, wo { $step } fällig wären; { $bad } von { $all } zu kurz oder mit nachgebendem Rücken
s-rise = { $by } mehr
s-fall = { $by } weniger
s-no-record = noch nichts verzeichnet: { $lift }
s-back-day = { $date }: { $lift } { $load }
s-back-share = { $date }: { $lift } { $share } % der Bestleistung × { $reps }
s-back-row = zurück
key = voll: alle Wdh., Rücken hielt; Ring: Wdh. fehlen; Kreuz: Rücken gab nach; Linie: kleinste Quadrate
heavy-from = schwer ab { $load }

## Estimates of the single.
from-to = { $from } bis { $to }
single-from = nach sechs veröffentlichten Formeln, aus { $set }; an anderen Leuten gefunden
single-head = Maximum aus { $load } × { $reps }: { $from } bis { $to }, je nach Formel
single-line = { $from } bis { $to }, je nach Formel

## What is due, as a text.
d-for = { $lifter }, für { $date }
d-nothing = noch nichts gehoben, also ist nichts fällig
d-due = dann
d-rules = Regeln
d-rule = Regel
d-single = Maximum
d-sets =
    { $n ->
        [one] 1 Satz zu { $reps }
       *[other] { $n } Sätze zu { $reps }
    }
d-tries =
    { $n ->
        [one] 1 Versuch
       *[other] { $n } Versuche
    }
d-drops =
    { $n ->
        [one] 1 Abstieg
       *[other] { $n } Abstiege
    }
d-figures =
    { $days ->
        [one] { $step } dazu; { $tries }, wo der Rücken nachgab { $moved }, dann { $drop } weniger; { $drops }, dann { $reset } weniger; nach mehr als 1 Tag Pause { $away } weniger
       *[other] { $step } dazu; { $tries }, wo der Rücken nachgab { $moved }, dann { $drop } weniger; { $drops }, dann { $reset } weniger; nach mehr als { $days } Tagen Pause { $away } weniger
    }

## Measuring. Common practice, no source.
m-intro = in den Schuhen zum Heben, aufrecht, Gewicht auf beiden Füßen; das Band gerade vom Boden hoch; zweimal messen, die Mitte aufschreiben
m-tuberosity = der harte Höcker vorn am Schienbein, unter der Kniescheibe: Boden bis zu seiner Mitte
m-patella = Knie gestreckt, Schenkel locker: Boden bis zum oberen Rand der Kniescheibe
m-mid-thigh = auf halbem Weg vom oberen Rand der Kniescheibe zur Leiste: Boden bis dorthin
m-lockout = aufrecht mit leerer Stange in hängenden Händen: Boden bis zur Mitte der Stange
m-mm = { $mm } mm
m-estimate = { $mm } mm geschätzt, auf { $spread } mm genau
m-not-measured = nicht gemessen
m-write = messen und in lifters.toml unter landmarks eintragen
m-above-floor = { $height } über dem Boden

## A meet or a test day.
t-caution = ein Anhalt: auf die Plattform sehen, und den Kampfrichter fragen, was noch zu ändern ist
t-head = { $lifter }, Eröffnung { $load } in { $in }: Versuch { $attempt } der Gruppe, { $over } vorbei, { $each } s je Versuch
t-now = jetzt
t-in = in { $time }
t-each-side = je Seite { $plates }
t-after = nach Versuch { $attempt }
t-meet-day = Wettkampftag
t-in-word = in
t-nothing-comes = kein Aufwärmsatz mehr
t-sooner = eine Minute früher
t-later = eine Minute später
t-begin = Gruppe beginnt
t-attempt-over = Versuch vorbei
t-next-flight = nächste Gruppe
t-not-begun = { $flight }: noch nicht begonnen
t-over = { $flight }: { $over } von { $all } Versuchen vorbei, je { $each } s
t-opener = { $load }, Eröffnung
t-tap = gemachten Aufwärmsatz antippen; { $caution }
t-after-about = nach etwa Versuch { $attempt }
t-reckoned = der Platz ist gerechnet: von den anderen ist nur die Zahl bekannt
t-round = { $flight }, Runde { $round }
t-good = gültig
t-no-lift = ungültig
t-was-good = gültig
t-passed = ausgelassen
t-second = { $load }, zweiter
t-third = { $load }, dritter
t-undeclared = nicht angesagt: hier tippen
t-without = { $lifter } ohne gültigen Versuch
t-cards = Ansagen
t-cards-value = Lasten und Lose von uns
t-so-far = bisher
t-the-opener = Eröffnung
t-the-second = zweiter Versuch
t-the-third = dritter Versuch
t-another = andere Last
t-another-first = jemand anders war zuerst dran
t-lot = Los
t-no-lot = keins
t-same-lot = { $lifter } hat dasselbe: am Tisch fragen
t-passes = lässt diesen Versuch aus
t-leaves = verlässt die Gruppe
t-type-lot = 1 bis 999, wie gezogen, dann speichern
t-type-load = wie am Tisch angesagt, dann speichern
t-changes-left = angesagt; Änderungen übrig: { $n }
t-declare-in = ansagen in { $time }; sonst sind es { $load }
t-by-itself = die Minute ist um: am Tisch sind es { $load }, wenn nichts angesagt wurde
t-card-over = kein Versuch mehr
t-loaded = die Hantel ist geladen: keine Änderung mehr
t-below = die Hantel wird nicht leichter: { $load } oder mehr
t-late = ab { $time } vor der Gruppe steht die Eröffnung; den Kampfrichter fragen
t-no-change = Änderungen, die der Tisch nimmt: { $n }; den Kampfrichter fragen
t-of-best = { $share } % der Bestleistung, { $best }
t-new-best = { $by } über der Bestleistung
t-no-best = noch keine Bestleistung
t-place = Versuch { $n } von jetzt an
t-place-about = etwa Versuch { $n } von jetzt an
t-left-out = fällt aus
t-no-time = { $load }: keine Zeit dafür
partial = bei einem Teilzug vergleichen sie dich nur mit dir selbst und sagen sonst nichts voraus
t-opener-over = die Eröffnung liegt über dem, was das Trainingsbuch trägt, { $best }; sie ist, was auch an einem schlechten Tag geht: frag den Coach
t-head-at = { $lifter }, Eröffnung { $load } gegen { $at }: Versuch { $attempt } der Gruppe, { $each } s je Versuch
