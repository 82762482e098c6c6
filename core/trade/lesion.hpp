// The lesions this version knows, with what the rules need to know of each.
#pragma once

#include <span>
#include <string_view>

#include "core/base/enum_words.hpp"
#include "core/trade/dd_stage.hpp"
#include "core/trade/place.hpp"

namespace evenclaw {

/// Codes as in the ICAR Claw Health Atlas, then what is called at the crush and has no code there;
/// `unclear` and `other` are named by words. A parent stands where no subtype was called.
enum class Lesion {
  dd,
  id,
  hhe,
  sh,
  shd,
  shc,
  u,
  su,
  bu,
  tu,
  tn,
  wl,
  wlf,
  wla,
  ip,
  ih,
  ds,
  ts,
  hf,
  hfa,
  hfh,
  hfv,
  sw,
  ac,
  cd,
  cc,
  sc,
  overgrown,
  foreign_body,
  injury,
  dewclaw,
  blood_drawn,
  unclear,
  other
};

template <>
struct EnumWords<Lesion> {
  static constexpr EnumWord<Lesion> table[] = {{Lesion::dd, "DD"},
                                               {Lesion::id, "ID"},
                                               {Lesion::hhe, "HHE"},
                                               {Lesion::sh, "SH"},
                                               {Lesion::shd, "SHD"},
                                               {Lesion::shc, "SHC"},
                                               {Lesion::u, "U"},
                                               {Lesion::su, "SU"},
                                               {Lesion::bu, "BU"},
                                               {Lesion::tu, "TU"},
                                               {Lesion::tn, "TN"},
                                               {Lesion::wl, "WL"},
                                               {Lesion::wlf, "WLF"},
                                               {Lesion::wla, "WLA"},
                                               {Lesion::ip, "IP"},
                                               {Lesion::ih, "IH"},
                                               {Lesion::ds, "DS"},
                                               {Lesion::ts, "TS"},
                                               {Lesion::hf, "HF"},
                                               {Lesion::hfa, "HFA"},
                                               {Lesion::hfh, "HFH"},
                                               {Lesion::hfv, "HFV"},
                                               {Lesion::sw, "SW"},
                                               {Lesion::ac, "AC"},
                                               {Lesion::cd, "CD"},
                                               {Lesion::cc, "CC"},
                                               {Lesion::sc, "SC"},
                                               {Lesion::overgrown, "overgrown"},
                                               {Lesion::foreign_body, "foreign_body"},
                                               {Lesion::injury, "injury"},
                                               {Lesion::dewclaw, "dewclaw"},
                                               {Lesion::blood_drawn, "blood_drawn"},
                                               {Lesion::unclear, "unclear"},
                                               {Lesion::other, "other"}};
};

enum class LesionGroup { infectious, horn, shape, other };

template <>
struct EnumWords<LesionGroup> {
  static constexpr EnumWord<LesionGroup> table[] = {{LesionGroup::infectious, "infectious"},
                                                    {LesionGroup::horn, "horn"},
                                                    {LesionGroup::shape, "shape"},
                                                    {LesionGroup::other, "other"}};
};

/// Where a lesion is kept: on one claw, on the foot, between the claws, or on a claw when one was
/// called and else on the foot.
enum class KeptOn { claw, foot, between, claw_or_foot };

/// Whether the claw hurts under load, so that a block never goes on it. `when_bad`: only when the
/// degree bad was called.
enum class Hurts { no, when_bad, yes };

/// How well the code is known to be the one of the atlas, which itself was not read.
enum class CodeKnown { seen, weak, memory, none };

/// The part of the claw that a name ties a lesion to. Two of one family that are tied to different
/// parts are never one case.
enum class TiedTo { nothing, sole, heel, toe, wall_between, along_the_wall, across_the_wall };

struct LesionFacts {
  Lesion lesion;
  std::string_view name;  // as said to people: "white line abscess"
  Lesion parent;          // what is called when the subtype is not; itself when it has none
  Lesion family;          // lesions of one family at one place are one case
  int rung = 0;  // how far gone within its family; 0 when the name does not tell, or family of one
  LesionGroup group;
  KeptOn kept_on;
  TiedTo tied_to = TiedTo::nothing;
  std::span<const Place> usual_places = {};
  bool nowhere_else = false;  // its name or nature ties it to the usual places
  Hurts hurts = Hurts::no;
  std::string_view hurts_source = "our judgement";
  CodeKnown code_known = CodeKnown::none;
  std::string_view source;  // of code and grouping, with its certainty
};

std::span<const LesionFacts> all_lesions();
const LesionFacts& facts_of(Lesion lesion);

/// Whether `lesion` is that one or a subtype of it: a sole ulcer is an ulcer.
bool is_kind_of(Lesion lesion, Lesion general);

/// True for `other` and `unclear`: they are nothing without the words said with them.
constexpr bool is_named_by_words(Lesion lesion) {
  return lesion == Lesion::other || lesion == Lesion::unclear;
}

/// Counted where it is told on how many cows something was found. Not an overgrown claw, which is
/// what she is trimmed for, nor blood that the knife drew (our judgement).
constexpr bool counts_as_found(Lesion lesion) {
  return lesion != Lesion::overgrown && lesion != Lesion::blood_drawn;
}

/// Whether a claw may be said with it.
bool may_have_claw(Lesion lesion);

/// Called now, it is a worse form of what was called then: an ulcer after a bruise. False where
/// either name does not tell how far gone it is.
bool is_worse_form(Lesion now, Lesion then);

/// How far gone, as called.
enum class Degree { not_called, slight, plain, bad };

template <>
struct EnumWords<Degree> {
  static constexpr EnumWord<Degree> table[] = {{Degree::not_called, "not_called"},
                                               {Degree::slight, "slight"},
                                               {Degree::plain, "plain"},
                                               {Degree::bad, "bad"}};
};

}  // namespace evenclaw
