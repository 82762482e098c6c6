#include "core/trade/call_line/nearest.hpp"

#include <algorithm>
#include <limits>

#include "core/base/edit_distance.hpp"

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

std::size_t slips_allowed(const std::string& words) {
  return std::max<std::size_t>(1, words.size() / 3);
}

// Words of very different length cannot be near; that spares most of the work.
std::size_t distance_if_near(const std::string& typed, const std::string& known) {
  const std::size_t allowed = slips_allowed(
      std::min(typed, known, [](const auto& a, const auto& b) { return a.size() < b.size(); }));
  const std::size_t gap =
      typed.size() > known.size() ? typed.size() - known.size() : known.size() - typed.size();
  if (gap > allowed) return far_away;
  const std::size_t distance = edit_distance(typed, known);
  return distance <= allowed ? distance : far_away;
}

}  // namespace

Nearest nearest_phrase(std::span<const Token> tokens, std::size_t unknown, std::size_t earliest,
                       std::span<const TermKind> kinds, const Language& language) {
  Nearest best;
  best.first_token = unknown;
  const std::vector<Window> windows = windows_around(tokens, unknown, earliest);
  for (std::size_t i = 0; i < language.phrases().size(); ++i) {
    const Phrase& phrase = language.phrases()[i];
    if (std::find(kinds.begin(), kinds.end(), phrase.kind) == kinds.end()) continue;
    for (const Window& window : windows) {
      const std::size_t distance = distance_if_near(window.text, language.folded(i));
      // Of two equally near ones the longer explains more of what was typed.
      const bool is_nearer = distance < best.distance ||
                             (distance == best.distance && window.count > best.token_count);
      if (distance == far_away || !is_nearer) continue;
      best = {phrase.words, window.first, window.count, distance};
    }
  }
  return best;
}

bool looks_like_a_slip(const Token& word, const Language& language) {
  for (std::size_t i = 0; i < language.phrases().size(); ++i) {
    if (distance_if_near(word.folded, language.folded(i)) != far_away) return true;
  }
  return false;
}

}  // namespace evenclaw
