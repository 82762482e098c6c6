// The bodies of entries about a herd's own list of products.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/trade/medicine.hpp"

namespace evenclaw {

/// A product stands on the list from that day on, with what is stated of it. Listed again it says
/// so from the newer day on; what was given before keeps what its own record says.
struct ProductListed {
  static constexpr std::string_view kind = "product_listed";
  static constexpr std::int32_t version = 1;
  ProductId product;
  Product as_listed;
  Day valid_from;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("product", &ProductListed::product, "derived from herd and name");
    visit("as_listed", &ProductListed::as_listed, "what the list says of it");
    visit("valid_from", &ProductListed::valid_from, "first day it says so");
  }
};

struct ProductDropped {
  static constexpr std::string_view kind = "product_dropped";
  static constexpr std::int32_t version = 1;
  ProductId product;
  Day from;
  std::string words;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("product", &ProductDropped::product, "the product");
    visit("from", &ProductDropped::from, "first day it is no longer on the list");
    visit("words", &ProductDropped::words, "why");
  }
};

}  // namespace evenclaw
