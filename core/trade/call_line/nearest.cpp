#include "core/trade/call_line/nearest.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>
#include <limits>

#include "core/base/edit_distance.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t longest_phrase_words = 5;
constexpr std::size_t far_away = std::numeric_limits<std::size_t>::max();

struct Window {
  std::size_t first;
  std::size_t count;
  std::string text;
};

// Runs of words that hold the unknown one.
std::vector<Window> windows_around(std::span<const Token> tokens, std::size_t unknown,
                                   std::size_t earliest) {
  std::vector<Window> windows;
  for (std::size_t first = earliest; first <= unknown; ++first) {
    std::string text;
    for (std::size_t at = first; at < tokens.size() && at < first + longest_phrase_words; ++at) {
      if (tokens[at].kind != TokenKind::word) break;
      if (!text.empty()) text += ' ';
      text += tokens[at].folded;
      if (at >= unknown) windows.push_back({first, at + 1 - first, text});
    }
  }
  return windows;
}

std::size_t slips_allowed(std::size_t letters) {
  return std::max<std::size_t>(1, letters / 3);
}

std::uint32_t letters_of(std::string_view words) {
  std::uint32_t letters = 0;
  for (const char c : words) letters |= 1U << (static_cast<unsigned char>(c) % 32U);
  return letters;
}

/// Words and the letters they are made of, which many are compared by.
struct Spelt {
  const std::string& words;
  std::uint32_t letters;

  explicit Spelt(const std::string& said) : words(said), letters(letters_of(said)) {}
};

// Each letter that only one of the texts has costs at least one edit. That, like the difference in
// length, is quick to see and spares most of the work.
std::size_t fewest_edits(const Spelt& a, const Spelt& b) {
  const std::size_t of_a = a.words.size();
  const std::size_t of_b = b.words.size();
  const std::size_t gap = of_a > of_b ? of_a - of_b : of_b - of_a;
  const int alone =
      std::max(std::popcount(a.letters & ~b.letters), std::popcount(b.letters & ~a.letters));
  return std::max(gap, static_cast<std::size_t>(alone));
}

// The distance, or far_away when it is more than what still counts as a slip or more than `most`.
std::size_t distance_if_near(const Spelt& typed, const Spelt& known, std::size_t most = far_away) {
  const std::size_t slips = slips_allowed(std::min(typed.words.size(), known.words.size()));
  const std::size_t allowed = std::min(slips, most);
  if (fewest_edits(typed, known) > allowed) return far_away;
  const std::size_t distance = edit_distance(typed.words, known.words);
  return distance <= allowed ? distance : far_away;
}

/// That blood was drawn is never guessed from "picked" or "licked": only a slip behind its first
/// letter is one of "nicked".
bool may_be_a_slip_of(const Phrase& phrase, std::string_view known, std::string_view typed) {
  return phrase.kind != TermKind::nicked || known.substr(0, 1) == typed.substr(0, 1);
}

std::array<bool, term_kind_count> wanted(std::span<const TermKind> kinds) {
  std::array<bool, term_kind_count> is_wanted{};
  for (const TermKind kind : kinds) is_wanted[static_cast<std::size_t>(kind)] = true;
  return is_wanted;
}

}  // namespace

Nearest nearest_phrase(std::span<const Token> tokens, std::size_t unknown, std::size_t earliest,
                       std::span<const TermKind> kinds, const Language& language) {
  Nearest best;
  best.first_token = unknown;
  const std::vector<Window> windows = windows_around(tokens, unknown, earliest);
  std::vector<Spelt> typed;
  typed.reserve(windows.size());
  for (const Window& window : windows) typed.emplace_back(window.text);
  const auto is_wanted = wanted(kinds);
  // The slips are in the unknown word, the words beside it are known: "blk inside" is not "the
  // inside".
  const std::size_t most = std::max<std::size_t>(1, tokens[unknown].folded.size() / 2);
  for (std::size_t i = 0; i < language.phrases().size(); ++i) {
    const Phrase& phrase = language.phrases()[i];
    if (!is_wanted[static_cast<std::size_t>(phrase.kind)]) continue;
    const Spelt known(language.folded(i));
    for (std::size_t at = 0; at < windows.size(); ++at) {
      const Window& window = windows[at];
      if (!may_be_a_slip_of(phrase, known.words, window.text)) continue;
      const std::size_t distance =
          distance_if_near(typed[at], known, std::min(most, best.distance));
      // Of two equally near ones the longer explains more of what was typed.
      const bool is_nearer = distance < best.distance ||
                             (distance == best.distance && window.count > best.token_count);
      if (distance == far_away || !is_nearer) continue;
      best = {phrase.words, window.first, window.count, distance};
    }
  }
  return best;
}

bool is_another_word(std::string_view said, const Nearest& near) {
  constexpr std::size_t longest_short_word = 6;
  const std::string typed = fold_case(said);
  const std::string known = fold_case(near.words);
  return near.token_count == 1 && typed.size() == known.size() &&
         typed.size() <= longest_short_word && typed.size() > 3 && typed.front() != known.front() &&
         typed.substr(1) == known.substr(1);
}

std::string with_slips_mended(std::string_view line, std::span<const TermKind> kinds,
                              const Language& language) {
  const std::vector<Token> tokens = spoken_tokens(line, language);
  std::string mended;
  std::size_t kept_to = 0;  // in bytes of the line
  for (std::size_t at = 0; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    const bool is_unknown = match.phrase == nullptr && tokens[at].kind == TokenKind::word &&
                            !language.fills(tokens[at].folded);
    const Nearest near = is_unknown ? nearest_phrase(tokens, at, at, kinds, language) : Nearest{};
    if (near.words.empty() || is_another_word(tokens[at].folded, near)) {
      at += std::max<std::size_t>(match.word_count, 1);
      continue;
    }
    const Token& last = tokens[at + near.token_count - 1];
    mended += line.substr(kept_to, tokens[at].offset - kept_to);
    mended += near.words;
    kept_to = last.offset + last.length;
    at += near.token_count;
  }
  return mended + std::string(line.substr(kept_to));
}

std::string meant_by(const Nearest& near) {
  return near.words.empty() ? "" : "did you mean \"" + std::string(near.words) + "\"?";
}

bool looks_like_a_slip(const Token& word, const Language& language) {
  const Spelt typed(word.folded);
  for (std::size_t i = 0; i < language.phrases().size(); ++i) {
    if (language.phrases()[i].kind == TermKind::number_word) continue;
    if (distance_if_near(typed, Spelt(language.folded(i))) != far_away) return true;
  }
  return false;
}

}  // namespace evenclaw
