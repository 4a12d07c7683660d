## What the hands have to do.
each-side = je Seite
take-off-line = { $plates } abnehmen
put-on-line = { $plates } auflegen
then = , dann{" "}
look-first = erst auf die Stange schauen
strip-for-pins = auf { $load } abräumen, dann Bolzen in Loch { $hole }
strip-for-hooks = auf { $load } abräumen, dann Haken in Loch { $hole }
strip-for-the-hooks = auf { $load } abräumen, dann auf die Haken
strip-for-floor = auf { $load } abräumen, dann auf den Boden
each-side-holds = je Seite muss { $plates } drauf sein
must-hold = es muss { $plates } drauf sein
no-plates = keine Scheiben
left-right = links { $left }, rechts { $right }
left-right-lines =
    links { $left }
    rechts { $right }
weighs = { $plate }, wiegt { $mass }
plates-elsewhere = { $plates } hängt noch auf: { $bar }; von dort holen
loaded = aufgelegt
bar-holds = auf der Stange...

## What the bar holds, said by hand.
holds-question = { $bar }: was ist jetzt drauf?
holds-empty = leer
holds-wanted = wie es sein soll
holds-before = wie vorher
holds-plates = oder Scheibe für Scheibe, je Seite, von innen
holds-none = noch keine Scheiben
holds-save = das ist drauf
holds-total = mit Stange { $load }
take-last = letzte weg
the-word = was auf der Stange ist

## Whose turn it is.
turn-pad = nicht jetzt...
turn-question = { $lifter }: was jetzt?
later = später
later-more = nach dem Nächsten
skip-set = Satz auslassen
skip-set-more = { $set }
longer = ich brauche länger
longer-more = eine Minute mehr
leave = ich gehe
leave-more = die Übung bleibt offen
mine = jetzt ich
mine-more = vor den anderen
i-am-back = bin wieder da
back-more = ich mache wieder mit
away = weg
also-up = { $bar }, { $rack }: { $lifter } ist dran
passed-over = kam um { $clock } nicht
passed-over-once = kam nicht
place-next = gleich
rests = Pause { $time }
raise = Stange { $mm } mm höher
not-raised = nichts unter den Scheiben
waiting-load = auflegen, wenn du dran bist
x-longer = { $n } s geht nicht; 1 bis { $most } s sind möglich
x-nothing-said = niemand hat gesagt, was auf der Stange ist; sag, was drauf ist
