#include "core/api/farm/change_words.hpp"

#include <algorithm>

#include "core/trade/farm_line/change_line.hpp"

namespace evenclaw {

namespace {

std::string why_words(const FarmChangeRow& row) {
  switch (row.why) {
    case ChangeWhy::not_told:
      return "why was not told";
    case ChangeWhy::bad_visit:
    case ChangeWhy::planned:
    case ChangeWhy::vet_advised:
    case ChangeWhy::rebuilt_anyway:
      return std::string(spoken(row.why));
    case ChangeWhy::other:
      return "because " + row.why_words;
  }
  return {};
}

std::string state_words(const FarmChangeRow& row) {
  switch (row.state) {
    case ChangeState::not_told:
      return "whether it is finished was not told";
    case ChangeState::going_on:
      return "still going on";
    case ChangeState::finished:
      return row.finished ? "finished " + to_text(*row.finished) : std::string("finished");
  }
  return {};
}

std::string reach_words(const FarmChangeRow& row) {
  switch (row.reach) {
    case ChangeReach::not_told:
      return "for whom was not told";
    case ChangeReach::whole_herd:
      return "whole herd";
    case ChangeReach::group:
      return "only " + row.animals;
  }
  return {};
}

}  // namespace

std::string change_name(const FarmChangeRow& row) {
  std::string driver(word_of(row.driver));
  std::replace(driver.begin(), driver.end(), '_', ' ');
  return row.words.empty() ? driver : driver + ": " + row.words;
}

std::string change_words(const FarmChangeRow& row) {
  const std::string decided = row.decided ? "decided " + to_text(*row.decided)
                                          : std::string("when it was decided was not told");
  return change_name(row) + "; " + why_words(row) + "; " + decided + "; " + state_words(row) +
         "; " + reach_words(row);
}

}  // namespace evenclaw
