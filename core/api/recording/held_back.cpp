#include "core/api/recording/held_back.hpp"

#include <algorithm>
#include <utility>
#include <variant>

#include "core/api/recording/behind_news.hpp"
#include "core/api/recording/late_mending.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/api/recording/refused_of_her.hpp"
#include "core/api/recording/said_again.hpp"
#include "core/api/recording/state.hpp"
#include "core/api/recording/two_cows.hpp"
#include "core/base/text.hpp"
#include "core/trade/medicine.hpp"

namespace evenclaw {

namespace {

bool is_said_of_her(const Clause& clause) {
  return std::holds_alternative<TurnClause>(clause);
}

bool names_a_cow(const Clause& clause) {
  return std::holds_alternative<CowNamed>(clause);
}

/// "Painfree", of the herd's own list.
bool is_a_medicine(const InCrush& here, std::string_view text) {
  return find_product(here.past.medicine.list, trimmed(text)) != nullptr;
}

/// Behind a foot that the line names an act is real work on some cow.
struct GoesOn {
  bool is_foot_named = false;

  bool operator()(const FindingSaid& said) const { return mends_or_takes_back(said); }

  bool operator()(const ReasonSaid& said) const { return mends_or_takes_back(said); }

  bool operator()(const MobilityTold& said) const { return mends_or_takes_back(said); }

  bool operator()(const MeasureSaid&) const { return false; }

  bool operator()(const CowCorrected&) const { return false; }

  bool operator()(const KnownSaid&) const { return false; }

  bool operator()(const ActionSaid& said) const { return said.whole_cow || !is_foot_named; }

  template <class T>
  bool operator()(const T&) const {
    return true;
  }
};

/// It was refused before the other may have been named.
bool was_hers_before(const Crush& crush, std::string_view said) {
  const std::vector<RefusedLine>& open = crush.cow->refused;
  const auto at_line = [&](std::string_view text) {
    return std::find_if(open.begin(), open.end(),
                        [text](const RefusedLine& refused) { return refused.text == text; });
  };
  const auto hers = at_line(said);
  const auto named_another = at_line(crush.held_back_by);
  if (hers == open.end()) return false;
  if (named_another == open.end()) return crush.held_back_by.starts_with(said);
  return hers < named_another;
}

}  // namespace

bool only_goes_on(const Line& line) {
  GoesOn goes_on;
  bool any = false;
  for (const Clause& clause : line.clauses) {
    const auto* said = std::get_if<TurnClause>(&clause);
    if (said == nullptr) continue;
    any = true;
    const auto* feet = std::get_if<FeetNamed>(said);
    if (feet != nullptr) goes_on.is_foot_named = !feet->feet.empty();
    if (!std::visit(goes_on, static_cast<const AnyTurnClause&>(*said))) return false;
  }
  return any;
}

void hold_back_after(const VisitBook& book, Crush& crush, std::string_view refused) {
  if (!crush.cow || is_a_medicine(*crush.cow, refused)) return;
  if (may_be_of_another_cow(refused, book.language)) crush.held_back_by = trimmed(refused);
}

void let_go_held_back(const VisitBook& book, Crush& crush, const Line& line,
                      std::string_view text) {
  if (crush.held_back_by.empty()) return;
  const bool ends_it =
      std::any_of(line.clauses.begin(), line.clauses.end(), [](const Clause& clause) {
        return names_a_cow(clause) || std::holds_alternative<TurnEnded>(clause);
      });
  const bool is_news_in_short = tells_news(line) &&
                                is_said_again(text, crush.held_back_by, book.language) &&
                                feet_in_refused(crush.held_back_by, book.language) == RefusedFeet{};
  // News of another cow says nothing of a line that names nobody.
  const bool may_be_said =
      !tells_news(line) || names_one_told_of(crush.held_back_by, line, book.language);
  const bool is_said =
      may_be_said && (is_news_in_short || is_said_again(crush.held_back_by, text, book.language));
  if (!ends_it && !is_said) return;
  if (crush.cow && (is_said || is_named_again(crush.held_back_by, text, book.language))) {
    std::vector<RefusedLine>& open = crush.cow->refused;
    open.erase(std::remove_if(
                   open.begin(), open.end(),
                   [&](const RefusedLine& refused) { return refused.text == crush.held_back_by; }),
               open.end());
  }
  crush.held_back_by.clear();
}

bool holds_back(const Crush& crush, const Line& line, std::string_view text) {
  if (!crush.cow || crush.held_back_by.empty()) return false;
  return !was_hers_before(crush, trimmed(text)) &&
         std::any_of(line.clauses.begin(), line.clauses.end(), is_said_of_her);
}

Outcome refuse_held_back(VisitBook& book, Crush& crush, const Line& line, std::string_view text) {
  const std::string of_her = line_with_her_number(*crush.cow, line, text, book.language);
  const bool is_hers_perhaps = only_goes_on(line) && !of_her.empty();
  refuse(book, crush, text,
         {{.slug = "call-impossible",
           .message = "A line before may have named another cow, so it is not clear whose "
                      "this is.",
           .line = book.answers.line(),
           .remedy = is_hers_perhaps ? "Of her in the crush: \"" + of_her +
                                           "\"; of another: her number before it."
                                     : "Say her number, and this once more."}});
  if (is_hers_perhaps) crush.cow->of_which = trimmed(text);
  keep_refused_once(*crush.cow, text, book.language);
  return Done{};
}

/// A cow without a number takes the place of her in the crush, and the line that may have named
/// her goes with her.
Outcome RecordingState::stand_for_whoever() {
  const std::string named = std::exchange(crush_.held_back_by, {});
  std::vector<RefusedLine>& open = crush_.cow->refused;
  if (!open.empty() && open.back().text == named) open.pop_back();
  const Outcome out = let_out(LetOutBy::next_cow);
  if (!out) return out;
  CowSaid whoever;
  whoever.known = CowKnown::unnumbered;
  const Outcome opened = open_cow(whoever);
  if (!opened) return opened;
  crush_.cow->named_in_refused = true;
  // A line that named several cows is on record for each of them.
  const bool is_on_record = names_several_cows(named, book_.language) ||
                            !parts_of_cows(named, book_.language).empty() ||
                            cow_further_on(named, book_.language).has_value();
  if (!is_on_record) keep_refused(*crush_.cow, named, book_.language);
  return Done{};
}

}  // namespace evenclaw
