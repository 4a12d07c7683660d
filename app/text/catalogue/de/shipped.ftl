## Lifts.
shipped-rack-pull = Rack Pull
shipped-halting-deadlift = Kreuzheben bis Knie
shipped-barbell-shrug = Schulterheben
shipped-deadlift = Kreuzheben
shipped-power-clean = Standumsetzen
shipped-power-snatch = Standreißen

## Cues.
shipped-back-set-before-the-bar = Rücken fest, bevor sich die Stange hebt
shipped-bar-against-the-leg = Stange am Bein
shipped-shoulders-in-front-of-the = Schultern vor der Stange
shipped-shins-near-vertical = Schienbeine fast senkrecht
shipped-push-the-floor-away = Boden wegdrücken
shipped-stop-at-the-top-of = oben an der Kniescheibe anhalten
shipped-stand-tall-first = erst ganz aufrichten
shipped-shoulders-to-the-ears = Schultern zu den Ohren
shipped-arms-straight = Arme gestreckt
shipped-slow-off-the-floor-fast = langsam vom Boden, schnell ab dem Knie
shipped-bar-close = Stange nah am Körper
shipped-elbows-through = Ellbogen durch
shipped-wide-hook-grip = breiter Klemmgriff

## Cautions.
shipped-back-moved-the-set-is = Rücken gibt nach: Satz ist vorbei
shipped-pain-stop-and-see-a = Schmerz: aufhören, zu Coach oder Arzt
shipped-collars-on-same-load-on = Verschlüsse zu, beide Seiten gleich schwer

## As sheets of an older journal have it.
shipped-collars-on-plates-alike-on = Verschlüsse zu, Seiten gleich
shipped-pins-at-the-same-hole = Bolzen beidseits gleich, Stange mittig
shipped-hands-and-feet-clear-of = Hände und Füße weg von den Bolzen
shipped-set-the-bar-down-do = Stange absetzen, nicht auf die Bolzen fallen lassen
shipped-nobody-within-reach-of-the = niemand in Reichweite der Stange
shipped-missed-let-go-and-step = misslungen: loslassen und weg von der Stange

## Kinds of things in the files.
shipped-lift = die Übung
shipped-rack = das Rack
shipped-bar = die Stange
shipped-hole = das Loch
shipped-plate-set = der Scheibensatz
shipped-warm-up-pattern = das Aufwärmmuster
