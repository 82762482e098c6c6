// The lesions this version knows, with what the rules need to know of each.
#pragma once

#include <span>
#include <string_view>

#include "core/base/enum_words.hpp"
#include "core/trade/place.hpp"

namespace evenclaw {

/// Codes as in the ICAR Claw Health Atlas; `other` is named by words. A parent stands where no
/// subtype was called.
enum class Lesion { dd, id, hhe, sh, u, su, bu, tu, wl, wlf, wla, ip, ih, ds, ts, other };

template <>
struct EnumWords<Lesion> {
  static constexpr EnumWord<Lesion> table[] = {
      {Lesion::dd, "DD"}, {Lesion::id, "ID"},   {Lesion::hhe, "HHE"}, {Lesion::sh, "SH"},
      {Lesion::u, "U"},   {Lesion::su, "SU"},   {Lesion::bu, "BU"},   {Lesion::tu, "TU"},
      {Lesion::wl, "WL"}, {Lesion::wlf, "WLF"}, {Lesion::wla, "WLA"}, {Lesion::ip, "IP"},
      {Lesion::ih, "IH"}, {Lesion::ds, "DS"},   {Lesion::ts, "TS"},   {Lesion::other, "other"}};
};

enum class LesionGroup { infectious, horn, other };

template <>
struct EnumWords<LesionGroup> {
  static constexpr EnumWord<LesionGroup> table[] = {{LesionGroup::infectious, "infectious"},
                                                    {LesionGroup::horn, "horn"},
                                                    {LesionGroup::other, "other"}};
};

/// Where a lesion is kept: on one claw, on the foot, or between the claws.
enum class KeptOn { claw, foot, between };

struct LesionFacts {
  Lesion lesion;
  std::string_view name;  // as said to people: "white line abscess"
  Lesion family;          // lesions of one family at one place are one case getting worse
  LesionGroup group;
  KeptOn kept_on;
  bool painful_horn;  // a block never goes on a claw that carries it
  std::span<const Place> usual_places;
  bool nowhere_else;        // its name or nature ties it to the usual places
  std::string_view source;  // source of code and grouping with its certainty
};

std::span<const LesionFacts> all_lesions();
const LesionFacts& facts_of(Lesion lesion);

/// How far gone, as called.
enum class Degree { not_called, slight, plain, bad };

template <>
struct EnumWords<Degree> {
  static constexpr EnumWord<Degree> table[] = {{Degree::not_called, "not_called"},
                                               {Degree::slight, "slight"},
                                               {Degree::plain, "plain"},
                                               {Degree::bad, "bad"}};
};

/// Stage of digital dermatitis: the M number when it was called, else the word that was said,
/// never one turned into the other.
enum class DdStage { not_called, m0, m1, m2, m3, m4, m4_1, raw, scab, chronic };

template <>
struct EnumWords<DdStage> {
  static constexpr EnumWord<DdStage> table[] = {{DdStage::not_called, "not_called"},
                                                {DdStage::m0, "M0"},
                                                {DdStage::m1, "M1"},
                                                {DdStage::m2, "M2"},
                                                {DdStage::m3, "M3"},
                                                {DdStage::m4, "M4"},
                                                {DdStage::m4_1, "M4.1"},
                                                {DdStage::raw, "raw"},
                                                {DdStage::scab, "scab"},
                                                {DdStage::chronic, "chronic"}};
};

}  // namespace evenclaw
