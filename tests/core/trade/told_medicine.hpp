// Invented products for tests of the rules about medicines.
#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "core/trade/medicine_rules.hpp"

namespace evenclaw::told {

inline ListedProduct listed(std::string name, Labelled labelled, std::string_view milk,
                            std::int32_t meat_days) {
  ListedProduct product;
  product.product.name = std::move(name);
  product.product.labelled = labelled;
  product.product.milk = withdrawal_from_text(milk);
  product.product.meat_days = meat_days;
  product.id = product_id(HerdId{}, product.product.name);
  return product;
}

/// "plainmix" is labelled and needs no withdrawal, "slowmix" 2 days of milk and 5 of meat,
/// "strongmix" is used off label with less than the floor; nobody stated one of "oddmix".
inline MedicineRules invented_list() {
  MedicineRules rules;
  rules.list = {
      listed("plainmix", Labelled::yes, "0", 0), listed("slowmix", Labelled::yes, "2d", 5),
      listed("strongmix", Labelled::no, "2d", 5), listed("oddmix", Labelled::yes, "0", 0)};
  rules.list.back().product.milk.reset();
  return rules;
}

}  // namespace evenclaw::told
