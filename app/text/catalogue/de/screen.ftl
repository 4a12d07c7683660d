## Everywhere; the first ones are written by the window itself, in these words.
all-lifters = alle
switch-to = zu { $lifter }
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
of = { $n } von { $all }
hole = Loch { $hole }
from-the-floor = vom Boden
from-the-hooks = aus den Haken
hooks-hole = Haken in Loch { $hole }
from-hooks-hole = aus den Haken in Loch { $hole }
from-hooks-any = aus den Haken, so hoch wie es dir passt
estimated-measure = { $start }; geschätzt, messen
undo = rückgängig
back = zurück
cannot-start = Der Kiosk kann nicht starten
tried-again = Es wird alle paar Sekunden wieder versucht.
belt = Gürtel
straps = Zughilfen
from-load = { $gear } ab { $load }
double-overhand = Obergriff
hook-grip = Klemmgriff
double-overhand-grip = Obergriff mit beiden Händen
reps =
    { $n ->
        [one] 1 Wdh.
       *[other] { $n } Wdh.
    }
sets-of =
    { $n ->
        [one] 1 Satz { $set }
       *[other] { $n } Sätze { $set }
    }
no-mat = keine Matte
mats =
    { $n ->
        [one] 1 Matte, { $mm } mm
       *[other] { $n } Matten, { $mm } mm
    }
back-held = Rücken hielt
back-moved = Rücken gab nach
back-moved-at-rep = Rücken gab bei Wdh. { $rep } nach

## Large, in lines that read well.
stopped-at-rep =
    Rücken gab nach:
    Wdh. { $rep }
back-moved-at = Rücken bei { $rep }
warm-up-of = Aufwärmsatz { $n } von { $all }
work-set = Arbeitssatz
work-set-of = Arbeitssatz { $n } von { $all }

## Heights.
bar-height = Stange { $mm } mm über den Füßen, { $how }
on-the-mark = genau richtig
under-the-mark = { $mm } mm unter der Marke
over-the-mark = { $mm } mm über der Marke
shares = { $length } gemeinsam mit: { $lift }
leaves-gap = Lücke von { $length } zu: { $lift }
mm-in = { $mm } mm ({ $inches } Zoll)
collars = Verschlüsse { $mass }

## Loading.
empty-bar = leere Stange
leave-bar = Stange so lassen
reps-done = { $n } geschafft

## All lifters.
no-lifters = noch niemand da: trag die Leute in lifters.toml im Datenordner ein
floor = Übersicht
rest-left = Pause { $time }
done-of = { $n } von { $all } fertig
nothing-today = heute nichts
measure-first = erst messen

## The end.
nothing-done = nichts gemacht
next = weiter: { $what }
next-lifter = nächster
not-done = nicht gemacht
sets =
    { $n ->
        [one] 1 Satz
       *[other] { $n } Sätze
    }
reps-in-all = zusammen { $n } Wdh.
minutes =
    { $n ->
        [one] 1 Minute
       *[other] { $n } Minuten
    }
own-record = deine Daten aufs Telefon: öffnet einmal, zehn Minuten lang

## Pads.
how-many-reps = Wie viele Wdh. mit { $load }?
which-rep = Bei welcher Wdh. gab der Rücken nach?
end-lift = Übung beenden
did-it = trotzdem gemacht
did-all = trotzdem alle { $n } gemacht

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
after = nach { $set }
go-now = jetzt heben

## Set-up.
start = Start
back-to-bar = zurück zur Stange
not-planned = für heute ist nichts geplant; frag den Coach
not-a-lifter = { $lifter } steht nicht in lifters.toml; frag den Coach
height-unknown = auf den Bolzen, Höhe unbekannt

## The back moved.
set-of = { $set }, { $n } von { $all }
moved-advice = Gibt der Rücken nach, ist Schluss mit Steigern. Bei Schmerz aufhören: zum Arzt.
go-on = weiter, Coach ist dafür

## No sheet.
missing = { $what } „{ $name }“ gibt es nicht; trag es in die Dateien des Studios ein
nothing-until = heute nichts; { $lift } am { $date }
goes-on-from = heute nichts; { $programme } geht weiter ab { $date }
no-training-max = kein Trainingsmaximum für diesen Tag; schreib es in lifters.toml oder die Last als Gewicht
no-best = keine Bestleistung bekannt; schreib die Last als Gewicht
no-ladder = { $why }; frag den Coach nach einer anderen Last

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
by-hour-detail = hell von { $from } bis { $to } Uhr
about = über Pinladder
about-value = Version und Lizenzen
about-what = Pinladder { $version }: was das Rack heute zeigen muss, und ein Verzeichnis dessen, was gehoben wurde.
about-terms = Freie Software unter der GNU General Public License, nur Version 3, ohne jede Gewähr. Quelltext und ganzer Lizenztext liegen bei.
about-parts = Gezeichnet mit Slint unter derselben Lizenz; gesetzt in Roboto Condensed, deren Lizenz bei der Schrift liegt. Die übrigen Bibliotheken stehen in Cargo.lock.
about-care = Schwere Stangen verletzen. Zahlen zum Stahl sind ein Anhalt, keine Zusage. Was Coach, Arzt und die Regeln am Ort sagen, geht vor.
lan-opens = Mit einem anderen Gerät in diesem Netz zu öffnen: { $address }
lan-or = { $first } oder { $second }
lan-print = Bevor du dem Zertifikat traust, sieh nach, ob der Browser denselben SHA-256 zeigt: { $print }
lan-root = Damit ein Telefon ihm auf Dauer traut, lade von dort root.crt und sieh nach, ob es diesen SHA-256 hat: { $print }
lan-readable = Ohne TLS kann jeder in diesem Netz den Code des Coachs mitlesen; im Coach-Bereich lässt es sich einschalten.

## History.
no-sessions = noch keine Arbeitssätze
a-best = Bestwert
moved-warm = beim Aufwärmen
sets-done-of =
    { $all ->
        [one] { $n } von 1 Satz
       *[other] { $n } von { $all } Sätzen
    }

## Next time.
next-time = nächstes Mal: { $due }
n-up = { $load }, { $by } mehr
n-again = wieder { $load }
n-least = wieder { $load }, weniger gibt es nicht
n-down = { $load }, { $by } weniger
n-because = { $change }: { $why }
n-back = { $went }, auf dem Weg zurück
n-no-step = { $went }, aber die nächste Last, die hier zu laden ist, liegt zu hoch
n-light = { $went }, an einem leichteren Tag als fällig
n-try = { $went }, Versuch { $n } von { $all }
n-too-much = { $went }, zu früh, um { $load } noch einmal zu versuchen
n-stuck = { $went }, wieder ohne neue Bestleistung; frag den Coach
x-not-hurt = { $lifter } ist nicht als verletzt eingetragen; es gibt nichts aufzuheben
x-ill-backwards = { $to } liegt vor { $from }, an dem es anfing; schreib erst von, dann bis
no-hurt = verletzt: nichts ist fällig, bis der Coach entscheidet; hör auf und geh zum Arzt
no-untried = { $load } sieht falsch aus: nichts ist dafür belegt; frag den Coach
no-many-reps = { $n } Arbeitswiederholungen mit { $load } sehen falsch aus; frag den Coach
no-looks-wrong = { $load } sieht falsch aus: belegt sind { $supported }; frag den Coach
due-then-plan = fällig { $due }, Plan { $plan }
plan-then-due = Plan { $plan }, fällig { $due }
n-hard = { $went }, schwerer als verlangt
n-range = { $went }, noch nicht in jedem Satz das obere Ende
n-waiting = { $went }; der Coach entscheidet
n-away =
    { $days ->
        [one] 1 Tag länger weg als geplant
       *[other] { $days } Tage länger weg als geplant
    }
n-anew =
    { $days ->
        [one] 1 Tag länger weg als geplant; fang mit dem Coach neu an
       *[other] { $days } Tage länger weg als geplant; fang mit dem Coach neu an
    }
n-ill =
    { $days ->
        [one] krank, 1 Tag zählt als Pause
       *[other] krank, { $days } Tage zählen als Pause
    }
n-family = der Rücken gab seither bei einem anderen Zug nach
n-over = ein Zug nach dem anderen ging schief; frag den Coach
n-long-ago = lange her, während andere Züge weitergingen
n-week = mehr steigt es in einer Woche nicht
n-hurt = verletzt: nichts, bis der Coach entscheidet; hör auf und geh zum Arzt
n-nothing = nichts fällig: { $why }
n-coach = vom Coach festgelegt
n-coach-said = { $load }, vom Coach: { $note }
v-raise = mehr
v-repeat = gleich
v-drop = etwas weniger
v-reset = deutlich weniger
v-ease = sachte
o-well = alle Wdh., Rücken hielt
o-moved = Rücken gab bei Wdh. { $rep }{ $where } nach
o-moved-warm = Rücken gab beim Aufwärmen nach
o-cut =
    { $all ->
        [one] { $n } von 1 Satz, Rücken hielt
       *[other] { $n } von { $all } Sätzen, Rücken hielt
    }
next-session = dann

## Choosing the load on the day. The caution: common practice, no source.
other-load = andere Last
the-choice = die Wahl
the-plan = laut Plan
the-due = fällig
too-early = zu früh
over-due = mehr als fällig
work-set-reps = Arbeitssatz, { $reps }
work-sets-of =
    { $n ->
        [one] 1 Arbeitssatz zu { $reps }
       *[other] { $n } Arbeitssätze zu { $reps }
    }
settle-caution = mehr nur, wenn der Rücken bei jedem Aufwärmsatz hielt; der Coach entscheidet
keep-load = { $load } nehmen
first-time = das erste Mal
last-time = zuletzt { $load }, { $went }, am { $date }
as-last-time = wie zuletzt
more-than-last = { $by } mehr als zuletzt
less-than-last = { $by } weniger als zuletzt
n-well = alle Wdh., der Rücken hielt
n-short = { $n } von { $all } Wdh.{ $where }
n-moved = der Rücken gab bei Wdh. { $rep } nach{ $where }
n-moved-warm = der Rücken gab beim Aufwärmen nach
n-cut =
    { $all ->
        [one] { $n } von 1 Satz, Rücken hielt
       *[other] { $n } von { $all } Sätzen, Rücken hielt
    }
n-in-set = {" "}in Satz { $set }

## What a warning says.
w-no-hole = kein Loch ({ $rack }) bringt die Stange auf { $mm } mm; nimm Blöcke oder ein anderes Rack
w-straight-bar = eine gerade Stange liegt auf den Bolzen und kann krumm werden; hol die ausgemusterte
w-overlap = Überlappung unter den { $least } mm des Coachs; Bolzen tiefer setzen
w-not-loadable = { $load } geht hier nicht; gezeigt wird das Nächste
w-too-rough = { $landmark } nur geschätzt, auf { $spread } mm genau, zu grob für Löcher alle { $spacing } mm; erst messen lassen, dann Bolzen setzen
w-at = bei { $load }
w-from-to = von { $from } bis { $to }
w-low-plates = { $loads } liegt die Stange auf kleinen Scheiben { $raise } zu tief; so viel unterlegen
w-estimated = { $landmark } aus der Größe geschätzt, auf { $spread } mm genau; messen
w-estimated-doubtful = { $landmark } aus der Größe geschätzt, auf { $spread } mm genau, vielleicht stimmt das nächste Loch; messen
w-pins-rated = { $load } ist mehr, als die Bolzen tragen dürfen ({ $rated }); nimm weniger
w-rack-rated = { $load } ist mehr, als das Rack tragen darf ({ $rated }); nimm weniger
w-bar-rated = { $load } ist mehr, als die Stange tragen darf ({ $rated }); nimm eine andere
w-set-at-rest = nach den Zahlen des Herstellers kann diese Last die Stange auf den Bolzen verbiegen ({ $share } % der Streckgrenze); nimm eine andere; nur ein Anhalt, keine Zusage
w-set-dropped = nach den Zahlen des Herstellers verbiegt ein Fall von { $mm } mm auf die Bolzen diese Stange; absetzen; nur ein Anhalt, keine Zusage
w-not-measured = { $landmark } nicht gemessen; erst messen lassen, dann Bolzen setzen
