#include "core/wire/value_json.hpp"

#include <doctest/doctest.h>

#include <ostream>

#include "core/base/random.hpp"
#include "tests/core/wire/sample_types.hpp"

namespace evenclaw {

namespace {

Json parsed(std::string_view text) {
  Result<Json> json = json_from_text(text);
  REQUIRE(json.ok());
  return *std::move(json);
}

Faults faults_of(std::string_view text) {
  const Result<Sample> sample = from_json<Sample>(parsed(text));
  REQUIRE_FALSE(sample.ok());
  return sample.faults();
}

Note random_note(RandomStream& random) {
  Note note;
  note.weekday = static_cast<Weekday>(random.below(7));
  if (random.chance(0.5)) note.height = Length{static_cast<std::int32_t>(random.next_u32())};
  for (std::uint32_t i = random.below(3); i > 0; --i) {
    note.words.emplace_back(random.below(3), 'x');
  }
  return note;
}

Sample random_sample(RandomStream& random) {
  Sample sample;
  sample.is_open = random.chance(0.5);
  sample.count = static_cast<std::int32_t>(random.next_u32());
  sample.large = max_json_integer - random.below(9);
  sample.halves = {static_cast<int>(random.below(10)), static_cast<int>(random.below(10))};
  sample.day = Day{static_cast<std::int32_t>(random.below(40000))};
  sample.at = Instant{random.next_u32(), static_cast<std::int32_t>(random.below(120)) - 60};
  sample.herd = HerdId{uuid_derived(std::to_string(random.next_u32()))};
  if (random.chance(0.5)) sample.remark = std::string(random.below(3), '"');
  if (random.chance(0.5)) sample.last = random_note(random);
  for (std::uint32_t i = random.below(4); i > 0; --i) {
    sample.weekdays.push_back(static_cast<Weekday>(random.below(7)));
    sample.notes.push_back(random_note(random));
  }
  sample.first = random_note(random);
  return sample;
}

}  // namespace

TEST_CASE("a value is written member by member, empty ones left out") {
  Sample sample;
  sample.name = "Even";
  sample.notes = {Note{Weekday::friday, Length{755}, {"heel", ""}}};
  CHECK(canonical_json(to_json(sample)) ==
        R"({"at":"1970-01-01T00:00:00.000+00:00","count":7,"day":"1970-01-01",)"
        R"("first":{"weekday":"monday"},"halves":"0+0",)"
        R"("herd":"00000000-0000-0000-0000-000000000000","is_open":true,"large":0,"name":"Even",)"
        R"("notes":[{"height":755,"weekday":"friday","words":["heel",""]}]})");
}

TEST_CASE("every value reads back from its JSON") {
  RandomStream random(17, 1);
  for (int i = 0; i < 500; ++i) {
    const Sample sample = random_sample(random);
    const Result<Sample> again = from_json<Sample>(parsed(canonical_json(to_json(sample))));
    REQUIRE(again.ok());
    REQUIRE(*again == sample);
  }
}

TEST_CASE("missing members keep the default of the struct") {
  const Result<Sample> sample = from_json<Sample>(parsed("{}"));
  REQUIRE(sample.ok());
  CHECK(*sample == Sample{});
}

TEST_CASE("unknown members are ignored") {
  const Result<Sample> sample = from_json<Sample>(parsed(R"({"name":"x","from_later":{"a":[1]}})"));
  REQUIRE(sample.ok());
  CHECK(sample->name == "x");
}

TEST_CASE("null is a missing optional and nothing else") {
  CHECK(from_json<Sample>(parsed(R"({"remark":null})")).ok());
  const Faults faults = faults_of(R"({"name":null,"weekdays":null})");
  REQUIRE(faults.size() == 2);
  CHECK(faults[0].token == "name");
  CHECK(faults[1].token == "weekdays");
}

TEST_CASE("every fault is told with the path of its member") {
  const Faults faults = faults_of(
      R"({"is_open":1,"count":"7","halves":"12","day":"24.11.","herd":"x","last":{"height":"9"},
          "weekdays":["friday","fri",3],"notes":[{},{"weekday":2,"words":[1]},7],"first":[]})");
  const char* paths[] = {"is_open",
                         "count",
                         "halves",
                         "day",
                         "herd",
                         "last.height",
                         "weekdays[1]",
                         "weekdays[2]",
                         "notes[1].weekday",
                         "notes[1].words[0]",
                         "notes[2]",
                         "first"};
  REQUIRE(faults.size() == std::size(paths));
  for (std::size_t i = 0; i < faults.size(); ++i) {
    CHECK(faults[i].slug == "json-unreadable");
    CHECK(faults[i].token == paths[i]);
  }
}

TEST_CASE("a fault says what was expected and what was found") {
  CHECK(faults_of(R"({"first":{"weekday":"fri"}})")[0].message ==
        "first.weekday: expected one of monday, tuesday, wednesday, thursday, friday, saturday, "
        "sunday, found \"fri\"");
  CHECK(faults_of("[1]")[0].message == "the value: expected an object, found [1]");
}

TEST_CASE("a number out of the member's range is refused") {
  CHECK(from_json<Sample>(parsed(R"({"count":2147483647,"large":2147483648})")).ok());
  CHECK(faults_of(R"({"count":2147483648})")[0].token == "count");
  CHECK(faults_of(R"({"first":{"height":-2147483649}})")[0].token == "first.height");
}

TEST_CASE("an optional member with a fault does not hold half a value") {
  CHECK(faults_of(R"({"last":{"weekday":"friday","height":true}})").size() == 1);
}

}  // namespace evenclaw
