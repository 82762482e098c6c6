#include "core/trade/farm_line/scoring_line.hpp"

#include <cstddef>
#include <utility>

#include "core/base/quotation.hpp"
#include "core/base/text.hpp"
#include "core/trade/farm_line/farm_cursor.hpp"

namespace evenclaw {

namespace {

// As long as the longest number on the call line, an electronic one.
constexpr std::size_t most_digits_of_a_cow = 15;
constexpr std::size_t most_digits_of_a_count = 4;

std::string both_scales(const Language& language) {
  std::string words;
  for (const MobilityScaleFacts& facts : all_mobility_scales()) {
    words += (words.empty() ? "" : " or ") + quoted(std::string(say(FarmWord::scale, language)) +
                                                    ' ' + said_scale(facts.scale, language));
  }
  return words;
}

class ScoringReader {
 public:
  ScoringReader(std::string_view text, std::optional<MobilityScale> scale, const Language& language,
                int line_number)
      : cursor_(text, language, line_number), scale_(scale) {}

  Result<ScoringLine> read() {
    if (const auto fault = cursor_.unreadable()) return *fault;
    cursor_.skip_separators();
    while (!cursor_.at_end()) {
      const Outcome read = clause();
      if (!read) return read.faults();
      if (!cursor_.at_break()) {
        return cursor_.refused("this is not understood behind what was said",
                               "part what is said by a comma");
      }
      cursor_.skip_separators();
    }
    return std::move(line_);
  }

 private:
  Outcome clause() {
    if (cursor_.take(FarmWord::scale)) return scale();
    if (cursor_.take(FarmWord::watched)) return watched();
    if (cursor_.take(FarmWord::group)) return animals();
    if (cursor_.take(FarmWord::scrap)) return scrapped();
    const bool mends = cursor_.take(FarmWord::no);
    if (mends) cursor_.skip_separators();
    if (cursor_.at_number()) return number(mends);
    return cursor_.refused(
        mends ? "behind \"no\" stands what holds instead" : "this is not understood",
        "say the number and the score: \"412 2\"; or how many at which: \"40 " +
            std::string(say(FarmWord::at, cursor_.language())) + " 0\"");
  }

  Outcome scale() {
    const std::size_t place = cursor_.place();
    const std::optional<int> lowest = cursor_.take_whole(1);
    if (!cursor_.take(FarmWord::to)) cursor_.skip_separators();
    const std::optional<int> highest = cursor_.take_whole(1);
    for (const MobilityScaleFacts& facts : all_mobility_scales()) {
      if (lowest != facts.lowest || highest != facts.highest) continue;
      if (scale_ && *scale_ != facts.scale) {
        return cursor_.impossible_at(place, "one scoring has one scale",
                                     "score on the other scale in a scoring of its own");
      }
      scale_ = facts.scale;
      line_.clauses.emplace_back(ScaleSaid{facts.scale});
      return Done{};
    }
    return cursor_.refused_at(place, "which scale is it?",
                              "say " + both_scales(cursor_.language()));
  }

  Outcome watched() {
    const auto scale = scale_said(cursor_.place());
    if (!scale) return scale.faults();
    static_cast<void>(cursor_.take(FarmWord::at));
    std::string place = cursor_.take_words();
    if (place.empty()) return cursor_.refused("where were they watched?", "say the place");
    line_.clauses.emplace_back(WatchedSaid{std::move(place)});
    return Done{};
  }

  Outcome animals() {
    cursor_.take_colon();
    std::string words = cursor_.take_words();
    if (words.empty()) return cursor_.refused("which animals?", "say how the group is called");
    line_.clauses.emplace_back(AnimalsSaid{std::move(words)});
    return Done{};
  }

  Outcome number(bool mends) {
    const std::size_t place = cursor_.place();
    std::optional<std::string> digits = cursor_.take_digits(most_digits_of_a_cow);
    if (!digits) {
      return cursor_.refused("this is not the number of a cow", "a cow is digits only");
    }
    if (cursor_.take(FarmWord::present)) return present(place, *digits);
    if (cursor_.take(FarmWord::at)) return count(place, *digits, mends);
    return cow(std::move(*digits), mends);
  }

  /// "scrap 412", "scrap 40 at 0".
  Outcome scrapped() {
    const std::size_t place = cursor_.place();
    std::optional<std::string> digits = cursor_.take_digits(most_digits_of_a_cow);
    if (!digits) return cursor_.refused("what was not so?", "say the number: \"scrap 412\"");
    if (cursor_.take(FarmWord::at)) {
      const Outcome counted = count(place, *digits, true);
      if (counted) std::get<CountScored>(line_.clauses.back()).animals = 0;
      return counted;
    }
    const auto scale = scale_said(place);
    if (!scale) return scale.faults();
    CowScored scored;
    scored.number = *std::move(digits);
    scored.mends = true;
    scored.scrapped = true;
    line_.clauses.emplace_back(std::move(scored));
    return Done{};
  }

  Result<MobilityScale> scale_said(std::size_t place) {
    if (scale_) return *scale_;
    return cursor_.refused_at(place, "on which scale is that?",
                              "say it first: " + both_scales(cursor_.language()));
  }

  Result<std::int32_t> animals_of(std::size_t place, const std::string& digits) {
    const auto animals = whole_number(digits, most_digits_of_a_count);
    if (animals) return *animals;
    return cursor_.impossible_at(place, "no farm has so many animals", "say the count again");
  }

  Outcome present(std::size_t place, const std::string& digits) {
    const auto scale = scale_said(place);
    if (!scale) return scale.faults();
    const auto animals = animals_of(place, digits);
    if (!animals) return animals.faults();
    line_.clauses.emplace_back(PresentSaid{*animals});
    return Done{};
  }

  Outcome count(std::size_t place, const std::string& digits, bool mends) {
    const auto animals = animals_of(place, digits);
    if (!animals) return animals.faults();
    if (*animals == 0 && !mends) {
      return cursor_.refused_at(place, "nobody is counted so",
                                "leave it out; to take a count back: \"scrap 40 at 0\"");
    }
    const auto score = score_here();
    if (!score) return score.faults();
    line_.clauses.emplace_back(CountScored{*animals, *score, mends});
    return Done{};
  }

  Outcome cow(std::string number, bool mends) {
    CowScored scored;
    scored.number = std::move(number);
    scored.mends = mends;
    if (!cursor_.take(FarmWord::not_scored)) {
      const auto score = score_here();
      if (!score) return score.faults();
      scored.score = *score;
      cursor_.take(FarmWord::lame);
      scored.feet = cursor_.take_feet();
      cursor_.take(FarmWord::lame);
    }
    line_.clauses.emplace_back(std::move(scored));
    return Done{};
  }

  Result<std::int32_t> score_here() {
    const auto said = scale_said(cursor_.place());
    if (!said) return said.faults();
    const MobilityScaleFacts& facts = facts_of(*scale_);
    const std::size_t place = cursor_.place();
    const std::optional<int> score = cursor_.take_whole(most_digits_of_a_count);
    const std::string scale = said_scale(*scale_, cursor_.language());
    if (!score) {
      return cursor_.refused("a score is missing, a whole number from " + scale,
                             "say \"412 2\"; who was there and not scored: \"412 " +
                                 std::string(say(FarmWord::not_scored, cursor_.language())) + "\"");
    }
    if (*score >= facts.lowest && *score <= facts.highest) return *score;
    return cursor_.impossible_at(place, "the scale goes from " + scale, "say a score of it");
  }

  FarmCursor cursor_;
  std::optional<MobilityScale> scale_;
  ScoringLine line_;
};

}  // namespace

std::string said_scale(MobilityScale scale, const Language& language) {
  const MobilityScaleFacts& facts = facts_of(scale);
  return std::to_string(facts.lowest) + ' ' + std::string(say(FarmWord::to, language)) + ' ' +
         std::to_string(facts.highest);
}

Result<ScoringLine> read_scoring_line(std::string_view text, std::optional<MobilityScale> scale,
                                      const Language& language, int line_number) {
  const std::string_view line = trimmed(text);
  if (line.empty() || line.front() == '#') return ScoringLine{};
  return ScoringReader(text, scale, language, line_number).read();
}

}  // namespace evenclaw
