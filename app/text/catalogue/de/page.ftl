## Everywhere.
page-sessions = Einheiten
page-plan = Plan
page-desk = Schreibtisch
page-floor = Übersicht
page-pages = Seiten
page-sign-out = Abmelden
page-coach = Coach
page-language = Sprache

## The front, signing in, a lifter's link.
page-floor-board = Übersicht für alle
page-own-by-code = Die eigenen Daten öffnet der Code, den der Kiosk am Ende einer Übung zeigt.
page-page-code = Code
page-sign-in = Anmelden
page-your-record = Deine Daten
page-once = Diese Seite öffnet einmal und bleibt auf diesem Telefon bis Mitternacht deine.
page-show-record = Meine Daten zeigen
page-nobody = unter diesem Namen ist niemand bekannt; wähl jemanden aus der Liste
page-gone = Dieser Link wurde schon geöffnet, oder seit der Übung sind zehn Minuten um. Der Kiosk zeigt am Ende deiner nächsten Übung einen neuen.
page-trust = Damit dieses Telefon der Seite traut
page-trust-root = das Wurzelzertifikat des Kiosks
page-trust-how = Lade es, vergleiche seinen SHA-256 mit dem, den die eigene Seite des Kiosks zeigt, und lass das Telefon ihm erst dann trauen. Es bürgt nur für Namen dieses Studios.

## The coach's day.
page-today = Heute
page-no-day-yet = Der Kiosk hat seinen Tag noch nicht genannt; sieh gleich noch einmal nach.
page-needs-you = Wartet auf dich
page-nobody-waits = Niemand wartet auf dein Wort.
page-see-record = Daten ansehen
page-trains-today = Heute dran
page-nobody-trains = Für heute ist niemand eingeplant.
page-due-and-why = Fällig, und warum
page-on-the-floor = Jetzt am Rack
page-last-time = Zuletzt
page-lift = Übung
page-work-sets =
    { $n ->
        [one] 1 Arbeitssatz, { $load }
       *[other] { $n } Arbeitssätze, bis { $load }
    }
page-short-in =
    { $n ->
        [one] in 1 Satz zu wenig
       *[other] in { $n } Sätzen zu wenig
    }
page-back-moved-at = Rücken gab bei Wdh. { $rep } nach
page-back-moved = Rücken gab nach
page-this-week = Diese Woche

## What the coach does on it.
page-own-load = Eine andere Last
page-no-reason = ohne Grund
page-rule-it = Festlegen
page-meant = So ist es gemeint
page-fit-again = Wieder gesund
page-health = Verletzt oder krank
page-health-hint = Was jemand sagt; was es ist, sagt ein Arzt. Wer verletzt ist, hat nichts fällig, bis es besser ist. Krankheit wird bis heute eingetragen; trag sie wieder ein, solange sie dauert.
page-choose = wähle
page-from-day = Von
page-to-day = Bis
page-was-ill = Krank von, bis
page-enter = Eintragen
page-is-hurt = Verletzt ab
page-rule-others = Eine andere Last festlegen

## What came of it.
page-done-kept = erledigt und im Journal festgehalten
page-not-done-why = nichts wurde geändert: { $why }
page-already = das steht schon da; nichts wurde zweimal geändert
page-stale = die Liste hat sich geändert, seit diese Seite geladen wurde: inzwischen hat jemand entschieden oder gehoben, oder ein neuer Tag hat begonnen. Nichts wurde geändert; sieh die Liste an, wie sie jetzt ist
page-no-load = das ist keine Last; schreib sie wie 147,5, 147,5 kg oder 325 lb. Nichts wurde geändert
page-to-come = von einem Tag, der noch kommt, weiß es niemand; schreib einen Tag bis heute. Nichts wurde geändert
page-slip = das ist mehr als ein Jahr her; sieh das Jahr noch einmal an. Nichts wurde geändert
page-no-lifter = niemand hier heißt so; wähl jemanden aus der Liste. Nichts wurde geändert

## The coach's list.
page-due-and-waits = Fällig, und wer auf den Coach wartet
page-nothing-due = Noch nichts gemacht, woraus etwas folgt.
page-state = Stand
page-why = Warum

## The board.
page-waiting = warte auf den Kiosk

## Sets.
page-set = Satz
page-load = Last
page-reps = Wdh.
page-back = Rücken
page-warm-up = Aufwärmen
page-work = Arbeit
page-of = { $n } von { $all }
page-kept = hielt
page-moved-at = gab bei Wdh. { $rep } nach
page-no-sets-before = Vor diesem Tag wurde nichts gehoben.
page-no-sets = Noch wurde nichts gehoben.
page-all-sets = Alle Sätze:
page-downloads = Herunterladen
page-database = Datenbank
page-lifters = Leute
page-further = Weiter
page-latest = Neueste
page-older = Ältere

## A lifter's weeks.
page-nothing-of = Unter diesem Namen ist nichts bekannt.
page-sets = Sätze
page-latest-sets =
    { $all ->
        [one] Die neuesten { $n } von 1 Satz.
       *[other] Die neuesten { $n } von { $all } Sätzen.
    }
page-loads-chart = Schwerste Arbeitslast je Woche, { $unit }; ein Quadrat: der Rücken gab nach
page-reps-chart = Geschaffte Wdh. je Woche; blass: geplant
page-backs-chart = Arbeitssätze je Woche, blass; davor: der Rücken gab nach
page-week-of = Woche ab
page-heaviest = Schwerste
page-moved-in = gab in { $n } von { $all } nach

## The plan and what was done.
page-plan-and-done = Geplant und geschafft
page-no-plan = Es gibt keinen Plan.
page-no-plan-here = Für diese Tage gibt es keinen Plan.
page-day = Tag
page-lifter = Wer
page-planned = Geplant
page-done = Geschafft
page-at-load = { $sets } mit { $load }
page-of-best = { $share } der Bestleistung
page-programme = aus dem Programm
page-programme-of = aus dem Programm: { $name }
page-done-sets =
    { $sets } von { $of_sets ->
        [one] 1 Satz
       *[other] { $of_sets } Sätzen
    }, { $reps } von { $of_reps } Wdh.
page-back-held = Rücken hielt
page-back-moved-in = Rücken gab in { $n } nach

## Plans from a browser.
page-hand-in = Einen Plan abgeben
page-choose-plan = Wähl einen Plan, oder lass ihn hier fallen (CSV, XLSX, ODS; höchstens 4 MB)
page-read-it = Lesen
page-not-yet-taken = Gelesen, noch nicht übernommen
page-nothing-taken-yet = So wird der Plan verstanden. Noch ist nichts übernommen.
page-understood = So verstanden
page-first-rows = Die ersten { $n } von { $all } Zeilen; übernommen werden alle zusammen.
page-take-plan = Diesen Plan übernehmen
page-mend-it = Bessere die Datei aus und wähl sie noch einmal; nichts davon wird übernommen, solange ein Fehler darin ist.
page-another-file = Eine andere Datei
page-took-rows =
    { $n ->
        [one] 1 Zeile übernommen und im Journal festgehalten
       *[other] { $n } Zeilen übernommen und im Journal festgehalten
    }
page-plan-gone = dieser Plan liegt nicht mehr hier: er wurde übernommen, andere kamen danach, oder der Kiosk fing neu an. Jetzt wurde nichts übernommen; sieh den Plan an und wähl die Datei noch einmal
page-plan-faults = abgelehnt: der Plan hat Fehler; nichts wurde übernommen. Bessere die Datei aus und wähl sie noch einmal
page-gym-changed = die Dateien des Studios haben sich geändert, seit dieser Plan gelesen wurde; nichts wurde übernommen. Wähl die Datei noch einmal
page-days-changed = seit diese Seite geladen wurde, hat jemand einen dieser Tage geändert; nichts wurde übernommen. Sieh an, was sich jetzt ändern würde, und übernimm dann
page-plan-busy = gerade wird ein anderer Plan gelesen; versuch es gleich noch einmal
page-plan-long = die Datei ist größer als 4 MB; teil den Plan
page-plan-slow = die Datei kam nicht innerhalb von 60 s; versuch es näher am Kiosk
page-file-kind = schick die Datei als multipart/form-data
page-no-file = keine Datei gewählt, oder sie ist leer; wähl einen Plan

## The coach's desk.
page-stick = Stick
page-no-stick = Kein Stick steckt, oder kiosk.toml nennt keinen Ort für Sticks.
page-no-plan-on-it = Es ist kein Plan darauf.
page-passed-over = Übergangen: { $what }
page-rows =
    { $n ->
        [one] 1 Zeile
       *[other] { $n } Zeilen
    }
page-faults =
    { $n ->
        [one] 1 Fehler
       *[other] { $n } Fehler
    }
page-what-changes = Was sich ändert
page-change = { $lifter }: { $span }, { $days }
page-span = { $from } bis { $to }
page-new-days =
    { $n ->
        [one] 1 neuer Tag
       *[other] { $n } neue Tage
    }
page-changed-days =
    { $n ->
        [one] 1 geänderter Tag
       *[other] { $n } geänderte Tage
    }
page-same-days =
    { $n ->
        [one] 1 Tag wie bisher
       *[other] { $n } Tage wie bisher
    }
page-take-all = Alles übernehmen
page-write-to-it = Die Daten daraufschreiben
page-copies = Kopien des Journals
page-copy-now = Jetzt kopieren
page-copies-count =
    { $n ->
        [one] 1 Kopie
       *[other] { $n } Kopien
    }
page-copied-at-night =
    { $n ->
        [one] Letzte nächtliche Kopie: { $day }, 1 Ereignis.
       *[other] Letzte nächtliche Kopie: { $day }, { $n } Ereignisse.
    }
page-not-at-night = Keine nächtliche Kopie am { $day }; alle Viertelstunde ein neuer Versuch: { $why }
page-restore = Diese Kopie zurückholen
page-blank-plan = Ein leerer Plan
page-certificate = Das Zertifikat dieser Seite

## Answers of the desk.
page-no-orders = dieser Kiosk nimmt keine Aufträge an
page-not-yet = der Kiosk hat noch nicht geantwortet; sieh gleich noch einmal nach
page-took =
    { $n ->
        [one] 1 Zeile übernommen; der Stick darf heraus
       *[other] { $n } Zeilen übernommen; der Stick darf heraus
    }
page-not-taken = nichts wurde übernommen: { $why }
page-other-stick = inzwischen steckt ein anderer Stick oder keiner; sieh noch einmal nach
page-stick-faults = abgelehnt: der Stick hat Fehler; nichts wurde übernommen
page-no-place-sticks = kein Ort für Sticks ist gesetzt; schreib stick = "..." in kiosk.toml
page-written = die Daten sind auf dem Stick; er darf heraus
page-not-written = die Daten sind nicht auf dem Stick: { $why }
page-no-place = kein zweiter Ort ist gesetzt; schreib backup = "..." in kiosk.toml
page-copied =
    { $n ->
        [one] kopiert und geprüft: 1 Ereignis
       *[other] kopiert und geprüft: { $n } Ereignisse
    }
page-not-copied = keine Kopie: { $why }
page-putting-back = eine Kopie wird gerade zurückgelegt; warte darauf
page-copy-gone = diese Kopie gibt es nicht mehr; sieh noch einmal nach
page-restored =
    { $n ->
        [one] 1 Ereignis zurückgeholt; das Journal von vorher liegt daneben
       *[other] { $n } Ereignisse zurückgeholt; das Journal von vorher liegt daneben
    }
page-not-restored = nichts wurde zurückgeholt: { $why }

## Why somebody is not signed in.
page-no-code = kein Code ist gesetzt; der Betreiber setzt ihn mit: pinladder code
page-wrong = das ist nicht der Code; frag den Betreiber danach
page-wait = zu viele falsche Codes; versuch es in { $seconds } s noch einmal
page-not-judged = der Code lässt sich gerade nicht prüfen; das Protokoll des Kiosks sagt, warum

## The week.
page-week = Woche
page-week-from-to = Woche vom { $from } bis { $to }
page-week-before = die Woche davor
page-week-after = die Woche danach
page-is-planned = geplant
page-in-part = teilweise
page-is-done = fertig
page-not-lifted = nicht gemacht
page-add-for = { $lifter }, { $day }: eine Zeile schreiben
page-filled-here = Das Programm füllt diesen Tag; eine Zeile des Plans geht ihm vor.
page-begun-stays = Am Rack wurde damit begonnen; es bleibt, wie es ist.
page-day-is-over = Dieser Tag ist vorbei: Es wird nichts mehr hineingeschrieben.
page-leave-as-it-is = So lassen
page-keep-row = Übernehmen
page-row-of-file = diese Zeile sagt mehr, als diese Felder können; ändere sie in der Datei des Plans
page-take-off = { $lift } streichen
page-what-moves = Was umzieht
page-whole-day = der ganze Tag
page-to-which-day = Auf welchen Tag
page-move-it = Umlegen
page-beside = auch wo schon etwas steht; ein Plan geht einem Programm vor
page-one-more = Eine Zeile mehr
page-plan-stale = jemand hat den Plan geändert, seit diese Seite geladen wurde. Jetzt wurde nichts geändert; sieh dir die Woche an, wie sie ist
page-is-begun = mit dieser Übung wurde an einem der beiden Tage schon begonnen; es wurde nichts geändert
page-is-over = dieser Tag ist vorbei oder liegt außerhalb dieser zwei Wochen; wähle einen ab heute. Es wurde nichts geändert
page-is-taken = an diesem Tag steht schon etwas; setze den Haken, wenn beides gemeint ist, oder wähle einen anderen. Es wurde nichts geändert
page-lift-twice = dieselbe Übung stünde an diesem Tag zweimal; es wurde nichts geändert
page-row-grouped = diese Zeile hat mehrere Satzgruppen, eine eigene Spur oder eine eigene Stange; ändere sie in der Datei des Plans. Es wurde nichts geändert
page-done-odd = erledigt und im Journal. Auffällig ist: { $what }
page-no-from-day = from und day müssen Tage sein wie 2026-03-31
page-no-such-change = do muss move, row, add oder off sein, mit seinen Feldern

## For programs.
page-query-day = since, from und to müssen Tage sein wie 2026-03-31
page-query-twice = ein Teil der Anfrage steht zweimal da oder ist kein Text
page-bad-token = dieses Token öffnet nichts: Es wurde zurückgenommen, sein Tag ist vorbei, oder es gab es nie
page-token-reads = dieses Token darf lesen und nichts abgeben
page-near-only = das erfährt nur dieses Gerät selbst oder ein Token, das liest
page-plan-kind = sende die Datei des Plans selbst, mit ihrem Namen als name=, der auf .csv, .tsv, .xlsx oder .ods endet
page-not-up = der Kiosk hat seinen Tag noch nicht genannt, oder sein Datenbestand ist nicht lesbar
page-tokens = Programme des Studios
page-tokens-hint = Mit einem Token liest ein Programm die Daten oder gibt Pläne ab, ohne den Code. Es wird einmal gezeigt; behalten wird nur sein Hash.
page-no-tokens = Kein Programm hat ein Token.
page-token-name = Name des Programms
page-token-may = Es darf
page-may-read = lesen
page-may-plans = lesen und Pläne abgeben
page-token-until = Bis einschließlich
page-token-make = Token anlegen
page-token-back = Zurücknehmen: { $name }
page-token-holds = darf { $may }, bis { $day }
page-token-over = vorbei seit { $day }
page-token-made = Das Token von { $name }. Es wird nur jetzt gezeigt; leg es dahin, wo das Programm es findet und sonst niemand:
page-token-gone = das Token von { $name } öffnet nichts mehr
page-token-no-name = ein Name hat 1 bis 40 Zeichen, und kein anderes Token heißt so; es wurde nichts angelegt
page-token-no-day = ein Token gilt bis zu einem Tag ab heute, höchstens ein Jahr; es wurde nichts angelegt
page-tokens-full = es gibt 20 Tokens; nimm erst eins zurück. Es wurde nichts angelegt
page-token-unknown = kein Token heißt so; es wurde nichts geändert
page-token-not-kept = die Datei der Tokens ist nicht benutzbar; es wurde nichts geändert. Das Protokoll des Kiosks sagt, warum

## A lift's course.
page-course-chart = Schwerster Arbeitssatz jedes Tages, { $unit }
page-day-heaviest = schwerster des Tages
page-a-best = eine Bestleistung
page-estimate = geschätzte Einer
page-reps-missed = Wdh. verfehlt
page-comes-next = kommt als Nächstes
page-volume = Volumen
page-volume-chart = Volumen je Woche, { $unit } mal Wdh.
page-hard-sets = Harte Sätze
page-hard-chart = Arbeitssätze je Woche, blass; davor: harte
page-hard-hint = Hart: Wdh. fehlten, oder die Schätzung liegt höchstens 10 % unter der besten bis zu diesem Tag. Geschätzt wird Last mal (1 + Wdh. / 30), aus Sätzen bis 10 Wdh. Gängige Praxis ohne Quelle: ein Anhalt, kein Urteil.
page-plan-chart = Gemachte Wdh. je Woche; blass: geplant
page-in-numbers = Dasselbe in Zahlen
page-compare = Vergleichen mit
page-nobody-else = niemandem
page-all-lifts = alle Übungen
page-show = Zeigen
page-compared = Verglichen: die geschätzte Einer, in % der eigenen besten
page-no-course = Für diese Tage und Übungen ist nichts aufgezeichnet.
page-take-home = Mitnehmen
page-take-home-hint = Diese Dateien gehören dir. Die Seite lässt sich auch drucken.

## Problems.
page-not-done = Das ging nicht
page-to-front = Zur ersten Seite
page-sign-in-first = melde dich zuerst bei /sign-in mit dem Code des Coachs an
page-name-no-text = der Name in der Adresse ist kein Text
page-no-blanks = dieser Kiosk bietet keinen leeren Plan; pinladder plan blank schreibt einen
page-nothing-here = hier ist nichts; /openapi.json sagt, was es gibt
page-no-day = before muss ein Tag sein, etwa 2026-03-31
page-no-such-order = order muss take, write, copy oder restore sein
page-no-such-deed = do muss rule, meant, hurt, fit oder ill sein, mit den Feldern dazu
page-no-date = schreib einen Tag wie 2026-03-31
page-no-such-language = language muss en, de oder es sein
page-form-kind = schick das Formular als application/x-www-form-urlencoded
page-form-long = das Formular ist länger, als es sein kann, oder brach ab
page-form-slow = das Formular kam nicht innerhalb von 10 s
page-form-broken = das Formular ist keines
page-field = ein Feld des Formulars fehlt oder steht zweimal da
page-too-many-codes = zu viele falsche Codes; warte, und frag den Betreiber nach dem Code
page-method = diese Adresse kennt die Methode nicht; Allow sagt, welche sie kennt
page-long-address = die Adresse ist länger als 1024 Bytes
page-one-host = die Anfrage muss einen Host nennen
page-other-host = dieser Server hört auf seine IP-Adresse, auf localhost, auf Namen in .local und auf die in kiosk.toml (hosts)
page-no-root = diese Seite hat keine eigene Wurzel, der zu trauen wäre
page-only-tls = diese Seite nimmt Formulare nur unter TLS; öffne sie mit https:// und schreib es noch einmal
page-other-site = die Seite eines anderen darf das nicht verlangen
page-many-boards = zu viele Übersichten sind offen; schließ eine
page-many-readers = zu viele lesen gerade; versuch es gleich noch einmal
page-unreadable = die Daten sind nicht lesbar; das Protokoll des Kiosks sagt, warum
page-slow = die Daten kommen gerade langsam; versuch es gleich noch einmal
