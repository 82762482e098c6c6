#include <algorithm>
#include <iterator>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/text.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/parser.hpp"

namespace evenclaw {

namespace {

constexpr int offered_days[] = {3, 7, 14, 28, 42};

// The phrase that is printed for its meaning; the others are understood, not offered.
bool is_printed(const Phrase& phrase, const Language& language) {
  return language.say(phrase.kind, phrase.value) == phrase.words;
}

// The name where something else is said; the code where the name itself is said, if it has one.
std::string meaning_of(const Phrase& phrase) {
  if (phrase.kind != TermKind::lesion) return {};
  const auto lesion = static_cast<Lesion>(phrase.value);
  const LesionFacts& facts = facts_of(lesion);
  if (facts.name != phrase.words) return std::string(facts.name);
  const bool has_code = facts.code_known != CodeKnown::none;
  return has_code ? std::string(word_of(lesion)) : std::string();
}

const Finding* last_finding(const Line& line) {
  const Finding* finding = nullptr;
  for (const Clause& each : line.clauses) {
    const auto* clause = std::get_if<TurnClause>(&each);
    if (clause == nullptr || std::holds_alternative<FeetNamed>(*clause)) finding = nullptr;
    if (clause == nullptr) continue;
    if (const auto* said = std::get_if<FindingSaid>(clause)) finding = &said->finding;
  }
  return finding;
}

// The zone of the place that was said last: "heel" is zone 6, of a white line lesion zone 3.
std::string zone_said_last(const Reading& reading) {
  if (reading.spot != Spot::finding) return {};
  const Finding* finding = last_finding(reading.line);
  if (finding == nullptr || !finding->zone) return {};
  return "zone " + std::to_string(*finding->zone);
}

bool names_a_place(TermKind kind) {
  return kind == TermKind::place || kind == TermKind::white_line_place ||
         kind == TermKind::white_line_side;
}

// A block goes on the partner of the claw that hurts.
std::optional<Claw> good_claw(const Reading& reading) {
  const Finding* finding = last_finding(reading.line);
  const bool is_block = reading.spot == Spot::block;
  if (!is_block || finding == nullptr || facts_of(finding->lesion).hurts != Hurts::yes) {
    return std::nullopt;
  }
  const Claw good = partner(finding->claw);
  return good == finding->claw ? std::nullopt : std::optional<Claw>(good);
}

// "LH outside" may answer what was asked; offered is what makes a finding of it.
bool has_details_alone(const Reading& reading) {
  const std::vector<Clause>& clauses = reading.line.clauses;
  return std::any_of(clauses.begin(), clauses.end(), [](const Clause& each) {
    const auto* clause = std::get_if<TurnClause>(&each);
    const auto* detail = clause == nullptr ? nullptr : std::get_if<DetailCorrected>(clause);
    return detail != nullptr && detail->completes;
  });
}

class Suggester {
 public:
  Suggester(std::string_view half_line, const LineContext& context, const Language& language)
      : half_(half_line), context_(context), language_(language) {}

  std::vector<Suggestion> suggestions() {
    complete_phrase();
    for (const Reading& reading : readings_of(half_)) offer_after(reading);
    return std::move(out_);
  }

 private:
  // "white" may become "white line abscess": the words that are still to come.
  void complete_phrase() {
    const std::vector<Token> tokens = tokens_of(half_);
    std::string tail;
    for (std::size_t words = 1; words <= tokens.size(); ++words) {
      const Token& token = tokens[tokens.size() - words];
      if (token.kind != TokenKind::word) return;
      tail = tail.empty() ? token.folded : token.folded + " " + tail;
      offer_rest_of_phrases(tail, words);
    }
  }

  void offer_rest_of_phrases(const std::string& tail, std::size_t words) {
    for (std::size_t i = 0; i < language_.phrases().size(); ++i) {
      const Phrase& phrase = language_.phrases()[i];
      const bool goes_on = language_.folded(i).compare(0, tail.size() + 1, tail + " ") == 0;
      if (!goes_on || !is_printed(phrase, language_)) continue;
      const std::vector<Token> parts = tokens_of(phrase.words);
      offer(phrase.words.substr(parts[words].offset), phrase.kind, meaning_of(phrase));
    }
  }

  void offer_after(const Reading& reading) {
    const SpotFacts& facts = facts_of(reading.spot);
    if (facts.text != TextExtent::none) return;
    if (const auto claw = good_claw(reading)) {
      offer(language_.say(TermKind::claw, *claw), TermKind::claw, "the good claw");
    }
    for (const TermKind kind : kinds_after(reading.spot)) offer_kind(kind, reading.spot);
  }

  void offer_kind(TermKind kind, Spot spot) {
    if (kind == TermKind::conjunction && !joins_more(spot)) return;
    const bool is_time = spot == Spot::time || spot == Spot::see_again || spot == Spot::watch ||
                         spot == Spot::withheld;
    if (kind == TermKind::number && is_time) offer_times();
    for (const Phrase& phrase : language_.phrases()) {
      const bool fits = phrase.kind == kind && is_printed(phrase, language_);
      if (fits) offer(phrase.words, phrase.kind, meaning_in_time(phrase));
    }
  }

  // Between feet and numbers a joining word leads on; elsewhere it is understood and helps nobody.
  static bool joins_more(Spot spot) {
    constexpr Spot joining[] = {Spot::feet,        Spot::lame_feet, Spot::today_feet,
                                Spot::news_number, Spot::news_feet, Spot::news_said};
    return std::find(std::begin(joining), std::end(joining), spot) != std::end(joining);
  }

  [[nodiscard]] std::string meaning_in_time(const Phrase& phrase) const {
    if (phrase.kind != TermKind::weekday) return meaning_of(phrase);
    return to_text(next_weekday(context_.visit_day, static_cast<Weekday>(phrase.value)));
  }

  void offer_times() {
    for (const int days : offered_days) {
      const std::string_view unit = language_.say(TermKind::day_unit);
      offer(std::to_string(days) + std::string(unit), TermKind::number,
            to_text(context_.visit_day + days));
    }
  }

  // Words are offered only when the line reads with them; so what the tables allow but the facts
  // forbid (a stage on an ulcer) is never offered.
  void offer(std::string_view words, TermKind kind, std::string meaning) {
    if (!offered_.insert(std::string(words)).second) return;
    const std::string line = std::string(half_) + " " + std::string(words);
    for (const Reading& reading : readings_of(line)) {
      if (!leads_somewhere(reading, line)) continue;
      if (names_a_place(kind)) meaning = zone_said_last(reading);
      out_.push_back({std::string(words), std::move(meaning)});
      return;
    }
  }

  // A detail held for a lesion to come is a dead end when no lesion, act or measure can follow it:
  // a stage behind "outside".
  [[nodiscard]] bool leads_somewhere(const Reading& reading, const std::string& line) const {
    const bool is_held = reading.spot == Spot::loose || reading.spot == Spot::loose_place;
    if (!is_held || (!reading.missing && !has_details_alone(reading))) return true;
    const auto takes_them = [this, &line](const Phrase& phrase) {
      if (!can_take_details(phrase.kind) || !is_printed(phrase, language_)) return false;
      const std::vector<Reading> readings = readings_of(line + " " + std::string(phrase.words));
      return std::any_of(readings.begin(), readings.end(),
                         [](const Reading& then) { return !has_details_alone(then); });
    };
    return std::any_of(language_.phrases().begin(), language_.phrases().end(), takes_them);
  }

  static bool can_take_details(TermKind kind) {
    return kind == TermKind::lesion || kind == TermKind::block_act || kind == TermKind::block_of ||
           kind == TermKind::measure;
  }

  // The ways to understand the line in which nothing is wrong so far.
  [[nodiscard]] std::vector<Reading> readings_of(std::string_view line) const {
    std::vector<Reading> readings;
    for (const LineSort sort : possible_sorts(line, language_)) {
      Reading reading = read_as(sort, line, context_, language_, Telling::briefly);
      if (reading.faults.empty()) readings.push_back(std::move(reading));
    }
    return readings;
  }

  std::string_view half_;
  const LineContext& context_;
  const Language& language_;
  std::set<std::string> offered_;
  std::vector<Suggestion> out_;
};

}  // namespace

std::vector<Suggestion> what_may_follow(std::string_view half_line, const LineContext& context,
                                        const Language& language) {
  half_line = without_line_end(half_line);
  const bool is_comment = is_comment_or_blank(half_line) && !trimmed(half_line).empty();
  if (is_comment || not_a_line(half_line, context)) return {};
  return Suggester(half_line, context, language).suggestions();
}

}  // namespace evenclaw
