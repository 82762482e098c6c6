// The list of a herd's cows as its herd program writes it out.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/trade/cow_facts.hpp"

namespace evenclaw {

/// One cow of the list; "" or nothing where it tells nothing. Numbers are as they stand there.
struct CowListed {
  int line = 0;
  std::string number;
  std::string tag;
  std::string electronic;
  std::string name;
  std::string breed;
  std::optional<Day> born;
  std::optional<HeiferOrCow> heifer_or_cow;
  std::optional<Day> calved;
  std::optional<int> lactation;
  std::optional<Day> dry_off;
  std::optional<Day> due_to_calve;
};

struct CowList {
  std::vector<CowListed> cows;
  std::vector<std::string> not_read;  // heads of columns that hold something else
};

/// Columns in any order, told by their heads in English or German, letter case apart. A day is
/// 2026-09-01 or 01.09.2026; lactation 0 is a heifer. Faults "list-unreadable", all of them with
/// line and words, those of csv_table(), no column that tells which cow, two columns for one
/// thing, a head a slip away from a known one, a day or number that is none, a cow that nothing
/// identifies, a number, tag or electronic number that stands there twice.
Result<CowList> cow_list(std::span<const std::string> lines);

/// The heads that are understood, "number (herd number, cow, ...)" a line.
std::vector<std::string> heads_of_list();

}  // namespace evenclaw
