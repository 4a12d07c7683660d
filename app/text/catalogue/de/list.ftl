list-for-all = fällig am { $date }, für alle
list-nobody = noch hat niemand gehoben, also ist nichts fällig
list-hurt = verletzt
list-hurt-since = seit { $date }: { $why }
list-wrong = sieht falsch aus
list-wrong-on = Plan für { $date }: { $load }, belegt sind { $supported }
list-untried-on = Plan für { $date }: { $load }, und nichts ist dafür belegt
list-many-reps-on = Plan für { $date }: { $n } Arbeitswiederholungen mit { $load }
list-wrong-tap = antippen, wenn es so gemeint ist
list-over = überlastet
list-stuck = steckt fest
list-anew = neu anfangen
list-waits = wartet auf dich
list-differs = Plan und Fälliges verschieden
list-differs-on = Plan für { $date }: { $plan }; fällig { $due }
list-away = weg
list-due = fällig
list-title = fällig, und wer wartet
list-hint = wer auf dich wartet, steht vorn; antippen, um zu entscheiden
list-waiting =
    { $n ->
        [one] 1 wartet auf den Coach
       *[other] { $n } warten auf den Coach
    }
list-none-waits = niemand wartet
list-coach-code = Ziffern des Coachs
list-health = verletzt oder krank
list-health-hint = was jemand sagt; was es ist, sagt ein Arzt
list-fit = gesund
list-fit-again = wieder gesund
list-hurt-now = ab heute: nichts ist fällig, bis zur Besserung
list-ill = krank
list-ill-today = heute
list-ill-days =
    { $n ->
        [one] der letzte Tag
       *[other] die letzten { $n } Tage
    }
list-ill-from-to = { $from } bis { $to }
list-note-at-desk = im Coach-Bereich eingetragen
list-note-on-page = auf der Seite eingetragen
list-as-due = was fällig ist
list-as-before = wie beim letzten Mal
list-as-planned = wie im Plan
list-more = { $n } weitere
