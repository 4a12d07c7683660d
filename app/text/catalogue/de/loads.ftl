loads-not-made = { $a } geht mit diesen Scheiben nicht; es gehen { $b }; nach einer anderen Last fragen
loads-made-between = { $a } und { $b }
loads-made-at-most = höchstens { $a }
loads-made-at-least = mindestens { $a }
loads-made-nothing = keine in der Nähe
