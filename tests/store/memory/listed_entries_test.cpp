#include "store/memory/listed_entries.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

namespace {

using Places = std::vector<std::size_t>;

Entry entry(std::int64_t order, std::string_view id, std::string_view kind,
            std::vector<Uuid> subjects, std::string body = "{}") {
  Envelope envelope;
  envelope.scope = uuid_derived("a herd");
  envelope.id = EntryId{uuid_derived(id)};
  envelope.seq = order;
  envelope.order = order;
  envelope.kind = kind;
  envelope.subjects = std::move(subjects);
  return make_entry(std::move(envelope), std::move(body));
}

const Uuid cow_a = uuid_derived("cow a");
const Uuid cow_b = uuid_derived("cow b");

ListedEntries three() {
  return ListedEntries({entry(1, "first", "turn", {cow_a}), entry(2, "second", "gone", {cow_b}),
                        entry(3, "third", "turn", {cow_a, cow_b})});
}

EntrySelection of_subject(const Uuid& subject) {
  EntrySelection selection;
  selection.subject = subject;
  return selection;
}

}  // namespace

TEST_CASE("entries are found by id, subject and kind, in their order") {
  const ListedEntries listed = three();
  CHECK(listed.places_of({}) == Places{0, 1, 2});
  CHECK(listed.places_of(of_subject(cow_a)) == Places{0, 2});
  EntrySelection kinds;
  kinds.kinds = {"turn", "gone"};
  CHECK(listed.places_of(kinds) == Places{0, 1, 2});
  EntrySelection both = of_subject(cow_b);
  both.kinds = {"turn"};
  CHECK(listed.places_of(both) == Places{2});
  EntrySelection id;
  id.id = EntryId{uuid_derived("second")};
  CHECK(listed.places_of(id) == Places{1});
  CHECK(listed.places_of(of_subject(uuid_derived("cow c"))).empty());
}

TEST_CASE("what comes behind all others may stand at the end, and is found there") {
  ListedEntries listed = three();
  const Entry later = entry(4, "fourth", "turn", {cow_b});
  CHECK(listed.may_append(later));
  listed.append(later);
  CHECK(listed.places_of(of_subject(cow_b)) == Places{1, 2, 3});
  CHECK(listed.at(3) == later);
}

TEST_CASE("neither what comes before nor another version of one that is here may") {
  const ListedEntries listed = three();
  CHECK(!listed.may_append(entry(2, "between", "turn", {cow_a})));
  CHECK(!listed.may_append(entry(9, "third", "turn", {cow_a})));
}

TEST_CASE("where one version fits the others are given with it, when every version is wanted") {
  const ListedEntries listed({entry(1, "one", "turn", {cow_a}), entry(2, "two", "turn", {cow_b}),
                              entry(3, "one", "turn", {cow_b}, "{\"a\":1}")});
  EntrySelection every = of_subject(cow_a);
  every.versions = Versions::every;
  CHECK(listed.places_of(every) == Places{0, 2});
  CHECK(listed.places_of(of_subject(cow_a)) == Places{0});
}

}  // namespace evenclaw
