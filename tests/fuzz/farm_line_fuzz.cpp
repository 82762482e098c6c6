// Fuzz target: any lines about the farm, in English or German, are understood or refused with a
// place that lies within them; no score lies outside its scale and no measure where nobody
// measures.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <optional>
#include <string_view>

#include "core/base/text.hpp"
#include "core/trade/farm_line/change_line.hpp"
#include "core/trade/farm_line/scoring_line.hpp"
#include "core/trade/farm_line/walk_amount.hpp"
#include "core/trade/farm_line/walk_line.hpp"

namespace {

using namespace evenclaw;

void demand(bool holds) {
  if (!holds) std::abort();
}

void check_faults(std::string_view line, const Faults& faults) {
  const int last = static_cast<int>(character_count(valid_utf8(line)));
  for (const Fault& fault : faults) {
    demand(!fault.message.empty() && !fault.remedy.empty());
    demand(fault.column <= last && fault.line == 1);
    demand(line.find(fault.token) != std::string_view::npos);
  }
}

void score(std::string_view line, std::optional<MobilityScale>& scale, const Language& language) {
  const auto read = read_scoring_line(line, scale, language, 1);
  if (!read) return check_faults(line, read.faults());
  for (const ScoringClause& clause : read->clauses) {
    if (const auto* said = std::get_if<ScaleSaid>(&clause)) scale = said->scale;
    const auto* cow = std::get_if<CowScored>(&clause);
    if (cow == nullptr || !cow->score) continue;
    demand(scale.has_value());
    const MobilityScaleFacts& facts = facts_of(*scale);
    demand(*cow->score >= facts.lowest && *cow->score <= facts.highest && !cow->number.empty());
  }
}

void walk(std::string_view line, const Language& language) {
  const auto read = read_walk_line(line, language, 1);
  if (!read) return check_faults(line, read.faults());
  for (const WalkMeasured& measured : read->measured) {
    if (measured.value) demand(is_measured(measured.measure, *measured.value));
    demand(!(measured.not_looked_at && measured.value));
    if (measured.fitting) demand(*measured.fitting <= measured.looked_at.value_or(0));
  }
}

void change(std::string_view line, const Language& language) {
  const Day today{20'782};
  const auto read = read_change_line(line, today, language, 1);
  if (!read) return check_faults(line, read.faults());
  if (!*read) return;
  const ChangeTold& told = (*read)->told;
  demand(!told.decided || *told.decided <= today);
  demand(!told.finished || *told.finished <= today);
  demand((*read)->altered.empty() || (*read)->driver.has_value());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const Language& language = size % 2 == 0 ? english() : german();
  std::string_view rest(reinterpret_cast<const char*>(data), size);
  std::optional<MobilityScale> scale;
  while (!rest.empty()) {
    const std::string_view line = rest.substr(0, rest.find('\n'));
    rest.remove_prefix(line.size() == rest.size() ? rest.size() : line.size() + 1);
    score(line, scale, language);
    walk(line, language);
    change(line, language);
  }
  return 0;
}
