#!/usr/bin/env python3
"""A second implementation of the log, written from docs/format/log.md.

  reader.py answer FILE...   one line of JSON per file: what the log in it says
  reader.py golden           a golden entry from each line of a log on standard input
  reader.py ids              ids derived from the lists of fields on standard input, one a line
"""

import sys

import canonical
import log_union
from canonical import Refused
from log_entry import Entry


def answer(path):
    entries, refused = [], []
    with open(path, "rb") as log:
        for number, line in enumerate(log.read().split(b"\n"), 1):
            try:
                if line:
                    entries.append(Entry(line))
            except Refused:
                refused.append(number)
    everything, taken = log_union.merged(entries)
    shown = log_union.shown_of(everything)
    counting = log_union.counting_of(shown, taken)
    return {
        "refused": refused, "everything": [e.digest for e in everything],
        "redacted": [e.digest for e in everything if e.body is None],
        "shown": [e.digest for e in shown], "counting": [e.digest for e in counting],
        "two_versions": log_union.in_two_versions(everything),
        "flaws": sorted(" ".join(map(str, flaw))
                        for flaw in log_union.flaws_of(everything, shown, taken)),
        "believed": log_union.order_flaws(everything)[1],
        "groups": log_union.groups_of(counting)}


def leaves(value, path=""):
    """(path, value) of everything that holds nothing else, such as feet[0].state."""
    if isinstance(value, dict):
        for name, held in sorted(value.items()):
            yield from leaves(held, f"{path}.{name}" if path else name)
    elif isinstance(value, list):
        for at, held in enumerate(value):
            yield from leaves(held, f"{path}[{at}]")
    else:
        yield path, value


def golden(line):
    entry = Entry(line)
    yield f"line {line.decode()}"
    yield f"digest {entry.digest}"
    yield f"readable {entry.readable()}"
    for path, value in leaves(entry.body) if entry.readable() == "yes" else ():
        yield f"value {path} {canonical.canonical(value).decode()}"


def main():
    what, rest = (sys.argv[1], sys.argv[2:]) if len(sys.argv) > 1 else ("", [])
    if what == "answer" and rest:
        for path in rest:
            print(canonical.canonical(answer(path)).decode())
    elif what == "golden":
        for line in sys.stdin.buffer.read().splitlines():
            print(*golden(line), sep="\n")
    elif what == "ids":
        for line in sys.stdin.buffer.read().decode().splitlines():
            print(canonical.derived_id(*canonical.read(line.encode())))
    else:
        sys.exit(__doc__)


if __name__ == "__main__":
    main()
