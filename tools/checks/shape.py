"""What every file looks like: a header says what it is for, core throws nothing, a test tests."""

import re

import project

# Each owns a library that throws; it catches at its own edge.
MAY_THROW = ("core/wire", "core/stats")


def _header(path, source):
    first = source.split("\n", 1)[0]
    if not first.startswith("// ") or len(first) < 20:
        yield f"{path}:1: the first line says in one sentence what the header is for"
    if "#pragma once" not in source:
        yield f"{path}:1: #pragma once is missing"
    if re.search(r"^\s*using namespace\b", project.code_only(source), re.MULTILINE):
        yield f"{path}:1: using namespace in a header"


def _core_source(path, source):
    for number, line in enumerate(project.code_only(source).splitlines(), 1):
        if re.search(r"\bthrow\b", line):
            yield f"{path}:{number}: core throws nothing: return a Result"


def _test(path, source):
    code = project.code_only(source)
    cases = len(re.findall(r"\b(?:TEST_CASE|SCENARIO|TEST_CASE_TEMPLATE)\b", code))
    checks = len(re.findall(r"\b(?:CHECK|REQUIRE|FAIL)\w*\s*\(", code))
    if cases == 0:
        yield f"{path}:1: no test case in a test"
    elif checks == 0 and "expect" not in code:
        yield f"{path}:1: nothing is checked"
    if re.search(r"doctest::(?:skip|may_fail|should_fail|expected_failures)", code):
        yield f"{path}:1: a test that is skipped or may fail proves nothing"


def violations(root):
    found = []
    for path in project.files(root, project.CPP):
        source = project.text(root, path)
        if path.endswith(".hpp"):
            found += _header(path, source)
        if path.startswith("core/") and not path.startswith(MAY_THROW):
            found += _core_source(path, source)
        if path.endswith("_test.cpp"):
            found += _test(path, source)
    return found
