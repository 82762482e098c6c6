#include "core/api/recording/recorded_before.hpp"

#include <algorithm>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/recording/new_one_off.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/api/still_untold.hpp"
#include "core/base/text.hpp"
#include "core/log/body.hpp"
#include "core/trade/handling.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

bool begins_with(const std::vector<std::string>& words, const std::vector<std::string>& beginning) {
  return !beginning.empty() && beginning.size() < words.size() &&
         std::equal(beginning.begin(), beginning.end(), words.begin());
}

}  // namespace

namespace {

bool are_of_one_foot(const FootSet& a, const FootSet& b) {
  return a.empty() || b.empty() || std::any_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
           return a.has(foot) && b.has(foot);
         });
}

/// "Off" and "still on", "kicks" and "no longer kicks", "walks sound" and "still lame".
bool speak_against(News a, News b) {
  if (opposite_of(a) == b) return true;
  const auto first = fixture_said(a);
  const auto second = fixture_said(b);
  if (first && second && first->fixture == second->fixture)
    return is_off_after(first->step) != is_off_after(second->step);
  const auto before = handling_said(a);
  const auto now = handling_said(b);
  return before && now && before->what == now->what && before->holds != now->holds;
}

bool was_there(const TurnRecorded& turn) {
  return turn.turn.end != TurnEnd::not_done;
}

}  // namespace

std::optional<News> opposite_of(News news) {
  if (news == News::still_lame) return News::walks_sound;
  if (news == News::walks_sound) return News::still_lame;
  return std::nullopt;
}

Result<RecordedBefore> RecordedBefore::open(Store& store, const Visit& visit) {
  const auto identity = store.identity();
  if (!identity) return identity.faults();
  RecordedBefore before;
  before.device_ = identity->device;
  const std::vector<std::string> kinds = {
      std::string(VisitOpened::kind), std::string(TurnRecorded::kind),
      std::string(TaskClosedBody::kind), std::string(NewsUnread::kind),
      std::string(QuestionSettled::kind)};
  const Outcome read =
      store.read_entries({visit.herd.value, visit.visit.value, kinds}, [&](const Entry& entry) {
        before.read(entry);
        return true;
      });
  if (!read) return read.faults();
  // Who left names no visit, only the day it was told.
  const Outcome read_left = store.read_entries(
      {visit.herd.value, std::nullopt, {std::string(CowLeft::kind)}}, [&](const Entry& entry) {
        const auto left = body_as<CowLeft>(entry);
        if (!left || left->day != visit.day) return true;
        const auto there = before.last_there_.find(left->cow);
        const bool is_overtaken =
            there != before.last_there_.end() && entry.envelope.order < there->second;
        before.told_.push_back({left->cow, News::gone, {}, is_overtaken, false, left->words});
        return true;
      });
  if (!read_left) return read_left.faults();
  for (const QuestionSettled& back : before.taken_back_) before.overtake_told(back);
  return before;
}

void RecordedBefore::read_said_by(const Envelope& envelope) {
  const bool is_opening = envelope.kind == VisitOpened::kind;
  if (!is_opening && envelope.device != device_) return;
  if (envelope.caller) last_said_by_.caller = *envelope.caller;
  if (envelope.writer) last_said_by_.writer = *envelope.writer;
}

void RecordedBefore::read(const Entry& entry) {
  const Envelope& envelope = entry.envelope;
  read_said_by(envelope);
  if (auto turn = body_as<TurnRecorded>(entry)) {
    RecordedTurn recorded;
    recorded.entry = envelope.id;
    recorded.supersedes = envelope.supersedes;
    recorded.by = {envelope.caller.value_or(PersonId{}), envelope.writer.value_or(PersonId{})};
    recorded.body = *std::move(turn);
    overtake_by(recorded.body);
    if (was_there(recorded.body)) last_there_[recorded.body.cow] = envelope.order;
    keep(std::move(recorded));
  }
  if (const auto news = body_as<NewsUnread>(entry)) is_unread_now(news->number, news->words, true);
  if (const auto settled = body_as<QuestionSettled>(entry)) {
    if (settled->about) add_settled({settled->number, *settled->about});
    if (settled->about && settled->cow) taken_back_.push_back(*settled);
    if (settled->about && settled->cow) taken_back_again_.push_back(*settled);
  }
  const auto told = body_as<TaskClosedBody>(entry);
  if (!told) return;
  if (told->asked) {
    keep_asked(told->cow, told->news, told->words);
  } else {
    keep_told({told->cow, told->news, told->feet, false, false, told->words});
  }
}

/// That she walks sound holds until she is told to be lame still, and the other way round.
void RecordedBefore::keep_told(NewsTold told) {
  for (NewsTold& before : told_) {
    const bool is_of_it = before.cow == told.cow && are_of_one_foot(before.feet, told.feet);
    if (is_of_it && speak_against(before.news, told.news)) before.overtaken = true;
  }
  std::erase_if(asked_still_, [&](const NewsTold& asked) {
    return asked.cow == told.cow &&
           (tells_the_same(asked.news, told.news) || opposite_of(asked.news) == told.news);
  });
  told_.push_back(std::move(told));
}

const RecordedTurn* RecordedBefore::add(RecordedTurn turn) {
  // Said just now, so the next cow in the same words is another one.
  matched_.insert(turn.entry);
  overtake_by(turn.body);
  return keep(std::move(turn));
}

const RecordedTurn* RecordedBefore::keep(RecordedTurn turn) {
  if (turn.supersedes) {
    for (RecordedTurn& earlier : turns_) {
      if (earlier.entry == *turn.supersedes) earlier.superseded = true;
    }
  }
  turns_.push_back(std::move(turn));
  return &turns_.back();
}

/// What became of it by the corrections since.
const RecordedTurn& RecordedBefore::as_it_counts(const RecordedTurn& turn) const {
  const RecordedTurn* counts = &turn;
  // Turns are kept in the order of their making, but a correction from elsewhere may come first.
  for (std::size_t steps = 0; counts->superseded && steps < turns_.size(); ++steps) {
    const auto next = std::find_if(turns_.begin(), turns_.end(), [&](const RecordedTurn& later) {
      return later.supersedes == counts->entry;
    });
    if (next == turns_.end()) break;
    counts = &*next;
  }
  return *counts;
}

/// Its days were counted anew, nothing was said anew: the correction stands for it.
bool RecordedBefore::is_repeated_by_its_correction(const RecordedTurn& turn) const {
  if (!turn.superseded) return false;
  const RecordedTurn& now = as_it_counts(turn);
  return now.entry != turn.entry && now.body.words == turn.body.words &&
         same_said(now.body.turn.cow, turn.body.turn.cow);
}

/// "LH wrap off" once another wrap was put on there: in the same words it tells of that one.
bool RecordedBefore::is_overtaken(const RecordedTurn& turn) const {
  bool is_since = false;
  for (const RecordedTurn& later : turns_) {
    const bool is_hers = is_since && later.body.cow == turn.body.cow;
    if (is_hers && puts_on_what_was_told_off(turn.body.turn, later.body.turn)) return true;
    is_since = is_since || later.entry == turn.entry;
  }
  return false;
}

const RecordedTurn* RecordedBefore::same(const Again& said) {
  for (const RecordedTurn& turn : turns_) {
    if (!same_said(turn.body.turn.cow, said.cow) || turn.body.words != said.words) continue;
    const CowSaid& now = as_it_counts(turn).body.turn.cow;
    const bool is_put_right_again = (said.put_right_to && same_said(now, *said.put_right_to)) ||
                                    (said.cow.known == CowKnown::doubtful &&
                                     begins_with(as_it_counts(turn).body.words, said.words));
    if (!same_said(now, said.cow) && !is_put_right_again) continue;
    if (is_repeated_by_its_correction(turn)) continue;
    if (!said.once && is_overtaken(turn)) continue;
    if (said.cow.known == CowKnown::numbered && !said.once) return &turn;
    if (matched_.insert(turn.entry).second) return &turn;
  }
  return nullptr;
}

const RecordedTurn* RecordedBefore::begun(const CowSaid& cow,
                                          const std::vector<std::string>& words) {
  for (const RecordedTurn& turn : turns_) {
    if (turn.superseded || !same_said(turn.body.turn.cow, cow)) continue;
    if (!begins_with(words, turn.body.words)) continue;
    if (cow.known == CowKnown::numbered || matched_.insert(turn.entry).second) return &turn;
  }
  return nullptr;
}

bool RecordedBefore::is_perhaps_again(CowId cow, const std::vector<std::string>& words) const {
  return std::any_of(turns_.begin(), turns_.end(), [&](const RecordedTurn& turn) {
    const bool is_open = turn.body.cow == cow && matched_.count(turn.entry) == 0;
    return is_open && (turn.body.words == words || begins_with(turn.body.words, words));
  });
}

bool RecordedBefore::is_known_by_these(const CowSaid& cow, const TurnDraft& begun) const {
  const std::string called = recorded_as(begun.turn.cow);
  return std::any_of(turns_.begin(), turns_.end(), [&](const RecordedTurn& turn) {
    const std::vector<std::string>& before = turn.body.called_first;
    const bool was_called_so = std::find(before.begin(), before.end(), called) != before.end();
    return was_called_so && !same_said(begun.turn.cow, cow) && same_said(turn.body.turn.cow, cow) &&
           begins_with(turn.body.words, begun.words);
  });
}

const RecordedTurn* RecordedBefore::gone_on(const CowSaid& cow,
                                            const std::vector<std::string>& words) const {
  for (const RecordedTurn& turn : turns_) {
    const RecordedTurn* earlier = turn.supersedes ? find(*turn.supersedes) : nullptr;
    if (earlier == nullptr || !same_said(turn.body.turn.cow, cow)) continue;
    std::vector<std::string> both = earlier->body.words;
    both.insert(both.end(), words.begin(), words.end());
    if (!words.empty() && turn.body.words == both) return &turn;
  }
  return nullptr;
}

const RecordedTurn* RecordedBefore::correction(EntryId entry, const CowSaid& cow) const {
  for (const RecordedTurn& turn : turns_) {
    if (turn.supersedes == entry && same_said(turn.body.turn.cow, cow)) return &turn;
  }
  return nullptr;
}

const RecordedTurn* RecordedBefore::correction(EntryId entry,
                                               const std::vector<std::string>& words) const {
  const auto at = std::find_if(turns_.begin(), turns_.end(), [&](const RecordedTurn& turn) {
    return turn.supersedes == entry && turn.body.words == words;
  });
  return at == turns_.end() ? nullptr : &*at;
}

const RecordedTurn* RecordedBefore::mended(const CowSaid& cow, std::string_view words) {
  for (const RecordedTurn& turn : turns_) {
    const RecordedTurn* wrong = turn.supersedes ? find(*turn.supersedes) : nullptr;
    if (wrong == nullptr || !same_said(turn.body.turn.cow, cow)) continue;
    std::vector<std::string> both = wrong->body.words;
    both.emplace_back(words);
    if (turn.body.words == both && matched_.insert(turn.entry).second) return &turn;
  }
  return nullptr;
}

const RecordedTurn* RecordedBefore::find(EntryId entry) const {
  const auto at = std::find_if(turns_.begin(), turns_.end(),
                               [&](const RecordedTurn& turn) { return turn.entry == entry; });
  return at == turns_.end() ? nullptr : &*at;
}

std::vector<const RecordedTurn*> RecordedBefore::line_of(EntryId entry) const {
  std::vector<const RecordedTurn*> line;
  const RecordedTurn* turn = find(entry);
  while (turn != nullptr && std::find(line.begin(), line.end(), turn) == line.end()) {
    line.push_back(turn);
    turn = turn->supersedes ? find(*turn->supersedes) : nullptr;
  }
  return line;
}

const RecordedTurn* RecordedBefore::last_of(CowId cow) const {
  const auto at = std::find_if(turns_.rbegin(), turns_.rend(), [&](const RecordedTurn& turn) {
    return turn.body.cow == cow && !turn.superseded;
  });
  return at == turns_.rend() ? nullptr : &*at;
}

std::vector<const RecordedTurn*> RecordedBefore::turns_called(const CowSaid& cow) const {
  std::vector<const RecordedTurn*> turns;
  for (const RecordedTurn& turn : turns_) {
    const bool counts = !turn.superseded && same_said(turn.body.turn.cow, cow);
    if (counts) turns.push_back(&turn);
  }
  return turns;
}

std::vector<const RecordedTurn*> RecordedBefore::turns_called_by(std::string_view number) const {
  std::vector<const RecordedTurn*> turns;
  for (const RecordedTurn& turn : turns_) {
    const bool is_hers = only_number(turn.body.turn.cow) == plain_number(number);
    if (!turn.superseded && is_hers) turns.push_back(&turn);
  }
  return turns;
}

std::vector<std::string> RecordedBefore::products_said_of_others(CowId cow,
                                                                 const RecordedTurn* before) const {
  std::vector<const RecordedTurn*> corrected;
  if (before != nullptr) corrected = line_of(before->entry);
  std::vector<std::string> names;
  for (const RecordedTurn& turn : turns_) {
    if (!corrected.empty() && turn.entry == corrected.back()->entry) break;
    if (turn.body.cow == cow) continue;
    const std::vector<std::string> said = products_said(turn.body.turn);
    names.insert(names.end(), said.begin(), said.end());
  }
  return names;
}

int RecordedBefore::turns_of(CowId cow) const {
  return static_cast<int>(std::count_if(
      turns_.begin(), turns_.end(),
      [&](const RecordedTurn& turn) { return turn.body.cow == cow && !turn.superseded; }));
}

std::vector<RecordedTurn> RecordedBefore::that_say_rest_fine() const {
  std::vector<RecordedTurn> turns;
  for (const RecordedTurn& turn : turns_) {
    if (!turn.superseded && turn.body.turn.rest_fine) turns.push_back(turn);
  }
  return turns;
}

VisitSoFar RecordedBefore::so_far(CowId but, PersonId caller) const {
  VisitSoFar so_far;
  for (const RecordedTurn& turn : turns_) {
    const bool counts = !turn.superseded && turn.body.cow != but;
    if (counts) count_in(so_far, turn.body.turn, turn.by.caller == caller);
  }
  return so_far;
}

bool RecordedBefore::was_told(CowId cow, News news, const FootSet& feet, bool typed) {
  const auto same = [&](const NewsTold& told) {
    return told.cow == cow && told.news == news && told.feet == feet;
  };
  const bool holds = std::any_of(told_.begin(), told_.end(), [&](const NewsTold& told) {
    return same(told) && !told.overtaken;
  });
  const auto again = std::find_if(told_.begin(), told_.end(), [&](const NewsTold& told) {
    return same(told) && !told.said_again;
  });
  if (typed || again == told_.end()) return holds;
  again->said_again = true;
  return true;
}

std::string RecordedBefore::told_as(CowId cow, News news) const {
  const auto told = std::find_if(told_.rbegin(), told_.rend(), [&](const NewsTold& each) {
    return each.cow == cow && each.news == news && !each.overtaken;
  });
  return told == told_.rend() ? std::string() : told->words;
}

bool RecordedBefore::was_told_on(CowId cow, Foot foot, Fixture fixture) const {
  return std::any_of(told_.begin(), told_.end(), [&](const NewsTold& told) {
    return told.cow == cow && !told.overtaken && (told.feet.empty() || told.feet.has(foot)) &&
           fixture_said(told.news) == FixtureSaid{fixture, FixtureStep::left_on};
  });
}

void RecordedBefore::keep_asked(CowId cow, News news, const std::string& words) {
  ++asked_[{cow, words}].recorded;
  asked_still_.push_back({cow, news, {}, false, true, words});
}

bool RecordedBefore::asks_now(CowId cow, News news, const std::string& words, bool typed) {
  const bool is_open =
      std::any_of(asked_still_.begin(), asked_still_.end(), [&](const NewsTold& asked) {
        return asked.cow == cow && asked.words == words && !asked.overtaken;
      });
  Asked& asked = asked_[{cow, words}];
  const bool is_given_again = !typed && asked.given < asked.recorded;
  ++asked.given;
  if (is_open || is_given_again) return false;
  keep_asked(cow, news, words);
  return true;
}

bool RecordedBefore::was_asked_otherwise(CowId cow, News news) const {
  return std::any_of(asked_still_.begin(), asked_still_.end(), [&](const NewsTold& asked) {
    const bool is_how_she_left = news == News::gone && asked.news == News::gone;
    return asked.cow == cow && (is_how_she_left || opposite_of(asked.news) == news);
  });
}

bool RecordedBefore::is_asked_still(CowId cow, const NewsSaid& news, const std::string& words,
                                    bool typed) const {
  return std::any_of(asked_still_.begin(), asked_still_.end(), [&](const NewsTold& asked) {
    if (asked.cow != cow || asked.overtaken || !tells_the_same(asked.news, news.news)) return false;
    return asked.words == words ? typed : !news.feet.empty();
  });
}

void RecordedBefore::add_told(CowId cow, News news, const FootSet& feet, const std::string& words) {
  keep_told({cow, news, feet, false, true, words});
}

void RecordedBefore::overtake_told(const QuestionSettled& back) {
  for (NewsTold& told : told_) {
    if (told.cow == back.cow && told.words == back.about) told.overtaken = true;
  }
  std::erase_if(asked_still_, [&](const NewsTold& asked) {
    return asked.cow == back.cow && asked.words == back.about;
  });
}

void RecordedBefore::take_back(CowId cow, const std::string& words, const std::string& number,
                               std::string_view how) {
  QuestionSettled back;
  back.number = number;
  back.cow = cow;
  back.about = words;
  back.words = trimmed(how);
  overtake_told(back);
  asked_.erase({cow, words});
  taken_back_.push_back(std::move(back));
}

bool RecordedBefore::was_taken_back(const std::string& number, std::string_view how) const {
  return std::any_of(taken_back_.begin(), taken_back_.end(), [&](const QuestionSettled& back) {
    return plain_number(back.number) == number && back.words == trimmed(how);
  });
}

bool RecordedBefore::is_taken_back_again(const std::string& number, std::string_view how) {
  const auto again = std::find_if(
      taken_back_again_.begin(), taken_back_again_.end(), [&](const QuestionSettled& back) {
        return plain_number(back.number) == number && back.words == trimmed(how);
      });
  if (again == taken_back_again_.end()) return false;
  taken_back_again_.erase(again);
  return true;
}

/// Another wrap is on her now, so "wrap off" is news again; so is "gone" of one who stood there.
void RecordedBefore::overtake_by(const TurnRecorded& turn) {
  for (NewsTold& told : told_) {
    if (was_there(turn) && told.cow == turn.cow && told.news == News::gone) told.overtaken = true;
  }
  for (const FootCall& call : turn.turn.feet) {
    for (const Action& action : call.actions) {
      const std::optional<FixtureSaid> put = fixture_said(action.kind);
      const bool is_new =
          put && (put->step == FixtureStep::put_on || put->step == FixtureStep::renewed);
      if (is_new) overtake(turn.cow, call.foot, put->fixture);
    }
  }
}

void RecordedBefore::overtake(CowId cow, Foot foot, Fixture fixture) {
  for (NewsTold& told : told_) {
    const bool of_this_foot = told.feet.empty() || told.feet.has(foot);
    const std::optional<FixtureSaid> news = fixture_said(told.news);
    const bool is_of_it = told.cow == cow && news && news->fixture == fixture;
    if (is_of_it && of_this_foot) told.overtaken = true;
  }
  for (NewsTold& asked : asked_still_) {
    const std::optional<FixtureSaid> news = fixture_said(asked.news);
    if (asked.cow == cow && news && news->fixture == fixture) asked.overtaken = true;
  }
}

bool RecordedBefore::is_unread_now(const std::string& number, const std::string& words,
                                   bool typed) {
  const bool is_open = std::any_of(unread_.begin(), unread_.end(), [&](const UnreadNews& unread) {
    return unread.number == number && unread.words == words;
  });
  const bool is_first = read_in_vain_.insert({number, words}).second;
  if (is_open || (!is_first && !typed)) return false;
  unread_.push_back({number, words});
  return true;
}

void RecordedBefore::add_settled(const UnreadNews& news) {
  unread_.erase(std::remove_if(unread_.begin(), unread_.end(),
                               [&](const UnreadNews& unread) {
                                 return unread.number == news.number && unread.words == news.words;
                               }),
                unread_.end());
}

}  // namespace evenclaw
