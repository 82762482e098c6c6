"""No machine paths, no promise without an issue number, no binaries in the repository."""

import re

import project

# Spelled with classes so that this file does not find itself.
RULES = [
    (re.compile(r"/w[o]rk/|/r[o]ot/|/home/[a-z]|/tmp/bash[_]"), "a path of one machine"),
    (re.compile(r"\b(?:T[O]DO|F[I]XME|X[X]X)\b(?!\(#\d+\))"), "a promise without an issue number"),
    (re.compile(r"^(?:<{7}|>{7}) "), "an unresolved merge"),
]
_TEXT = (".hpp", ".cpp", ".py", ".sh", ".cmake", ".txt", ".md", ".json", ".sql", ".story", ".ts",
         ".tsx", ".html", ".css", ".svg", ".csv", ".yml", ".toml")
_PLAIN_NAMES = ("LICENSE", "run", "test", ".ci/run", ".gitignore", ".clang-format", ".clang-tidy")
_MOST_BYTES = 1_000_000


def _is_text(path):
    return path.endswith(_TEXT) or path in _PLAIN_NAMES


def violations(root):
    found = []
    for path in project.files(root):
        raw = (project.Path(root) / path).read_bytes()
        if len(raw) > _MOST_BYTES:
            found.append(f"{path}:1: {len(raw)} bytes: too large to be kept with the sources")
        if b"\0" in raw and not path.startswith(("tests/", "data/", "docs/")):
            found.append(f"{path}:1: a binary file")
        if not _is_text(path):
            continue
        for number, line in enumerate(raw.decode("utf-8", "replace").splitlines(), 1):
            found += [f"{path}:{number}: {what}" for rule, what in RULES if rule.search(line)]
    return found
