#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/farm_lines.hpp"
#include "core/api/farm/change_desk.hpp"
#include "core/api/said_day.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {
    {"FILE", "a file of lines about changes; - or nothing: what is typed or piped", false}};
constexpr Option options[] = {{"--herd", "HERD", "the herd, when there are several"},
                              {"--day", "DAY", "the day it is told; else today"},
                              {"--by", "NAME", "who told it"},
                              {"--writer", "NAME", "who types"},
                              {"--sure", "", "a name that nobody has yet is meant so"}};
constexpr Example examples[] = {
    {"evenclaw change home.changes --herd home", "a file; given again, nothing is recorded twice"},
    {"printf 'footbath: copper; planned; decided 1 Oct\\n' | evenclaw change -",
     "what was altered, why, when it was decided, whether it is finished, for whom"},
    {"printf 'footbath finished 20 Nov\\n' | evenclaw change -",
     "later: the change of the footbath that was going on is whole now"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::lines, field_docs<ReplyItem>}};

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  const auto where = farm_meant(**records, invocation);
  if (!where) return tell_faults(where.faults(), invocation);
  auto desk = ChangeDesk::open((*records)->ports(), *where, (*records)->language());
  if (!desk) return tell_faults(desk.faults(), invocation);
  const std::string opening = "Changes of " + where->herd.name + ", " +
                              said_day(where->day, (*records)->today()) +
                              ". What was altered first, then why and when.";
  return take_farm_lines(invocation,
                         {opening, "change> ",
                          [&](std::span<const std::string> lines) { return desk->say_all(lines); },
                          [&] { return desk->end(); }});
}

}  // namespace

extern const Command change_command = {
    "change", "what the farm altered, why, and when", operands, options, examples, run, answers};

}  // namespace evenclaw::cli
