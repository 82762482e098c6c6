#include "core/api/recording/refused_feet.hpp"

#include <algorithm>
#include <cstddef>
#include <span>
#include <vector>

#include "core/base/edit_distance.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/term.hpp"
#include "core/trade/call_line/trap.hpp"
#include "core/trade/not_called.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

bool names_feet(TermKind kind) {
  return kind == TermKind::foot || kind == TermKind::feet;
}

/// Words that are said of a foot and of nothing else.
bool is_said_of_a_foot(TermKind kind) {
  constexpr TermKind kinds[] = {
      TermKind::claw,       TermKind::lesion,      TermKind::place,     TermKind::white_line_place,
      TermKind::degree,     TermKind::stage,       TermKind::block_act, TermKind::wrap_act,
      TermKind::opened_act, TermKind::product_act, TermKind::trimmed,   TermKind::block_of,
      TermKind::dd_in_it};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

/// "Wrap off", "block still on": it tells of last time and nothing of what is found today.
bool tells_of_last_time(const Phrase& phrase) {
  const bool is_fixture = phrase.kind == TermKind::block_act || phrase.kind == TermKind::wrap_act;
  if (!is_fixture) return false;
  const std::optional<FixtureSaid> said = fixture_said(static_cast<ActionKind>(phrase.value));
  return said && !(is_on_after(said->step) && said->step != FixtureStep::left_on);
}

/// The words from `at` on, as many as the phrase has.
std::string same_many_words(std::span<const Token> tokens, std::size_t at,
                            std::string_view phrase) {
  std::size_t count = 1 + static_cast<std::size_t>(std::count(phrase.begin(), phrase.end(), ' '));
  std::string text;
  for (; count > 0 && at < tokens.size(); --count, ++at) {
    if (tokens[at].kind != TokenKind::word) break;
    text += (text.empty() ? "" : " ") + tokens[at].folded;
  }
  return text;
}

/// The feet whose words are nearest, when they are near enough for a slip.
FootSet feet_near(std::span<const Token> tokens, std::size_t at, const Language& language) {
  constexpr std::size_t letters_for_a_second_slip = 8;
  FootSet feet;
  std::size_t nearest = 0;
  for (std::size_t i = 0; i < language.phrases().size(); ++i) {
    const Phrase& phrase = language.phrases()[i];
    if (!names_feet(phrase.kind)) continue;
    const std::string& known = language.folded(i);
    const std::size_t allowed = known.size() < letters_for_a_second_slip ? 1 : 2;
    const std::size_t distance = edit_distance(same_many_words(tokens, at, known), known);
    if (distance > allowed || (nearest > 0 && distance > nearest)) continue;
    if (distance < nearest) feet = {};
    nearest = distance;
    feet.add(feet_in(phrase));
  }
  return feet;
}

class FeetReader {
 public:
  FeetReader(std::vector<Token> tokens, const Language& language)
      : tokens_(std::move(tokens)), language_(language) {}

  RefusedFeet read() {
    while (at_ < tokens_.size()) read_one();
    if (!found_.named.empty()) found_.one_of = {};
    found_.any_foot = of_a_foot_ && found_.named.empty() && found_.one_of.empty();
    return found_;
  }

 private:
  void read_one() {
    if (is_part_of_a_word(tokens_, at_, language_)) {
      at_ += 2;  // "4l3" is a number, and its letters are no slip of a foot
      return;
    }
    const Language::Match match = language_.longest_match(tokens_, at_);
    if (match.phrase == nullptr) {
      if (is_at_head_ && tokens_[at_].kind == TokenKind::word && !after_lame_) {
        found_.one_of.add(feet_near(tokens_, at_, language_));
      }
      is_at_head_ = tokens_[at_].kind != TokenKind::word;
      after_lame_ = after_lame_ && tokens_[at_].kind == TokenKind::conjunction;
      ++at_;
      return;
    }
    const TermKind kind = match.phrase->kind;
    if (names_feet(kind) && !after_lame_) found_.named.add(feet_in(*match.phrase));
    of_a_foot_ = of_a_foot_ || (is_said_of_a_foot(kind) && !tells_of_last_time(*match.phrase));
    const bool goes_on =
        names_feet(kind) || kind == TermKind::time_in || kind == TermKind::conjunction;
    after_lame_ = kind == TermKind::lame || (after_lame_ && goes_on);
    is_at_head_ = kind == TermKind::conjunction || kind == TermKind::correction;
    at_ += match.word_count;
  }

  std::vector<Token> tokens_;
  const Language& language_;
  RefusedFeet found_;
  std::size_t at_ = 0;
  bool is_at_head_ = true;  // where a foot is named: at the start, behind a number or a separator
  bool after_lame_ = false;
  bool of_a_foot_ = false;
};

}  // namespace

RefusedFeet feet_in_refused(std::string_view text, const Language& language) {
  constexpr std::size_t longest_line_bytes = 4096;
  if (!is_utf8(text) || text.size() > longest_line_bytes) return {{}, {}, true};
  return FeetReader(tokens_of(text), language).read();
}

RefusedLine::RefusedLine(std::string_view line, FootSet feet_named, const Language& language)
    : text(trimmed(line)), feet(feet_in_refused(line, language)), spoken_of(feet_named) {
  if (!feet.any_foot || spoken_of.empty()) return;
  feet.any_foot = false;
  feet.named = spoken_of;
}

FootSet RefusedLine::left_open(const Turn& turn, FootSet todays_feet) const {
  FootSet open = feet.named;
  const bool was_mended = std::any_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
    return feet.one_of.has(foot) && find_foot(turn, foot) != nullptr;
  });
  if (!was_mended) open.add(feet.one_of);
  if (feet.any_foot && turn.rest_fine) open.add(todays_feet);
  for (const Foot foot : all_feet) {
    const FootCall* call = find_foot(turn, foot);
    if (call != nullptr && !is_only_named(*call)) open.remove(foot);
  }
  return open;
}

}  // namespace evenclaw
