#include "core/trade/farm_line/walk_amount.hpp"

namespace evenclaw {

namespace {

using W = WalkMeasure;

struct TopicMeasure {
  FarmTopic topic;
  FarmDimension dimension;
  WalkMeasure measure;
};

constexpr TopicMeasure length_table[] = {
    {FarmTopic::cow, FarmDimension::height, W::cow_height},
    {FarmTopic::cubicle, FarmDimension::width, W::cubicle_width},
    {FarmTopic::cubicle, FarmDimension::length, W::cubicle_length},
    {FarmTopic::passage, FarmDimension::width, W::passage_width},
    {FarmTopic::turn, FarmDimension::width, W::turn_width},
    {FarmTopic::footbath, FarmDimension::length, W::footbath_length},
    {FarmTopic::footbath, FarmDimension::width, W::footbath_width},
    {FarmTopic::footbath, FarmDimension::depth, W::footbath_depth},
};

struct MainMeasure {
  FarmTopic topic;
  WalkMeasure measure;
};

/// What "not looked at" behind the topic alone is about.
constexpr MainMeasure topic_table[] = {
    {FarmTopic::cow, W::cow_weight},
    {FarmTopic::cubicle, W::cubicle_width},
    {FarmTopic::cubicle, W::cubicle_length},
    {FarmTopic::passage, W::passage_width},
    {FarmTopic::turn, W::turn_width},
    {FarmTopic::floor, W::floor},
    {FarmTopic::grip, W::grip},
    {FarmTopic::scraping, W::scraping_interval},
    {FarmTopic::standing, W::standing_time},
    {FarmTopic::footbath, W::footbath_length},
    {FarmTopic::footbath, W::footbath_width},
    {FarmTopic::footbath, W::footbath_depth},
    {FarmTopic::footbath, W::footbath_product},
    {FarmTopic::footbath, W::footbath_strength},
    {FarmTopic::footbath, W::footbath_passes},
    {FarmTopic::footbath, W::footbath_times},
};

}  // namespace

std::optional<WalkMeasure> length_measure(std::optional<FarmTopic> topic, FarmDimension dimension) {
  for (const TopicMeasure& row : length_table) {
    if (topic == row.topic && dimension == row.dimension) return row.measure;
  }
  return std::nullopt;
}

std::vector<WalkMeasure> measures_of(FarmTopic topic) {
  std::vector<WalkMeasure> measures;
  for (const MainMeasure& row : topic_table) {
    if (topic == row.topic) measures.push_back(row.measure);
  }
  return measures;
}

std::optional<std::int64_t> Amount::whole(std::int64_t factor) const {
  constexpr std::int64_t a_thousand = 1000;
  const std::int64_t scaled = thousandths * factor;
  if (scaled % a_thousand != 0) return std::nullopt;
  return scaled / a_thousand;
}

std::string Amount::as_said() const {
  constexpr std::int64_t a_thousand = 1000;
  std::string text = std::to_string(thousandths / a_thousand);
  std::string rest = std::to_string(a_thousand + thousandths % a_thousand).substr(1);
  while (!rest.empty() && rest.back() == '0') rest.pop_back();
  return rest.empty() ? text : text + '.' + rest;
}

std::optional<std::int64_t> mm_in(FarmUnit unit) {
  switch (unit) {
    case FarmUnit::m:
      return 1000;
    case FarmUnit::cm:
      return 10;
    case FarmUnit::mm:
      return 1;
    case FarmUnit::kg:
    case FarmUnit::percent:
    case FarmUnit::hours:
    case FarmUnit::minutes:
    case FarmUnit::times:
      return std::nullopt;
  }
  return std::nullopt;
}

bool is_measured(WalkMeasure measure, std::int64_t value) {
  const WalkMeasureFacts& facts = facts_of(measure);
  return value >= facts.least && value <= facts.most;
}

}  // namespace evenclaw
