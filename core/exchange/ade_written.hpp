// Animals, what happened to them, findings and treatments, written as ICAR ADE JSON.
#pragma once

#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/identity_rows.hpp"
#include "core/trade/life.hpp"

namespace evenclaw {

/// The rows of one herd from which the file is made.
struct AdeRows {
  std::vector<CowRow> cows;
  std::vector<CowTagRow> tags;
  std::vector<CowAliasRow> names;
  std::vector<CowFactsRow> facts;
  std::vector<CowLifeRow> life;
  std::vector<FindingRow> findings;
  std::vector<ActionRow> actions;
};

/// An array of resources, one a line: an icarAnimalCoreResource for each cow, an event for each
/// thing that happened to her, an icarDiagnosisEventResource for each finding and an
/// icarTreatmentEventResource for each act. Where ADE has no word ours stand under schemes that
/// begin with "evenclaw." (docs/format/ade.md): the lesion as diagnosisCode, claw, zone, place and
/// exact stage in `site`. Times of events are midnight UTC of the day, for only the day is known.
/// Mobility scores are left out: ADE's Locomotion is another scale. ade_herd() reads animals and
/// events back as they were.
std::string ade_file(HerdId herd, Instant made_at, const AdeRows& rows);

/// "claw=lateral;zone=4;place=sole_middle;stage=M4.1": what was called, in this order; "" when
/// nothing was.
std::string ade_site(const FindingRow& finding);

}  // namespace evenclaw
