#!/usr/bin/env python3
"""The page on a real network of this machine's own: two networks in namespaces, the kiosk between them,
bound to one. From that one it is found by name through multicast DNS (RFC 6762) and service discovery
(RFC 6763) and its board opened; from the other neither its name nor its port is to be had, not even
through the kiosk as a router. The questions are asked by a small asker here, and by Debian's
avahi-resolve where it is installed.

Needs root and Debian's iproute2. Touches no interface of the machine.

    cargo build && python3 tests/references/network.py target/debug/pinladder
"""
import http.client
import os
import pathlib
import signal
import socket
import struct
import subprocess
import sys
import tempfile
import time

KIOSK, PHONE, OTHER = "pl-kiosk", "pl-phone", "pl-other"
NEAR, FAR = "10.77.0", "10.78.0"
PORT = 8470
NAME = "pinladder.local"
GROUP = ("224.0.0.251", 5353)
A, PTR, TXT, AAAA, SRV = 1, 12, 16, 28, 33


def run(*words, check=True):
    return subprocess.run(words, check=check, text=True, capture_output=True)


def within(space, *words):
    return ["ip", "netns", "exec", space, *words]


def networks():
    for space in (KIOSK, PHONE, OTHER):
        run("ip", "netns", "add", space)
        run(*within(space, "ip", "link", "set", "lo", "up"))
    for net, space in ((NEAR, PHONE), (FAR, OTHER)):
        ours, theirs = f"k-{space}", f"v-{space}"
        run("ip", "link", "add", ours, "netns", KIOSK, "type", "veth", "peer", "name", theirs, "netns", space)
        for where, link, last in ((KIOSK, ours, 1), (space, theirs, 2)):
            run(*within(where, "ip", "addr", "add", f"{net}.{last}/24", "dev", link))
            run(*within(where, "ip", "link", "set", link, "up", "multicast", "on"))
            run(*within(where, "ip", "route", "add", "224.0.0.0/4", "dev", link), check=False)
    # Whoever is on the far network may send what is for the near one through the kiosk.
    run(*within(OTHER, "ip", "route", "add", "default", "via", f"{FAR}.1"))


def away():
    for space in (KIOSK, PHONE, OTHER):
        run("ip", "netns", "del", space, check=False)


def question(name, kind):
    labels = b"".join(bytes([len(label)]) + label.encode() for label in name.split("."))
    # The top bit of the class asks for an answer to this port alone.
    return struct.pack(">6H", 0, 0, 1, 0, 0, 0) + labels + b"\0" + struct.pack(">2H", kind, 0x8001)


def name_at(packet, at):
    labels, after = [], None
    while length := packet[at]:
        if length & 0xC0:
            after = after or at + 2
            at = (length & 0x3F) << 8 | packet[at + 1]
            continue
        labels.append(packet[at + 1:at + 1 + length].decode())
        at += 1 + length
    return ".".join(labels), after or at + 1


def answers(packet):
    counts = struct.unpack(">6H", packet[:12])
    at = 12
    for _ in range(counts[2]):
        at = name_at(packet, at)[1] + 4
    for _ in range(sum(counts[3:])):
        name, at = name_at(packet, at)
        kind, _, _, length = struct.unpack(">2HIH", packet[at:at + 10])
        data, at = at + 10, at + 10 + length
        if kind == A:
            yield name, kind, socket.inet_ntoa(packet[data:at])
        elif kind == PTR:
            yield name, kind, name_at(packet, data)[0]
        elif kind == SRV:
            port = struct.unpack(">H", packet[data + 4:data + 6])[0]
            yield name, kind, (name_at(packet, data + 6)[0], port)


def asked(own, name, kind, wait=4.0):
    """What the network answers to a question, as (name, kind, value)."""
    asker = socket.socket(socket.AF_INET, socket.SOCK_DGRAM)
    asker.setsockopt(socket.IPPROTO_IP, socket.IP_MULTICAST_IF, socket.inet_aton(own))
    asker.setsockopt(socket.IPPROTO_IP, socket.IP_MULTICAST_TTL, 255)
    asker.bind((own, 0))
    asker.settimeout(0.5)
    found, end = [], time.monotonic() + wait
    while not found and time.monotonic() < end:
        asker.sendto(question(name, kind), GROUP)
        try:
            found = list(answers(asker.recv(9_000)))
        except TimeoutError:
            pass
    return found


def opened(address, host):
    """The status and words of the board at an address, or why there is none."""
    connection = http.client.HTTPConnection(address, PORT, timeout=4)
    try:
        connection.request("GET", "/board", headers={"Host": f"{host}:{PORT}"})
        response = connection.getresponse()
        return f"{response.status}, {'Floor' in response.read().decode()}"
    except OSError as error:
        return f"no connection ({error})"


def phone():
    """In the near namespace."""
    own = f"{NEAR}.2"
    found = asked(own, NAME, A)
    print("who is", NAME, "->", found)
    address = next(value for name, kind, value in found if kind == A and name == NAME)
    services = asked(own, "_http._tcp.local", PTR)
    print("which pages are there ->", services)
    service = next(value for _, kind, value in services if kind == PTR)
    where = [value for name, kind, value in services + asked(own, service, SRV) if kind == SRV]
    print("where is", service, "->", where)
    assert address == f"{NEAR}.1" and where[0] == (NAME, PORT), (address, where)
    for host in (NAME, address):
        board = opened(address, host)
        print(f"the board as {host} -> {board}")
        assert board == "200, True", board
    refused = opened(address, "pages.example")
    print(f"the board as a name of elsewhere -> {refused}")
    assert refused.startswith("421"), refused


def other():
    """In the far namespace."""
    found = asked(f"{FAR}.2", NAME, A) + asked(f"{FAR}.2", "_http._tcp.local", PTR)
    print("who is", NAME, "->", found or "nobody answers")
    assert not found
    for address in (f"{FAR}.1", f"{NEAR}.1"):
        board = opened(address, address)
        print(f"the board at {address} -> {board}")
        assert board.startswith("no connection"), board


def avahi(space):
    """Debian's own resolver, on a bus and with a daemon of its own."""
    script = ("mkdir -p /run/dbus /run/avahi-daemon && dbus-daemon --system --fork --nopidfile && "
              "avahi-daemon --no-drop-root --no-chroot --daemonize && sleep 2 && "
              f"timeout 10 avahi-resolve -4 -n {NAME}; avahi-daemon --kill")
    # Files under /run are seen in this mount namespace alone.
    words = ["unshare", "--mount", "sh", "-c", f"mount -t tmpfs tmpfs /run && {script}"]
    told = run(*within(space, *words), check=False)
    return (told.stdout or told.stderr).strip()


def ask_from(space, role):
    told = run(*within(space, sys.executable, os.path.abspath(__file__), f"--{role}"), check=False)
    print(f"== from {space}\n{told.stdout}{told.stderr}", end="")
    return told.returncode == 0


def main():
    binary = os.path.abspath(sys.argv[1])
    away()
    networks()
    with tempfile.TemporaryDirectory() as data:
        settings = f'share = true\ntls = false\naddress = "{NEAR}.1"\nport = {PORT}\n'
        (pathlib.Path(data) / "kiosk.toml").write_text(settings, encoding="ascii")
        env = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET")}
        kiosk = subprocess.Popen(within(KIOSK, binary, "--data", data), env=env, stdout=subprocess.DEVNULL)
        try:
            for _ in range(300):
                if PORT in listening():
                    break
                time.sleep(0.1)
            print("== listening:", listening())
            well = ask_from(PHONE, "phone") & ask_from(OTHER, "other")
            if pathlib.Path("/usr/sbin/avahi-daemon").exists():
                for space in (PHONE, OTHER):
                    print(f"== avahi-resolve from {space}: {avahi(space)}")
        finally:
            kiosk.send_signal(signal.SIGINT)
            kiosk.wait(20)
            away()
    sys.exit(not well)


def listening():
    told = run(*within(KIOSK, "ss", "-Hltn")).stdout
    return {int(line.split()[3].rsplit(":", 1)[1]): line.split()[3] for line in told.splitlines()}


if __name__ == "__main__":
    if sys.argv[1] == "--phone":
        phone()
    elif sys.argv[1] == "--other":
        other()
    else:
        main()
