#!/usr/bin/env python3
"""The sheet of a day with sixty cows made into pages by whole processes: `printing.py BINARY`.

Ours beside two ways to print it without ours: Chromium prints the same page (what one would do who
has only the HTML), and paps sets the same words as plain text with Pango and cairo, the libraries
of ours, with no table, box or drawing to care for. Processor time, all threads; Markdown rows.
"""

import os
import resource
import shutil
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

from command_line import cows

COWS = 60
REPEATS = 7


def cpu_seconds(command, environment):
    """Of the process and those it waited for."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run(command, env=environment, check=True, stdout=subprocess.DEVNULL,
                   stderr=subprocess.DEVNULL)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def taken_by(command, environment):
    cpu_seconds(command, environment)  # warms up
    return sorted(cpu_seconds(command, environment) for _ in range(REPEATS))


def row(what, taken, note):
    print(f"| {what} | {statistics.median(taken) * 1000:.0f} ms | "
          f"{min(taken) * 1000:.0f} - {max(taken) * 1000:.0f} | {note} |")
    return statistics.median(taken)


def chromium(page, folder):
    flags = ["--headless", "--disable-gpu", "--no-pdf-header-footer", "--no-first-run",
             f"--user-data-dir={folder}/profile", f"--print-to-pdf={folder}/chromium.pdf"]
    if os.getuid() == 0:
        flags.append("--no-sandbox")  # its sandbox refuses to run as root
    return ["chromium", *flags, f"file://{page}"]


def main():
    binary = sys.argv[1]
    with tempfile.TemporaryDirectory() as folder:
        environment = {**os.environ, "XDG_DATA_HOME": folder, "TZ": "UTC"}

        def ours(*arguments):
            return [binary, *map(str, arguments)]

        calls, page, text = (Path(folder) / name for name in ("day.calls", "day.html", "day.txt"))
        calls.write_text(cows(COWS))
        for command in (ours("start", "Bench Farm", "--new-herd", "--feet", "all"),
                        ours("record", calls), ours("sheet", "--out", page)):
            subprocess.run(command, env=environment, check=False, stdout=subprocess.DEVNULL)
        with text.open("w") as out:
            subprocess.run(ours("sheet", "--text"), env=environment, check=True, stdout=out)
        note = f"CPU, {REPEATS} repeats, whole process"
        sheet = row(f"sheet of {COWS} cows as PDF from its records",
                    taken_by(ours("sheet", "--out", f"{folder}/day.pdf"), environment), note)
        for name, command in (("paps sets its words alone", ["paps", str(text)]),
                              ("Chromium prints its page", chromium(page, folder))):
            if shutil.which(command[0]):
                peer = row(name, taken_by(command, environment), note)
                print(f"| {name} / sheet as PDF | {peer / sheet:.1f} times | one run | |")


if __name__ == "__main__":
    main()
