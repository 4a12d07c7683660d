checked-block = Block
checked-a-block = ein Block
checked-a-day-of-a-block = ein Tag eines Blocks
checked-a-lift-of-a-block = eine Übung eines Blocks
checked-no-block = kein Block
checked-add-programme-block-tables-or = schreib Tabellen [[programme.block]], oder lass es weg
checked-add-programme-block-day-tables = schreib Tabellen [[programme.block.day]]
checked-rounds-without-block = "rounds" ohne "block"
checked-beside-block = { $a } neben "block"
checked-put-the-days-into-the = schreib die Tage in die Blöcke
checked-leave-it-out-days-of = lass es weg: die Wochentage sagen es
checked-leave-it-out-starts-of = lass es weg: "starts" des ersten Blocks sagt es
checked-the-first-block-without-starts = der erste Block ohne "starts"
checked-write-the-monday-of-its = schreib den Montag seiner ersten Woche, wie starts = "2026-01-05"
checked-which-is-no-monday = { $a }, was kein Montag ist
checked-write-the-monday-of-the = schreib den Montag der ersten Woche, etwa { $a }
checked-while-still-goes-on-to = { $a }, während { $b } noch bis { $c } dauert
checked-write-or-later-or-leave = schreib { $a } oder später, oder lass es weg
checked-light-every-without-light = "light_every" ohne "light"
checked-write-how-light-as-light = schreib, wie leicht, etwa light = "60 %", oder lass es weg
checked-a-light-week-in-a = eine leichte Woche in einem Block von einer Woche
checked-leave-it-out-or-give = lass es weg, oder gib dem Block mehr Wochen
checked-the-again-on-the-same = { $a } noch einmal am selben Tag
checked-write-its-sets-as-one = schreib die Sätze als ein Schema, oder gib einer eine eigene Spur
checked-a-day-without-a-lift = ein Tag ohne Übung
checked-for-a-second-day-of = { $a } für einen zweiten Tag des Blocks
checked-a-block-without-a-day = ein Block ohne Tag
checked-weeks-in-all-more-than = { $a } Wochen zusammen, mehr als höchstens { $b }
checked-starts-of-a-later-block = "starts" eines späteren Blocks neben "rounds"
checked-scheme-beside-weeks = "scheme" neben "weeks"
checked-a-lift-without-scheme-and = eine Übung ohne "scheme" und ohne "weeks"
checked-write-scheme-3x5-for-all = schreib scheme = "3x5" für alle Wochen, oder weeks = [...] mit einem je Woche
checked-a-lift-that-no-week = eine Übung, die keine Woche hat
checked-schemes-for-weeks-in-a =
    { $a ->
        [one] Schemata für 1 Woche in einem Block von { $b }
       *[other] Schemata für { $a } Wochen in einem Block von { $b }
    }
checked-write-one-for-each-week = schreib eines je Woche, "-" für eine Woche ohne die Übung, oder "scheme" für alle
checked-a-scheme-for-each-week = ein Schema je Woche neben "light" des Blocks
checked-write-the-light-weeks-own = schreib den leichten Wochen eigene Schemata und lass "light" weg, oder ein "scheme"
checked-a-share-of-a-training = ein Anteil eines Trainingsmaximums in { $a }, das { $b } am { $c } nicht hat
