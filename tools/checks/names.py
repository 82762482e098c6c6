"""Names that say what a thing is for. A drawer for odds and ends is not a name, and a name is one
type's alone: two types of one name in one namespace are taken for each other where both are linked,
and no compiler says so."""

import re

import project

DRAWERS = {"util", "utils", "utility", "utilities", "common", "helper", "helpers", "manager",
           "managers", "misc"}
_TYPE = re.compile(r"\b(?:class|struct|enum class|enum|namespace|concept|using)\s+(\w+)")
_PART = re.compile(r"[A-Z]?[a-z0-9]+|[A-Z]+(?![a-z])")
_NAMESPACE = re.compile(r"^namespace ([\w:]*)\s*\{", re.MULTILINE)
_OWN_TYPE = re.compile(r"^(?:class|struct|enum class) (\w+)(?: final)?(?:\s*:[^;{]*)?\s*\{",
                       re.MULTILINE)
OUTERMOST = ("tests/", "bench/", "tools/")


def types_in(code):
    """(namespace, name, line) of each type a header holds that is no member of another."""
    for match in _OWN_TYPE.finditer(code):
        spaces = [m.group(1) for m in _NAMESPACE.finditer(code, 0, match.start())]
        yield spaces[-1] if spaces else "", match.group(1), code.count("\n", 0, match.start()) + 1


def drawer_in(name):
    """The part of a snake_case, kebab-case or PascalCase name that is a drawer, or None."""
    parts = [part.lower() for part in _PART.findall(name)]
    return next((part for part in parts if part in DRAWERS), None)


def violations(root):
    found = []
    owners = {}
    for path in project.files(root):
        for part in path.split("/"):
            if drawer_in(part.split(".")[0]):
                found.append(f"{path}:1: '{part}' is not a name: say what it is for")
    for path in project.files(root, project.CPP):
        if not path.rsplit("/", 1)[-1].split(".")[0].islower():
            found.append(f"{path}:1: file names are snake_case")
        code = project.code_only(project.text(root, path))
        if path.endswith(".hpp") and not path.startswith(OUTERMOST):
            for space, name, number in types_in(code):
                first = owners.setdefault((space, name), path)
                if first != path:
                    found.append(f"{path}:{number}: '{name}' is a type of {first} too")
        for number, line in enumerate(code.splitlines(), 1):
            for name in _TYPE.findall(line):
                if drawer_in(name):
                    found.append(f"{path}:{number}: '{name}' is not a name: say what it is for")
    return found
