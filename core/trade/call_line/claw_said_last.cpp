#include "core/trade/call_line/claw_said_last.hpp"

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/said_again.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

const Claw* claw_of(const TurnClause& clause) {
  const Claw* claw = nullptr;
  if (const auto* said = std::get_if<FindingSaid>(&clause)) claw = &said->finding.claw;
  if (const auto* said = std::get_if<ActionSaid>(&clause)) claw = &said->action.claw;
  if (const auto* said = std::get_if<MeasureSaid>(&clause)) claw = &said->measure.claw;
  return claw == nullptr || *claw == Claw::none ? nullptr : claw;
}

bool has_claw_called(const TurnClause& clause) {
  const Claw* claw = claw_of(clause);
  return claw != nullptr && *claw != Claw::not_called;
}

bool awaits_its_claw(const TurnClause& clause) {
  const Claw* claw = claw_of(clause);
  return claw != nullptr && *claw == Claw::not_called;
}

/// "Block", and nobody said on which claw: that is asked, and "no, inside" may answer it.
bool is_block_without_claw(const TurnClause& clause) {
  const auto* act = std::get_if<ActionSaid>(&clause);
  const auto put_on = act == nullptr ? std::nullopt : fixture_said(act->action.kind);
  return put_on && put_on->fixture == Fixture::block && awaits_its_claw(clause);
}

/// The same said twice is one.
bool is_one(const TurnClause& a, const TurnClause& b) {
  const auto* finding = std::get_if<FindingSaid>(&a);
  const auto* other = std::get_if<FindingSaid>(&b);
  return a == b ||
         (finding != nullptr && other != nullptr && are_one(finding->finding, other->finding));
}

std::vector<std::size_t> without_claw(std::span<const TurnClause> since_naming) {
  std::vector<std::size_t> all;
  for (std::size_t at = 0; at < since_naming.size(); ++at) {
    const bool is_known = std::any_of(all.begin(), all.end(), [&](std::size_t each) {
      return is_one(since_naming[each], since_naming[at]);
    });
    if (awaits_its_claw(since_naming[at]) && !is_known) all.push_back(at);
  }
  return all;
}

/// In the words it is called by, in braces of a refusal.
std::string called_as(const TurnClause& clause) {
  if (const auto* said = std::get_if<FindingSaid>(&clause)) {
    return std::string(english().say(TermKind::lesion, said->finding.lesion));
  }
  if (const auto* said = std::get_if<ActionSaid>(&clause)) {
    return std::string(english().say(facts_of(said->action.kind).said_as, said->action.kind));
  }
  const auto* said = std::get_if<MeasureSaid>(&clause);
  return said == nullptr ? std::string()
                         : std::string(english().say(TermKind::measure, said->measure.kind));
}

constexpr std::string_view unclear = "it is not clear of what the claw was wrong";

Refusal unclear_of_several(const TurnClause& one, Claw right) {
  return not_understood(std::string(unclear), "say what is " + std::string(word_of(right)) +
                                                  ": such as \"{" + std::string(word_of(right)) +
                                                  ' ' + called_as(one) + "}\"");
}

/// "Outside sole ulcer; block", and then "no, inside".
Refusal unclear_beside_block(const TurnClause& called, Claw right) {
  const std::string claw(word_of(right));
  const bool is_found = std::holds_alternative<FindingSaid>(called);
  const std::string of_it = is_found ? "; of the " + called_as(called) + ": \"{no, " + claw + ' ' +
                                           called_as(called) + "}\""
                                     : std::string();
  return not_understood(std::string(unclear), "of the block: \"{block on " + claw + "}\"" + of_it);
}

}  // namespace

std::optional<std::size_t> claw_said_last(std::span<const TurnClause> since_naming) {
  for (std::size_t at = since_naming.size(); at > 0; --at) {
    if (has_claw_called(since_naming[at - 1])) return at - 1;
  }
  const std::vector<std::size_t> open = without_claw(since_naming);
  return open.size() == 1 ? std::optional(open.front()) : std::nullopt;
}

std::optional<Refusal> why_claw_is_unclear(std::span<const TurnClause> since_naming, Claw right) {
  const std::vector<std::size_t> open = without_claw(since_naming);
  const auto called = std::find_if(since_naming.rbegin(), since_naming.rend(), has_claw_called);
  const bool is_any_called = called != since_naming.rend();
  const bool is_block_since =
      is_any_called && std::any_of(since_naming.rbegin(), called, is_block_without_claw);
  if (!is_block_since && (is_any_called || open.size() < 2)) return std::nullopt;
  return is_block_since ? unclear_beside_block(*called, right)
                        : unclear_of_several(since_naming[open.front()], right);
}

}  // namespace evenclaw
