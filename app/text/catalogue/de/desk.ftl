desk = Coach-Bereich
behind-code = mit Code
four-digits = die vier Ziffern eingeben
choose-code = vier Ziffern wählen; sie öffnen ihn von nun an
wrong-code = falsche Ziffern; noch einmal
code = Code
new-code = neuer Code
delete-last = löschen
keep = speichern
type-value = Zahl tippen, dann speichern
type-name = Namen tippen, dann speichern
not-read = das ist nicht zu lesen; noch einmal
plans = Pläne
plans-hint = aus dem Ordner „plans“; ein Plan ersetzt, was für seine Leute und Tage stand
no-plans = im Ordner „plans“ liegt kein Plan
take-plan = { $name } nehmen
plan-rows =
    { $n ->
        [one] 1 Zeile, kein Fehler
       *[other] { $n } Zeilen, kein Fehler
    }
plan-taken = der Plan { $name } gilt jetzt
lifters = Leute
new-lifter = jemand Neues
first-lifter = die erste Person
add = dazu
measured-of = { $n } von { $all } Marken gemessen
landmarks-hint = Höhen über dem Boden, in den Schuhen zum Heben
not-yet-measured = nicht gemessen
unit = Einheit
rack = Rack
racks = Racks
new-rack = neues Rack
measure-hint = jede Zahl messen; antippen, um sie neu einzugeben
holes =
    { $n ->
        [one] 1 Loch
       *[other] { $n } Löcher
    }
first-hole = Boden bis Loch 1
spacing = Loch zu Loch
hole-count = Löcher
pin-diameter = Bolzen, Durchmesser
hole-diameter = Loch, Durchmesser
mats-title = Matten
bars = Stangen
new-bar = neue Stange
mass = Gewicht
shaft = Griffteil, Durchmesser
sleeve = Hülse, mit Verschluss
collars-title = beide Verschlüsse
condition = Zustand
condition-hint = auf den Bolzen liegt die ausgemusterte
straight = gerade
retired = ausgemustert
plates = Scheiben
kinds =
    { $n ->
        [one] 1 Sorte
       *[other] { $n } Sorten
    }
pairs =
    { $n ->
        [one] 1 Paar
       *[other] { $n } Paare
    }
programmes = Programme
programmes-hint = ihre Tage und Übungen stehen in programme.toml
days =
    { $n ->
        [one] 1 Tag
       *[other] { $n } Tage
    }
weeks =
    { $n ->
        [one] 1 Woche
       *[other] { $n } Wochen
    }
sharing = Seite im Netz
sharing-hint = was hier geändert wird, gilt sofort
interface = Adresse
this-machine = nur dieser Rechner
whole-network = wer in diesem Netz ist
page-code = Code der Seite
page-code-set = gesetzt
page-code-missing = keiner
nobody-signs-in = ohne ihn kommt niemand hinein
six-digits = mindestens sechs Ziffern, dann speichern
page-name = auch zu finden als
fingerprint = Fingerabdruck des Zertifikats
tls = TLS
tls-on-by-tap = wer in diesem Netz ist, kann den Code des Coachs mitlesen; tippen schaltet es ein
lan-by-itself = von selbst, weil andere Geräte die Seite erreichen: ihre Adresse beginnt mit https
certificate = Zertifikat
lan-stale = das bisherige gilt weiter: { $why }
lan-ends = sein letzter Tag ist { $date }; leg ein neues an seine Stelle
root-fingerprint = SHA-256 der Wurzel
code-was-plain = die alten Ziffern stehen offen im Journal; wähle andere
wait-at-door = zu oft falsch; warte { $time }
on = an
off = aus
checks = Prüfungen
checks-hint = der Dateien, wie sie im Ordner liegen
hardware = Geräte
all-well = kein Fehler
faults = Fehler: { $n }
begin = ein eigenes Studio
new-gym = von vorn beginnen
take-away = wegnehmen
hold-it = gedrückt halten, nicht tippen
this-kind = diese Sorte

## What still needs a thing.
need-under-way = { $lifter } hebt gerade damit; erst die Übung beenden
need-lifts-there = { $lifter } hebt dort; erst ein anderes Rack geben
need-lifts-with = { $lifter } hebt damit; erst eine andere Stange geben
need-only-rack = das einzige Rack; erst eins dazunehmen
need-only-bar = die einzige Stange für { $rack }; erst eine dazunehmen
need-only-kind = die einzige Sorte; erst eine dazunehmen
need-weighed = Scheiben davon sind gewogen; erst aus gym.toml nehmen

## The stick and the copies.
stick = Stick
stick-hint = was er bringt, gilt ganz oder gar nicht
stick-unset = kein Ort dafür gesetzt
stick-key = schreib stick = "..." in kiosk.toml
stick-out = keiner steckt
stick-plans = Pläne: { $names }
stick-take = alles nehmen
stick-record = Verzeichnis
stick-write = auf den Stick
stick-writing = er wird beschrieben; stecken lassen
stick-passed = übergangen
stick-new = { $n } neu
stick-changed = { $n } geändert
stick-same = { $n } wie bisher
stick-days = { $from } bis { $to }
copies = Kopien
copies-hint = des Journals, am zweiten Ort; jede wird erst geprüft
copies-unset = kein zweiter Ort gesetzt
copies-key = schreib backup = "..." in kiosk.toml
copy-now = jetzt kopieren
copying = wird kopiert und geprüft
put-back = zurücklegen
proving = die Kopie wird geprüft; macht ruhig weiter
on-the-screen = am Bildschirm
write-plan = Plan schreiben
new-row = eine Übung
row-hint = antippen, was sich ändert, dann speichern
off-the-day = von diesem Tag
lift-title = Übung
load-title = Last, mit Stange
sets-title = Arbeitssätze
reps-title = Wdh. je Satz
ladder-title = Aufwärmen
ladder-own = wie sonst
not-yet = noch nicht

## Next time, ruled by the coach.
next-times = nächstes Mal
next-times-what = was fällig ist
next-times-hint = was aus dem letzten Mal folgt; antippen, um es zu ändern
nothing-due = noch nichts gehoben, also folgt nichts
ruling-hint = Last wählen und sagen, warum; beides bleibt im Verzeichnis
why-title = warum
note-more = lief gut: mehr nehmen
note-less = der Rücken ist noch unsicher: weniger nehmen
note-tired = müde: diesmal weniger
note-sore = Muskelkater oder krank: diesmal weniger
note-form = erst an der Ausführung arbeiten
note-test = ein Test oder Wettkampf steht an
note-stay = noch einmal dabei bleiben

## Programmes and rules.
programme = Programm
no-programme = keins
programme-hint = antippen nimmt jemanden auf oder heraus
follows = macht mit
follows-not = macht nicht mit
follows-hint = füllt die Tage, an denen der Plan schweigt
next-day = als Nächstes
apart-days = von Tag zu Tag mindestens
rule = Regel
rule-what = wann mehr, wann weniger
rule-hint = für alle Übungen; übliche Praxis ohne Quelle, bis der Coach es ändert
r-step = alle Wdh., Rücken hielt: mehr um
r-tries = Versuche mit einer Last
r-moved-tries = Versuche, wenn der Rücken nachgab
r-drop = dann weniger um
r-drops = Male weniger vor dem Rücksetzen
r-reset = Rücksetzen nimmt weg
r-away-days = Tage ohne, die keine Pause sind
r-away = eine Pause nimmt weg

## Things of the gym.
own-bar = Stange vom Boden
any-bar = die vom Rack
stands-by = steht bei
every-rack = jedem Rack
mats-hint = zum Draufstehen, wo die Löcher grob sind
new-mat = neue Matte
new-kind = neue Sorte
plate-hint = eine Scheibe: Gewicht, wie viele Paare, wie dick, wie breit
pairs-title = Paare
thickness = Dicke
diameter = Durchmesser

## Refusals, after X_; reasons why no ladder can be loaded, after L_.
x-empty-plan = der Plan hat keine Zeile; schreib mindestens eine
x-nothing-planned = der Plan hat nichts für diesen Tag; sieh noch einmal nach
x-empty-ladder = es gibt keine Sätze; prüf die Last im Plan
x-under-way = { $lifter } ist noch bei: { $lift }; erst beenden
x-no-such-lift = diese Übung läuft nicht; wähl noch einmal, wer hebt
x-not-the-rung = dieser Satz ist schon eingetragen; sieh noch einmal hin
x-over = die Übung ist zu Ende; mach sie rückgängig, um mehr einzutragen
x-decide-first = der Rücken gab nach; erst beenden oder weitermachen
x-nothing-to-decide = der Rücken hielt; trag den Satz ein
x-stale-rotation = die Reihenfolge ist überholt; plan sie neu
x-not-the-time = die Last wird einmal gewählt, zwischen letztem Aufwärmsatz und erstem Arbeitssatz; rückgängig führt dahin zurück
x-stale-decision = die Übung läuft noch; entscheide am Ende
x-nothing-decided = nach dieser Übung wurde nichts entschieden; schreib die Last in den Plan
x-load = { $load } geht nicht; mehr als nichts und höchstens 1000 kg
x-no-note = der Grund fehlt; sag in wenigen Worten, warum
x-note = der Grund hat { $n } Zeichen; höchstens { $most }
x-reps = { $n } geht nicht; Wdh. gehen von 0 bis { $most }, die mit dem Rücken ab 1
fault-cell = { $file }, Zeile { $row }, Spalte { $column }
fault-row = { $file }, Zeile { $row }
fault-found = da steht { $read }; { $right }
and-more = { $first } (und { $n } weitere)
went-wrong = das ging nicht: { $why }
l-range = eine Zahl liegt außerhalb
l-bar = die Stange ist schon schwerer
l-inventory = dafür fehlen Scheiben
l-sleeve = die Scheiben passen nicht auf die Hülse
l-big-inside = eine große Scheibe läge außen
l-tolerance = mit diesen Scheiben geht es nicht auf

## The front page, the week, the digits twice.
repeat-code = dieselben vier Ziffern noch einmal
codes-differ = die beiden waren verschieden; noch einmal vier Ziffern wählen
saved = gespeichert
no-file = keine neue Datei
files-wait =
    { $n ->
        [one] 1 Datei wartet
       *[other] { $n } Dateien warten
    }
week = die Woche
week-what = alle, Tag für Tag
week-before = Woche davor
week-after = Woche danach
gym = das Studio
gym-what = Racks, Stangen, Scheiben
begin-under-way = { $lifter } hebt gerade; erst die Übung beenden
begin-loses = gedrückt halten: { $gym } geht, mit allen Leuten ({ $lifters }), Racks ({ $racks }) und Stangen ({ $bars }); das Verzeichnis bleibt
rest-title = Pause
rest-own = wie sonst
demo-gym = { $gym } (Demo)
demo-steps = Demo; dein Studio: 1. Coach-Bereich 2. das Studio 3. „von vorn beginnen“ halten
