import tempfile
import unittest
from pathlib import Path

import mirror
from planted import Planted


class Mirror(Planted):
    def test_a_clean_project_is_clean(self):
        self.assertEqual(self.found(mirror), [])

    def test_a_test_in_a_folder_that_mirrors_nothing_is_found(self):
        self.assert_found(mirror, {"tests/core/calendar/week_test.cpp": ""},
                          "there is no core/calendar/")

    def test_a_test_named_after_what_it_plays_through_stands_beside_the_others(self):
        self.assertEqual(self.found(mirror, {"tests/core/base/leap_years_test.cpp": ""}), [])

    def test_tests_that_mirror_nothing_stand_in_folders_of_their_own(self):
        self.assertEqual(self.found(mirror, {"tests/fault/kill_test.cpp": ""}), [])


class SameName(unittest.TestCase):
    def test_sources_with_a_test_of_their_name_are_counted(self):
        with tempfile.TemporaryDirectory() as folder:
            for path in ("core/base/day.cpp", "core/base/id.cpp", "tests/core/base/id_test.cpp"):
                file = Path(folder) / path
                file.parent.mkdir(parents=True, exist_ok=True)
                file.write_text("")
            self.assertEqual(mirror.with_test_of_their_name(folder), (1, 2))
