import words
from planted import Planted


class Words(Planted):
    def test_a_clean_project_is_clean(self):
        self.assertEqual(self.found(words), [])

    def test_the_path_of_one_machine_is_found(self):
        self.assert_found(words, {"README.md": "see /wo" + "rk/x\n"}, "README.md:1: a path")
        self.assert_found(words, {"run": "\ncd /ro" + "ot/x\n"}, "run:2: a path")

    def test_a_promise_needs_an_issue_number(self):
        self.assert_found(words, {"core/base/a.cpp": "// TO" + "DO: later\n"}, "a promise")
        self.assertEqual(self.found(words, {"core/base/a.cpp": "// TO" + "DO(#12): later\n"}), [])

    def test_a_binary_among_the_sources_is_found(self):
        self.assert_found(words, {"core/base/a.out": b"\x7fELF\0"}, "a binary file")

    def test_a_large_file_is_found(self):
        self.assert_found(words, {"data/a.bin": b"x" * 1_000_001}, "too large")
