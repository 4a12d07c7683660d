loads-not-made = the plates do not make { $a }; they make { $b }; ask the coach for another load
loads-made-between = { $a } and { $b }
loads-made-at-most = { $a } at most
loads-made-at-least = { $a } at least
loads-made-nothing = nothing near it
