import names
from planted import Planted


class Names(Planted):
    def test_a_clean_project_is_clean(self):
        self.assertEqual(self.found(names), [])

    def test_a_drawer_for_odds_and_ends_is_no_file_name(self):
        self.assert_found(names, {"core/base/string_utils.cpp": ""}, "'string_utils.cpp'")
        self.assert_found(names, {"core/common/day.hpp": ""}, "'common'")

    def test_a_drawer_is_no_type_name(self):
        self.assert_found(names, {"core/base/a.hpp": "\nclass TaskManager {};\n"},
                          "a.hpp:2: 'TaskManager'")

    def test_a_word_that_only_contains_one_is_fine(self):
        self.assertEqual(self.found(names, {"core/base/a.hpp": "struct Uncommon {};\n"}), [])

    def test_words_in_comments_are_free(self):
        self.assertEqual(self.found(names, {"core/base/a.hpp": "// a class Manager\n"}), [])

    def test_a_file_name_in_capitals_is_found(self):
        self.assert_found(names, {"core/base/Day.cpp": ""}, "snake_case")

    def test_two_headers_name_no_type_alike(self):
        one = "namespace evenclaw {\nstruct HerdLine {\n};\n}\n"
        self.assert_found(names, {"core/api/a.hpp": one, "core/trade/b.hpp": one},
                          "b.hpp:2: 'HerdLine' is a type of core/api/a.hpp too")

    def test_types_of_other_namespaces_and_of_tests_may_be_named_alike(self):
        one = "namespace evenclaw {\nstruct HerdLine {\n};\n}\n"
        other = one.replace("evenclaw", "evenclaw::cli")
        self.assertEqual(self.found(names, {"core/api/a.hpp": one, "cli/b.hpp": other,
                                            "tests/core/c.hpp": one}), [])
