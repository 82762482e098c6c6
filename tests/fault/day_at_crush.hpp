// A day that is recorded into a file in parts, each with the file opened and closed, as a person
// does who begins again after every fault.
#pragma once

#include <cstdint>
#include <map>
#include <string>

#include "core/base/result.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/fault/acknowledging_store.hpp"

namespace evenclaw::test {

enum class Durability {
  kept,       // as the store sets it
  given_away  // PRAGMA synchronous = OFF, to show what that costs
};

class DayAtCrush {
 public:
  DayAtCrush(std::string file, std::uint64_t seed, Durability durability = Durability::kept);

  /// Opens the file, starts the visit or goes on with it, records the cows up to this one that were
  /// not saved yet, and closes the file. Typed: line by line; else together. A fault is the disk's.
  Outcome record_until(int cow, bool typed);

  /// Cows are called from this number on.
  void begin_at(int cow) { first_ = cow; }

  /// Takes the body of the turn of a cow that was saved away.
  Outcome redact(int cow);
  Outcome end_visit();

  /// By cow: the turn that was told to be saved.
  [[nodiscard]] const std::map<int, EntryId>& saved() const { return saved_; }

  [[nodiscard]] const Acknowledged& acknowledged() const { return acknowledged_; }

  static constexpr int first_cow = 101;

 private:
  template <class Work>
  Outcome with_records(Work&& work);
  Outcome record_cow(Recording& recording, int cow, bool typed);
  void hear(const Reply& reply);

  std::string file_;
  std::uint64_t seed_;
  Durability durability_;
  SteppingClock clock_;
  SeededIds ids_;
  int first_ = first_cow;
  Acknowledged acknowledged_;
  std::map<int, EntryId> saved_;
};

}  // namespace evenclaw::test
