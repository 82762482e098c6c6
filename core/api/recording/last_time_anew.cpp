#include "core/api/recording/last_time_anew.hpp"

#include <algorithm>
#include <optional>
#include <string_view>
#include <utility>
#include <variant>

#include "core/trade/call_line/recalled.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view between_notes = "; ";

bool tells_of_last_time(std::string_view words, const Language& language) {
  return holds_phrase(words, TermKind::as_last_time, 0, language);
}

bool is_from_last_time(const FootCall& call, const Language& language) {
  return tells_of_last_time(call.note, language) ||
         std::any_of(call.findings.begin(), call.findings.end(), [&](const Finding& finding) {
           return tells_of_last_time(finding.words, language);
         });
}

FootSet from_last_time(const Turn& turn, const Language& language) {
  FootSet feet;
  for (const FootCall& call : turn.feet) {
    if (is_from_last_time(call, language)) feet.add(call.foot);
  }
  return feet;
}

/// One foot, and whose past is looked at.
struct FootThen {
  Foot foot;
  const KnownPast& past;
};

std::optional<PutPlainly> last_time_of(const FootThen& then, const Language& language) {
  TurnDraft draft;
  draft.feet_named = FootSet{then.foot};
  const KnownSaid said{KnownOfHer::as_last_time, std::string(language.say(TermKind::as_last_time))};
  auto plain = put_plainly(draft, said, then.past, language);
  return plain ? std::optional(*std::move(plain)) : std::nullopt;
}

std::string without_last_time(const std::string& note, const Language& language) {
  std::string kept;
  std::string_view left = note;
  while (!left.empty()) {
    const std::size_t end = left.find(between_notes);
    const std::string_view part = left.substr(0, end);
    left = end == std::string_view::npos ? "" : left.substr(end + between_notes.size());
    if (tells_of_last_time(part, language)) continue;
    kept += (kept.empty() ? "" : std::string(between_notes)) + std::string(part);
  }
  return kept;
}

/// A lesion that is named by its words does not carry those that tell whence it is.
bool was_taken_over(const Finding& finding, const std::optional<PutPlainly>& then,
                    const Language& language) {
  if (tells_of_last_time(finding.words, language)) return true;
  if (!then || !is_named_by_words(finding.lesion)) return false;
  return std::any_of(then->clauses.begin(), then->clauses.end(), [&](const TurnClause& clause) {
    const auto* said = std::get_if<FindingSaid>(&clause);
    return said != nullptr && said->finding == finding;
  });
}

/// The call without what it has from last time.
FootCall as_called_today(FootCall call, const FootThen& from, const Language& language) {
  const std::optional<PutPlainly> then = last_time_of(from, language);
  std::erase_if(call.findings,
                [&](const Finding& finding) { return was_taken_over(finding, then, language); });
  const bool was_noted = tells_of_last_time(call.note, language);
  call.note = without_last_time(call.note, language);
  const bool was_fine = was_noted && call.state == FootState::nothing_found;
  const bool nothing_is_left = call.findings.empty() && call.state == FootState::finding;
  if (was_fine || nothing_is_left) call.state = FootState::unsaid;
  return call;
}

std::string nothing_known(Foot foot) {
  return std::string(word_of(foot)) +
         ": nothing to take over is known of it from an earlier visit; call what is found";
}

/// Takes its own last time over for one foot of the turn.
class Anew {
 public:
  Anew(TurnDraft draft, const Language& language)
      : language_(language), words_(std::move(draft.words)), draft_(std::move(draft)) {}

  void strip(Foot foot, const KnownPast& past) {
    FootCall* call = find_foot(draft_.turn, foot);
    if (call == nullptr) return;
    *call = as_called_today(*call, {foot, past}, language_);
    FootCall bare;
    bare.foot = foot;
    if (*call != bare) return;
    std::erase_if(draft_.turn.feet, [&](const FootCall& each) { return each.foot == foot; });
  }

  void take(const FootThen& from, const FootThen& to) {
    FootCall* call = find_foot(draft_.turn, to.foot);
    if (call == nullptr) return;
    *call = as_called_today(*call, from, language_);
    const std::optional<PutPlainly> own = last_time_of(to, language_);
    TurnDraft named = recalled(draft_.turn, to.foot);
    bool is_taken = own.has_value();
    for (const TurnClause& clause : own ? own->clauses : std::vector<TurnClause>()) {
      is_taken = is_taken && add_clause(named, clause).ok();
    }
    if (!is_taken) {
      named = recalled(draft_.turn, to.foot);
      (void)add_clause(named, NoteSaid{std::string(language_.say(TermKind::as_last_time))});
      told_.push_back(nothing_known(to.foot));
    } else {
      told_.insert(told_.end(), own->learned.begin(), own->learned.end());
    }
    draft_.turn = named.turn;
  }

  /// The foot that is spoken of stays the one it was.
  TakenAnew done() {
    const FootSet named = draft_.feet_named;
    const auto foot =
        std::find_if(all_feet.begin(), all_feet.end(), [&](Foot each) { return named.has(each); });
    const bool is_one = named.count() == 1;
    TurnDraft again = recalled(draft_.turn, is_one ? std::optional(*foot) : std::nullopt);
    again.feet_named = named;
    again.last_named = named;
    again.words = std::move(words_);
    return {std::move(again), std::move(told_)};
  }

 private:
  const Language& language_;
  std::vector<std::string> words_;
  TurnDraft draft_;
  std::vector<std::string> told_;
};

}  // namespace

bool leans_on_last_time(const Turn& turn, const Language& language) {
  return !from_last_time(turn, language).empty();
}

TakenAnew for_the_right_foot(const TurnDraft& before, TurnDraft draft, const KnownPast& past,
                             const Language& language) {
  const FootSet wrong = from_last_time(before.turn, language);
  const FootSet now = from_last_time(draft.turn, language);
  const FootSet right = draft.feet_named;
  Anew anew(draft, language);
  bool is_anew = false;
  for (const Foot foot : all_feet) {
    if (!wrong.has(foot) || right.has(foot)) continue;
    const bool was_named_with_it = before.feet_named.count() > 1 && before.feet_named.has(foot);
    is_anew = is_anew || was_named_with_it || !now.has(foot);
    if (was_named_with_it) anew.strip(foot, past);
    if (now.has(foot)) continue;
    for (const Foot to : all_feet) {
      if (right.has(to) && now.has(to)) anew.take({foot, past}, {to, past});
    }
  }
  return is_anew ? anew.done() : TakenAnew{std::move(draft), {}};
}

TakenAnew for_the_right_cow(TurnDraft draft, const KnownPast& wrong, const KnownPast& right,
                            const Language& language) {
  const FootSet feet = from_last_time(draft.turn, language);
  if (feet.empty()) return {std::move(draft), {}};
  Anew anew(std::move(draft), language);
  for (const Foot foot : all_feet) {
    if (feet.has(foot)) anew.take({foot, wrong}, {foot, right});
  }
  return anew.done();
}

}  // namespace evenclaw
