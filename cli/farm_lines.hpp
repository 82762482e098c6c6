// Lines about the farm from the terminal, a file or a pipe, answered as the record command does.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "cli/answer.hpp"
#include "cli/command.hpp"
#include "cli/lines_taken.hpp"
#include "cli/records.hpp"
#include "core/api/farm/at_farm.hpp"
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

/// Takes the lines, with an opening and a prompt for the one who types.
Exit take_farm_lines(const Invocation& invocation, const FarmCall& call, const std::string& opening,
                     LineTaker taker);

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
  return take_farm_lines(invocation, call, opening,
                         {[&](std::span<const std::string> lines) { return desk->say_all(lines); },
                          [&] { return desk->end(); }});
}

}  // namespace evenclaw::cli
