#include "core/trade/farm_line/change_line.hpp"

#include <cstddef>
#include <utility>

#include "core/base/text.hpp"
#include "core/trade/farm_line/farm_cursor.hpp"

namespace evenclaw {

namespace {

std::optional<ChangeDriver> driver_of(FarmTopic topic) {
  switch (topic) {
    case FarmTopic::cow:
      return std::nullopt;
    case FarmTopic::cubicle:
      return ChangeDriver::cubicles;
    case FarmTopic::passage:
    case FarmTopic::turn:
      return ChangeDriver::passages;
    case FarmTopic::floor:
    case FarmTopic::grip:
      return ChangeDriver::floor;
    case FarmTopic::scraping:
      return ChangeDriver::scraping;
    case FarmTopic::standing:
      return ChangeDriver::standing_time;
    case FarmTopic::footbath:
      return ChangeDriver::footbath;
  }
  return std::nullopt;
}

class ChangeReader {
 public:
  ChangeReader(std::string_view text, Day today, const Language& language, int line_number)
      : cursor_(text, language, line_number), today_(today) {}

  Result<std::optional<ChangeLine>> read() {
    if (const auto fault = cursor_.unreadable()) return *fault;
    cursor_.skip_separators();
    line_.scrapped = cursor_.take(FarmWord::scrap);
    take_driver();
    if (line_.scrapped && !line_.driver) {
      return cursor_.refused("which change was none?", "say \"scrap footbath\"");
    }
    while (!cursor_.at_end()) {
      cursor_.skip_separators();
      if (cursor_.at_end()) break;
      const Outcome said = clause();
      if (!said) return said.faults();
      if (!cursor_.at_break()) {
        return cursor_.refused("this is not understood behind what was said",
                               "part what is said by a semicolon");
      }
    }
    return std::optional(std::move(line_));
  }

 private:
  void take_driver() {
    const FarmPhrase* phrase = cursor_.phrase();
    if (phrase == nullptr) return;
    if (phrase->word == FarmWord::driver) line_.driver = phrase->as<ChangeDriver>();
    if (phrase->word == FarmWord::topic) line_.driver = driver_of(phrase->as<FarmTopic>());
    if (!line_.driver) return;
    static_cast<void>(cursor_.take_phrase_words());
    cursor_.take_colon();
  }

  Outcome clause() {
    const FarmPhrase* phrase = cursor_.phrase();
    if (phrase == nullptr) return altered();
    switch (phrase->word) {
      case FarmWord::why:
        line_.told.why = phrase->as<ChangeWhy>();
        line_.told.why_words = cursor_.take_phrase_words();
        return clause_said();
      case FarmWord::because:
        cursor_.take(FarmWord::because);
        return because();
      case FarmWord::decided:
        cursor_.take(FarmWord::decided);
        return day_of_clause(line_.told.decided);
      case FarmWord::finished:
        cursor_.take(FarmWord::finished);
        line_.told.state = ChangeState::finished;
        return day_of_clause(line_.told.finished);
      case FarmWord::going_on:
        cursor_.take(FarmWord::going_on);
        line_.told.state = ChangeState::going_on;
        return clause_said();
      case FarmWord::whole_herd:
        cursor_.take(FarmWord::whole_herd);
        line_.told.reach = ChangeReach::whole_herd;
        return clause_said();
      case FarmWord::group:
      case FarmWord::only:
        cursor_.take(phrase->word);
        return group();
      default:
        return altered();
    }
  }

  Outcome clause_said() {
    has_clause_ = true;
    return Done{};
  }

  /// How it was altered stands in front of everything else; a comma may be in it.
  Outcome altered() {
    if (!line_.driver) {
      return cursor_.refused("what was altered?",
                             "say it first: cubicles, bedding, floor, passages, tracks, stocking, "
                             "scraping, standing, footbath, feeding, grazing, trimming, heifers, "
                             "other; then how: \"footbath: copper\"");
    }
    if (has_clause_) {
      return cursor_.refused("this is not understood",
                             "behind how it was altered stand why, decided, finished, and for "
                             "whom; any other reason: \"because\" and the words");
    }
    if (!line_.altered.empty()) line_.altered += ", ";
    line_.altered += cursor_.take_words();
    return Done{};
  }

  Outcome because() {
    line_.told.why = ChangeWhy::other;
    line_.told.why_words = cursor_.take_words();
    if (line_.told.why_words.empty()) return cursor_.refused("why?", "say the reason");
    return clause_said();
  }

  Outcome group() {
    line_.told.reach = ChangeReach::group;
    line_.told.animals = cursor_.take_words();
    if (line_.told.animals.empty()) {
      return cursor_.refused("which animals?", "say how the group is called");
    }
    return clause_said();
  }

  Outcome day_of_clause(std::optional<Day>& day) {
    const std::size_t place = cursor_.place();
    day = cursor_.take_day(today_);
    if (!day) {
      return cursor_.refused_at(place, "on which day?",
                                "say it with its month: \"1 Oct\", or \"" + to_text(today_) + "\"");
    }
    if (*day > today_) {
      Fault fault = cursor_.refused_at(place, "that day has not come",
                                       "say it when it is so; until then \"still going on\"");
      fault.slug = "date-in-future";
      return fault;
    }
    return clause_said();
  }

  FarmCursor cursor_;
  Day today_;
  ChangeLine line_;
  bool has_clause_ = false;
};

}  // namespace

std::string_view spoken(ChangeWhy why) {
  switch (why) {
    case ChangeWhy::not_told:
      return "";
    case ChangeWhy::bad_visit:
      return "after a bad visit";
    case ChangeWhy::planned:
      return "planned";
    case ChangeWhy::vet_advised:
      return "the vet advised it";
    case ChangeWhy::rebuilt_anyway:
      return "rebuilt anyway";
    case ChangeWhy::other:
      return "for another reason";
  }
  return "";
}

Result<std::optional<ChangeLine>> read_change_line(std::string_view text, Day today,
                                                   const Language& language, int line_number) {
  const std::string_view line = trimmed(text);
  if (line.empty() || line.front() == '#') return std::optional<ChangeLine>();
  return ChangeReader(text, today, language, line_number).read();
}

}  // namespace evenclaw
