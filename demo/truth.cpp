#include "demo/truth.hpp"

#include <cmath>
#include <utility>

#include "core/wire/json.hpp"
#include "core/wire/value_json.hpp"
#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

std::int32_t thousandths(double value) {
  return static_cast<std::int32_t>(std::lround(value * 1000.0));
}

/// Weeks of one farm's story as days.
struct Days {
  const BusinessWanted& wanted;

  [[nodiscard]] Day of(int week) const { return first_day_of_week(wanted, week); }

  [[nodiscard]] std::optional<Day> unless_never(int week) const {
    if (week < 0) return std::nullopt;
    return of(week);
  }
};

FarmTruth farm_truth(const HerdStory& story) {
  const Farm& farm = story.farm;
  const WeeksLived& lived = story.herd.lived();
  FarmTruth truth;
  truth.farm = farm.index + 1;
  truth.name = farm.name;
  truth.cows = farm.cows;
  truth.floor = farm.floor;
  truth.bath = farm.bath;
  truth.dirt = thousandths(farm.dirt);
  truth.horn_effect = thousandths(farm.horn_effect);
  truth.skin_effect = thousandths(farm.skin_effect);
  truth.calves = farm.calves;
  truth.rhythm = farm.rhythm;
  truth.feet = story.visits.empty() ? four_feet : story.visits.front().todays_feet;
  truth.tells_what_was_done = farm.tells_what_was_done;
  truth.weeks_first = lived.by_lactation[0];
  truth.weeks_second = lived.by_lactation[1];
  truth.weeks_later = lived.by_lactation[2];
  return truth;
}

CowTruth cow_truth(int farm, int number, int born, const std::vector<int>& calvings,
                   const Days& days) {
  CowTruth truth;
  truth.farm = farm;
  truth.cow = number;
  truth.born = days.of(born);
  truth.lactation = static_cast<std::int32_t>(calvings.size());
  truth.first_calved = days.of(calvings.front());
  truth.last_calved = days.of(calvings.back());
  return truth;
}

void add_cows(BusinessTruth& truth, const HerdStory& story, const Days& days) {
  const int farm = story.farm.index + 1;
  for (const Gone& gone : story.herd.gone()) {
    if (gone.week < weeks_before_records) continue;
    CowTruth cow = cow_truth(farm, gone.number, gone.born, gone.calvings, days);
    cow.gone = days.of(gone.week);
    cow.because = gone.because;
    truth.cows.push_back(cow);
  }
  for (const Cow& cow : story.herd.cows()) {
    truth.cows.push_back(cow_truth(farm, cow.number, cow.born, cow.calvings, days));
  }
}

void add_episodes(BusinessTruth& truth, const HerdStory& story, const Days& days) {
  for (const Episode& episode : story.herd.episodes()) {
    if (episode.ended >= 0 && episode.ended < weeks_before_records) continue;
    truth.episodes.push_back({story.farm.index + 1, episode.cow, episode.foot, episode.claw,
                              episode.lesion, days.of(episode.began),
                              days.unless_never(episode.worse_since),
                              days.unless_never(episode.ended), episode.end, episode.is_relapse});
  }
}

void add_looks(BusinessTruth& truth, const HerdStory& story) {
  for (const Look& look : story.looks) {
    const Day day = story.visits[static_cast<std::size_t>(look.visit)].day;
    truth.looks.push_back({story.farm.index + 1, day, look.cow, look.foot, look.claw, look.lesion,
                           look.degree, look.stage, look.was_there, look.was_called});
  }
}

template <class Member>
void add_cell(std::string& text, const Member& member) {
  if constexpr (is_optional<Member>) {
    if (member) return add_cell(text, *member);
    text += "null";
  } else {
    text += canonical_json(value_json_detail::json_of(member));
  }
}

template <HasFields Row>
void add_row(std::string& text, const Row& row) {
  char before = '[';
  for_each_field(row, [&](std::string_view, const auto& member, std::string_view) {
    text += std::exchange(before, ',');
    add_cell(text, member);
  });
  text += ']';
}

template <HasFields Row>
std::string columns_text() {
  JsonArray names;
  const Row row;
  for_each_field(row, [&](std::string_view name, const auto&, std::string_view) {
    names.push_back(Json(std::string(name)));
  });
  return canonical_json(Json(std::move(names)));
}

template <HasFields Row>
void add_table(std::string& text, std::string_view name, const std::vector<Row>& rows) {
  text += ",\n\"" + std::string(name) + "\":{\"columns\":" + columns_text<Row>() + ",\"rows\":[";
  bool is_first = true;
  for (const Row& row : rows) {
    text += std::exchange(is_first, false) ? "\n" : ",\n";
    add_row(text, row);
  }
  text += "]}";
}

std::string wanted_text(const BusinessWanted& wanted) {
  JsonArray complications;
  for (const auto& row : EnumWords<Complication>::table) {
    if (wanted.complications.has(row.value)) complications.push_back(Json(std::string(row.word)));
  }
  JsonObject object;
  object["complications"] = Json(std::move(complications));
  object["farms"] = Json(wanted.farms);
  object["last_day"] = Json(to_text(wanted.last_day));
  object["records_begin"] = Json(to_text(first_day_of_week(wanted, weeks_before_records)));
  object["seed"] = Json(std::to_string(wanted.seed));
  object["weeks"] = Json(wanted.weeks);
  return canonical_json(Json(std::move(object)));
}

/// In millionths, for they are small.
std::string parameters_text() {
  JsonObject object;
  for (const ParameterFacts& facts : all_parameters()) {
    object[std::string(facts.name)] =
        Json(static_cast<std::int64_t>(std::llround(facts.value * 1'000'000.0)));
  }
  return canonical_json(Json(std::move(object)));
}

}  // namespace

BusinessTruth truth_without_farms(const BusinessWanted& wanted) {
  BusinessTruth truth;
  for (const Caller& caller : callers_of(wanted)) {
    truth.callers.push_back(
        {std::string(caller.name), caller.crew, first_day_of_week(wanted, caller.from_week),
         first_day_of_week(wanted, caller.to_week), thousandths(caller.keenness),
         thousandths(caller.drift_a_year), caller.writes_sound_feet});
  }
  return truth;
}

void add_farm(BusinessTruth& truth, const BusinessWanted& wanted, const HerdStory& story) {
  const Days days{wanted};
  truth.farms.push_back(farm_truth(story));
  for (const Change& change : story.changes) {
    truth.changes.push_back({story.farm.index + 1, change.kind, change.reason,
                             days.of(change.decided), days.of(change.done),
                             thousandths(change.effect)});
  }
  add_cows(truth, story, days);
  add_episodes(truth, story, days);
  add_looks(truth, story);
}

std::string truth_text(const BusinessTruth& truth, const BusinessWanted& wanted) {
  std::string text = "{\"wanted\":" + wanted_text(wanted);
  text += ",\n\"parameters_in_millionths\":" + parameters_text();
  add_table(text, "farms", truth.farms);
  add_table(text, "callers", truth.callers);
  add_table(text, "changes", truth.changes);
  add_table(text, "cows", truth.cows);
  add_table(text, "episodes", truth.episodes);
  add_table(text, "looks", truth.looks);
  return text + "\n}\n";
}

}  // namespace evenclaw::demo
