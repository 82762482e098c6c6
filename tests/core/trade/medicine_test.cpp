#include "core/trade/medicine.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

const Day visit = day_from_text("2026-10-27").value();

ListedProduct listed(std::string name, std::vector<std::string> also = {}) {
  ListedProduct product;
  product.product.name = std::move(name);
  product.product.also_called = std::move(also);
  product.id = product_id(HerdId{}, product.product.name);
  return product;
}

MilkEnd end_of(const std::string& stated) {
  return milk_end(withdrawal_from_text(stated).value(), visit).value();
}

}  // namespace

TEST_CASE("a withdrawal is read in the unit in which it is stated") {
  CHECK(withdrawal_from_text("48h") == WithdrawalStated{48, WithdrawalUnit::hours});
  CHECK(withdrawal_from_text("4 milkings") == WithdrawalStated{4, WithdrawalUnit::milkings});
  CHECK(withdrawal_from_text("2d") == WithdrawalStated{2, WithdrawalUnit::days});
  CHECK(withdrawal_from_text("0") == WithdrawalStated{0, WithdrawalUnit::days});
  CHECK(withdrawal_from_text("1 Day") == WithdrawalStated{1, WithdrawalUnit::days});
}

TEST_CASE("a number without its unit is no withdrawal, nor is one of more than two years") {
  CHECK_FALSE(withdrawal_from_text("2"));
  CHECK_FALSE(withdrawal_from_text("d"));
  CHECK_FALSE(withdrawal_from_text(""));
  CHECK_FALSE(withdrawal_from_text("2 weeks"));
  CHECK_FALSE(withdrawal_from_text("731d"));
  CHECK(withdrawal_from_text("730d"));
}

TEST_CASE("a withdrawal is told in the unit in which it was stated") {
  CHECK(spoken(WithdrawalStated{48, WithdrawalUnit::hours}) == "48 hours");
  CHECK(spoken(WithdrawalStated{1, WithdrawalUnit::milkings}) == "1 milking");
  CHECK(spoken(WithdrawalStated{}) == "none");
}

TEST_CASE("milk is held back up to and with a milking, counted from the evening of the visit") {
  CHECK(end_of("2d") == MilkEnd{visit + 2, Milking::evening});
  CHECK(end_of("48h") == MilkEnd{visit + 2, Milking::evening});
  CHECK(end_of("4 milkings") == MilkEnd{visit + 2, Milking::evening});
  CHECK(end_of("36h") == MilkEnd{visit + 2, Milking::morning});
  CHECK(end_of("1 milking") == MilkEnd{visit + 1, Milking::morning});
}

TEST_CASE("a begun milking is held back whole") {
  CHECK(end_of("37h") == MilkEnd{visit + 2, Milking::evening});
  CHECK(end_of("1h") == MilkEnd{visit + 1, Milking::morning});
}

TEST_CASE("a withdrawal of zero holds nothing back") {
  CHECK_FALSE(milk_end(WithdrawalStated{}, visit));
}

TEST_CASE("what was given keeps the statement and the ends of then") {
  ListedProduct product = listed("bluemix");
  product.product.milk = WithdrawalStated{2, WithdrawalUnit::days};
  product.product.meat_days = 5;
  const Medicine given = given_on(product, visit);
  CHECK(given.product == product.id);
  CHECK(given.as_listed == product.product);
  CHECK(given.milk_till == visit + 2);
  CHECK(given.milk_milking == Milking::evening);
  CHECK(given.meat_till == visit + 5);
}

TEST_CASE("what nobody stated has no end, and no end is made up") {
  const Medicine given = given_on(listed("bluemix"), visit);
  CHECK_FALSE(given.milk_till);
  CHECK_FALSE(given.meat_till);
}

TEST_CASE("a product is found by every name it is called by, whatever the letter case") {
  const std::vector<ListedProduct> list = {listed("bluemix", {"blue spray"}), listed("tar")};
  CHECK(find_product(list, "Bluemix") == list.data());
  CHECK(find_product(list, "BLUE-SPRAY") == list.data());
  CHECK(find_product(list, "tarr") == nullptr);
  CHECK(find_product(list, "") == nullptr);
}

TEST_CASE("a near name is named, never taken") {
  const std::vector<ListedProduct> list = {listed("bluemix", {"blue spray"}), listed("tar")};
  CHECK(near_product(list, "bluemx") == "bluemix");
  CHECK(near_product(list, "bleumixx") == "bluemix");
  CHECK(near_product(list, "bluespray") == "blue spray");
  CHECK(near_product(list, "bar") == "tar");
  CHECK(near_product(list, "gel5").empty());
  CHECK(near_product(list, "bluemix").empty());
}

TEST_CASE("two tablets name the same product of a herd alike, and that of another herd otherwise") {
  const HerdId other{uuid_derived("another herd")};
  CHECK(product_id(HerdId{}, "Blue-Mix") == product_id(HerdId{}, "blue mix"));
  CHECK(product_id(HerdId{}, "bluemix") != product_id(other, "bluemix"));
}
