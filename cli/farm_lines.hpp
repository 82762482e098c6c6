// Lines about the farm from the terminal, a file or a pipe, answered as the record command does.
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>

#include "cli/answer.hpp"
#include "cli/command.hpp"
#include "cli/records.hpp"
#include "core/api/farm/at_farm.hpp"
#include "core/api/reply.hpp"
#include "core/api/said_day.hpp"
#include "core/base/result.hpp"

namespace evenclaw::cli {

/// How a command that takes lines about the farm opens: "Scoring Home Farm, today. Say the scale
/// first.", for the one who types.
struct FarmCall {
  std::string_view doing;
  std::string_view first;
  std::string_view prompt;
};

/// Who takes the lines.
struct FarmLines {
  std::string opening;  // for the one who types
  std::string prompt;
  std::function<Result<Reply>(std::span<const std::string>)> say;
  std::function<Result<Reply>()> end;
};

/// From the file named first among the operands, from the terminal, or else from a pipe. A file is
/// read whole before anything of it is recorded. Exit::asked when a line was refused or a question
/// is open.
Exit take_farm_lines(const Invocation& invocation, const FarmLines& lines);

/// Where, on which day and by whom: --herd, --day (today when it is not given, never later), --by
/// and --writer, with --sure for names nobody has yet.
Result<AtFarm> farm_meant(Records& records, const Invocation& invocation);

/// The whole of such a command, at the desk that reads its lines: one that is opened with ports,
/// place and language, is told lines by say_all() and closed by end().
template <class Desk>
Exit take_at_desk(const Invocation& invocation, const FarmCall& call) {
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  const auto where = farm_meant(**records, invocation);
  if (!where) return tell_faults(where.faults(), invocation);
  auto desk = Desk::open((*records)->ports(), *where, (*records)->language());
  if (!desk) return tell_faults(desk.faults(), invocation);
  std::string opening(call.doing);
  opening += ' ' + where->herd.name + ", " + said_day(where->day, (*records)->today()) + ". ";
  opening += call.first;
  return take_farm_lines(invocation,
                         {opening, std::string(call.prompt),
                          [&](std::span<const std::string> lines) { return desk->say_all(lines); },
                          [&] { return desk->end(); }});
}

}  // namespace evenclaw::cli
