#include "core/api/medicine_told.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/api/products.hpp"
#include "core/api/sheet.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw::test {

namespace {

/// The sheet of Friday 6 November, after a visit on Monday 2 November; longmix is on the list.
std::string sheet_with_longmix(const std::vector<std::string>& monday,
                               const std::vector<std::string>& friday) {
  Workplace place;
  Product product;
  product.name = "longmix";
  product.labelled = Labelled::yes;
  product.milk = WithdrawalStated{3, WithdrawalUnit::days};
  product.meat_days = 10;
  REQUIRE(list_product(place.ports(), place.herd().herd, product, day("2026-10-01"), true).ok());
  place.clock.set(day("2026-11-02"));
  if (!monday.empty()) (void)place.visited("2026-11-02", monday);
  place.clock.set(day("2026-11-06"));
  const Visit visit = place.visited("2026-11-06", friday).visit;
  return make_sheet(place.ports(), visit, day("2026-11-06"), {"0.1", {}}).value().text;
}

const std::vector<std::string> tells_of_longmix[] = {
    {"901 nothing found; note given longmix", "done"},
    {"901 not done, farmer treated her with longmix"},
    {"901 came for longmix", "nothing found", "done"},
    {"901 nothing found; note antibiotic this morning, milk in the bucket", "done"},
    {"901 nothing found", "given longmix 20 ml in the neck", "done"},
    {"901 nothing found", "injected longmix in the neck", "done"},
    {"901 nothing found", "milk to the calves", "done"},
    {"901 nothing found", "milk withheld", "done"}};

}  // namespace

TEST_CASE("a medicine that only words tell of is asked about, and nothing given is not said") {
  for (const auto& lines : tells_of_longmix) {
    const std::string sheet = sheet_with_longmix({}, lines);
    CHECK_MESSAGE(holds(sheet, "MILK AND MEAT: ASK FIRST"), sheet);
    CHECK_MESSAGE(!holds(sheet, "Nothing was given"), sheet);
  }
}

TEST_CASE("a medicine that only words told of is asked about at the next visit too") {
  const std::string sheet = sheet_with_longmix({"901 nothing found; note given longmix", "done"},
                                               {"12 nothing found", "done"});
  CHECK_MESSAGE(holds(sheet, "given longmix, on Mon 2 Nov"), sheet);
  CHECK_MESSAGE(!holds(sheet, "Nothing was given"), sheet);
}

TEST_CASE("words of a medicine are answered by a withdrawal told at a later visit") {
  const std::string sheet = sheet_with_longmix({"901 nothing found; note given longmix", "done"},
                                               {"901 no withdrawal; nothing found", "done"});
  CHECK_MESSAGE(!holds(sheet, "on Mon 2 Nov"), sheet);
}

TEST_CASE("a note that names what was called and is on the list asks nothing") {
  const std::string sheet =
      sheet_with_longmix({}, {"901 nothing found; given longmix; note longmix", "done"});
  CHECK_MESSAGE(!holds(sheet, "MILK AND MEAT: ASK FIRST"), sheet);
}

}  // namespace evenclaw::test
