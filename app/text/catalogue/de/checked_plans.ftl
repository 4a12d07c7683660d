## Any file and cell.
checked-place-and-cell = { $a }, { $b }
checked-more-bytes-than-the-most = mehr Bytes als höchstens { $a }
checked-faults-more-which-are-not =
    { $a ->
        [one] 1 weiterer Fehler, der hier nicht steht
       *[other] { $a } weitere Fehler, die hier nicht stehen
    }
checked-mend-these-first-then-check = behebe erst diese, dann prüf noch einmal
checked-more-of-this-kind-which =
    { $a ->
        [one] 1 weiterer dieser Art, der hier nicht steht
       *[other] { $a } weitere dieser Art, die hier nicht stehen
    }
checked-look-at-these-first = sieh dir erst diese an
checked-characters-more-than-the-most = { $a } Zeichen, mehr als höchstens { $b }
checked-write = schreib { $a }
checked-write-or-give-it-the = schreib { $a }, oder gib ihm in den Dateien des Studios den kurzen Namen: { $b }
checked-write-the-only-one-known = schreib { $a }; etwas anderes gibt es nicht
checked-or-one-of-more = { $a } oder eins von { $b } weiteren
checked-or = { $a } oder { $b }
checked-write-from-1-to-characters = schreib 1 bis { $a } Zeichen in eine Zeile
checked-an-empty-text = ein leerer Text
checked-with-a-line-break-or = mit einem Zeilenumbruch oder anderen Steuerzeichen
checked-not-one-of-the-words = { $a }, keins der Wörter dafür
checked-give-gym-toml-lifters-toml = gib gym.toml, lifters.toml, programme.toml, kiosk.toml, meet.toml oder einen Plan, der auf .csv, .xlsx oder .ods endet
checked-a-file-of-a-kind = eine Datei, die hier nicht geprüft wird
checked-without-a-whole-gym-beside = { $a } ohne vollständiges Studio daneben; Namen sind ungeprüft
checked-check-it-together-with-gym = prüf die Datei zusammen mit gym.toml und lifters.toml
checked-a-programme = ein Programm
checked-a-kiosk = ein Kiosk
checked-a-meet = ein Wettkampf
checked-a-plan = ein Plan
checked-lifters = Leute

## Kinds of files.
checked-split-the-plan-or-delete = teil den Plan, oder lösch, was nicht zum Plan gehört
checked-a-binary-spreadsheet-such-as = eine binäre Tabelle wie XLS
checked-a-pdf = ein PDF
checked-a-word-processor-s-text = ein Text aus einer Textverarbeitung
checked-xml-not-a-plan = XML, kein Plan
checked-zeros-between-the-letters-no = Nullen zwischen den Buchstaben: kein Text
checked-text-that-is-neither-utf = Text, der weder UTF-8 noch Windows-1252 ist
checked-text-whose-letters-break-off = Text, dessen Zeichen abbrechen oder keine sind

## Spreadsheets.
checked-open-it-in-the-spreadsheet = öffne die Datei in der Tabellenkalkulation und speichere sie neu als XLSX oder ODS
checked-a-broken-zip-archive = ein kaputtes Zip-Archiv
checked-an-archive-of-parts-more = ein Archiv aus { $a } Teilen, mehr als höchstens { $b }
checked-save-it-without-a-password = speichere sie ohne Passwort als XLSX oder ODS
checked-an-archive-with-a-part = ein Archiv mit einem Teil, der gesperrt oder unbekannt gepackt ist
checked-an-archive-of-more-than = ein Archiv, das entpackt über { $a } Bytes hat
checked-delete-what-is-not-plan = lösch, was nicht zum Plan gehört, oder speichere als CSV in UTF-8
checked-save-it-as-xlsx-ods = speichere als XLSX, ODS oder CSV in UTF-8
checked-a-binary-workbook-xlsb = eine binäre Arbeitsmappe, XLSB
checked-a-text-or-slides-not = ein Text oder Folien, keine Tabelle
checked-an-opendocument-file-that-is = eine OpenDocument-Datei, die keine Tabelle ist
checked-a-zip-archive-not-a = ein Zip-Archiv, keine Tabelle
checked-a-spreadsheet-whose-xml-is = eine Tabelle mit kaputtem XML
checked-a-table-that-stands-for = eine Tabelle, die für mehr als { $a } Zellen oder { $b } Bytes steht
checked-delete-what-stands-far-below = lösch, was weit unter oder rechts vom Plan steht
checked-a-broken-spreadsheet = eine kaputte Tabelle ({ $a })
checked-a-workbook-with-more-than = eine Arbeitsmappe mit mehr als { $a } Bytes Text
checked-delete-what-is-no-plan = lösch, was nicht zum Plan gehört
checked-a-workbook-of-sheets-more = eine Arbeitsmappe aus { $a } Blättern, mehr als höchstens { $b }

## Rows and columns.
checked-cells-in-a-row-more = { $a } Zellen in einer Zeile, mehr als höchstens { $b }
checked-delete-what-stands-beyond-the = lösch, was neben dem Plan steht
checked-close-it-at-the-end = schließ es am Ende der Zelle, oder schreib es innen doppelt
checked-a-quote-that-is-never = ein Anführungszeichen, das nie geschlossen wird
checked-put-the-whole-cell-within = setz die ganze Zelle in Anführungszeichen, jedes darin doppelt
checked-after-a-closing-quote = nach einem schließenden Anführungszeichen
checked-write-a-header-row-and = schreib eine Kopfzeile und eine Zeile für jede Übung jedes Tages
checked-a-file-with-nothing-in = eine Datei ohne Inhalt
checked-show-the-sheet-in-the = blende das Blatt ein, wenn es zum Plan gehört
checked-a-formula-without-its-result = eine Formel ohne ihr Ergebnis
checked-open-the-file-in-a = öffne die Datei in einer Tabellenkalkulation, speichere sie dort und lies sie dann neu

## Rows beside the record.
checked-where-the-record-supports = { $a }: { $b }, belegt sind { $c }
checked-check-the-load-and-its = prüf die Last und ihre Einheit; am Rack wartet sie auf das Wort des Coachs
checked-where-nothing-is-recorded-that = { $a }: { $b }, wofür nichts belegt ist
checked-check-it-or-write-a = prüf sie, oder schreib eine Bestleistung in lifters.toml
checked-reps-of-work = { $a }: { $b } Arbeitswiederholungen
checked-check-it-at-the-rack = prüf es; am Rack wartet es auf das Wort des Coachs
checked-light-and-round-in-the = { $a }: { $b }, leicht und nur in der anderen Einheit rund, belegt sind { $c }
checked-check-the-unit = prüf die Einheit
checked-and-more-like-it = { $a }, und { $b } weitere dieser Art
checked-a-hidden-sheet-left-out = ein verborgenes Blatt, ausgelassen
checked-write-a-row-for-each = schreib darunter eine Zeile für jede Übung jedes Tages
checked-a-header-and-no-row = eine Kopfzeile ohne Zeile darunter
checked-more-rows-than-the-most = mehr Zeilen als höchstens { $a }
checked-split-the-plan = teil den Plan
checked-sheet-row = Blatt { $a }, Zeile { $b }
checked-row = Zeile { $a }
checked-for-on-again-after = { $a } für { $b } am { $c } noch einmal, nach { $d }
checked-keep-one-of-the-two = behalte eine der beiden Zeilen
checked-begin-with-a-header-row = beginn mit einer Kopfzeile: { $a }
checked-a-first-row-that-names = eine erste Zeile, die keine Spalte nennt
checked-a-header-without = eine Kopfzeile ohne { $a }
checked-add-the-column = füg die Spalte { $a } hinzu
checked-a-column-that-a-plan = eine Spalte, die ein Plan nicht hat
checked-the-column-again-after-column = die Spalte { $a } noch einmal, nach Spalte { $b }
checked-keep-one-of-them = behalte eins davon
checked-write-or-leave-the-column = schreib { $a }, oder lass die Spalte weg
checked-of-a-best-in-the = von einer Bestleistung ({ $a }), die für { $b } nicht eingetragen ist
checked-of-a-training-max-in = von einem Trainingsmaximum ({ $a }), das { $b } am { $c } nicht hat
checked-write-a-mass-or-the = schreib ein Gewicht, oder das Trainingsmaximum in lifters.toml
checked-a-track-s-name-of = ein Name einer Spur mit mehr als { $a } Buchstaben; ä, é und ihresgleichen zählen doppelt
checked-write-a-shorter-one-such = schreib einen kürzeren, etwa "heavy"
checked-write-a-mass-or-record = schreib ein Gewicht, oder trag die Bestleistung in lifters.toml ein
checked-less-than-the-lightest-bar = weniger als die leichteste Stange, { $a }
checked-write-the-load-with-the = schreib die Last mit der Stange
checked-an-empty-cell = eine leere Zelle
checked-write-with-its-quotes-or = schreib { $a } mit den Anführungszeichen, oder mit Punkt
checked-a-comma-within-a-cell = ein Komma in einer Zelle ohne Anführungszeichen
checked-put-each-cell-that-holds = setz jede Zelle mit dem Trennzeichen in Anführungszeichen, oder lösch diese
checked-give-the-column-a-header = gib der Spalte eine Überschrift, oder lösch diese Zelle
checked-under-no-header = ohne Überschrift darüber

## Dates and times.
checked-write-year-month-day-as = schreib Jahr, Monat, Tag wie "2026-12-01"
checked-not-a-date = kein Datum
checked-a-date-with-a-year = ein Datum mit zweistelligem Jahr
checked-format-the-cells-as-dates = formatiere die Zellen als Datum wie "2026-12-01" und speichere neu
checked-a-spreadsheet-s-number-of = die Tageszahl einer Tabellenkalkulation
checked-a-day-that-is-not = ein Tag, den es im Kalender nicht gibt
checked-a-year-before-2000-or = ein Jahr vor 2000 oder nach 2099
checked-write-the-year-first-or = schreib das Jahr zuerst: { $a } oder { $b }
checked-a-date-that-can-be = ein Datum, das sich auf zwei Arten lesen lässt
checked-write-seconds-as-180-s = schreib Sekunden wie "180 s" oder Minuten wie "3 min" in eine Textzelle
checked-not-a-time = keine Zeit
checked-a-time-that-can-be = eine Zeit, die Minuten oder Sekunden heißen kann
checked-a-time-that-is-no = eine Zeit, die keine Pause von 15 s bis 30 min ist
