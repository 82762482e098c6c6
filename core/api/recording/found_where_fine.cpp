// A finding on a foot that "rest fine" spoke of a line before: hers after all, or of the next cow,
// whose number nobody said.
#include <algorithm>
#include <string>

#include "core/api/recording/state.hpp"
#include "core/trade/call_line/quoted_words.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

const FootCall* call_of(const Turn& turn, Foot foot) {
  const auto at = std::find_if(turn.feet.begin(), turn.feet.end(),
                               [&](const FootCall& call) { return call.foot == foot; });
  return at == turn.feet.end() ? nullptr : &*at;
}

FootSet found_where_fine(const Turn& before, const Turn& now) {
  FootSet feet;
  if (!before.rest_fine) return feet;
  for (const FootCall& call : now.feet) {
    if (!call.findings.empty() && call_of(before, call.foot) == nullptr) feet.add(call.foot);
  }
  return feet;
}

}  // namespace

/// `before` is her turn as it stood before the line, in which nobody was named.
void RecordingState::tell_found_where_fine(const Turn& before) {
  const FootSet feet = found_where_fine(before, in_crush_->draft.turn);
  if (feet.empty()) return;
  show_mark(with_quoted_words(
      spoken(feet) +
          " was fine a line before. Not hers? \"{nothing after all}\", then the right number",
      *language_));
}

}  // namespace evenclaw
