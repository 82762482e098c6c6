// Cows from a register: entering one with what identifies her, telling more of one that is known,
// and finding her by it.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/cow_registered.hpp"
#include "core/trade/cow_facts.hpp"

namespace evenclaw {

/// What is told of a cow besides her herd number, as it was typed; "" or nothing where it is not.
struct CowDetails {
  std::string tag;
  std::string electronic;
  std::string alias;
  std::string breed;
  std::optional<Day> born;
  std::optional<HeiferOrCow> heifer_or_cow;
  std::optional<WeightClass> weight;
  std::optional<Day> calved;
  std::optional<int> lactation;
  std::optional<Day> dry_off;
  std::optional<Day> due_to_calve;
};

struct HerdNumber {
  std::string number;  // "" when she has none
  Day from;
  std::optional<Day> to;  // the last day it is hers
};

/// Enters a cow nobody has recorded yet. Faults, all of them: "tag-unreadable",
/// "electronic-number-unreadable", "usage" when nothing identifies her or a word cannot be shown on
/// one line, "date-in-future" for a birth or calving after `number.from`. "answer-needed" unless
/// `sure`: a cow of this herd carries that number, tag or electronic number, or the number is one
/// for tests.
Result<EntryId> register_cow(const Ports& ports, HerdId herd, const HerdNumber& number,
                             const CowDetails& details, bool sure);

struct CowTold {
  CowId cow;
  Day from;  // it holds from that day on
  CowDetails details;
};

/// Adds to what is known of a cow; what is told otherwise than before holds. Faults as
/// register_cow(); "usage" when nothing is told.
Result<EntryId> tell_of_cow(const Ports& ports, HerdId herd, const CowTold& told, bool sure);

/// Anything besides cow and number.
bool tells_anything(const CowRegistered& body);

/// What her id is made of: her tag, else her electronic number, else her number; alike however many
/// zeros stand before the digits.
std::string strongest_identifier(const CowRegistered& body);

/// The question about an electronic number for trying a reader out.
std::optional<Fault> asked_of_reader(const CowRegistered& body);

/// What is told of an electronic number that was given for a herd number.
Fault is_no_herd_number(const std::string& number);

/// The cow that carries, or carried, this ear tag or electronic number; the newest pair that fits.
/// Nothing when it is neither or nobody's.
Result<std::optional<CowId>> carrier_of_tag(Store& store, HerdId herd, std::string_view typed);

/// "UK 123450 600001" of the tag as it is stored; anything else as it is.
std::string tag_as_printed(std::string_view stored);

/// The cow by that, or else by another name she goes by, letter case apart; nothing when no cow is.
Result<std::optional<CowId>> known_otherwise(Store& store, HerdId herd, std::string_view typed);

}  // namespace evenclaw
