"""Seals the first ten invented rows of the journal's tests apart from the program: FIPS 180-4 by hashlib.

    python3 tests/references/seal.py

Reads the rows as written, in the snapshot of the wire form, a minute and a half apart. What it
prints stands in app/journal/tests/journal/proof.rs. Not part of `cargo test`.
"""

import hashlib
import pathlib
import struct

ROWS = (
    pathlib.Path(__file__).parents[2]
    / "app/journal/tests/journal/snapshots"
    / "journal__wire_form__every_kind_is_written_exactly_so.snap"
)
FIRST_MS, APART_MS = 1_772_442_000_000, 90_000
EVENTS = 10

text = ROWS.read_text(encoding="utf-8").split("---\n", 2)[2].rstrip("\n")
before = bytes(32)
for number, row in enumerate(text.split("\n")[:EVENTS]):
    version, kind, body = row.split(" ", 2)
    sha = hashlib.sha256(before)
    sha.update(struct.pack(">QqI", number + 1, FIRST_MS + number * APART_MS, int(version)))
    for part in (kind.encode(), body.encode()):
        sha.update(struct.pack(">Q", len(part)) + part)
    before = sha.digest()
print(before.hex())
