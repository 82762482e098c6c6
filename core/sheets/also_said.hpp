// What was said of single cows for the farmer or the vet to know, and no task or box tells.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// The rules whose notes and unanswered questions are for the farmer or the vet, by their slugs.
std::vector<std::string_view> rules_for_others();

/// A note as it stands, a question with its answer or that there is none.
std::string warning_words(const WarningShown& shown, const Wording& wording);

/// Whose page tells it beside her card; what stands in the vet's box is not counted.
bool is_told_to_farmer(const WarningShown& shown);
bool is_told_to_vet(const WarningShown& shown);

/// For the farmer: of each cow once what the checks said for him or the vet, what he was asked and
/// nobody answered, each Stop that somebody went on against or that, not being for the vet, nobody
/// answered, near calving and culling advised. Cows
/// of whom the same is told stand together. Empty when there is nothing.
std::vector<Block> also_said_for_farmer(const VisitView& view);

/// The same for the vet, of what is his.
std::vector<Block> also_said_for_vet(const VisitView& view);

}  // namespace evenclaw
