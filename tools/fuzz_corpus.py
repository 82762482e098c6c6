#!/usr/bin/env python3
"""The inputs a fuzz target has found worth keeping, as one text file: base64, one input a line.

  tools/fuzz_corpus.py unpack FILE FOLDER   writes each input into a file of its own
  tools/fuzz_corpus.py pack FOLDER FILE     keeps what lies in the folder, the shortest first
"""

import base64
import hashlib
import pathlib
import sys

# A file that is still read through in review; the shortest inputs say most a byte.
MOST_BYTES = 400_000


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


def main(arguments):
    match arguments:
        case ["unpack", packed, folder]:
            count = unpack(pathlib.Path(packed), pathlib.Path(folder))
        case ["pack", folder, packed]:
            count = pack(pathlib.Path(folder), pathlib.Path(packed))
        case _:
            print(__doc__, file=sys.stderr)
            return 2
    print(f"{count} inputs")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
