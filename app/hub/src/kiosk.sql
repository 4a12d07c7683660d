
DO $$
BEGIN
    IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = {name}) THEN
        CREATE ROLE "{kiosk}" LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOREPLICATION NOBYPASSRLS
            CONNECTION LIMIT 6;
        GRANT pinladder_kiosk TO "{kiosk}";
    ELSIF NOT EXISTS (
        SELECT FROM pg_auth_members AS m
        JOIN pg_roles AS one ON one.oid = m.member JOIN pg_roles AS all_of ON all_of.oid = m.roleid
        WHERE one.rolname = {name} AND all_of.rolname = 'pinladder_kiosk'
    ) THEN
        RAISE EXCEPTION 'the role {kiosk} is somebody else''s; choose another name for the kiosk';
    END IF;
END
$$;
ALTER ROLE "{kiosk}" PASSWORD {proof};
INSERT INTO pinladder.kiosks (kiosk, gym) VALUES ({name}, {gym}) ON CONFLICT (kiosk) DO NOTHING;
DO $$
BEGIN
    IF EXISTS (
        SELECT FROM pinladder.kiosks WHERE kiosk = {name} AND gym IS DISTINCT FROM {gym}
    ) THEN
        RAISE EXCEPTION 'the kiosk {kiosk} belongs to another gym; choose another name';
    END IF;
END
$$;
