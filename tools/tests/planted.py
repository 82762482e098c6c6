"""A small project in a temporary folder, into which a test plants what a check must find."""

import tempfile
import unittest
from pathlib import Path

CLEAN = {
    "cmake/layers.txt": "core/base :\ncore/wire : core/base\ncore/trade : core/base\n"
                        "store/sqlite : core/base\ncli : core/base store/sqlite\n",
    "core/base/day.hpp": "// A day of the calendar.\n#pragma once\n#include <string>\n",
    "core/base/day.cpp": '#include "core/base/day.hpp"\n',
    "core/wire/text.cpp": '#include <nlohmann/json.hpp>\n#include "core/base/day.hpp"\n',
    "store/sqlite/file.cpp": '#include <sqlite3.h>\n#include <unistd.h>\n',
    "tests/core/base/day_test.cpp":
        '#include <doctest/doctest.h>\n#include "core/base/day.hpp"\n'
        'TEST_CASE("a day") { CHECK(1 == 1); }\n',
}


class Planted(unittest.TestCase):
    """`self.found(check, files)` is what the check says of the clean project with these added."""

    def found(self, check, extra=None):
        with tempfile.TemporaryDirectory() as folder:
            for path, content in {**CLEAN, **(extra or {})}.items():
                file = Path(folder) / path
                file.parent.mkdir(parents=True, exist_ok=True)
                if isinstance(content, bytes):
                    file.write_bytes(content)
                else:
                    file.write_text(content)
            return check.violations(folder)

    def assert_found(self, check, extra, *wanted):
        lines = self.found(check, extra)
        self.assertEqual(len(lines), len(wanted), lines)
        for line, part in zip(lines, wanted):
            self.assertIn(part, line)
