#!/usr/bin/env python3
"""Markdown of a gcovr summary: `gcovr --json-summary | coverage_table.py`.

Lines by folder, core/ and store/ as a whole, and the ten files of core/ with the least covered.
"""

import json
import sys

WORST = 10


def folder_of(path):
    return "/".join(path.split("/")[:2])


def row(name, files):
    total = sum(file["line_total"] for file in files)
    covered = sum(file["line_covered"] for file in files)
    share = f"{100 * covered / total:.1f} %" if total else "no lines"
    return f"| {name} | {len(files)} | {covered} of {total} | {share} |"


def table(summary):
    files = [file for file in summary["files"] if file["line_total"]]
    folders = {}
    for file in files:
        folders.setdefault(folder_of(file["filename"]), []).append(file)
    yield "| folder | files | lines reached | share |"
    yield "|---|---|---|---|"
    for folder in sorted(folders):
        yield row(folder, folders[folder])
    for top in ("core", "store"):
        yield row(f"**{top}/**", [f for f in files if f["filename"].startswith(f"{top}/")])
    core = [file for file in files if file["filename"].startswith("core/")]
    yield f"\nThe {WORST} files of core/ with the smallest share:\n"
    yield "| file | files | lines reached | share |"
    yield "|---|---|---|---|"
    core.sort(key=lambda file: (file["line_covered"] / file["line_total"], file["filename"]))
    for file in core[:WORST]:
        yield row(file["filename"], [file])


if __name__ == "__main__":
    print(*table(json.load(sys.stdin)), sep="\n")
