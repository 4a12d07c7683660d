checked-as-said = { $a }

## A stick.
checked-more-than-plans-in-one = mehr als { $a } Pläne in einem Ordner: den Rest hat niemand angesehen
checked-more-than-plans-the-rest = mehr als { $a } Pläne: der Rest ist nicht gelesen; nimm dafür einen weiteren Stick
checked-place-and-what = { $a }: { $b }
checked-for-on-which-has-too = { $a } für { $b } am { $c }, was auch { $d } hat
checked-with-it-the-stick-has = mit ihm hat der Stick mehr Zeilen als höchstens { $a }
checked-put-it-on-another-stick = nimm dafür einen anderen Stick, oder übernimm erst die anderen Pläne
checked-keep-one-of-the-two-plans = lass einen der beiden Pläne auf dem Stick
checked-a-link-links-are-not = ein Verweis; Verweisen wird nicht gefolgt
checked-cannot-be-opened = lässt sich nicht öffnen ({ $a })
checked-cannot-be-read = lässt sich nicht lesen ({ $a })
checked-no-file-but-a-folder = keine Datei, sondern ein Ordner, ein Gerät oder eine Pipe; nicht weiter geöffnet
checked-broke-off-while-it-was = brach beim Lesen ab ({ $a })
checked-larger-than-the-most-bytes = größer als höchstens { $a } Bytes
checked-the-stick-was-pulled-while = der Stick wurde beim Schreiben gezogen; steck ihn ein und schreib noch einmal

## The desk and its files.
checked-is-no-file-of-at = { $a } ist keine Datei von höchstens { $b } Bytes; speichere sie neu
checked-this-kiosk-keeps-no-files = dieser Kiosk hat keine Dateien; starte ihn mit einem Datenordner
checked-another-kiosk-runs-on-close = auf { $a } läuft schon ein Kiosk; schließ ihn, oder wähl einen anderen Datenordner
checked-the-journal-is-busy-try = das Journal ist beschäftigt; versuch es noch einmal
checked-the-record-in-record-sqlite = die Auswertung in record.sqlite war beschädigt und entsteht neu aus dem Journal; nichts ist verloren, aber sieh noch einmal nach, was du darin gelesen hast
checked-changed-since-the-kiosk-ran = geändert, seit der Kiosk zuletzt lief, und ab jetzt gültig: { $a }; war das niemand, leg die Datei zurück, wie sie war
checked-no-toml = kein TOML: { $a }
checked-there-is-no-called-look = in der Datei gibt es kein { $a } "{ $b }"; sieh sie an
checked-there-is-no-number-in = die Liste hat keine Nummer { $a }; sieh noch einmal nach
checked-there-is-no-list-there = dort gibt es keine Liste "{ $a }"; sieh die Datei an
checked-there-is-no-such-list = diese Liste gibt es in der Datei nicht; schreib sie dort hinein
checked-that-way-leads-nowhere-in = das findet sich nicht in der Datei; sieh sie an
checked-a-way-needs-at-least = dafür fehlt, was zu ändern ist
checked-a-list-has-one-key = eine Liste hat einen Schlüssel; sieh die Datei an
checked-that-is-not-in-the = das steht nicht mehr in der Datei; sieh sie an
checked-the-file-is-written-in = die Datei ist so geschrieben, dass es hier nicht zu ändern ist; ändere es dort

## The disk and the journal.
checked-place-what-and-remedy = { $a }: { $b }; { $c }
checked-free-some-space-and-try = schaff Platz und versuch es noch einmal
checked-check-that-it-exists-and = sieh nach, ob es das gibt und du es benutzen darfst
checked-no-home-folder-is-set = kein Home-Ordner ist gesetzt; wähl einen Datenordner mit --data DIR
checked-the-picture-could-not-be = das Bild ließ sich nicht zeichnen: { $a }
checked-there-is-no-journal-at = bei { $a } liegt kein Journal; wähl den Datenordner, der eins hat
checked-cannot-be-opened-its-folder = { $a } lässt sich nicht öffnen: der Ordner fehlt oder ist für diesen Benutzer gesperrt; leg ihn an, öffne ihn oder wähl einen anderen Datenordner
checked-cannot-be-written-give-this = { $a } lässt sich nicht schreiben; gib diesem Benutzer Schreibrecht auf Datei und Ordner, oder wähl einen anderen Datenordner
checked-cannot-grow-the-disk-is = { $a } kann nicht wachsen: der Speicher ist voll; schaff Platz und versuch es noch einmal
checked-is-kept-busy-by-another = { $a } ist seit über { $b } ms von einem anderen Programm belegt; schließ es und versuch es noch einmal
checked-is-not-a-database-move = { $a } ist keine Datenbank; leg sie beiseite und leg eine Kopie des Journals zurück
checked-is-a-database-of-another = { $a } ist die Datenbank eines anderen Programms; leg sie beiseite, oder wähl einen anderen Datenordner
checked-is-a-database-of-another-program = { $a } ist die Datenbank eines anderen Programms; leg sie beiseite
checked-is-empty-no-journal-was = { $a } ist leer: kein Journal wurde begonnen, oder alles ging verloren; leg eine Kopie zurück, wenn es eine gab
checked-was-written-by-a-newer = { $a } ist von einer neueren Version geschrieben (Aufbau { $b }, diese kennt bis { $c }); installiere die neuere
checked-cannot-be-kept-safe-from = { $a } ist vor Stromausfall nicht sicher: { $b } ist { $c }, nicht { $d }; leg den Datenordner auf einen eigenen Datenträger
checked-was-moved-or-deleted-while = { $a } wurde im Betrieb verschoben oder gelöscht; leg sie zurück und starte neu
checked-cannot-be-trusted-from-event = { $a } ist ab Ereignis { $b } nicht mehr zu trauen: { $c }; { $d }
checked-ends-at-event-before-event = { $a } endet bei Ereignis { $b }, vor Ereignis { $c }; Ereignisse gingen verloren: leg eine spätere Kopie zurück
checked-ends-at-event-but-knows = { $a } endet bei Ereignis { $b }, aber { $c } kennt es bis Ereignis { $d }; nichts wurde geändert: starte "pinladder journal mend", oder leg eine Kopie zurück
checked-the-part-failed-and-was = der Teil "{ $a }" ist ausgefallen und wurde neu begonnen (seit dem Start so oft: { $b }); wenn es so weitergeht, starte den Kiosk neu und schick sein Protokoll an den, der ihn betreut
checked-is-another-journal-than-knows = { $a } ist ein anderes Journal, als { $b } es kennt: Ereignis { $c } ist nicht das, was da war; nichts wurde geändert: starte "pinladder journal mend", oder leg eine Kopie zurück
checked-is-damaged-at-byte-in = { $a } ist bei Byte { $b } beschädigt, vor Ereignissen, die sicher waren; nichts wurde geändert: starte "pinladder journal mend", oder leg eine Kopie zurück
checked-cannot-be-written-check-the = { $a } lässt sich nicht schreiben ({ $b }); prüf den Datenträger
checked-cannot-be-mended-and-tell = { $a } lässt sich nicht herstellen: { $b } und { $c } sagen Verschiedenes; such eins davon aus und leg es zurück
checked-has-lost-its-guard-so = { $a } hat die Sperre { $b } verloren, also hat jemand von Hand daran gearbeitet; leg eine Kopie zurück
checked-is-damaged-put-back-a = { $a } ist beschädigt ({ $b }); leg eine Kopie zurück
checked-cannot-be-used-check-the = { $a } ist nicht zu gebrauchen ({ $b }); prüf den Datenträger und versuch es noch einmal
checked-events-to-are-missing-before = davor fehlen die Ereignisse { $a } bis { $b }
checked-its-content-or-its-place = sein Inhalt oder sein Platz ist verändert: die Prüfsumme stimmt nicht
checked-its-cannot-be-read = { $a } ist nicht zu lesen
checked-it-was-written-by-a = eine neuere Version hat es geschrieben (Form { $a }, diese liest bis { $b })
checked-move-the-file-away-and = leg die Datei beiseite und eine Kopie zurück
checked-install-the-newer-version = installiere die neuere Version
checked-the-program-that-wrote-it = der Fehler liegt bei dem Programm, das es schrieb: installiere dessen Version
checked-was-made-by-another-version = { $a } ist von einer anderen Version; starte den Kiosk, dann entsteht sie neu
checked-cannot-be-written-check-the-folder = { $a } lässt sich nicht schreiben ({ $b }); prüf die Rechte des Ordners
checked-cannot-be-used-check-that = { $a } ist nicht zu gebrauchen ({ $b }); prüf, ob der Ort da ist, offen für diesen Benutzer und nicht voll
checked-is-the-data-folder-itself = { $a } ist der Datenordner selbst; wähl einen Ort auf einem anderen Datenträger
checked-is-in-use-close-the = { $a } ist in Gebrauch; schließ erst den Kiosk, oder leg die Kopie an seinem Schreibtisch zurück
checked-a-code-that-is-soon = ein Code, der schnell zu raten ist: { $a }; wähl einen anderen, etwa drei schlichte Wörter
checked-fewer-than-four-different-signs = weniger als vier verschiedene Zeichen
checked-the-same-piece-over-and = immer wieder dasselbe Stück
checked-a-row-of-letters-digits = eine Reihe von Buchstaben, Ziffern oder Tasten
checked-a-date = ein Datum
checked-a-word-that-everybody-tries = ein Wort, das jeder versucht
checked-the-code-cannot-be-kept = der Code lässt sich nicht sicher behalten ({ $a }); versuch es noch einmal
checked-cannot-be-used-check-the-data = { $a } ist nicht zu gebrauchen ({ $b }); prüf die Rechte des Datenordners
checked-a-code-of-characters-choose = ein Code von { $a } Zeichen; nimm { $b } bis { $c }
checked-cannot-be-used = { $a } ist nicht zu gebrauchen ({ $b }); { $c }
checked-give-this-user-write-permission = gib diesem Benutzer Schreibrecht auf Datei und Ordner
checked-close-the-program-that-keeps = schließ das Programm, das sie belegt, und versuch es noch einmal
checked-delete-it-and-it-is = lösch sie, dann entsteht sie neu aus dem Journal

## Devices.
checked-buzzer = Summer
checked-lamp = Lampe
checked-lights = Lichter
checked-backlight = Bildschirmlicht
checked-switches = Schalter
checked-signs = Anzeigen
checked-check-hardware-toml-and-the = { $a }; prüf hardware.toml und die Kabel, dann starte neu
checked-cannot-be-read-check-its = nicht zu lesen ({ $a }); prüf das Kabel
checked-changed-more-than-times-within = wechselte über { $a }-mal in einer Sekunde und wird überhört; such nach einem losen Kabel
checked-has-been-down-for-over = seit über { $a } s gedrückt; sieh nach, was darauf liegt
checked-does-not-do-what-it = tut nicht, was es soll ({ $a }); prüf das Kabel
checked-the-system-gives-no-thread = das System gibt keinen Thread ({ $a })

## What the system reports.
checked-no-such-file-or-directory = gibt es nicht
checked-input-output-error-os-error = Ein- und Ausgabe versagt
checked-permission-denied-os-error-13 = kein Zugriff
checked-file-exists-os-error-17 = gibt es schon
checked-not-a-directory-os-error = kein Ordner
checked-is-a-directory-os-error = ein Ordner
checked-no-space-left-on-device = kein Platz mehr
checked-read-only-file-system-os = nur zum Lesen

## Plans in the folder.
checked-is-not-there-any-more = { $a } ist nicht mehr da; wähl einen anderen
checked-the-hub-does-not-answer = der Hub an { $a } antwortet nicht; dieses Rack arbeitet allein und holt es nach
checked-the-hub-knows-another-box = der Hub kennt ein anderes Gerät als { $a }, oder einen späteren Stand von diesem; nichts wird gesendet, siehe pinladder hub look
checked-the-hub-lets-not-in = der Hub lässt diesen Kiosk nicht ein; siehe pinladder hub look
checked-the-hub-failed = der Hub hat versagt; dieses Rack arbeitet allein, siehe pinladder hub look
checked-the-hub-of-another-rack = was der Hub von { $a } sagt, folgt nicht auf das früher Gelesene; siehe pinladder hub look
