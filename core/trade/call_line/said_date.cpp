#include "core/trade/call_line/said_date.hpp"

#include <cstddef>
#include <string>
#include <utility>

#include "core/base/quotation.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/open_item.hpp"

namespace evenclaw {

namespace {

std::optional<PlacedFault> out_of_reach(const NextStep& next, Day visit_day) {
  if (next.term.kind != TermKind::date) return std::nullopt;
  constexpr int furthest_days = 730;
  const int ahead = Day{next.term.value} - visit_day;
  if (ahead >= 0 && ahead <= furthest_days) return std::nullopt;
  return PlacedFault{impossible("a date lies between the visit and " +
                                    std::to_string(furthest_days) + " days after it",
                                "the visit is of " + to_text(visit_day)),
                     next.term};
}

std::string two_digits(const std::string& number) {
  return number.size() == 1 ? "0" + number : number;
}

/// The next such day from the visit on; nothing for the 31st of June.
std::optional<Day> next_such_day(std::string_view number, int month, Day visit_day) {
  constexpr std::size_t digits_of_a_year = 4;
  const std::string day = two_digits(std::string(number));
  const auto year = whole_number(to_text(visit_day).substr(0, digits_of_a_year), digits_of_a_year);
  if (!year) return std::nullopt;
  for (const int each : {*year, *year + 1}) {
    const auto date =
        day_from_text(std::to_string(each) + '-' + two_digits(std::to_string(month)) + '-' + day);
    if (date && *date >= visit_day) return *date;
  }
  return std::nullopt;
}

// "See again 10 Dec".
std::optional<PlacedFault> day_and_month(const NextStep& next, Day visit_day,
                                         const Language& language) {
  constexpr std::size_t most_digits_of_a_day = 2;
  const std::size_t behind = next.term.first_token + next.term.token_count;
  const std::string_view number = digits_of(next.term);
  const bool is_time = next.step.to == Spot::time_number && number.size() <= most_digits_of_a_day;
  if (!is_time || number.empty() || behind >= next.tokens.size()) return std::nullopt;
  const std::optional<int> month = language.month_in(next.tokens[behind].folded);
  if (!month) return std::nullopt;
  const std::optional<Day> day = next_such_day(number, *month, visit_day);
  Term both = next.term;
  ++both.token_count;
  const Token& last = next.tokens[behind];
  const std::size_t from = next.tokens[next.term.first_token].offset;
  return PlacedFault{
      not_understood(quoted(next.text.substr(from, last.offset + last.length - from)) +
                         " is not understood; a date has its year, month and day",
                     day ? "say \"" + to_text(*day) + "\"" : std::string()),
      both};
}

// "See again today".
std::optional<PlacedFault> today_as_a_time(const NextStep& next) {
  if (next.term.kind != TermKind::today || next.spot != Spot::see_again) return std::nullopt;
  return PlacedFault{
      not_understood("a look asked for is of another day",
                     "say \"{see again tomorrow}\"; what is to be done today in words: \"{note}\" "
                     "and the words"),
      next.term};
}

}  // namespace

std::optional<PlacedFault> date_misfit(const NextStep& next, Day visit_day,
                                       const Language& language) {
  if (auto fault = out_of_reach(next, visit_day)) return fault;
  if (auto fault = day_and_month(next, visit_day, language)) return fault;
  return today_as_a_time(next);
}

}  // namespace evenclaw
