import layers
from planted import Planted


class Layers(Planted):
    def test_a_clean_project_is_clean(self):
        self.assertEqual(self.found(layers), [])

    def test_an_upward_include_is_found_with_its_line(self):
        self.assert_found(layers, {"core/base/up.cpp": '\n#include "core/trade/cow.hpp"\n',
                                   "core/trade/cow.hpp": "// A cow in the herd.\n"},
                          "core/base/up.cpp:2: core/base may not include core/trade")

    def test_a_library_header_outside_its_folder_is_found(self):
        self.assert_found(layers, {"core/trade/db.cpp": "#include <sqlite3.h>\n"},
                          "<sqlite3.h> belongs to store/sqlite, tests/fault")

    def test_a_library_header_in_a_header_of_its_folder_is_found(self):
        self.assert_found(layers, {"store/sqlite/file.hpp": "#include <sqlite3.h>\n"},
                          "belongs in a source")

    def test_files_clocks_and_the_system_are_not_for_core(self):
        self.assert_found(layers, {"core/trade/a.cpp": "#include <fstream>\n#include <chrono>\n"
                                                       "#include <unistd.h>\n"},
                          "<fstream>", "<chrono>", "not standard C++")

    def test_nothing_includes_tests(self):
        self.assert_found(layers, {"cli/main.cpp": '#include "tests/core/cows.hpp"\n'},
                          "nothing includes tests/")

    def test_a_header_is_named_from_the_root(self):
        self.assert_found(layers, {"core/base/b.cpp": '#include "day.hpp"\n'}, "from the root")

    def test_a_source_outside_every_folder_is_found(self):
        self.assert_found(layers, {"store/lonely/x.cpp": "#include <string>\n"},
                          "lies in no folder")
