#include <algorithm>
#include <iostream>
#include <span>
#include <string>
#include <vector>

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/half_line.hpp"
#include "cli/lines_taken.hpp"
#include "cli/records.hpp"
#include "core/api/recording.hpp"
#include "core/api/said_day.hpp"
#include "core/base/text.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {
    {"FILE", "a file of called lines; - or nothing: what is typed or piped", false}};
constexpr Option options[] = {{"--herd", "HERD", "the herd, when more than one visit is open"},
                              {"--day", "DAY", "add to the visit of that day"}};
constexpr Example examples[] = {
    {"evenclaw record", "type line by line; a ? asks what may follow (?? all of it), Ctrl-D ends"},
    {"evenclaw record monday.calls", "a file; given again, nothing is recorded twice"},
    {"printf '412 lame LH\\nLH sole ulcer outside\\ndone\\n' | evenclaw record -",
     "a pipe; each \"saved 412 <entry>\" is printed when it is safe on the disk"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::lines, field_docs<ReplyItem>}};

constexpr std::size_t most_shown = 24;

/// A person who types what is called, or only its beginning to hear what may follow.
class Typing {
 public:
  Typing(Recording& recording, LinesTaken& taken) : recording_(recording), taken_(taken) {}

  Outcome each_line() {
    return LinesTaken::each_typed([&] { return asking() + begun(); },
                                  [&](const std::string& typed) { return answer(typed); });
  }

  /// What was begun and not said.
  [[nodiscard]] const std::string& half() const { return half_.kept(); }

 private:
  [[nodiscard]] std::string asking() const {
    const std::string cow = recording_.in_crush();
    return cow.empty() ? "next cow> " : cow + "> ";
  }

  [[nodiscard]] std::string begun() const { return half().empty() ? "" : half() + ' '; }

  Outcome answer(const std::string& typed) {
    const std::string before = asking();
    const std::string kept = begun();
    if (half_.asks(typed)) {
      print_suggestions();
      return Done{};
    }
    const std::string line = half_.completed(typed);
    const auto reply = recording_.say(line);
    if (!reply) return reply.faults();
    const bool goes_on = line.size() > typed.size();
    taken_.print_below(*reply, character_count(goes_on ? before : before + kept));
    return Done{};
  }

  /// More than a screen nobody reads beside the crush; the likeliest come first.
  void print_suggestions() const {
    const std::vector<Suggestion> all = recording_.may_follow(half());
    const std::size_t shown = half_.wants_all() ? all.size() : std::min(all.size(), most_shown);
    for (std::size_t at = 0; at < shown; ++at) {
      const Suggestion& suggestion = all[at];
      std::cout << "  " << suggestion.words;
      if (!suggestion.meaning.empty()) std::cout << "  (" << suggestion.meaning << ')';
      std::cout << '\n';
    }
    if (shown < all.size()) {
      std::cout << "  and " << all.size() - shown
                << " more: a line that ends in ?? shows them all\n";
    }
  }

  Recording& recording_;
  LinesTaken& taken_;
  HalfLine half_;
};

Exit take_typed_calls(Recording& recording, LinesTaken& taken, const Invocation& invocation) {
  Typing typing(recording, taken);
  const Outcome typed = typing.each_line();
  if (!typed) return tell_faults(typed.faults(), invocation);
  if (!typing.half().empty()) {
    std::cout << "Not said, and not recorded: " << typing.half() << '\n';
  }
  const std::string cow = recording.in_crush();
  const bool is_unfinished = recording.would_be_unfinished();
  const Exit exit = taken.end();
  if (is_unfinished) {
    std::cout << cow << " was not finished. To finish her: evenclaw record, say the same lines\n"
              << "again, and go on.\n";
  }
  return exit;
}

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  auto meant = (*records)->visit_meant(invocation, VisitState::open);
  if (!meant) return tell_faults(meant.faults(), invocation);
  auto recording = Recording::open((*records)->ports(), *meant, (*records)->language());
  if (!recording) return tell_faults(recording.faults(), invocation);
  LinesTaken taken(invocation,
                   {[&](std::span<const std::string> lines) { return recording->say_all(lines); },
                    [&] { return recording->end_of_input(); }});
  taken.print(recording->opening());
  return taken.take([&] {
    const Visit& visit = recording->visit();
    std::cout << "Recording " << visit.herd_name << ", " << said_day(visit.day, (*records)->today())
              << ". A line that ends in ? asks what may follow; Ctrl-D ends.\n";
    return take_typed_calls(*recording, taken, invocation);
  });
}

}  // namespace

extern const Command record_command = {
    "record", "record what is called out", operands, options, examples, run, answers};

}  // namespace evenclaw::cli
