#!/usr/bin/env python3
"""Kills the whole kiosk, window, shared rack and run loop, at any instant of an evening, and starts it again.

Under a virtual display fingers tap where the buttons are, at a time of their own; SIGKILL falls
anywhere. After each: every event that was in the journal before is there, in order and unchanged;
the chain holds; the kiosk starts and shows the same face as it showed last. What is kept beside the
journal is deleted, cut or left alone in turn. A seed gives the same taps; it is printed with what
fails.

Needs Debian's xvfb, xdotool and the libraries named in figures.py. Talks to no network.

    cargo build --workspace
    python3 tests/references/kills.py target/debug/pinladder 1000 [SEED [DISPLAY]]
"""
import os
import random
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time

# The virtual display; two runs side by side need two.
NUMBER = int(sys.argv[4]) if len(sys.argv) > 4 else 95
# How long a start may take before it counts as none, seconds: a busy machine is no fault.
PATIENCE = 600
# Kills of one evening; then another gym begins.
EVENING = 100
# Where buttons are on 1280 x 800: mostly the main one; tiles and names, undo, later, other reps,
# back moved, loaded, all lifters.
PLACES = [(1000, 720)] * 10 + [(220, 110), (640, 110), (1050, 110), (220, 325), (640, 325),
                               (1050, 325), (866, 80), (1026, 80), (118, 720), (298, 720),
                               (458, 720), (643, 720), (1150, 570), (88, 80), (640, 400)]

# The tiles of the lifters who are planned, on the list of all.
TILES = [(640, 110), (1050, 110), (220, 325), (640, 325)]


def events(data):
    """Number, kind, body and seal of every event, oldest first."""
    path = os.path.join(data, "journal.sqlite")
    if not os.path.exists(path):
        return []
    file = sqlite3.connect(f"file:{path}?mode=ro", uri=True, timeout=5)
    try:
        ask = "SELECT seq, kind, body, hash FROM events ORDER BY seq"
        return file.execute(ask).fetchall()
    except sqlite3.OperationalError:
        return []
    finally:
        file.close()


def settled(rows):
    """Whether the face had answered all that was entered; a start alone answers nothing."""
    kinds = [kind for _, kind, _, _ in rows if kind != "clock_anchored"]
    return not kinds or kinds[-1] == "screen_shown"


def shown(rows):
    """The face that was shown last, as the journal has it."""
    bodies = [body for _, kind, body, _ in rows if kind == "screen_shown"]
    return bodies[-1] if bodies else None


def start(binary, data):
    env = dict(os.environ, DISPLAY=f":{NUMBER}", PINLADDER_LOG="error")
    env.pop("WAYLAND_DISPLAY", None)
    return subprocess.Popen([binary, "--data", data], env=env, stderr=subprocess.DEVNULL)


def tap(at):
    env = dict(os.environ, DISPLAY=f":{NUMBER}")
    words = ["xdotool", "mousemove", str(at[0]), str(at[1]), "mousedown", "1", "sleep", "0.06",
             "mouseup", "1"]
    subprocess.run(words, env=env, check=False, stderr=subprocess.DEVNULL)


def window(kiosk):
    """Waits until the window is there."""
    env = dict(os.environ, DISPLAY=f":{NUMBER}")
    words = ["xdotool", "search", "--onlyvisible", "--name", "."]
    begun = time.monotonic()
    while time.monotonic() - begun < PATIENCE:
        found = subprocess.run(words, env=env, capture_output=True, check=False)
        if found.stdout.strip():
            return True
        if kiosk.poll() is not None:
            return False
        time.sleep(0.05)
    return False


def rude(data, dice):
    """Now and then somebody clears away what may be cleared away."""
    kept = os.path.join(data, "journal.state")
    if not os.path.exists(kept):
        return
    what = dice.randrange(6)
    if what == 0:
        os.remove(kept)
    elif what == 1:
        with open(kept, "r+b") as file:
            file.truncate(dice.randrange(os.path.getsize(kept)))


def once(binary, data, dice, before):
    """One start, taps, one kill; gives the events after it and the faults."""
    faults = []
    kiosk = start(binary, data)
    if not window(kiosk):
        kiosk.kill()
        kiosk.wait()
        return before, ["no window"]
    time.sleep(dice.choice([0.0, 0.3, 0.8]))
    # A new face by itself would be one more screen_shown.
    if settled(before) and shown(events(data)) != shown(before):
        new = [(kind, body) for _, kind, body, _ in events(data)[len(before):]]
        faults.append(f"another face after the start: {shown(before)}, then {new}")
    # Some lift calmly: the main button fills for a while, and begins anew under a finger that
    # comes too early, so that whoever hurries enters hardly a set.
    calm = dice.randrange(2) == 0
    until = time.monotonic() + (dice.uniform(4.0, 8.0) if calm else dice.uniform(0.2, 2.5))
    if calm and dice.randrange(2):
        tap(dice.choice(TILES))
        time.sleep(dice.uniform(1.8, 2.3))
    while time.monotonic() < until:
        tap(PLACES[0] if calm else dice.choice(PLACES))
        time.sleep(dice.uniform(1.8, 2.3) if calm else dice.choice([0.02, 0.2, 0.45]))
    said = events(data)
    # Anywhere in what the last tap set going.
    if dice.randrange(2):
        tap(PLACES[0])
        time.sleep(dice.uniform(0, 0.05))
    kiosk.send_signal(signal.SIGKILL)
    kiosk.wait()
    after = events(data)
    if after[: len(said)] != said or after[: len(before)] != before:
        faults.append(f"{len(said)} events were there, of {len(after)} not all as they were")
    checked = subprocess.run([binary, "--data", data, "journal", "verify"], capture_output=True,
                             text=True, check=False)
    if checked.returncode != 0:
        faults.append(checked.stderr)
    rude(data, dice)
    return after, faults


def gym(binary, data):
    """The demo gym, with a long evening planned for today; gives the events so far."""
    with open(os.path.join(data, "kiosk.toml"), "w", encoding="ascii") as file:
        file.write("share = false\n")
    subprocess.run([binary, "--data", data, "sheet"], capture_output=True, check=True)
    plan = os.path.join(data, "evening.csv")
    with open(plan, "w", encoding="utf-8") as file:
        file.write("date,lifter,lift,sets,reps,load\n")
        for who, load in [("Hamza", 160), ("\u017deljka", 100), ("Ilkka", 140), ("Marisol", 95)]:
            for lift in ["rack pull", "halting deadlift"]:
                file.write(f"{time.strftime('%Y-%m-%d')},{who},{lift},20,5,{load} kg\n")
    taken = subprocess.run([binary, "--data", data, "take", plan], capture_output=True, text=True,
                           check=False)
    assert taken.returncode == 0, taken.stdout + taken.stderr
    return events(data)


def main():
    binary, rounds = os.path.abspath(sys.argv[1]), int(sys.argv[2])
    seed = int(sys.argv[3]) if len(sys.argv) > 3 else 1
    dice = random.Random(seed)
    env_screen = ["Xvfb", f":{NUMBER}", "-screen", "0", "1280x800x24", "-noreset"]
    server = subprocess.Popen(env_screen, stderr=subprocess.DEVNULL)
    time.sleep(1)
    failed, sets, total = 0, 0, 0
    try:
        while total < rounds:
            with tempfile.TemporaryDirectory() as data:
                rows = gym(binary, data)
                for _ in range(min(EVENING, rounds - total)):
                    rows, faults = once(binary, data, dice, rows)
                    failed += len(faults)
                    for fault in faults:
                        print(f"seed {seed} round {total}: {fault}", flush=True)
                    total += 1
                sets += sum(kind == "set_done" for _, kind, _, _ in rows)
            print(f"{total} kills, {len(rows)} events of this evening, {sets} sets in all, "
                  f"{failed} faults, seed {seed}", flush=True)
    finally:
        server.terminate()
    if sets * 10 < total:
        print(f"only {sets} sets were entered in {total} rounds: the taps reach no button", flush=True)
        return True
    return failed > 0


if __name__ == "__main__":
    sys.exit(main())
