-- The record: what stands of the journal, flat, for reading. It may be deleted at any time; it is
-- made again. Change it freely and raise LAYOUT in layout.rs.
PRAGMA application_id = 0x50696e52; -- "PinR"

-- Up to which event of the journal it goes, and that event's hash.
CREATE TABLE mark (
    id   INTEGER PRIMARY KEY CHECK (id = 1),
    upto INTEGER NOT NULL,
    hash BLOB    NOT NULL,
    sum  BLOB    NOT NULL  -- SHA-256 of "record", upto and hash, so that a flipped bit shows
) STRICT;

-- The wall clock, so that times of day are told by it: how far it was ahead of the moments of
-- events when last seen, and since when (told) that is a guess.
CREATE TABLE clock (
    id         INTEGER PRIMARY KEY CHECK (id = 1),
    offset_ms  INTEGER NOT NULL,
    guessed_ms INTEGER           -- NULL when the time of day is known
) STRICT;
INSERT INTO clock VALUES (1, 0, NULL);

CREATE TABLE lifts (
    no          INTEGER PRIMARY KEY,
    lifter      TEXT    NOT NULL,
    unit        TEXT    NOT NULL, -- the lifter's: kg or lb
    lift        TEXT    NOT NULL,
    date        TEXT    NOT NULL, -- ISO 8601
    rack        TEXT    NOT NULL,
    bar         TEXT    NOT NULL,
    hole        INTEGER,          -- from 1; NULL from the floor
    asked_ng    INTEGER NOT NULL, -- the plan's load, nanograms
    rungs       INTEGER NOT NULL, -- how many were set
    begun_at_ms INTEGER NOT NULL, -- by the wall clock, milliseconds since 1970-01-01T00:00:00Z
    stopped     INTEGER NOT NULL, -- 1 when ended before the last rung
    by_plan     INTEGER NOT NULL, -- 1 when the plan had that day then; 0: a programme filled it
    note        TEXT    NOT NULL, -- the coach's words on it
    left_open   INTEGER NOT NULL  -- 1 when it was left open, and closed on a later day
) STRICT;
CREATE INDEX lifts_by_programme ON lifts (date, lifter) WHERE by_plan = 0;

CREATE TABLE rungs (
    lift_no INTEGER NOT NULL,
    rung    INTEGER NOT NULL, -- from 1
    kind    TEXT    NOT NULL, -- warm-up or work
    load_ng INTEGER NOT NULL, -- as planned; one settled on the day is in settled
    reps    INTEGER NOT NULL,
    grp     INTEGER NOT NULL, -- its set group, from 1; 0 for warm-ups and straight sets
    of_top  INTEGER NOT NULL, -- 1 where its load follows from the top set
    PRIMARY KEY (lift_no, rung)
) STRICT, WITHOUT ROWID;

-- Entries that stand, so that the last one can be taken back.
CREATE TABLE entries (
    seq     INTEGER PRIMARY KEY, -- of its event
    lift_no INTEGER NOT NULL,
    what    TEXT    NOT NULL     -- set, skip, stop, go on, settle or left open
) STRICT;
CREATE INDEX entries_of_lift ON entries (lift_no, seq);

-- Work loads settled on the day or following from the top set that stand, rung by rung; the last
-- of a rung counts.
CREATE TABLE settled (
    seq     INTEGER NOT NULL,    -- of its event
    lift_no INTEGER NOT NULL,
    rung    INTEGER NOT NULL,    -- from 1
    load_ng INTEGER NOT NULL
) STRICT;
CREATE INDEX settled_of_rung ON settled (lift_no, rung);

CREATE INDEX settled_of_lift ON settled (lift_no, seq);

-- What is due the next time, after lifts that are over.
CREATE TABLE next_times (
    lift_no       INTEGER PRIMARY KEY,
    verdict       TEXT    NOT NULL, -- raise, repeat, drop, reset or ease
    from_ng       INTEGER NOT NULL, -- the load that it follows from
    load_ng       INTEGER NOT NULL, -- by the rules
    reason        TEXT    NOT NULL,
    coach_load_ng INTEGER,          -- by the coach, which goes before; NULL without
    coach_note    TEXT
) STRICT;

-- Sets that stand.
CREATE TABLE sets (
    seq           INTEGER PRIMARY KEY, -- of its event
    lift_no       INTEGER NOT NULL,
    lifter        TEXT    NOT NULL,
    lift          TEXT    NOT NULL,
    date          TEXT    NOT NULL,
    rack          TEXT    NOT NULL,
    rung          INTEGER NOT NULL,    -- from 1
    kind          TEXT    NOT NULL,    -- warm-up or work
    load_ng       INTEGER NOT NULL,    -- bar, collars and plates, nanograms
    unit          TEXT    NOT NULL,    -- the lifter's: kg or lb
    planned_reps  INTEGER NOT NULL,
    reps          INTEGER NOT NULL,    -- done, 0 for a miss
    back_moved_at INTEGER,             -- the rep, from 1; NULL when the back held
    at_ms         INTEGER NOT NULL     -- by the wall clock
) STRICT;
CREATE INDEX sets_by_session ON sets (date DESC, lifter, lift_no, seq);
CREATE INDEX sets_by_lift ON sets (lift_no);
CREATE INDEX sets_by_lifter ON sets (lifter, lift, date);

-- The coach's plan as it stands.
CREATE TABLE planned (
    id      INTEGER PRIMARY KEY,
    date    TEXT    NOT NULL, -- ISO 8601
    lifter  TEXT    NOT NULL,
    lift    TEXT    NOT NULL,
    sets    INTEGER NOT NULL,
    reps    INTEGER NOT NULL,
    load_of TEXT    NOT NULL, -- 'mass', 'best', 'training', 'top', 'more' or 'due'
    load_ng INTEGER,          -- of 'mass', and how much more than last time of 'more'
    share   INTEGER,          -- hundredths of a percent, of what load_of says
    note    TEXT    NOT NULL
) STRICT;
CREATE INDEX planned_by_day ON planned (date, lifter);
