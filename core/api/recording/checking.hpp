// What is shown and asked of her while she stands in the crush: the checks, what was not called,
// how she has to be handled.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/last_line.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/check.hpp"
#include "core/trade/turn.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// For each of these somebody has to stand in the crush. A mark is shown once a turn; which feet
/// are lifted today is asked once a recording.
class ChecksOfHer {
 public:
  ChecksOfHer(VisitBook& book, Crush& crush) : book_(book), crush_(crush) {}

  /// Shows what fires now that `text` was said of her; `finished`: what is missing was forgotten.
  void check_her(bool finished, std::string_view text);

  /// Shows what was not called about her findings, and which feet "rest fine" leaves open.
  void show_marks();
  void show_mark(const std::string& mark);

  /// What of her past was taken stands before what it gives to ask.
  void show_learned(ThisLine& line);

  /// How she was known, or that nobody is, when she was read; `text` named her. Said once, when she
  /// comes into the crush.
  void tell_who_was_read(std::string_view text);

  /// What a line did that nobody may have seen; `before` is her turn as it stood before the line,
  /// in which nobody was named.
  void tell_found_where_fine(const Turn& before);

  /// Which times the line said anew: of what she had called of her before it, `before`, or at an
  /// earlier call of this visit.
  void tell_times_said_anew(const Turn& before, const Line& line);

  /// As soon as her number is said, once a visit; not of a file, for then she is gone.
  void warn_of_her();

  /// "Not done, she kicks" is kept as why. What she will be warned of is said on its own.
  void offer_to_warn(std::string_view reason);

 private:
  void hold_for_a_plan(std::vector<Warning>& firing);
  [[nodiscard]] std::optional<TimeInCrush> time_in_crush() const;
  [[nodiscard]] std::optional<Warning> other_cow_read_maybe(const Turn& turn) const;

  VisitBook& book_;
  Crush& crush_;
  bool asked_for_feet_ = false;
};

}  // namespace evenclaw
