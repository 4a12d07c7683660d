-- What `pinladder hub prepare` lays into a database of its own. It may be run again at any time.
--
-- Each kiosk is a role. It may add events that follow its own last one by number and by seal, and
-- read those of its gym; nothing is changed, nothing is deleted, nothing else is seen.
CREATE SCHEMA IF NOT EXISTS pinladder;

CREATE TABLE IF NOT EXISTS pinladder.kiosks (
    kiosk     text   PRIMARY KEY,               -- the role's name too
    gym       text   NOT NULL CHECK (gym <> ''),
    last_seq  bigint NOT NULL DEFAULT 0,        -- number and seal of its last event
    last_seal bytea  NOT NULL DEFAULT decode(repeat('00', 32), 'hex')
);

CREATE TABLE IF NOT EXISTS pinladder.events (
    kiosk   text    NOT NULL REFERENCES pinladder.kiosks,
    gym     text    NOT NULL,
    seq     bigint  NOT NULL CHECK (seq > 0),
    at_ms   bigint  NOT NULL,                   -- the moment, by that kiosk's steady clock
    version integer NOT NULL CHECK (version > 0),
    kind    text    NOT NULL,
    body    text    NOT NULL,                   -- JSON, byte by byte as the kiosk's journal has it
    seal    bytea   NOT NULL CHECK (octet_length(seal) = 32),
    PRIMARY KEY (kiosk, seq)
);
-- The order that all agree on.
CREATE INDEX IF NOT EXISTS events_in_order ON pinladder.events (gym, at_ms, kiosk, seq);

-- The gym of whoever asks.
CREATE OR REPLACE FUNCTION pinladder.own_gym() RETURNS text
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
    SELECT gym FROM pinladder.kiosks WHERE kiosk = session_user::text
$$;

-- What seals an event, as the kiosk's journal does: SHA-256 over the seal before, three numbers,
-- and two texts with their lengths in bytes before them.
CREATE OR REPLACE FUNCTION pinladder.sealed(
    before bytea, seq bigint, at_ms bigint, version integer, kind text, body text
) RETURNS bytea
LANGUAGE sql IMMUTABLE SET search_path = pg_catalog, pg_temp AS $$
    SELECT sha256(before || int8send(seq) || int8send(at_ms) || int4send(version)
        || int8send(octet_length(convert_to(kind, 'UTF8'))::bigint) || convert_to(kind, 'UTF8')
        || int8send(octet_length(convert_to(body, 'UTF8'))::bigint) || convert_to(body, 'UTF8'))
$$;

-- Events stand only where they follow what stands: by number without a gap, and by seal.
CREATE OR REPLACE FUNCTION pinladder.follows() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
    whose   text;
    head    pinladder.kiosks;
    bad     bigint;
    new_seq bigint;
BEGIN
    SELECT min(kiosk), max(seq) INTO whose, new_seq FROM fresh;
    IF whose IS NULL THEN
        RETURN NULL;
    END IF;
    IF EXISTS (SELECT FROM fresh WHERE kiosk <> whose) THEN
        RAISE EXCEPTION 'events of several kiosks at once' USING ERRCODE = 'PL002';
    END IF;
    SELECT * INTO head FROM pinladder.kiosks WHERE kiosk = whose FOR UPDATE;
    SELECT min(seq) INTO bad FROM (
        SELECT seq, row_number() OVER in_order AS n, seal,
            pinladder.sealed(lag(seal, 1, head.last_seal) OVER in_order,
                seq, at_ms, version, kind, body) AS due
        FROM fresh WINDOW in_order AS (ORDER BY seq)
    ) AS held WHERE seq <> head.last_seq + n OR seal <> due;
    IF bad IS NOT NULL THEN
        RAISE EXCEPTION 'event % of % does not follow event %', bad, whose, head.last_seq
            USING ERRCODE = 'PL001';
    END IF;
    UPDATE pinladder.kiosks SET last_seq = new_seq,
        last_seal = (SELECT seal FROM fresh WHERE seq = new_seq)
    WHERE kiosk = whose;
    RETURN NULL;
END
$$;
CREATE OR REPLACE TRIGGER follows AFTER INSERT ON pinladder.events
    REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION pinladder.follows();

-- Nobody rewrites the record, its owner neither, short of taking this away.
CREATE OR REPLACE FUNCTION pinladder.never() RETURNS trigger
LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
BEGIN
    RAISE EXCEPTION 'events are only added' USING ERRCODE = 'PL003';
END
$$;
CREATE OR REPLACE TRIGGER never BEFORE UPDATE OR DELETE OR TRUNCATE ON pinladder.events
    FOR EACH STATEMENT EXECUTE FUNCTION pinladder.never();

DO $$
BEGIN
    IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'pinladder_kiosk') THEN
        CREATE ROLE pinladder_kiosk NOLOGIN;
    END IF;
    EXECUTE format('REVOKE ALL ON DATABASE %I FROM PUBLIC', current_database());
    EXECUTE format('GRANT CONNECT ON DATABASE %I TO pinladder_kiosk', current_database());
END
$$;
REVOKE ALL ON SCHEMA public FROM PUBLIC;
REVOKE ALL ON ALL FUNCTIONS IN SCHEMA pinladder FROM PUBLIC;
GRANT USAGE ON SCHEMA pinladder TO pinladder_kiosk;
GRANT SELECT ON pinladder.kiosks TO pinladder_kiosk;
GRANT SELECT, INSERT ON pinladder.events TO pinladder_kiosk;
GRANT EXECUTE ON FUNCTION pinladder.own_gym() TO pinladder_kiosk;

ALTER TABLE pinladder.kiosks ENABLE ROW LEVEL SECURITY;
ALTER TABLE pinladder.events ENABLE ROW LEVEL SECURITY;
DROP POLICY IF EXISTS own_gym ON pinladder.kiosks;
CREATE POLICY own_gym ON pinladder.kiosks FOR SELECT TO pinladder_kiosk
    USING (gym = (SELECT pinladder.own_gym()));
DROP POLICY IF EXISTS own_gym ON pinladder.events;
CREATE POLICY own_gym ON pinladder.events FOR SELECT TO pinladder_kiosk
    USING (gym = (SELECT pinladder.own_gym()));
DROP POLICY IF EXISTS own_rows ON pinladder.events;
CREATE POLICY own_rows ON pinladder.events FOR INSERT TO pinladder_kiosk
    WITH CHECK (kiosk = session_user::text AND gym = (SELECT pinladder.own_gym()));
