// All that is on record of a herd's cows, to be compared with what a list tells, and found by any
// of their numbers.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/identity_rows.hpp"
#include "core/trade/life.hpp"
#include "core/trade/past_finding.hpp"

namespace evenclaw {

/// What a list told was found on her.
struct KnownFinding {
  PastFinding told;
  std::string source;  // SHA-256 of the file that told it first; "" when it is the one being read
};

struct KnownCow {
  CowRow row;
  std::vector<CowNumberRow> numbers = {};
  std::vector<CowTagRow> tags = {};  // the newest last
  std::vector<std::string> names = {};
  CowFactsRow facts = {};
  std::vector<LifeEventTold> life = {};     // by day
  std::vector<KnownFinding> findings = {};  // by day
  std::optional<Day> last_in_crush = {};
  std::vector<TaskId> open_tasks = {};  // those that end when she leaves
};

/// The day she left, as the picture will tell it: the first leaving after which she neither arrived
/// nor stood in the crush; what was told in words counts beside what lists told.
std::optional<Day> left_on(const KnownCow& cow);

const LifeEventTold* event_of_key(const KnownCow& cow, const LifeEventTold& event);
const LifeEventTold* last_calving_of(const KnownCow& cow);

/// The day she calved last, from her life or as it was registered.
std::optional<Day> last_calved_of(const KnownCow& cow);

/// A period in which she carries a number; she carries none after she left.
struct Carrying {
  CowId cow;
  Day from;
  std::optional<Day> to;
};

class KnownHerd {
 public:
  static Result<KnownHerd> read(Store& store, HerdId herd);

  explicit KnownHerd(HerdId herd) : herd_(herd) {}

  [[nodiscard]] HerdId herd() const { return herd_; }

  [[nodiscard]] const KnownCow* find(CowId cow) const;
  /// What a list tells may be added to her; names, tags and numbers through the functions below.
  [[nodiscard]] KnownCow& cow(CowId cow);
  KnownCow& enter(CowId cow, Day first_day);

  void give_number(CowId cow, const std::string& plain, Day from);
  void give_tag(CowId cow, const std::string& tag, const std::string& electronic, Day from);

  /// Who wears it or wore it; the newest last. By tag_key() and the 15 digits.
  [[nodiscard]] std::vector<CowId> wearing(const std::string& key) const;
  /// Every time anybody carried that number, without leading zeros.
  [[nodiscard]] std::vector<Carrying> carrying(const std::string& plain) const;

 private:
  HerdId herd_;
  std::unordered_map<CowId, KnownCow> cows_;
  std::unordered_map<std::string, std::vector<CowId>> by_tag_;
  std::unordered_map<std::string, std::vector<CowId>> by_number_;
};

/// An ear tag as tags are compared: the country and the digits without leading zeros; "" for none.
std::string tag_key(std::string_view tag);

}  // namespace evenclaw
