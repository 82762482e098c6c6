#!/usr/bin/env python3
"""clang-format and clang-tidy over our C++; what was clean before is not read again.

  tools/tidy.py --build build/dev [--jobs 2] [--format-only | --quick] [path ...]

A file counts as read when its own text, every header of ours that it reaches, the settings and the
version of clang-tidy are the same as then. The memory lies in the XDG cache folder, so a second
clone profits too; deleting it costs only time.

--quick reads in one go what the build compiles in one bundle: the headers they share are nearly all
of the work. Without it each source is read alone, so that a forgotten #include shows.
"""

import argparse
import concurrent.futures
import functools
import hashlib
import os
import re
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.dont_write_bytecode = True
sys.path.insert(0, str(ROOT / "tools/checks"))

import project  # noqa: E402

_INCLUDE = re.compile(rb'^\s*#\s*include\s*"([^"]+)"', re.MULTILINE)
# The language alone: what a file means here does not depend on the kind of build.
FLAGS = ["-std=c++20", f"-I{ROOT}", "-Wall", "-Wextra"]
# What --quick leaves out takes three quarters of the time; what it reads is what people run.
WITHOUT_ANALYZER = "--checks=-clang-analyzer-*"
PRODUCT = ("core/", "demo/", "store/", "report/", "cli/")
# The folders whose sources include headers of a library that lies where only pkg-config knows.
LIBRARIES = {"report/pdf": ["cairo-pdf", "cairo-ft", "pangocairo", "pangoft2", "fontconfig"]}


class Reach:
    """The text of a file together with every header of ours below it."""

    def __init__(self, folders):
        self.folders = folders
        self.direct = {}

    def _resolve(self, name):
        return next((folder / name for folder in self.folders if (folder / name).is_file()), None)

    def _read(self, path):
        if path not in self.direct:
            content = path.read_bytes()
            found = (self._resolve(name.decode()) for name in _INCLUDE.findall(content))
            self.direct[path] = (content, [header for header in found if header])
        return self.direct[path]

    def digest(self, path, start):
        seen, waiting = {path}, [path]
        while waiting:
            for header in self._read(waiting.pop())[1]:
                if header not in seen:
                    seen.add(header)
                    waiting.append(header)
        whole = hashlib.sha256(start)
        for each in sorted(seen, key=str):
            whole.update(hashlib.sha256(self._read(each)[0]).digest())
        return whole.hexdigest()


def settings_of(path):
    """The .clang-tidy files that bind a source, innermost last."""
    folders = [folder for folder in [*path.parents] if folder == ROOT or ROOT in folder.parents]
    return b"".join((f / ".clang-tidy").read_bytes() for f in reversed(folders)
                    if (f / ".clang-tidy").is_file())


def memory_folder():
    cache = Path(os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache")
    folder = cache / "evenclaw" / "tidy"
    folder.mkdir(parents=True, exist_ok=True)
    return folder


def misformatted(paths):
    """The first line of each file that clang-format would write otherwise."""
    if not paths:
        return []
    run = subprocess.run(["clang-format", "--dry-run", *map(str, paths)], capture_output=True,
                         text=True, cwd=ROOT)
    if run.returncode:
        return [run.stderr]
    first = {}
    for path, line in re.findall(r"^(\S+?):(\d+):\d+: warning: code should be clang-formatted",
                                 run.stderr, re.MULTILINE):
        first.setdefault(path.removeprefix(f"{ROOT}/"), line)
    return [f"{path}:{line}" for path, line in first.items()]


@functools.cache
def flags_of_libraries(folder):
    run = subprocess.run(["pkg-config", "--cflags", *LIBRARIES[folder]], capture_output=True,
                         text=True, check=True)
    # Headers that are not ours: what is wrong in them is not told.
    return [re.sub("^-I", "-isystem", flag) for flag in run.stdout.split()]


def flags_of(path):
    name = str(path.relative_to(ROOT)).removeprefix("tests/")
    folder = next((f for f in LIBRARIES if name.startswith(f + "/")), None)
    return [*FLAGS, *(flags_of_libraries(folder) if folder else [])]


def bundled(sources, build):
    """The sources in groups that the build compiles at once, and the rest one by one."""
    left = dict.fromkeys(sources)
    groups = []
    for bundle in sorted(build.glob("CMakeFiles/*.dir/Unity/unity_bundle_*.cxx")):
        included = re.findall(r'^#include "(.+\.cpp)"', bundle.read_text(), re.MULTILINE)
        group = [source for source in map(Path, included) if source in left]
        for source in group:
            del left[source]
        groups += [group] if group else []
    return groups + [[source] for source in left]


def tidied(group, generated, options):
    """What clang-tidy says of one source, or of several that are read as if they were one."""
    (ROOT / "build").mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory(dir=ROOT / "build") as folder:
        start = group[0]
        if len(group) > 1:
            start = Path(folder) / "bundle.cpp"
            start.write_text("".join(f'#include "{source}"\n' for source in group))
            options = [f"{options[0]},-bugprone-suspicious-include", *options[1:]]
        run = subprocess.run(["clang-tidy", "--quiet", *options, str(start), "--",
                              *flags_of(group[0]), f"-I{generated}"], capture_output=True,
                             text=True, cwd=ROOT)
    wrong = re.search(r": (?:error|warning):", run.stdout)
    if run.returncode == 0 and not wrong:
        return None
    return run.stdout.strip() or run.stderr.strip()


def tidy_all(sources, build, jobs, quick):
    """Reads what was not clean before; a file read whole need not be read quickly."""
    generated = build / "generated"
    version = subprocess.run(["clang-tidy", "--version"], capture_output=True, check=True).stdout
    memory = memory_folder()
    reach = Reach([ROOT, generated])
    start = {s: version + settings_of(s) + "\0".join(FLAGS[2:]).encode() for s in sources}
    keys = {source: reach.digest(source, start[source]) for source in sources}
    endings = ("", ".quick") if quick else ("",)
    waiting = [source for source in sources
               if not any((memory / (keys[source] + ending)).exists() for ending in endings)]
    options = [WITHOUT_ANALYZER] if quick else []
    groups = bundled(waiting, build) if quick else [[source] for source in waiting]
    wrong = 0
    with concurrent.futures.ThreadPoolExecutor(jobs) as pool:
        said_of = pool.map(lambda group: tidied(group, generated, options), groups)
        for group, said in zip(groups, said_of):
            if said is None:
                for source in group:
                    (memory / (keys[source] + endings[-1])).touch()
            else:
                wrong += 1
                print(said.replace(f"{ROOT}/", ""), flush=True)
    return len(waiting), wrong


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--build", type=Path, default=ROOT / "build/dev")
    parser.add_argument("--jobs", type=int, default=os.cpu_count() or 1)
    parser.add_argument("--format-only", action="store_true", help="leave clang-tidy out")
    parser.add_argument("--quick", action="store_true",
                        help="clang-tidy without its analyzer, over what people run")
    parser.add_argument("paths", nargs="*", help="files to read; default all")
    options = parser.parse_args()
    ours = options.paths or project.files(ROOT, project.CPP)
    paths = [ROOT / path for path in ours]
    unformatted = misformatted(paths)
    for place in unformatted:
        print(f"{place}: not as clang-format writes it")
    if options.format_only:
        print(f"clang-format: {len(paths)} files, {len(unformatted)} to format")
        return 1 if unformatted else 0
    sources = [path for path in paths if path.suffix == ".cpp"]
    if options.quick and not options.paths:
        sources = [s for s in sources if str(s.relative_to(ROOT)).startswith(PRODUCT)]
    read, wrong = tidy_all(sources, options.build.resolve(), options.jobs, options.quick)
    print(f"clang-tidy: {len(sources)} sources, {read} read now, {wrong} times faults; "
          f"clang-format: {len(unformatted)} files to format")
    return 1 if unformatted or wrong else 0


if __name__ == "__main__":
    sys.exit(main())
