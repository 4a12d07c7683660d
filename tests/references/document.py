#!/usr/bin/env python3
"""A schema-driven tester against the page's OpenAPI document: as anybody, and as a coach.

Needs schemathesis from PyPI, in the same environment as this script. Talks to loopback alone; the
number of requests is bounded.

    cargo build && python3 tests/references/document.py target/debug/pinladder
"""
import http.client
import os
import pathlib
import signal
import subprocess
import sys
import tempfile
import time

PORT = 18473
BASE = f"http://127.0.0.1:{PORT}"
CODE = "flat-backs-only"
EXAMPLES = 40


def start(binary, data):
    (data / "kiosk.toml").write_text(f"share = true\nport = {PORT}\n", encoding="ascii")
    subprocess.run([binary, "--data", str(data), "code"], input=CODE + "\n", text=True, check=True,
                   stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    env = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET")}
    kiosk = subprocess.Popen([binary, "--data", str(data)], env=env, stdout=subprocess.DEVNULL)
    for _ in range(200):
        try:
            ask("GET", "/")
            return kiosk
        except OSError:
            time.sleep(0.1)
    raise SystemExit("no page")


def ask(method, path, body=None, headers=None):
    connection = http.client.HTTPConnection("127.0.0.1", PORT, timeout=30)
    connection.request(method, path, body, headers or {})
    response = connection.getresponse()
    response.read()
    return response


def sign_in():
    form = {"Origin": BASE, "Content-Type": "application/x-www-form-urlencoded"}
    response = ask("POST", "/sign-in", f"code={CODE}", form)
    return response.getheader("Set-Cookie").split(";")[0]


# What the tester may also take for a refusal: a page leads whoever has no session to the form, and a
# form that is too long is told so.
CONFIG = """
[checks.negative_data_rejection]
expected-statuses = ["303", "400", "401", "403", "404", "405", "413", "414", "415", "421", "429"]
"""


def run(title, data, cookie, *more):
    print(f"== {title}", flush=True)
    tester = pathlib.Path(os.path.abspath(sys.executable)).parent / "schemathesis"
    config = data / "tester.toml"
    auth = f'[auth.openapi.coach]\napi_key = "{cookie.split("=")[1]}"\n' if cookie else ""
    config.write_text(CONFIG + auth, encoding="ascii")
    # The live board never ends by itself.
    command = [str(tester), "--config-file", str(config), "run", f"{BASE}/openapi.json", "--exclude-path", "/board/live",
               "--checks", "all", "--max-examples", str(EXAMPLES), "--request-timeout", "20",
               "--generation-deterministic", "--no-color", "-H", f"Origin: {BASE}", *more]
    # Its cache goes into the folder where it runs, which goes away with the data.
    return subprocess.run(command, check=False, cwd=data).returncode


def main():
    binary = os.path.abspath(sys.argv[1])
    with tempfile.TemporaryDirectory() as data:
        kiosk = start(binary, pathlib.Path(data))
        try:
            data = pathlib.Path(data)
            failed = run("as a coach", data, sign_in(), "--exclude-path", "/sign-out",
                         "--exclude-path", "/sign-in")
            failed |= run("as anybody", data, None)
            alive = ask("GET", "/").status == 200
        finally:
            kiosk.send_signal(signal.SIGINT)
            kiosk.wait(20)
    print("the kiosk answered to the end" if alive else "the kiosk did not answer at the end")
    sys.exit(failed or not alive)


if __name__ == "__main__":
    main()
