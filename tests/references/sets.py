#!/usr/bin/env python3
"""Figures of the CSV download: rate against the sqlite3 shell's own CSV of the same database, and peak
memory with few and with many sets.

Needs Debian's sqlite3. The journal is sealed here as tests/references/seal.py does; the kiosk makes
its record from it. Talks to loopback alone.

    cargo build --release && python3 tests/references/sets.py target/release/pinladder [SETS ...]
"""
import hashlib
import http.client
import json
import os
import pathlib
import signal
import sqlite3
import struct
import subprocess
import sys
import tempfile
import time

PORT = 18474
CODE = "flat-backs-only"
HERE = pathlib.Path(__file__).parent
SETS_OF_A_LIFT = 500
TRIES = 3


def begun(number):
    """A lift as the journal of a released version has it, with another number and day."""
    with sqlite3.connect(f"file:{HERE.parent / 'journals' / 'v0.1.0.sqlite'}?immutable=1", uri=True) as old:
        body = old.execute("SELECT body FROM events WHERE kind = 'lift_begun' LIMIT 1").fetchone()[0]
    body = json.loads(body)
    body["no"] = number
    body["sheet"]["date"] = f"{2000 + number // 336:04}-{1 + number // 28 % 12:02}-{1 + number % 28:02}"
    return json.dumps(body, separators=(",", ":"), ensure_ascii=False)


def events(sets):
    lift = 0
    for number in range(sets):
        if number % SETS_OF_A_LIFT == 0:
            lift += 1
            yield "lift_begun", begun(lift)
        yield "set_done", f'{{"no":{lift},"rung":{number % 2},"reps":{number % 6},"back":"kept"}}'


def fill(path, sets):
    """Appends to a journal that the kiosk has begun."""
    journal = sqlite3.connect(path, isolation_level=None)
    number, before = journal.execute(
        "SELECT seq, hash FROM events ORDER BY seq DESC LIMIT 1").fetchone()
    guard = journal.execute("SELECT sql FROM sqlite_schema WHERE name = 'events_in_order'").fetchone()[0]
    journal.execute("BEGIN")
    journal.execute("DROP TRIGGER events_in_order")
    for kind, body in events(sets):
        number += 1
        at_ms = 1_000_000_000_000 + number * 1_000
        sha = hashlib.sha256(before + struct.pack(">QqI", number, at_ms, 1))
        for part in (kind.encode(), body.encode()):
            sha.update(struct.pack(">Q", len(part)) + part)
        before = sha.digest()
        journal.execute("INSERT INTO events VALUES (?, ?, 1, ?, ?, ?)", (number, at_ms, kind, body, before))
    journal.execute(guard)
    journal.execute("COMMIT")
    journal.close()


def memory(pid, key):
    with open(f"/proc/{pid}/status", encoding="ascii") as status:
        fields = dict(line.split(":", 1) for line in status if ":" in line)
    return int(fields[key].split()[0]) / 1024


def ask(method, path, body=None, headers=None, take=None):
    connection = http.client.HTTPConnection("127.0.0.1", PORT, timeout=600)
    connection.request(method, path, body, headers or {})
    response = connection.getresponse()
    while piece := response.read(1 << 20):
        if take:
            take.write(piece)
    return response


def start(binary, data):
    env = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET")}
    kiosk = subprocess.Popen([binary, "--data", str(data)], env=env, stdout=subprocess.DEVNULL)
    for _ in range(6_000):
        try:
            ask("GET", "/")
            return kiosk
        except OSError:
            time.sleep(0.1)
    raise SystemExit("no page")


def measure(binary, sets):
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        data = folder / "data"
        data.mkdir()
        (data / "kiosk.toml").write_text(f"share = true\nport = {PORT}\n", encoding="ascii")
        run = lambda *words, **more: subprocess.run(
            [binary, "--data", str(data), *words], check=True, stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL, **more)
        run("sheet")
        run("code", input=CODE + "\n", text=True)
        fill(data / "journal.sqlite", sets)
        begin = time.monotonic()
        run("journal", "verify")
        proof = time.monotonic() - begin
        kiosk = start(binary, data)
        try:
            form = {"Origin": f"http://127.0.0.1:{PORT}", "Content-Type": "application/x-www-form-urlencoded"}
            cookie = ask("POST", "/sign-in", f"code={CODE}", form).getheader("Set-Cookie").split(";")[0]
            time.sleep(1)
            with open(f"/proc/{kiosk.pid}/clear_refs", "w", encoding="ascii") as clear:
                clear.write("5")  # From here on the peak counts anew.
            before = memory(kiosk.pid, "VmRSS")
            ours = []
            for _ in range(TRIES):
                with open(folder / "ours.csv", "wb") as file:
                    begin = time.monotonic()
                    ask("GET", "/record.csv", headers={"Cookie": cookie}, take=file)
                    ours.append(time.monotonic() - begin)
            peak = memory(kiosk.pid, "VmHWM")
        finally:
            kiosk.send_signal(signal.SIGINT)
            kiosk.wait(60)
        shell = []
        for _ in range(TRIES):
            with open(folder / "shell.csv", "wb") as file:
                begin = time.monotonic()
                subprocess.run(["sqlite3", "-csv", "-header", str(data / "record.sqlite"),
                                "SELECT * FROM sets ORDER BY seq"], stdout=file, check=True)
                shell.append(time.monotonic() - begin)
        rows = sum(1 for _ in open(folder / "ours.csv", "rb")) - 1
        assert rows == sum(1 for _ in open(folder / "shell.csv", "rb")) - 1, rows
        size = (folder / "ours.csv").stat().st_size, (folder / "shell.csv").stat().st_size
        ours, shell = min(ours), min(shell)
        print(f"{rows} sets: ours {ours:.2f} s, {rows / ours:,.0f} rows/s, {size[0] / 1e6:.1f} MB"
              f" | sqlite3 shell {shell:.2f} s, {rows / shell:,.0f} rows/s, {size[1] / 1e6:.1f} MB"
              f" | memory before {before:.1f} MB, at the peak {peak:.1f} MB, more by {peak - before:.1f} MB"
              f" | proof of the journal {proof:.1f} s")


def main():
    binary = os.path.abspath(sys.argv[1])
    for sets in map(int, sys.argv[2:] or ["10000", "1000000"]):
        measure(binary, sets)


if __name__ == "__main__":
    main()
