// What cannot be true of a cow as another program tells of her.
#pragma once

#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/exchange/herd_columns.hpp"
#include "core/exchange/herd_record.hpp"

namespace evenclaw {

struct RecordFault {
  HerdColumn column;  // that says it
  Fault fault;
};

/// No cow calves before she is a year old (our judgement: the youngest heifers calve well after).
inline constexpr int least_age_at_calving_days = 365;

/// All faults of one record on the day from which the list holds; none when it can be true:
/// "date-in-future" for a birth, event or finding after `today`, "list-unreadable" for a calving
/// before or within a year of her birth, anything told of her before her birth or after she left, a
/// calving of a heifer, and for a record that nothing identifies. Places are left open.
std::vector<RecordFault> faults_of_record(const HerdRecord& record, Day today);

}  // namespace evenclaw
