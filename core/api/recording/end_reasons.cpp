#include "core/api/recording/end_reasons.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

#include "core/api/recording/said_again.hpp"
#include "core/api/recording/said_otherwise.hpp"
#include "core/base/quotation.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view one_line = " was not understood";
constexpr std::string_view several_lines = " were not understood";
constexpr std::string_view between_reasons = "; ";
constexpr std::string_view between_lines = ", ";

bool is_quote(char c) {
  return c == '"' || c == '\'';
}

std::string not_understood_lines(const std::vector<std::string>& lines) {
  std::string all;
  for (const std::string& line : lines) {
    if (!all.empty()) all += between_lines;
    all += quoted(line);
  }
  if (lines.empty()) return {};
  return all + std::string(lines.size() == 1 ? one_line : several_lines);
}

/// Where a reason that begins at `from` ends. A list of lines may hold what parts two reasons.
std::size_t end_of_reason(std::string_view all, std::size_t from) {
  if (!is_quote(all[from])) return std::min(all.find(between_reasons, from), all.size());
  std::size_t end = all.size();
  for (const std::string_view tail : {one_line, several_lines}) {
    const std::size_t at = all.find(tail, from);
    if (at != std::string_view::npos) end = std::min(end, at + tail.size());
  }
  return end;
}

/// Where the quotation that begins a list of lines ends: at a quote that ends the list or stands
/// before the next line.
std::size_t end_of_quotation(std::string_view lines) {
  for (std::size_t at = 1; at < lines.size(); ++at) {
    const std::string_view behind = lines.substr(at + 1);
    const bool parts = behind.size() > between_lines.size() &&
                       behind.substr(0, between_lines.size()) == between_lines &&
                       is_quote(behind[between_lines.size()]);
    if (lines[at] == lines.front() && (behind.empty() || parts)) return at;
  }
  return lines.size();
}

std::vector<std::string> reasons_in(std::string_view all) {
  std::vector<std::string> reasons;
  std::size_t from = 0;
  while (from < all.size()) {
    const std::size_t end = end_of_reason(all, from);
    reasons.emplace_back(all.substr(from, end - from));
    from = end + between_reasons.size();
  }
  return reasons;
}

bool ends_with(std::string_view text, std::string_view tail) {
  return text.size() >= tail.size() && text.substr(text.size() - tail.size()) == tail;
}

/// The lines of a reason that names some; none for any other reason.
std::vector<std::string> lines_in(std::string_view reason) {
  std::vector<std::string> lines;
  const bool is_one = ends_with(reason, one_line);
  const bool names_lines =
      !reason.empty() && is_quote(reason.front()) && (is_one || ends_with(reason, several_lines));
  if (!names_lines) return lines;
  reason.remove_suffix(is_one ? one_line.size() : several_lines.size());
  while (!reason.empty()) {
    const std::size_t end = end_of_quotation(reason);
    lines.emplace_back(reason.substr(1, end - 1));
    reason.remove_prefix(std::min(end + 1 + between_lines.size(), reason.size()));
  }
  return lines;
}

/// What the reason adds to those that are known: of its lines the new ones, or all of it.
std::string without_known(std::string_view reason, const std::vector<std::string>& known) {
  std::vector<std::string> lines = lines_in(reason);
  if (lines.empty()) {
    const bool is_known = std::find(known.begin(), known.end(), reason) != known.end();
    return is_known ? std::string() : std::string(reason);
  }
  for (const std::string& each : known) {
    for (const std::string& line : lines_in(each)) {
      lines.erase(std::remove(lines.begin(), lines.end(), line), lines.end());
    }
  }
  return not_understood_lines(lines);
}

void set_reasons(Turn& turn, const std::vector<std::string>& reasons) {
  turn.end_reason.clear();
  for (const std::string& reason : reasons) {
    if (!turn.end_reason.empty()) turn.end_reason += between_reasons;
    turn.end_reason += reason;
  }
  if (turn.end == TurnEnd::unfinished && turn.end_reason.empty()) turn.end = TurnEnd::done;
}

}  // namespace

bool says_nothing(const Turn& turn) {
  return turn.feet.empty() && turn.actions.empty() && !turn.rest_fine && !turn.walks_sound &&
         !turn.mobility.said() && turn.note.empty() && turn.end == TurnEnd::done;
}

std::string not_understood(const std::vector<RefusedLine>& lines) {
  std::vector<std::string> texts;
  texts.reserve(lines.size());
  for (const RefusedLine& line : lines) texts.push_back(line.text);
  return not_understood_lines(texts);
}

void add_end_reason(Turn& turn, std::string_view reason) {
  if (turn.end == TurnEnd::done) turn.end = TurnEnd::unfinished;
  const std::string added = without_known(reason, reasons_in(turn.end_reason));
  if (added.empty()) return;
  if (!turn.end_reason.empty()) turn.end_reason += between_reasons;
  turn.end_reason += added;
}

void tell_reasons_once(Turn& turn) {
  const std::vector<std::string> reasons = reasons_in(std::exchange(turn.end_reason, {}));
  for (const std::string& reason : reasons) add_end_reason(turn, reason);
}

void drop_end_reason(Turn& turn, std::string_view reason) {
  std::vector<std::string> reasons = reasons_in(turn.end_reason);
  const auto gone = std::remove(reasons.begin(), reasons.end(), reason);
  if (gone == reasons.end()) return;
  reasons.erase(gone, reasons.end());
  set_reasons(turn, reasons);
}

bool tell_its_end(const std::vector<std::string>& words, Day visit_day, const Language& language) {
  const LineContext in_crush{visit_day, true, 0};
  return std::any_of(words.begin(), words.end(), [&](const std::string& words_of_line) {
    const auto line = read_line(words_of_line, in_crush, language);
    return line && std::any_of(line->clauses.begin(), line->clauses.end(), [](const Clause& said) {
             const auto* clause = std::get_if<TurnClause>(&said);
             return clause != nullptr && std::holds_alternative<EndSaid>(*clause);
           });
  });
}

void drop_said_again(Turn& turn, std::string_view now, const Language& language) {
  // Which foot was spoken of is not on record; with one foot called it was that one.
  FootSet called;
  for (const FootCall& call : turn.feet) called.add(call.foot);
  std::vector<std::string> kept;
  bool any = false;
  for (std::string& reason : reasons_in(turn.end_reason)) {
    std::vector<std::string> lines = lines_in(reason);
    const auto gone = std::remove_if(lines.begin(), lines.end(), [&](const std::string& line) {
      const bool is_said =
          is_said_again(line, now, language) || is_said_in_other_words(line, now, language);
      return is_said && may_be_of_the_same_feet(line, called, now, called, language);
    });
    if (gone == lines.end()) {
      kept.push_back(std::move(reason));
      continue;
    }
    any = true;
    lines.erase(gone, lines.end());
    if (!lines.empty()) kept.push_back(not_understood_lines(lines));
  }
  if (any) set_reasons(turn, kept);
}

std::vector<std::string> lines_not_understood(const Turn& turn) {
  std::vector<std::string> all;
  for (const std::string& reason : reasons_in(turn.end_reason)) {
    for (std::string& line : lines_in(reason)) all.push_back(std::move(line));
  }
  return all;
}

std::vector<std::string> still_not_understood(Turn turn, const std::vector<std::string>& since,
                                              const Language& language) {
  for (const std::string& line : since) drop_said_again(turn, line, language);
  std::vector<std::string> reasons = reasons_in(turn.end_reason);
  reasons.erase(std::remove_if(reasons.begin(), reasons.end(),
                               [](const std::string& reason) { return lines_in(reason).empty(); }),
                reasons.end());
  return reasons;
}

std::string left_out_of_what_was_not_understood(Turn turn, const std::vector<std::string>& said,
                                                const Language& language) {
  std::string all;
  for (const std::string& line : said) all += (all.empty() ? "" : "; ") + line;
  for (const std::string& line : said) drop_said_again(turn, line, language);
  std::vector<std::string> lines = lines_not_understood(turn);
  std::erase_if(
      lines, [&](const std::string& line) { return holds_what_was_called(line, all, language); });
  return not_understood_lines(lines);
}

bool is_named_as_a_reason(const Turn& turn, std::string_view line) {
  const std::vector<std::string> reasons = reasons_in(turn.end_reason);
  return std::any_of(reasons.begin(), reasons.end(), [&](const std::string& reason) {
    const std::vector<std::string> lines = lines_in(reason);
    return std::find(lines.begin(), lines.end(), line) != lines.end();
  });
}

void drop_not_understood(Turn& turn) {
  std::vector<std::string> reasons = reasons_in(turn.end_reason);
  reasons.erase(std::remove_if(reasons.begin(), reasons.end(),
                               [](const std::string& reason) { return !lines_in(reason).empty(); }),
                reasons.end());
  set_reasons(turn, reasons);
}

}  // namespace evenclaw
