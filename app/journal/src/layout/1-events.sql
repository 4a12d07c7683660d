-- The journal's first layout. Never change this file; add the next one.
PRAGMA application_id = 0x50696e4a; -- "PinJ"

-- AUTOINCREMENT keeps the highest number ever given in sqlite_sequence, so that a cut tail shows.
CREATE TABLE events (
    seq     INTEGER PRIMARY KEY AUTOINCREMENT CHECK (seq >= 1),
    at_ms   INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00:00Z
    version INTEGER NOT NULL CHECK (version >= 1),
    kind    TEXT    NOT NULL,
    body    TEXT    NOT NULL, -- JSON
    hash    BLOB    NOT NULL CHECK (length(hash) = 32)
) STRICT;

CREATE TRIGGER events_never_change BEFORE UPDATE ON events
BEGIN SELECT raise(ABORT, 'the journal is append-only: no event is changed'); END;

CREATE TRIGGER events_never_go BEFORE DELETE ON events
BEGIN SELECT raise(ABORT, 'the journal is append-only: no event is deleted'); END;

-- REPLACE does not fire the trigger above, so a number is never given twice.
CREATE TRIGGER events_in_order BEFORE INSERT ON events
WHEN new.seq IS NOT (SELECT coalesce(max(seq), 0) + 1 FROM events)
BEGIN SELECT raise(ABORT, 'the journal is append-only: events are numbered without gaps'); END;
