// Lines about the farm from the terminal, a file or a pipe, answered as the record command does.
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>

#include "cli/command.hpp"
#include "cli/records.hpp"
#include "core/api/farm/at_farm.hpp"
#include "core/api/reply.hpp"
#include "core/base/result.hpp"

namespace evenclaw::cli {

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

}  // namespace evenclaw::cli
