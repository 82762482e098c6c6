import sys
import unittest
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "bench"))

import compare  # noqa: E402

OLD = "# Page\n\n| what | median | spread | conditions |\n|---|---|---|---|\n" \
      "| call lines read | 1000 lines/s | 900 - 1100 | 5 repeats |\n" \
      "| picture made anew | 10.0 s | once | 1000 entries |\n| gone | 1 s | 1 - 1 | |\n"


class Compare(unittest.TestCase):
    def rows(self, new):
        return list(compare.compared(OLD, new))[2:]

    def test_a_figure_within_the_old_spread_is_not_marked(self):
        self.assertEqual(self.rows(OLD.replace(" 1000 lines", " 1050 lines"))[0],
                         "| call lines read | 1000 lines/s | 1050 lines/s | 1.05 |")

    def test_a_figure_outside_the_old_spread_is_marked(self):
        rows = self.rows(OLD.replace("1000 lines", "500 lines"))
        self.assertIn("0.50 outside its spread", rows[0])

    def test_a_figure_without_a_spread_is_held_against_itself(self):
        self.assertIn("| 0.80 outside its spread |", self.rows(OLD.replace("10.0 s", "8.0 s"))[1])

    def test_what_is_on_one_page_only_or_in_another_unit_is_left_out(self):
        self.assertEqual(len(self.rows(OLD.replace("| gone", "| come"))), 2)
        self.assertEqual(len(self.rows(OLD.replace("1000 lines/s", "1000 lines/ms"))), 2)
