// Herds: registering one, finding one by what was typed, and how each of them stands.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

struct Herd {
  HerdId herd;
  std::string name;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &Herd::herd, "herd");
    visit("name", &Herd::name, "its name");
  }
};

/// All herds of the store, by name.
Result<std::vector<Herd>> all_herds(Store& store);

/// The herd of that name: letter case does not matter, and a beginning is enough when only one
/// herd begins so. Faults: "herd-not-found" with the nearest name as remedy, "herd-ambiguous" with
/// the names that fit.
Result<Herd> find_herd(Store& store, std::string_view name);

/// A herd by id; "herd-not-found" when the store does not know it.
Result<Herd> herd_of(Store& store, HerdId herd);

/// Enters a new herd. A name that is there already is refused with "usage"; one that is a slip of
/// the pen away from a known herd (edit distance 1 or 2) with "answer-needed" unless `sure`.
Result<Herd> register_herd(const Ports& ports, std::string_view name, bool sure = false);

/// One line of the list of herds.
struct HerdLine {
  HerdId herd;
  std::string name;
  std::int32_t cows = 0;  // still there
  std::optional<Day> last_visit;
  std::optional<Day> open_visit;  // the day of a visit nobody ended
  std::int32_t overdue = 0;
  std::int32_t due = 0;
  std::int32_t coming = 0;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &HerdLine::herd, "herd");
    visit("name", &HerdLine::name, "its name");
    visit("cows", &HerdLine::cows, "cows on record that have not left");
    visit("last_visit", &HerdLine::last_visit, "day of the last visit");
    visit("open_visit", &HerdLine::open_visit, "day of a visit nobody ended");
    visit("overdue", &HerdLine::overdue, "tasks that are late today");
    visit("due", &HerdLine::due, "tasks that may be done today and are not late");
    visit("coming", &HerdLine::coming, "tasks whose time has not come");
  }
};

Result<std::vector<HerdLine>> list_herds(Store& store, Day today);

}  // namespace evenclaw
