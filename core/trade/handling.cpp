#include "core/trade/handling.hpp"

#include <algorithm>

#include "core/trade/handling_rows.hpp"

namespace evenclaw {

namespace {

struct HandlingFacts {
  Handling what;
  ActionKind said_as;
  ActionKind over_as;
  News told_as;
  News told_over_as;
  std::string_view spoken;
};

using Act = ActionKind;

constexpr HandlingFacts handling_table[] = {
    {Handling::kicks, Act::kicks, Act::kicks_no_more, News::kicks, News::kicks_no_more, "kicks"},
    {Handling::jumps, Act::jumps, Act::jumps_no_more, News::jumps, News::jumps_no_more, "jumps"},
    {Handling::lies_down, Act::lies_down, Act::lies_down_no_more, News::lies_down,
     News::lies_down_no_more, "lies down in the crush"},
    {Handling::needs_hoist, Act::needs_hoist, Act::hoist_no_more, News::needs_hoist,
     News::hoist_no_more, "needs the hoist"}};

const HandlingFacts& facts_of(Handling what) {
  return handling_table[static_cast<std::size_t>(what)];
}

}  // namespace

std::optional<HandlingSaid> handling_said(ActionKind kind) {
  for (const HandlingFacts& facts : handling_table) {
    if (facts.said_as == kind) return HandlingSaid{facts.what, true};
    if (facts.over_as == kind) return HandlingSaid{facts.what, false};
  }
  return std::nullopt;
}

std::optional<HandlingSaid> handling_said(News news) {
  for (const HandlingFacts& facts : handling_table) {
    if (facts.told_as == news) return HandlingSaid{facts.what, true};
    if (facts.told_over_as == news) return HandlingSaid{facts.what, false};
  }
  return std::nullopt;
}

std::optional<News> news_of(ActionKind kind) {
  const auto said = handling_said(kind);
  if (!said) return std::nullopt;
  const HandlingFacts& facts = facts_of(said->what);
  return said->holds ? facts.told_as : facts.told_over_as;
}

ActionKind said_as(Handling what) {
  return facts_of(what).said_as;
}

std::vector<Handling> standing_in(const std::vector<HandlingRow>& rows) {
  std::vector<Handling> standing;
  for (const HandlingRow& row : rows) {
    if (!row.over_on) standing.push_back(row.what);
  }
  std::sort(standing.begin(), standing.end());
  return standing;
}

std::string spoken(const std::vector<Handling>& what) {
  std::string words;
  for (const Handling each : what) {
    words += (words.empty() ? "" : ", ") + std::string(facts_of(each).spoken);
  }
  return words;
}

}  // namespace evenclaw
