// A herd's own list of medicines and other products, and what the law of the country reserves.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/medicine_rules.hpp"

namespace evenclaw {

/// One product of the list as people are shown it.
struct ProductShown {
  ProductId id;
  Product product;
  std::string vet;          // who directed it, by name; "" when nobody did
  std::string below_floor;  // "milk 2 days, at least 7 days"; "" when nothing lies below it

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("id", &ProductShown::id, "the product");
    visit("product", &ProductShown::product, "what the list says of it");
    visit("vet", &ProductShown::vet, "the vet on whose direction it is used");
    visit("below_floor", &ProductShown::below_floor,
          "what lies below the least withdrawal off label");
  }
};

/// The products that stand on the herd's list on that day, by name.
Result<std::vector<ListedProduct>> products_on(Store& store, HerdId herd, Day day);

/// The same with the vets' names and what lies below the floor in the country of the business.
Result<std::vector<ProductShown>> list_products(const Ports& ports, HerdId herd, Day day);

/// Puts a product on the list from that day on, or states anew what is said of one that is there.
/// Faults: "usage" for no name, one that cannot be shown, or one another product is called by;
/// "answer-needed" for a name a slip of the pen away from a listed one, unless `sure`.
Result<ProductShown> list_product(const Ports& ports, HerdId herd, const Product& product, Day from,
                                  bool sure);

/// Takes the product of that name, or so called, off the list from that day on. Records keep what
/// they say. Fault "product-not-found" with the nearest name as remedy.
Result<EntryId> drop_product(const Ports& ports, HerdId herd, std::string_view name, Day from);

/// What this business has settled; strict, without a country, where it has settled nothing.
Result<LocalLaw> local_law(Store& store);

/// Two letters as in ISO 3166, or GB-NIR; letter case does not matter. Fault "usage" for others.
Result<EntryId> set_country(const Ports& ports, std::string_view country);

/// The business says that its trimmers may do this where they work, or takes that back.
Result<EntryId> set_trimmer_may(const Ports& ports, ReservedAct act, bool allowed);

/// All that the checks of a visit need to know of medicines; nothing is asked yet.
Result<MedicineRules> medicine_rules(Store& store, HerdId herd, Day day);

}  // namespace evenclaw
