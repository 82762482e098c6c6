import subprocess
import tempfile
import unittest
from pathlib import Path

import purity

PLANTED = """#include <chrono>
#include <cstdlib>
#include <string>
long now() { return std::chrono::system_clock::now().time_since_epoch().count(); }
std::string home() { return std::getenv("HOME"); }
"""
CLEAN = "#include <string>\nstd::string twice(std::string a) { return a + a; }\n"


class Purity(unittest.TestCase):
    def found(self, source):
        with tempfile.TemporaryDirectory() as build:
            folder = Path(build) / "CMakeFiles/evenclaw_core_trade.dir/core/trade"
            folder.mkdir(parents=True)
            (folder / "a.cpp").write_text(source)
            subprocess.run(["c++", "-std=c++20", "-c", str(folder / "a.cpp"), "-o",
                            str(folder / "a.cpp.o")], check=True)
            return purity.violations(build)

    def test_an_object_that_asks_for_nothing_is_clean(self):
        self.assertEqual(self.found(CLEAN), [])

    def test_a_clock_and_the_environment_are_found_in_the_object(self):
        self.assertEqual(self.found(PLANTED), [
            "core/trade/a.cpp:1: calls getenv",
            "core/trade/a.cpp:1: calls std::chrono::_V2::system_clock::now()"])

    def test_a_name_that_only_begins_like_one_is_free(self):
        self.assertEqual(purity.banned_in(["  U evenclaw::opened(int)", "  U time_of_day"]), [])

    def test_a_versioned_name_is_found(self):
        self.assertEqual(purity.banned_in(["   U fopen@GLIBC_2.2.5"]), ["fopen"])
