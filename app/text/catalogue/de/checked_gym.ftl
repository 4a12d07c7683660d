## Tables, as they stand in a sentence that begins with them.
checked-the-gym-s-file = die Datei des Studios
checked-the-lifters-file = die Datei der Leute
checked-the-coach-s-file = die Datei des Coachs
checked-the-meet-s-file = die Datei des Wettkampfs
checked-the-kiosk-s-file = die Datei des Kiosks
checked-a-rack = ein Rack
checked-a-calibration = eine Vermessung
checked-a-bar = eine Stange
checked-a-plate-set = ein Scheibensatz
checked-a-weighed-plate = eine gewogene Scheibe
checked-a-plate = eine Scheibe
checked-a-lift = eine Übung
checked-a-pattern = ein Aufwärmmuster
checked-a-step = eine Stufe
checked-a-place-in-the-queue = ein Platz in der Folge
checked-a-day = ein Tag
checked-a-task = eine Aufgabe
checked-a-lift-to-do = eine Übung der Aufgabe
checked-a-rule = eine Regel
checked-a-split = eine Teilung
checked-a-flight = eine Gruppe
checked-a-lifter-of-a-flight = jemand aus einer Gruppe
checked-a-lifter = eine Person
checked-a-set-of-landmarks = ein Satz Marken

## Things by name.
checked-plate-set = Scheibensatz
checked-rack = Rack
checked-bar = Stange
checked-warm-up-pattern = Aufwärmmuster
checked-lift = Übung
checked-lifter = Person
checked-programme = Programm
checked-day = Tag
checked-add-at-least-one-as = füg mindestens eins hinzu, als [[{ $a }]]
checked-no = nichts davon: { $a }
checked-give-each-a-name-of = { $a }: gib jedem Eintrag einen eigenen Namen
checked-a-name-that-row-has = ein Name, den Zeile { $a } schon hat
checked-no-of-that-name = { $a } mit diesem Namen unbekannt
checked-write-the-name-of-a = schreib einen Namen, den das Studio kennt ({ $a })

## TOML.
checked-split-it-or-shorten-it = teil oder kürze sie
checked-a-character-that-is-not = ein Zeichen, das kein UTF-8-Text ist
checked-save-the-file-as-utf = speichere die Datei als UTF-8
checked-see-that-keys-quotes-and = sieh nach, ob Schlüssel, Anführungszeichen und Klammern vollständig sind
checked-write-there = schreib dort { $a }
checked-broken-toml = kaputtes TOML: { $a }
checked-a-key-that-does-not = ein Schlüssel, den { $a } nicht hat
checked-write-as = { $a } wird { $b } geschrieben
checked-without = { $a } ohne { $b }
checked-a-whole-number = eine ganze Zahl
checked-true-or-false = true oder false
checked-a-list = eine Liste
checked-a-table = eine Tabelle
checked-a-text-in-quotes = ein Text in Anführungszeichen
checked-not = gebraucht wird { $a }
checked-a-text = ein Text, { $a }
checked-a-list-of = eine Liste, { $a }
checked-a-table-of = eine Tabelle, { $a }
checked-entries-under-more-than-the = { $a } Einträge unter { $b }, mehr als höchstens { $c }
checked-leave-some-out = lass einige weg
checked-leave-it-out = lass es weg
checked-leave-one-of-them-out = lass eins davon weg
checked-add = füg { $a } hinzu
checked-write-key-as-value = schreib { $a } = { $b }

## Quantities.
checked-a-mass = ein Gewicht
checked-a-length = eine Länge
checked-a-stress = eine Spannung
checked-write-such-as = gebraucht wird { $a }, etwa { $b }
checked-without-a-unit = { $a } ohne Einheit
checked-in-a-unit-not-known = { $a } in einer Einheit, die hier unbekannt ist
checked-that-cannot-be-kept-exactly = { $a }, nicht genau zu speichern
checked-write-fewer-decimals-or-a = schreib weniger Stellen, oder einen Bruch von Halben bis Vierundsechzigsteln
checked-larger-than-anything-in-a = { $a }, größer als alles in einem Studio
checked-less-than-the-least = weniger als mindestens { $a }
checked-more-than-the-most = mehr als höchstens { $a }
checked-write-from-to = schreib { $a } bis { $b }
checked-write-lb-or-kg = schreib "{ $a } lb" oder "{ $b } kg"
checked-write-mm-or-in = schreib "{ $a } mm" oder "{ $b } in"
checked-write-mpa-gpa-or-psi = schreib "{ $a } MPa", "{ $b } GPa" oder "{ $c } psi"
checked-write-a-whole-number-from = schreib eine ganze Zahl von { $a } bis { $b }
checked-not-a-whole-number = keine ganze Zahl
checked-write-seconds-as-180-or = schreib Sekunden wie "180" oder "180 s", oder Minuten wie "3 min" oder "3:00"
checked-write-min-or-seconds-from = schreib "{ $a } min", oder Sekunden ab 15
checked-a-rest-of-s = eine Pause von { $a } s
checked-not-whole-seconds = keine ganzen Sekunden
checked-write-a-percentage-such-as = schreib Prozent wie "80 %"
checked-a-share-without = ein Anteil ohne %
checked-a-percentage-with-more-than = Prozent mit mehr als zwei Nachkommastellen
checked-not-a-percentage = keine Prozentzahl
checked-a-percentage-far-too-large = viel zu viele Prozent

## Racks, bars, plates.
checked-add-a-straight-bar-for = füg für Übungen vom Boden eine gerade Stange hinzu bei { $a }
checked-no-bar-that-serves-the = keine Stange für das Rack { $a }
checked-no-straight-bar-that-serves = keine gerade Stange für das Rack { $a }
checked-a-hole-of-less-than = ein Loch von { $a }, weniger als sein Bolzen von { $b }
checked-measure-both-again-a-hole = miss beide noch einmal; ein Loch ist mindestens so weit wie sein Bolzen
checked-across-not-less-than-the = { $a } weit, nicht weniger als der Abstand von { $b }
checked-write-the-spacing-from-centre = schreib den Abstand von Mitte zu Mitte
checked-a-bar-height-of-with = eine Stangenhöhe von { $a } mit den Bolzen in Loch { $b }, dessen Mitte bei { $c } liegt
checked-measure-again-floor-to-the = miss noch einmal, vom Boden zur Mitte der Stange
checked-write-one-line-for-each = schreib eine Zeile für jede Sorte Scheiben
checked-no-plate-that-can-be = keine Scheibe, die zu gebrauchen ist
checked-the-plate-a-second-time = die Scheibe { $a } ein zweites Mal
checked-write-it-once-with-all = schreib sie einmal, mit all ihren Paaren
checked-the-mark-a-second-time = das Zeichen "{ $a }" ein zweites Mal
checked-give-every-plate-its-own = gib jeder Scheibe ihr eigenes Zeichen
checked-a-label-of-that-the = eine Aufschrift { $a }, die der Satz nicht hat
checked-write-the-mass-of-one = schreib das Gewicht einer seiner Scheiben
checked-for-a-plate-of = { $a } für eine Scheibe von { $b }
checked-weigh-it-again-or-keep = wieg sie noch einmal, oder lass sie von der Stange
checked-more-than-plates-of = mehr als { $a } Scheiben von { $b }
checked-write-the-sixteen-that-are = schreib die sechzehn, die gebraucht werden

## Lifts and lifters.
checked-write-the-other-lift-of = schreib die andere der beiden Übungen, oder lass es weg
checked-the-lift-itself-as-its = die Übung als ihr eigenes Gegenstück
checked-for-a-lift-from-hooks = "{ $a }" für eine Übung aus den Haken, die kein Zug ist
checked-write-start-floor-start-pins = schreib start = "floor", start = "pins" oder start = "hooks"
checked-a-new-lift-without-start = eine neue Übung ohne "start"
checked-for-a-lift-from = "{ $a }" für eine Übung mit start = "{ $b }"
checked-leave-it-out-or-write = lass es weg, oder schreib start = "pins"
checked-write-landmark-tibial-tuberosity-or = schreib landmark = "tibial tuberosity" oder eine andere
checked-a-lift-from-pins-without = eine Übung von den Bolzen ohne "landmark"
checked-write-rung-3-100-kg = schreib "rung 3", "100 kg", "225 lb" oder "never"
checked-not-a-rung-from-1 = keine Sprosse von 1 bis 20
checked-neither-a-rung-nor-a = weder Sprosse noch Last noch never
checked-a-at-not-above-the = { $a } bei { $b }, nicht über { $c } bei { $d }
checked-measure-both-again-to-be = miss beide noch einmal, um sicher zu sein
checked-from-the-tibial-tuberosity-to = { $a } von der Schienbeinhöckermitte zum oberen Rand der Kniescheibe
checked-measure-both-again-to-be-sure = miss beide noch einmal, um sicher zu sein; üblich sind 75 bis 100 mm
checked-write-hole-14 = schreib "hole 14"
checked-not-a-hole-from-1 = kein Loch von 1 bis 500
checked-a-second-hole-for = ein zweites Loch für { $a }
checked-a-training-max = ein Trainingsmaximum
checked-a-second-training-max-of = ein zweites Trainingsmaximum von { $a } ab einem Tag
checked-keep-one-of-them-or = behalt eins davon, oder schreib ein anderes "since"
checked-a-second-best-for = eine zweite Bestleistung für { $a }

## Patterns, programmes, rules.
checked-write-one-share-reps-for = schreib ein {"{"} share, reps {"}"} für jeden Aufwärmsatz
checked-no-step-that-can-be = keine Stufe, die zu gebrauchen ist
checked-after = { $a } % nach { $b } %
checked-let-each-step-be-heavier = jede Stufe muss schwerer sein als die davor
checked-add-programme-day-tables = füg [[programme.day]] hinzu
checked-a-new-programme-without-day = ein neues Programm ohne "day"
checked-add-programme-day-tables-or = füg [[programme.day]] hinzu, oder lass es weg
checked-no-day = kein Tag
checked-write-one-for-each-day = schreib einen für jeden Tag des Programms, oder für keinen
checked-a-day-without-weekday-among = ein Tag ohne "weekday" neben anderen mit einem
checked-for-a-second-day-of-the = { $a } für einen zweiten Tag des Programms
checked-give-each-day-its-own = gib jedem Tag einen eigenen Wochentag
checked-apart-days-beside-days-of = "apart_days" neben Wochentagen
checked-who-is-in-already = { $a }, schon dabei in { $b }
checked-name-each-lifter-once = nenn jede Person einmal
checked-write-at-least-one-lift = schreib mindestens eine Übung
checked-no-lift = keine Übung
checked-write-at-least-one = schreib mindestens eine
checked-no-task = keine Aufgabe
checked-let-a-reset-take-off = ein Rücksetzen muss mindestens so viel wegnehmen wie ein Abstieg
checked-a-reset-that-takes-off = ein Rücksetzen, das weniger wegnimmt als ein Abstieg

## Meets.
checked-write-one-flight-for-each = schreib ein [[flight]] für jede eurer Gruppen
checked-no-flight-that-can-be = keine Gruppe, die zu gebrauchen ist
checked-s-for-less-than-the = { $a } s für "{ $b }", weniger als die { $c } s von "{ $d }_least"
checked-write-as-long-as-least = schreib "{ $a }" so lang wie "{ $b }_least", oder länger
checked-write-one-flight-lifter-for = schreib ein [[flight.lifter]] für jeden von euch
checked-a-flight-with-none-of = eine Gruppe ohne jemanden von euch
checked-a-lifter-of-another-gym = jemand von einem anderen Verein
checked-with-before-with = { $a } mit { $b } vor { $c } mit { $d }
checked-the-lighter-goes-first-then = die kleinere Last ist zuerst dran, dann das kleinere Los: berichtige eine Eröffnung, ein Los oder die Reihenfolge
checked-lot-for-which-is-the = Los { $a } für { $b }, das auch { $c } hat
checked-ask-the-table-until-then = frag am Tisch; bis dahin ist zuerst dran, wer zuerst dran war
checked-for-whose-best-is = { $a } für { $b }, mit einer Bestleistung von { $c }
checked-an-opener-is-what-they = eine Eröffnung gelingt auch an einem schlechten Tag: frag den Trainer
checked-write-hours-and-minutes-as = schreib Stunden und Minuten als "10:30"
checked-not-a-time-of-day = keine Uhrzeit
checked-a-second-time-in-this = { $a } ein zweites Mal in dieser Gruppe
checked-attempts-before-where-order-has = { $a } Versuche davor, wo "order" { $b } hat
checked-mend-the-order-or-leave = berichtige die Reihenfolge, oder lass eins von beiden weg
checked-without-a-place-in-the = { $a } ohne Platz in der Reihenfolge
checked-write-before-24-or-the = schreib before = 24, oder den Namen in "order" der Gruppe
checked-for-which-these-plates-do = { $a } für { $b }, was diese Scheiben nicht ergeben
checked-ask-for-what-they-make = melde, was sie ergeben, etwa { $a }
checked-for = { $a } für { $b }: { $c }
checked-write-another-opener-or-other = schreib eine andere Eröffnung, oder andere Scheiben

## The kiosk.
checked-write-numbers-such-as-127 = schreib Zahlen wie "127.0.0.1" oder "192.168.1.20"
checked-not-an-address-in-numbers = keine Adresse aus Zahlen
checked-an-address-of-all-interfaces = eine Adresse aller Netze oder keines
checked-write-the-address-of-the = schreib die Adresse des einen Netzes, das die Seite sehen darf
checked-write-both-certificate-and-key = schreib "certificate" und "key", oder keins von beiden
checked-a-certificate-and-its-key = Zertifikat und Schlüssel, von denen eins fehlt
checked-name-a-rack-or-leave = nenn ein Rack, oder lass "racks" weg, um alle zu zeigen
checked-no-rack-to-show = kein Rack zu zeigen
checked-write-the-whole-path-such = schreib den ganzen Pfad, wie "/media/pinladder"
checked-not-an-absolute-path = kein vollständiger Pfad
checked-a-path-that-goes-back = ein Pfad, der zurückführt
checked-write-from-1-to-40 = schreib 1 bis 40 Buchstaben, Ziffern und Bindestriche, wie "north-rack"
checked-not-a-name-for-a = kein Name für einen Rechner
checked-not-a-name-of-a = kein Rechnername
checked-write-the-name-alone-such = schreib nur den Namen, etwa "rack.gym.example"
checked-not-the-address-of-a-hub = keine Adresse eines Hubs
checked-write-a-hub-such-as = schreib postgresql://KIOSK@HOST/DATENBANK, wie "postgresql://north@192.168.1.5/pinladder"
checked-a-hub-with-a-password = die Adresse eines Hubs mit einem Passwort darin
checked-write-the-password-into = lass es weg und schreib es in hub.password neben dieser Datei; diese Einstellungen bleiben im Journal
