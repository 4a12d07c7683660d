checked-write-four-down-bottom-up = write four: down, bottom, up, top, as "tempo 3-0-1-0", with X for as fast as it goes up
checked-a-tempo-of-figures =
    { $a ->
        [one] a tempo of 1 figure
       *[other] a tempo of { $a } figures
    }
checked-a-tempo-with-figures-that = a tempo with figures that are not 0 to { $a } seconds
checked-two-things-said-of-the = two things said of the { $a } of the same sets
checked-two-ways-of-doing-the = two ways of doing the same sets
checked-not-a-pause-within-a = not a pause within a rep
checked-write-whole-seconds-from-1 = write whole seconds from 1 to { $a }, as "pause 2 s"
checked-which-could-be-a-rest = which could be a rest or a pause in each rep
checked-a-mixed-grip-which-is = a mixed grip, which is not taken on these pulls
checked-write-double-overhand-hook-grip = write "double overhand", "hook grip" or "straps"
checked-a-hole-where-holes-count = a hole { $a }, where holes count from 1 at the bottom
checked-write-it-as-hole-6 = write it as "hole 6"
checked-blocks-without-their-height = blocks without their height
checked-write-it-as-blocks-100 = write it as "blocks 100 mm" or "blocks 4 in"
checked-a-bar-for-some-of = a bar for some of the sets of one lift
checked-write-the-sets-on-another = write the sets on another bar as a second lift of the day, with a name of its own in gym.toml
checked-not-understood-as-where-or = not understood as where or how sets are done
checked-write-hole-6-blocks-100 = write "hole 6", "blocks 100 mm", "tempo 3-0-1-0", "pause 2 s", "belt", "straps", "no belt" or "hook grip"
checked-which-could-be-a-load = which could be a load or a tempo
checked-a-cell-that-says-otherwise = a cell that says otherwise than the sets beside it
checked-which-could-be-or = which could be { $a } or { $b }
checked-write-the-bar-s-whole = write the bar's whole name
checked-a-hole-for-some-set = a hole for some set groups of the lift and none for others
checked-write-the-hole-with-each = write the hole with each set group
checked-blocks-for-some-set-groups = blocks for some set groups of the lift and none for others
checked-write-the-blocks-with-each = write the blocks with each set group, or "no blocks"
checked-which-the-has-not-it = which the { $a } has not: it starts on the floor
checked-write-blocks-100-mm-or = write "blocks 100 mm", or leave the hole out
checked-which-the-has-not-it-starts = which the { $a } has not: it starts in the rack
checked-write-hole-6-or-leave = write "hole 6", or leave the blocks out
checked-where-the-of-has-holes = where the { $a } of { $b } has { $c } holes
checked-write-a-hole-from-1 = write a hole from 1 to { $a }
checked-which-does-not-stand-by = which does not stand by the { $a } of { $b }
checked-write-a-bar-of-that = write a bar of that rack: { $a }
