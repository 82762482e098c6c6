#include "core/api/recording/reader.hpp"

#include <algorithm>
#include <cstddef>

#include "core/base/ascii.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/electronic_number.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t digits_read = 15;
constexpr std::size_t digits_of_country = 3;

// From memory, no source: cows are dry for six to eight weeks.
constexpr int most_days_dry = 60;

std::string_view leading_digits(std::string_view text) {
  return text.substr(0, std::min(text.find_first_not_of("0123456789"), text.size()));
}

std::string why_not_her(const Turn& turn, const ReadCow& read) {
  if (read.left) return "was said to be gone on " + spoken(read.left->on);
  if (read.was_here_today) return "was in the crush today already";
  const bool may_be_dry = read.dried_off && turn.reason == Reason::not_called;
  return may_be_dry ? "came to be dried off on " + spoken(*read.dried_off) : std::string();
}

}  // namespace

bool is_read_off(std::string_view number) {
  return number.size() == digits_read && std::all_of(number.begin(), number.end(), is_digit);
}

std::optional<std::string> read_in(const CowSaid& said) {
  if (said.known != CowKnown::unnumbered || !is_read_off(said.looks)) return std::nullopt;
  const auto number = electronic_number(said.looks);
  return number ? std::optional(to_text(*number)) : std::nullopt;
}

std::optional<std::string> read_at_start(std::string_view text) {
  const std::string_view said = trimmed(text);
  std::string digits(leading_digits(said));
  const bool is_parted = digits.size() == digits_of_country && said.substr(digits.size(), 1) == " ";
  if (is_parted) digits += leading_digits(said.substr(digits.size() + 1));
  return is_read_off(digits) ? std::optional(digits) : std::nullopt;
}

std::optional<Day> dried_off_on(const CowPast& past, Day today) {
  const TurnRow* last = nullptr;
  for (const TurnRow& turn : past.rows.turns) {
    if (turn.day < today && (last == nullptr || last->day < turn.day)) last = &turn;
  }
  if (last == nullptr || last->day + most_days_dry < today) return std::nullopt;
  const bool to_be_dried_off = last->reason == Reason::dry_off || last->also.has(Reason::dry_off);
  return to_be_dried_off ? std::optional(last->day) : std::nullopt;
}

std::optional<Warning> other_cow_read(const Turn& turn, const ReadCow& read,
                                      const Language& language) {
  const std::string why = why_not_her(turn, read);
  if (why.empty()) return std::nullopt;
  Warning warning;
  warning.rule = "other-cow-read";
  warning.rank = Rank::ask;
  warning.words = "The reader gave " + read.name + ", who " + why + ". Is it her?";
  warning.answers = {offered_go_ahead(language)};
  return warning;
}

}  // namespace evenclaw
