// What a list tells, put beside what is on record: the entries it comes to, and the lines that
// cannot be taken over.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/api/importing/cow_meant.hpp"
#include "core/api/importing/findings_told.hpp"
#include "core/api/importing/known_herd.hpp"
#include "core/base/date.hpp"
#include "core/base/digest.hpp"
#include "core/base/result.hpp"
#include "core/exchange/herd_record.hpp"
#include "core/log/cow_registered.hpp"
#include "core/log/life_bodies.hpp"

namespace evenclaw {

struct TakingOverDays {
  Day from;   // the list holds from this day
  Day today;  // it is read on this day
};

/// What of one cow is to be written.
struct CowBodies {
  std::vector<CowRegistered> registered;
  std::optional<LifeTold> life;
  std::optional<PastFindingsTold> findings;
};

class TakingOver {
 public:
  TakingOver(KnownHerd known, TakingOverDays days, bool is_sure)
      : known_(std::move(known)), days_(days), is_sure_(is_sure) {}

  /// Takes over the records of a list, all at once: the order of its lines plays no part.
  void take(const std::vector<HerdRecord>& records);

  /// Faults and questions ("answer-needed", none when sure) of the lines that were not taken over,
  /// by line.
  [[nodiscard]] Faults left_out() const;

  struct Counts {
    int entered = 0;
    int told_more = 0;
    int unchanged = 0;
    int events = 0;      // that were not known, or otherwise
    int findings = 0;    // that were not known
    int taken_back = 0;  // findings the same file told before
  };

  /// After bodies().
  [[nodiscard]] const Counts& counts() const { return counts_; }

  /// The bodies of all cows of whom something is new, in the order of their days. What the same
  /// file told before of a day of hers and does not tell of it now is taken back.
  [[nodiscard]] std::vector<CowBodies> bodies(const Digest& source,
                                              LesionScheme scheme = LesionScheme::icar);

 private:
  bool take_one(const HerdRecord& record, Day on, Day first);
  [[nodiscard]] Faults against_this_list(CowId id, const RecordAsked& asked) const;
  void enter(const RecordAsked& asked, Day first);
  void touch(CowId id);
  void count(const CowBodies& bodies, const std::optional<KnownCow>& before);
  void tell(CowId id, const RecordAsked& asked);

  KnownHerd known_;
  TakingOverDays days_;
  bool is_sure_;
  std::map<int, Faults> left_out_;
  std::vector<CowId> touched_;
  std::unordered_map<CowId, std::optional<KnownCow>> before_;  // nothing: she was entered here

  struct Tags {
    std::string tag;
    std::string electronic;
  };

  std::unordered_map<CowId, FoundByDay> found_here_;  // what this list tells of each day of hers
  std::unordered_map<CowId, Tags> named_here_;        // by which this list names her first
  Counts counts_;
};

}  // namespace evenclaw
