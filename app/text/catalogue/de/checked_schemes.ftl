## Whom, what and when.
checked-a-row-that-says-otherwise = eine Zeile, die etwas anderes sagt als die Überschrift darüber
checked-keep-one-of-the-two-words = behalte eins von beiden
checked-on-what-is-headed = { $a } auf einem Blatt für { $b }
checked-move-the-row-to-a = gib der Zeile ein eigenes Blatt, oder benenne das Blatt um
checked-write-the-date = schreib das Datum
checked-a-week-without-a-day = eine Woche ohne Wochentag
checked-write-the-weekday-or-the = schreib den Wochentag oder das Datum
checked-a-weekday-without-the-monday = ein Wochentag ohne den Montag, an dem Woche 1 beginnt
checked-write-first-monday-2026-12 = schreib "erster Montag: 2026-12-07" über den Plan, gib --monday 2026-12-07 an, oder schreib die Daten
checked-which-is-no = { $a }, was kein { $b } ist
checked-write-the-date-or-the = schreib das Datum oder den Wochentag, der gemeint ist
checked-two-first-mondays-and = zwei erste Montage, { $a } und { $b }
checked-monday = Montag
checked-tuesday = Dienstag
checked-wednesday = Mittwoch
checked-thursday = Donnerstag
checked-friday = Freitag
checked-saturday = Samstag
checked-sunday = Sonntag
checked-write-a-day-such-as = schreib einen Tag wie "Montag"
checked-not-a-day-of-the = kein Wochentag
checked-no-lifter = niemand, für den es gilt
checked-name-the-sheet-after-the = benenne das Blatt nach der Person, oder füg die Spalte "Heber" hinzu
checked-write-the-lift-in-front = schreib die Übung davor, oder füg die Spalte "Übung" hinzu
checked-a-first-day-that-is = ein erster Tag, der kein Montag ist
checked-write-the-monday-of-week = schreib den Montag von Woche 1, etwa { $a }
checked-write-its-weekday-or-its = schreib den Wochentag oder das Datum
checked-a-day-by-its-number = ein Tag mit einer Nummer
checked-write-the-monday-of-the-week = schreib den Montag der Woche
checked-a-week-that-begins-on = eine Woche, die am Sonntag beginnt
checked-a-week-of-the-calendar = eine Kalenderwoche ohne Jahr
checked-write-the-year-with-it = schreib das Jahr dazu, wie "KW 49/2026", oder die Daten
checked-a-weekday-that-is-not = ein Wochentag, der nicht zum Datum gehört
checked-a-day-without-a-year = ein Tag ohne Jahr
checked-a-short-name-that-has = ein Kurzname, den { $a } schon hat
checked-give-it-to-one-of = gib ihn einem von beiden

## Headers and lines beside the plan.
checked-sets-and-reps-under-a = Sätze und Wiederholungen unter einer unbekannten Überschrift, { $a }
checked-write-a-week-a-day = schreib eine Woche, einen Tag oder einen Namen in die Überschrift, oder "Notiz"
checked-a-first-row-that-names-one = eine erste Zeile, die nur eine Spalte nennt
checked-show-it-in-the-spreadsheet = blende es ein, wenn es zum Plan gehört
checked-column-hidden-left-out = Spalte { $a } ausgeblendet, ausgelassen
checked-take-the-line-away-if = nimm den Strich weg, wenn es zum Plan gehört
checked-a-hidden-row-left-out = eine ausgeblendete Zeile, ausgelassen
checked-a-row-struck-through-left = eine durchgestrichene Zeile, ausgelassen
checked-text-struck-through-left-out = durchgestrichener Text, ausgelassen
checked-a-line-of-words-left = eine Zeile aus Worten, ausgelassen
checked-put-it-under-note-if = schreib es unter "Notiz", wenn es jemand lesen soll

## Cells.
checked-a-day-which-a-spreadsheet = ein Tag, wie ihn eine Tabelle aus "3-5" macht
checked-a-time-which-a-spreadsheet = eine Zeit, wie sie eine Tabelle aus "3:00" macht
checked-format-the-cell-as-text = formatiere die Zelle als Text und schreib es neu
checked-which-could-be-or-a = was { $a } oder ein Anteil sein kann
checked-write-or-the-load-with = schreib { $a }, oder die Last mit Einheit
checked-more-than-letters-in-one = mehr als { $a } Zeichen in einer Zelle
checked-write-a-row-for-each-lift = schreib eine Zeile je Übung, und Bemerkungen in die Notiz
checked-more-than-set-groups = mehr als { $a } Satzgruppen
checked-split-it-over-days = verteil es auf mehrere Tage
checked-write-the-top-set-before = schreib den Topsatz davor, wie "1x5 @ RPE 8, 3x5 @ 90 % of top set"
checked-a-share-of-today-s = ein Anteil vom heutigen Topsatz ohne einen Topsatz davor
checked-a-load-without-a-unit = eine Last ohne Einheit
checked-write-the-unit = schreib die Einheit
checked-too-many-numbers-with-a = zu viele Zahlen mit Malzeichen dazwischen
checked-write-sets-x-reps-load = schreib Sätze x Wiederholungen @ Last, wie "5x3 @ 140 kg"
checked-write-or = schreib { $a } oder { $b }
checked-one-set-of-reps-or = ein Satz mit { $a } Wiederholungen oder { $b } Sätze
checked-which-can-mean = was heißen kann: { $a }
checked-which-can-mean-so-many = was so viele Sätze oder so viel Last heißen kann
checked-in-which-sets-and-reps = worin Sätze und Wiederholungen vertauscht sein können
checked-not-sets-x-reps = nicht Sätze x Wiederholungen
checked-write-1-to-sets-x = schreib 1 bis { $a } Sätze x 1 bis { $b } Wiederholungen, wie "5x3 @ 140 kg"
checked-sets-where-the-column-beside =
    { $a ->
        [one] 1 Satz, wo die Spalte daneben { $b } sagt
       *[other] { $a } Sätze, wo die Spalte daneben { $b } sagt
    }
checked-write-sets-x-reps-as = schreib Sätze x Wiederholungen, wie { $a }
checked-an-effort-without-its-number = eine Anstrengung ohne ihre Zahl
checked-no-reps = keine Wiederholungen
checked-write-with-your-sets-and = schreib { $a } mit deinen Sätzen und Wiederholungen
checked-a-load-without-sets-and = eine Last ohne Sätze und Wiederholungen
checked-more-numbers-than-sets-reps = mehr Zahlen als Sätze, Wiederholungen und eine Last ({ $a })
checked-write-it-as-5x3-140 = schreib es wie "5x3 @ 140 kg", und Bemerkungen in Klammern oder in die Notiz
checked-sets-reps-for-loads-for = Sätze: { $a }, Wiederholungen für { $b }, Lasten für { $c }
checked-write-the-sets-alone-here = schreib hier nur die Sätze, und die Wiederholungen unter "Wdh"
checked-sets-and-reps-in-one = Sätze und Wiederholungen in einer Zelle
checked-write-as-many-of-each = schreib von jedem so viele wie Sätze, oder eins für alle
checked-write-where-a-share-is = schreib { $a }, wenn ein Anteil gemeint ist
checked-an-effort-or-a-load = eine Anstrengung oder eine Last unter 1
checked-write-the-step-as-a = schreib den Schritt als Gewicht, wie "+2.5 kg"
checked-a-step-in-percent = ein Schritt in Prozent
checked-a-step-without-a-unit = ein Schritt ohne Einheit
checked-write-a-range-rising-as = schreib eine Spanne steigend wie "3-5", und Satz für Satz wie "5/3/1"
checked-reps-that-do-not-rise = Wiederholungen, die nicht steigen
checked-write-one-load-as-140 = schreib eine Last, wie "140 kg"
checked-a-load-from-one-to = eine Last von bis
checked-a-share-of-which-is = ein Anteil von { $a }, was hier nicht bekannt ist
checked-write-the-share-of-best = schreib den Anteil von "best", "training max" oder "top set"
checked-write-one-number-of-reps = schreib eine Zahl von Reserven von 0 bis 9, wie "RIR 2"
checked-write-one-rpe-from-1 = schreib einen RPE von 1 bis 10 in Halben, wie "RPE 8.5"
checked-not-an-effort = keine Anstrengung
checked-an-effort-from-one-to = eine Anstrengung von bis
checked-an-effort-that-no-scale = eine Anstrengung, die auf keiner Skala steht
checked-write-it-once-for-each = schreib es einmal je Satzgruppe
checked-two-loads-for-the-same = zwei Lasten für dieselben Sätze
checked-two-efforts-for-the-same = zwei Anstrengungen für dieselben Sätze
checked-write-the-load-alone-as = schreib nur die Last, wie "140 kg", "80 %", "+2.5 kg" oder "RPE 8"
checked-more-than-a-load = mehr als eine Last
checked-not-understood-from-on = ab { $a } nicht verstanden
checked-a-load-of-one-side = eine Last für eine Seite
checked-put-a-comma-between-set = setz ein Komma zwischen Satzgruppen
checked-two-set-groups-in-a = zwei Satzgruppen hintereinander
checked-a-time-that-nobody-has = eine Zeit, die niemand Pause nennt
checked-rising-from-1-row-by = { $a } steigt Zeile für Zeile von 1 an; das kann die Sätze nummerieren oder zählen
checked-write-alike-sets-in-one = schreib gleiche Sätze in eine Zeile, wie "3x5 @ 140 kg", und 1 in jede Zeile, wo sie sich unterscheiden
checked-a-warm-up-the-ladder = ein Aufwärmsatz: die macht die Leiter aus der Arbeitslast
checked-take-the-row-out-or = nimm die Zeile heraus, oder nenn unter "ladder" ein Aufwärmmuster
checked-a-drop-that-could-be = ein Drop, der um { $a } oder auf { $a } meinen kann
checked-write-for-so-much-less = schreib { $a } für so viel weniger als im Topsatz, oder { $b }
checked-the-same-as-what-is = dasselbe wie was, steht nicht da
checked-write-for-the-load-of = schreib { $a } für die Last vom letzten Mal, oder die Last
checked-write-a-pause-in-each = schreib ein Halten in jeder Wiederholung unter "hold", und hier eine Pause von 15 s bis 30 min

## Days of a month, shares of what.
checked-a-day-that-the-month = ein Tag, den { $a } nicht hat
checked-taken-as-a-share-of = { $a }, als Anteil der Bestleistung gelesen
checked-write-of-top-set-where = schreib "{ $a } of top set", wenn die Sätze davor gemeint sind, sonst "{ $a } of best"

## What the rack cannot show yet.
checked-read-but-the-rack-cannot = gelesen, aber das Rack kann es noch nicht zeigen; schreib Sätze x Wiederholungen @ eine Last oder einen Anteil der Bestleistung
checked-a-row-without-sets = eine Zeile ohne Sätze
checked-a-share-of-a-top = ein Anteil eines Topsatzes, vor dem nichts steht
checked-sets-without-a-load = Sätze ohne Last
checked-a-lift-and-more = { $a } und weitere Wörter
checked-write-the-lift-and-how = schreib hier { $a } und wie zu den Sätzen, etwa "3x5 @ 140 kg pause 2 s", oder gib dem Studio eine Übung dieses Namens
