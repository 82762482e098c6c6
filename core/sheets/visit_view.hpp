// What a visit sheet is told from: the rows of one visit, gathered cow by cow.
#pragma once

#include <vector>

#include "core/sheets/cow_names.hpp"
#include "core/sheets/visit_sheet.hpp"

namespace evenclaw {

/// One cow of the visit with all that was said of her there; rows in the order of their positions.
/// The pointers live as long as the input.
struct CowSeen {
  CowId cow;
  std::vector<const TurnRow*> turns;
  std::vector<const FootRow*> feet;
  std::vector<const FindingRow*> findings;
  std::vector<const ActionRow*> actions;
  std::vector<const MeasureRow*> measures;
  std::vector<const DoubtRow*> doubts;
  std::vector<const CaseRow*> cases;      // known on the day of the visit
  std::vector<const OnFootRow*> on_feet;  // on her when she left the crush, or not known to be off
  std::vector<const WarningShown*> warnings;
  FootSet lame;            // legs she came lame on
  bool came_lame = false;  // also when the leg was not called
  bool in_crush = false;   // some turn of hers was at least begun
  FootSet lifted;
};

struct VisitView {
  const VisitSheetInput& input;
  const Wording& wording;
  CowNames names;
  std::vector<CowSeen> cows;                // by number
  std::vector<const NotSeenCow*> not_seen;  // by number; without those that did come
  // Open ones, by due day, owner, cow and foot. Of a cow who left only what her new owner or the
  // slaughterhouse must know of.
  std::vector<const TaskRow*> tasks;
  std::vector<TaskRow> open_rows;  // what `tasks` points to, as told; moves with the view
};

VisitView view_of(const VisitSheetInput& input, const Wording& wording);

/// It was on her at the end of that day, or nobody knows that it was off.
bool is_on(const OnFootRow& row, Day day);

/// Nobody knows whether it still is on her at the end of that day: so it was said, or it was asked
/// about in her turn and nobody told (who goes ahead tells nothing). `cow` is null when she was not
/// there.
bool is_on_in_doubt(const OnFootRow& row, const CowSeen* cow, Day day);

/// It was put on that day, or somebody said in her turn that it is on. `cow` is null when she was
/// not there.
bool was_seen_on(const OnFootRow& row, const CowSeen* cow, Day day);

/// Her row, once she left the herd; nothing of one who is in it.
const CowRow* who_left(const VisitView& view, CowId cow);

/// Nothing when she was not there.
const CowSeen* find_cow(const VisitView& view, CowId cow);

/// What the herd's list said then of a product that was put on or given; nothing when it is not on
/// it.
const ProductStated* stated_of(const VisitView& view, const ActionRow& row);

/// How one foot stands after all turns of hers: the most that was said of it.
FootState state_of(const CowSeen& cow, Foot foot);

/// Pus, bone, sores or fever: no lesion, and yet found. Blood and a fall are of the work.
bool counts_as_found(ActionKind kind);

/// Something was found on her that counts, be it a lesion or one of these.
bool has_something(const CowSeen& cow);

/// It is known whether something was found on her: something was, or of every foot that was lifted
/// it was said that nothing was.
bool is_known_what_was_found(const CowSeen& cow);

/// Somebody said why she came, of lame also with the leg alone.
bool is_told_why_she_came(const CowSeen& cow);

/// Whether a row says anything of this foot.
bool is_spoken_of(const CowSeen& cow, Foot foot);

/// The feet that were named, of which nobody said whether they were lifted nor what was found: a
/// wrap was taken off, or nothing more was said.
FootSet feet_not_judged(const CowSeen& cow);

/// Those of today's feet nobody spoke of.
FootSet unsaid_feet(const CowSeen& cow, const FootSet& todays_feet);

/// Of all cows.
std::size_t feet_lifted(const VisitView& view);

/// Open tasks in the order of a sheet: by due day, owner, cow, foot, kind and id.
std::vector<const TaskRow*> open_tasks_in_order(const std::vector<TaskRow>& tasks,
                                                const CowNames& names);

}  // namespace evenclaw
