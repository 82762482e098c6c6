#include "cli/show_text.hpp"

#include "cli/due_text.hpp"

namespace evenclaw::cli {
namespace {

std::string joined(const std::vector<std::string>& parts, std::string_view between) {
  std::string out;
  for (const std::string& part : parts) out += (out.empty() ? "" : std::string(between)) + part;
  return out;
}

std::string state_words(const FootSeen& seen) {
  if (!seen.found.empty()) return joined(seen.found, "; ");
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

std::string foot_line(const FootSeen& seen) {
  std::string line =
      "  " + to_text(seen.day) + "  " + std::string(word_of(seen.foot)) + "  " + state_words(seen);
  if (!seen.acts.empty()) line += " - " + joined(seen.acts, "; ");
  if (seen.called_lame) line += " (came lame on it)";
  return line + "\n";
}

std::string head_of(const CowShown& shown) {
  std::string head = "Cow " + shown.cow_said + ", " + shown.herd_name;
  if (shown.cow.left_on) head += " (left " + to_text(*shown.cow.left_on) + ")";
  return head + "\n";
}

std::string fixtures_of(const CowShown& shown) {
  std::string out;
  for (const OnFootRow& on : shown.on_her) {
    out += "  " + std::string(word_of(on.foot)) + "  " + std::string(word_of(on.fixture)) +
           " on since " + to_text(on.since);
    if (on.claw == Claw::inside || on.claw == Claw::outside) {
      out += ", " + std::string(word_of(on.claw)) + " claw";
    }
    out += "\n";
  }
  return out.empty() ? out : "On her feet\n" + out;
}

}  // namespace

std::string cow_text(const CowShown& shown) {
  std::string out = head_of(shown) + fixtures_of(shown);
  if (!shown.open_tasks.empty()) out += "Open\n";
  for (const DueTask& task : shown.open_tasks) out += "  " + task_text(task) + "\n";
  out += shown.feet.empty() ? "No foot of hers was recorded yet.\n" : "Her feet, newest first\n";
  for (const FootSeen& seen : shown.feet) out += foot_line(seen);
  return out;
}

std::string herd_text(const HerdShown& shown) {
  std::string out = shown.name + "\n" + std::to_string(shown.cows.size()) + " cows on record, " +
                    std::to_string(shown.visits.size()) + " visits\n";
  for (const VisitRow& visit : shown.visits) {
    out += "  " + to_text(visit.day) + (visit.closed ? "" : "  still open") + "\n";
  }
  for (const NamedCount& count : shown.counts) {
    out += count.name + " (" + joined(count.columns, ", ") + ")\n";
    for (const CountLine& line : count.lines) {
      out += "  " + joined(line.groups, ", ") + ": " + std::to_string(line.count);
      for (const std::int64_t sum : line.sums) out += ", " + std::to_string(sum);
      out += "\n";
    }
  }
  return out;
}

}  // namespace evenclaw::cli
