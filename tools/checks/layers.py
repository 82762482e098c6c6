"""Every #include keeps to cmake/layers.txt; a third-party header stays in its one folder."""

import re

import project

TABLE = "cmake/layers.txt"

# header prefix -> folders that may name it. Headers of a library never reach another folder.
OWNERS = {
    "nlohmann/": ("core/wire",),
    "Eigen/": ("core/stats",),
    "boost/math/": ("core/stats",),
    "sqlite3.h": ("store/sqlite", "tests/fault"),
    "libpq-fe.h": ("store/postgres",),
    "httplib.h": ("server/http",),
    "cairo": ("report/pdf",),
    "pango": ("report/pdf",),
    "fontconfig": ("report/pdf",),
    "emscripten": ("wasm",),
    "libical/": ("tests",),
    "doctest/": ("tests",),
    "rapidcheck": ("tests",),
}
# The operating system is for those who touch it; core sees none of it.
SYSTEM_USERS = ("cli", "store/sqlite", "store/postgres", "server", "report", "tests", "bench",
                "tools")
# tests, bench and tools see anything; nothing includes them.
OUTERMOST = ("tests", "bench", "tools")
# core has no files, sockets, clock, threads, locale or global streams.
NOT_IN_CORE = {
    "iostream", "istream", "ostream", "fstream", "sstream", "iomanip", "locale", "codecvt",
    "filesystem", "thread", "mutex", "shared_mutex", "condition_variable", "future", "semaphore",
    "latch", "barrier", "stop_token", "chrono", "ctime", "random", "regex", "cstdio", "clocale",
    "csignal", "format", "source_location", "memory_resource", "coroutine", "ranges", "syncstream",
}
_INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^">]+)[">]')


def table(root):
    rows = {}
    for line in project.text(root, TABLE).splitlines():
        match = re.match(r"^([a-z/]+) *:(.*)$", line)
        if match:
            rows[match.group(1)] = match.group(2).split()
    return rows


def includes(root, path):
    for number, line in enumerate(project.text(root, path).splitlines(), 1):
        match = _INCLUDE.match(line)
        if match:
            yield number, match.group(1) == '"', match.group(2)


def _own_header(folder, header, rows):
    if header.startswith("embedded/"):
        return None
    if "/" not in header:
        return f'"{header}" must be named from the root of the repository'
    if folder in OUTERMOST:
        return None
    if header.startswith(tuple(f"{outer}/" for outer in OUTERMOST)):
        return f"nothing includes {header.split('/')[0]}/"
    target = project.folder_of(header, rows)
    if target is None:
        return f'"{header}" lies in no folder of {TABLE}'
    if target != folder and target not in rows[folder]:
        return f"{folder} may not include {target} ({header})"
    return None


def _foreign_header(folder, header, path):
    for prefix, owners in OWNERS.items():
        if not header.startswith(prefix):
            continue
        if not any(folder == o or path.startswith(o + "/") for o in owners):
            return f"<{header}> belongs to {', '.join(owners)}"
        if path.endswith(".hpp") and folder != "tests":
            return f"<{header}> belongs in a source, not in a header"
        return None
    if folder.startswith("core/") or folder in ("store/memory", "demo", "wasm"):
        if "/" in header or "." in header:
            return f"<{header}> is not standard C++: {folder} builds for every target"
        if header in NOT_IN_CORE:
            return f"<{header}> is not for core: no files, clock, threads, locale or streams"
    elif ("/" in header or "." in header) and not path.startswith(
            tuple(f"{user}/" for user in SYSTEM_USERS)):
        return f"<{header}> has no owner in tools/checks/layers.py"
    return None


def violations(root):
    rows = table(root)
    found = []
    for path in project.files(root, project.CPP):
        folder = project.folder_of(path, list(rows) + list(OUTERMOST))
        if folder is None:
            found.append(f"{path}:1: lies in no folder of {TABLE}")
            continue
        for number, ours, header in includes(root, path):
            if ours:
                fault = _own_header(folder, header, rows)
            else:
                fault = _foreign_header(folder, header, path)
            if fault:
                found.append(f"{path}:{number}: {fault}")
    return found
