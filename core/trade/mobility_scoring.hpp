// A mobility scoring: cows watched walking, each with a score on one named scale, and its rows.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/mobility.hpp"

namespace evenclaw {

/// Right after trimming more cows walk lame than before (14 % before, 34 % right after, 20 % two
/// months later: Van Hertem et al. 2014, Journal of Dairy Science); that it means a week is our
/// judgement, as in the check walk-watched-early.
inline constexpr std::int32_t days_a_trim_shows = 7;

/// Why a person should look at whose score it is.
enum class NumberDoubt { none, not_known, has_left };

template <>
struct EnumWords<NumberDoubt> {
  static constexpr EnumWord<NumberDoubt> table[] = {{NumberDoubt::none, "none"},
                                                    {NumberDoubt::not_known, "not_known"},
                                                    {NumberDoubt::has_left, "has_left"}};
};

/// One cow that was called by her number.
struct CowScored {
  std::string number;                 // as said
  std::optional<CowId> cow = {};      // who carried it that day, as far as it was known
  std::optional<std::int32_t> score;  // nothing: she was there and not scored
  FootSet feet;                       // the legs she was called lame on
  bool mends = false;                 // instead of what was said of her before
  bool scrapped = false;              // all that was said of the number is taken back
  NumberDoubt doubt = NumberDoubt::none;
  std::optional<std::int32_t> days_after_trim = {};  // within days_a_trim_shows

  friend bool operator==(const CowScored&, const CowScored&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("number", &CowScored::number, "number as said");
    visit("cow", &CowScored::cow, "who carried it that day, as far as it was known");
    visit("score", &CowScored::score, "score on the scale; absent: there, and not scored");
    visit("feet", &CowScored::feet, "legs she was called lame on");
    visit("mends", &CowScored::mends, "instead of what was said of her before");
    visit("scrapped", &CowScored::scrapped, "all that was said of the number is taken back");
    visit("doubt", &CowScored::doubt, "whether the number fits a cow of the herd");
    visit("days_after_trim", &CowScored::days_after_trim,
          "days since she was in the crush, when that was within a week");
  }
};

/// Animals of whom only the score was counted: nobody read their numbers.
struct CountScored {
  std::int32_t animals = 0;
  std::int32_t score = 0;
  bool mends = false;  // instead of the count at that score before; 0 animals takes it back

  friend bool operator==(const CountScored&, const CountScored&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("animals", &CountScored::animals, "how many");
    visit("score", &CountScored::score, "score on the scale");
    visit("mends", &CountScored::mends, "instead of the count at that score before");
  }
};

/// A scoring, from herd, day, scale and which animals were scored: two tablets that write of the
/// same one mean the same.
VisitId scoring_id(HerdId herd, Day day, MobilityScale scale, std::string_view group);

/// One scoring with its denominators. A cow scored twice in different ways counts at no score until
/// somebody says which holds.
struct MobilityScoringRow {
  static constexpr std::string_view table = "mobility_scoring";
  static constexpr int key_columns = 2;
  HerdId herd;
  VisitId scoring;
  Day day;
  MobilityScale scale = MobilityScale::zero_to_three;
  std::string animals;  // which were scored, as said
  std::string watched_at;
  std::optional<std::int32_t> present;
  std::int32_t scored = 0;
  std::int32_t cows = 0;
  std::int32_t counted = 0;
  std::int32_t not_scored = 0;
  std::int32_t in_doubt = 0;
  std::int32_t shortly_after_trim = 0;
  std::int32_t at_0 = 0;
  std::int32_t at_1 = 0;
  std::int32_t at_2 = 0;
  std::int32_t at_3 = 0;
  std::int32_t at_4 = 0;
  std::int32_t at_5 = 0;
  PersonId scorer;
  PersonId writer;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &MobilityScoringRow::herd, "herd");
    visit("scoring", &MobilityScoringRow::scoring, "derived from herd, day, scale and animals");
    visit("day", &MobilityScoringRow::day, "day they were watched");
    visit("scale", &MobilityScoringRow::scale, "scale of every score in it, never converted");
    visit("animals", &MobilityScoringRow::animals, "which animals, as said; empty: the herd");
    visit("watched_at", &MobilityScoringRow::watched_at, "where they were watched, as said");
    visit("present", &MobilityScoringRow::present, "how many were there, when that was told");
    visit("scored", &MobilityScoringRow::scored, "animals with one score: cows and counted");
    visit("cows", &MobilityScoringRow::cows, "of these, called by number");
    visit("counted", &MobilityScoringRow::counted, "of these, counted without a number");
    visit("not_scored", &MobilityScoringRow::not_scored, "called by number as not scored");
    visit("in_doubt", &MobilityScoringRow::in_doubt,
          "cows scored twice in different ways; they count at no score");
    visit("shortly_after_trim", &MobilityScoringRow::shortly_after_trim,
          "scored cows who were in the crush within the week before");
    visit("at_0", &MobilityScoringRow::at_0, "animals scored 0");
    visit("at_1", &MobilityScoringRow::at_1, "animals scored 1");
    visit("at_2", &MobilityScoringRow::at_2, "animals scored 2");
    visit("at_3", &MobilityScoringRow::at_3, "animals scored 3");
    visit("at_4", &MobilityScoringRow::at_4, "animals scored 4");
    visit("at_5", &MobilityScoringRow::at_5, "animals scored 5");
    visit("scorer", &MobilityScoringRow::scorer, "who scored");
    visit("writer", &MobilityScoringRow::writer, "who typed");
  }
};

/// A score of one cow, or of several animals that were counted at it.
struct MobilityScoreRow {
  static constexpr std::string_view table = "mobility_score";
  static constexpr int key_columns = 3;
  HerdId herd;
  VisitId scoring;
  std::int32_t position = 0;
  Day day;
  MobilityScale scale = MobilityScale::zero_to_three;
  std::string number;
  std::optional<CowId> cow;
  std::int32_t animals = 1;
  std::optional<std::int32_t> score;
  FootSet feet;
  bool twice = false;
  NumberDoubt doubt = NumberDoubt::none;
  std::optional<std::int32_t> days_after_trim;
  EntryId entry;
  PersonId scorer;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &MobilityScoreRow::herd, "herd");
    visit("scoring", &MobilityScoreRow::scoring, "scoring");
    visit("position", &MobilityScoreRow::position, "place within the scoring, from 1");
    visit("day", &MobilityScoreRow::day, "day they were watched");
    visit("scale", &MobilityScoreRow::scale, "scale of the score, never converted");
    visit("number", &MobilityScoreRow::number, "number as said; empty for counted animals");
    visit("cow", &MobilityScoreRow::cow, "who carried it that day, as far as it was known");
    visit("animals", &MobilityScoreRow::animals, "1, or how many were counted at this score");
    visit("score", &MobilityScoreRow::score, "score; absent: there, and not scored");
    visit("feet", &MobilityScoreRow::feet, "legs she was called lame on");
    visit("twice", &MobilityScoreRow::twice, "said twice in different ways; nobody chose yet");
    visit("doubt", &MobilityScoreRow::doubt, "whether the number fits a cow of the herd");
    visit("days_after_trim", &MobilityScoreRow::days_after_trim,
          "days since she was in the crush, when that was within a week");
    visit("entry", &MobilityScoreRow::entry, "the entry that told it");
    visit("scorer", &MobilityScoreRow::scorer, "who scored");
  }
};

}  // namespace evenclaw
