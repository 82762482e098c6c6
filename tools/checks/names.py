"""Names that say what a thing is for. A drawer for odds and ends is not a name."""

import re

import project

DRAWERS = {"util", "utils", "utility", "utilities", "common", "helper", "helpers", "manager",
           "managers", "misc"}
_TYPE = re.compile(r"\b(?:class|struct|enum class|enum|namespace|concept|using)\s+(\w+)")
_PART = re.compile(r"[A-Z]?[a-z0-9]+|[A-Z]+(?![a-z])")


def drawer_in(name):
    """The part of a snake_case, kebab-case or PascalCase name that is a drawer, or None."""
    parts = [part.lower() for part in _PART.findall(name)]
    return next((part for part in parts if part in DRAWERS), None)


def violations(root):
    found = []
    for path in project.files(root):
        for part in path.split("/"):
            if drawer_in(part.split(".")[0]):
                found.append(f"{path}:1: '{part}' is not a name: say what it is for")
    for path in project.files(root, project.CPP):
        if not path.rsplit("/", 1)[-1].split(".")[0].islower():
            found.append(f"{path}:1: file names are snake_case")
        code = project.code_only(project.text(root, path))
        for number, line in enumerate(code.splitlines(), 1):
            for name in _TYPE.findall(line):
                if drawer_in(name):
                    found.append(f"{path}:{number}: '{name}' is not a name: say what it is for")
    return found
