## What stands behind the end of a lift.
why = warum
advice = Rat
next-time-title = nächstes Mal
single-title = das Maximum
split-title = wann teilen
back-title = der Weg zurück
advice-waits = es gibt Rat zu: { $a }; siehe „warum“

## What is due, without the load.
up-by = { $a } mehr: { $b }
again = noch einmal: { $a }
least-again = noch einmal, weniger gibt es nicht: { $a }
down-by = { $a } weniger: { $b }
coach-ruled = der Coach: { $a }
due-of = { $a }, { $b }: { $c }
due-last = { $a }; zuletzt am { $b }

## Sets by their reps, and a day of the year.
fives = Fünfer
sets-of-reps = { $a }er-Sätze
joined = { $a } und { $b }

## When to split. Common practice, no source.
s-too-few = { $b }: zu wenige { $a }er-Sätze, noch ist kein Trend zu sehen
s-none-well = { $a }: zuletzt ging kein { $b }er-Satz gut
s-light = { $a }, { $b } bei { $c }: unter den { $d }, ab denen man ans Teilen denkt
s-rising = { $a }, { $b } bei { $c }: es geht noch aufwärts; weiter so
s-test-near = { $a }; aber der Test am { $b } ist nah: bleib bei { $c }
s-split = { $a }; denk an { $b } an seiner Stelle, der Coach entscheidet
s-stay = dabei: { $a }; dabei bleiben
s-stay-until = dabei: { $a }; ab { $c } zurück zu { $b }, vor dem Test am { $d }
s-back = der Test ist am { $a }; { $b } wieder aufnehmen, der Coach entscheidet
s-slow = { $a }, { $b } bei { $c }: { $d } je Mal, wo { $e } fällig wären; { $f } von { $g } zu kurz oder mit nachgebendem Rücken
s-rise = { $a } mehr
s-fall = { $a } weniger
s-no-record = noch nichts verzeichnet: { $a }
s-back-day = { $a }: { $b } { $c }
s-back-share = { $a }: { $b } { $c } % der Bestleistung × { $d }
s-back-row = zurück
key = voll: alle Wdh., Rücken hielt; Ring: Wdh. fehlen; Kreuz: Rücken gab nach; Linie: kleinste Quadrate
heavy-from = schwer ab { $a }

## Estimates of the single.
from-to = { $a } bis { $b }
single-from = nach sechs veröffentlichten Formeln, aus { $a }; an anderen Leuten gefunden
single-head = Maximum aus { $a } × { $b }: { $c } bis { $d }, je nach Formel
single-line = { $a } bis { $b }, je nach Formel

## What is due, as a text.
d-for = { $a }, für { $b }
d-nothing = noch nichts gemacht, woraus etwas folgt
d-due = dann
d-rules = Regeln
d-rule = Regel
d-single = Maximum
d-sets = { $a } Sätze zu { $b }
d-tries =
    { $a ->
        [one] 1 Versuch
       *[other] { $a } Versuche
    }
d-drops =
    { $a ->
        [one] 1 Abstieg
       *[other] { $a } Abstiege
    }
d-figures = { $a } dazu; { $b }, wo der Rücken nachgab { $c }, dann { $d } weniger; { $e }, dann { $f } weniger; nach mehr als { $g } Tagen Pause { $h } weniger

## Measuring. Common practice, no source.
m-intro = in den Schuhen zum Heben, aufrecht, Gewicht auf beiden Füßen; das Band gerade vom Boden hoch; zweimal messen, die Mitte aufschreiben
m-tuberosity = der harte Höcker vorn am Schienbein, unter der Kniescheibe: Boden bis zu seiner Mitte
m-patella = Knie gestreckt, Schenkel locker: Boden bis zum oberen Rand der Kniescheibe
m-mid-thigh = auf halbem Weg vom oberen Rand der Kniescheibe zur Leiste: Boden bis dorthin
m-lockout = aufrecht mit leerer Stange in hängenden Händen: Boden bis zur Mitte der Stange
m-mm = { $a } mm
m-estimate = { $a } mm geschätzt, auf { $b } mm genau
m-not-measured = nicht gemessen
m-write = messen und in lifters.toml unter landmarks eintragen
m-above-floor = { $a } über dem Boden

## A meet or a test day.
t-caution = ein Anhalt: auf die Plattform sehen, und den Kampfrichter fragen, was noch zu ändern ist
t-head = { $a }, Eröffnung { $b } in { $c }: Versuch { $d } der Gruppe, { $e } vorbei, { $f } s je Versuch
t-now = jetzt
t-in = in { $a }
t-each-side = je Seite { $a }
t-after = nach Versuch { $a }
t-meet-day = Wettkampftag
t-in-word = in
t-nothing-comes = es kommt nichts mehr
t-sooner = eine Minute früher
t-later = eine Minute später
t-begin = Gruppe beginnt
t-attempt-over = Versuch vorbei
t-next-flight = nächste Gruppe
t-not-begun = { $a }: noch nicht begonnen
t-over = { $a }: { $b } von { $c } Versuchen vorbei, je { $d } s
t-opener = { $a }, Eröffnung
t-tap = gemachten Aufwärmsatz antippen; { $a }
t-after-about = nach etwa Versuch { $a }
t-reckoned = der Platz ist gerechnet: von den anderen ist nur die Zahl bekannt
t-round = { $a }, Runde { $b }
t-good = gültig
t-no-lift = ungültig
t-was-good = gültig
t-passed = ausgelassen
t-second = { $a }, zweiter
t-third = { $a }, dritter
t-undeclared = nicht angesagt: hier tippen
t-without = { $a } ohne gültigen Versuch
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
t-same-lot = { $a } hat dasselbe: am Tisch fragen
t-passes = lässt diesen Versuch aus
t-leaves = verlässt die Gruppe
t-type-lot = 1 bis 999, wie gezogen, dann behalten
t-type-load = wie am Tisch angesagt, dann behalten
t-changes-left = angesagt; Änderungen übrig: { $a }
t-declare-in = ansagen in { $a }; sonst sind es { $b }
t-by-itself = die Minute ist um: am Tisch sind es { $a }, wenn nichts angesagt wurde
t-card-over = kein Versuch mehr
t-loaded = die Hantel ist geladen: keine Änderung mehr
t-below = die Hantel wird nicht leichter: { $a } oder mehr
t-late = ab { $a } vor der Gruppe steht die Eröffnung; den Kampfrichter fragen
t-no-change = Änderungen, die der Tisch nimmt: { $a }; den Kampfrichter fragen
t-of-best = { $a } % der Bestleistung, { $b }
t-new-best = { $a } über der Bestleistung
t-no-best = noch keine Bestleistung
t-place = Versuch { $a } von jetzt an
t-place-about = etwa Versuch { $a } von jetzt an
t-left-out = fällt aus
t-no-time = { $a }: keine Zeit dafür
partial = bei einem Teilzug vergleichen sie dich nur mit dir selbst und sagen sonst nichts voraus
