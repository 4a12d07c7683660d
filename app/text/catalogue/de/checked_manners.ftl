checked-write-four-down-bottom-up = schreib vier: ab, unten, auf, oben, wie "tempo 3-0-1-0", mit X für so schnell es geht hinauf
checked-a-tempo-of-figures =
    { $a ->
        [one] ein Tempo aus 1 Zahl
       *[other] ein Tempo aus { $a } Zahlen
    }
checked-a-tempo-with-figures-that = ein Tempo mit Zahlen, die nicht 0 bis { $a } Sekunden sind
checked-two-things-said-of-the = zweierlei zu denselben Sätzen ({ $a })
checked-two-ways-of-doing-the = zwei Arten, dieselben Sätze zu machen
checked-not-a-pause-within-a = keine Pause in der Wiederholung
checked-write-whole-seconds-from-1 = schreib ganze Sekunden von 1 bis { $a }, wie "pause 2 s"
checked-which-could-be-a-rest = was eine Satzpause oder ein Halten in jeder Wiederholung sein kann
checked-a-mixed-grip-which-is = ein Kreuzgriff, der bei diesen Zügen nicht genommen wird
checked-write-double-overhand-hook-grip = schreib "double overhand", "hook grip" oder "straps"
checked-a-hole-where-holes-count = ein Loch { $a }; Löcher zählen von unten ab 1
checked-write-it-as-hole-6 = schreib es wie "hole 6"
checked-blocks-without-their-height = Blöcke ohne ihre Höhe
checked-write-it-as-blocks-100 = schreib es wie "blocks 100 mm" oder "blocks 4 in"
checked-a-bar-for-some-of = eine Stange für einen Teil der Sätze einer Übung
checked-write-the-sets-on-another = schreib die Sätze mit einer anderen Stange als zweite Übung des Tages, mit eigenem Namen in gym.toml
checked-not-understood-as-where-or = nicht verstanden als wo oder wie Sätze gemacht werden
checked-write-hole-6-blocks-100 = schreib "hole 6", "blocks 100 mm", "tempo 3-0-1-0", "pause 2 s", "belt", "straps", "no belt" oder "hook grip"
checked-which-could-be-a-load = was eine Last oder ein Tempo sein kann
checked-a-cell-that-says-otherwise = eine Zelle, die etwas anderes sagt als die Sätze daneben
checked-which-could-be-or = was { $a } oder { $b } sein kann
checked-write-the-bar-s-whole = schreib den ganzen Namen der Stange
checked-a-hole-for-some-set = ein Loch für einen Teil der Sätze der Übung und keines für die anderen
checked-write-the-hole-with-each = schreib das Loch zu jeder Satzgruppe
checked-blocks-for-some-set-groups = Blöcke für einen Teil der Sätze der Übung und keine für die anderen
checked-write-the-blocks-with-each = schreib die Blöcke zu jeder Satzgruppe, oder "no blocks"
checked-which-the-has-not-it = was { $a } nicht hat: es beginnt am Boden
checked-write-blocks-100-mm-or = schreib "blocks 100 mm", oder lass das Loch weg
checked-which-the-has-not-it-starts = was { $a } nicht hat: es beginnt im Rack
checked-write-hole-6-or-leave = schreib "hole 6", oder lass die Blöcke weg
checked-where-the-of-has-holes = wo { $a } von { $b } { $c } Löcher hat
checked-write-a-hole-from-1 = schreib ein Loch von 1 bis { $a }
checked-which-does-not-stand-by = was nicht bei { $a } von { $b } steht
checked-write-a-bar-of-that = schreib eine Stange dieses Racks: { $a }
