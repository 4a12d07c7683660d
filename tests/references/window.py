#!/usr/bin/env python3
"""Drives the kiosk's real window with real presses: double taps, a slow disk, kills.

Usage: window.py BINARY [KILLS]

Needs Xvfb, xdotool, ImageMagick's import and compare, and cc. Prints one line a trial and ends with
status 1 where a press logged what nobody did, or where the face after a kill is another one.
"""

import os
import random
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time
from pathlib import Path

DISPLAY = ":93"
TILE, MAIN, UNDO = (220, 110), (1005, 720), (118, 720)
# After a change of the screen the main button takes a tap after 1.5 s.
FILL_S = 2.2
GAPS_MS = (40, 120, 260, 350, 500, 800, 1200)
# What stays the same in a rest while its clock runs: lifter and ladder.
STILL = ("500x130+150+10", "320x490+10+150")
SLOW = """
#define _GNU_SOURCE
#include <dlfcn.h>
#include <unistd.h>
static void nap(void) { usleep(900000); }
int fsync(int fd) { nap(); return ((int (*)(int))dlsym(RTLD_NEXT, "fsync"))(fd); }
int fdatasync(int fd) { nap(); return ((int (*)(int))dlsym(RTLD_NEXT, "fdatasync"))(fd); }
"""


class Kiosk:
    """The kiosk in its window, on a data folder that outlives it."""

    def __init__(self, binary, folder):
        self.binary, self.folder, self.process = binary, folder, None

    def start(self, **more):
        env = {**os.environ, "DISPLAY": DISPLAY, **more}
        command = [self.binary, "--data", str(self.folder)]
        quiet = subprocess.DEVNULL
        self.process = subprocess.Popen(command, env=env, stdout=quiet, stderr=quiet)
        for _ in range(100):
            time.sleep(0.2)
            found = subprocess.run(
                ["xdotool", "search", "--onlyvisible", "--name", "."],
                env=env, capture_output=True, check=False,
            )
            if found.stdout.strip():
                break
        time.sleep(FILL_S)

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def kinds(self):
        path = self.folder / "journal.sqlite"
        with sqlite3.connect(f"file:{path}?mode=ro", uri=True) as file:
            return [kind for (kind,) in file.execute("SELECT kind FROM events ORDER BY seq")]

    def since(self, before):
        return self.kinds()[len(before):]


def press(at, *gaps_ms):
    command = ["xdotool", "mousemove", str(at[0]), str(at[1]), "click", "1"]
    for gap in gaps_ms:
        command += ["sleep", str(gap / 1000), "click", "1"]
    subprocess.run(command, env={**os.environ, "DISPLAY": DISPLAY}, check=True)


def picture(path):
    env = {**os.environ, "DISPLAY": DISPLAY}
    subprocess.run(["import", "-window", "root", str(path)], env=env, check=True)


def differs(one, other, place):
    command = ["compare", "-metric", "AE", "-extract", place, str(one), str(other), "null:"]
    told = subprocess.run(command, capture_output=True, text=True, check=False).stderr
    return told.split()[0] != "0"


def told(what, found, right):
    print(f"{'ok ' if right else 'BAD'} {what}: {' '.join(found)}", flush=True)
    return right


def double_taps(kiosk):
    right = True
    for gap in GAPS_MS:
        before = kiosk.kinds()
        press(MAIN, gap)
        time.sleep(FILL_S)
        found = kiosk.since(before)
        right &= told(f"done twice, {gap} ms", found, found.count("set_done") == 1)
        before = kiosk.kinds()
        press(MAIN, gap)
        time.sleep(FILL_S)
        found = kiosk.since(before)
        right &= told(f"go now twice, {gap} ms", found, "set_done" not in found)
        right &= told(f"undone, {gap} ms", *back(kiosk))
    return right


def back(kiosk):
    """Takes back "go now", which comes first, then the set."""
    before = kiosk.kinds()
    for _ in range(2):
        press(UNDO)
        time.sleep(FILL_S)
        found = kiosk.since(before)
        if "entry_undone" in found:
            break
    return found, found.count("turn_unsaid") <= 1 and found.count("entry_undone") == 1


def slow_disk(kiosk, folder):
    source, library = folder / "slow.c", folder / "slow.so"
    source.write_text(SLOW)
    subprocess.run(["cc", "-shared", "-fPIC", "-o", library, source, "-ldl"], check=True)
    kiosk.start(LD_PRELOAD=str(library))
    time.sleep(6)
    before = kiosk.kinds()
    press(MAIN, 300, 300, 400)
    time.sleep(8)
    found = kiosk.since(before)
    right = told("four presses while it saves", found, found.count("set_done") == 1)
    kiosk.kill()
    return right


def kills(kiosk, folder, count):
    random.seed(13)
    right = True
    kiosk.start()
    for at in range(count):
        if random.random() < 0.5:
            press(random.choice((MAIN, UNDO)))
            time.sleep(FILL_S)
        time.sleep(random.random())
        picture(folder / "before.png")
        kiosk.kill()
        kiosk.start()
        picture(folder / "after.png")
        same = not any(differs(folder / "before.png", folder / "after.png", at) for at in STILL)
        right &= told(f"kill {at + 1}", [kiosk.kinds()[-1]], same)
    kiosk.kill()
    return right


def main():
    binary = Path(sys.argv[1]).resolve()
    count = int(sys.argv[2]) if len(sys.argv) > 2 else 20
    screen = ["Xvfb", DISPLAY, "-screen", "0", "1280x800x24"]
    server = subprocess.Popen(screen, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    time.sleep(1)
    try:
        with tempfile.TemporaryDirectory() as folder:
            folder = Path(folder)
            kiosk = Kiosk(binary, folder / "data")
            kiosk.start()
            press(TILE)
            time.sleep(FILL_S)
            press(MAIN)
            time.sleep(FILL_S)
            right = double_taps(kiosk)
            kiosk.kill()
            right &= slow_disk(kiosk, folder)
            right &= kills(kiosk, folder, count)
    finally:
        server.terminate()
    sys.exit(0 if right else 1)


if __name__ == "__main__":
    main()
