#include "core/trade/call_line/refitted_today.hpp"

#include <algorithm>
#include <string>

#include "core/trade/call_line/language.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// A refusal puts what stands in braces in the words of the language that is spoken.
std::string in_any_language(const Action& action) {
  std::string words(english().say(TermKind::block_act, action.kind));
  if (is_called(action.claw))
    words += ' ' + std::string(english().say(TermKind::claw, action.claw));
  return words;
}

}  // namespace

std::optional<Refusal> why_not_refitted(const FootCall& call, const Action& said) {
  const bool refits = said.kind == ActionKind::block_refitted;
  if (!refits && said.kind != ActionKind::block_on) return std::nullopt;
  const ActionKind other = refits ? ActionKind::block_on : ActionKind::block_refitted;
  const auto before =
      std::find_if(call.actions.begin(), call.actions.end(), [&](const Action& action) {
        return action.kind == other && claws_agree(action.claw, said.claw);
      });
  if (before == call.actions.end()) return std::nullopt;
  const std::string foot(word_of(call.foot));
  const std::string known = in_any_language(*before);
  return impossible("a block was called on " + foot + " at this visit already: \"{" + known + "}\"",
                    "it is put on today or refitted; if the other was wrong: \"{" + foot +
                        " no, no " + known + "}; {" + in_any_language(said) + "}\"");
}

}  // namespace evenclaw
