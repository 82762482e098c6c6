import unittest

import coverage_table


def file(name, covered, total):
    return {"filename": name, "line_covered": covered, "line_total": total}


SUMMARY = {"files": [file("core/base/a.cpp", 9, 10), file("core/trade/x/b.cpp", 1, 2),
                     file("core/trade/c.hpp", 0, 0), file("store/memory/d.cpp", 0, 4)]}


class CoverageTable(unittest.TestCase):
    def setUp(self):
        self.rows = list(coverage_table.table(SUMMARY))

    def test_a_folder_is_told_as_a_whole_and_files_without_lines_are_left_out(self):
        self.assertIn("| core/trade | 1 | 1 of 2 | 50.0 % |", self.rows)
        self.assertIn("| **core/** | 2 | 10 of 12 | 83.3 % |", self.rows)
        self.assertIn("| **store/** | 1 | 0 of 4 | 0.0 % |", self.rows)

    def test_the_least_covered_files_of_core_come_first(self):
        self.assertEqual(self.rows[-2:], ["| core/trade/x/b.cpp | 1 | 1 of 2 | 50.0 % |",
                                          "| core/base/a.cpp | 1 | 9 of 10 | 90.0 % |"])
