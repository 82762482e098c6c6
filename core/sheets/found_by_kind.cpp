#include "core/sheets/found_by_kind.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <utility>

#include "core/sheets/vet_stops.hpp"

namespace evenclaw {

namespace {

using FootOfCow = std::pair<CowId, Foot>;

/// Feet of a cow of which the same was called.
struct FeetAlike {
  CowId cow;
  std::string details;
  FootSet feet;
};

struct Kind {
  std::string name;
  std::set<FootOfCow> feet;
  std::vector<FeetAlike> where;
};

Kind& kind_named(std::vector<Kind>& kinds, std::string name) {
  const auto known =
      std::find_if(kinds.begin(), kinds.end(), [&](const Kind& kind) { return kind.name == name; });
  if (known != kinds.end()) return *known;
  kinds.push_back({std::move(name), {}, {}});
  return kinds.back();
}

/// ", outside claw, heel, bad, pus above the coronet".
std::string details_of(const CowSeen& cow, const FindingRow& row, const VisitView& view) {
  const std::string details = view.wording.finding_details(row);
  std::string words = details.empty() ? details : ", " + details;
  for (const std::string& sign : signs_of(view, cow, row.foot)) words += ", " + sign;
  return words;
}

void add_foot(Kind& kind, const CowSeen& cow, Foot foot, std::string details) {
  kind.feet.emplace(cow.cow, foot);
  const auto known = std::find_if(
      kind.where.begin(), kind.where.end(),
      [&](const FeetAlike& alike) { return alike.cow == cow.cow && alike.details == details; });
  if (known != kind.where.end()) {
    known->feet.add(foot);
  } else {
    kind.where.push_back({cow.cow, std::move(details), {foot}});
  }
}

/// "61 both hind feet, slight; 184 left hind, outside claw, bad".
Runs where_words(const Kind& kind, const VisitView& view) {
  Runs words;
  for (const FeetAlike& alike : kind.where) {
    if (!words.empty()) words.push_back(plain("; "));
    words.push_back(strong(view.names.in_text(alike.cow)));
    words.push_back(plain(' ' + view.wording.feet(alike.feet) + alike.details));
  }
  return words;
}

std::vector<Kind> kinds_of(const VisitView& view) {
  std::vector<Kind> kinds;
  for (const CowSeen& cow : view.cows) {
    for (const FindingRow* row : cow.findings) {
      add_foot(kind_named(kinds, view.wording.finding_name(*row)), cow, row->foot,
               details_of(cow, *row, view));
    }
  }
  std::stable_sort(kinds.begin(), kinds.end(),
                   [](const Kind& a, const Kind& b) { return a.feet.size() > b.feet.size(); });
  return kinds;
}

}  // namespace

std::vector<Block> found_by_kind(const VisitView& view) {
  const Wording& wording = view.wording;
  Table table{"",
              {{wording.say(Saying::column_found)},
               {wording.say(Saying::column_feet)},
               {wording.say(Saying::column_where)}},
              {},
              RowHead::words};
  std::set<FootOfCow> feet;
  const std::string of = std::to_string(feet_lifted(view));
  for (const Kind& kind : kinds_of(view)) {
    feet.insert(kind.feet.begin(), kind.feet.end());
    const std::string count =
        wording.say(Saying::n_of, {{"n", std::to_string(kind.feet.size())}, {"of", of}});
    table.rows.push_back({{plain(kind.name)}, {plain(unbroken(count))}, where_words(kind, view)});
  }
  if (table.rows.empty()) return {};
  const std::string aside =
      wording.say(Saying::on_feet_lifted, {{"n", std::to_string(feet.size())}, {"of", of}});
  return {Heading{3, wording.say(Saying::vet_found_title), aside}, std::move(table)};
}

}  // namespace evenclaw
