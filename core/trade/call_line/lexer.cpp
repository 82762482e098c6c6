#include "core/trade/call_line/lexer.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "core/base/ascii.hpp"
#include "core/base/date.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t digits_of_country = 3;  // of an electronic number
constexpr std::size_t digits_of_animal = 12;

constexpr std::string_view middle_dot = "\xC2\xB7";
constexpr std::string_view hard_space = "\xC2\xA0";
constexpr std::string_view en_dash = "\xE2\x80\x93";
constexpr std::size_t date_size = 10;  // 2026-10-09
constexpr std::string_view em_dash = "\xE2\x80\x94";
constexpr std::array<std::string_view, 4> quote_marks = {"\"", "\xE2\x80\x9C", "\xE2\x80\x9D",
                                                         "\xE2\x80\x9E"};

bool is_ascii_letter(char c) {
  return is_small_letter(c) || is_capital(c);
}

bool is_beyond_ascii(char c) {
  return static_cast<unsigned char>(c) >= 0x80;
}

std::size_t size_promised_by(char lead) {
  const auto byte = static_cast<unsigned char>(lead);
  if (byte < 0x80) return 1;
  if (byte < 0xE0) return 2;
  return byte < 0xF0 ? 3 : 4;
}

struct SpeltOut {
  std::string_view letter;  // in lower case
  std::string_view instead;
};

// How keyboards without these letters write them; who has them types either.
constexpr SpeltOut spelt_out_table[] = {
    {"\xC3\xA4", "ae"}, {"\xC3\xB6", "oe"}, {"\xC3\xBC", "ue"}, {"\xC3\x9F", "ss"}};

std::string spelt_out(std::string word) {
  for (const SpeltOut& row : spelt_out_table) {
    for (std::size_t at = word.find(row.letter); at != std::string::npos;
         at = word.find(row.letter, at)) {
      word.replace(at, row.letter.size(), row.instead);
    }
  }
  return word;
}

class Lexer {
 public:
  explicit Lexer(std::string_view line) : line_(line) {}

  std::vector<Token> tokens() {
    while (skip_spaces(), at_ < line_.size()) out_.push_back(next());
    return std::move(out_);
  }

 private:
  [[nodiscard]] bool here(std::string_view text) const {
    return line_.compare(at_, text.size(), text) == 0;
  }

  [[nodiscard]] char byte(std::size_t offset) const {
    return offset < line_.size() ? line_[offset] : '\0';
  }

  // Bytes that are no text may promise more than is there.
  [[nodiscard]] std::size_t character_size(std::size_t offset) const {
    return std::min(size_promised_by(byte(offset)), line_.size() - offset);
  }

  void skip_spaces() {
    while (at_ < line_.size()) {
      const std::size_t size = space_size();
      if (size == 0) return;
      at_ += size;
    }
  }

  [[nodiscard]] std::size_t space_size() const {
    const char c = byte(at_);
    if (c == ' ' || c == '\t' || c == '\r' || c == '\n') return 1;
    if (here(hard_space)) return hard_space.size();
    const bool joins_a_word = c == '-' && at_ > 0 && is_word_byte(at_ - 1) && is_letter(at_ + 1);
    return joins_a_word ? 1 : 0;
  }

  [[nodiscard]] bool is_letter(std::size_t offset) const {
    const char c = byte(offset);
    if (!is_beyond_ascii(c)) return is_ascii_letter(c);
    return !is_mark(offset);
  }

  [[nodiscard]] bool is_word_byte(std::size_t offset) const {
    return is_digit(byte(offset)) || is_ascii_letter(byte(offset)) || is_beyond_ascii(byte(offset));
  }

  [[nodiscard]] bool is_mark(std::size_t offset) const {
    for (const std::string_view mark :
         {middle_dot, hard_space, curly_apostrophe, en_dash, em_dash}) {
      if (line_.compare(offset, mark.size(), mark) == 0) return true;
    }
    return quote_size(offset) != 0;
  }

  [[nodiscard]] std::size_t quote_size(std::size_t offset) const {
    for (const std::string_view mark : quote_marks) {
      if (line_.compare(offset, mark.size(), mark) == 0) return mark.size();
    }
    return 0;
  }

  Token next() {
    if (is_date_here()) return taken(TokenKind::date, date_size);
    if (is_digit(byte(at_))) return number();
    if (is_letter(at_)) return word();
    if (quote_size(at_) != 0) {
      if (const std::optional<std::size_t> size = quoted_size()) {
        return taken(TokenKind::quoted, *size);
      }
    }
    return mark();
  }

  Token taken(TokenKind kind, std::size_t size) {
    Token token;
    token.kind = kind;
    token.offset = at_;
    token.length = size;
    at_ += size;
    return token;
  }

  /// Readers show an electronic number as country and animal, "276 000312312345". Nothing else that
  /// is said begins so.
  [[nodiscard]] bool is_parted_tag() const {
    const auto digits_from = [&](std::size_t from) {
      std::size_t end = from;
      while (is_digit(byte(end))) ++end;
      return end - from;
    };
    return at_ == line_.find_first_not_of(' ') && digits_from(at_) == digits_of_country &&
           byte(at_ + digits_of_country) == ' ' &&
           digits_from(at_ + digits_of_country + 1) == digits_of_animal;
  }

  // Digits in the form of a day that exists, and nothing more of a word behind them.
  [[nodiscard]] bool is_date_here() const {
    return !is_word_byte(at_ + date_size) && day_from_text(line_.substr(at_, date_size));
  }

  Token number() {
    std::size_t end = at_;
    if (is_parted_tag()) {
      Token tag = taken(TokenKind::number, digits_of_country + 1 + digits_of_animal);
      tag.folded = line_.substr(tag.offset, tag.length);
      tag.folded.erase(tag.folded.find(' '), 1);
      return tag;
    }
    while (is_digit(byte(end))) ++end;
    if (byte(end) == '.' && is_digit(byte(end + 1))) {
      ++end;
      while (is_digit(byte(end))) ++end;
    }
    return taken(TokenKind::number, end - at_);
  }

  Token word() {
    std::size_t end = at_;
    while (const std::size_t size = word_part(end)) end += size;
    Token token = taken(TokenKind::word, end - at_);
    token.folded = folded_word(line_.substr(token.offset, token.length));
    return token;
  }

  // Bytes of what continues a word: a letter, a digit, an apostrophe before a letter, or the point
  // in "m4.1".
  [[nodiscard]] std::size_t word_part(std::size_t offset) const {
    if (is_digit(byte(offset))) return 1;
    if (is_letter(offset)) return character_size(offset);
    if (byte(offset) == '\'' && is_letter(offset + 1)) return 1;
    if (line_.compare(offset, curly_apostrophe.size(), curly_apostrophe) == 0 &&
        is_letter(offset + curly_apostrophe.size())) {
      return curly_apostrophe.size();
    }
    const bool is_point = byte(offset) == '.' && offset > at_ && is_digit(byte(offset - 1)) &&
                          is_digit(byte(offset + 1));
    return is_point ? 1 : 0;
  }

  // From the opening to the closing quote; nothing when it is never closed.
  // Straight quotes may hold curly ones, since printing always uses straight ones.
  [[nodiscard]] std::optional<std::size_t> quoted_size() const {
    const bool is_straight = byte(at_) == '"';
    std::size_t offset = at_ + quote_size(at_);
    while (offset < line_.size()) {
      const std::size_t size = quote_size(offset);
      if (size == 0 || (is_straight && byte(offset) != '"')) {
        ++offset;
        continue;
      }
      const bool is_doubled = byte(offset) == '"' && byte(offset + 1) == '"';
      if (!is_doubled) return offset + size - at_;
      offset += 2;
    }
    return std::nullopt;
  }

  Token mark() {
    if (here(middle_dot)) return taken(TokenKind::strong, middle_dot.size());
    if (here(en_dash) || here(em_dash)) return taken(TokenKind::comma, en_dash.size());
    switch (byte(at_)) {
      case ',':
      case '-':
        return taken(TokenKind::comma, 1);
      case ':':
        return taken(TokenKind::colon, 1);
      case ';':
      case '.':
        return taken(TokenKind::strong, 1);
      case '&':
      case '+':
      case '/':
        return taken(TokenKind::conjunction, 1);
      case '?':
        return taken(TokenKind::doubt, 1);
      default:
        return taken(TokenKind::stray, character_size(at_));
    }
  }

  std::string_view line_;
  std::size_t at_ = 0;
  std::vector<Token> out_;
};

}  // namespace

std::vector<Token> tokens_of(std::string_view line) {
  return Lexer(line).tokens();
}

std::string folded_word(std::string_view word) {
  std::string kept;
  for (std::size_t at = 0; at < word.size(); ++at) {
    if (word[at] == '\'') continue;
    if (word.compare(at, curly_apostrophe.size(), curly_apostrophe) == 0) {
      at += curly_apostrophe.size() - 1;
      continue;
    }
    kept += word[at];
  }
  return spelt_out(fold_case(kept));
}

std::string unquoted(std::string_view quoted) {
  const std::size_t opening = quoted.front() == '"' ? 1 : 3;
  const std::size_t closing = quoted.back() == '"' ? 1 : 3;
  std::string words;
  for (std::size_t at = opening; at + closing < quoted.size(); ++at) {
    words += quoted[at];
    if (quoted[at] == '"') ++at;
  }
  return words;
}

int column_at(std::string_view line, std::size_t offset) {
  return static_cast<int>(character_count(line.substr(0, offset))) + 1;
}

}  // namespace evenclaw
