// Who is who, settled by a person: numbers given, cows united and parted, cows that
// left.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/bodies.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

/// A cow by any number valid on `day`, else by any number she had, else by her ear tag, electronic
/// number or another name of hers, else by the words an unnumbered or doubtful one is called by,
/// else by any words she was called by in a turn, also before she got a number, else by her own id;
/// the one seen last
/// when several fit, or the one seen on a day that is said behind the words (dated()). Fault
/// "cow-not-found" with the nearest numbers as remedy, and with the cows in doubt that may be her.
/// `said` in the form of records: recorded_as() of core/api/cow_names.hpp, here and below.
Result<CowId> find_cow(Store& store, HerdId herd, std::string_view said, std::optional<Day> day);

/// How one of several that were called alike is named to find_cow(): "brown heifer of 2026-10-27"
/// is the one called so on that day.
std::string dated(const std::string& called, Day day);

/// The cows whose number is in doubt and may be this one ("159 or 195" may be 159), the one seen
/// last first.
Result<std::vector<CowRow>> cows_that_may_be(Store& store, HerdId herd, std::string_view said);

/// The cow that was last called so until it was put right; nothing when none was.
Result<std::optional<CowId>> find_cow_called(Store& store, HerdId herd, std::string_view said);

/// Of a cow that was united of several the one that carries this number or was called so; the cow
/// itself where she was not united. Faults as find_cow().
Result<CowId> find_member(Store& store, HerdId herd, std::string_view said, std::optional<Day> day);

/// The other cow that carries this number or carried it last. Fault "usage" when there is none.
Result<CowId> other_carrier(Store& store, HerdId herd, std::string_view number, CowId than);

/// A cow gets a number from a day on: an unnumbered one was recognised, or a tag was replaced. When
/// another cow carries that number already the answer is "answer-needed" (they may be the same:
/// unite_cows()), unless `sure`.
Result<EntryId> give_number(const Ports& ports, HerdId herd, NumberGiven given, bool sure);

/// Says that two records are one cow. What the turns of one would have closed of the other is
/// closed with it. Both seen in one visit gives "answer-needed" unless `sure`, for two cows in the
/// crush on one day are more likely two.
Result<EntryId> unite_cows(const Ports& ports, HerdId herd, CowId first, CowId second, bool sure);

/// Takes back what united the two; "usage" when nothing did. Name them by find_member(), for united
/// they are one.
Result<EntryId> part_cows(const Ports& ports, HerdId herd, CowId first, CowId second);

/// She left the herd; her open tasks are closed with the same words.
Result<EntryId> cow_left(const Ports& ports, HerdId herd, CowId cow, Day day,
                         std::string_view words);

}  // namespace evenclaw
