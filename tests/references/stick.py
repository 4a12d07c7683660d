#!/usr/bin/env python3
"""A stick that is a real block device: a file system in an image, mounted on the folder that the kiosk
watches, with the options of deploy/70-pinladder.rules. Its plan is seen and taken; the record is
written to it; it is pulled while it is written to, fails under the hand, is full.

Needs root, loop devices, and mkfs.ext4 (vfat where the kernel has it). Talks to loopback alone.

    cargo build && python3 tests/references/stick.py target/debug/pinladder
"""
import html
import http.client
import importlib.util
import os
import pathlib
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import threading
import time
import urllib.parse

HERE = pathlib.Path(__file__).parent
PORT = 18476
CODE = "flat-backs-only"
BASE = f"http://127.0.0.1:{PORT}"
SETS = 300_000
ROW = "date,lifter,lift,sets,reps,load,note\n2027-03-01,Hamza,rack pull,1,5,180 kg,from the stick\n"


def run(*words, check=True):
    return subprocess.run(words, check=check, text=True, capture_output=True)


def filler():
    spec = importlib.util.spec_from_file_location("sets", HERE / "sets.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module.fill


class Kiosk:
    def __init__(self, binary, data, place):
        (data / "kiosk.toml").write_text(f'share = true\nport = {PORT}\nstick = "{place}"\n', encoding="ascii")
        env = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET")}
        command = [binary, "--data", str(data)]
        subprocess.run([*command, "sheet"], check=True, capture_output=True)
        subprocess.run([*command, "code"], input=CODE + "\n", text=True, check=True, capture_output=True)
        filler()(data / "journal.sqlite", SETS)
        self.process = subprocess.Popen(command, env=env, stdout=subprocess.DEVNULL)
        self.cookie = ""
        for _ in range(3_000):
            try:
                self.cookie = self.ask("POST", "/sign-in", f"code={CODE}")[1].split(";")[0]
                return
            except OSError:
                time.sleep(0.1)
        raise SystemExit("no page")

    def ask(self, method, path, body=None):
        connection = http.client.HTTPConnection("127.0.0.1", PORT, timeout=300)
        connection.request(method, path, body, {
            "Origin": BASE, "Cookie": self.cookie, "Content-Type": "application/x-www-form-urlencoded"})
        response = connection.getresponse()
        return response.read().decode(), response.getheader("Set-Cookie")

    def desk(self, words):
        for _ in range(150):
            page = self.ask("GET", "/coach/desk")[0]
            if words in page:
                return page
            time.sleep(0.2)
        raise SystemExit(f"the desk never says {words!r}: {page}")

    def order(self, name, page):
        found = re.search(f'value="{name}"><input type="hidden" name="about" value="([^"]*)"', page)
        body = urllib.parse.urlencode({"order": name, "about": html.unescape(found[1]), "code": CODE})
        answer = self.ask("POST", "/coach/desk", body)[0]
        return html.unescape(re.search(r'role="status">([^<]*)', answer)[1])


class Stick:
    """An image on a folder whose room can be less than the image claims."""

    def __init__(self, folder, place, kind, megabytes, truly=None):
        self.place, self.ground = place, None
        if truly:
            self.ground = folder / "ground"
            self.ground.mkdir(exist_ok=True)
            run("mount", "-t", "tmpfs", "-o", f"size={truly}m", "tmpfs", str(self.ground))
        image = (self.ground or folder) / f"{kind}.img"
        with open(image, "wb") as file:
            file.truncate(megabytes << 20)
        run(*(["mkfs.vfat", str(image)] if kind == "vfat" else ["mkfs.ext4", "-q", "-m", "0", str(image)]))
        self.loop = run("losetup", "--find", "--show", str(image)).stdout.strip()
        run("mount", "-o", "nosuid,nodev,noexec", self.loop, str(place))
        lost = place / "lost+found"
        if lost.exists():
            lost.rmdir()

    def pull(self):
        """As udev does when a stick is gone: taken off the tree, whoever has it open."""
        run("umount", "--lazy", str(self.place))

    def out(self):
        run("umount", str(self.place), check=False)
        run("losetup", "-d", self.loop, check=False)
        if self.ground:
            run("umount", "--lazy", str(self.ground), check=False)


def lies(place):
    return sorted(str(path.relative_to(place)) for path in place.rglob("*"))


def taken_and_written(kiosk, folder, place, kind):
    stick = Stick(folder, place, kind, 512)
    try:
        page = kiosk.desk("No plan is on it.")
        print(f"{kind}: an empty stick is seen, and may be written to:", 'value="write"' in page)
        (place / "march.csv").write_text(ROW, encoding="ascii")
        page = kiosk.desk("1 new day")
        print(f"{kind}: taken: {kiosk.order('take', page)}")
        begun = time.monotonic()
        answer = kiosk.order("write", kiosk.desk("Write the record"))
        took = time.monotonic() - begun
        print(f"{kind}: written: {answer} ({took:.1f} s)")
        # Pulled at once after that word: what is on the image itself?
        stick.pull()
        run("losetup", "-d", stick.loop, check=False)
        check = run("fsck.vfat" if kind == "vfat" else "e2fsck", "-fn", str(folder / f"{kind}.img"), check=False)
        stick.loop = run("losetup", "--find", "--show", str(folder / f"{kind}.img")).stdout.strip()
        run("mount", stick.loop, str(place))
        print(f"{kind}: after it was pulled: file system check {check.returncode}, {lies(place)}")
        copy = next(place.glob("pinladder-record-*/journal.sqlite"))
        proof = run(sys.argv[1], "--data", str(folder / f"proof-{kind}"), "journal", "restore", str(copy), check=False)
        print(f"{kind}: its journal: {(proof.stdout or proof.stderr).strip()}")
    finally:
        stick.out()
    return took


def pulled(kiosk, folder, place, after):
    """Pulled while it is written to."""
    stick = Stick(folder, place, "ext4", 512)
    try:
        (place / "notes.txt").write_text("a stick", encoding="ascii")
        page = kiosk.desk("Write the record")
        puller = threading.Timer(after, stick.pull)
        puller.start()
        answer = kiosk.order("write", page)
        puller.join()
        print(f"pulled after {after} s: {answer}; in its place lies {lies(place) or 'nothing'}")
        assert "may be pulled" not in answer
    finally:
        stick.out()
    kiosk.desk("No stick is in")
    # An order from a page that still shows it.
    answer = kiosk.order("write", page)
    print(f"pulled, then ordered: {answer}; in its place lies {lies(place) or 'nothing'}")
    assert not lies(place)


def failing(kiosk, folder, place):
    """A device that takes less than it says, and a full one."""
    for what, megabytes, truly in (("fails under the hand", 512, 60), ("full", 24, None)):
        stick = Stick(folder, place, "ext4", megabytes, truly)
        try:
            (place / "notes.txt").write_text("a stick", encoding="ascii")
            answer = kiosk.order("write", kiosk.desk("Write the record"))
            print(f"{what}: {answer}")
            assert "may be pulled" not in answer
        finally:
            stick.out()
        kiosk.desk("No stick is in")


def main():
    binary = os.path.abspath(sys.argv[1])
    sys.argv[1] = binary
    kinds = ["ext4"]
    if "vfat" in pathlib.Path("/proc/filesystems").read_text() and shutil.which("mkfs.vfat"):
        kinds.append("vfat")
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        data, place = folder / "data", folder / "media"
        data.mkdir()
        place.mkdir()
        kiosk = Kiosk(binary, data, place)
        try:
            kiosk.desk("No stick is in")
            for kind in kinds:
                took = taken_and_written(kiosk, folder, place, kind)
            kiosk.desk("No stick is in")
            # Well within the time that writing takes on this machine.
            for share in (0.25, 0.6):
                pulled(kiosk, folder, place, round(share * took, 2))
            failing(kiosk, folder, place)
            print("the kiosk goes on:", "Plan and done" in kiosk.ask("GET", "/coach/plan")[0])
        finally:
            kiosk.process.send_signal(signal.SIGINT)
            kiosk.process.wait(30)


if __name__ == "__main__":
    main()
