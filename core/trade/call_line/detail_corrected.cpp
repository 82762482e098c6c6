#include "core/trade/call_line/detail_corrected.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/possible.hpp"
#include "core/trade/call_line/said_again.hpp"

namespace evenclaw {

namespace {

bool is_called_in(const Finding& finding, const DetailCorrected& said) {
  if (said.degree != Degree::not_called) return finding.degree != Degree::not_called;
  return finding.place != Place::not_called;
}

/// The finding that is meant; null when there is none.
Finding* meant_on(FootCall& call, const DetailCorrected& said) {
  std::vector<Finding>& all = call.findings;
  if (said.stage != DdStage::not_called) {
    const auto dd = std::find_if(all.rbegin(), all.rend(), [](const Finding& finding) {
      return finding.lesion == Lesion::dd;
    });
    return dd == all.rend() ? nullptr : &*dd;
  }
  const auto called = std::find_if(all.rbegin(), all.rend(), [&said](const Finding& finding) {
    return is_called_in(finding, said);
  });
  if (called != all.rend()) return &*called;
  return all.empty() ? nullptr : &all.back();
}

/// The finding with what is right; nothing when that cannot be.
std::optional<Finding> mended(Finding finding, const DetailCorrected& said) {
  if (said.stage != DdStage::not_called) finding.stage = said.stage;
  if (said.degree != Degree::not_called) finding.degree = said.degree;
  if (said.place == Place::not_called) return finding;
  finding.place = Place::not_called;
  finding.zone.reset();
  const bool had_to_have_none = finding.claw == Claw::none && may_have_claw(finding.lesion);
  if (had_to_have_none) finding.claw = Claw::not_called;
  TurnClause item = FindingSaid{finding};
  Term place;
  place.kind = TermKind::place;
  place.value = static_cast<int>(said.place);
  if (add_detail(item, place)) return std::nullopt;
  return std::get<FindingSaid>(item).finding;
}

/// What a later correction says again is mended too.
void mend_said(std::vector<TurnClause>& said, const Finding& wrong, const Finding& right) {
  for (TurnClause& clause : said) {
    auto* finding = std::get_if<FindingSaid>(&clause);
    if (finding != nullptr && are_one(finding->finding, wrong)) finding->finding = right;
  }
}

/// Mended it may be a finding that was called already.
void drop_said_twice(FootCall& call, const Finding& right) {
  auto& all = call.findings;
  const auto first = std::find(all.begin(), all.end(), right);
  if (first != all.end()) all.erase(std::remove(first + 1, all.end(), right), all.end());
}

}  // namespace

Outcome correct_detail(TurnDraft& draft, const DetailCorrected& said) {
  if (draft.feet_named.empty()) {
    return fault_of(impossible("no foot is named that could be corrected", "say the foot first"));
  }
  TurnDraft trial = draft;
  bool any = false;
  bool changed = false;
  for (const Foot foot : all_feet) {
    FootCall* call = draft.feet_named.has(foot) ? find_foot(trial.turn, foot) : nullptr;
    Finding* finding = call == nullptr ? nullptr : meant_on(*call, said);
    if (finding == nullptr) continue;
    any = true;
    const Finding wrong = *finding;
    const std::optional<Finding> right = mended(wrong, said);
    if (!right) return fault_of(impossible("that cannot be of what was found last"));
    changed = changed || *right != wrong;
    *finding = *right;
    drop_said_twice(*call, *right);
    mend_said(trial.since_naming, wrong, *right);
  }
  if (!any) return fault_of(impossible("nothing was found there that could be corrected"));
  if (!changed) return fault_of(impossible("that is what was said"));
  draft = std::move(trial);
  return Done{};
}

}  // namespace evenclaw
