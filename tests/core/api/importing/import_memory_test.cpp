#include "core/api/importing/import_memory.hpp"

#include <doctest/doctest.h>

#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

TEST_CASE("what is said of the columns of a herd's lists is remembered for that herd alone") {
  Workplace place;
  const HerdId herd = place.herd().herd;
  const HerdId other = place.herd("Far Herd").herd;
  ImportMemory memory;
  memory.columns = {{"Tier", HerdColumn::number}};
  memory.dates = DayOrder::day_month_year;
  auto journal = Journal::open(place.ports(), herd.value).value();
  REQUIRE(remember(journal, memory).ok());
  REQUIRE(journal.write().ok());
  CHECK(import_memory_of(place.store, herd).value() == memory);
  CHECK(import_memory_of(place.store, other).value() == ImportMemory{});
}

TEST_CASE("what is said of the words for lesions and feet is remembered too") {
  Workplace place;
  const HerdId herd = place.herd().herd;
  ImportMemory memory;
  memory.findings = with_words_said(lesions_said("icar, a=b=DD, X=ignore").value(),
                                    words_said("foot:1=LH outside, degree:2=plain").value());
  auto journal = Journal::open(place.ports(), herd.value).value();
  REQUIRE(remember(journal, memory).ok());
  REQUIRE(journal.write().ok());
  CHECK(import_memory_of(place.store, herd).value() == memory);
  const ImportMemory now = with_said(memory, {}, std::nullopt, lesions_said("not icar").value());
  CHECK(now.findings.icar == false);
  CHECK(now.findings.words == memory.findings.words);
}

TEST_CASE("the last word of a head holds, however it is written") {
  ImportMemory memory;
  memory.columns = {{"Tier", HerdColumn::number}, {"Milk", HerdColumn::ignore}};
  const ImportMemory now = with_said(memory, {{"TIER", HerdColumn::name}}, std::nullopt);
  CHECK(now.columns ==
        std::vector<ColumnSaid>{{"Milk", HerdColumn::ignore}, {"TIER", HerdColumn::name}});
  CHECK(with_said(now, {}, std::nullopt) == now);
}

}  // namespace evenclaw::test
