loads-not-made = the plates do not make { $load }; they make { $made }; ask the coach for another load
loads-made-between = { $below } and { $above }
loads-made-at-most = { $most } at most
loads-made-at-least = { $least } at least
loads-made-nothing = nothing near it
