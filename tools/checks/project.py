"""The files of the project and the C++ text in them, as the house checks see them."""

import re
import subprocess
from pathlib import Path

CPP = (".hpp", ".cpp")
# The top folders that hold our code and words; anything else is no business of the checks.
SKIPPED = ("build/", ".git/", "node_modules/", ".cache/")


def files(root, suffixes=None):
    """Paths relative to root: tracked or new, not ignored; every file where there is no git."""
    root = Path(root)
    if (root / ".git").exists():
        listing = subprocess.run(
            ["git", "-C", str(root), "ls-files", "-co", "--exclude-standard", "-z"],
            check=True, capture_output=True, text=True).stdout.split("\0")
    else:
        listing = [str(p.relative_to(root)) for p in root.rglob("*") if p.is_file()]
    kept = [f for f in sorted(set(listing))
            if f and not f.startswith(SKIPPED) and (root / f).is_file()]
    if suffixes is None:
        return kept
    return [f for f in kept if f.endswith(tuple(suffixes))]


def text(root, path):
    return (Path(root) / path).read_text(encoding="utf-8", errors="replace")


def folder_of(path, folders):
    """The longest of `folders` that holds `path`, or None."""
    holding = [f for f in folders if path.startswith(f + "/")]
    return max(holding, key=len, default=None)


_SPEECH = re.compile(
    r'//[^\n]*|/\*.*?\*/|R"(?P<d>[^(\s]*)\(.*?\)(?P=d)"|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])+\'',
    re.DOTALL)


def code_only(source):
    """C++ with comments and literals blanked; line numbers stay."""
    return _SPEECH.sub(lambda m: re.sub(r"[^\n]", " ", m.group()), source)
