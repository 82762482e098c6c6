#!/usr/bin/env python3
"""How two benchmark pages differ: `compare.py OLD.md NEW.md`, one row per figure that is in both.

A ratio is new / old. It is marked when the new figure lies outside the spread of the old one; both
pages name the machine they were made on, and figures of two machines say nothing together.
"""

import re
import sys
from pathlib import Path

_ROW = re.compile(r"^\| (?P<what>[^|]+) \| (?P<figure>[0-9.e+-]+) (?P<unit>[^|]+) \| "
                  r"(?:(?P<least>[0-9.e+-]+) - (?P<most>[0-9.e+-]+)|[^|]*) \|", re.MULTILINE)


def figures(page):
    return {row["what"]: row for row in _ROW.finditer(page)}


def compared(old, new):
    before, now = figures(old), figures(new)
    yield "| what | old | new | ratio |"
    yield "|---|---|---|---|"
    for what, row in now.items():
        if what not in before or before[what]["unit"] != row["unit"]:
            continue
        was, figure = before[what], float(row["figure"])
        least, most = was["least"] or was["figure"], was["most"] or was["figure"]
        mark = "" if float(least) <= figure <= float(most) else " outside its spread"
        yield (f"| {what} | {was['figure']} {row['unit']} | {row['figure']} {row['unit']} | "
               f"{figure / float(was['figure']):.2f}{mark} |")


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    print(*compared(*(Path(page).read_text(encoding="utf-8") for page in sys.argv[1:])), sep="\n")
