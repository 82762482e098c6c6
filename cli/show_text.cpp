#include "cli/show_text.hpp"

#include <algorithm>
#include <map>

#include "cli/columns.hpp"
#include "cli/due_text.hpp"
#include "cli/farm_text.hpp"
#include "cli/open_points.hpp"
#include "cli/passport_text.hpp"
#include "core/api/said_day.hpp"

namespace evenclaw::cli {
namespace {

std::string state_words(const FootSeen& seen) {
  switch (seen.state) {
    case FootState::unsaid:
      return "finding not called";
    case FootState::not_lifted:
      return "not lifted";
    case FootState::nothing_found:
      return "nothing found";
    case FootState::finding:
      return "finding";
  }
  return "";
}

/// A foot of one visit: what was found, then what was done, each on a line of its own.
std::string foot_lines(const FootSeen& seen) {
  std::vector<std::string> said = seen.found;
  if (said.empty()) said.push_back(state_words(seen));
  if (seen.called_lame) said.insert(said.begin(), "came lame on it");
  if (!seen.missing.empty()) said.push_back(seen.missing);
  if (!seen.acts.empty()) said.push_back(joined(seen.acts, "; "));
  if (!seen.measured.empty()) said.push_back(joined(seen.measured, "; "));
  if (seen.trimmed != Trimmed::not_called) {
    said.emplace_back(seen.trimmed == Trimmed::yes ? "trimmed" : "not trimmed");
  }
  if (!seen.note.empty()) said.push_back("note: " + seen.note);
  std::string out;
  for (std::size_t i = 0; i < said.size(); ++i) {
    const std::string lead = i == 0 ? "    " + std::string(word_of(seen.foot)) + "  " : "        ";
    out += wrapped_behind(lead, said[i]) + "\n";
  }
  return out;
}

std::string end_words(const TurnSeen& seen) {
  std::string words;
  switch (seen.end) {
    case TurnEnd::done:
      return {};
    case TurnEnd::not_done:
      words = "not done";
      break;
    case TurnEnd::unfinished:
      words = "not finished";
      break;
  }
  return seen.end_reason.empty() ? words : words + ": " + seen.end_reason;
}

/// A time that is not known is said to be so, where one could be expected.
std::string time_words(const TurnSeen& seen) {
  if (seen.seconds_in_crush) {
    const std::int32_t minutes = (*seen.seconds_in_crush + 59) / 60;
    return std::to_string(minutes) + " min in the crush";
  }
  return seen.from_paper ? "from paper: time in the crush not known" : std::string();
}

/// What was said of all of her in one turn, a line each.
std::string turn_lines(const TurnSeen& seen, const std::string& cow_said) {
  std::vector<std::string> said;
  if (seen.called != cow_said && !seen.called.empty()) said.push_back("called " + seen.called);
  if (!seen.came.empty()) said.push_back("came: " + seen.came);
  if (!seen.walked.empty()) said.push_back(seen.walked);
  if (const std::string time = time_words(seen); !time.empty()) said.push_back(time);
  if (const std::string end = end_words(seen); !end.empty()) said.push_back(end);
  if (!seen.acts.empty()) said.push_back(joined(seen.acts, "; "));
  if (!seen.note.empty()) said.push_back("note: " + seen.note);
  std::string out;
  for (const std::string& line : said) out += wrapped_behind("    ", line) + "\n";
  return out;
}

std::string removed_words(std::string words, const RemovedRecord& record, Day today) {
  words += " was removed";
  if (record.removed_on) words += " on " + said_day(*record.removed_on, today);
  if (!record.why.empty()) words += ": " + record.why;
  return words;
}

/// What was at a visit and is on record no longer.
std::string removed_of_visit(const VisitShown& shown, Day today) {
  std::string out;
  for (const RemovedRecord& record : shown.removed) {
    const std::string whose = record.cow_said.empty() ? "a cow" : record.cow_said;
    out +=
        wrapped_behind("  ", removed_words("what was recorded of " + whose, record, today)) + "\n";
  }
  for (const RemovedRecord& record : shown.removed_counts) {
    out += wrapped_behind("  ", removed_words("a count of animals", record, today)) + "\n";
  }
  return out;
}

/// In the words in which it was told, with what is asked about it.
std::string news_words(const NewsSeen& news) {
  const std::string asked = news.asked.empty() ? "" : " (" + news.asked + ")";
  return wrapped_behind("    ", "told: " + news.words + asked) + "\n";
}

/// What an earlier record says, in our words and as it stood there.
std::string past_words(const PastSeen& past) {
  std::string words = "told by a list: " + past.found + "; there \"" + past.words + "\"";
  if (!past.remark.empty()) words += "; " + past.remark;
  return wrapped_behind("    ", words) + "\n";
}

/// Day by day, the newest first: of all of her, then foot by foot.
std::string days_of(const CowShown& shown, Day today) {
  std::map<Day, std::string> by_day;
  for (const RemovedRecord& record : shown.removed) {
    const std::string words = removed_words("what was recorded of her", record, today);
    by_day[record.day] += wrapped_behind("    ", words) + "\n";
  }
  for (const NewsSeen& news : shown.news) by_day[news.day] += news_words(news);
  for (const TurnSeen& seen : shown.of_her) by_day[seen.day] += turn_lines(seen, shown.cow_said);
  for (const FootSeen& seen : shown.feet) by_day[seen.day] += foot_lines(seen);
  for (const PastSeen& past : shown.past) by_day[past.day] += past_words(past);
  for (const MobilityScoreRow& row : shown.scores) {
    by_day[row.day] += wrapped_behind("    ", score_text(row)) + "\n";
  }
  std::string out;
  for (auto day = by_day.rbegin(); day != by_day.rend(); ++day) {
    const std::string nothing = day->second.empty() ? "    nothing was called of her\n" : "";
    out += "  " + said_day(day->first, today) + "\n" + day->second + nothing;
  }
  return out;
}

std::string doubts_of(const CowShown& shown, Day today) {
  std::string out;
  for (const MayBeHer& maybe : shown.may_be_her) {
    out += wrapped_behind("  ", "\"" + maybe.called + "\" of " + said_day(maybe.last_seen, today) +
                                    " may be her: evenclaw show cow \"" + maybe.called +
                                    "\"; if so: evenclaw cow same " + shown.cow_said + " \"" +
                                    maybe.called + "\"") +
           "\n";
  }
  for (const MayBeHer& other : shown.called_alike) {
    out +=
        wrapped_behind("  ", "another one was called so, seen " + said_day(other.last_seen, today) +
                                 ": evenclaw show cow " + to_text(other.cow)) +
        "\n";
  }
  return out;
}

std::string head_of(const CowShown& shown, Day today) {
  std::string head = "Cow " + shown.cow_said + ", " + shown.herd_name;
  if (shown.cow.left_on) head += " (left " + said_day(*shown.cow.left_on, today) + ")";
  head += "\n";
  const std::string careful = told_of_handling(shown.handling, today);
  if (!careful.empty()) head += "  careful: " + careful + "\n";
  for (const CowNumberRow& number : shown.numbers) {
    if (!number.valid_to) continue;
    head += "  was " + number.number + " until " + said_day(*number.valid_to, today) + "\n";
  }
  head += passport_text(shown, today);
  for (const CowCalledRow& row : shown.called_first) {
    head += "  called " + row.called + " on " + said_day(row.day, today) + ", then put right\n";
  }
  return head;
}

std::string fixtures_of(const CowShown& shown, Day today) {
  std::string out;
  for (const OnFootRow& on : shown.on_her) {
    out += "  " + std::string(word_of(on.foot)) + "  " + std::string(word_of(on.fixture));
    if (on.claw == Claw::inside || on.claw == Claw::outside) {
      out += " on " + std::string(word_of(on.claw)) + " claw";
    }
    out += (on.only_seen ? ", nobody knows since when; seen " : ", since ") +
           said_day(on.since, today) + "\n";
  }
  return out.empty() ? out : "On her feet\n" + out;
}

using DayOfVisit = std::map<std::string, std::string, std::less<>>;

DayOfVisit days_of_visits(const HerdShown& shown, Day today) {
  DayOfVisit days;
  for (const VisitRow& visit : shown.visits) {
    std::string day = said_day(visit.day, today);
    if (visit.ordinal > 1) day += " (" + std::to_string(visit.ordinal) + ")";
    days[to_text(visit.visit)] = std::move(day);
  }
  return days;
}

/// "block_check" reads "block check".
std::string plain(std::string word) {
  std::replace(word.begin(), word.end(), '_', ' ');
  return word;
}

std::string count_text(const NamedCount& count, const DayOfVisit& days) {
  std::vector<std::vector<std::string>> rows(1);
  for (const std::string& column : count.columns) rows.front().push_back(plain(column));
  for (const CountLine& line : count.lines) {
    auto& row = rows.emplace_back();
    for (const std::string& group : line.groups) {
      const auto day = days.find(group);
      row.push_back(day == days.end() ? plain(group) : day->second);
    }
    row.push_back(std::to_string(line.count));
    for (const std::int64_t sum : line.sums) row.push_back(std::to_string(sum));
  }
  std::string title = plain(count.name);
  title.front() = static_cast<char>(title.front() - 'a' + 'A');
  return "\n" + title + "\n" + table(rows);
}

}  // namespace

std::string cow_text(const CowShown& shown, Day today) {
  std::string out = head_of(shown, today) + doubts_of(shown, today) + fixtures_of(shown, today);
  if (!shown.open_tasks.empty()) out += "Open\n";
  for (const DueTask& task : shown.open_tasks) out += "  " + task_of_her(task, today) + "\n";
  const std::string days = days_of(shown, today);
  if (days.empty()) return out + "Nothing of her was recorded at a visit yet.\n";
  const bool is_told_by_list = !shown.past.empty();
  return out +
         (is_told_by_list ? "Her visits and what lists told, newest first\n"
                          : "Her visits, newest first\n") +
         days;
}

std::string visit_text(const VisitShown& shown, Day today) {
  const Visit& visit = shown.visit;
  std::string out =
      visit.herd_name + ", " + said_day(visit.day, today) +
      (visit.closed ? ": ended, " : ": not ended yet, ") +
      (visit.from_paper ? "from paper, " : "") + counted(shown.cows, "cow", "cows") +
      (shown.together > 0 ? ", " + std::to_string(shown.together) + " animals counted together"
                          : "") +
      "\n";
  for (const BatchShown& batch : shown.batches) {
    out += wrapped_behind("  ", batch.name + ": " + batch.words) + "\n";
  }
  out += removed_of_visit(shown, today);
  if (shown.open.empty()) return out + "Nothing is left in doubt.\n";
  return out + "Still to be asked (" + std::to_string(shown.open.size()) + "):\n" +
         open_points_text(shown.open) + how_to_answer(shown.open, visit.day);
}

std::string herd_text(const HerdShown& shown, Day today) {
  const auto cows = static_cast<std::int64_t>(shown.cows.size());
  const auto visits = static_cast<std::int64_t>(shown.visits.size());
  std::string out = shown.name + "\n" + counted(cows, "cow", "cows") + " on record, " +
                    counted(visits, "visit", "visits") + "\n";
  for (const VisitRow& visit : shown.visits) {
    out += "  " + said_day(visit.day, today) + (visit.closed ? "" : "  not ended yet") +
           (visit.from_paper ? "  from paper, no times known" : "");
    if (&visit == &shown.visits.front() && !shown.open.empty()) {
      out += "  " + std::to_string(shown.open.size()) + " still to be asked: evenclaw show visit";
    }
    out += "\n";
  }
  out += farm_text(shown, today);
  const DayOfVisit days = days_of_visits(shown, today);
  for (const NamedCount& count : shown.counts) {
    if (!count.lines.empty()) out += count_text(count, days);
  }
  return out;
}

}  // namespace evenclaw::cli
