// The sheet left with the farmer after a visit, made from the rows of the picture.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/paper/document.hpp"
#include "core/sheets/words.hpp"
#include "core/trade/medicine.hpp"
#include "core/trade/rows.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// A warning that was shown during a turn, and what was decided.
struct TurnWarning {
  EntryId turn;  // the entry of the turn
  WarningShown shown;
};

/// A cow that was expected (she has something due, or was named) and never came to the crush.
struct NotSeenCow {
  CowId cow;
  std::string number;  // as it is to be shown; "" when she has none
  std::string why;     // "wrap off left hind is due", as told; may be empty
};

/// A record of this visit whose contents were taken away: that she was there still shows.
struct RemovedFromSheet {
  std::string cow;        // as it is to be shown; "" when nothing says who she was
  std::optional<Day> on;  // the day it was taken away, where known
};

/// What is still asked of no cow's record: news nobody could be sure of, a number two carry.
struct AskedOnSheet {
  std::string cow;  // number as told; may be empty
  std::string words;
};

/// Who stands behind an id in the rows.
struct NamedPerson {
  PersonId person;
  std::string name;  // "person removed" where so
};

/// What the law asks at least of each half that is stated below it; nothing of the other.
struct LeastNotReached {
  std::optional<std::int32_t> milk_hours;
  std::optional<std::int32_t> meat_days;
};

/// What the herd's list said of a product when it was put on or given in that turn.
struct ProductStated {
  EntryId turn;
  ProductId product;
  StatedBy by = StatedBy::not_said;
  std::string vet = {};     // on whose direction it is used, by name; "" when the list names nobody
  bool states_milk = true;  // a withdrawal, be it none
  bool states_meat = true;
  LeastNotReached floor = {};  // the law's floor off label, where the list stated less
};

/// An earlier visit of the herd: its row, and its turns, feet and findings.
struct VisitBefore {
  VisitRow visit;
  Rows rows;
};

/// She came lame that day, was not lifted there, and was in the crush no more.
struct StillLame {
  CowId cow;
  Day on;
  FootSet feet;  // those not lifted; empty when no leg was called
};

/// A Stop of an earlier turn of hers, or a sign for the vet that raised none.
struct EarlierStop {
  CowId cow;
  EntryId turn;
  Day on;
  Warning warning;
  bool was_gone_past = false;  // answered with "go ahead"; else nobody answered
  bool was_only_seen = false;  // no check stopped for it: `warning` holds its name and words
  bool may_be_notifiable = false;
  std::string found =
      {};  // on its foot in that turn: "outside claw: toe necrosis (TN)"; "" if none
  bool is_settled_alone = false;  // told only while it may be notifiable beside another sign
};

/// What is not to be done until the vet has seen it; of all of her when no foot is given.
struct LeftAlone {
  std::optional<Foot> foot;
  Saying saying = Saying::leave_foot_alone;
};

/// The vet, or pain relief, was asked for at an earlier visit, and the task is open still.
struct VetAskedBefore {
  TaskId task;
  std::string what;                  // as vet_asked_for_what() tells it; "" when nobody knows
  std::vector<LeftAlone> left = {};  // as left_until_vet() tells it
};

/// A medicine told in words nobody has read as a call: a note, a reason, a refused line.
struct MedicineTold {
  CowId cow;
  Day on;
  std::string words;  // quoted, with what they are
};

/// A product of the herd's list: its name, and how else it is called beside the crush.
using ProductNames = std::vector<std::string>;

struct VisitSheetInput {
  std::string herd_name;
  VisitRow visit;
  std::string caller;  // of the opening, told when no turn names anybody; "" is left out
  std::string writer;
  std::vector<NamedPerson> people;  // at least all callers and writers of the turns
  Day printed;          // the day the sheet is made; decides what counts as today and as late
  std::string version;  // of the program, "0.1.0"
  std::string whom_to_ring = {};  // name and telephone of the trimmer; "" leaves a line for it

  /// turns, feet, findings, doubts: of this visit (rows of other visits are passed over). actions:
  /// of this visit, of those at which an open withdrawal was made, and what
  /// keep_what_may_be_asked() leaves of others before it. cases: of the cows seen and
  /// those with a vet task, all visits. on_feet: of the herd. tasks: all tasks of the herd
  /// that were open when the visit was over; those closed after its day are told as such. cows: at
  /// least every cow that any of these rows or `not_seen` names. batches: of this visit. visits and
  /// cow_numbers are not looked at.
  Rows rows;
  std::vector<ProductStated> stated = {};  // of the turns of these actions
  std::optional<VisitBefore> before = {};  // what last_comparable() chose; nothing when it is none
  std::vector<StillLame> still_lame = {};  // of earlier visits, not seen at this one
  std::vector<EarlierStop> earlier_stops = {};  // what stops_left_open() chose
  std::vector<VetAskedBefore> vet_asked_before = {};
  std::vector<TurnWarning> warnings;  // of the turns of this visit, in the order shown
  std::vector<NotSeenCow> not_seen;
  std::vector<RemovedFromSheet> removed;
  std::vector<AskedOnSheet> asked;
  std::vector<std::string> told;                 // news of this visit that was clear, as said
  std::vector<ProductNames> product_names = {};  // of the herd's list on the day of the visit
  std::vector<MedicineTold> medicine_told_before = {};  // at earlier visits, nobody answered since
};

/// First the farmer's page (vet today, what may not be sold, else the vet, what to do by when, who
/// stays near, what could not be done, the day in short, the work, when to ring, cautions), then
/// the vet's page, then the list cow by cow with the drawing of her feet. Every open task stands on
/// it once. Rows in any order give the same document.
Document visit_sheet(const VisitSheetInput& input, const Wording& wording = english_wording());

}  // namespace evenclaw
