#include "core/trade/call_line/nothing_found.hpp"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <string>

#include "core/trade/call_line/language.hpp"

namespace evenclaw {

namespace {

std::string told(Foot foot) {
  return std::string(word_of(foot));
}

bool is_of_the_claw(const Finding& finding) {
  return finding.lesion != Lesion::blood_drawn;
}

bool is_contradicted(const FootCall& call, const FindingSaid& said) {
  return call.state == FootState::nothing_found && is_of_the_claw(said.finding) && !said.instead;
}

/// By name, or as one of those that were left when "rest fine" was said.
bool was_called_fine(const Turn& turn, const FootCall& call) {
  if (call.state == FootState::nothing_found) return true;
  return turn.rest_fine && call.state == FootState::unsaid && call.findings.empty();
}

/// A refusal puts what stands in braces in the words of the language that is spoken.
std::string in_any_language(Lesion lesion) {
  return "{" + std::string(english().say(TermKind::lesion, lesion)) + "}";
}

std::string in_braces(Foot foot) {
  return "{" + told(foot) + "}";
}

bool says_fine(const PlacedClause& placed) {
  const auto* clause = std::get_if<TurnClause>(&placed.clause);
  const auto* said = clause == nullptr ? nullptr : std::get_if<FootStateSaid>(clause);
  return said != nullptr && said->state == FootState::nothing_found;
}

bool is_separator(TokenKind kind) {
  return kind == TokenKind::comma || kind == TokenKind::strong || kind == TokenKind::colon;
}

}  // namespace

std::optional<Refusal> why_not_found(const Turn& turn, const FootCall& call,
                                     const FindingSaid& said) {
  const std::string lesion = in_any_language(said.finding.lesion);
  if (said.instead && !was_called_fine(turn, call)) return right_or_wrong(lesion);
  if (!is_contradicted(call, said)) return std::nullopt;
  return impossible("\"{nothing found}\" was said of " + in_braces(call.foot),
                    "if " + lesion + " was found there after all, say \"{" + told(call.foot) +
                        " no}, " + lesion + "\"; if not, say \"{never mind}\"");
}

std::optional<Refusal> why_not_fine(const FootCall& call) {
  const auto found = std::find_if(call.findings.begin(), call.findings.end(), is_of_the_claw);
  if (found == call.findings.end()) return std::nullopt;
  return impossible(in_any_language(found->lesion) + " was called on " + in_braces(call.foot),
                    "if it was not there, say \"{nothing after all}\"; for the other feet "
                    "\"{rest fine}\"");
}

std::optional<Refusal> why_no_rest(const Turn& turn) {
  const auto count_in = [&turn](FootState state) {
    return std::count_if(turn.feet.begin(), turn.feet.end(),
                         [state](const FootCall& call) { return call.state == state; });
  };
  const auto down = count_in(FootState::not_lifted);
  const bool all_named = turn.feet.size() == std::size(all_feet);
  const auto lifted = static_cast<std::ptrdiff_t>(turn.feet.size()) - down;
  const bool has_rest = lifted > 1 && count_in(FootState::unsaid) > 0;
  if (!all_named || down == 0 || lifted == 0 || has_rest) return std::nullopt;
  return impossible("the other feet stayed down, so \"{rest fine}\" speaks of none",
                    "if they were lifted, leave out \"{just}\" or \"{not lifted}\"; if not, "
                    "leave out \"{rest fine}\"; of a foot that was lifted say "
                    "\"{LH nothing found}\"");
}

bool may_mend_an_earlier_line(const TurnDraft& so_far, const FindingSaid& said) {
  return said.instead && std::none_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
           const FootCall* call =
               so_far.feet_named.has(foot) ? find_foot(so_far.turn, foot) : nullptr;
           return call != nullptr && !call->findings.empty();
         });
}

bool finds_instead(const TurnClause& clause) {
  const auto* found = std::get_if<FindingSaid>(&clause);
  return found != nullptr && found->instead;
}

Turn ready_for(Turn turn, FootSet feet, const std::vector<TurnClause>& said_again) {
  const bool finds = std::any_of(said_again.begin(), said_again.end(), [](const TurnClause& said) {
    return std::holds_alternative<FindingSaid>(said);
  });
  for (FootCall& call : turn.feet) {
    const bool was_fine = feet.has(call.foot) && call.state == FootState::nothing_found;
    if (finds && was_fine) call.state = FootState::unsaid;
  }
  return turn;
}

std::optional<PlacedFault> both_in_one_line(std::span<const PlacedClause> clauses, std::size_t at,
                                            const TurnDraft& so_far,
                                            std::span<const Token> tokens) {
  const auto* clause = std::get_if<TurnClause>(&clauses[at].clause);
  const auto* said = clause == nullptr ? nullptr : std::get_if<FindingSaid>(clause);
  if (said == nullptr) return std::nullopt;
  const auto foot = std::find_if(all_feet.begin(), all_feet.end(), [&](Foot each) {
    const FootCall* call = so_far.feet_named.has(each) ? find_foot(so_far.turn, each) : nullptr;
    return call != nullptr && is_contradicted(*call, *said);
  });
  const std::span<const PlacedClause> before = clauses.first(at);
  const auto fine = std::find_if(before.rbegin(), before.rend(), says_fine);
  if (foot == all_feet.end() || fine == before.rend()) return std::nullopt;
  std::size_t end = at + 1 < clauses.size() ? clauses[at + 1].from.first_token : tokens.size();
  while (end > clauses[at].from.first_token + 1 && is_separator(tokens[end - 1].kind)) --end;
  Term both = fine->from;
  both.token_count = end - both.first_token;
  const std::string where = in_braces(*foot);
  return PlacedFault{
      impossible(in_any_language(said->finding.lesion) + " is called on " + where +
                     ", of which the same line says \"{nothing found}\"",
                 "say which holds: \"{" + told(*foot) + " nothing found}\", or what was found"),
      both};
}

Refusal right_or_wrong(std::string_view lesion) {
  const std::string said(lesion);
  return not_understood(
      "it is unclear whether \"" + said + "\" is right or was wrong",
      "if it was wrong, say \"{no, no} " + said + "\"; if it is right, take back the other one");
}

}  // namespace evenclaw
