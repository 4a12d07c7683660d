#!/usr/bin/env python3
"""Judges the page's own certificate with OpenSSL and Python's ssl, over a running kiosk.

usage: certificates.py target/debug/pinladder
"""
import hashlib
import re
import shutil
import socket
import ssl
import subprocess
import sys
import tempfile
import time
import urllib.request
from datetime import datetime, timedelta, timezone
from pathlib import Path

NAMES = ["127.0.0.1", "pinladder.local", "localhost", "rack.gym.example"]


def openssl(*words: str, fails: bool = False) -> str:
    ran = subprocess.run(["openssl", *words], capture_output=True, text=True)
    told = ran.stdout + ran.stderr
    assert (ran.returncode != 0) == fails, f"openssl {' '.join(words)}: {told}"
    return told


def free_port() -> int:
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        return taken.getsockname()[1]


def wait_for(port: int) -> None:
    for _ in range(200):
        try:
            socket.create_connection(("127.0.0.1", port), timeout=1).close()
            return
        except OSError:
            time.sleep(0.1)
    raise SystemExit("the page is not on")


def peer(port: int, name: str, root: Path) -> bytes:
    """The certificate, as a client sees it that trusts the root alone and asks for the name."""
    context = ssl.create_default_context(cafile=str(root))
    context.verify_flags |= ssl.VERIFY_X509_STRICT
    with socket.create_connection(("127.0.0.1", port), timeout=5) as plain:
        with context.wrap_socket(plain, server_hostname=name) as secure:
            return secure.getpeercert(binary_form=True)


def judge_files(root: Path, leaf: Path) -> None:
    strict = ["verify", "-x509_strict", "-purpose", "sslserver", "-CAfile", str(root)]
    for name in NAMES:
        kind = "-verify_ip" if name[0].isdigit() else "-verify_hostname"
        openssl(*strict, kind, name, str(leaf))
    openssl(*strict, "-verify_hostname", "other.example", str(leaf), fails=True)
    openssl("verify", "-purpose", "sslclient", "-CAfile", str(root), str(leaf), fails=True)
    late = int((datetime.now(timezone.utc) + timedelta(days=366)).timestamp())
    openssl(*strict, "-attime", str(late), str(leaf), fails=True)

    text = openssl("x509", "-noout", "-text", "-in", str(leaf))
    for part in [
        "Digital Signature",
        "TLS Web Server Authentication",
        "CA:FALSE",
        "X509v3 Authority Key Identifier",
        *("IP Address:" + name if name[0].isdigit() else "DNS:" + name for name in NAMES),
    ]:
        assert part in text, f"{part}: {text}"
    days = [
        datetime.strptime(found, "%b %d %H:%M:%S %Y %Z")
        for found in re.findall(r"Not (?:Before|After ?) ?: (.*GMT)", text)
    ]
    lasts = days[1] - days[0]
    assert lasts <= timedelta(days=398), lasts

    text = openssl("x509", "-noout", "-text", "-in", str(root))
    for part in ["CA:TRUE, pathlen:0", "Certificate Sign", "Name Constraints: critical"]:
        assert part in text, f"{part}: {text}"
    print(f"openssl: {lasts.days} days, {len(NAMES)} names, server alone, root constrained")


def main() -> None:
    binary, port = sys.argv[1], free_port()
    data = Path(tempfile.mkdtemp(prefix="pinladder-certificates-"))
    (data / "kiosk.toml").write_text(
        f'share = true\ntls = true\nport = {port}\nhosts = ["rack.gym.example"]\n'
    )
    kiosk = subprocess.Popen(
        [binary, "--data", str(data)],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        env={"PATH": "/usr/bin:/bin", "HOME": str(data)},
    )
    try:
        wait_for(port)
        root, leaf = data / "lan-root.pem", data / "lan-certificate.pem"
        judge_files(root, leaf)
        seen = {peer(port, name, root) for name in NAMES}
        assert seen == {ssl.PEM_cert_to_DER_cert(leaf.read_text())}
        try:
            peer(port, "other.example", root)
        except ssl.SSLCertVerificationError as told:
            print("ssl:", len(NAMES), "names taken, another refused:", told.verify_message)
        else:
            raise AssertionError("another name was taken")
        context = ssl.create_default_context(cafile=str(root))
        with urllib.request.urlopen(f"https://127.0.0.1:{port}/root.crt", context=context) as got:
            der = got.read()
        assert der == ssl.PEM_cert_to_DER_cert(root.read_text())
        print("root.crt:", hashlib.sha256(der).hexdigest())
        # A bookmark of the time before.
        with socket.create_connection(("127.0.0.1", port), timeout=5) as plain:
            ask = f"GET /board HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nConnection: close\r\n\r\n"
            plain.sendall(ask.encode())
            answer = plain.makefile("rb").read().decode()
        assert f"location: https://127.0.0.1:{port}/board" in answer, answer
        print("http leads on to https")
    finally:
        kiosk.terminate()
        kiosk.wait()
        shutil.rmtree(data)


if __name__ == "__main__":
    main()
