#include "core/sheets/day_sentences.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "core/trade/lesion.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t fewest_for_percent = 10;
constexpr std::size_t fewest_lesions_named = 2;
constexpr std::size_t most_lesions_named = 4;

struct Share {
  std::size_t n = 0;
  std::size_t of = 0;
};

std::string said(Saying saying, Share share, const Wording& wording) {
  return wording.say(saying, {{"n", std::to_string(share.n)}, {"of", std::to_string(share.of)}});
}

std::string percent_words(Share share, const Wording& wording) {
  if (share.of < fewest_for_percent) return {};
  const std::size_t percent = (200 * share.n + share.of) / (2 * share.of);
  return wording.say(Saying::percent, {{"n", std::to_string(percent)}});
}

bool was_looked_at(const CowSeen& cow) {
  return !cow.lifted.empty();
}

Share looked_at(const VisitView& view) {
  const auto n = std::count_if(view.cows.begin(), view.cows.end(), was_looked_at);
  return {static_cast<std::size_t>(n), view.cows.size() + view.not_seen.size()};
}

std::string looked_at_sentence(const VisitView& view) {
  const Share share = looked_at(view);
  if (share.of == 0 && !view.input.rows.batches.empty()) {
    std::int32_t together = 0;
    for (const BatchRow& row : view.input.rows.batches) together += row.counted;
    return view.wording.say(Saying::only_counted, {{"n", std::to_string(together)}});
  }
  if (share.of == 0) {
    const bool all_removed = !view.input.removed.empty();
    return view.wording.say(all_removed ? Saying::all_removed : Saying::looked_at_nobody);
  }
  return said(Saying::looked_at, share, view.wording);
}

using Counted = std::pair<Lesion, std::size_t>;

/// How many of them are named: two, and whoever ties with the second; where too many do, only those
/// found on more cows.
std::size_t named_of(const std::vector<Counted>& counts) {
  if (counts.size() <= fewest_lesions_named) return counts.size();
  const std::size_t last = counts[fewest_lesions_named - 1].second;
  const auto is_more = [last](const Counted& one) { return one.second > last; };
  const auto is_least = [last](const Counted& one) { return one.second < last; };
  const auto more = std::find_if_not(counts.begin(), counts.end(), is_more);
  const auto less = std::find_if(counts.begin(), counts.end(), is_least);
  const auto with_ties = static_cast<std::size_t>(less - counts.begin());
  if (with_ties <= most_lesions_named) return with_ties;
  const auto without = static_cast<std::size_t>(more - counts.begin());
  return without == 0 ? fewest_lesions_named : without;
}

/// The lesions found on most cows, with the number of cows.
std::vector<Counted> most_found(const VisitView& view) {
  std::map<Lesion, std::set<CowId>> cows;
  for (const CowSeen& cow : view.cows) {
    for (const FindingRow* row : cow.findings) {
      if (counts_as_found(row->lesion)) cows[row->lesion].insert(cow.cow);
    }
  }
  std::vector<Counted> counts;
  counts.reserve(cows.size());
  for (const auto& [lesion, found_on] : cows) counts.emplace_back(lesion, found_on.size());
  std::stable_sort(counts.begin(), counts.end(),
                   [](const auto& a, const auto& b) { return a.second > b.second; });
  counts.resize(named_of(counts));
  return counts;
}

/// Those of whom it is known what was found, where these are not just those with feet lifted.
std::string whom_counted(const VisitView& view) {
  const bool are_the_lifted = std::all_of(
      view.cows.begin(), view.cows.end(),
      [](const CowSeen& cow) { return is_known_what_was_found(cow) == was_looked_at(cow); });
  return view.wording.say(are_the_lifted ? Saying::cows_with_feet_lifted : Saying::cows_said_of);
}

/// " Not counted as found: overgrown claw." where such stand in the lists below; else "".
std::string not_counted_sentence(const VisitView& view) {
  std::vector<std::string> names;
  for (const CowSeen& cow : view.cows) {
    for (const FindingRow* row : cow.findings) {
      const std::string name = view.wording.lesion(row->lesion);
      const bool is_told = std::find(names.begin(), names.end(), name) != names.end();
      if (!counts_as_found(row->lesion) && !is_told) names.push_back(name);
    }
  }
  if (names.empty()) return {};
  std::sort(names.begin(), names.end());
  return view.wording.say(Saying::not_counted_as_found, {{"list", view.wording.list(names)}});
}

std::string found_sentence(const VisitView& view) {
  const Wording& wording = view.wording;
  Share share;
  for (const CowSeen& cow : view.cows) {
    share.n += has_something(cow) ? 1 : 0;
    share.of += is_known_what_was_found(cow) ? 1 : 0;
  }
  if (share.of == 0) return {};
  const std::string whom = whom_counted(view);
  if (share.n == 0) {
    return wording.say(Saying::found_nothing, {{"of", std::to_string(share.of)}, {"whom", whom}}) +
           not_counted_sentence(view);
  }
  const auto most = most_found(view);
  std::vector<std::string> lesions;
  lesions.reserve(most.size());
  const bool is_tie = most.size() > 1 && most.front().second == most.back().second;
  for (const auto& [lesion, n] : most) {
    lesions.push_back(wording.say(Saying::lesion_share, {{"lesion", wording.lesion(lesion)},
                                                         {"n", std::to_string(n)},
                                                         {"of", std::to_string(share.of)}}));
  }
  return wording.say(Saying::found_on, {{"n", std::to_string(share.n)},
                                        {"of", std::to_string(share.of)},
                                        {"whom", whom},
                                        {"percent", percent_words(share, wording)}}) +
         (lesions.empty() ? std::string()
                          : wording.say(is_tie ? Saying::such_as : Saying::most_often,
                                        {{"list", wording.list(lesions)}})) +
         '.' + not_counted_sentence(view);
}

bool shows_on_lame_leg(const CowSeen& cow) {
  const bool is_found =
      std::any_of(cow.findings.begin(), cow.findings.end(), [&](const FindingRow* row) {
        return cow.lame.has(row->foot) && counts_as_found(row->lesion);
      });
  return is_found || std::any_of(cow.actions.begin(), cow.actions.end(), [&](const ActionRow* row) {
           return row->foot && cow.lame.has(*row->foot) && counts_as_found(row->action);
         });
}

/// The parts add up to the lame cows: "came lame: 1 of 2 with ..., 1 of 2 with ...".
std::string lame_sentence(const VisitView& view) {
  Share lame;
  std::size_t shown = 0;
  std::size_t leg_not_called = 0;
  for (const CowSeen& cow : view.cows) {
    if (!cow.in_crush) continue;
    ++lame.of;
    if (!cow.came_lame) continue;
    ++lame.n;
    leg_not_called += cow.lame.empty() ? 1 : 0;
    shown += shows_on_lame_leg(cow) ? 1 : 0;
  }
  std::string words;
  const auto add = [&](Saying saying, std::size_t n) {
    if (n > 0) words += (words.empty() ? ": " : ", ") + said(saying, {n, lame.n}, view.wording);
  };
  add(Saying::cause_found, shown);
  add(Saying::cause_not_found, lame.n - shown - leg_not_called);
  add(Saying::leg_not_called, leg_not_called);
  return said(Saying::came_lame, lame, view.wording) + words + '.' +
         reason_not_called_sentence(view);
}

}  // namespace

std::string reason_not_called_sentence(const VisitView& view) {
  const auto told = std::count_if(view.cows.begin(), view.cows.end(), is_told_why_she_came);
  const std::size_t n = view.cows.size() - static_cast<std::size_t>(told);
  if (n == 0) return {};
  const Wording& wording = view.wording;
  const std::string of_all = said(Saying::of_cows, {n, view.cows.size()}, wording);
  return ' ' + as_sentence(wording.say(Saying::with_reason,
                                       {{"what", wording.reasons(TurnRow{})}, {"why", of_all}}));
}

std::vector<std::string> day_sentences(const VisitView& view) {
  std::vector<std::string> sentences = {looked_at_sentence(view)};
  if (looked_at(view).n == 0) return sentences;
  std::string found = found_sentence(view);
  if (!found.empty()) sentences.push_back(std::move(found));
  sentences.push_back(lame_sentence(view));
  return sentences;
}

}  // namespace evenclaw
