#!/usr/bin/env python3
"""Times the command line program as a user meets it: `scenarios.py BINARY`, Markdown rows."""

import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

REPEATS = 7
SAID = ["routine; nothing found", "routine; rest fine",
        "routine; LH outside bruise middle, slight; rest fine",
        "lame RH; RH DD M2 behind; spray; wrap on; rest fine",
        "routine; both hinds heel horn erosion, slight; rest fine",
        "lame LH; LH outside white line abscess heel, bad; opened; block on inside; rest fine"]


def cows(count):
    return "".join(f"{101 + number} {SAID[number % len(SAID)]}\n" for number in range(count))


def seconds(command, environment, given=None):
    begin = time.perf_counter()
    subprocess.run(command, env=environment, input=given, text=True, check=False,
                   stdout=subprocess.DEVNULL)
    return time.perf_counter() - begin


def recorded(binary, folder, count):
    """Seconds to record a file of `count` cows into a new file of records."""
    environment = {**os.environ, "XDG_DATA_HOME": folder, "TZ": "UTC"}
    calls = Path(folder) / "day.calls"
    calls.write_text(cows(count))
    subprocess.run([binary, "start", "Bench Farm", "--new-herd", "--feet", "all"], check=True,
                   env=environment, stdout=subprocess.DEVNULL)
    took = seconds([binary, "record", str(calls)], environment)
    shown = subprocess.run([binary, "log"], check=True, env=environment, text=True,
                           capture_output=True).stdout
    if shown.count('"kind":"turn"') != count:
        sys.exit(f"{shown.count(chr(10))} entries after recording {count} cows")
    return took


def row(what, taken, note):
    print(f"| {what} | {statistics.median(taken) * 1000:.0f} ms | "
          f"{min(taken) * 1000:.0f} - {max(taken) * 1000:.0f} | {note} |")


def main():
    binary = sys.argv[1]
    for count in (60, 600):
        taken = []
        for _ in range(REPEATS):
            with tempfile.TemporaryDirectory() as folder:
                taken.append(recorded(binary, folder, count))
        row(f"record a file of {count} cows", taken, f"{REPEATS} new files, whole process")
    taken = []
    for _ in range(REPEATS):
        with tempfile.TemporaryDirectory() as folder:
            taken.append(seconds([binary, "example"],
                                 {**os.environ, "XDG_DATA_HOME": folder, "TZ": "UTC"}))
    row("evenclaw example, from nothing", taken, f"{REPEATS} new files, whole process")


if __name__ == "__main__":
    main()
