#include "tests/stories/alarms_page.hpp"

#include <algorithm>
#include <cstdio>
#include <map>

#include "core/trade/check.hpp"

namespace evenclaw::test {

namespace {

constexpr std::string_view head =
    R"(# Alarms on ordinary work

An alarm on ordinary work is a defect. Five ordinary days ([data/ordinary](../../data/ordinary))
were written before any check was looked at, each with what a careful colleague would say of its
cows. They are typed line by line as at the crush; what a check says beyond that counts as a false
alarm. At most 1 Ask for 10 cows and 1 Stop for 40 are allowed beyond what is deserved, on each day
and over all (our judgement; the test of the days holds it). A question asked without a check counts
as an Ask; what is asked when the visit closes, and what was not called, does not.

This page is made by the test. `EVENCLAW_APPROVE=1 ./test --only stories` writes it anew.
)";

std::string rank_said(Rank rank) {
  switch (rank) {
    case Rank::note:
      return "Note";
    case Rank::ask:
      return "Ask";
    case Rank::stop:
      return "Stop";
  }
  return {};
}

int count_of(const PlayedDay& day, Rank rank) {
  return static_cast<int>(std::count_if(day.alarms.begin(), day.alarms.end(),
                                        [rank](const Alarm& a) { return a.rank == rank; }));
}

std::string counted(const PlayedDay& day, Rank rank) {
  return " | " + std::to_string(count_of(day, rank)) + " | " + std::to_string(beyond(day, rank));
}

std::string ranks_of(const PlayedDay& day) {
  return counted(day, Rank::stop) + counted(day, Rank::ask) + counted(day, Rank::note) + " |\n";
}

PlayedDay all_together(const std::vector<PlayedDay>& days) {
  PlayedDay all;
  for (const PlayedDay& day : days) {
    all.cows += day.cows;
    all.alarms.insert(all.alarms.end(), day.alarms.begin(), day.alarms.end());
  }
  return all;
}

std::string by_day(const std::vector<PlayedDay>& days) {
  std::string table =
      "\n## By day\n\n"
      "| day | herd | cows | Stops | beyond | Asks | beyond | Notes | beyond |\n"
      "|---|---|---|---|---|---|---|---|---|\n";
  for (const PlayedDay& day : days) {
    table += "| " + day.name + " | " + day.herd + " | " + std::to_string(day.cows) + ranks_of(day);
  }
  const PlayedDay all = all_together(days);
  return table + "| all | | " + std::to_string(all.cows) + ranks_of(all);
}

struct RuleCount {
  std::string rank;
  int said = 0;
  int beyond = 0;
};

std::string share_of(int count, int among, int cows) {
  char text[32];
  (void)std::snprintf(text, sizeof text, "%.2f", 1.0 * among * count / std::max(cows, 1));
  return text;
}

using RuleCounts = std::map<std::string, RuleCount>;

RuleCounts counts_of(const PlayedDay& day) {
  RuleCounts counts;
  for (const CheckRule& rule : all_checks()) {
    counts[std::string(rule.slug)] = {rank_said(rule.rank)};
  }
  for (const Alarm& alarm : day.alarms) {
    RuleCount& count = counts[alarm.rule];
    count.rank = rank_said(alarm.rank);
    ++count.said;
    if (!alarm.deserved) ++count.beyond;
  }
  return counts;
}

/// "3", or "3, 1 beyond".
std::string told(const RuleCount& count) {
  const std::string said = std::to_string(count.said);
  return count.beyond == 0 ? said : said + ", " + std::to_string(count.beyond) + " beyond";
}

/// In how many cows it speaks, day by day, and how often beyond what was deserved in the numbers of
/// cows for which one Ask and one Stop are allowed.
std::string by_rule(const std::vector<PlayedDay>& days) {
  std::string head = "\n## By check\n\n| check | rank |";
  std::string line = "|---|---|";
  std::vector<RuleCounts> of_days;
  for (const PlayedDay& day : days) {
    head += ' ' + day.name + " |";
    line += "---|";
    of_days.push_back(counts_of(day));
  }
  std::string table = head + " all | all in 10 cows | beyond in 10 cows | beyond in 40 cows |\n" +
                      line + "---|---|---|---|\n";
  const PlayedDay all = all_together(days);
  for (const auto& [rule, count] : counts_of(all)) {
    table += "| " + rule + " | " + count.rank + " | ";
    for (RuleCounts& of_day : of_days) table += told(of_day[rule]) + " | ";
    table += told(count) + " | " + share_of(count.said, 10, all.cows) + " | " +
             share_of(count.beyond, 10, all.cows) + " | " + share_of(count.beyond, 40, all.cows) +
             " |\n";
  }
  return table;
}

std::string false_alarms(const std::vector<PlayedDay>& days) {
  std::string table =
      "\n## Said, and not deserved\n\n| day | cow | rank | check | words |\n"
      "|---|---|---|---|---|\n";
  for (const PlayedDay& day : days) {
    for (const Alarm& alarm : day.alarms) {
      if (alarm.deserved) continue;
      table += "| " + day.name + " | " + alarm.cow + " | " + rank_said(alarm.rank) + " | " +
               alarm.rule + " | " + alarm.words + " |\n";
    }
  }
  return table;
}

std::string not_said(const std::vector<PlayedDay>& days) {
  std::string table =
      "\n## Deserved, and said by no check\n\n| day | cow | rank | why | asked when the visit "
      "closes |\n"
      "|---|---|---|---|---|\n";
  for (const PlayedDay& day : days) {
    for (const Deserved& line : day.deserved) {
      if (line.said) continue;
      table += "| " + day.name + " | " + line.cow + " | " + rank_said(line.rank) + " | " +
               line.reason + " | " + line.closing + " |\n";
    }
  }
  return table;
}

std::string planted_faults(const std::vector<PlantedFault>& planted) {
  std::string table =
      "\n## Planted faults\n\nEach of these short cases has one fault planted. A check that exists "
      "must speak up; where none does\nyet the test holds that too, so that this list cannot grow "
      "old.\n\n| fault | rank | check |\n|---|---|---|\n";
  for (const PlantedFault& fault : planted) {
    std::string words(fault.name);
    std::replace(words.begin(), words.end(), '_', ' ');
    table += "| " + words + " | " + rank_said(fault.rank) + " | " +
             (fault.rule.empty() ? "waits for one" : std::string(fault.rule)) + " |\n";
  }
  return table;
}

}  // namespace

std::string alarms_page(const std::vector<PlayedDay>& days,
                        const std::vector<PlantedFault>& planted) {
  return std::string(head) + by_day(days) + by_rule(days) + false_alarms(days) + not_said(days) +
         planted_faults(planted);
}

}  // namespace evenclaw::test
