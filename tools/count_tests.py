#!/usr/bin/env python3
"""Counts what ran: `count_tests.py results.xml` prints "passed failed" of one ctest run.

A doctest program counts as its test cases, any other test as one. A program that failed without
saying which case (it crashed, hung or leaked) adds one failed.
"""

import re
import sys
import xml.etree.ElementTree as xml

_SUMMARY = re.compile(r"test cases:\s*(\d+)\s*\|\s*(\d+) passed\s*\|\s*(\d+) failed")


def counts(junit):
    passed = failed = 0
    for case in xml.fromstring(junit).iter("testcase"):
        good = case.get("status") == "run" and case.find("failure") is None
        said = _SUMMARY.search(case.findtext("system-out") or "")
        if said is None:
            passed, failed = passed + good, failed + (not good)
            continue
        passed += int(said.group(2))
        failed += int(said.group(3))
        if not good and said.group(3) == "0":
            failed += 1
    return passed, failed


if __name__ == "__main__":
    with open(sys.argv[1], encoding="utf-8") as results:
        print(*counts(results.read()))
