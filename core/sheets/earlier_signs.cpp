#include "core/sheets/earlier_signs.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <utility>

#include "core/sheets/notifiable.hpp"
#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/signs_in_words.hpp"
#include "core/sheets/vet_on_record.hpp"
#include "core/sheets/words_of_her.hpp"

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

/// Words nobody has read as a call are quoted with what they are.
template <class Row>
void add_told(std::vector<EarlierStop>& seen, const Row& row, const WordsOfHer& said,
              const Wording& wording) {
  const bool is_asked = is_only_asked(said);
  const std::string words = is_asked ? words_as_told(said, wording) : std::string(said.words);
  const std::vector<const SignForVet*> signs = signs_in_words(said.words, heard_as(said));
  for (const SignForVet* sign : signs) {
    if (!lasts(sign)) continue;
    seen.push_back(seen_in(row, *sign, words));
    seen.back().warning.foot = said.foot;
    if (is_asked) seen.back().warning.rank = Rank::note;
  }
  if (!signs.empty() || !names_the_vet(said.words)) return;
  seen.push_back(seen_in(row, SignForVet{}, words_as_told(said, wording)));
  seen.back().warning.rule = vet_named_rule;
  seen.back().warning.rank = Rank::note;
  seen.back().warning.foot = said.foot;
}

void add_words(std::vector<EarlierStop>& seen, const TurnRow& row, const Wording& wording) {
  CowSeen cow;
  cow.turns = {&row};
  for (const WordsOfHer& said : words_of_her(cow)) add_told(seen, row, said, wording);
}

/// Follows from all that was found on the foot in a turn.
void add_both_claws(std::vector<EarlierStop>& seen, const std::vector<FindingRow>& findings,
                    const Wording& wording) {
  std::map<EntryId, CowSeen> turns;
  for (const FindingRow& row : findings) turns[row.turn].findings.push_back(&row);
  for (const auto& [turn, cow] : turns) {
    for (const Foot foot : all_feet) {
      if (!do_both_claws_hurt(cow, foot)) continue;
      seen.push_back(
          seen_in(*cow.findings.front(), SignForVet{}, wording.say(Saying::no_block_both_hurt)));
      seen.back().warning.rule = both_claws_rule;
      seen.back().warning.foot = foot;
    }
  }
}

bool is_of(const EarlierStop& stop, const EarlierStop& seen) {
  return stop.turn == seen.turn && stop.warning.rule == seen.warning.rule &&
         stop.warning.foot == seen.warning.foot;
}

/// He was neither asked for nor does he know of it.
bool is_not_known(const VisitView& view, const CowSeen& cow, const EarlierStop& one) {
  if (one.warning.rule == vet_named_rule) return !vet_only_named(view, cow).empty();
  const std::vector<SignOfHer> unknown = signs_without_vet(view, cow);
  const bool is_asked = one.warning.rank == Rank::note;
  return std::any_of(unknown.begin(), unknown.end(), [&](const SignOfHer& sign) {
    return sign.is_only_asked == is_asked && name_of_sign(*sign.sign) == one.warning.rule &&
           sign.foot == one.warning.foot;
  });
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
  for (const TurnRow& row : rows.turns) add_words(seen, row, wording);
  for (const FootRow& row : rows.feet) {
    if (!row.note.empty()) add_told(seen, row, {WordsAre::note, row.note, row.foot}, wording);
  }
  add_both_claws(seen, rows.findings, wording);
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
    const bool is_unknown = is_not_known(view, *cow, one);
    const bool is_asked_of = tells_of_illness(one) && is_vet_asked_for(view, *cow);
    if (!is_unknown && !is_asked_of) continue;
    left.push_back(one);
    left.back().is_settled_alone = left.back().is_settled_alone || !is_unknown;
    left.back().may_be_notifiable = may_be_notifiable(view, cow->cow);
  }
  return left;
}

}  // namespace evenclaw
