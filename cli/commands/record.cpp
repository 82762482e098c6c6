#include <unistd.h>

#include <algorithm>
#include <span>

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/half_line.hpp"
#include "cli/line_source.hpp"
#include "cli/records.hpp"
#include "cli/reply_printer.hpp"
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

/// A day is one batch or two; more at once would only grow without end.
constexpr std::size_t lines_a_batch = 2000;

constexpr std::size_t most_shown = 24;

/// Takes lines as they come and remembers how it ended.
class Desk {
 public:
  Desk(Recording& recording, const Invocation& invocation, Day today)
      : recording_(recording), printer_(invocation.json), invocation_(invocation), today_(today) {
    printer_.print(recording.opening());
  }

  /// Read whole first, so that junk is refused before anything is recorded.
  Exit take_file(const std::string& path) {
    auto lines = lines_of_file(path);
    if (!lines) return tell_faults(lines.faults(), invocation_);
    if (lines->empty()) {
      return tell_faults({{"nothing-to-do", path + " holds no line", path}}, invocation_);
    }
    std::span<const std::string> left(*lines);
    while (!left.empty()) {
      const std::size_t now = std::min(left.size(), lines_a_batch);
      if (!take_together(left.first(now))) return failed_;
      left = left.subspan(now);
    }
    return end();
  }

  /// What a pipe holds already is recorded and acknowledged together, so that a fast writer is not
  /// slowed down and one who waits for the answer gets it.
  Exit take_pipe() {
    LineReader reader(STDIN_FILENO, longest_called_line);
    while (true) {
      auto lines = reader.next(lines_a_batch);
      if (!lines) return tell_faults(lines.faults(), invocation_);
      if (lines->empty()) return end();
      if (!take_together(*lines)) return failed_;
    }
  }

  /// A person sees the answer to every line before the next one.
  Exit take_keyboard() {
    LineReader reader(STDIN_FILENO, longest_called_line);
    const Visit& visit = recording_.visit();
    std::cout << "Recording " << visit.herd_name << ", " << said_day(visit.day, today_)
              << ". A line that ends in ? asks what may follow; Ctrl-D ends.\n";
    HalfLine half;
    while (true) {
      const std::string prompt = prompt_now();
      const std::string begun = half.kept().empty() ? std::string() : half.kept() + ' ';
      std::cout << prompt << begun << std::flush;
      auto lines = reader.next(1);
      if (!lines) return tell_faults(lines.faults(), invocation_);
      if (lines->empty()) break;
      const std::string& typed = lines->front();
      if (half.asks(typed)) {
        print_suggestions(half);
        continue;
      }
      const std::string line = half.completed(typed);
      const auto reply = recording_.say(line);
      if (!reply) return tell_faults(reply.faults(), invocation_);
      const bool goes_on = line.size() > typed.size();
      printer_.print_below(*reply, character_count(goes_on ? prompt : prompt + begun));
    }
    std::cout << '\n';
    if (!half.kept().empty()) std::cout << "Not said, and not recorded: " << half.kept() << '\n';
    const std::string cow = recording_.in_crush();
    const bool is_unfinished = recording_.would_be_unfinished();
    const Exit exit = end();
    if (is_unfinished) {
      std::cout << cow << " was not finished. To finish her: evenclaw record, say the same lines\n"
                << "again, and go on.\n";
    }
    return exit;
  }

 private:
  [[nodiscard]] std::string prompt_now() const {
    const std::string cow = recording_.in_crush();
    return cow.empty() ? "next cow> " : cow + "> ";
  }

  /// More than a screen nobody reads beside the crush; the likeliest come first.
  void print_suggestions(const HalfLine& half) const {
    const std::vector<Suggestion> all = recording_.may_follow(half.kept());
    const std::size_t shown = half.wants_all() ? all.size() : std::min(all.size(), most_shown);
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

  bool take_together(std::span<const std::string> lines) {
    return answered(recording_.say_all(lines));
  }

  bool answered(const Result<Reply>& reply) {
    if (reply) {
      printer_.print(*reply);
      return true;
    }
    failed_ = tell_faults(reply.faults(), invocation_);
    return false;
  }

  Exit end() { return answered(recording_.end_of_input()) ? printer_.exit() : failed_; }

  Recording& recording_;
  ReplyPrinter printer_;
  const Invocation& invocation_;
  Day today_;
  Exit failed_ = Exit::world;
};

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  auto visit = (*records)->visit_meant(invocation, VisitState::open);
  if (!visit) return tell_faults(visit.faults(), invocation);
  auto recording = Recording::open((*records)->ports(), *visit, (*records)->language());
  if (!recording) return tell_faults(recording.faults(), invocation);
  Desk desk(*recording, invocation, (*records)->today());
  const bool from_file = !invocation.operands.empty() && invocation.operands.front() != "-";
  if (from_file) return desk.take_file(invocation.operands.front());
  const bool typed = isatty(STDIN_FILENO) == 1 && !invocation.json;
  return typed ? desk.take_keyboard() : desk.take_pipe();
}

}  // namespace

extern const Command record_command = {
    "record", "record what is called out", operands, options, examples, run, answers};

}  // namespace evenclaw::cli
