#!/usr/bin/env python3
"""The kiosk against a browser that shows the same two screens, on the same machine, in one run.

Both run full screen under the same virtual display. A tap is a real click of the X server. Before the
next screen the kiosk writes the set to its journal and waits for the disk; the page only swaps
what is shown. Both draw at most 60 frames a second. Memory is the proportional share (PSS) of all processes. Needs Debian's xvfb,
chromium and the libraries named in figures.py, and python-xlib from PyPI. Talks to no network.

    cargo build --release && python3 tests/references/browser.py target/release/pinladder
"""
import os
import pathlib
import signal
import subprocess
import sys
import tempfile
import time

from Xlib import X, display
from Xlib.ext import xtest

NUMBER = 94
IDLE_S = 20
STARTS = 7
TAPS = 15
HERE = pathlib.Path(__file__).resolve().parent
PAGE = HERE / "browser" / "page.html"
# Where both have the same buttons, and where a tick cannot reach.
TILE, START, DONE, UNDO = (190, 110), (1000, 724), (1030, 724), (119, 724)
# Strips of pixels: through the number of now, and through the buttons.
NUMBER_OF_NOW, BUTTONS = 250, 680
PIXELS = 1280 * 800


class Screen:
    """A virtual display of its own."""

    def __init__(self):
        self.server = subprocess.Popen(
            ["Xvfb", f":{NUMBER}", "-screen", "0", "1280x800x24"], stderr=subprocess.DEVNULL
        )
        for _ in range(200):
            if os.path.exists(f"/tmp/.X11-unix/X{NUMBER}"):
                break
            time.sleep(0.05)
        self.display = display.Display(f":{NUMBER}")
        self.root = self.display.screen().root

    def strip(self, top):
        """Four rows of pixels."""
        return bytes(self.root.get_image(330, top, 900, 4, X.ZPixmap, 0xFFFFFFFF).data)

    def whole(self):
        return bytes(self.root.get_image(0, 0, 1280, 800, X.ZPixmap, 0xFFFFFFFF).data)

    def move(self, at):
        xtest.fake_input(self.display, X.MotionNotify, x=at[0], y=at[1])
        self.display.sync()
        time.sleep(0.05)

    def tap(self, at, top=NUMBER_OF_NOW, held=False):
        """Milliseconds from the press to the first changed pixel of a strip; `held`, the finger
        leaves only after that."""
        self.move(at)
        before = self.strip(top)
        begun = time.monotonic()
        self.press(X.ButtonPress)
        if not held:
            self.press(X.ButtonRelease)
        while self.strip(top) == before:
            if time.monotonic() - begun > 10:
                sys.exit(f"a tap at {at} changed nothing in 10 s")
        took = (time.monotonic() - begun) * 1000
        if held:
            self.press(X.ButtonRelease)
        return took

    def press(self, kind):
        xtest.fake_input(self.display, kind, 1)
        self.display.sync()

    def first_frame(self, command, env):
        """The process, and milliseconds until the screen's corner tile is there."""
        corner = lambda: bytes(self.root.get_image(100, 40, 20, 20, X.ZPixmap, 0xFFFFFFFF).data)
        blank = bytes(20 * 20 * 4)
        white = b"\xff\xff\xff" * 400
        begun = time.monotonic()
        process = subprocess.Popen(command, env=env, stderr=subprocess.DEVNULL,
                                   stdout=subprocess.DEVNULL, start_new_session=True)
        while time.monotonic() - begun < 60:
            seen = corner()
            colours = b"".join(seen[i:i + 3] for i in range(0, len(seen), 4))
            if colours != white and any(colours) and seen != blank:
                break
            time.sleep(0.001)
        return process, (time.monotonic() - begun) * 1000


def family(pid):
    """A process and all below it."""
    below = {}
    for entry in os.listdir("/proc"):
        if entry.isdigit():
            try:
                with open(f"/proc/{entry}/stat", encoding="ascii", errors="replace") as stat:
                    parent = int(stat.read().rsplit(")", 1)[1].split()[1])
            except (FileNotFoundError, ProcessLookupError):
                continue
            below.setdefault(parent, []).append(int(entry))
    found, left = [], [pid]
    while left:
        here = left.pop()
        found.append(here)
        left += below.get(here, [])
    return found


def pss_mb(pids):
    total = 0
    for pid in pids:
        try:
            with open(f"/proc/{pid}/smaps_rollup", encoding="ascii") as rollup:
                total += sum(int(l.split()[1]) for l in rollup if l.startswith("Pss:"))
        except (FileNotFoundError, ProcessLookupError, PermissionError):
            continue
    return total / 1024


def ticks(pids):
    total = 0
    for pid in pids:
        try:
            with open(f"/proc/{pid}/stat", encoding="ascii") as stat:
                fields = stat.read().rsplit(")", 1)[1].split()
            total += int(fields[11]) + int(fields[12])
        except (FileNotFoundError, ProcessLookupError):
            continue
    return total


def stop(process):
    os.killpg(process.pid, signal.SIGTERM)
    try:
        process.wait(10)
    except subprocess.TimeoutExpired:
        os.killpg(process.pid, signal.SIGKILL)
        process.wait(10)
    time.sleep(0.5)


def median(values):
    return sorted(values)[len(values) // 2]


def changed(one, other):
    """Share of pixels that differ."""
    pairs = zip(memoryview(one).cast("I"), memoryview(other).cast("I"))
    return sum(a != b for a, b in pairs) / PIXELS


def measure(screen, command, env, to_bar):
    """Starts, taps, the rest's ticks, memory and idle load of one program."""
    figures = {}
    starts = []
    for at in range(STARTS + 1):
        process, took = screen.first_frame(command, env)
        starts.append(took)
        if at < STARTS:
            time.sleep(1)
            stop(process)
    figures["start to first frame, ms"] = median(starts[1:])
    time.sleep(3)
    to_bar(screen)
    touched, shown = [], []
    for at in range(2 * TAPS):
        if at % 2 == 0:
            touched.append(screen.tap(DONE, BUTTONS, held=True))
        else:
            shown.append(screen.tap(DONE))
        time.sleep(0.6)
        screen.tap(UNDO)
        time.sleep(0.6)
    figures["touch to the first changed pixel, ms"] = median(touched)
    figures["tap to the next screen, ms"] = median(shown)
    screen.tap(DONE)
    time.sleep(3)
    shots = []
    for _ in range(8):
        shots.append(screen.whole())
        time.sleep(1)
    figures["pixels changed by a tick, %"] = 100 * median(
        [changed(a, b) for a, b in zip(shots, shots[1:])])
    pids = family(process.pid)
    used = ticks(pids)
    time.sleep(IDLE_S)
    figures["CPU while the rest runs, % of a core"] = (
        (ticks(pids) - used) / os.sysconf("SC_CLK_TCK") / IDLE_S * 100)
    figures["memory while the rest runs, MB"] = pss_mb(pids)
    stop(process)
    return figures


def kiosk_to_bar(screen):
    screen.tap(TILE)
    time.sleep(0.8)
    screen.tap(START)
    time.sleep(0.8)


def main():
    binary = os.path.abspath(sys.argv[1])
    env = dict(os.environ, DISPLAY=f":{NUMBER}", PINLADDER_LOG="error")
    env.pop("WAYLAND_DISPLAY", None)
    screen = Screen()
    try:
        with tempfile.TemporaryDirectory() as data, tempfile.TemporaryDirectory() as profile:
            with open(os.path.join(data, "kiosk.toml"), "w", encoding="ascii") as file:
                file.write("port = 18471\n")
            ours = measure(screen, [binary, "--data", data], env, kiosk_to_bar)
            flags = ["--kiosk", "--no-sandbox", "--no-first-run", "--incognito", "--disable-gpu",
                     "--window-size=1280,800", "--window-position=0,0",
                     f"--user-data-dir={profile}", PAGE.as_uri()]
            browser = measure(screen, ["chromium", *flags], env, lambda _: None)
    finally:
        screen.server.terminate()
    version = subprocess.run(["chromium", "--version"], capture_output=True, text=True, check=True)
    print(f"{'':38} {'kiosk':>9} {'browser':>9}   browser / kiosk   ({version.stdout.strip()})")
    for name, value in ours.items():
        ratio = browser[name] / value if value else float("inf")
        print(f"{name:38} {value:9.2f} {browser[name]:9.2f} {ratio:12.1f}")


if __name__ == "__main__":
    main()
