#include "core/api/herd_export.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "core/api/herd_import.hpp"
#include "core/exchange/csv.hpp"
#include "core/log/selection.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

using Tables = std::map<std::string, std::string>;

Tables tables_of(Store& store, std::optional<HerdId> herd = std::nullopt) {
  Tables tables;
  const Outcome done = export_tables(store, herd, [&](std::string_view name, std::string csv) {
    tables[std::string(name)] = std::move(csv);
    return Outcome(Done{});
  });
  REQUIRE(done.ok());
  return tables;
}

std::int64_t lines_in(const std::string& csv) {
  return std::count(csv.begin(), csv.end(), '\n');
}

void record_one(Workplace& place) {
  (void)place.visited("2026-10-13",
                      {"412 LH outside sole ulcer, bad; block on inside", "rest fine", "done"});
}

constexpr std::string_view two_cows_told =
    "number;tag;name;breed;born;calved;lactation;left;reason\n"
    "0412;UK 123450 600001;Bella;Jersey;2021-01-01;2026-09-01;3;;\n"
    "413;;;Holstein;2020-01-01;2025-08-01;2;2026-09-20;lame\n";

}  // namespace

TEST_CASE("every table of the picture is given out with a line for each of its rows") {
  Workplace place;
  record_one(place);
  const Tables tables = tables_of(place.store);
  CHECK(tables.size() == all_tables().size() + 1);
  for (const TableShape& shape : all_tables()) {
    const auto rows = place.store.select({std::string(shape.name), {}, {}, {}}).value();
    CHECK(lines_in(tables.at(std::string(shape.name))) ==
          static_cast<std::int64_t>(rows.size()) + 1);
  }
  CHECK(tables.at("finding").find(",SU,") != std::string::npos);
}

TEST_CASE("of one herd nothing of another is given out") {
  Workplace place;
  record_one(place);
  const Herd other = place.herd("Far Away Farm");
  const Tables tables = tables_of(place.store, other.herd);
  for (const auto& [name, csv] : tables) CHECK(lines_in(csv) == (name == "herd" ? 2 : 1));
  CHECK(tables.at("herd").find("Far Away Farm") != std::string::npos);
}

TEST_CASE("the dictionary tells of every column that is given out") {
  Workplace place;
  const std::string dictionary = data_dictionary_csv();
  std::size_t columns = 2 + 2;  // of herds and people
  for (const TableShape& shape : all_tables()) columns += shape.columns.size();
  CHECK(lines_in(dictionary) == static_cast<std::int64_t>(columns) + 1);
  CHECK(dictionary.find("finding,zone,0,whole number,1,zone number 0-12\r\n") != std::string::npos);
}

TEST_CASE("a cell that would be run as a formula is given out as text") {
  Workplace place;
  ImportWish wish;
  wish.from = day("2026-10-27");
  REQUIRE(import_herd(place.ports(), place.herd().herd, "number;name\n412;=1+1\n", wish).ok());
  CHECK(tables_of(place.store).at("cow_alias").find(",'=1+1") != std::string::npos);
}

TEST_CASE("who stands behind an id is told in a table of its own") {
  Workplace place;
  REQUIRE(place.directory.add({PersonId{uuid_derived("Anna")}, "Anna", false}).ok());
  const std::string people = export_people(place.directory).value();
  CHECK(people.find(to_text(uuid_derived("Anna")) + ",Anna\r\n") != std::string::npos);
}

TEST_CASE("a herd given out as ICAR ADE and taken over into another herd is the same herd") {
  Workplace place;
  ImportWish wish;
  wish.from = day("2026-10-27");
  const HerdId herd = place.herd().herd;
  REQUIRE(import_herd(place.ports(), herd, two_cows_told, wish).ok());
  const std::string ade = export_ade(place.store, herd, {}).value();
  const Herd copy = place.herd("Copy Farm");
  const auto taken = import_herd(place.ports(), copy.herd, ade, wish);
  REQUIRE(taken.ok());
  CHECK(taken->left_out.empty());
  CHECK(taken->entered == 2);
  const auto lives = [&](HerdId of) {
    std::vector<std::string> told;
    for (const CowLifeRow& row : select_as<CowLifeRow>(place.store, of).value()) {
      told.push_back(to_text(row.day) + std::string(word_of(row.event)) + row.words);
    }
    std::sort(told.begin(), told.end());
    return told;
  };
  CHECK(lives(copy.herd) == lives(herd));
  CHECK(import_herd(place.ports(), copy.herd, ade, wish)->told_more == 0);
}

}  // namespace evenclaw::test
