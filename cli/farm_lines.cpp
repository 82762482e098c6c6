#include "cli/farm_lines.hpp"

#include <unistd.h>

#include <algorithm>
#include <cstddef>
#include <iostream>
#include <vector>

#include "cli/answer.hpp"
#include "cli/line_source.hpp"
#include "cli/reply_printer.hpp"
#include "core/api/people.hpp"
#include "core/base/text.hpp"

namespace evenclaw::cli {
namespace {

constexpr std::size_t farm_lines_a_batch = 2000;

class FarmTable {
 public:
  FarmTable(const Invocation& invocation, const FarmLines& lines)
      : invocation_(invocation), lines_(lines), printer_(invocation.json) {}

  Exit take_file(const std::string& path) {
    auto read = lines_of_file(path);
    if (!read) return tell_faults(read.faults(), invocation_);
    std::span<const std::string> left(*read);
    if (left.empty()) {
      return tell_faults({{"nothing-to-do", path + " holds no line", path}}, invocation_);
    }
    while (!left.empty()) {
      const std::size_t now = std::min(left.size(), farm_lines_a_batch);
      if (!answered(lines_.say(left.first(now)))) return failed_;
      left = left.subspan(now);
    }
    return end();
  }

  Exit take_pipe() {
    LineReader reader(STDIN_FILENO, longest_called_line);
    while (true) {
      auto read = reader.next(farm_lines_a_batch);
      if (!read) return tell_faults(read.faults(), invocation_);
      if (read->empty()) return end();
      if (!answered(lines_.say(*read))) return failed_;
    }
  }

  Exit take_keyboard() {
    LineReader reader(STDIN_FILENO, longest_called_line);
    std::cout << lines_.opening << " Ctrl-D ends.\n";
    while (true) {
      std::cout << lines_.prompt << std::flush;
      auto read = reader.next(1);
      if (!read) return tell_faults(read.faults(), invocation_);
      if (read->empty()) break;
      const auto reply = lines_.say(*read);
      if (!reply) return tell_faults(reply.faults(), invocation_);
      printer_.print_below(*reply, character_count(lines_.prompt));
    }
    std::cout << '\n';
    return end();
  }

 private:
  bool answered(const Result<Reply>& reply) {
    if (reply) {
      printer_.print(*reply);
      return true;
    }
    failed_ = tell_faults(reply.faults(), invocation_);
    return false;
  }

  Exit end() { return answered(lines_.end()) ? printer_.exit() : failed_; }

  const Invocation& invocation_;
  const FarmLines& lines_;
  ReplyPrinter printer_;
  Exit failed_ = Exit::world;
};

Result<PersonId> person_option(Records& records, const Invocation& invocation,
                               std::string_view option) {
  if (!invocation.has(option)) return PersonId{};
  return certain_person(records.ports(), invocation.value(option), invocation.has("--sure"));
}

}  // namespace

Exit take_farm_lines(const Invocation& invocation, const FarmLines& lines) {
  FarmTable table(invocation, lines);
  const bool from_file = !invocation.operands.empty() && invocation.operands.front() != "-";
  if (from_file) return table.take_file(invocation.operands.front());
  const bool is_typed = isatty(STDIN_FILENO) == 1 && !invocation.json;
  return is_typed ? table.take_keyboard() : table.take_pipe();
}

Result<AtFarm> farm_meant(Records& records, const Invocation& invocation) {
  auto herd = records.herd_meant(invocation);
  if (!herd) return herd.faults();
  const auto day = day_option(invocation, "--day");
  if (!day) return day.faults();
  AtFarm where{*std::move(herd), day->value_or(records.today()), {}};
  if (where.day > records.today()) {
    return Fault{.slug = "date-in-future",
                 .message = to_text(where.day) + " lies after today",
                 .token = to_text(where.day)};
  }
  const auto caller = person_option(records, invocation, "--by");
  if (!caller) return caller.faults();
  const auto writer = person_option(records, invocation, "--writer");
  if (!writer) return writer.faults();
  where.by = {*caller, *writer};
  return where;
}

}  // namespace evenclaw::cli
