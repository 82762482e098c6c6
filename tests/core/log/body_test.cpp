#include "core/log/body.hpp"

#include <doctest/doctest.h>

#include <set>

#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

Entry with_kind(std::string_view kind, std::int32_t version, std::string body) {
  Farm farm;
  Envelope envelope = farm.next_envelope();
  envelope.kind = kind;
  envelope.version = version;
  return make_entry(envelope, std::move(body));
}

}  // namespace

TEST_CASE("every kind has a name of its own and a version from one") {
  std::set<std::string_view> kinds;
  for (const std::string_view kind : all_kinds()) {
    CHECK(kinds.insert(kind).second);
    CHECK(current_version(kind).value_or(0) >= 1);
  }
  CHECK(kinds.size() == std::tuple_size_v<AllBodies>);
  CHECK_FALSE(current_version("scored_by_camera"));
}

TEST_CASE("a body reads back as it was written") {
  Farm farm;
  TurnRecorded body =
      farm.turn_body(cow_named("412"), "2026-11-24",
                     {foot(Foot::lh, {lesion(Lesion::wla)}, {act(ActionKind::vet)})});
  body.words = {"412", "LH white line abscess; vet"};
  farm.turn(body);
  const std::optional<TurnRecorded> read = body_as<TurnRecorded>(farm.last());
  REQUIRE(read);
  CHECK(read->turn == body.turn);
  CHECK(read->words == body.words);
  CHECK(read->cow == body.cow);
}

TEST_CASE("a turn of one reason, called by her right number, is written as it always was") {
  Farm farm;
  TurnRecorded body = farm.turn_body(cow_named("412"), "2026-11-24", {foot(Foot::lh, {}, {})});
  body.turn.reason = Reason::fresh;
  const std::string plain = body_bytes(body);
  CHECK(plain.find("\"also\"") == std::string::npos);
  CHECK(plain.find("called_first") == std::string::npos);
  body.turn.also = {Reason::lame};
  body.called_first = {"421"};
  farm.turn(body);
  const std::optional<TurnRecorded> read = body_as<TurnRecorded>(farm.last());
  REQUIRE(read);
  CHECK(came_for(read->turn, Reason::lame));
  CHECK(read->called_first == body.called_first);
}

TEST_CASE("a body is read as its own kind only") {
  Farm farm;
  farm.write(CowRegistered{cow_named("412"), "412", day("2026-11-24")});
  CHECK(body_as<CowRegistered>(farm.last()));
  CHECK_FALSE(body_as<NumberGiven>(farm.last()));
}

TEST_CASE("it is told why an entry cannot be pictured") {
  const struct {
    Entry entry;
    Readable readable;
  } table[] = {
      {with_kind("setting", 1, R"({"name":"language","value":"en"})"), Readable::yes},
      {with_kind("scored_by_camera", 1, "{}"), Readable::unknown_kind},
      {with_kind("setting", 2, R"({"name":"language"})"), Readable::newer_version},
      {with_kind("setting", 1, R"({"name":7})"), Readable::body_not_understood},
  };

  for (const auto& row : table) {
    CAPTURE(word_of(row.readable));
    CHECK(readable(row.entry) == row.readable);
    CHECK(body_as<Setting>(row.entry).has_value() == (row.readable == Readable::yes));
  }
  Entry redacted = table[0].entry;
  redacted.body.reset();
  CHECK(readable(redacted) == Readable::redacted);
  CHECK_FALSE(body_as<Setting>(redacted));
}

TEST_CASE("the subjects of an entry are its scope and every cow and visit its body names") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {});
  const std::vector<Uuid> expected =
      sorted_subjects({farm.herd().value, cow_named("412").value, farm.visit("2026-11-24").value});
  CHECK(farm.last().envelope.subjects == expected);

  TaskClosedBody told;
  told.cow = cow_named("412");
  CHECK(subjects_named(told) == std::vector<Uuid>{told.cow.value});
  told.visit = farm.visit("2026-11-24");
  CHECK(subjects_named(told) == sorted_subjects({told.cow.value, told.visit->value}));
  CHECK(subjects_named(Redact{EntryId{named_id("entry")}, ""}).empty());
}

TEST_CASE("a single id is read without the rest of the body") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {});
  CHECK(id_in_body(farm.last(), "cow") == cow_named("412").value);
  CHECK_FALSE(id_in_body(farm.last(), "words"));
  CHECK_FALSE(id_in_body(farm.last(), "herd"));
}

}  // namespace evenclaw
