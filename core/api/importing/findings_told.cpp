#include "core/api/importing/findings_told.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace evenclaw {

namespace {

const PastFinding* finding_known(const KnownCow& cow, const PastFinding& told) {
  const auto at =
      std::find_if(cow.findings.begin(), cow.findings.end(),
                   [&](const KnownFinding& known) { return is_same_finding(known.told, told); });
  return at == cow.findings.end() ? nullptr : &at->told;
}

/// The known one with what is told of it now.
PastFinding with_texts(PastFinding known, const PastFinding& told) {
  known.words = told_together(known.words, told.words);
  known.remark = told_together(known.remark, told.remark);
  return known;
}

}  // namespace

bool has_finding(const KnownCow& cow, const PastFinding& told) {
  return finding_known(cow, told) != nullptr;
}

bool is_told_of_her(const KnownCow& cow, const PastFinding& told) {
  const PastFinding* known = finding_known(cow, told);
  return known != nullptr && with_texts(*known, told) == *known;
}

void add_finding(KnownCow& cow, const PastFinding& told) {
  for (KnownFinding& known : cow.findings) {
    if (!is_same_finding(known.told, told)) continue;
    known.told = with_texts(known.told, told);
    return;
  }
  PastFinding first = told;
  first.words.clear();
  first.remark.clear();
  cow.findings.push_back({with_texts(std::move(first), told), {}});
}

void take_back_untold(KnownCow& cow, const FoundByDay& told, const Digest& source) {
  const std::string file = to_text(source);
  std::erase_if(cow.findings, [&](const KnownFinding& known) {
    const auto day = told.find(known.told.day);
    if (known.source != file || day == told.end()) return false;
    return std::none_of(day->second.begin(), day->second.end(), [&](const PastFinding& finding) {
      return is_same_finding(finding, known.told);
    });
  });
}

std::optional<PastFindingsTold> findings_told_of(const KnownCow& now,
                                                 const std::optional<KnownCow>& before,
                                                 const Digest& source, LesionScheme scheme) {
  PastFindingsTold body;
  body.cow = now.row.cow;
  body.source = source;
  body.scheme = scheme;
  for (const KnownFinding& known : now.findings) {
    const PastFinding* was = before ? finding_known(*before, known.told) : nullptr;
    if (was == nullptr || !(*was == known.told)) body.findings.push_back(known.told);
  }
  if (before) {
    for (const KnownFinding& known : before->findings) {
      if (!has_finding(now, known.told)) body.not_so.push_back(known.told);
    }
  }
  if (body.findings.empty() && body.not_so.empty()) return std::nullopt;
  return body;
}

}  // namespace evenclaw
