#include "core/trade/medicine_rules.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

Product off_label(std::string_view milk, std::int32_t meat) {
  Product product;
  product.labelled = Labelled::no;
  product.milk = withdrawal_from_text(milk);
  product.meat_days = meat;
  return product;
}

}  // namespace

TEST_CASE("every reserved act has a rule where no country is known, and each names its source") {
  for (const auto& row : EnumWords<ReservedAct>::table) {
    CHECK(rule_for(row.value, "").country.empty());
    CHECK(rule_for(row.value, "FR").country.empty());
  }
  for (const ReservedActRule& rule : all_reserved_acts()) CHECK_FALSE(rule.source.empty());
}

TEST_CASE("what is injected, numbed or cut off is the vet's, a wrap is not") {
  CHECK(reserved_act(ActionKind::injected) == ReservedAct::injection);
  CHECK(reserved_act(ActionKind::anaesthetised) == ReservedAct::anaesthesia);
  CHECK(reserved_act(ActionKind::amputated) == ReservedAct::surgery);
  CHECK_FALSE(reserved_act(ActionKind::wrap_on).has_value());
}

TEST_CASE("a country with a rule of its own is told by its own source") {
  CHECK(rule_for(ReservedAct::anaesthesia, "DE").country == "DE");
  CHECK(rule_for(ReservedAct::surgery, "GB").country == "GB");
}

TEST_CASE("used off label without a label period, milk is held 7 days and meat 28") {
  const LeastWithdrawal least = least_withdrawal(off_label("2d", 5), "GB");
  CHECK(least.milk_hours == 7 * 24);
  CHECK(least.meat_days == 28);
}

TEST_CASE("off label, the longest period on the label counts half as much again") {
  Product product = off_label("2d", 5);
  product.milk_on_label = WithdrawalStated{48, WithdrawalUnit::hours};
  product.meat_days_on_label = 5;
  CHECK(least_withdrawal(product, "GB").milk_hours == 72);
  CHECK(least_withdrawal(product, "GB").meat_days == 8);
}

TEST_CASE("off label, a label that says zero means a day") {
  Product product = off_label("0", 0);
  product.milk_on_label = WithdrawalStated{};
  product.meat_days_on_label = 0;
  CHECK(least_withdrawal(product, "").milk_hours == 24);
  CHECK(least_withdrawal(product, "").meat_days == 1);
}

TEST_CASE("in Northern Ireland the label does not shorten the floor") {
  Product product = off_label("2d", 5);
  product.milk_on_label = WithdrawalStated{48, WithdrawalUnit::hours};
  product.meat_days_on_label = 5;
  CHECK(least_withdrawal(product, "GB-NIR").milk_hours == 7 * 24);
  CHECK(least_withdrawal(product, "GB-NIR").meat_days == 28);
}

TEST_CASE("what lies below the floor is told with the floor") {
  CHECK(below_floor(off_label("2d", 28), "") == "milk 2 days, at least 7 days");
  CHECK(below_floor(off_label("7d", 5), "") == "meat 5 days, at least 28 days");
  CHECK(below_floor(off_label("48h", 0), "") ==
        "milk 48 hours, at least 7 days; meat none, at least 28 days");
  CHECK(below_floor(off_label("7d", 28), "").empty());
}

TEST_CASE("a labelled product, and one of which that is not known, has no floor") {
  Product product = off_label("0", 0);
  product.labelled = Labelled::yes;
  CHECK(below_floor(product, "").empty());
  product.labelled = Labelled::not_known;
  CHECK(below_floor(product, "").empty());
}

TEST_CASE("what nobody stated lies below nothing: it is asked about instead") {
  Product product;
  product.labelled = Labelled::no;
  CHECK(below_floor(product, "").empty());
}

TEST_CASE("a product that was asked about is known by its name in any letter case") {
  MedicineRules rules;
  rules.asked = {"Bluemix"};
  CHECK(rules.was_asked("bluemix"));
  CHECK_FALSE(rules.was_asked("tar"));
}
