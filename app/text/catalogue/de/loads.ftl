loads-not-made = { $load } geht mit diesen Scheiben nicht; es gehen { $made }; nach einer anderen Last fragen
loads-made-between = { $below } und { $above }
loads-made-at-most = höchstens { $most }
loads-made-at-least = mindestens { $least }
loads-made-nothing = keine in der Nähe
