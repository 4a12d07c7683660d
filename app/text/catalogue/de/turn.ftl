## What the hands have to do.
each-side = je Seite
take-off-line = { $a } abnehmen
put-on-line = { $a } auflegen
then = , dann{" "}
look-first = erst auf die Stange schauen
strip-for-pins = auf { $a } abräumen, dann Bolzen in Loch { $b }
strip-for-hooks = auf { $a } abräumen, dann Haken in Loch { $b }
strip-for-the-hooks = auf { $a } abräumen, dann auf die Haken
strip-for-floor = auf { $a } abräumen, dann auf den Boden
each-side-holds = je Seite muss { $a } drauf sein
must-hold = es muss { $a } drauf sein
no-plates = keine Scheiben
left-right = links { $a }, rechts { $b }
left-right-lines =
    links { $a }
    rechts { $b }
weighs = { $a }, wiegt { $b }
plates-elsewhere = { $a } hängt noch auf: { $b }; von dort holen
loaded = aufgelegt
bar-holds = auf der Stange...

## What the bar holds, said by hand.
holds-question = { $a }: was ist jetzt drauf?
holds-empty = leer
holds-wanted = wie es sein soll
holds-before = wie vorher
holds-plates = oder Scheibe für Scheibe, je Seite, von innen
holds-none = noch keine Scheiben
holds-save = das ist drauf
holds-total = mit Stange { $a }
take-last = letzte weg
the-word = was auf der Stange ist

## Whose turn it is.
turn-pad = nicht jetzt...
turn-question = { $a }: was jetzt?
later = später
later-more = nach dem Nächsten
skip-set = Satz auslassen
skip-set-more = { $a }
longer = ich brauche länger
longer-more = eine Minute mehr
leave = ich gehe
leave-more = die Übung bleibt offen
mine = jetzt ich
mine-more = vor den anderen
i-am-back = bin wieder da
back-more = ich mache wieder mit
away = weg
also-up = { $a }, { $b }: { $c } ist dran
passed-over = kam um { $a } nicht
passed-over-once = kam nicht
place-next = gleich
rests = Pause { $a }
raise = Stange { $a } mm höher
not-raised = nichts unter den Scheiben
waiting-load = auflegen, wenn du dran bist
x-longer = { $a } s geht nicht; 1 bis { $b } s sind möglich
x-nothing-said = niemand hat gesagt, was auf der Stange ist; sag, was drauf ist
