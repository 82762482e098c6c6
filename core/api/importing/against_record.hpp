// What a list tells of a cow and cannot be true, or has to be answered, beside what is on record.
#pragma once

#include <optional>

#include "core/api/importing/cow_meant.hpp"
#include "core/api/importing/known_herd.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// Two calvings of a cow lie further apart than the shortest pregnancy (our judgement).
inline constexpr int shortest_between_calvings_days = 200;

/// Another calving so near that both cannot be; null when there is none.
const LifeEventTold* calving_near(const KnownCow& cow, const LifeEventTold& told);

/// Another leaving that still holds; null when there is none.
const LifeEventTold* other_leaving(const KnownCow& cow, const LifeEventTold& told);

/// Whether the number a record gives has to be told of her: she does not carry it, and what
/// happened on one day does not change her number of today.
bool is_number_new(const KnownHerd& herd, CowId cow, const RecordAsked& asked);

/// She never wore that tag, or that electronic number.
bool is_tag_new(const KnownCow& cow, const RecordAsked& asked);
bool is_electronic_new(const KnownCow& cow, const RecordAsked& asked);

/// Faults "list-unreadable": before her birth, a calving within a year of it, anything but an
/// arrival (findings too) after she left, a leaving before she stood in the crush, a calved cow
/// said to be a heifer. Unless sure "answer-needed": another number, tag, electronic number or
/// lactation than known, a second calving within 200 days, another day of leaving, an electronic
/// number for tests.
Faults against_record(const KnownHerd& herd, CowId cow, const RecordAsked& asked, bool is_sure);

/// Of a record that means no cow on record: her number is that of a cow who was said to be gone, or
/// her electronic number is for tests.
Faults against_entering(const KnownHerd& herd, const RecordAsked& asked, bool is_sure);

}  // namespace evenclaw
