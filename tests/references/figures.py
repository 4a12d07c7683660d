#!/usr/bin/env python3
"""Figures of the whole process under a virtual display: size, first frame, memory, idle CPU.

Needs Debian's xvfb and the libraries that the window loads late (libx11-6 libx11-xcb1 libxcb1
libxcursor1 libxi6 libxkbcommon-x11-0), and python-xlib from PyPI. Talks to no network.

    cargo build --release && python3 tests/references/figures.py target/release/pinladder
"""
import os
import subprocess
import sys
import tempfile
import time

from Xlib import X, display

IDLE_S = 20
STARTS = 7
NUMBER = 93


def resident_kb(pid):
    with open(f"/proc/{pid}/status", encoding="ascii") as status:
        fields = dict(line.split(":", 1) for line in status if ":" in line)
    return int(fields["VmRSS"].split()[0]), int(fields["RssAnon"].split()[0])


def cpu_ticks(pid):
    with open(f"/proc/{pid}/stat", encoding="ascii") as stat:
        fields = stat.read().rsplit(")", 1)[1].split()
    return int(fields[11]) + int(fields[12])


def pixel(root):
    """One pixel of the first tile: black until the first frame is there."""
    image = root.get_image(100, 300, 1, 1, X.ZPixmap, 0xFFFFFFFF)
    return bytes(image.data)[:3]


def start(binary, data, root):
    env = dict(os.environ, DISPLAY=f":{NUMBER}", PINLADDER_LOG="error")
    env.pop("WAYLAND_DISPLAY", None)
    before = pixel(root)
    begun = time.monotonic()
    kiosk = subprocess.Popen([binary, "--data", data], env=env)
    while pixel(root) == before and time.monotonic() - begun < 20:
        time.sleep(0.0005)
    return kiosk, (time.monotonic() - begun) * 1000


def measure(binary, root):
    starts = []
    with tempfile.TemporaryDirectory() as data:
        with open(os.path.join(data, "kiosk.toml"), "w", encoding="ascii") as file:
            file.write("port = 18470\n")
        for at in range(STARTS + 1):
            kiosk, took = start(binary, data, root)
            starts.append(took)
            if at == STARTS:
                time.sleep(3)
                used = cpu_ticks(kiosk.pid)
                time.sleep(IDLE_S)
                used = cpu_ticks(kiosk.pid) - used
                whole, own = resident_kb(kiosk.pid)
            kiosk.terminate()
            kiosk.wait(10)
            time.sleep(0.3)
    first, rest = starts[0], sorted(starts[1:])
    print(f"first start, demo gym laid {first:8.0f} ms to the first frame")
    print(f"start to first frame       {rest[len(rest) // 2]:8.0f} ms"
          f" (median of {len(rest)}, {rest[0]:.0f} to {rest[-1]:.0f})")
    print(f"resident when idle         {whole / 1024:8.1f} MB,"
          f" of which its own {own / 1024:.1f} MB")
    share = used / os.sysconf("SC_CLK_TCK") / IDLE_S * 100
    print(f"idle CPU over {IDLE_S} s         {share:8.2f} % of a core")


def main():
    binary = os.path.abspath(sys.argv[1])
    print(f"binary                     {os.path.getsize(binary) / 1e6:8.1f} MB")
    server = subprocess.Popen(
        ["Xvfb", f":{NUMBER}", "-screen", "0", "1280x800x24"], stderr=subprocess.DEVNULL
    )
    try:
        for _ in range(100):
            if os.path.exists(f"/tmp/.X11-unix/X{NUMBER}"):
                break
            time.sleep(0.05)
        measure(binary, display.Display(f":{NUMBER}").screen().root)
    finally:
        server.terminate()


if __name__ == "__main__":
    main()
