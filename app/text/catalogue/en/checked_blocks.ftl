checked-block = block
checked-a-block = a block
checked-a-day-of-a-block = a day of a block
checked-a-lift-of-a-block = a lift of a block
checked-no-block = no block
checked-add-programme-block-tables-or = add [[programme.block]] tables, or leave it out
checked-add-programme-block-day-tables = add [[programme.block.day]] tables
checked-rounds-without-block = "rounds" without "block"
checked-beside-block = { $a } beside "block"
checked-put-the-days-into-the = put the days into the blocks
checked-leave-it-out-days-of = leave it out: days of the week say it
checked-leave-it-out-starts-of = leave it out: "starts" of the first block says it
checked-the-first-block-without-starts = the first block without "starts"
checked-write-the-monday-of-its = write the Monday of its first week, as starts = "2026-01-05"
checked-which-is-no-monday = { $a }, which is no Monday
checked-write-the-monday-of-the = write the Monday of the first week, such as { $a }
checked-while-still-goes-on-to = { $a }, while { $b } still goes on to { $c }
checked-write-or-later-or-leave = write { $a } or later, or leave it out
checked-light-every-without-light = "light_every" without "light"
checked-write-how-light-as-light = write how light, as light = "60 %", or leave it out
checked-a-light-week-in-a = a light week in a block of one week
checked-leave-it-out-or-give = leave it out, or give the block more weeks
checked-the-again-on-the-same = the { $a } again on the same day
checked-write-its-sets-as-one = write its sets as one scheme, or give one a track of its own
checked-a-day-without-a-lift = a day without a lift
checked-for-a-second-day-of = { $a } for a second day of the block
checked-a-block-without-a-day = a block without a day
checked-weeks-in-all-more-than = { $a } weeks in all, more than the most, { $b }
checked-starts-of-a-later-block = "starts" of a later block beside "rounds"
checked-scheme-beside-weeks = "scheme" beside "weeks"
checked-a-lift-without-scheme-and = a lift without "scheme" and without "weeks"
checked-write-scheme-3x5-for-all = write scheme = "3x5" for all weeks, or weeks = [...] with one a week
checked-a-lift-that-no-week = a lift that no week has
checked-schemes-for-weeks-in-a =
    { $a ->
        [one] schemes for 1 week in a block of { $b }
       *[other] schemes for { $a } weeks in a block of { $b }
    }
checked-write-one-for-each-week = write one for each week, "-" for a week without the lift, or "scheme" for all
checked-a-scheme-for-each-week = a scheme for each week beside the block's "light"
checked-write-the-light-weeks-own = write the light weeks' own schemes and leave "light" out, or one "scheme"
checked-a-share-of-a-training = a share of a training max in the { $a } that { $b } does not have on { $c }
