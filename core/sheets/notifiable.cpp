#include "core/sheets/notifiable.hpp"

#include <algorithm>
#include <optional>
#include <vector>

#include "core/sheets/foot_lines.hpp"
#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/signs_in_words.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view notifiable_check = "notifiable-signs";

struct IllnessSeen {
  CowId cow;
  ActionKind sign = ActionKind::fever;
  Day on;
};

/// Nothing of what is only asked about.
std::optional<ActionKind> illness_of(const EarlierStop& stop) {
  if (stop.warning.rank == Rank::note) return std::nullopt;
  for (const SignForVet& sign : signs_for_vet()) {
    const bool is_it = sign.seen && is_sign_of_illness(*sign.seen);
    if (is_it && stop.warning.rule == word_of(*sign.seen)) return sign.seen;
  }
  return std::nullopt;
}

/// Called of her, or told as the reason why she was not done.
bool shows(const CowSeen& cow, ActionKind sign) {
  const bool is_called = std::any_of(cow.actions.begin(), cow.actions.end(),
                                     [sign](const ActionRow* row) { return row->action == sign; });
  return is_called || std::any_of(cow.turns.begin(), cow.turns.end(), [sign](const TurnRow* turn) {
           const bool has_reason = turn->end != TurnEnd::done && !turn->end_reason.empty();
           if (!has_reason || is_not_understood(turn->end_reason)) return false;
           const auto told = signs_in_words(turn->end_reason);
           return std::any_of(told.begin(), told.end(),
                              [sign](const SignForVet* one) { return one->seen == sign; });
         });
}

/// Of all cows, at this visit and before.
std::vector<IllnessSeen> illness_seen(const VisitView& view) {
  const Day today = view.input.visit.day;
  std::vector<IllnessSeen> seen;
  for (const CowSeen& cow : view.cows) {
    for (const SignForVet& sign : signs_for_vet()) {
      const bool is_it = sign.seen && is_sign_of_illness(*sign.seen) && shows(cow, *sign.seen);
      if (is_it) seen.push_back({cow.cow, *sign.seen, today});
    }
  }
  for (const EarlierStop& stop : view.input.earlier_stops) {
    const std::optional<ActionKind> sign = illness_of(stop);
    const bool counts = !stop.is_settled_alone || today - stop.on <= paired_days;
    if (sign && counts) seen.push_back({stop.cow, *sign, stop.on});
  }
  return seen;
}

bool make_a_pair(const IllnessSeen& hers, const IllnessSeen& other) {
  if (hers.cow == other.cow) return hers.sign != other.sign;
  return hers.sign != ActionKind::fever || other.sign != ActionKind::fever;
}

bool was_reportable(const EarlierStop& stop) {
  return stop.may_be_notifiable || stop.warning.rule == notifiable_check;
}

}  // namespace

bool may_be_notifiable(const VisitView& view, CowId cow) {
  const std::vector<EarlierStop>& stops = view.input.earlier_stops;
  const bool was_one = std::any_of(stops.begin(), stops.end(), [&](const EarlierStop& stop) {
    return stop.cow == cow && was_reportable(stop);
  });
  const std::vector<IllnessSeen> all = illness_seen(view);
  return was_one || std::any_of(all.begin(), all.end(), [&](const IllnessSeen& hers) {
           return hers.cow == cow && std::any_of(all.begin(), all.end(), [&](const auto& other) {
                    return make_a_pair(hers, other);
                  });
         });
}

bool tells_of_illness(const EarlierStop& stop) {
  return stop.warning.rule == notifiable_check || illness_of(stop);
}

bool is_reportable(const VisitView& view, const EarlierStop& stop) {
  return was_reportable(stop) || (illness_of(stop) && may_be_notifiable(view, stop.cow));
}

std::string notifiable_words(const VisitView& view, CowId cow) {
  const Wording& wording = view.wording;
  std::vector<std::string> signs;
  for (const IllnessSeen& seen : illness_seen(view)) {
    if (seen.cow != cow) continue;
    ActionRow row;
    row.action = seen.sign;
    std::string words = wording.act(row, seen.on);
    if (seen.on != view.input.visit.day) {
      const std::string date = wording.date(seen.on, view.input.printed);
      words = wording.say(BoxSaying::sign_seen_on, {{"what", words}, {"date", date}});
    }
    const bool is_new = std::find(signs.begin(), signs.end(), words) == signs.end();
    if (is_new) signs.push_back(std::move(words));
  }
  const std::string who = view.names.in_text(cow);
  return signs.empty()
             ? who
             : wording.say(BoxSaying::who_with_signs, {{"who", who}, {"what", clauses(signs)}});
}

}  // namespace evenclaw
