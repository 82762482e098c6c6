"""tests/core/x/y_test.cpp tests core/x/y: a stranger finds either from the other."""

import project

MIRRORED = ("core/", "store/", "report/", "demo/", "cli/")


def violations(root):
    everything = set(project.files(root))
    found = []
    for path in sorted(everything):
        if not path.startswith(tuple(f"tests/{top}" for top in MIRRORED)):
            continue
        if not path.endswith("_test.cpp"):
            continue
        source = path[len("tests/"):-len("_test.cpp")]
        if f"{source}.cpp" not in everything and f"{source}.hpp" not in everything:
            found.append(f"{path}:1: there is no {source}.cpp or .hpp that it could test")
    return found


def untested(root):
    """Sources of core and store without a test of the same name; told, not forbidden."""
    everything = set(project.files(root))
    return [path for path in sorted(everything)
            if path.startswith(("core/", "store/")) and path.endswith(".cpp")
            and f"tests/{path[:-4]}_test.cpp" not in everything]
