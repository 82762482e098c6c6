#include "core/trade/medicine_use.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"
#include "tests/core/trade/told_medicine.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

Turn said(std::string_view text) {
  return told_day(text).draft.turn;
}

const Action& spray_in(const Turn& turn) {
  return turn.feet.front().actions.front();
}

}  // namespace

TEST_CASE("sprays, pastes and what is given may hold milk back; a wrap or a block does not") {
  CHECK(is_medicine_act(ActionKind::spray));
  CHECK(is_medicine_act(ActionKind::injected));
  CHECK_FALSE(is_medicine_act(ActionKind::wrap_on));
  CHECK_FALSE(is_medicine_act(ActionKind::milk_withheld));
}

TEST_CASE("a product of the list takes what the list says, and keeps the name that was said") {
  const Turn turn = with_medicines(said("412\nLH DD raw; spray with SlowMix"), invented_list(),
                                   first_of_november);
  REQUIRE(spray_in(turn).medicine);
  CHECK(spray_in(turn).product == "SlowMix");
  CHECK(spray_in(turn).medicine->as_listed.name == "slowmix");
  CHECK(spray_in(turn).medicine->milk_till == first_of_november + 2);
}

TEST_CASE("a name that is not on the list stays as it was said") {
  const Turn turn = said("412\nLH DD raw; spray with greenmix");
  CHECK(with_medicines(turn, invented_list(), first_of_november) == turn);
}

TEST_CASE("a later change of the list moves nothing that was recorded") {
  MedicineRules rules = invented_list();
  const Turn then =
      with_medicines(said("412\nLH DD raw; spray with slowmix"), rules, first_of_november);
  rules.list[1].product.milk = WithdrawalStated{9, WithdrawalUnit::days};
  CHECK(with_medicines(then, rules, first_of_november) == then);
}

TEST_CASE("a withdrawal of zero is known, one that nobody stated is not") {
  const auto known = [](const std::string& product) {
    const Turn turn = with_medicines(said("412\nLH DD raw; spray with " + product), invented_list(),
                                     first_of_november);
    return withdrawal_known(spray_in(turn));
  };
  CHECK(known("plainmix") == WithdrawalKnown::none);
  CHECK(known("slowmix") == WithdrawalKnown::held_back);
  CHECK(known("oddmix") == WithdrawalKnown::not_known);
  CHECK(known("greenmix") == WithdrawalKnown::not_known);
  CHECK(withdrawal_known(act(ActionKind::wrap_on)) == WithdrawalKnown::no_medicine);
  CHECK(withdrawal_known(act(ActionKind::no_withdrawal)) == WithdrawalKnown::none);
}

TEST_CASE("the products of a turn are told once each, one without a name by what it is") {
  CHECK(products_said(said("412\nboth hinds DD raw; spray with tar\nLH paste; wrap on")) ==
        Names{"tar", "paste"});
}
