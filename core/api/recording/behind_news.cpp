#include "core/api/recording/behind_news.hpp"

#include <algorithm>
#include <utility>
#include <variant>

#include "core/api/recording/late_mending.hpp"
#include "core/api/recording/refused_of_her.hpp"
#include "core/api/recording/said_again.hpp"
#include "core/base/text.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

/// "Rest fine" and how her turn ended are of the cow that stands there, and so is a foot alone.
struct MayBeOfEither {
  bool operator()(const ReasonSaid&) const { return true; }

  bool operator()(const FootStateSaid&) const { return true; }

  bool operator()(const TrimmedSaid&) const { return true; }

  bool operator()(const FindingSaid&) const { return true; }

  bool operator()(const ActionSaid&) const { return true; }

  bool operator()(const MeasureSaid&) const { return true; }

  bool operator()(const WalksSoundSaid&) const { return true; }

  bool operator()(const MobilityTold&) const { return true; }

  bool operator()(const NoteSaid&) const { return true; }

  bool operator()(const CowCorrected&) const { return false; }

  /// Or mended: "no, right hind" may be of the wrap that was told off.
  template <class T>
  bool operator()(const T& said) const {
    return mends_or_takes_back(said);
  }
};

bool may_be_of_either(const Clause& clause) {
  const auto* said = std::get_if<TurnClause>(&clause);
  return said != nullptr && std::visit(MayBeOfEither{}, static_cast<const AnyTurnClause&>(*said));
}

/// Why she came and how she walks are of the cow, whatever foot was named last.
bool is_of_no_foot(const Clause& clause) {
  const auto* said = std::get_if<TurnClause>(&clause);
  return said != nullptr && (std::holds_alternative<ReasonSaid>(*said) ||
                             std::holds_alternative<MobilityTold>(*said) ||
                             std::holds_alternative<WalksSoundSaid>(*said));
}

bool names_who_it_is_of(const Clause& clause) {
  return std::holds_alternative<CowNamed>(clause) || std::holds_alternative<NewsSaid>(clause);
}

/// "LH " before "spray", which stands in no line of its own without its foot; "" where a foot is
/// named in the line or none was before it.
std::string feet_left_out(const InCrush& here, const Line& line, std::string_view said,
                          const Language& language) {
  if (std::all_of(line.clauses.begin(), line.clauses.end(), is_of_no_foot)) return {};
  if (feet_in_refused(said, language) != RefusedFeet{{}, {}, true}) return {};
  std::string feet;
  for (const Foot foot : all_feet) {
    if (!here.draft.feet_named.has(foot)) continue;
    const std::string and_word(language.say(TermKind::conjunction));
    feet += (feet.empty() ? "" : and_word + ' ') + std::string(language.say(TermKind::foot, foot)) +
            ' ';
  }
  return feet;
}

}  // namespace

void now_told_of(InCrush& here, const NewsSaid& news, CowId cow) {
  here.told_of = here.cow == cow ? std::string() : plain_number(news.number);
}

bool may_be_of_her_told_of(const InCrush& here, const Line& line) {
  return !here.told_of.empty() &&
         std::none_of(line.clauses.begin(), line.clauses.end(), names_who_it_is_of) &&
         std::any_of(line.clauses.begin(), line.clauses.end(), may_be_of_either);
}

void answer_which_of_two(InCrush& here, const Line& line, std::string_view text,
                         const Language& language) {
  const std::string asked = std::exchange(here.of_which, {});
  const bool is_named = std::any_of(line.clauses.begin(), line.clauses.end(), names_who_it_is_of);
  if (asked.empty() || !is_named || !is_said_again(asked, text, language)) return;
  here.refused.erase(
      std::remove_if(here.refused.begin(), here.refused.end(),
                     [&](const RefusedLine& refused) { return refused.text == asked; }),
      here.refused.end());
}

std::string line_with_her_number(const InCrush& here, const Line& line, std::string_view said,
                                 const Language& language) {
  const CowSaid& cow = here.draft.turn.cow;
  if (cow.known != CowKnown::numbered) return {};
  return plain_number(cow.number) + ' ' + feet_left_out(here, line, said, language) +
         std::string(trimmed(said));
}

Outcome ask_of_which_of_two(VisitBook& book, Crush& crush, const Line& line,
                            std::string_view text) {
  const std::string number = std::exchange(crush.cow->told_of, {});
  const std::string said(trimmed(text));
  crush.cow->of_which = said;
  const std::string feet = feet_left_out(*crush.cow, line, said, book.language);
  const std::string with_number = line_with_her_number(*crush.cow, line, said, book.language);
  const std::string of_her = with_number.empty() ? "say it once more" : '"' + with_number + '"';
  const std::string foot_too = feet.empty() ? "" : ", and the foot before it";
  refuse(book, crush, text,
         {{.slug = "call-impossible",
           .message = "The line before told of " + number + ", so it is not clear whose this is.",
           .line = book.answers.line(),
           .remedy = "Of her in the crush: " + of_her + "; of " + number + ": \"" + number + ' ' +
                     said + "\"" + foot_too + "."}});
  keep_refused(*crush.cow, text, book.language);
  return Done{};
}

}  // namespace evenclaw
