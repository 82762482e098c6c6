#include "core/trade/call_line/said_of_her.hpp"

#include <algorithm>

#include "core/trade/call_line/said_again.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

bool is_medicine_of_her(const Action& action) {
  return is_medicine_act(action.kind) || is_given_unnamed(action.kind);
}

/// From where on one of hers may be the same.
template <class Actions>
auto first_of_same(Actions& actions, const Action& said) {
  if (!tells_withdrawal(said.kind)) return actions.begin();
  return std::find_if(actions.rbegin(), actions.rend(), is_medicine_of_her).base();
}

}  // namespace

std::size_t count_of_same_of_her(const std::vector<Action>& actions, const Action& said) {
  return static_cast<std::size_t>(
      std::count_if(first_of_same(actions, said), actions.end(),
                    [&said](const Action& each) { return are_one(each, said); }));
}

void add_or_complete_of_her(std::vector<Action>& actions, const Action& said) {
  const auto same = std::find_if(first_of_same(actions, said), actions.end(),
                                 [&said](const Action& each) { return are_one(each, said); });
  if (same == actions.end()) {
    actions.push_back(said);
  } else {
    complete(*same, said);
  }
}

}  // namespace evenclaw
