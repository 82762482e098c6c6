#include "core/api/heard_at_visit.hpp"

#include <algorithm>
#include <iterator>
#include <optional>

#include "core/api/herd_log.hpp"
#include "core/log/body.hpp"
#include "core/trade/check.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// "left hind digital dermatitis", "nothing found on her".
std::string found_in(const Turn& turn) {
  std::string words;
  for (const FootCall& call : turn.feet) {
    for (const Finding& finding : call.findings) {
      const bool has_words = is_named_by_words(finding.lesion) && !finding.words.empty();
      words += (words.empty() ? "" : ", ") + std::string(spoken(call.foot)) + " " +
               (has_words ? finding.words : std::string(facts_of(finding.lesion).name));
    }
  }
  return words.empty() ? "nothing found on her" : words;
}

void hear(HeardAtVisit& heard, const TurnRecorded& told, EntryId entry, CowId cow) {
  if (told.turn.cow.known == CowKnown::doubtful) heard.in_doubt.emplace(entry, told.turn.cow);
  if (told.turn.rest_fine) heard.said_rest_fine.insert(entry);
  if (told.turn.cow.known == CowKnown::unnumbered) heard.found_on[cow] = found_in(told.turn);
  for (const WarningShown& shown : told.warnings) {
    Rank& rank = heard.ranks[{entry, shown.warning.words}];
    rank = std::max(rank, shown.warning.rank);
    const std::optional<Fixture> fixture = fixture_asked_about(shown.warning);
    if (fixture && shown.warning.foot) {
      heard.asked_in_crush.insert({cow, *fixture, *shown.warning.foot});
    }
  }
}

Outcome hear_visit(HeardAtVisit& heard, Store& store, const Visit& visit, const CowGroups& groups) {
  std::map<EntryId, std::int64_t> first_made;  // of turns: a correction is no new call
  return store.read_entries({visit.herd.value, visit.visit.value, {}}, [&](const Entry& entry) {
    const bool closes = entry.envelope.kind == VisitClosed::kind;
    heard.changed_since_closing = !closes;
    if (const auto turn = body_as<TurnRecorded>(entry)) {
      const CowId cow = groups.representative(turn->cow);
      hear(heard, *turn, entry.envelope.id, cow);
      const auto before = entry.envelope.supersedes ? first_made.find(*entry.envelope.supersedes)
                                                    : first_made.end();
      const std::int64_t order = before == first_made.end() ? entry.envelope.order : before->second;
      first_made[entry.envelope.id] = order;
      heard.last_called[cow] = std::max(heard.last_called[cow], order);
    }
    heard.told_by[entry.envelope.id] = {entry.envelope.device, entry.envelope.order};
    const auto settled = body_as<QuestionSettled>(entry);
    if (settled && settled->cow && !settled->about) {
      heard.settled.insert(groups.representative(*settled->cow));
    }
    return true;
  });
}

/// What was told of a cow in these words was taken back at that place in the log.
using TakenBack = std::map<std::pair<CowId, std::string>, std::int64_t>;

Result<TakenBack> news_taken_back(Store& store, const Visit& visit) {
  TakenBack back;
  const std::vector<std::string> kinds = {std::string(QuestionSettled::kind)};
  const Outcome read =
      store.read_entries({visit.herd.value, std::nullopt, kinds}, [&](const Entry& entry) {
        const auto settled = body_as<QuestionSettled>(entry);
        if (settled && settled->cow && settled->about)
          back[{*settled->cow, *settled->about}] = entry.envelope.order;
        return true;
      });
  if (!read) return read.faults();
  return back;
}

Outcome hear_news(HeardAtVisit& heard, Store& store, const Visit& visit, const CowGroups& groups) {
  const auto back = news_taken_back(store, visit);
  if (!back) return back.faults();
  const std::vector<std::string> kinds = {std::string(TaskClosedBody::kind)};
  return store.read_entries({visit.herd.value, std::nullopt, kinds}, [&](const Entry& entry) {
    const auto told = body_as<TaskClosedBody>(entry);
    if (!told) return true;
    const bool since = !told->visit && told->day >= visit.day && !told->asked;
    if (!since && told->visit != visit.visit) return true;
    const CowId cow = groups.representative(told->cow);
    heard.cows_told_of.insert(cow);
    const auto taken = back->find({told->cow, told->words});
    if (taken != back->end() && taken->second > entry.envelope.order) return true;
    const bool is_sound = told->news == News::walks_sound;
    const bool is_of_her_walk = !told->asked && (is_sound || told->news == News::still_lame);
    if (is_of_her_walk) {
      heard.walks.push_back(
          {cow, is_sound, true, since, entry.envelope.device, entry.envelope.order});
    }
    const std::optional<FixtureSaid> said = fixture_said(told->news);
    const bool is_clear = said && tells_its_fate(said->step) && !told->asked;
    if (!is_clear) return true;
    heard.fates.push_back({cow, said->fixture, told->feet, is_off_after(said->step), true, since,
                           entry.envelope.device, entry.envelope.order});
    return true;
  });
}

}  // namespace

Result<HeardAtVisit> heard_at(Store& store, const Visit& visit) {
  const auto groups = HerdLog(store, visit.herd).groups();
  if (!groups) return groups.faults();
  HeardAtVisit heard;
  Outcome read = hear_visit(heard, store, visit, *groups);
  if (read) read = hear_news(heard, store, visit, *groups);
  if (!read) return read.faults();
  auto news = open_news(store, visit.herd);
  if (!news) return news.faults();
  std::copy_if(news->begin(), news->end(), std::back_inserter(heard.unclear),
               [&](const OpenNews& open) { return open.visit == visit.visit; });
  return heard;
}

}  // namespace evenclaw
