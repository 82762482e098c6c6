// What is said about the cow in the crush, and the draft of her turn that grows from it.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/result.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// "lame LH"; behind "no" she does not walk sound, as was said before.
struct ReasonSaid {
  Reason reason;
  FootSet lame;
  std::string words;
  bool is_correction = false;
  friend bool operator==(const ReasonSaid&, const ReasonSaid&) = default;
};

/// "LH", "both hinds": what follows concerns these feet; no feet at all is "whole cow".
struct FeetNamed {
  FootSet feet;
  friend bool operator==(const FeetNamed&, const FeetNamed&) = default;
};

/// On the feet named last.
struct FootStateSaid {
  FootState state;
  friend bool operator==(const FootStateSaid&, const FootStateSaid&) = default;
};

struct TrimmedSaid {
  Trimmed trimmed;
  friend bool operator==(const TrimmedSaid&, const TrimmedSaid&) = default;
};

struct FindingSaid {
  Finding finding;
  bool instead = false;  // "no, sole ulcer": of a foot that was said to have nothing found
  std::vector<Finding> also = {};  // "no, outside bruise, inside sole ulcer": in one breath with it
  friend bool operator==(const FindingSaid&, const FindingSaid&) = default;
};

/// On the feet named last, or on the whole cow when no foot was named or `whole_cow` says so.
struct ActionSaid {
  Action action;
  bool whole_cow = false;
  bool all = false;  // "wraps off", no foot named in the line: of every foot that carries one
  friend bool operator==(const ActionSaid&, const ActionSaid&) = default;
};

struct MeasureSaid {
  Measure measure;
  friend bool operator==(const MeasureSaid&, const MeasureSaid&) = default;
};

struct RestFineSaid {
  friend bool operator==(const RestFineSaid&, const RestFineSaid&) = default;
};

struct WalksSoundSaid {
  friend bool operator==(const WalksSoundSaid&, const WalksSoundSaid&) = default;
};

/// "mobility 2 of 3"; behind "no" it stands in for what was said before.
struct MobilityTold {
  MobilitySaid mobility;
  bool is_correction = false;
  friend bool operator==(const MobilityTold&, const MobilityTold&) = default;
};

/// What "not lame" and "vet not needed" deny.
enum class Denied { lame, vet };

/// Kept in words. What it denies must not have been said.
struct NoteSaid {
  std::string words;
  std::optional<Denied> denies = {};
  friend bool operator==(const NoteSaid&, const NoteSaid&) = default;
};

struct EndSaid {
  TurnEnd end;
  std::string reason;
  friend bool operator==(const EndSaid&, const EndSaid&) = default;
};

/// "LH no, right hind", of a foot on which something had been called: the name was the slip when
/// something is called right behind it, "LH no, right hind DD", else all that was called there.
/// Parted over two lines it could be either.
enum class FootSlip { unclear, name, all_called };

/// "no, right hind": what was last said of a foot belongs to another foot.
struct FootCorrected {
  Foot foot;
  bool only = false;  // "no, only right hind"
  FootSlip slip = FootSlip::unclear;
  friend bool operator==(const FootCorrected&, const FootCorrected&) = default;
};

/// "no, inside": the claw of what was said last was wrong.
struct ClawCorrected {
  Claw claw;
  friend bool operator==(const ClawCorrected&, const ClawCorrected&) = default;
};

/// "no, chronic", "no, slight", "no, heel": that detail of what was found last on the feet named
/// was wrong. One of them is called. Or, `completes`, "LH raw": the details of the one finding
/// there of which they were not called yet. Or, `takes_back`, "no, not bad": the degree or stage
/// that was called is not so.
struct DetailCorrected {
  Place place = Place::not_called;
  Degree degree = Degree::not_called;
  DdStage stage = DdStage::not_called;
  Claw claw = Claw::not_called;  // only where it completes
  bool completes = false;
  bool takes_back = false;
  friend bool operator==(const DetailCorrected&, const DetailCorrected&) = default;
};

/// How the right time is led in: "off" tells when a wrap or block comes off, "till" how long milk
/// or meat is held back.
enum class TimeLead { any, off, till };

/// "no, 5d", "no, wrap off 5d": the time of what was said last was wrong. With its act and claw of
/// that one; a wrap or block that comes off is meant by any word for it.
struct TimeCorrected {
  TimeSaid when;
  std::optional<ActionKind> act = {};
  Claw claw = Claw::not_called;
  TimeLead lead = TimeLead::any;
  friend bool operator==(const TimeCorrected&, const TimeCorrected&) = default;
};

/// "no, 421": the number of the cow was wrong.
struct CowCorrected {
  CowSaid cow;
  friend bool operator==(const CowCorrected&, const CowCorrected&) = default;
};

/// "no, no sole ulcer": it was not found on the feet named last. What is not called in it fits
/// anything, and a general name ("white line") fits its kinds.
struct FindingTakenBack {
  Finding finding;
  friend bool operator==(const FindingTakenBack&, const FindingTakenBack&) = default;
};

/// "no, no wrap": it was not done. "Block" fits every way of putting one on.
struct ActTakenBack {
  Action action;
  friend bool operator==(const ActTakenBack&, const ActTakenBack&) = default;
};

/// "no, no length", "no, no 48 mm": it was not measured on the feet named last. What is not said in
/// it fits anything.
struct MeasureTakenBack {
  std::optional<MeasureKind> kind;
  Claw claw = Claw::not_called;
  std::optional<Length> length;
  friend bool operator==(const MeasureTakenBack&, const MeasureTakenBack&) = default;
};

/// "no, not fresh", "no, not lame LH": that is not why she came. Lame without a leg is all of it.
struct ReasonTakenBack {
  Reason reason;
  FootSet lame;
  std::string words;
  friend bool operator==(const ReasonTakenBack&, const ReasonTakenBack&) = default;
};

/// What only makes sense with what is known of her.
enum class KnownOfHer {
  wrapped_foot,  // "there's still a wrap on her": of the foot that carries it
  blocked_foot,
  stump,        // of the foot on which a claw is known to be missing
  other_claw,   // "square up the other one": the claw beside the missing one was trimmed
  as_last_time  // what was found when the foot was lifted last
};

/// It is put in plainer clauses (known_of_her.hpp) before it is added to a draft; `words` as said.
struct KnownSaid {
  KnownOfHer what;
  std::string words;
  friend bool operator==(const KnownSaid&, const KnownSaid&) = default;
};

/// "her other back": of these feet the one that was not spoken of yet.
struct OtherFootNamed {
  FootSet among;
  friend bool operator==(const OtherFootNamed&, const OtherFootNamed&) = default;
};

/// "both wrapped": of the two feet named last, or the only two that were spoken of. "Both opened"
/// may be of the two claws of one foot.
struct BothFeetNamed {
  bool may_be_claws = false;
  friend bool operator==(const BothFeetNamed&, const BothFeetNamed&) = default;
};

/// "nothing after all": whatever was called on the feet named last was not there.
struct NothingAfterAll {
  friend bool operator==(const NothingAfterAll&, const NothingAfterAll&) = default;
};

using AnyTurnClause =
    std::variant<ReasonSaid, FeetNamed, FootStateSaid, TrimmedSaid, FindingSaid, ActionSaid,
                 MeasureSaid, RestFineSaid, WalksSoundSaid, MobilityTold, NoteSaid, EndSaid,
                 FootCorrected, ClawCorrected, DetailCorrected, TimeCorrected, CowCorrected,
                 FindingTakenBack, ActTakenBack, MeasureTakenBack, ReasonTakenBack, NothingAfterAll,
                 KnownSaid, OtherFootNamed, BothFeetNamed>;

/// One thing that is said about the cow in the crush. Copied, moved, compared and dropped in
/// turn_clause.cpp alone: a variant of 25 writes that anew in every source that holds one.
struct TurnClause : AnyTurnClause {
  using AnyTurnClause::AnyTurnClause;
  TurnClause(const TurnClause& other);
  TurnClause(TurnClause&& other) noexcept;
  TurnClause& operator=(const TurnClause& other);
  TurnClause& operator=(TurnClause&& other) noexcept;
  ~TurnClause();
  friend bool operator==(const TurnClause& a, const TurnClause& b);
};

/// A half-entered turn: the turn so far and what "it" refers to.
struct TurnDraft {
  Turn turn;
  FootSet feet_named;              // the feet that are being spoken of
  FootSet last_named;              // the feet the last finding, act or state went to
  std::vector<std::string> words;  // the lines as said

  // What a correction by word of mouth goes back to: the turn before the feet were named, and all
  // that was said since.
  Turn before_naming;
  std::vector<TurnClause> since_naming;
};

/// Adds one clause. Faults (slug "call-impossible") when it cannot apply: a correction with
/// nothing to correct, a finding with no foot named; the draft is then as it was before.
/// The same finding or act said again with more detail completes the first, said again alike it
/// is kept once; of an act with another time that one holds.
Outcome add_clause(TurnDraft& draft, const TurnClause& clause);

}  // namespace evenclaw
