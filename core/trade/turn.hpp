// A turn: one cow's time in the crush, as called out. What the call line reads into and prints.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/enum_words.hpp"
#include "core/base/length.hpp"
#include "core/trade/action.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/mobility.hpp"
#include "core/trade/place.hpp"
#include "core/trade/reason.hpp"

namespace evenclaw {

enum class CowKnown { numbered, doubtful, unnumbered };

template <>
struct EnumWords<CowKnown> {
  static constexpr EnumWord<CowKnown> table[] = {{CowKnown::numbered, "numbered"},
                                                 {CowKnown::doubtful, "doubtful"},
                                                 {CowKnown::unnumbered, "unnumbered"}};
};

/// The cow as named: 412; "513 or 531" (doubtful); "brown heifer, white star" (unnumbered).
struct CowSaid {
  CowKnown known = CowKnown::numbered;
  std::string number;                     // digits as said, leading zeros kept; "" if unnumbered
  std::vector<std::string> alternatives;  // the other numbers it might be
  std::string looks;                      // words for a cow without a number

  friend bool operator==(const CowSaid&, const CowSaid&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("known", &CowSaid::known, "whether her number was read");
    visit("number", &CowSaid::number, "herd number as said");
    visit("alternatives", &CowSaid::alternatives, "the other numbers it might be");
    visit("looks", &CowSaid::looks, "what she looks like, when she has no number");
  }
};

/// What she was called: "412", "513 or 531", "513?", "brown heifer"; "" when nothing was said.
std::string called_as(const CowSaid& cow);

struct Finding {
  Claw claw = Claw::not_called;
  Lesion lesion = Lesion::other;
  std::string words;  // names an `other`; else what was said beside it, may be empty
  Place place = Place::not_called;
  std::optional<std::int32_t> zone;  // the number, when one was said or is certain from the place
  Degree degree = Degree::not_called;
  DdStage stage = DdStage::not_called;
  bool dd_infected = false;  // digital dermatitis in a lesion of the horn or in a growth

  friend bool operator==(const Finding&, const Finding&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("claw", &Finding::claw, "outside, inside, both, not called, or none for skin");
    visit("lesion", &Finding::lesion, "ICAR code, or our word where there is none");
    visit("words", &Finding::words, "words that name or describe it");
    visit("place", &Finding::place, "where on the foot");
    visit("zone", &Finding::zone, "zone number 0-12");
    visit("degree", &Finding::degree, "slight, plain, bad or not called");
    visit("stage", &Finding::stage, "stage of digital dermatitis");
    visit("dd_infected", &Finding::dd_infected, "digital dermatitis was called in it");
  }
};

enum class MeasureKind { toe_length, heel_height, sole_thickness };

template <>
struct EnumWords<MeasureKind> {
  static constexpr EnumWord<MeasureKind> table[] = {
      {MeasureKind::toe_length, "toe_length"},
      {MeasureKind::heel_height, "heel_height"},
      {MeasureKind::sole_thickness, "sole_thickness"}};
};

struct Measure {
  MeasureKind kind = MeasureKind::toe_length;
  Claw claw = Claw::not_called;
  Length length;

  friend bool operator==(const Measure&, const Measure&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("kind", &Measure::kind, "what was measured");
    visit("claw", &Measure::claw, "on which claw");
    visit("length", &Measure::length, "tenths of a millimetre");
  }
};

/// What was said of one foot. `unsaid` is a foot that was named for an act but of whose finding
/// nothing was said; after the turn is settled it counts as lifted, findings not called.
enum class FootState { unsaid, not_lifted, nothing_found, finding };

template <>
struct EnumWords<FootState> {
  static constexpr EnumWord<FootState> table[] = {{FootState::unsaid, "unsaid"},
                                                  {FootState::not_lifted, "not_lifted"},
                                                  {FootState::nothing_found, "nothing_found"},
                                                  {FootState::finding, "finding"}};
};

enum class Trimmed { not_called, yes, no };

template <>
struct EnumWords<Trimmed> {
  static constexpr EnumWord<Trimmed> table[] = {
      {Trimmed::not_called, "not_called"}, {Trimmed::yes, "yes"}, {Trimmed::no, "no"}};
};

struct FootCall {
  Foot foot = Foot::lf;
  FootState state = FootState::unsaid;
  Trimmed trimmed = Trimmed::not_called;
  std::vector<Finding> findings;
  std::vector<Action> actions;
  std::vector<Measure> measures;
  std::string note;

  friend bool operator==(const FootCall&, const FootCall&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("foot", &FootCall::foot, "LF RF LH RH");
    visit("state", &FootCall::state, "not lifted, nothing found, finding, or unsaid");
    visit("trimmed", &FootCall::trimmed, "whether it was trimmed");
    visit("findings", &FootCall::findings, "in the order called");
    visit("actions", &FootCall::actions, "in the order called");
    visit("measures", &FootCall::measures, "in the order called");
    visit("note", &FootCall::note, "free words");
  }
};

enum class TurnEnd { done, not_done, unfinished };

template <>
struct EnumWords<TurnEnd> {
  static constexpr EnumWord<TurnEnd> table[] = {{TurnEnd::done, "done"},
                                                {TurnEnd::not_done, "not_done"},
                                                {TurnEnd::unfinished, "unfinished"}};
};

struct Turn {
  CowSaid cow;
  Reason reason = Reason::not_called;  // the one said first
  std::vector<Reason> also;            // the others: "fresh, lame LH"
  std::string reason_words;            // for Reason::other
  FootSet lame;                // "lame LH"; empty with Reason::lame means the leg was not named
  std::vector<FootCall> feet;  // at most one per foot, in the order first named
  bool rest_fine = false;      // "rest fine", "nothing found": fills today's feet when settled
  bool walks_sound = false;
  MobilitySaid mobility;
  std::vector<Action> actions;  // of the whole cow: vet, told the farmer, see again
  TurnEnd end = TurnEnd::done;
  std::string end_reason;  // why not done or unfinished
  std::string note;

  friend bool operator==(const Turn&, const Turn&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow", &Turn::cow, "the cow as named");
    visit("reason", &Turn::reason, "why she came");
    visit("also", &Turn::also, "why else she came, in the order said");
    visit("reason_words", &Turn::reason_words, "words for another reason");
    visit("lame", &Turn::lame, "the legs she came lame on");
    visit("feet", &Turn::feet, "foot by foot");
    visit("rest_fine", &Turn::rest_fine, "nothing found on the rest of today's feet");
    visit("walks_sound", &Turn::walks_sound, "she was said to walk sound");
    visit("mobility", &Turn::mobility, "how she walks, with its scale");
    visit("actions", &Turn::actions, "acts that concern the whole cow");
    visit("end", &Turn::end, "done, not done or unfinished");
    visit("end_reason", &Turn::end_reason, "why not done or unfinished");
    visit("note", &Turn::note, "free words");
  }
};

const FootCall* find_foot(const Turn& turn, Foot foot);
FootCall* find_foot(Turn& turn, Foot foot);

/// Whether that is one of the reasons she came for.
bool came_for(const Turn& turn, Reason reason);

/// The turn as it is recorded: "rest fine" becomes nothing found on those of today's feet nobody
/// spoke of, or of which only was said whether they were trimmed and what was measured, never more;
/// a foot with a finding is in state finding; `rest_fine` itself stays.
Turn settled(Turn turn, FootSet todays_feet);

}  // namespace evenclaw
