// The ordinary days and the planted faults of data/ordinary, played through the use cases: what was
// said about which cow, and how much of it a careful colleague would have said too.
#pragma once

#include <string>
#include <vector>

#include "core/api/visits.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw::test {

/// One warning or question, once for each cow and wording however often it was shown; or one note
/// that goes to the sheet.
struct Alarm {
  std::string cow;  // as said
  Rank rank = Rank::note;
  std::string rule;  // slug of the check; "question" for what is asked without one
  std::string words;
  bool deserved = false;
};

/// A line of a .deserved file: one word of that rank about that cow is no false alarm.
struct Deserved {
  std::string cow;
  Rank rank = Rank::note;
  std::string reason;
  bool said = false;         // by an alarm
  std::string closing = {};  // what is asked of her when the visit closes: "unfinished, not_done"
};

struct PlayedDay {
  std::string name;
  std::string herd;
  int cows = 0;  // different cows seen
  std::vector<Alarm> alarms;
  std::vector<Deserved> deserved;
  std::vector<std::string> refused;  // lines nobody understood, of the day and of the visit before
};

/// "data/ordinary/day1" reads day1-before.calls, day1.calls and day1.deserved, and day1.register
/// where there is one: the cows it names are registered before the first visit.
PlayedDay played_day(const std::string& path);

/// All five.
std::vector<PlayedDay> ordinary_days();

/// Each line grants one alarm of that rank about that cow, or else a quieter one.
void grant(std::vector<Alarm>& alarms, std::vector<Deserved>& deserved);

/// How many alarms of a rank nobody deserved.
int beyond(const PlayedDay& day, Rank rank);

struct PlayedFault {
  bool needs_words = false;   // its first line says so
  std::vector<Alarm> alarms;  // of its day, not of the visits before
  std::vector<std::string> refused;
};

/// A case of data/ordinary/planted; `# before` and `# day` begin its visits.
PlayedFault played_fault(const std::string& file);

/// The names of data/ordinary/planted without ".calls", sorted.
std::vector<std::string> planted_names();

}  // namespace evenclaw::test
