#!/usr/bin/env python3
"""The invented business made by the whole process: `demo_business.py BINARY [HERDS YEARS]`.

Beside it SQLite alone: the rows of every table of that file put into a new one, in one transaction
that is synced, with the same tables and keys and no rule of ours. Markdown rows.
"""

import os
import resource
import sqlite3
import subprocess
import sys
import tempfile
import time
from pathlib import Path


def made(binary, folder, herds, years):
    """Wall and processor seconds of making it."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    begin = time.perf_counter()
    subprocess.run([binary, "demo", "--to", str(folder), "--herds", str(herds), "--years",
                    str(years), "--until", "2026-10-31"],
                   env={**os.environ, "TZ": "UTC"}, check=True, stdout=subprocess.DEVNULL)
    took = time.perf_counter() - begin
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return took, after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def all_rows(file):
    """The statements that make the tables and indexes, and the rows by table."""
    records = sqlite3.connect(file)
    shapes = [sql for (sql,) in records.execute(
        "SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY type DESC")]
    names = [name for (name,) in records.execute(
        "SELECT name FROM sqlite_schema WHERE type = 'table'")]
    rows = {name: records.execute(f'SELECT * FROM "{name}"').fetchall() for name in names}
    records.close()
    return shapes, rows


def bare_inserts(file, shapes, rows):
    """Seconds of putting them into a new file."""
    copy = sqlite3.connect(file, isolation_level=None)
    copy.execute("PRAGMA journal_mode = WAL")
    copy.execute("PRAGMA synchronous = FULL")
    for sql in shapes:
        copy.execute(sql)
    begin = time.perf_counter()
    copy.execute("BEGIN IMMEDIATE")
    for name, of_table in rows.items():
        if of_table:
            marks = ", ".join("?" * len(of_table[0]))
            copy.executemany(f'INSERT INTO "{name}" VALUES ({marks})', of_table)
    copy.execute("COMMIT")
    took = time.perf_counter() - begin
    copy.close()
    return took


def main():
    binary = sys.argv[1]
    herds, years = (int(word) for word in sys.argv[2:4]) if len(sys.argv) > 3 else (12, 3)
    with tempfile.TemporaryDirectory() as folder:
        took, processor = made(binary, Path(folder) / "made", herds, years)
        shapes, rows = all_rows(Path(folder) / "made" / "demo.db")
        bare = bare_inserts(Path(folder) / "bare.db", shapes, rows)
    count = sum(len(of_table) for of_table in rows.values())
    turns = len(rows["turn"])
    print(f"| invented business, {herds} herds, {years} years | {took:.2f} s | once | "
          f"CPU {processor:.2f} s, {processor / turns * 1e6:.0f} us a turn; {turns} turns, {count} "
          f"rows; SQLite inserting the same rows {bare:.2f} s, {took / bare:.1f} times |")


if __name__ == "__main__":
    main()
