// A medicine told in words that nobody has read as a call: then nobody stated a withdrawal.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// The words name a product of the list, or hold a word of a medicine or of milk held back, in any
/// language. That it is denied is not heard: then it is only asked about.
bool names_a_medicine(std::string_view words, const std::vector<ProductNames>& products);

/// What notes, reasons, what a cow came for and refused lines of those turns and feet tell of it,
/// quoted with what they are, each once. Not where all products that are named were called of her
/// that day: then the record tells of them.
std::vector<MedicineTold> medicine_told_in(const Rows& rows,
                                           const std::vector<ProductNames>& products,
                                           const Wording& wording);

/// Of this visit and, as long as nobody told a withdrawal of her since, of earlier ones; without
/// cows of whom nobody has to be asked any more. By number of the cow and day.
std::vector<MedicineTold> medicine_to_ask(const VisitView& view);

}  // namespace evenclaw
