import shape
from planted import Planted

GOOD = "// A hoof has two claws.\n#pragma once\n"


class Shape(Planted):
    def test_a_clean_project_is_clean(self):
        self.assertEqual(self.found(shape), [])

    def test_a_header_says_what_it_is_for(self):
        self.assert_found(shape, {"core/base/a.hpp": "#pragma once\n"}, "the first line says")

    def test_a_header_is_included_once(self):
        self.assert_found(shape, {"core/base/a.hpp": "// A hoof has two claws.\n"}, "#pragma once")

    def test_a_header_opens_no_namespace_to_others(self):
        self.assert_found(shape, {"core/base/a.hpp": GOOD + "using namespace std;\n"},
                          "using namespace")

    def test_core_throws_nothing(self):
        self.assert_found(shape, {"core/trade/a.cpp": "\nvoid f() { throw 1; }\n"},
                          "a.cpp:2: core throws nothing")
        self.assertEqual(self.found(shape, {"core/trade/a.cpp": '// throw\nauto s = "throw";\n'}),
                         [])

    def test_a_test_without_a_case_or_a_check_is_found(self):
        self.assert_found(shape, {"tests/core/base/b_test.cpp": "int x;\n"}, "no test case")
        self.assert_found(shape, {"tests/core/base/b_test.cpp": 'TEST_CASE("x") {}\n'},
                          "nothing is checked")

    def test_a_skipped_test_is_found(self):
        skipped = 'TEST_CASE("x" * doctest::skip()) { CHECK(true); }\n'
        self.assert_found(shape, {"tests/core/base/b_test.cpp": skipped}, "proves nothing")
