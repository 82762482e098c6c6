// A second language made of the first by a rule: every letter stands for the one two places
// before it. No word is what it was, so code that knows an English word by heart fails in it.
#pragma once

#include <deque>
#include <string>
#include <string_view>
#include <vector>

#include "core/trade/call_line/language.hpp"

namespace evenclaw::enciphered {

constexpr int letters = 26;
// With twenty-four no word of the table or of the days in data/ becomes a word that records hold.
constexpr int places = 24;

inline std::string moved(std::string_view text, int by) {
  std::string moved(text);
  for (char& c : moved) {
    const bool is_small = c >= 'a' && c <= 'z';
    const bool is_capital = c >= 'A' && c <= 'Z';
    if (!is_small && !is_capital) continue;
    const char first = is_small ? 'a' : 'A';
    c = static_cast<char>(first + (c - first + by) % letters);
  }
  return moved;
}

/// The English words as they are said in the second language. Of a slip it makes the same slip.
inline std::string said(std::string_view english) {
  return moved(english, places);
}

/// And back.
inline std::string in_english(std::string_view said) {
  return moved(said, letters - places);
}

class Words {
 public:
  explicit Words(const Language& from) {
    for (const Phrase& phrase : from.phrases()) {
      phrases_.push_back({kept(phrase.words), phrase.kind, phrase.value, phrase.plural});
    }
    for (const std::string_view word : from.words_beside().how_done) {
      how_done_.push_back(kept(word));
    }
    for (const std::string_view word : from.words_beside().number_leads) {
      number_leads_.push_back(kept(word));
    }
    for (const ShortWord& each : from.words_beside().short_words) {
      short_words_.push_back({kept(each.ending), kept(each.word)});
    }
    for (const std::string_view word : from.words_beside().fillers) fillers_.push_back(kept(word));
    for (const std::string_view word : from.words_beside().articles) {
      articles_.push_back(kept(word));
    }
    for (const std::string_view word : from.words_beside().asides) asides_.push_back(kept(word));
    for (const ShortClaw& each : from.words_beside().short_claws) {
      short_claws_.push_back({kept(each.word), each.claw});
    }
  }

  [[nodiscard]] Language language() const {
    return {"enciphered",
            phrases_,
            {how_done_, number_leads_, short_words_, fillers_, articles_, asides_, short_claws_}};
  }

 private:
  std::string_view kept(std::string_view english) { return texts_.emplace_back(said(english)); }

  std::deque<std::string> texts_;  // views into it stay good
  std::vector<Phrase> phrases_;
  std::vector<std::string_view> how_done_;
  std::vector<std::string_view> number_leads_;
  std::vector<ShortWord> short_words_;
  std::vector<ShortClaw> short_claws_;
  std::vector<std::string_view> fillers_;
  std::vector<std::string_view> articles_;
  std::vector<std::string_view> asides_;
};

inline const Language& language() {
  static const Words words(english());
  static const Language language = words.language();
  return language;
}

}  // namespace evenclaw::enciphered
