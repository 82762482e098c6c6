#include "core/trade/farm_line/farm_cursor.hpp"

#include <algorithm>
#include <utility>

#include "core/base/text.hpp"
#include "core/trade/call_line/spoken_numbers.hpp"

namespace evenclaw {

namespace {

bool parts_items(TokenKind kind) {
  return kind == TokenKind::comma || kind == TokenKind::strong;
}

}  // namespace

FarmCursor::FarmCursor(std::string_view text, const Language& language, int line_number)
    : text_(text), language_(language), line_number_(line_number) {
  if (!unreadable()) tokens_ = with_spoken_numbers(tokens_of(text), language);
}

std::optional<Fault> FarmCursor::unreadable() const {
  Fault fault;
  fault.line = line_number_;
  if (text_.size() > longest_farm_line) {
    fault.slug = "line-too-long";
    fault.message = "this line has " + std::to_string(text_.size()) + " bytes, the most are " +
                    std::to_string(longest_farm_line);
    fault.remedy = "break it in two";
    return fault;
  }
  if (is_one_plain_line(text_)) return std::nullopt;
  fault.slug = "call-not-understood";
  fault.message = "this line holds what is no text";
  fault.remedy = "say it again";
  return fault;
}

bool FarmCursor::at_separator() const {
  return !at_end() && parts_items(tokens_[at_].kind);
}

void FarmCursor::skip_separators() {
  while (at_separator()) ++at_;
}

bool FarmCursor::take_colon() {
  const bool is_colon = !at_end() && tokens_[at_].kind == TokenKind::colon;
  if (is_colon) ++at_;
  return is_colon;
}

std::string_view FarmCursor::said(std::size_t token) const {
  return text_.substr(tokens_[token].offset, tokens_[token].length);
}

/// The words of the phrase one after the other; a sign is a word of its own ("%").
bool FarmCursor::begins_here(std::string_view words, std::size_t& tokens) const {
  tokens = 0;
  while (!words.empty()) {
    const std::size_t end = std::min(words.find(' '), words.size());
    const std::size_t at = at_ + tokens;
    if (at >= tokens_.size()) return false;
    const bool is_word = tokens_[at].kind == TokenKind::word;
    const std::string_view here = is_word ? std::string_view(tokens_[at].folded) : said(at);
    if (here != words.substr(0, end)) return false;
    ++tokens;
    words.remove_prefix(std::min(end + 1, words.size()));
  }
  return tokens > 0;
}

FarmCursor::Found FarmCursor::longest() const {
  Found found;
  for (const FarmPhrase& phrase : farm_phrases(language_)) {
    std::size_t tokens = 0;
    if (!begins_here(phrase.words, tokens) || tokens <= found.tokens) continue;
    found = {&phrase, tokens};
  }
  return found;
}

const FarmPhrase* FarmCursor::phrase() const {
  return longest().phrase;
}

bool FarmCursor::take(FarmWord word) {
  const Found found = longest();
  if (found.phrase == nullptr || found.phrase->word != word) return false;
  at_ += found.tokens;
  return true;
}

std::string FarmCursor::take_phrase_words() {
  const Found found = longest();
  if (found.phrase == nullptr) return {};
  const Token& first = tokens_[at_];
  const Token& last = tokens_[at_ + found.tokens - 1];
  at_ += found.tokens;
  return std::string(text_.substr(first.offset, last.offset + last.length - first.offset));
}

bool FarmCursor::at_number() const {
  return !at_end() && (tokens_[at_].kind == TokenKind::number ||
                       number_word_at(tokens_, at_, language_).has_value());
}

std::optional<std::string> FarmCursor::take_digits(std::size_t most_digits) {
  if (!at_number()) return std::nullopt;
  const Token& token = tokens_[at_];
  std::string digits = token.folded.empty() ? std::string(said(at_)) : token.folded;
  if (const auto word = number_word_at(tokens_, at_, language_)) digits = std::to_string(*word);
  const bool is_whole = digits.find_first_not_of("0123456789") == std::string::npos;
  if (!is_whole || digits.size() > most_digits) return std::nullopt;
  ++at_;
  return digits;
}

std::optional<int> FarmCursor::take_whole(std::size_t most_digits) {
  const std::optional<std::string> digits = take_digits(most_digits);
  return digits ? whole_number(*digits, most_digits) : std::nullopt;
}

std::optional<std::int64_t> FarmCursor::take_thousandths() {
  constexpr std::size_t most_digits = 6;
  constexpr std::size_t most_decimals = 3;
  if (!at_number()) return std::nullopt;
  const std::size_t begun = at_;
  std::string text(said(at_));
  if (const auto word = number_word_at(tokens_, at_, language_)) text = std::to_string(*word);
  if (!tokens_[at_].folded.empty() && tokens_[at_].kind == TokenKind::number) {
    text = tokens_[at_].folded;
  }
  ++at_;
  if (&language_ == &german() && text.find('.') == std::string::npos && is_decimal_comma()) {
    text += '.' + std::string(said(at_ + 1));
    at_ += 2;
  }
  const std::size_t point = std::min(text.find('.'), text.size());
  const std::string decimals = point == text.size() ? std::string() : text.substr(point + 1);
  const auto whole = whole_number(text.substr(0, point), most_digits);
  if (whole && decimals.size() <= most_decimals) {
    const auto rest =
        whole_number(decimals + std::string(most_decimals - decimals.size(), '0'), most_decimals);
    if (rest) return std::int64_t{*whole} * 1000 + *rest;
  }
  at_ = begun;
  return std::nullopt;
}

/// "3,5" without a space.
bool FarmCursor::is_decimal_comma() const {
  if (at_ == 0 || at_ + 1 >= tokens_.size() || said(at_) != ",") return false;
  const Token& comma = tokens_[at_];
  const Token& before = tokens_[at_ - 1];
  const Token& behind = tokens_[at_ + 1];
  return before.offset + before.length == comma.offset && comma.offset + 1 == behind.offset &&
         behind.kind == TokenKind::number;
}

std::optional<Day> FarmCursor::take_day(Day today) {
  if (at_end()) return std::nullopt;
  if (take(FarmWord::today)) return today;
  if (take(FarmWord::yesterday)) return today - 1;
  if (tokens_[at_].kind == TokenKind::date) return day_from_text(said(at_++));
  return take_day_and_month(today);
}

/// "20 Nov", "20 Nov 2025", "20. November".
std::optional<Day> FarmCursor::take_day_and_month(Day today) {
  constexpr std::size_t digits_of_a_day = 2;
  constexpr std::size_t digits_of_a_year = 4;
  const std::size_t begun = at_;
  const std::optional<int> day = take_whole(digits_of_a_day);
  if (day && at_separator() && said(at_) == ".") ++at_;
  const std::optional<int> month =
      day && !at_end() ? language_.month_in(tokens_[at_].folded) : std::nullopt;
  if (!month) {
    at_ = begun;
    return std::nullopt;
  }
  ++at_;
  const CivilDate now = civil_of(today);
  if (const std::optional<int> year = take_whole(digits_of_a_year)) {
    const auto found = day_of(CivilDate{*year, *month, *day});
    if (!found) at_ = begun;
    return found;
  }
  for (const int year : {now.year, now.year - 1}) {
    const auto found = day_of(CivilDate{year, *month, *day});
    if (found && *found <= today) return found;
  }
  at_ = begun;
  return std::nullopt;
}

FootSet FarmCursor::take_feet() {
  FootSet feet;
  while (!at_end() && tokens_[at_].kind == TokenKind::word) {
    const Language::Match match = language_.longest_match(tokens_, at_);
    const bool is_leg = match.phrase != nullptr && (match.phrase->kind == TermKind::foot ||
                                                    match.phrase->kind == TermKind::feet);
    if (!is_leg) break;
    const FootSet named = feet_in(*match.phrase);
    for (const Foot foot : all_feet) {
      if (named.has(foot)) feet.add(foot);
    }
    at_ += match.word_count;
  }
  return feet;
}

std::string FarmCursor::take_words() {
  std::string words;
  std::size_t end = 0;
  while (!at_break()) {
    const Token& token = tokens_[at_];
    const bool is_quoted = token.kind == TokenKind::quoted;
    if (!words.empty() && token.offset > end) words += ' ';
    words += is_quoted ? unquoted(said(at_)) : std::string(said(at_));
    end = token.offset + token.length;
    ++at_;
  }
  return words;
}

Fault FarmCursor::fault(std::string slug, std::size_t token, std::string message,
                        std::string remedy) const {
  Fault fault;
  fault.slug = std::move(slug);
  fault.message = std::move(message);
  fault.remedy = std::move(remedy);
  fault.line = line_number_;
  if (token < tokens_.size()) {
    fault.token = std::string(said(token));
    fault.column = column_at(text_, tokens_[token].offset);
  }
  return fault;
}

Fault FarmCursor::refused(std::string message, std::string remedy) const {
  return refused_at(at_, std::move(message), std::move(remedy));
}

Fault FarmCursor::refused_at(std::size_t token, std::string message, std::string remedy) const {
  return fault("call-not-understood", token, std::move(message), std::move(remedy));
}

Fault FarmCursor::impossible_at(std::size_t token, std::string message, std::string remedy) const {
  return fault("call-impossible", token, std::move(message), std::move(remedy));
}

}  // namespace evenclaw
