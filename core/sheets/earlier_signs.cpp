#include "core/sheets/earlier_signs.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "core/sheets/notifiable.hpp"
#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/signs_in_words.hpp"
#include "core/sheets/vet_on_record.hpp"

namespace evenclaw {

namespace {

/// By its check, or where it has none by the word it is called by.
std::string name_of_sign(const SignForVet& sign) {
  if (!sign.check.empty()) return std::string(sign.check);
  return sign.seen ? std::string(word_of(*sign.seen)) : std::string();
}

const SignForVet* sign_of(const ActionRow& row) {
  for (const SignForVet& sign : signs_for_vet()) {
    if (sign.seen == row.action) return &sign;
  }
  return nullptr;
}

const SignForVet* sign_of(const FindingRow& row) {
  const bool is_above_both = row.lesion == Lesion::sw && row.claw == Claw::both;
  for (const SignForVet& sign : signs_for_vet()) {
    if (sign.found == row.lesion && sign.is_above_both == is_above_both) return &sign;
  }
  return nullptr;
}

template <class Row>
EarlierStop seen_in(const Row& row, const SignForVet& sign, std::string words) {
  EarlierStop seen;
  seen.cow = row.cow;
  seen.turn = row.turn;
  seen.on = row.day;
  seen.was_only_seen = true;
  seen.warning.rank = Rank::ask;
  seen.warning.rule = name_of_sign(sign);
  seen.warning.words = std::move(words);
  return seen;
}

bool lasts(const SignForVet* sign) {
  return sign != nullptr && sign->urgency != VetUrgency::at_once;
}

bool is_of(const EarlierStop& stop, const EarlierStop& seen) {
  return stop.turn == seen.turn && stop.warning.rule == seen.warning.rule &&
         stop.warning.foot == seen.warning.foot;
}

}  // namespace

std::vector<EarlierStop> signs_seen(const Rows& rows, const Wording& wording) {
  std::vector<EarlierStop> seen;
  for (const ActionRow& row : rows.actions) {
    const SignForVet* sign = sign_of(row);
    if (!lasts(sign)) continue;
    seen.push_back(seen_in(row, *sign, wording.act(row, row.day)));
    seen.back().warning.foot = row.foot;
  }
  for (const FindingRow& row : rows.findings) {
    const SignForVet* sign = sign_of(row);
    if (!lasts(sign)) continue;
    seen.push_back(seen_in(row, *sign, wording.finding_at_claw(row)));
    seen.back().warning.foot = row.foot;
  }
  for (const TurnRow& row : rows.turns) {
    const bool has_reason = row.end != TurnEnd::done && !row.end_reason.empty();
    if (!has_reason || is_not_understood(row.end_reason)) continue;
    for (const SignForVet* sign : signs_in_words(row.end_reason)) {
      if (lasts(sign)) seen.push_back(seen_in(row, *sign, row.end_reason));
    }
  }
  return seen;
}

std::vector<EarlierStop> signs_not_settled(const VisitSheetInput& then,
                                           const std::vector<EarlierStop>& seen,
                                           const std::vector<EarlierStop>& stops) {
  const VisitView view = view_of(then, english_wording());
  std::vector<EarlierStop> left;
  for (const EarlierStop& one : seen) {
    const CowSeen* cow = find_cow(view, one.cow);
    const auto is_it = [&](const EarlierStop& stop) { return is_of(stop, one); };
    const bool has_stop = std::any_of(stops.begin(), stops.end(), is_it) ||
                          std::any_of(left.begin(), left.end(), is_it);
    if (cow == nullptr || has_stop) continue;
    const std::vector<SignOfHer> unknown = signs_without_vet(view, *cow);
    const bool is_unknown = std::any_of(unknown.begin(), unknown.end(), [&](const SignOfHer& sign) {
      return !sign.is_only_asked && name_of_sign(*sign.sign) == one.warning.rule &&
             sign.foot == one.warning.foot;
    });
    const bool is_asked_of = tells_of_illness(one) && is_vet_asked_for(view, *cow);
    if (!is_unknown && !is_asked_of) continue;
    left.push_back(one);
    left.back().is_settled_alone = left.back().is_settled_alone || !is_unknown;
    left.back().may_be_notifiable = may_be_notifiable(view, cow->cow);
  }
  return left;
}

}  // namespace evenclaw
