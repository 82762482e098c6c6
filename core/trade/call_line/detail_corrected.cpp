#include "core/trade/call_line/detail_corrected.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/possible.hpp"
#include "core/trade/call_line/said_again.hpp"

namespace evenclaw {

namespace {

bool is_called_in(const Finding& finding, const DetailCorrected& said) {
  if (said.degree != Degree::not_called) return finding.degree != Degree::not_called;
  return finding.place != Place::not_called;
}

/// It was called as bad as that, or at that stage.
bool is_called_so(const Finding& finding, const DetailCorrected& said) {
  return said.stage != DdStage::not_called ? finding.stage == said.stage
                                           : finding.degree == said.degree;
}

/// The finding that is meant; null when there is none.
Finding* meant_on(FootCall& call, const DetailCorrected& said) {
  std::vector<Finding>& all = call.findings;
  if (said.takes_back) {
    const auto so = std::find_if(all.rbegin(), all.rend(), [&said](const Finding& finding) {
      return is_called_so(finding, said);
    });
    return so == all.rend() ? nullptr : &*so;
  }
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
  if (said.stage != DdStage::not_called) {
    finding.stage = said.takes_back ? DdStage::not_called : said.stage;
  }
  if (said.degree != Degree::not_called) {
    finding.degree = said.takes_back ? Degree::not_called : said.degree;
  }
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

/// So is what was said alike before the foot was named again.
void mend_said_alike(Turn& before, Foot foot, const Finding& wrong, const DetailCorrected& said) {
  FootCall* call = find_foot(before, foot);
  if (call == nullptr) return;
  for (Finding& finding : call->findings) {
    if (are_one(finding, wrong)) finding = mended(finding, said).value_or(finding);
  }
}

/// Mended it may be a finding that was called already.
void drop_said_twice(FootCall& call, const Finding& right) {
  auto& all = call.findings;
  const auto first = std::find(all.begin(), all.end(), right);
  if (first != all.end()) all.erase(std::remove(first + 1, all.end(), right), all.end());
}

/// The details that are said, in the order in which they are called.
std::vector<Term> details_in(const DetailCorrected& said) {
  std::vector<Term> details;
  const auto add = [&](TermKind kind, int value, bool is_said) {
    if (!is_said) return;
    Term detail;
    detail.kind = kind;
    detail.value = value;
    details.push_back(detail);
  };
  add(TermKind::claw, static_cast<int>(said.claw), said.claw != Claw::not_called);
  add(TermKind::stage, static_cast<int>(said.stage), said.stage != DdStage::not_called);
  add(TermKind::place, static_cast<int>(said.place), said.place != Place::not_called);
  add(TermKind::degree, static_cast<int>(said.degree), said.degree != Degree::not_called);
  return details;
}

/// A refusal puts what stands in braces in the words of the language that is spoken.
std::string in_any_language(const DetailCorrected& said) {
  std::string words;
  for (const Term& detail : details_in(said)) {
    words += (words.empty() ? "" : " ") + std::string(english().say(detail.kind, detail.value));
  }
  return "{" + words + "}";
}

/// The finding with the details; nothing when it has others, or they cannot be of it.
std::optional<Finding> completed(const Finding& finding, const DetailCorrected& said) {
  TurnClause item = FindingSaid{finding};
  for (const Term& detail : details_in(said)) {
    if (add_detail(item, detail)) return std::nullopt;
  }
  const Finding& complete = std::get<FindingSaid>(item).finding;
  return complete == finding ? std::nullopt : std::optional(complete);
}

Refusal of_nothing(const DetailCorrected& said) {
  return not_understood("\"" + in_any_language(said) + "\" is said of nothing here",
                        "name the lesion or the act it belongs to, foot first: "
                        "\"{LH outside sole ulcer}\"");
}

Refusal of_several(const DetailCorrected& said, Foot foot, const Finding& one) {
  const std::string where(word_of(foot));
  const std::string lesion(english().say(TermKind::lesion, one.lesion));
  return impossible(
      "\"" + in_any_language(said) + "\" could be of several findings on {" + where + "}",
      "say the lesion as well: \"{" + where + ' ' + lesion + "} " + in_any_language(said) + "\"");
}

Outcome complete_finding(TurnDraft& draft, const DetailCorrected& said) {
  TurnDraft trial = draft;
  bool any = false;
  for (const Foot foot : all_feet) {
    FootCall* call = draft.feet_named.has(foot) ? find_foot(trial.turn, foot) : nullptr;
    if (call == nullptr) continue;
    std::vector<Finding*> open;
    for (Finding& finding : call->findings) {
      if (completed(finding, said)) open.push_back(&finding);
    }
    if (open.size() > 1) return fault_of(of_several(said, foot, *open.front()));
    if (open.empty()) continue;
    any = true;
    const Finding wrong = *open.front();
    *open.front() = *completed(wrong, said);
    const Finding right = *open.front();
    drop_said_twice(*call, right);
    mend_said(trial.since_naming, wrong, right);
  }
  if (!any) return fault_of(of_nothing(said));
  draft = std::move(trial);
  return Done{};
}

}  // namespace

Outcome correct_detail(TurnDraft& draft, const DetailCorrected& said) {
  if (said.completes) return complete_finding(draft, said);
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
    mend_said_alike(trial.before_naming, foot, wrong, said);
  }
  if (!any && said.takes_back) return fault_of(impossible("that was not called there"));
  if (!any) return fault_of(impossible("nothing was found there that could be corrected"));
  if (!changed) return fault_of(impossible("that is what was said"));
  draft = std::move(trial);
  return Done{};
}

}  // namespace evenclaw
