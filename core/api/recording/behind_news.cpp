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

/// Or mended: "no, right hind" may be of the wrap that was told off.
bool is_found_or_done(const Clause& clause) {
  const auto* said = std::get_if<TurnClause>(&clause);
  if (said == nullptr || std::holds_alternative<CowCorrected>(*said)) return false;
  return std::holds_alternative<FindingSaid>(*said) || std::holds_alternative<ActionSaid>(*said) ||
         mends_or_takes_back(*said);
}

bool names_who_it_is_of(const Clause& clause) {
  return std::holds_alternative<CowNamed>(clause) || std::holds_alternative<NewsSaid>(clause);
}

/// "LH " before "spray", which stands in no line of its own without its foot; "" where a foot is
/// named in the line or none was before it.
std::string feet_left_out(const InCrush& here, std::string_view said, const Language& language) {
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
         std::any_of(line.clauses.begin(), line.clauses.end(), is_found_or_done);
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

Outcome ask_of_which_of_two(VisitBook& book, Crush& crush, std::string_view text) {
  const std::string number = std::exchange(crush.cow->told_of, {});
  const std::string said(trimmed(text));
  crush.cow->of_which = said;
  const CowSaid& here = crush.cow->draft.turn.cow;
  const std::string feet = feet_left_out(*crush.cow, said, book.language);
  const std::string of_her = here.known == CowKnown::numbered
                                 ? '"' + plain_number(here.number) + ' ' + feet + said + '"'
                                 : "say it once more";
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
