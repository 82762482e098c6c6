#include "core/trade/call_line/denied.hpp"

#include <algorithm>

namespace evenclaw {

namespace {

bool calls_the_vet(const Action& action) {
  return action.kind == ActionKind::vet;
}

bool vet_was_called(const Turn& turn) {
  const auto of_foot = [](const FootCall& call) {
    return std::any_of(call.actions.begin(), call.actions.end(), calls_the_vet);
  };
  return std::any_of(turn.actions.begin(), turn.actions.end(), calls_the_vet) ||
         std::any_of(turn.feet.begin(), turn.feet.end(), of_foot);
}

}  // namespace

std::optional<Refusal> why_not_denied(const Turn& turn, const NoteSaid& said) {
  if (!said.denies) return std::nullopt;
  switch (*said.denies) {
    case Denied::lame:
      if (!came_for(turn, Reason::lame)) return std::nullopt;
      return impossible("she was said to be lame", "if she is not, say \"{no, not lame}\"");
    case Denied::vet:
      if (!vet_was_called(turn)) return std::nullopt;
      return impossible("the vet was said before",
                        "if the vet is not needed, say \"{no, no vet}\", the foot before it when "
                        "it was said of a foot");
  }
  return std::nullopt;
}

}  // namespace evenclaw
