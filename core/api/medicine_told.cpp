#include "core/api/medicine_told.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include "core/api/filled_rows.hpp"
#include "core/api/products.hpp"
#include "core/sheets/left_to_ask.hpp"
#include "core/sheets/medicine_in_words.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

/// Without this visit.
template <class Row>
void keep_earlier(std::vector<Row>& rows, VisitId visit) {
  std::erase_if(rows, [&](const Row& row) { return row.visit == visit; });
}

}  // namespace

Outcome add_medicine_told(VisitSheetInput& input, Store& store) {
  const VisitRow& visit = input.visit;
  const auto products = products_on(store, visit.herd, visit.day);
  if (!products) return products.faults();
  for (const ListedProduct& one : *products) {
    ProductNames names = one.product.also_called;
    names.push_back(one.product.name);
    input.product_names.push_back(std::move(names));
  }
  const std::vector<Filter> before = {
      {"day", Compare::at_least, Cell(to_text(visit.day - longest_asked_days))},
      {"day", Compare::at_most, Cell(to_text(visit.day))}};
  Rows earlier;
  Faults faults;
  fill(earlier.turns, faults, store, visit.herd, before);
  fill(earlier.feet, faults, store, visit.herd, before);
  fill(earlier.actions, faults, store, visit.herd, before);
  if (!faults.empty()) return faults;
  keep_earlier(earlier.turns, visit.visit);
  keep_earlier(earlier.feet, visit.visit);
  input.medicine_told_before = medicine_told_in(earlier, input.product_names, english_wording());
  std::erase_if(input.medicine_told_before, [&](const MedicineTold& told) {
    return std::any_of(earlier.actions.begin(), earlier.actions.end(), [&](const ActionRow& row) {
      return row.cow == told.cow && tells_withdrawal(row.action) && told.on <= row.day;
    });
  });
  return Done{};
}

}  // namespace evenclaw
