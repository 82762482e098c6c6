#include "core/log/cow_story.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "core/log/body.hpp"
#include "core/log/cow_life.hpp"
#include "core/log/past_told.hpp"
#include "core/log/standing.hpp"
#include "core/log/visit_facts.hpp"
#include "core/trade/call_line/act_facts.hpp"

namespace evenclaw {

namespace {

template <class T>
void append(std::vector<T>& to, std::vector<T> from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

// Rows are keyed by turn and foot; a log from elsewhere may name a foot twice in one turn.
Turn with_each_foot_once(Turn turn) {
  std::vector<FootCall> feet;
  for (FootCall& call : turn.feet) {
    const auto same = std::find_if(feet.begin(), feet.end(),
                                   [&](const FootCall& other) { return other.foot == call.foot; });
    if (same == feet.end()) {
      feet.push_back(std::move(call));
      continue;
    }
    append(same->findings, std::move(call.findings));
    append(same->actions, std::move(call.actions));
    append(same->measures, std::move(call.measures));
    if (same->state == FootState::unsaid) same->state = call.state;
    if (same->trimmed == Trimmed::not_called) same->trimmed = call.trimmed;
    const bool both_noted = !same->note.empty() && !call.note.empty();
    same->note += (both_noted ? "; " : "") + call.note;
  }
  for (FootCall& call : feet) {
    const bool is_seen = call.state == FootState::unsaid && turn.end == TurnEnd::done &&
                         std::any_of(call.actions.begin(), call.actions.end(),
                                     [](const Action& act) { return is_found_on_foot(act.kind); });
    if (is_seen || !call.findings.empty()) call.state = FootState::finding;
  }
  turn.feet = std::move(feet);
  return turn;
}

class StoryReader {
 public:
  StoryReader(std::span<const CowId> group, CowStory& story) : group_(group), story_(story) {}

  void read(const Entry& entry, std::size_t nth) {
    const std::string& kind = entry.envelope.kind;
    if (kind == TurnRecorded::kind) read_turn(entry, nth);
    if (kind == TaskClosedBody::kind) read_dated(entry, nth, story_.news);
    if (kind == CowLeft::kind) read_dated(entry, nth, story_.left);
    if (kind == QuestionSettled::kind) read_dated(entry, nth, story_.settled);
    if (kind == TaskMoved::kind) {
      if (auto body = hers<TaskMoved>(entry)) {
        story_.moved.push_back({&entry, *std::move(body), {Day{}, nth}});
      }
    }
    if (kind == CowRegistered::kind) read_registered(entry, nth);
    if (kind == NumberGiven::kind) read_number_given(entry, nth);
    if (kind == LifeTold::kind) {
      if (auto body = hers<LifeTold>(entry)) life_.push_back({&entry, *std::move(body), {{}, nth}});
    }
    if (kind == PastFindingsTold::kind) {
      if (auto body = hers<PastFindingsTold>(entry)) {
        past_.push_back({&entry, *std::move(body), {{}, nth}});
      }
    }
  }

  /// Her leaving as a list tells it counts like one that somebody told.
  void read_lists() {
    story_.past = standing_findings(past_);
    story_.life = standing_events(life_);
    append(story_.left, leavings_among(story_.life));
    std::erase_if(story_.left, [&](const Told<CowLeft>& left) {
      return arrived_after(story_.life, left.moment.day);
    });
  }

 private:
  template <class Body>
  std::optional<Body> hers(const Entry& entry) const {
    const bool named = std::any_of(group_.begin(), group_.end(),
                                   [&](CowId cow) { return names_subject(entry, cow.value); });
    if (!named) return std::nullopt;
    std::optional<Body> body = body_as<Body>(entry);
    if (!body || std::find(group_.begin(), group_.end(), body->cow) == group_.end()) {
      return std::nullopt;
    }
    return body;
  }

  void read_turn(const Entry& entry, std::size_t nth) {
    auto body = hers<TurnRecorded>(entry);
    if (!body) return;
    body->turn = with_each_foot_once(std::move(body->turn));
    story_.turns.push_back({&entry, *std::move(body), {day_of(entry.envelope.at), nth}});
  }

  template <class Body>
  void read_dated(const Entry& entry, std::size_t nth, std::vector<Told<Body>>& told) {
    auto body = hers<Body>(entry);
    if (!body) return;
    const Day day = body->day;
    told.push_back({&entry, *std::move(body), {day, nth}});
  }

  void read_registered(const Entry& entry, std::size_t nth) {
    auto body = hers<CowRegistered>(entry);
    if (!body) return;
    if (!body->number.empty()) {
      story_.numbers.push_back(
          {body->cow, body->number, body->valid_from, nth, false, body->valid_to});
    }
    story_.registered.push_back(*std::move(body));
  }

  void read_number_given(const Entry& entry, std::size_t nth) {
    auto body = hers<NumberGiven>(entry);
    if (!body) return;
    story_.numbers.push_back({body->cow, std::move(body->number), body->valid_from, nth, true});
  }

  std::span<const CowId> group_;
  CowStory& story_;
  std::vector<Told<LifeTold>> life_;
  std::vector<Told<PastFindingsTold>> past_;
};

/// Reads what was told of the cows as which her turns counted before they were corrected.
class OthersReader {
 public:
  OthersReader(std::span<const CowId> group, CowStory& story) : story_(story) {
    for (const Told<TurnRecorded>& turn : story.turns) {
      for (const Uuid& subject : named_besides(*turn.entry, group)) {
        if (subject != turn.body.visit.value) others_.insert(subject);
      }
    }
  }

  void read(std::span<const Entry* const> counting) const {
    if (others_.empty()) return;
    ToldOfOthers& told = story_.of_others;
    for (std::size_t nth = 0; nth < counting.size(); ++nth) {
      const Entry& entry = *counting[nth];
      if (auto body = of_one<TurnRecorded>(entry)) {
        told.turns.push_back({&entry, *std::move(body), {day_of(entry.envelope.at), nth}});
      } else if (auto news = of_one<TaskClosedBody>(entry)) {
        const Day day = news->day;
        told.news.push_back({&entry, *std::move(news), {day, nth}});
      } else if (auto moved = of_one<TaskMoved>(entry)) {
        told.moved.push_back({&entry, *std::move(moved), {Day{}, nth}});
      }
    }
  }

 private:
  template <class Body>
  std::optional<Body> of_one(const Entry& entry) const {
    if (entry.envelope.kind != Body::kind) return std::nullopt;
    const bool named = std::any_of(others_.begin(), others_.end(),
                                   [&](const Uuid& other) { return names_subject(entry, other); });
    if (!named) return std::nullopt;
    std::optional<Body> body = body_as<Body>(entry);
    if (!body || others_.count(body->cow.value) == 0) return std::nullopt;
    return body;
  }

  CowStory& story_;
  std::set<Uuid> others_;
};

template <class Body>
void sort_by_moment(std::vector<Told<Body>>& told) {
  std::sort(told.begin(), told.end(),
            [](const Told<Body>& a, const Told<Body>& b) { return a.moment < b.moment; });
}

/// Said to be so and then not to be: nothing comes of it, what it closed is open.
template <class Body>
void drop_taken_back(std::vector<Told<Body>>& told,
                     const std::vector<Told<QuestionSettled>>& settled) {
  std::erase_if(told, [&](const Told<Body>& one) {
    return std::any_of(settled.begin(), settled.end(), [&](const Told<QuestionSettled>& back) {
      return back.body.cow == one.body.cow && back.body.about == one.body.words &&
             one.moment.nth < back.moment.nth;
    });
  });
}

void date_turns(std::span<const Entry* const> counting, std::vector<Told<TurnRecorded>>& turns) {
  std::set<VisitId> visits;
  for (const auto& turn : turns) visits.insert(turn.body.visit);
  const std::map<VisitId, VisitFacts> facts = facts_of_visits(counting, visits);
  for (auto& turn : turns) {
    const auto visit = facts.find(turn.body.visit);
    if (visit == facts.end()) continue;
    if (const std::optional<Day> day = visit->second.day()) turn.moment.day = *day;
  }
}

}  // namespace

CowStory story_of(HerdId herd, std::span<const CowId> group, std::span<const Entry> entries) {
  CowStory story;
  story.herd = herd;
  story.cow = *std::min_element(group.begin(), group.end());
  Standing standing = standing_among(entries);
  std::vector<const Entry*> counting;
  for (const Entry* entry : standing.entries) {
    if (entry->envelope.scope == herd.value) counting.push_back(entry);
  }
  StoryReader reader(group, story);
  for (std::size_t nth = 0; nth < counting.size(); ++nth) reader.read(*counting[nth], nth);
  reader.read_lists();
  OthersReader(group, story).read(counting);
  drop_taken_back(story.news, story.settled);
  drop_taken_back(story.left, story.settled);
  date_turns(counting, story.turns);
  date_turns(counting, story.of_others.turns);
  sort_by_moment(story.turns);
  sort_by_moment(story.news);
  sort_by_moment(story.left);
  story.in_two_versions = std::move(standing.in_two_versions);
  return story;
}

std::vector<Uuid> named_besides(const Entry& turn, std::span<const CowId> group) {
  std::vector<Uuid> others;
  for (const Uuid& subject : turn.envelope.subjects) {
    const bool is_hers = std::find(group.begin(), group.end(), CowId{subject}) != group.end();
    if (!is_hers && subject != turn.envelope.scope) others.push_back(subject);
  }
  return others;
}

bool was_there(const Told<TurnRecorded>& turn) {
  return turn.body.turn.end != TurnEnd::not_done;
}

bool is_here_after(const CowStory& story, const Told<TurnRecorded>& turn,
                   const Told<CowLeft>& left) {
  if (left.moment < turn.moment) return true;
  const bool is_other_device = turn.entry->envelope.device != left.entry->envelope.device;
  if (left.moment.day != turn.moment.day || !is_other_device) return false;
  return std::none_of(story.left.begin(), story.left.end(), [&](const Told<CowLeft>& before) {
    return before.moment.day == left.moment.day && before.moment < left.moment;
  });
}

std::vector<std::vector<const Told<TurnRecorded>*>> by_visit(const CowStory& story) {
  std::vector<std::vector<const Told<TurnRecorded>*>> visits;
  std::map<VisitId, std::size_t> place;
  for (const Told<TurnRecorded>& turn : story.turns) {
    const auto [at, is_new] = place.emplace(turn.body.visit, visits.size());
    if (is_new) visits.emplace_back();
    visits[at->second].push_back(&turn);
  }
  return visits;
}

}  // namespace evenclaw
