#include "core/trade/farm_line/walk_line.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>

#include "core/base/quotation.hpp"
#include "core/base/text.hpp"
#include "core/trade/farm_line/farm_cursor.hpp"
#include "core/trade/farm_line/walk_amount.hpp"

namespace evenclaw {

namespace {

using W = WalkMeasure;

class WalkReader {
 public:
  WalkReader(std::string_view text, const Language& language, int line_number)
      : cursor_(text, language, line_number) {}

  Result<WalkLine> read() {
    if (const auto fault = cursor_.unreadable()) return *fault;
    cursor_.skip_separators();
    while (!cursor_.at_end()) {
      const Outcome said = clause();
      if (!said) return said.faults();
      cursor_.skip_separators();
    }
    const Outcome whole = topic_has_something();
    if (!whole) return whole.faults();
    return std::move(line_);
  }

 private:
  /// What stands between two separators.
  Outcome clause() {
    if (cursor_.take(FarmWord::place)) return place();
    if (cursor_.take(FarmWord::scrap)) return scrap();
    if (cursor_.take(FarmWord::no)) {
      mends_ = true;
      cursor_.skip_separators();
    }
    while (!cursor_.at_break()) {
      const Outcome said = item();
      if (!said) return said;
    }
    return Done{};
  }

  Outcome place() {
    cursor_.take_colon();
    std::string words = cursor_.take_words();
    if (words.empty()) return cursor_.refused("which place?", "say how it is called");
    if (line_.place || !line_.measured.empty()) {
      return cursor_.refused("a place stands at the beginning", "give it a line of its own");
    }
    line_.place = std::move(words);
    return Done{};
  }

  Outcome item() {
    const FarmPhrase* phrase = cursor_.phrase();
    if (phrase == nullptr) return number_or_words();
    switch (phrase->word) {
      case FarmWord::topic:
        return topic(phrase->as<FarmTopic>());
      case FarmWord::dimension:
        return dimension_first(phrase->as<FarmDimension>());
      case FarmWord::not_looked_at:
        return nobody_looked();
      case FarmWord::every:
        return interval();
      case FarmWord::times_said:
        return how_often(phrase->value);
      case FarmWord::grip_is:
        return grip_words(std::nullopt, std::nullopt);
      case FarmWord::product:
        return product();
      default:
        return number_or_words();
    }
  }

  Outcome number_or_words() {
    if (cursor_.at_number()) return number();
    const bool takes_words = topic_ == FarmTopic::floor || topic_ == FarmTopic::grip;
    if (takes_words) return floor_words();
    return cursor_.refused("this is not understood",
                           "say what and how much: \"cubicles 115 wide 180 long, 10 looked at\"");
  }

  Outcome topic(FarmTopic topic) {
    const Outcome whole = topic_has_something();
    if (!whole) return whole;
    topic_place_ = cursor_.place();
    cursor_.take(FarmWord::topic);
    cursor_.take_colon();
    topic_ = topic;
    topic_began_ = line_.measured.size();
    const bool takes_words = topic == FarmTopic::floor || topic == FarmTopic::grip;
    if (!takes_words || cursor_.at_break()) return Done{};
    const FarmPhrase* next = cursor_.phrase();
    const bool is_known = next != nullptr && (next->word == FarmWord::not_looked_at ||
                                              next->word == FarmWord::grip_is);
    return is_known || cursor_.at_number() ? Outcome(Done{}) : floor_words();
  }

  /// A topic alone would be a word that is dropped.
  Outcome topic_has_something() {
    if (!topic_ || topic_began_ < line_.measured.size()) return Done{};
    return cursor_.refused_at(topic_place_, "what of it?", "say how much, or \"not looked at\"");
  }

  Outcome floor_words() {
    WalkMeasured said;
    said.measure = topic_ == FarmTopic::grip ? W::grip : W::floor;
    said.words = cursor_.take_words();
    return keep(std::move(said));
  }

  Outcome grip_words(std::optional<std::int32_t> fitting, std::optional<std::int32_t> of) {
    WalkMeasured said;
    said.measure = W::grip;
    said.words = cursor_.take_phrase_words();
    said.fitting = fitting;
    said.looked_at = of;
    if (!fitting && cursor_.at_number()) {
      const Outcome counted = n_of_m(said);
      if (!counted) return counted;
    }
    return keep(std::move(said));
  }

  /// "slippery 3 of 10".
  Outcome n_of_m(WalkMeasured& said) {
    const std::size_t place = cursor_.place();
    const auto fitting = cursor_.take_whole();
    if (!fitting || !cursor_.take(FarmWord::of)) {
      cursor_.go_back_to(place);
      return Done{};
    }
    const auto of = cursor_.take_whole();
    if (!of || *of < *fitting || *of == 0) {
      return cursor_.impossible_at(place, "of how many is it so?", "say \"3 of 10\"");
    }
    said.fitting = *fitting;
    said.looked_at = *of;
    return Done{};
  }

  Outcome product() {
    WalkMeasured said;
    said.measure = W::footbath_product;
    said.words = cursor_.take_phrase_words();
    return keep(std::move(said));
  }

  Result<Amount> amount() {
    Amount amount;
    amount.place = cursor_.place();
    const auto thousandths = cursor_.take_thousandths();
    if (!thousandths) {
      return cursor_.refused("this number is not understood",
                             "at most six digits and three decimals, with a point");
    }
    amount.thousandths = *thousandths;
    const FarmPhrase* next = cursor_.phrase();
    if (next != nullptr && next->word == FarmWord::unit) {
      amount.unit = next->as<FarmUnit>();
      cursor_.take(FarmWord::unit);
    }
    return amount;
  }

  Outcome number() {
    const auto said = amount();
    if (!said) return said.faults();
    if (said->unit == FarmUnit::percent) {
      return number_kept(W::footbath_strength, *said, 10);
    }
    if (said->unit == FarmUnit::kg) return number_kept(W::cow_weight, *said, 1);
    if (said->unit == FarmUnit::times) return times(*said);
    if (said->unit == FarmUnit::hours || said->unit == FarmUnit::minutes) return duration(*said);
    return by_what_follows(*said);
  }

  Outcome by_what_follows(const Amount& said) {
    const FarmPhrase* next = cursor_.phrase();
    if (next == nullptr) return nothing_follows(said);
    switch (next->word) {
      case FarmWord::dimension: {
        const auto dimension = next->as<FarmDimension>();
        cursor_.take(FarmWord::dimension);
        return length_kept(length_measure(topic_, dimension), said);
      }
      case FarmWord::by:
        return length_by_width(said);
      case FarmWord::topic:
        return counted(next->as<FarmTopic>(), said);
      case FarmWord::looked_at:
        cursor_.take(FarmWord::looked_at);
        return looked_at(said, std::nullopt);
      case FarmWord::of:
        return share(said);
      case FarmWord::through:
        cursor_.take(FarmWord::through);
        return number_kept(W::footbath_passes, said, 1);
      default:
        return nothing_follows(said);
    }
  }

  Outcome nothing_follows(const Amount& said) {
    const bool is_one_length = topic_ == FarmTopic::passage || topic_ == FarmTopic::turn;
    if (is_one_length && said.unit) {
      return length_kept(length_measure(topic_, FarmDimension::width), said);
    }
    return cursor_.refused_at(said.place, "what was measured so?",
                              "say it behind the number: \"115 wide\", \"120 cubicles\"");
  }

  Outcome counted(FarmTopic topic, const Amount& said) {
    const bool is_count = topic == FarmTopic::cow || topic == FarmTopic::cubicle;
    if (!is_count || said.unit) return nothing_follows(said);
    const Outcome whole = topic_has_something();
    if (!whole) return whole;
    cursor_.take(FarmWord::topic);
    return number_kept(topic == FarmTopic::cow ? W::cows : W::cubicles, said, 1);
  }

  /// "3 m by 50".
  Outcome length_by_width(const Amount& length) {
    if (topic_ != FarmTopic::footbath) {
      return cursor_.refused_at(length.place, "which of the two is the width?",
                                "say \"115 wide 180 long\"");
    }
    cursor_.take(FarmWord::by);
    const Outcome kept = length_kept(W::footbath_length, length);
    if (!kept) return kept;
    const auto width = amount();
    if (!width) return width.faults();
    cursor_.take(FarmWord::dimension);
    return length_kept(W::footbath_width, *width);
  }

  /// "3 of 10 slippery", "3 of 10 looked at".
  Outcome share(const Amount& said) {
    WalkMeasured counted;
    cursor_.go_back_to(said.place);
    const Outcome read = n_of_m(counted);
    if (!read) return read;
    const FarmPhrase* next = cursor_.phrase();
    if (next != nullptr && next->word == FarmWord::grip_is) {
      return grip_words(counted.fitting, counted.looked_at);
    }
    if (next != nullptr && next->word == FarmWord::looked_at) {
      cursor_.take(FarmWord::looked_at);
      return looked_at(Amount{std::int64_t{*counted.looked_at} * 1000, std::nullopt, said.place},
                       counted.fitting);
    }
    return cursor_.refused("of how many is it so, and what?",
                           "say \"3 of 10 slippery\", or \"10 looked at\"");
  }

  Outcome looked_at(const Amount& said, std::optional<std::int32_t> fitting) {
    const auto count = said.whole(1);
    const bool is_known = topic_ && topic_began_ < line_.measured.size();
    if (!count || *count < 1 || said.unit || !is_known) {
      return cursor_.refused_at(said.place, "so many of what were looked at?",
                                "say it behind what was measured: \"cubicles 115 wide, 10 looked "
                                "at\"");
    }
    for (std::size_t at = topic_began_; at < line_.measured.size(); ++at) {
      line_.measured[at].looked_at = static_cast<std::int32_t>(*count);
      if (fitting) line_.measured[at].fitting = fitting;
    }
    return Done{};
  }

  Outcome nobody_looked() {
    const std::size_t place = cursor_.place();
    cursor_.take(FarmWord::not_looked_at);
    if (!topic_ || topic_began_ < line_.measured.size()) {
      return cursor_.refused_at(place, "what was not looked at?",
                                "say it in front: \"grip not looked at\"");
    }
    for (const WalkMeasure measure : measures_of(*topic_)) {
      const Outcome kept = not_looked_at(measure);
      if (!kept) return kept;
    }
    return Done{};
  }

  Outcome not_looked_at(WalkMeasure measure) {
    WalkMeasured said;
    said.measure = measure;
    said.not_looked_at = true;
    return keep(std::move(said));
  }

  /// "width 115", "depth not looked at".
  Outcome dimension_first(FarmDimension dimension) {
    const std::size_t place = cursor_.place();
    cursor_.take(FarmWord::dimension);
    const auto measure = length_measure(topic_, dimension);
    if (measure && cursor_.take(FarmWord::not_looked_at)) return not_looked_at(*measure);
    if (!cursor_.at_number()) {
      return cursor_.refused_at(place, "how much is it?", "say the number with it: \"115 wide\"");
    }
    const auto said = amount();
    if (!said) return said.faults();
    return length_kept(measure, *said);
  }

  /// "every 2 h".
  Outcome interval() {
    const std::size_t place = cursor_.place();
    cursor_.take(FarmWord::every);
    if (topic_ != FarmTopic::scraping || !cursor_.at_number()) {
      return cursor_.refused_at(place, "what is done so often?", "say \"scraped every 2 h\"");
    }
    const auto said = amount();
    if (!said) return said.faults();
    if (said->unit == FarmUnit::hours) return number_kept(W::scraping_interval, *said, 60);
    if (said->unit == FarmUnit::minutes) return number_kept(W::scraping_interval, *said, 1);
    return cursor_.refused_at(said->place, "hours or minutes?", "say \"every 2 h\"");
  }

  Outcome duration(const Amount& said) {
    if (topic_ != FarmTopic::standing) {
      return cursor_.refused_at(said.place, "what lasts so long?",
                                "say \"standing 3 h a day\", all milkings together");
    }
    cursor_.take(FarmWord::a_day);
    return number_kept(W::standing_time, said, said.unit == FarmUnit::hours ? 60 : 1);
  }

  Outcome how_often(int times_said) {
    Amount said;
    said.place = cursor_.place();
    said.thousandths = std::int64_t{times_said} * 1000;
    cursor_.take(FarmWord::times_said);
    return times(said);
  }

  Outcome times(const Amount& said) {
    constexpr std::int64_t days_a_week = 7;
    constexpr std::int64_t minutes_a_day = 1440;
    const bool is_a_day = cursor_.take(FarmWord::a_day);
    const bool is_a_week = !is_a_day && cursor_.take(FarmWord::a_week);
    const auto count = said.whole(1);
    const bool is_told = count && *count > 0 && (is_a_day || is_a_week);
    if (is_told && topic_ == FarmTopic::footbath) {
      return number_kept(W::footbath_times, said, is_a_day ? days_a_week : 1);
    }
    const std::int64_t minutes = minutes_a_day * (is_a_day ? 1 : days_a_week);
    if (is_told && topic_ == FarmTopic::scraping && minutes / *count > 0) {
      return number_kept(W::scraping_interval, Amount{minutes / *count * 1000, {}, said.place}, 1);
    }
    return cursor_.refused_at(said.place, "what is done so often, and a day or a week?",
                              "say \"footbath 3 times a week\", \"scraped 6 times a day\"");
  }

  /// "scrap cubicle width".
  Outcome scrap() {
    const std::size_t place = cursor_.place();
    const FarmPhrase* phrase = cursor_.phrase();
    const bool names_topic = phrase != nullptr && phrase->word == FarmWord::topic;
    if (!names_topic) return cursor_.refused("what was not so?", "say \"scrap cubicle width\"");
    const auto topic = phrase->as<FarmTopic>();
    cursor_.take(FarmWord::topic);
    const FarmPhrase* next = cursor_.phrase();
    if (next != nullptr && next->word == FarmWord::dimension) {
      const auto measure = length_measure(topic, next->as<FarmDimension>());
      cursor_.take(FarmWord::dimension);
      if (!measure) return cursor_.refused_at(place, "that is not measured", "say which it was");
      return scrapped(*measure);
    }
    for (const WalkMeasure measure : measures_of(topic)) {
      const Outcome kept = scrapped(measure);
      if (!kept) return kept;
    }
    if (!cursor_.at_break()) return cursor_.refused("this is not understood", "say which it was");
    return Done{};
  }

  Outcome scrapped(WalkMeasure measure) {
    WalkMeasured said;
    said.measure = measure;
    said.scrapped = true;
    return keep(std::move(said));
  }

  Outcome length_kept(std::optional<WalkMeasure> measure, const Amount& said) {
    if (!measure) {
      return cursor_.refused_at(said.place, "of what is that the measure?",
                                "say it in front: cubicles, passage, turn, footbath");
    }
    if (said.unit) {
      const auto mm = mm_in(*said.unit);
      if (mm) return number_kept(*measure, said, *mm);
      return cursor_.refused_at(said.place, "that is no length", "say m, cm or mm");
    }
    constexpr std::int64_t mm_in_a_cm = 10;
    constexpr std::int64_t mm_in_a_metre = 1000;
    const auto as_cm = said.whole(mm_in_a_cm);
    if (as_cm && is_measured(*measure, *as_cm)) return number_kept(*measure, said, mm_in_a_cm);
    const auto as_m = said.whole(mm_in_a_metre);
    const bool is_metres = as_m && is_measured(*measure, *as_m);
    const std::string number = said.as_said();
    return cursor_.refused_at(
        said.place, quoted(number) + " needs its unit",
        is_metres ? "say " + quoted(number + " m") : "say it with m, cm or mm");
  }

  Outcome number_kept(WalkMeasure measure, const Amount& said, std::int64_t factor) {
    const WalkMeasureFacts& facts = facts_of(measure);
    const auto value = said.whole(factor);
    if (!value) {
      return cursor_.refused_at(said.place,
                                "nobody measures " + std::string(facts.name) +
                                    " so "
                                    "finely",
                                "round it");
    }
    if (!is_measured(measure, *value)) {
      return cursor_.impossible_at(said.place,
                                   std::string(facts.name) + " lies between " +
                                       said_value(facts.unit, facts.least) + " and " +
                                       said_value(facts.unit, facts.most),
                                   "say it again with its unit");
    }
    WalkMeasured measured;
    measured.measure = measure;
    measured.value = static_cast<std::int32_t>(*value);
    return keep(std::move(measured));
  }

  Outcome keep(WalkMeasured measured) {
    measured.mends = mends_ && !measured.scrapped;
    line_.measured.push_back(std::move(measured));
    return Done{};
  }

  FarmCursor cursor_;
  WalkLine line_;
  std::optional<FarmTopic> topic_;
  std::size_t topic_began_ = 0;  // where its measures begin in the line
  std::size_t topic_place_ = 0;
  bool mends_ = false;
};

}  // namespace

Result<WalkLine> read_walk_line(std::string_view text, const Language& language, int line_number) {
  const std::string_view line = trimmed(text);
  if (line.empty() || line.front() == '#') return WalkLine{};
  return WalkReader(text, language, line_number).read();
}

}  // namespace evenclaw
