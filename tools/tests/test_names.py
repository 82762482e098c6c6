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
