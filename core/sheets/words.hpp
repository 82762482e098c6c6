// The words shown to people, as one table per language: a later language needs no code.
#pragma once

#include <cstddef>
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/date.hpp"
#include "core/sheets/box_saying.hpp"
#include "core/sheets/saying.hpp"
#include "core/sheets/track_saying.hpp"
#include "core/trade/batch.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

inline constexpr std::size_t saying_count = static_cast<std::size_t>(Saying::count_ends);
inline constexpr std::size_t track_saying_count = static_cast<std::size_t>(TrackSaying::count_ends);

inline constexpr std::size_t box_saying_count = static_cast<std::size_t>(BoxSaying::count_ends);

template <class E>
struct Worded {
  E value;
  std::string_view words;
};

/// The tables of one language. Every value of each enum has its row, but for those said to be
/// partial.
struct WordingTables {
  std::string_view language;  // BCP 47
  std::span<const Worded<Foot>> feet;
  std::span<const Worded<Claw>> claws;      // outside, inside and both only
  std::span<const Worded<Lesion>> lesions;  // partial: else the name core/trade gives
  std::span<const Worded<Place>> places;    // partial: else the words core/trade gives
  std::span<const Worded<Place>> places_beside_white_line;  // partial: a shorter word
  std::span<const Worded<Degree>> degrees;                  // but for not called
  std::span<const Worded<DdStage>> stages;                  // but for not called
  std::span<const Worded<FootState>> states;  // all but `finding`, which is said by its findings
  std::span<const Worded<Reason>> reasons;
  std::span<const Worded<ActionKind>> acts;
  std::span<const Worded<Material>> materials;  // but for not called
  std::span<const Worded<ByWhom>> by_whoms;     // but for not called
  std::span<const Worded<Milking>> milkings;
  std::span<const Worded<MeasureKind>> measures;
  std::span<const Worded<Weekday>> weekdays;  // short: "Thu"
  std::span<const std::string_view> months;   // twelve, short: "Nov"
  std::span<const Worded<Saying>> sayings;
  std::span<const Worded<TrackSaying>> track_sayings;
  std::span<const Worded<BoxSaying>> box_sayings;
  std::span<const Worded<AnimalKind>> animals;
};

/// What goes into the places of a saying: {"date", "Thu 26 Nov"}.
struct Fill {
  std::string_view name;
  std::string words;
};

/// Turns values into words of one language.
class Wording {
 public:
  explicit constexpr Wording(const WordingTables& tables) : tables_(tables) {}

  [[nodiscard]] const WordingTables& tables() const { return tables_; }

  /// "left hind".
  [[nodiscard]] std::string foot(Foot foot) const;

  /// "both hind feet", "left hind and right front".
  [[nodiscard]] std::string feet(const FootSet& feet) const;

  /// "outside claw", "both claws", "claw not called"; "" where no claw makes sense.
  [[nodiscard]] std::string claw(Claw claw) const;

  /// "white line abscess, heel, bad (WLA)": what was called and nothing else.
  [[nodiscard]] std::string finding(const FindingRow& row) const;

  /// "outside claw, heel, bad": the same without its name and its code, with its claw before it; ""
  /// when no more was called.
  [[nodiscard]] std::string finding_details(const FindingRow& row) const;

  /// "white line abscess (WLA)": its name and its code alone.
  [[nodiscard]] std::string finding_name(const FindingRow& row) const;

  /// finding() with its claw before it: "outside claw: white line abscess, heel, bad (WLA)". A claw
  /// that was not called is said of lesions of a claw only.
  [[nodiscard]] std::string finding_at_claw(const FindingRow& row) const;

  /// "white line abscess"; an `other` is named by its words.
  [[nodiscard]] std::string lesion(Lesion lesion, std::string_view words = {}) const;

  /// "raw", "M2"; of a stage that was called.
  [[nodiscard]] std::string stage(DdStage stage) const;

  /// "nothing found", "not lifted", "nobody said whether lifted"; a finding is said by what was
  /// found.
  [[nodiscard]] std::string state(FootState state) const;

  /// "block on (wood), inside claw", "wrap on, off by Thu 26 Nov". A claw that was not called is
  /// said of a block that goes on, else left out. `near` is the day of the visit.
  [[nodiscard]] std::string act(const ActionRow& row, Day near) const;

  /// "outside claw, toe length 78 mm".
  [[nodiscard]] std::string measure(const MeasureRow& row) const;

  /// Why she came, all that was said: "lame on left hind", "fresh, lame on left hind", "swollen
  /// hock", "reason not called".
  [[nodiscard]] std::string reasons(const TurnRow& row) const;

  /// "heifers".
  [[nodiscard]] std::string animals(AnimalKind animals) const;

  /// "mobility 2 of 3"; "" when no score was said.
  [[nodiscard]] std::string mobility(const TurnRow& row) const;

  /// "Thu 26 Nov"; with the year when it is not the year of `near`.
  [[nodiscard]] std::string date(Day day, Day near) const;

  /// "Thu 26 Nov 2026".
  [[nodiscard]] std::string full_date(Day day) const;

  /// "412, 513 and 620"; "" of nothing. Parts that hold commas themselves are told apart by
  /// semicolons.
  [[nodiscard]] std::string list(const std::vector<std::string>& parts) const;

  [[nodiscard]] std::string say(Saying saying, std::initializer_list<Fill> fills = {}) const;
  [[nodiscard]] std::string say(TrackSaying saying, std::initializer_list<Fill> fills = {}) const;
  [[nodiscard]] std::string say(BoxSaying saying, std::initializer_list<Fill> fills = {}) const;

  /// The saying with {n} filled in, in its form for one or for many.
  [[nodiscard]] std::string count(Saying saying, std::size_t n) const;

 private:
  [[nodiscard]] std::string held_back(std::string what, const ActionRow& row, Day near) const;

  [[nodiscard]] std::string place(Place place, Lesion lesion) const;
  [[nodiscard]] std::string details(const FindingRow& row) const;
  [[nodiscard]] std::string claw_of(const FindingRow& row) const;
  [[nodiscard]] std::string zone(const FindingRow& row) const;
  [[nodiscard]] std::string lameness(const FootSet& legs) const;

  const WordingTables& tables_;
};

/// English as it is said on farms. Complete.
const Wording& english_wording();

/// The first letter as a capital (ASCII and Latin-1), for the start of a line.
std::string capitalised(std::string text);

/// With spaces that no end of a line comes between, for a narrow cell of a table.
std::string unbroken(const std::string& words);

/// Parts of one sentence with semicolons between: a full stop in the middle is left out.
std::string clauses(const std::vector<std::string>& parts);

/// capitalised() as a sentence: a capital first and a full stop last, unless it ends in a mark
/// already.
std::string as_sentence(std::string text);

}  // namespace evenclaw
