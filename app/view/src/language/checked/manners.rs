//! Templates of where and how sets are done: holes, blocks, bars, gear, tempo. Refuses: a template
//! twice.
super::rows! {
    "write four: down, bottom, up, top, as \"tempo 3-0-1-0\", with X for as fast as it goes up" => "schreib vier: ab, unten, auf, oben, wie \"tempo 3-0-1-0\", mit X für so schnell es geht hinauf";
    "a tempo of {0} figures" => "ein Tempo aus {0} Zahlen";
    "a tempo with figures that are not 0 to {0} seconds" => "ein Tempo mit Zahlen, die nicht 0 bis {0} Sekunden sind";
    "two things said of the {0} of the same sets" => "zweierlei zu denselben Sätzen ({0})";
    "two ways of doing the same sets" => "zwei Arten, dieselben Sätze zu machen";
    "not a pause within a rep" => "keine Pause in der Wiederholung";
    "write whole seconds from 1 to {0}, as \"pause 2 s\"" => "schreib ganze Sekunden von 1 bis {0}, wie \"pause 2 s\"";
    "which could be a rest or a pause in each rep" => "was eine Satzpause oder ein Halten in jeder Wiederholung sein kann";
    "a mixed grip, which is not taken on these pulls" => "ein Kreuzgriff, der bei diesen Zügen nicht genommen wird";
    "write \"double overhand\", \"hook grip\" or \"straps\"" => "schreib \"double overhand\", \"hook grip\" oder \"straps\"";
    "a hole {0}, where holes count from 1 at the bottom" => "ein Loch {0}; Löcher zählen von unten ab 1";
    "write it as \"hole 6\"" => "schreib es wie \"hole 6\"";
    "blocks without their height" => "Blöcke ohne ihre Höhe";
    "write it as \"blocks 100 mm\" or \"blocks 4 in\"" => "schreib es wie \"blocks 100 mm\" oder \"blocks 4 in\"";
    "a bar for some of the sets of one lift" => "eine Stange für einen Teil der Sätze einer Übung";
    "write the sets on another bar as a second lift of the day, with a name of its own in gym.toml" => "schreib die Sätze mit einer anderen Stange als zweite Übung des Tages, mit eigenem Namen in gym.toml";
    "not understood as where or how sets are done" => "nicht verstanden als wo oder wie Sätze gemacht werden";
    "write \"hole 6\", \"blocks 100 mm\", \"tempo 3-0-1-0\", \"pause 2 s\", \"belt\", \"straps\", \"no belt\" or \"hook grip\"" => "schreib \"hole 6\", \"blocks 100 mm\", \"tempo 3-0-1-0\", \"pause 2 s\", \"belt\", \"straps\", \"no belt\" oder \"hook grip\"";
    "which could be a load or a tempo" => "was eine Last oder ein Tempo sein kann";
    "a cell that says otherwise than the sets beside it" => "eine Zelle, die etwas anderes sagt als die Sätze daneben";
    "which could be {0} or {1}" => "was {0} oder {1} sein kann";
    "write the bar's whole name" => "schreib den ganzen Namen der Stange";
    "a hole for some set groups of the lift and none for others" => "ein Loch für einen Teil der Sätze der Übung und keines für die anderen";
    "write the hole with each set group" => "schreib das Loch zu jeder Satzgruppe";
    "blocks for some set groups of the lift and none for others" => "Blöcke für einen Teil der Sätze der Übung und keine für die anderen";
    "write the blocks with each set group, or \"no blocks\"" => "schreib die Blöcke zu jeder Satzgruppe, oder \"no blocks\"";
    "which the {0} has not: it starts on the floor" => "was {0} nicht hat: es beginnt am Boden";
    "write \"blocks 100 mm\", or leave the hole out" => "schreib \"blocks 100 mm\", oder lass das Loch weg";
    "which the {0} has not: it starts in the rack" => "was {0} nicht hat: es beginnt im Rack";
    "write \"hole 6\", or leave the blocks out" => "schreib \"hole 6\", oder lass die Blöcke weg";
    "where the {0} of {1} has {2} holes" => "wo {0} von {1} {2} Löcher hat";
    "write a hole from 1 to {0}" => "schreib ein Loch von 1 bis {0}";
    "which does not stand by the {0} of {1}" => "was nicht bei {0} von {1} steht";
    "write a bar of that rack: {0}" => "schreib eine Stange dieses Racks: {0}";
}
