"""Every error that is told to a person stands in the one list, and nothing stands there unused."""

import re

import project

LIST = "core/base/errors.cpp"
TOLD_BY = ("core/", "store/", "report/", "cli/", "server/", "wasm/")

_SLUG = r'"(usage|[a-z]+(?:-[a-z]+)+)"'
_ENTRY = re.compile(r"^\s*\{" + _SLUG + ",", re.MULTILINE)
# Where a slug is given to a fault or compared with one's.
_USE = re.compile(
    r"(?:\b(?:Fault|Refusal)\s*\{+\s*(?:\.slug\s*=\s*)?|\bslug\s*(?:=|==|!=)\s*"
    r"|\b\w*(?:refuse|[Ff]aults?)\w*\((?:[^\"(){};]|\(\))*\{*\s*)" + _SLUG)


def _line(source, match):
    return source.count("\n", 0, match.start(1)) + 1


def violations(root):
    sources = {path: project.text(root, path) for path in project.files(root, project.CPP)
               if path.startswith(TOLD_BY)}
    if LIST not in sources:
        return []
    table = sources.pop(LIST)
    listed = {slug.group(1): _line(table, slug) for slug in _ENTRY.finditer(table)}
    found = []
    for path, source in sources.items():
        for use in _USE.finditer(source):
            if use.group(1) not in listed:
                found.append(f"{path}:{_line(source, use)}: {use.group(1)} is not in {LIST}")
    told = "\n".join(sources.values())
    found += [f"{LIST}:{line}: nothing tells {slug}" for slug, line in listed.items()
              if f'"{slug}"' not in told]
    return found
