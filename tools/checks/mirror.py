"""tests/core/x/y_test.cpp tests core/x/y: a stranger finds either from the other.

A test may also be named after what it plays through (worked_lines_test.cpp), but it stands in the
folder whose sources it tests.
"""

import project

MIRRORED = ("core/", "store/", "report/", "demo/", "cli/")


def violations(root):
    everything = project.files(root)
    source_folders = {path.rsplit("/", 1)[0] for path in everything
                      if path.startswith(MIRRORED) and path.endswith(project.CPP)}
    found = []
    for path in everything:
        if not path.startswith(tuple(f"tests/{top}" for top in MIRRORED)):
            continue
        if path.endswith("_test.cpp"):
            folder = path[len("tests/"):].rsplit("/", 1)[0]
            if folder not in source_folders:
                found.append(f"{path}:1: there is no {folder}/ whose sources it could test")
    return found


def with_test_of_their_name(root):
    """(sources of core and store that have a test of the same name, all of them)."""
    everything = set(project.files(root))
    sources = [path for path in everything
               if path.startswith(("core/", "store/")) and path.endswith(".cpp")]
    tested = [path for path in sources if f"tests/{path[:-4]}_test.cpp" in everything]
    return len(tested), len(sources)
