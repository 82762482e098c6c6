#include "core/trade/mobility_scoring.hpp"

#include "core/base/text.hpp"

namespace evenclaw {

VisitId scoring_id(HerdId herd, Day day, MobilityScale scale, std::string_view group) {
  // The group is free text, so it stands last.
  return {uuid_derived("mobility scoring\n" + to_text(herd) + '\n' + to_text(day) + '\n' +
                       std::string(word_of(scale)) + '\n' + fold_case(trimmed(group)))};
}

}  // namespace evenclaw
