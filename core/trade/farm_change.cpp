#include "core/trade/farm_change.hpp"

#include "core/base/text.hpp"

namespace evenclaw {

VisitId change_id(HerdId herd, const ChangeNamed& named) {
  // Neither text can hold a line feed: each was said on one line.
  return {uuid_derived("change\n" + to_text(herd) + '\n' + to_text(named.since) + '\n' +
                       std::string(word_of(named.driver)) + '\n' +
                       fold_case(trimmed(named.animals)) + '\n' + fold_case(trimmed(named.words)))};
}

}  // namespace evenclaw
