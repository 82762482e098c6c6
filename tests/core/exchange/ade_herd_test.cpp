#include "core/exchange/ade_herd.hpp"

#include <doctest/doctest.h>

#include "core/base/random.hpp"
#include "tests/core/exchange/exchange_day.hpp"

using namespace evenclaw;
using evenclaw::test::day;

namespace {

constexpr std::string_view meta =
    R"("meta":{"source":"farm.example","modified":"2026-10-01T00:00:00Z"})";

std::string animal(std::string_view more = "") {
  return R"({"resourceType":"icarAnimalCoreResource",)" + std::string(meta) +
         R"(,"identifier":{"scheme":"eu.bovine","id":"DE0312312345"})"
         R"(,"specie":"Cattle","gender":"Female")" +
         std::string(more) + "}";
}

std::string event(std::string_view type, std::string_view more = "") {
  return R"({"resourceType":")" + std::string(type) + R"(",)" + std::string(meta) +
         R"(,"animal":{"scheme":"eu.bovine","id":"DE0312312345"})"
         R"(,"eventDateTime":"2026-09-01T05:00:00Z")" +
         std::string(more) + "}";
}

AdeHerd read_herd(const std::string& text) {
  auto herd = ade_herd(text, day("2026-10-27"));
  REQUIRE(herd.ok());
  return *std::move(herd);
}

HerdRecord only_record(const std::string& text) {
  AdeHerd herd = read_herd(text);
  for (const Fault& fault : herd.left_out) FAIL_CHECK(fault.message);
  REQUIRE(herd.records.size() == 1);
  return std::move(herd.records.front());
}

std::string left_out_of(const std::string& text) {
  const AdeHerd herd = read_herd(text);
  CHECK(herd.records.empty());
  std::string told;
  for (const Fault& fault : herd.left_out) {
    CHECK_FALSE(fault.remedy.empty());
    told += (told.empty() ? "" : "; ") + std::to_string(fault.line) + " " + fault.message;
  }
  return told;
}

std::string replaced(std::string text, std::string_view what, std::string_view with) {
  const std::size_t at = text.find(what);
  REQUIRE(at != std::string::npos);
  return text.replace(at, what.size(), with);
}

}  // namespace

TEST_CASE(
    "an animal is known by its identifiers, whatever their schemes, and by its management tag") {
  const HerdRecord cow = only_record(
      animal(R"(,"alternativeIdentifiers":[{"scheme":"std.iso.11785","id":"276000312312345"}],)"
             R"("managementTag":"0412","name":"Bella","birthDate":"2022-01-05T00:00:00Z",)"
             R"("primaryBreed":{"scheme":"org.icar.breed","id":"JER"},"weight":612.5)"));
  CHECK(cow.tag == "DE0312312345");
  CHECK(cow.electronic == "276000312312345");
  CHECK(cow.number == "0412");
  CHECK(cow.name == "Bella");
  CHECK(cow.breed == "JER");
  CHECK(cow.born == day("2022-01-05"));
  CHECK_FALSE(cow.is_one_event);
}

TEST_CASE("each kind of event is read with what it tells") {
  struct Row {
    std::string_view type;
    std::string_view more;
    LifeEventTold told;
  };

  const Day on = day("2026-09-01");
  const Row rows[] = {
      {"icarReproParturitionEventResource",
       R"(,"damParity":3)",
       {LifeEvent::calved, on, std::int32_t{3}}},
      {"icarMilkingDryOffEventResource", "", {LifeEvent::dried_off, on}},
      {"icarMovementArrivalEventResource",
       R"(,"arrivalReason":"Purchase")",
       {LifeEvent::arrived, on}},
      {"icarMovementDepartureEventResource",
       R"(,"departureReason":"LegOrClaw")",
       {LifeEvent::left, on, std::nullopt, LeavingWay::not_told, LeavingReason::feet_and_legs,
        "LegOrClaw"}},
      {"icarMovementDepartureEventResource",
       R"(,"departureReason":"Sale")",
       {LifeEvent::left, on, std::nullopt, LeavingWay::sold, LeavingReason::not_told, "Sale"}},
      {"icarMovementDeathEventResource",
       R"(,"deathReason":"Accident")",
       {LifeEvent::left, on, std::nullopt, LeavingWay::died, LeavingReason::accident, "Accident"}}};
  for (const Row& row : rows) {
    CAPTURE(row.type);
    const HerdRecord record = only_record(event(row.type, row.more));
    CHECK(record.is_one_event);
    CHECK(record.tag == "DE0312312345");
    CHECK(record.events == std::vector<LifeEventTold>{row.told});
  }
}

TEST_CASE("one resource, an array and a collection are read alike") {
  CHECK(read_herd(animal()).records.size() == 1);
  CHECK(read_herd("[" + animal() + "," + event("icarMilkingDryOffEventResource") + "]")
            .records.size() == 2);
  CHECK(read_herd(R"({"view":{"totalItems":1},"member":[)" + animal() + "]}").records.size() == 1);
}

TEST_CASE(
    "an event is of the animal of the file with its identifier, in whatever order they stand") {
  const auto own = [](const std::string& text) {
    return replaced(text, R"("scheme":"eu.bovine","id":"DE0312312345")",
                    R"("scheme":"com.example.key","id":"a-17")");
  };
  const AdeHerd herd = read_herd("[" + own(event("icarMilkingDryOffEventResource")) + "," +
                                 own(animal(R"(,"managementTag":"412")")) + "]");
  REQUIRE(herd.records.size() == 2);
  CHECK(herd.records[0].number == "412");
  CHECK(herd.records[0].line == 1);
}

TEST_CASE("what the schema requires and is missing is told, object by object") {
  CHECK(left_out_of("[{}]") == "1 resourceType is missing");
  CHECK(left_out_of(replaced(animal(), R"("source":"farm.example",)", "")) ==
        "1 meta.source is missing");
  CHECK(left_out_of(replaced(animal(), R"("modified":"2026-10-01T00:00:00Z")", R"("x":1)")) ==
        "1 meta.modified is missing");
  CHECK(left_out_of(replaced(animal(), R"(,"specie":"Cattle","gender":"Female")", "")) ==
        "1 specie is missing; 1 gender is missing");
  CHECK(left_out_of(replaced(animal(), R"("identifier")", R"("identifiers")")) ==
        "1 identifier is missing");
  const std::string dry = event("icarMilkingDryOffEventResource");
  CHECK(left_out_of(replaced(dry, R"("animal")", R"("beast")")) == "1 animal is missing");
  CHECK(left_out_of(replaced(dry, R"("eventDateTime")", R"("when")")) ==
        "1 eventDateTime is missing");
}

TEST_CASE("what is no cow, deleted or impossible is left out and told") {
  CHECK(left_out_of(replaced(animal(), "Cattle", "Sheep")) == "1 the animal is no cattle: Sheep");
  CHECK(left_out_of(replaced(animal(), "Female", "Male")) == "1 the animal is male: Male");
  CHECK(left_out_of(replaced(animal(), R"("modified")", R"("isDeleted":true,"modified")")) ==
        "1 it is marked as deleted at its source");
  CHECK(left_out_of(replaced(animal(), "DE0312312345", "a-17")) ==
        "1 nothing tells which cow this is");
  CHECK(left_out_of(replaced(event("icarMilkingDryOffEventResource"), "2026-09-01", "2027-09-01"))
            .substr(0, 12) == "1 2027-09-01");
  CHECK(left_out_of(event("icarReproParturitionEventResource", R"(,"damParity":0)")) ==
        "1 damParity is no number of a lactation: 0");
}

TEST_CASE("other resources are passed over and told by their type") {
  const AdeHerd herd =
      read_herd("[" + animal() + R"(,{"resourceType":"icarMilkingVisitEventResource"}])");
  CHECK(herd.records.size() == 1);
  CHECK(herd.left_out.empty());
  REQUIRE(herd.types.size() == 2);
  CHECK(herd.types[1].head == "icarMilkingVisitEventResource");
  CHECK(herd.types[1].holds == HerdColumn::ignore);
}

TEST_CASE("a file that is cut off or holds nothing is refused whole, with its place") {
  const std::string whole = "[" + animal() + "]";
  const auto cut = ade_herd(whole.substr(0, whole.size() - 20), day("2026-10-27"));
  REQUIRE_FALSE(cut.ok());
  CHECK(cut.faults().front().slug == "json-unreadable");
  CHECK(cut.faults().front().line == 1);
  CHECK_FALSE(ade_herd("[]", day("2026-10-27")).ok());
  CHECK(looks_like_json(" \n[1]"));
  CHECK_FALSE(looks_like_json("cow;calved"));
}

TEST_CASE("files changed at any place are read or refused") {
  const std::string whole = "[" + animal(R"(,"managementTag":"412","weight":1.5e2)") + "," +
                            event("icarReproParturitionEventResource", R"(,"damParity":3)") + "]";
  for (std::uint64_t stream = 0; stream < 1000; ++stream) {
    RandomStream random(20261105, stream);
    std::string text = whole;
    const std::uint32_t changes = 1 + random.below(4);
    for (std::uint32_t i = 0; i < changes; ++i) {
      const std::size_t at = random.below(static_cast<std::uint32_t>(text.size()));
      if (random.chance(0.5)) text.erase(at, random.below(9));
      if (random.chance(0.5)) text.insert(at, 1, "{}[]\",:1.-e"[random.below(11)]);
    }
    const auto herd = ade_herd(text, day("2026-10-27"));
    if (!herd) CHECK_FALSE(herd.faults().empty());
    if (!herd) continue;
    for (const HerdRecord& record : herd->records) {
      CHECK_FALSE((record.number.empty() && record.tag.empty() && record.electronic.empty()));
    }
  }
}
