## Everywhere; the first ones are written by the window itself, in these words.
all-lifters = alle
switch-to = zu { $a }
more = mehr
more-lifters = mehr Leute
set-up = Aufbau
other-reps = andere Wdh.
history = Verlauf
done = fertig
ready = bereit
work = Arbeit
warm-up = Aufwärmen
skipped = ausgelassen
of = { $a } von { $b }
hole = Loch { $a }
from-the-floor = vom Boden
from-the-hooks = aus den Haken
hooks-hole = Haken in Loch { $a }
from-hooks-hole = aus den Haken in Loch { $a }
from-hooks-any = aus den Haken, so hoch wie es dir passt
estimated-measure = { $a }; geschätzt, messen
undo = rückgängig
back = zurück
cannot-start = Der Kiosk kann nicht starten
tried-again = Es wird alle paar Sekunden wieder versucht.
belt = Gürtel
straps = Zughilfen
from-load = { $a } ab { $b }
double-overhand = Obergriff
hook-grip = Klemmgriff
double-overhand-grip = Obergriff mit beiden Händen
reps =
    { $a ->
        [one] 1 Wdh.
       *[other] { $a } Wdh.
    }
sets-of = { $a } Sätze { $b }
no-mat = keine Matte
mats =
    { $a ->
        [one] 1 Matte, { $b } mm
       *[other] { $a } Matten, { $b } mm
    }
back-held = Rücken hielt
back-moved = Rücken gab nach
back-moved-at-rep = Rücken gab bei Wdh. { $a } nach

## Large, in lines that read well.
stopped-at-rep =
    Rücken gab nach:
    Wdh. { $a }
back-moved-at = Rücken bei { $a }
warm-up-of = Aufwärmsatz { $a } von { $b }
work-set = Arbeitssatz
work-set-of = Arbeitssatz { $a } von { $b }

## Heights.
bar-height = Stange { $a } mm über den Füßen, { $b }
on-the-mark = genau richtig
under-the-mark = { $a } mm unter der Marke
over-the-mark = { $a } mm über der Marke
shares = { $a } gemeinsam mit: { $b }
leaves-gap = Lücke von { $a } zu: { $b }
mm-in = { $a } mm ({ $b } Zoll)
collars = Verschlüsse { $a }

## Loading.
empty-bar = leere Stange
leave-bar = Stange so lassen
reps-done = { $a } geschafft

## All lifters.
no-lifters = noch niemand da: trag die Leute in lifters.toml im Datenordner ein
floor = Übersicht
rest-left = Pause { $a }
done-of = { $a } von { $b } fertig
nothing-today = heute nichts
measure-first = erst messen

## The end.
nothing-done = nichts gemacht
next = weiter: { $a }
next-lifter = wer ist dran
not-done = nicht gemacht
sets =
    { $a ->
        [one] 1 Satz
       *[other] { $a } Sätze
    }
reps-in-all = zusammen { $a } Wdh.
minutes =
    { $a ->
        [one] 1 Minute
       *[other] { $a } Minuten
    }
own-record = deine Daten aufs Telefon: öffnet einmal, zehn Minuten lang

## Pads.
how-many-reps = Wie viele Wdh. mit { $a }?
which-rep = Bei welcher Wdh. gab der Rücken nach?
end-lift = Übung beenden
did-it = trotzdem gemacht
did-all = trotzdem alle { $a } gemacht

## The floor.
nobody-yet = noch hebt niemand
up = dran
next-up = gleich

## What undo takes back.
the-start = den Anfang
the-end = das Ende
going-on = „weiter“
the-skip = „auslassen“

## Rest.
rest = Pause
after = nach { $a }
go-now = jetzt heben

## Set-up.
start = anfangen
back-to-bar = zurück zur Stange
not-planned = für heute ist nichts geplant; frag den Coach
not-a-lifter = { $a } steht nicht in lifters.toml; frag den Coach
height-unknown = auf den Bolzen, Höhe unbekannt

## The back moved.
set-of = { $a }, { $b } von { $c }
moved-advice = Gibt der Rücken nach, ist Schluss mit Steigern. Bei Schmerz aufhören: zum Arzt.
go-on = weiter, Coach ist dafür

## No sheet.
missing = { $a } „{ $b }“ gibt es nicht; trag es in die Dateien des Studios ein
nothing-until = heute nichts; { $a } am { $b }
goes-on-from = heute nichts; { $a } geht weiter ab { $b }
no-training-max = kein Trainingsmaximum für diesen Tag; schreib es in lifters.toml oder die Last als Gewicht
no-best = keine Bestleistung bekannt; schreib die Last als Gewicht
no-ladder = { $a }; frag den Coach nach einer anderen Last

## Landmarks.
tibial-tuberosity = Schienbeinhöcker
patella-top = Kniescheibe oben
mid-thigh = Mitte Oberschenkel
lockout = gestreckt

## This panel.
panel = Kiosk
panel-title = Dieser Kiosk
language = Sprache
light = Licht
by-hour = nach Uhrzeit
daylight = hell
dim = dunkel
by-hour-detail = hell von { $a } bis { $b } Uhr
about = über Pinladder
about-value = Lizenzen
about-what = Pinladder { $a }: was das Rack heute zeigen muss, und ein Verzeichnis dessen, was gehoben wurde.
about-terms = Freie Software unter der GNU General Public License, nur Version 3, ohne jede Gewähr. Quelltext und ganzer Lizenztext liegen bei.
about-parts = Gezeichnet mit Slint unter derselben Lizenz; gesetzt in Roboto Condensed, deren Lizenz bei der Schrift liegt. Die übrigen Bibliotheken stehen in Cargo.lock.
about-care = Schwere Stangen verletzen. Zahlen zum Stahl sind ein Anhalt, keine Zusage. Was Coach, Arzt und die Regeln am Ort sagen, geht vor.
lan-opens = Mit einem anderen Gerät in diesem Netz zu öffnen: { $a }
lan-or = { $a } oder { $b }
lan-print = Bevor du dem Zertifikat traust, sieh nach, ob der Browser denselben SHA-256 zeigt: { $a }
lan-root = Damit ein Telefon ihm auf Dauer traut, lade von dort root.crt und sieh nach, ob es diesen SHA-256 hat: { $a }
lan-readable = Ohne TLS kann jeder in diesem Netz den Code des Coachs mitlesen; der Schreibtisch schaltet es ein.

## History.
no-sessions = noch keine Arbeitssätze
moved-warm = beim Aufwärmen
sets-done-of = { $a } von { $b } Sätzen

## Next time.
next-time = nächstes Mal: { $a }
n-up = { $a }, { $b } mehr
n-again = wieder { $a }
n-least = wieder { $a }, weniger gibt es nicht
n-down = { $a }, { $b } weniger
n-because = { $a }: { $b }
n-back = { $a }, auf dem Weg zurück
n-no-step = { $a }, aber die nächste Last, die hier zu laden ist, liegt zu hoch
n-light = { $a }, an einem leichteren Tag als fällig
n-try = { $a }, Versuch { $b } von { $c }
n-too-much = { $a }, zu früh, um { $b } noch einmal zu versuchen
n-stuck = { $a }, wieder ohne neue Bestleistung; frag den Coach
x-not-hurt = { $a } ist nicht als verletzt eingetragen; es gibt nichts aufzuheben
x-ill-backwards = { $a } liegt vor { $b }, an dem es anfing; schreib erst von, dann bis
no-hurt = verletzt: nichts ist fällig, bis der Coach entscheidet; hör auf und geh zum Arzt
no-untried = { $a } sieht falsch aus: nichts ist dafür belegt; frag den Coach
no-many-reps = { $a } Arbeitswiederholungen mit { $b } sehen falsch aus; frag den Coach
no-looks-wrong = { $a } sieht falsch aus: belegt sind { $b }; frag den Coach
due-then-plan = fällig { $a }, Plan { $b }
plan-then-due = Plan { $a }, fällig { $b }
n-hard = { $a }, schwerer als verlangt
n-range = { $a }, noch nicht in jedem Satz das obere Ende
n-waiting = { $a }; wartet auf das Wort des Coachs
n-away = { $a } Tage länger weg als geplant
n-anew = { $a } Tage länger weg als geplant; fang mit dem Coach neu an
n-ill = krank, { $a } Tage zählen als Pause
n-family = der Rücken gab seither bei einem anderen Zug nach
n-over = ein Zug nach dem anderen ging schief; frag den Coach
n-long-ago = lange her, während andere Züge weitergingen
n-week = mehr steigt es in einer Woche nicht
n-hurt = verletzt: nichts, bis der Coach entscheidet; hör auf und geh zum Arzt
n-nothing = nichts fällig: { $a }
n-coach = der Coach will es so
n-coach-said = { $a }, der Coach: { $b }
v-raise = mehr
v-repeat = gleich
v-drop = etwas weniger
v-reset = deutlich weniger
v-ease = sachte
o-well = alle Wdh., Rücken hielt
o-moved = Rücken gab bei Wdh. { $a }{ $b } nach
o-moved-warm = Rücken gab beim Aufwärmen nach
o-cut = { $a } von { $b } Sätzen, Rücken hielt
next-session = dann

## Choosing the load on the day. The caution: common practice, no source.
other-load = andere Last
the-choice = die Wahl
the-plan = laut Plan
the-due = fällig
too-early = zu früh
over-due = mehr als fällig
work-set-reps = Arbeitssatz, { $a }
work-sets-of = { $a } Arbeitssätze zu { $b }
settle-caution = mehr nur, wenn der Rücken bei jedem Aufwärmsatz hielt; der Coach entscheidet
keep-load = bei { $a } bleiben
first-time = das erste Mal
last-time = zuletzt { $a }, { $b }, am { $c }
as-last-time = wie zuletzt
more-than-last = { $a } mehr als zuletzt
less-than-last = { $a } weniger als zuletzt
n-well = alle Wdh., der Rücken hielt
n-short = { $a } von { $b } Wdh.{ $c }
n-moved = der Rücken gab bei Wdh. { $a } nach{ $b }
n-moved-warm = der Rücken gab beim Aufwärmen nach
n-cut = { $a } von { $b } Sätzen, und die gut
n-in-set = {" "}in Satz { $a }

## Days.

## What a warning says.
w-no-hole = kein Loch ({ $a }) bringt die Stange auf { $b } mm; nimm Blöcke oder ein anderes Rack
w-straight-bar = eine gerade Stange liegt auf den Bolzen und kann krumm werden; hol die ausgemusterte
w-overlap = Überlappung unter den { $a } mm des Coachs; Bolzen tiefer setzen
w-not-loadable = { $a } geht hier nicht; gezeigt wird das Nächste
w-too-rough = { $a } nur geschätzt, auf { $b } mm genau, zu grob für Löcher alle { $c } mm; erst messen lassen, dann Bolzen setzen
w-at = bei { $a }
w-from-to = von { $a } bis { $b }
w-low-plates = { $a } liegt die Stange auf kleinen Scheiben { $b } zu tief; so viel unterlegen
w-estimated = { $a } aus der Größe geschätzt, auf { $b } mm genau; messen
w-estimated-doubtful = { $a } aus der Größe geschätzt, auf { $b } mm genau, vielleicht stimmt das nächste Loch; messen
w-pins-rated = { $a } ist mehr, als die Bolzen tragen dürfen ({ $b }); nimm weniger
w-rack-rated = { $a } ist mehr, als das Rack tragen darf ({ $b }); nimm weniger
w-bar-rated = { $a } ist mehr, als die Stange tragen darf ({ $b }); nimm eine andere
w-set-at-rest = nach den Zahlen des Herstellers kann diese Last die Stange auf den Bolzen verbiegen ({ $a } % der Streckgrenze); nimm eine andere; nur ein Anhalt, keine Zusage
w-set-dropped = nach den Zahlen des Herstellers verbiegt ein Fall von { $a } mm auf die Bolzen diese Stange; absetzen; nur ein Anhalt, keine Zusage
w-not-measured = { $a } nicht gemessen; erst messen lassen, dann Bolzen setzen
