#!/usr/bin/env python3
"""Whether the page's load delays a tap: the milliseconds that the kiosk takes for each tap (decided,
kept on the disk, drawn as a frame) on a quiet page, and while the page is flooded as far as it lets
itself be: whole records downloaded over and over, readers who hardly read, boards that follow, codes
guessed, half requests, copies of the database.

Needs nothing but Python. Talks to loopback alone. The flood runs in processes of its own, which
stand back: on a real network they are other machines and take nothing of this one's processor.

    cargo build -p acceptance --example season
    python3 tests/references/load.py target/debug/examples/season [SETS [TAPS]]
"""
import http.client
import importlib.util
import multiprocessing
import os
import pathlib
import socket
import statistics
import subprocess
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).parent
PORT = 18475
CODE = "flat-backs-only"
ORIGIN = {"Origin": f"http://127.0.0.1:{PORT}", "Content-Type": "application/x-www-form-urlencoded"}


def filler():
    """sets.py's way to a journal of many sets."""
    spec = importlib.util.spec_from_file_location("sets", HERE / "sets.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module.fill


class Season:
    def __init__(self, binary, folder):
        self.process = subprocess.Popen([binary, str(folder), str(PORT), "1"], stdin=subprocess.PIPE,
                                        stdout=subprocess.PIPE, text=True)
        print(self.process.stdout.readline().strip(), flush=True)

    def say(self, word):
        self.process.stdin.write(word + "\n")
        self.process.stdin.flush()
        return self.process.stdout.readline().strip()

    def taps(self, count):
        return sorted(map(float, self.say(f"taps {count}").split()))

    def end(self):
        self.process.stdin.write("quit\n")
        self.process.stdin.close()
        self.process.wait(120)


def ask(method, path, body=None, headers=None, most=None):
    """The status, and how many bytes came."""
    connection = http.client.HTTPConnection("127.0.0.1", PORT, timeout=120)
    connection.request(method, path, body, headers or {})
    response = connection.getresponse()
    came = 0
    while piece := response.read(1 << 16):
        came += len(piece)
        if most and came > most:
            break
    connection.close()
    return response.status, came, response.getheader("Set-Cookie")


def again(tally, name, work):
    """Does something over and over, and counts what came of it."""
    os.nice(19)
    while True:
        try:
            status, came, _ = work()
        except OSError:
            status, came = "broke off", 0
            time.sleep(0.05)
        counts = dict(tally.get(name, {}))
        counts[status] = counts.get(status, 0) + 1
        counts["MB"] = counts.get("MB", 0) + came / 1e6
        tally[name] = counts


def slow(path, cookie):
    """Takes a few bytes a second of a long answer."""
    os.nice(19)
    while True:
        try:
            reader = socket.create_connection(("127.0.0.1", PORT), 10)
            reader.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, 2_048)
            head = f"GET {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nCookie: {cookie}\r\n\r\n"
            reader.sendall(head.encode())
            while reader.recv(64):
                time.sleep(0.2)
        except OSError:
            time.sleep(0.2)


def half():
    """Heads that never end."""
    os.nice(19)
    while True:
        held = []
        for _ in range(20):
            try:
                one = socket.create_connection(("127.0.0.1", PORT), 10)
                one.sendall(b"GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nX: ")
                held.append(one)
            except OSError:
                pass
        time.sleep(3)


def flood(tally, cookie):
    coach = {"Cookie": cookie}
    guess = lambda: ask("POST", "/sign-in", "code=not-the-code", ORIGIN)
    works = [("CSV", lambda: ask("GET", "/record.csv", None, coach))] * 4
    works += [("JSON", lambda: ask("GET", "/record.json", None, coach))] * 2
    works += [("database", lambda: ask("GET", "/journal.sqlite", None, coach))] * 2
    works += [("sessions", lambda: ask("GET", "/coach", None, coach)), ("plan", lambda: ask("GET", "/coach/plan", None, coach))]
    works += [("guessed codes", guess)] * 2
    jobs = [multiprocessing.Process(target=again, args=(tally, *work), daemon=True) for work in works]
    jobs += [multiprocessing.Process(target=slow, args=(path, cookie), daemon=True)
             for path in ["/record.csv"] * 3 + ["/board/live"] * 16]
    jobs.append(multiprocessing.Process(target=half, daemon=True))
    for job in jobs:
        job.start()
    return jobs


def told(name, taps):
    at = lambda share: taps[min(len(taps) - 1, int(share * len(taps)))]
    print(f"{name}: {len(taps)} taps, median {statistics.median(taps):.2f} ms, 95 of 100 within {at(0.95):.2f} ms, "
          f"99 within {at(0.99):.2f} ms, the slowest {taps[-1]:.2f} ms", flush=True)


def main():
    multiprocessing.set_start_method("fork")
    binary = sys.argv[1]
    sets, count = (int(sys.argv[n]) if len(sys.argv) > n else most for n, most in ((2, 50_000), (3, 400)))
    with tempfile.TemporaryDirectory() as folder:
        data = pathlib.Path(folder) / "data"
        season = Season(binary, data)
        season.end()
        filler()(data / "journal.sqlite", sets)
        season = Season(binary, data)
        try:
            cookie = ask("POST", "/sign-in", f"code={CODE}", ORIGIN)[2].split(";")[0]
            season.taps(20)
            told("quiet page", season.taps(count))
            with multiprocessing.Manager() as manager:
                tally = manager.dict()
                jobs = flood(tally, cookie)
                time.sleep(5)
                told("flooded page", season.taps(count))
                counts = {name: {key: round(value, 1) for key, value in counts.items()} for name, counts in tally.items()}
                for job in jobs:
                    job.kill()
            time.sleep(1)
            told("quiet again", season.taps(count))
            for name, of in sorted(counts.items()):
                print(f"  {name}: {of}")
            print("the front page afterwards:", ask("GET", "/")[0])
        finally:
            season.end()


if __name__ == "__main__":
    main()
