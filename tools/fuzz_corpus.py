#!/usr/bin/env python3
"""The inputs a fuzz target has found worth keeping, as one text file: base64, one input a line.

  tools/fuzz_corpus.py unpack FILE FOLDER   writes each input into a file of its own
  tools/fuzz_corpus.py pack FOLDER FILE     keeps what lies in the folder, the shortest first
  tools/fuzz_corpus.py words PAGE... FILE   the words between `` of pages, as a dictionary
"""

import base64
import hashlib
import pathlib
import re
import sys

# A file that is still read through in review; the shortest inputs say most a byte.
MOST_BYTES = 130_000


def unpack(packed, folder):
    folder.mkdir(parents=True, exist_ok=True)
    lines = packed.read_text(encoding="ascii").split() if packed.exists() else []
    for line in lines:
        content = base64.b64decode(line, validate=True)
        (folder / hashlib.sha1(content).hexdigest()).write_bytes(content)
    return len(lines)


def pack(folder, packed):
    inputs = {path.read_bytes() for path in folder.iterdir() if path.is_file()}
    kept, size = [], 0
    for content in sorted(inputs, key=lambda content: (len(content), content)):
        line = base64.b64encode(content).decode("ascii")
        size += len(line) + 1
        if size > MOST_BYTES:
            break
        if line:
            kept.append(line)
    packed.parent.mkdir(parents=True, exist_ok=True)
    packed.write_text("".join(line + "\n" for line in kept), encoding="ascii")
    return len(kept)


def words(pages, dictionary):
    """Comparing of words is not seen by the fuzzer, so it is told which there are."""
    found = set()
    for page in pages:
        found.update(re.findall(r"`([^`\n]{1,60})`", page.read_text(encoding="utf-8")))
    escaped = ["".join(f"\\x{byte:02x}" for byte in word.encode()) for word in sorted(found)]
    dictionary.write_text("".join(f'"{word}"\n' for word in escaped), encoding="ascii")
    return len(found)


def main(arguments):
    match arguments:
        case ["unpack", packed, folder]:
            count = unpack(pathlib.Path(packed), pathlib.Path(folder))
        case ["pack", folder, packed]:
            count = pack(pathlib.Path(folder), pathlib.Path(packed))
        case ["words", *pages, dictionary] if pages:
            count = words([pathlib.Path(page) for page in pages], pathlib.Path(dictionary))
        case _:
            print(__doc__, file=sys.stderr)
            return 2
    print(count)
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
