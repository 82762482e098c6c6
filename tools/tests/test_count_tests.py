import unittest

import count_tests

DOCTEST = ("[doctest] test cases: {} | {} passed | {} failed | 0 skipped\n"
           "[doctest] assertions: 99 | 99 passed | 0 failed |\n")


def junit(*cases):
    body = "".join(f'<testcase name="x" status="{status}">'
                   f"{'<failure/>' if status == 'fail' else ''}"
                   f"<system-out>{text}</system-out></testcase>" for status, text in cases)
    return f"<testsuite>{body}</testsuite>"


class CountTests(unittest.TestCase):
    def test_a_doctest_program_counts_as_its_cases(self):
        self.assertEqual(count_tests.counts(junit(("run", DOCTEST.format(12, 12, 0)))), (12, 0))
        self.assertEqual(count_tests.counts(junit(("fail", DOCTEST.format(12, 9, 3)))), (9, 3))

    def test_any_other_program_counts_as_one(self):
        self.assertEqual(count_tests.counts(junit(("run", "fine"), ("fail", "no"))), (1, 1))

    def test_a_program_that_dies_without_a_word_is_a_failure(self):
        self.assertEqual(count_tests.counts(junit(("fail", ""))), (0, 1))

    def test_a_leak_after_the_last_case_is_a_failure(self):
        self.assertEqual(count_tests.counts(junit(("fail", DOCTEST.format(5, 5, 0)))), (5, 1))

    def test_nothing_ran(self):
        self.assertEqual(count_tests.counts(junit()), (0, 0))

    def test_a_test_that_ctest_could_not_run_is_a_failure(self):
        self.assertEqual(count_tests.counts(junit(("notrun", ""))), (0, 1))
