// Which cow is meant by what was said, as far as the herd's records tell.
#pragma once

#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// The cow to record under and, when a person should look, what to ask.
struct CowFound {
  CowId cow;
  std::string question;  // "" when there is nothing to ask
};

/// Where cows are looked for: a visit on one device.
struct LookingAt {
  HerdId herd;
  VisitId visit;
  Day day;
  DeviceId device;
};

struct LeftHerd {
  Day on;
  std::string words;  // as told
};

class CowFinder {
 public:
  static Result<CowFinder> open(Store& store, const LookingAt& where);

  /// A numbered cow is the one whose number is valid on the visit's day, else one who is known by
  /// it only from a later day on, else a new one. A cow without a sure number is always a new one:
  /// it is never united with a known cow by the program alone. Except one that was named by her
  /// electronic number (as_read()), which is the cow in whose ear it is.
  [[nodiscard]] CowFound find(const CowSaid& said) const;

  /// The cow that carries this number on the visit's day, or has it in her ear; nothing when none
  /// is known.
  [[nodiscard]] std::optional<CowId> carrier(std::string_view number) const;

  /// The carrier of that number; or the one cow without a number who was called in these words at
  /// an earlier visit and is here. With the day of it, "red cow of 2026-10-27", it is her of that
  /// day.
  [[nodiscard]] std::optional<CowId> called(std::string_view name) const;

  /// What cows without a number may be called by.
  [[nodiscard]] std::vector<std::string> names_without_number() const;

  /// The cow in whose ear that electronic number is or was; nothing when none is known.
  [[nodiscard]] std::optional<CowId> carrier_of_tag(std::string_view electronic) const;

  /// What a reader gave, 15 digits, as the cow it belongs to: by her herd number where that means
  /// no other cow, else by the 15 digits as a cow without a number. Anything else stays as said.
  [[nodiscard]] CowSaid as_read(const CowSaid& said) const;

  /// That she was said to be gone, by the visit's day; nothing while she is there.
  [[nodiscard]] std::optional<LeftHerd> left(CowId cow) const;

  /// At most three known numbers a slip away, nearest first.
  [[nodiscard]] std::vector<std::string> nearest(std::string_view number) const;

  /// Cows whose number of the visit's day was one slip away, with that number.
  [[nodiscard]] std::vector<std::pair<CowId, std::string>> slips_of(std::string_view number) const;

  /// Numbers of cows who are here and were called by these words at an earlier visit, when their
  /// number was not known yet.
  [[nodiscard]] std::vector<std::string> called_before(std::string_view looks) const;

  /// She carries this number on the visit's day.
  [[nodiscard]] bool carries(CowId cow, std::string_view number) const;

  /// She was recorded: from now on she is known.
  void now_known(CowId cow, const CowSaid& said);
  /// There is no such cow: her number had been misheard.
  void forget(CowId cow);
  /// She left the herd on the visit's day.
  void now_gone(CowId cow, std::string_view words);
  /// That she left was taken back.
  void now_here(CowId cow);

 private:
  struct Number {
    std::string number;
    CowId cow;
    Day from;
    std::optional<Day> to;
  };

  struct Tag {
    std::string electronic;
    CowId cow;
  };

  struct Known {
    CowId cow;
    Day last_seen;
    std::optional<Day> left_on;
    std::string left_words;
    std::string name;  // of one without a number, known from an earlier visit
  };

  struct Called {
    std::string looks;  // folded
    CowId cow;
  };

  explicit CowFinder(const LookingAt& where) : where_(where) {}

  [[nodiscard]] std::vector<Number> carrying(std::string_view plain) const;
  [[nodiscard]] const Known* known(CowId cow) const;
  [[nodiscard]] CowFound numbered(std::string_view plain) const;
  [[nodiscard]] bool has_left(const Number& row) const;
  [[nodiscard]] CowFound carrier_left(std::string_view plain,
                                      const std::vector<Number>& left) const;
  [[nodiscard]] CowFound not_valid_now(std::string_view plain) const;
  [[nodiscard]] const std::string* number_of(CowId cow) const;
  [[nodiscard]] CowId new_unnumbered(const CowSaid& said) const;
  [[nodiscard]] bool seen_later(const Number& a, const Number& b) const;

  LookingAt where_;
  std::vector<Number> numbers_;
  std::vector<Known> cows_;
  std::unordered_map<CowId, std::size_t> place_of_;  // in cows_
  std::vector<Called> called_;                       // at earlier visits
  std::vector<Tag> tags_;  // a number in an ear belongs to that animal for good
  std::set<CowId> taken_;
};

}  // namespace evenclaw
