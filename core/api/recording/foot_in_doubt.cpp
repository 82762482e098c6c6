#include "core/api/recording/foot_in_doubt.hpp"

#include <algorithm>
#include <cstddef>
#include <string>
#include <variant>

#include "core/api/cow_names.hpp"
#include "core/api/recording/refused_feet.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

/// It goes to the feet named last.
struct GoesToTheFoot {
  bool operator()(const FootStateSaid&) const { return true; }

  bool operator()(const TrimmedSaid&) const { return true; }

  bool operator()(const FindingSaid&) const { return true; }

  bool operator()(const MeasureSaid&) const { return true; }

  bool operator()(const FootCorrected&) const { return true; }

  bool operator()(const ClawCorrected&) const { return true; }

  bool operator()(const DetailCorrected&) const { return true; }

  bool operator()(const TimeCorrected&) const { return true; }

  bool operator()(const FindingTakenBack&) const { return true; }

  bool operator()(const MeasureTakenBack&) const { return true; }

  bool operator()(const NothingAfterAll&) const { return true; }

  bool operator()(const OtherFootNamed&) const { return true; }

  bool operator()(const BothFeetNamed&) const { return true; }

  bool operator()(const ActionSaid& said) const {
    return !said.whole_cow && !is_always_of_the_cow(said.action.kind);
  }

  bool operator()(const ActTakenBack& said) const {
    return !is_always_of_the_cow(said.action.kind);
  }

  bool operator()(const NoteSaid& said) const { return !said.denies; }

  template <class T>
  bool operator()(const T&) const {
    return false;
  }
};

bool goes_to_the_foot(const TurnClause& clause) {
  return std::visit(GoesToTheFoot{}, static_cast<const AnyTurnClause&>(clause));
}

FootSet seems_to_name(const RefusedLine& refused, const Language& language) {
  const RefusedFeet feet = feet_in_refused(refused.text, language);
  return feet.named.empty() ? feet.one_of : feet.named;
}

bool was_a_foot_named_since(const InCrush& cow, const RefusedLine& refused,
                            const Language& language) {
  const std::vector<std::string>& words = cow.draft.words;
  const std::size_t from = std::min(refused.said_before, words.size());
  return std::any_of(
      words.begin() + static_cast<std::ptrdiff_t>(from), words.end(),
      [&](const std::string& line) { return !feet_in_refused(line, language).named.empty(); });
}

}  // namespace

FootSet feet_in_doubt(const InCrush& cow, const Language& language) {
  for (const RefusedLine& refused : cow.refused) {
    if (refused.spoken_of.empty()) continue;
    const FootSet feet = seems_to_name(refused, language);
    const bool is_another = !feet.empty() && feet != refused.spoken_of;
    if (is_another && !was_a_foot_named_since(cow, refused, language)) return feet;
  }
  return {};
}

std::optional<Fault> why_foot_is_in_doubt(const InCrush& cow, const Line& line,
                                          std::string_view text, const Language& language) {
  bool is_of_a_foot = false;
  for (const Clause& clause : line.clauses) {
    const auto* named = std::get_if<CowNamed>(&clause);
    if (named != nullptr && !same_said(named->cow, cow.draft.turn.cow)) return std::nullopt;
    const auto* said = std::get_if<TurnClause>(&clause);
    if (said == nullptr) continue;
    if (std::holds_alternative<FeetNamed>(*said)) break;
    is_of_a_foot = is_of_a_foot || goes_to_the_foot(*said);
  }
  const FootSet feet = is_of_a_foot ? feet_in_doubt(cow, language) : FootSet{};
  if (feet.empty()) return std::nullopt;
  std::string named;
  std::string first;
  for (const Foot foot : all_feet) {
    if (!feet.has(foot)) continue;
    const std::string word(language.say(TermKind::foot, foot));
    if (first.empty()) first = word;
    named += (named.empty() ? "" : " or ") + word;
  }
  return Fault{
      .slug = "call-impossible",
      .message = "A line before was not understood and may have spoken of " + named +
                 ", so it is not clear of which foot this is.",
      .remedy = "Say the foot first: \"" + first + ' ' + std::string(trimmed(text)) + "\"."};
}

}  // namespace evenclaw
