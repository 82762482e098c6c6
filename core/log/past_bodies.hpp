// The body of an entry that tells what an earlier record says was found on a cow.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "core/base/digest.hpp"
#include "core/base/id.hpp"
#include "core/trade/past_finding.hpp"

namespace evenclaw {

/// All that one list tells was found on one cow. What was told before stays; the same told again
/// adds the words that are new.
struct PastFindingsTold {
  static constexpr std::string_view kind = "past_findings_told";
  static constexpr std::int32_t version = 1;
  CowId cow;
  std::vector<PastFinding> findings;
  std::vector<PastFinding> not_so = {};  // told before and read wrongly
  LesionScheme scheme = LesionScheme::icar;
  std::optional<Digest> source = {};

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow", &PastFindingsTold::cow, "cow");
    visit("findings", &PastFindingsTold::findings, "what was found on her");
    visit("not_so", &PastFindingsTold::not_so, "what was told before and is read otherwise now");
    visit("scheme", &PastFindingsTold::scheme, "how it is known which word means which lesion");
    visit("source", &PastFindingsTold::source, "SHA-256 of the file it was read from");
  }
};

}  // namespace evenclaw
