import mirror
from planted import CLEAN, Planted


class Mirror(Planted):
    def test_a_clean_project_is_clean(self):
        self.assertEqual(self.found(mirror), [])

    def test_a_test_of_nothing_is_found(self):
        self.assert_found(mirror, {"tests/core/base/week_test.cpp": ""},
                          "no core/base/week.cpp or .hpp")

    def test_a_header_alone_may_have_a_test(self):
        self.assertEqual(self.found(mirror, {"tests/core/base/week_test.cpp": "",
                                             "core/base/week.hpp": ""}), [])

    def test_tests_that_mirror_nothing_stand_in_folders_of_their_own(self):
        self.assertIn("tests/core/base/day_test.cpp", CLEAN)
        self.assertEqual(self.found(mirror, {"tests/fault/kill_test.cpp": ""}), [])
