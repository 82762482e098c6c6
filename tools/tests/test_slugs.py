import slugs
from planted import Planted

LIST = 'constexpr ErrorKind t[] = {\n    {"disk-full", "No room.",\n     "All is safe."},\n};\n'


class Slugs(Planted):
    def with_list(self, source):
        return {"core/base/errors.cpp": LIST, "core/base/a.cpp": source}

    def test_a_project_without_the_list_is_clean(self):
        self.assertEqual(self.found(slugs), [])

    def test_a_listed_slug_may_be_told(self):
        self.assertEqual(self.found(slugs, self.with_list('return Fault{"disk-full", "x"};\n')),
                         [])

    def test_a_slug_that_is_not_listed_is_found_however_it_is_told(self):
        for told in ('Fault{"disk-fool", "x"};', 'return {.slug = "disk-fool"};',
                     'Fault{.slug = "disk-fool"};', 'if (fault.slug == "disk-fool") {}',
                     'refuse("disk-fool", "x");', 'throw file_fault(file(), "disk-fool", said);',
                     'tell_faults({{"disk-fool", "x"}});', 'Refusal{"disk-fool"};'):
            source = f'auto ok = Fault{{"disk-full"}};\n{told}\n'
            self.assert_found(slugs, self.with_list(source), "core/base/a.cpp:2: disk-fool is not")

    def test_a_slug_that_nothing_tells_is_found(self):
        self.assert_found(slugs, self.with_list(""), "core/base/errors.cpp:2: nothing tells")

    def test_other_words_with_a_hyphen_are_no_slugs(self):
        source = 'auto ok = Fault{"disk-full"};\nrule = {"wrap-off", 1};\nrefuse("no such foot");\n'
        self.assertEqual(self.found(slugs, self.with_list(source)), [])
