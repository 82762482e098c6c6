#include "core/api/herds.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include "core/api/due.hpp"
#include "core/api/journal.hpp"
#include "core/base/edit_distance.hpp"
#include "core/base/text.hpp"
#include "core/log/bodies.hpp"
#include "core/trade/cow_rows.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t slip_of_the_pen = 2;

bool by_name(const Herd& a, const Herd& b) {
  const std::string name_a = fold_case(a.name);
  const std::string name_b = fold_case(b.name);
  return name_a != name_b ? name_a < name_b : a.herd < b.herd;
}

std::string names_of(const std::vector<Herd>& herds) {
  std::string names;
  for (const Herd& herd : herds) {
    if (!names.empty()) names += ", ";
    names += herd.name;
  }
  return names;
}

/// The herd whose name is nearest to what was typed; null when there are none.
const Herd* nearest_herd(const std::vector<Herd>& herds, std::string_view folded) {
  const Herd* nearest = nullptr;
  std::size_t least = 0;
  for (const Herd& herd : herds) {
    const std::size_t distance = edit_distance(folded, fold_case(herd.name));
    if (nearest != nullptr && distance >= least) continue;
    nearest = &herd;
    least = distance;
  }
  return nearest;
}

Fault unknown_herd(const std::vector<Herd>& herds, const std::string& name) {
  Fault fault{
      .slug = "herd-not-found", .message = "There is no herd called " + name + ".", .token = name};
  const Herd* nearest = nearest_herd(herds, fold_case(name));
  fault.remedy =
      nearest == nullptr ? "Say that it is a new herd." : "Did you mean " + nearest->name + "?";
  return fault;
}

Outcome check_new_name(const std::vector<Herd>& herds, const std::string& name, bool sure) {
  if (name.empty()) return Fault{.slug = "usage", .message = "A herd needs a name."};
  if (!is_one_plain_line(name)) {
    return Fault{.slug = "usage",
                 .message = "The name of a herd holds a character that cannot be shown.",
                 .remedy = "Write it in letters, on one line."};
  }
  const std::string folded = fold_case(name);
  const Herd* nearest = nearest_herd(herds, folded);
  if (nearest == nullptr) return Done{};
  const std::size_t distance = edit_distance(folded, fold_case(nearest->name));
  if (distance == 0) {
    return Fault{.slug = "usage",
                 .message = "There is a herd called " + nearest->name + " already.",
                 .token = name};
  }
  if (distance <= slip_of_the_pen && !sure) {
    return Fault{.slug = "answer-needed",
                 .message = "Is " + name + " the same herd as " + nearest->name + "?",
                 .token = name,
                 .remedy = "Write " + nearest->name + ", or say that it is another herd."};
  }
  return Done{};
}

Result<HerdLine> line_of(Store& store, const Herd& herd, Day today) {
  HerdLine line;
  line.herd = herd.herd;
  line.name = herd.name;
  const auto cows = select_as<CowRow>(store, herd.herd);
  if (!cows) return cows.faults();
  line.cows = static_cast<std::int32_t>(std::count_if(
      cows->begin(), cows->end(), [](const CowRow& cow) { return !cow.left_on.has_value(); }));
  const auto visits = select_as<VisitRow>(store, herd.herd, {}, {"day"});
  if (!visits) return visits.faults();
  for (const VisitRow& visit : *visits) {
    line.last_visit = visit.day;
    if (!visit.closed) line.open_visit = visit.day;
  }
  const auto due = list_due(store, herd.herd, today);
  if (!due) return due.faults();
  line.overdue = due->overdue;
  line.due = due->due;
  line.coming = due->coming;
  return line;
}

}  // namespace

Result<std::vector<Herd>> all_herds(Store& store) {
  std::map<Uuid, Herd> by_scope;
  const Outcome read = store.read_entries(
      {std::nullopt, std::nullopt, {std::string(HerdRegistered::kind)}}, [&](const Entry& entry) {
        const auto body = body_as<HerdRegistered>(entry);
        // In the total order the last name given is the one that holds.
        if (body) by_scope[entry.envelope.scope] = {HerdId{entry.envelope.scope}, body->name};
        return true;
      });
  if (!read) return read.faults();
  std::vector<Herd> herds;
  herds.reserve(by_scope.size());
  for (const auto& [scope, herd] : by_scope) herds.push_back(herd);
  std::sort(herds.begin(), herds.end(), by_name);
  return herds;
}

Result<Herd> find_herd(Store& store, std::string_view name) {
  auto herds = all_herds(store);
  if (!herds) return herds.faults();
  const std::string said(trimmed(name));
  const std::string folded = fold_case(said);
  std::vector<Herd> fitting;
  for (const Herd& herd : *herds) {
    const std::string known = fold_case(herd.name);
    if (known == folded) return herd;
    if (!folded.empty() && known.compare(0, folded.size(), folded) == 0) fitting.push_back(herd);
  }
  if (fitting.size() == 1) return fitting.front();
  if (fitting.empty()) return unknown_herd(*herds, said);
  return Fault{.slug = "herd-ambiguous",
               .message = "Several herds begin with " + said + ": " + names_of(fitting) + ".",
               .token = said,
               .remedy = "Write more of the name."};
}

Result<Herd> herd_of(Store& store, HerdId herd) {
  auto herds = all_herds(store);
  if (!herds) return herds.faults();
  for (const Herd& known : *herds) {
    if (known.herd == herd) return known;
  }
  return Fault{.slug = "herd-not-found",
               .message = "The store knows no herd with the id " + to_text(herd) + ".",
               .token = to_text(herd)};
}

Result<Herd> register_herd(const Ports& ports, std::string_view name, bool sure) {
  const auto herds = all_herds(ports.store);
  if (!herds) return herds.faults();
  Herd herd;
  herd.name = trimmed(name);
  const Outcome fit = check_new_name(*herds, herd.name, sure);
  if (!fit) return fit.faults();
  herd.herd = HerdId{ports.ids.next()};
  HerdRegistered body;
  body.name = herd.name;
  const auto written = write_one(ports, herd.herd.value, body, {});
  if (!written) return written.faults();
  return herd;
}

Result<std::vector<HerdLine>> list_herds(Store& store, Day today) {
  const auto herds = all_herds(store);
  if (!herds) return herds.faults();
  std::vector<HerdLine> lines;
  for (const Herd& herd : *herds) {
    auto line = line_of(store, herd, today);
    if (!line) return line.faults();
    lines.push_back(*std::move(line));
  }
  return lines;
}

}  // namespace evenclaw
