#!/usr/bin/env python3
"""Runs the house checks and says what is wrong where.

  tools/house.py                 the checks that read sources, and the tests of the checks
  tools/house.py --objects DIR   the check that reads object files, after a native build in DIR
"""

import argparse
import sys
import unittest
from pathlib import Path

TOOLS = Path(__file__).resolve().parent
sys.dont_write_bytecode = True
sys.path[:0] = [str(TOOLS), str(TOOLS / "checks")]

import layers  # noqa: E402
import mirror  # noqa: E402
import names  # noqa: E402
import purity  # noqa: E402
import shape  # noqa: E402
import sizes  # noqa: E402
import slugs  # noqa: E402
import words  # noqa: E402

SOURCE_CHECKS = {"layers": layers, "sizes": sizes, "names": names, "words": words,
                 "shape": shape, "mirror": mirror, "slugs": slugs}


def report(name, found):
    for line in found:
        print(f"  {line}")
    print(f"  {name}: {'clean' if not found else f'{len(found)} to mend'}")
    return not found


def own_tests():
    suite = unittest.defaultTestLoader.discover(str(TOOLS / "tests"), "test_*.py")
    result = unittest.TextTestRunner(verbosity=0, stream=sys.stdout).run(suite)
    wrong = len(result.failures) + len(result.errors)
    return result.testsRun - wrong, wrong


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--root", default=TOOLS.parent, type=Path)
    parser.add_argument("--objects", type=Path, help="build folder whose objects are read")
    options = parser.parse_args()
    if options.objects:
        if not any(purity.objects(options.objects)):
            print(f"no objects of core in {options.objects}", file=sys.stderr)
            return 1
        results = [report("purity", purity.violations(options.objects))]
        good, bad = 0, 0
    else:
        results = [report(name, check.violations(options.root))
                   for name, check in SOURCE_CHECKS.items()]
        tested, sources = mirror.with_test_of_their_name(options.root)
        print(f"  {tested} of {sources} sources of core and store have a test of their name")
        good, bad = own_tests()
    good += sum(results)
    bad += len(results) - sum(results)
    print(f"house checks: {good} hold, {bad} broken")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
