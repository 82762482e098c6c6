#include "core/sheets/found_by_kind.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <utility>

#include "core/sheets/signs_for_vet.hpp"

namespace evenclaw {

namespace {

using FootOfCow = std::pair<CowId, Foot>;

/// Feet of which the same was called.
struct FeetAlike {
  std::string details;
  std::vector<std::pair<CowId, FootSet>> where;
};

struct Kind {
  std::string name;
  std::set<FootOfCow> feet;
  std::vector<FeetAlike> alike;
};

Kind& kind_named(std::vector<Kind>& kinds, std::string name) {
  const auto known =
      std::find_if(kinds.begin(), kinds.end(), [&](const Kind& kind) { return kind.name == name; });
  if (known != kinds.end()) return *known;
  kinds.push_back({std::move(name), {}, {}});
  return kinds.back();
}

/// "outside claw, heel, bad, pus above the coronet".
std::string details_of(const CowSeen& cow, const FindingRow& row, const VisitView& view) {
  std::string words = view.wording.finding_details(row);
  for (const std::string& sign : signs_of(view, cow, row.foot)) {
    words += (words.empty() ? "" : ", ") + sign;
  }
  return words.empty() ? view.wording.say(Saying::no_more_called) : words;
}

void add_foot(Kind& kind, const CowSeen& cow, Foot foot, const std::string& details) {
  kind.feet.emplace(cow.cow, foot);
  auto alike = std::find_if(kind.alike.begin(), kind.alike.end(),
                            [&](const FeetAlike& one) { return one.details == details; });
  if (alike == kind.alike.end()) alike = kind.alike.insert(kind.alike.end(), {details, {}});
  const bool is_new = alike->where.empty() || alike->where.back().first != cow.cow;
  if (is_new) alike->where.push_back({cow.cow, {}});
  alike->where.back().second.add(foot);
}

/// "outside claw, bad: 61 both hind feet, 184 left hind; outside claw, slight: 9 right hind".
Runs where_words(const Kind& kind, const VisitView& view) {
  Runs words;
  for (const FeetAlike& alike : kind.alike) {
    words.push_back(plain((words.empty() ? "" : "; ") + alike.details + ": "));
    bool is_first = true;
    for (const auto& [cow, feet] : alike.where) {
      if (!is_first) words.push_back(plain(", "));
      is_first = false;
      words.push_back(strong(view.names.in_text(cow)));
      words.push_back(plain(' ' + view.wording.feet(feet)));
    }
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
  for (Kind& kind : kinds) {
    std::stable_sort(
        kind.alike.begin(), kind.alike.end(),
        [](const FeetAlike& a, const FeetAlike& b) { return a.where.size() > b.where.size(); });
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
