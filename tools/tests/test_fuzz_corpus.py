"""What a fuzzer found worth keeping comes back byte for byte."""

import pathlib
import tempfile
import unittest

import fuzz_corpus


class Corpus(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(self.enterContext(tempfile.TemporaryDirectory()))
        self.found = self.folder / "found"
        self.found.mkdir()
        self.packed = self.folder / "corpus" / "call_line.txt"

    def inputs(self, folder):
        return {path.read_bytes() for path in folder.iterdir()}

    def test_any_bytes_come_back(self):
        wanted = {b"412 LH\n", b"\xff\x00\r\n", bytes(range(256))}
        for name, content in enumerate(sorted(wanted)):
            (self.found / str(name)).write_bytes(content)
        self.assertEqual(fuzz_corpus.pack(self.found, self.packed), 3)
        again = self.folder / "again"
        self.assertEqual(fuzz_corpus.unpack(self.packed, again), 3)
        self.assertEqual(self.inputs(again), wanted)

    def test_the_shortest_are_kept_when_all_would_be_too_much(self):
        (self.found / "long").write_bytes(b"x" * fuzz_corpus.MOST_BYTES)
        (self.found / "short").write_bytes(b"412")
        self.assertEqual(fuzz_corpus.pack(self.found, self.packed), 1)

    def test_a_corpus_that_is_not_there_yet_is_empty(self):
        self.assertEqual(fuzz_corpus.unpack(self.packed, self.folder / "again"), 0)

    def test_words_between_marks_become_a_dictionary_in_which_no_byte_is_special(self):
        page, dictionary = self.folder / "page.md", self.folder / "words"
        page.write_text("Say `LH`, `a \"b\"` or `außen`, and `LH` again.\n", encoding="utf-8")
        self.assertEqual(fuzz_corpus.words([page], dictionary), 3)
        lines = dictionary.read_text(encoding="ascii").split()
        self.assertIn('"\\x4c\\x48"', lines)
        self.assertIn('"\\x61\\x75\\xc3\\x9f\\x65\\x6e"', lines)


if __name__ == "__main__":
    unittest.main()
