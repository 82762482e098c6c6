#include "tests/stories/ordinary_days.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <optional>
#include <set>
#include <sstream>

#include "core/api/cow_register.hpp"
#include "core/api/products.hpp"
#include "core/base/enum_words.hpp"
#include "core/log/bodies.hpp"
#include "core/log/body.hpp"
#include "core/trade/call_line/language.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/core/trade/told_lines.hpp"
#include "tests/core/trade/told_medicine.hpp"

namespace evenclaw::test {

namespace {

using Lines = std::vector<std::string>;

Lines lines_of_file(const std::string& path) {
  std::ifstream in(path);
  REQUIRE_MESSAGE(in.good(), path);
  Lines lines;
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

/// What stands behind "# date: " and the like in the first lines of a day.
std::string told_in_head(const Lines& lines, const std::string& what) {
  const std::string head = "# " + what + ": ";
  for (const std::string& line : lines) {
    if (line.rfind(head, 0) == 0) return line.substr(head.size());
  }
  REQUIRE_MESSAGE(false, "no line says " << head);
  return {};
}

std::optional<Rank> rank_of(ReplyKind kind) {
  switch (kind) {
    case ReplyKind::stop:
      return Rank::stop;
    case ReplyKind::ask:
    case ReplyKind::question:
      return Rank::ask;
    case ReplyKind::note:
      return Rank::note;
    case ReplyKind::saved:
    case ReplyKind::there_already:
    case ReplyKind::told:
    case ReplyKind::mark:
    case ReplyKind::refused:
      return std::nullopt;
  }
  return std::nullopt;
}

/// One visit's answers, sorted into alarms and refusals.
struct Heard {
  std::vector<Alarm> alarms;
  Lines refused;

  void take(const std::vector<ReplyItem>& items) {
    for (const ReplyItem& item : items) {
      if (item.kind == ReplyKind::refused) refused.push_back(to_line(item));
      const std::optional<Rank> rank = rank_of(item.kind);
      if (!rank) continue;
      const bool known = std::any_of(alarms.begin(), alarms.end(), [&](const Alarm& alarm) {
        return alarm.cow == item.cow && alarm.words == item.words;
      });
      const bool asked_freely = item.kind == ReplyKind::question;
      if (!known) {
        alarms.push_back({item.cow, *rank, asked_freely ? "question" : item.slug, item.words});
      }
    }
  }
};

/// What is only noted for the sheet is told to nobody beside the crush.
void add_notes(Heard& heard, Workplace& place, const Visit& visit) {
  std::set<EntryId> count;
  const auto turns = select_as<TurnRow>(place.store, visit.herd).value();
  for (const TurnRow& turn : turns) {
    count.insert(turn.turn);
  }
  const Outcome read = place.store.read_entries(
      {visit.herd.value, visit.visit.value, {std::string(TurnRecorded::kind)}},
      [&](const Entry& entry) {
        const auto body = body_as<TurnRecorded>(entry);
        REQUIRE(body.has_value());
        if (count.count(entry.envelope.id) == 0) return true;
        for (const WarningShown& shown : body->warnings) {
          const Warning& warning = shown.warning;
          if (warning.rank != Rank::note || !shown.decision.empty()) continue;
          heard.alarms.push_back(
              {called_as(body->turn.cow), Rank::note, warning.rule, warning.words});
        }
        return true;
      });
  REQUIRE(read.ok());
}

struct HeardVisit {
  Heard heard;
  VisitEnded ended;
};

/// Typed line by line, as at the crush, then closed. Where minutes are told, the clock goes on.
HeardVisit typed_visit(Workplace& place, const std::string& on, FootSet feet, const Lines& lines) {
  const Visit visit = place.start(on, feet);
  constexpr int seconds_in_minute = 60;
  HeardVisit typed;
  {
    Recording recording = place.record(visit);
    for (const std::string& line : lines) {
      if (const auto stood = told::time_told(line)) {
        place.clock.pass(stood->seconds / seconds_in_minute);
      } else {
        typed.heard.take(recording.say(line).value().items);
      }
    }
    typed.heard.take(recording.end_of_visit().value().items);
  }
  typed.ended = end_visit(place.ports(), visit, english()).value();
  typed.heard.take(typed.ended.last_turn);
  add_notes(typed.heard, place, visit);
  return typed;
}

std::string without_edges(const std::string& text) {
  const std::size_t from = text.find_first_not_of(' ');
  if (from == std::string::npos) return {};
  return text.substr(from, text.find_last_not_of(' ') - from + 1);
}

/// "412 | Ask | why"; a rank nobody knows is a slip of the file.
Deserved deserved_of(const std::string& line) {
  std::istringstream parts(line);
  std::string cow;
  std::string rank;
  std::string reason;
  std::getline(parts, cow, '|');
  std::getline(parts, rank, '|');
  std::getline(parts, reason);
  Deserved told{without_edges(cow), Rank::note, without_edges(reason)};
  rank = without_edges(rank);
  REQUIRE_MESSAGE((rank == "Stop" || rank == "Ask" || rank == "Note"), line);
  REQUIRE_MESSAGE(!told.reason.empty(), line);
  if (rank == "Stop") told.rank = Rank::stop;
  if (rank == "Ask") told.rank = Rank::ask;
  return told;
}

std::vector<Deserved> deserved_in(const std::string& path) {
  std::vector<Deserved> all;
  for (const std::string& line : lines_of_file(path)) {
    if (!line.empty() && line.front() != '#') all.push_back(deserved_of(line));
  }
  return all;
}

/// A cow without a number is named in the .deserved file by the words before her looks.
bool is_of(const std::string& cow_said, const std::string& cow) {
  return cow_said == cow || cow_said.rfind(cow + ",", 0) == 0;
}

std::string asked_of(const std::string& cow, const std::vector<OpenPoint>& open) {
  std::string kinds;
  for (const OpenPoint& point : open) {
    const bool nameless = point.kind == OpenPointKind::unnumbered && cow == "no number";
    if (!nameless && !is_of(point.cow_said, cow)) continue;
    kinds += (kinds.empty() ? "" : ", ") + std::string(word_of(point.kind));
  }
  return kinds;
}

void add(Lines& to, const Lines& lines) {
  to.insert(to.end(), lines.begin(), lines.end());
}

/// "Jersey: 2 3 5" of the farm's register, where the day has one.
void register_herd_of(Workplace& place, const std::string& path, Day from) {
  if (!std::filesystem::exists(path)) return;
  for (const std::string& line : lines_of_file(path)) {
    if (line.empty() || line.front() == '#') continue;
    const std::size_t colon = line.find(": ");
    REQUIRE_MESSAGE(colon != std::string::npos, line);
    CowDetails details;
    details.breed = line.substr(0, colon);
    std::istringstream numbers(line.substr(colon + 2));
    for (std::string number; numbers >> number;) {
      REQUIRE(
          register_cow(place.ports(), place.herd().herd, {number, from, {}}, details, false).ok());
    }
  }
}

/// The invented products, on the herd's list from that day on.
void list_products_for(Workplace& place, Day from) {
  for (const ListedProduct& listed : told::invented_list().list) {
    REQUIRE(list_product(place.ports(), place.herd().herd, listed.product, from, true).ok());
  }
}

struct PlantedVisit {
  int weeks_before = 0;
  Lines lines;
};

/// "# before" is four weeks back, "# before 8 weeks" as many as it says, "# day" the day itself.
std::optional<PlantedVisit> visit_begun_by(const std::string& line) {
  constexpr int usual_weeks = 4;
  if (line == "# day") return PlantedVisit{0, {}};
  if (line == "# before") return PlantedVisit{usual_weeks, {}};
  const std::string head = "# before ";
  if (line.rfind(head, 0) != 0) return std::nullopt;
  return PlantedVisit{std::stoi(line.substr(head.size())), {}};
}

}  // namespace

void grant(std::vector<Alarm>& alarms, std::vector<Deserved>& deserved) {
  for (const bool quieter_too : {false, true}) {
    for (Alarm& alarm : alarms) {
      const auto line = std::find_if(deserved.begin(), deserved.end(), [&](const Deserved& one) {
        const bool ranks_fit = quieter_too ? alarm.rank < one.rank : alarm.rank == one.rank;
        return !one.said && ranks_fit && is_of(alarm.cow, one.cow);
      });
      if (alarm.deserved || line == deserved.end()) continue;
      alarm.deserved = true;
      line->said = true;
    }
  }
}

int beyond(const PlayedDay& day, Rank rank) {
  return static_cast<int>(
      std::count_if(day.alarms.begin(), day.alarms.end(),
                    [rank](const Alarm& alarm) { return alarm.rank == rank && !alarm.deserved; }));
}

PlayedDay played_day(const std::string& path) {
  Workplace place;
  const Lines before = lines_of_file(path + "-before.calls");
  const Lines lines = lines_of_file(path + ".calls");
  PlayedDay day;
  day.name = path.substr(path.rfind('/') + 1);
  day.herd = told_in_head(lines, "herd");
  const std::string day_before = told_in_head(before, "date");
  register_herd_of(place, path + ".register", test::day(day_before));
  day.refused = typed_visit(place, day_before, {}, before).heard.refused;
  const HeardVisit typed = typed_visit(place, told_in_head(lines, "date"), {}, lines);
  add(day.refused, typed.heard.refused);
  day.cows = typed.ended.cows;
  day.alarms = typed.heard.alarms;
  day.deserved = deserved_in(path + ".deserved");
  grant(day.alarms, day.deserved);
  for (Deserved& line : day.deserved) line.closing = asked_of(line.cow, typed.ended.open);
  return day;
}

std::vector<PlayedDay> ordinary_days() {
  std::vector<PlayedDay> days;
  for (const char* name : {"day1", "day2", "day3", "day4", "day5"}) {
    days.push_back(played_day(std::string("data/ordinary/") + name));
  }
  return days;
}

PlayedFault played_fault(const std::string& file) {
  constexpr int days_a_week = 7;
  const Day today = day("2026-10-27");
  const Lines lines = lines_of_file("data/ordinary/planted/" + file + ".calls");
  std::vector<PlantedVisit> visits;
  PlayedFault fault;
  Workplace place;
  for (const std::string& line : lines) {
    if (line.rfind("# needs words: ", 0) == 0) fault.needs_words = true;
    if (line == "# herd's list") list_products_for(place, today);
    if (const auto begun = visit_begun_by(line)) visits.push_back(*begun);
    const bool is_played = !line.empty() && (line.front() != '#' || told::time_told(line));
    if (is_played && !visits.empty()) visits.back().lines.push_back(line);
  }
  REQUIRE_MESSAGE((!visits.empty() && visits.back().weeks_before == 0), file);
  for (const PlantedVisit& visit : visits) {
    const Day on{today.since_epoch - visit.weeks_before * days_a_week};
    const Heard heard = typed_visit(place, to_text(on), four_feet, visit.lines).heard;
    add(fault.refused, heard.refused);
    fault.alarms = heard.alarms;
  }
  return fault;
}

std::vector<std::string> planted_names() {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator("data/ordinary/planted")) {
    names.push_back(entry.path().stem().string());
  }
  std::sort(names.begin(), names.end());
  return names;
}

}  // namespace evenclaw::test
