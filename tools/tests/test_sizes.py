import sizes
from planted import Planted


class Sizes(Planted):
    def test_a_clean_project_is_clean(self):
        self.assertEqual(self.found(sizes), [])

    def test_a_header_may_have_300_lines_and_no_more(self):
        self.assertEqual(self.found(sizes, {"core/base/a.hpp": "//\n" * 300}), [])
        self.assert_found(sizes, {"core/base/a.hpp": "//\n" * 301}, "301 lines, at most 300")

    def test_sources_and_tests_have_limits_of_their_own(self):
        self.assert_found(sizes, {"core/base/a.cpp": "//\n" * 501}, "at most 500")
        self.assertEqual(self.found(sizes, {"tests/core/base/a_test.cpp": "//\n" * 600}), [])
        self.assert_found(sizes, {"tests/core/base/a_test.cpp": "//\n" * 601}, "at most 600")

    def test_a_line_of_101_columns_is_found(self):
        self.assertEqual(self.found(sizes, {"core/base/a.cpp": "x" * 100}), [])
        self.assert_found(sizes, {"core/base/a.cpp": "\n" + "x" * 101}, "a.cpp:2: 101 columns")
