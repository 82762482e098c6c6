#include <algorithm>
#include <optional>
#include <utility>

#include "core/trade/after_leaving.hpp"
#include "core/trade/block_lost_early.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_after_all.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/put_on_here.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

std::string_view fixture_name(Fixture fixture) {
  return fixture == Fixture::wrap ? "wrap" : "block";
}

FootSet both_in(const FootSet& a, const FootSet& b) {
  FootSet both;
  for (const Foot foot : all_feet) {
    if (a.has(foot) && b.has(foot)) both.add(foot);
  }
  return both;
}

/// "left hind or right hind".
std::string one_of(const FootSet& feet) {
  std::string words;
  for (const Foot foot : all_feet) {
    if (!feet.has(foot)) continue;
    if (!words.empty()) words += " or ";
    words += spoken(foot);
  }
  return words;
}

/// Where no foot is named, nothing that was asked for at this very visit can be meant.
Rows meant_by(const NewsSaid& news, const CowPast& known) {
  Rows past = known.rows;
  if (known.same_visit.empty() || !news.feet.empty()) return past;
  const VisitId now = known.same_visit.front().visit;
  std::erase_if(past.tasks, [&](const TaskRow& task) { return task.visit == now; });
  return past;
}

/// What has to be asked before "block off" can be taken to mean these feet; nothing when clear.
std::optional<std::string> question_about(const NewsSaid& news, Fixture fixture, const Rows& past) {
  const FootSet known = feet_carrying(fixture, past);
  const std::string what(fixture_name(fixture));
  const bool is_on_them = !both_in(news.feet, known).empty();
  if (is_one_somewhere(fixture, past) && !is_on_them && (known.empty() || !news.feet.empty())) {
    return std::nullopt;
  }
  if (known.empty()) {
    const std::string where = news.feet.empty() ? "her" : "her " + spoken(news.feet);
    return "No " + what + " is known on " + where + ". Was it another cow?";
  }
  if (news.feet.empty() && !news.all && known.count() > 1) {
    return "Which " + what + ": " + one_of(known) + "?";
  }
  if (!news.feet.empty() && !is_on_them) {
    return "Her " + what + " is on " + spoken(known) + ", not on " + spoken(news.feet) +
           ". Which is right?";
  }
  for (const Foot foot : all_feet) {
    const bool foot_meant = news.feet.empty() || news.feet.has(foot);
    if (fixture == Fixture::wrap || news.all || !foot_meant) continue;
    if (claws_of_block_tasks(open_tasks(past), foot).size() > 1) {
      return "Which block of " + std::string(spoken(foot)) + ": outside or inside?";
    }
  }
  return std::nullopt;
}

/// On every foot named one came off this very day: that is told once more.
bool is_off_since_today(const NewsSaid& news, Fixture fixture, const Rows& past, Day today) {
  if (news.feet.empty()) return false;
  return std::all_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
    return !news.feet.has(foot) ||
           std::any_of(past.on_feet.begin(), past.on_feet.end(), [&](const OnFootRow& row) {
             const bool is_off =
                 row.ended == FixtureEnd::taken_off || row.ended == FixtureEnd::came_off;
             return row.foot == foot && row.fixture == fixture && is_off && row.ended_on == today;
           });
  });
}

/// What one piece of news is held against.
struct Held {
  const CowPast& known;
  Day today;
  bool is_of_this_visit;  // what was put on at this visit was asked about, and is meant
};

/// Those put on at this visit are asked about before they are taken to be off: the foot may have
/// been told of the one that was there when she came.
std::optional<std::string> question_of_this_visit(const NewsSaid& news, Fixture fixture,
                                                  const Rows& before, const FootSet& put_on_now) {
  const FootSet named = both_in(news.feet, put_on_now);
  const bool is_another = named.empty() && !feet_carrying(fixture, before).empty();
  if (put_on_now.empty() || is_another) return std::nullopt;
  const FootSet& asked = named.empty() ? put_on_now : named;
  return asked_of_put_on_now(fixture, asked, !named.empty());
}

/// What was there when she came; on a foot with none of that, this visit's once it was asked about.
Rows fixtures_meant(const NewsSaid& news, Fixture fixture, const Held& held) {
  const Rows& all = held.known.rows;
  if (held.known.same_visit.empty()) return all;
  const VisitId now = held.known.same_visit.front().visit;
  Rows before = without_put_on_at(all, fixture, now, four_feet);
  if (!held.is_of_this_visit) return before;
  FootSet others = four_feet;
  for (const Foot foot : all_feet) {
    const bool is_asked = news.feet.has(foot) && !feet_carrying(fixture, before).has(foot);
    if (is_asked) others.remove(foot);
  }
  return without_put_on_at(all, fixture, now, others);
}

/// The trimmer is rung about blocks that came off too early.
void ask_of_lost_blocks(NewsEffect& effect, const Rows& past, const ToldOn& told) {
  for (const TaskRow& task : open_tasks(past)) {
    const bool is_closed =
        std::any_of(effect.closes.begin(), effect.closes.end(),
                    [&](const TaskClosed& closed) { return closed.task == task.task; });
    if (!is_closed || !task.foot || task.rule != block_off_rule.slug) continue;
    std::optional<TaskMade> lost = asked_of_lost_block(past, *task.foot, task.claw, told.day);
    const bool is_asked = std::any_of(effect.makes.begin(), effect.makes.end(),
                                      [&](const TaskMade& made) { return made.foot == task.foot; });
    if (lost && !is_asked) effect.makes.push_back(std::move(*lost));
  }
  name_tasks(effect.makes, told.entry);
}

NewsEffect fixture_off(const NewsSaid& news, Fixture fixture, std::string_view how,
                       const Held& held) {
  NewsEffect effect;
  const Rows past = fixtures_meant(news, fixture, held);
  const FootSet meant = feet_carrying(fixture, past);
  const FootSet on_now = feet_carrying(fixture, held.known.rows);
  const bool is_told = both_in(news.feet, on_now).empty() &&
                       is_off_since_today(news, fixture, held.known.rows, held.today);
  if (is_told) return effect;
  FootSet put_on_now = on_now;
  for (const Foot foot : all_feet) {
    if (meant.has(foot)) put_on_now.remove(foot);
  }
  effect.unclear = question_of_this_visit(news, fixture, past, put_on_now);
  if (!effect.unclear) effect.unclear = question_about(news, fixture, past);
  if (effect.unclear) return effect;
  const bool is_on_them = !both_in(news.feet, meant).empty();
  for (const TaskRow& task : open_tasks(past)) {
    const bool is_named = task.foot ? news.feet.has(*task.foot) : !is_on_them;
    const bool foot_meant = news.feet.empty() || is_named;
    if (foot_meant && is_task_of(fixture, task.kind)) close_task(effect.closes, task, how);
  }
  return effect;
}

NewsEffect block_came_off(const NewsSaid& news, const Held& held, EntryId entry) {
  NewsEffect effect = fixture_off(news, Fixture::block, "block came off by itself", held);
  ask_of_lost_blocks(effect, held.known.rows, {held.today, entry});
  return effect;
}

/// The farmer looks at the foot, or whether the block is on it.
bool is_farmers_look(const TaskRow& task) {
  const bool is_look = task.kind == TaskKind::look_at_foot || task.kind == TaskKind::block_check;
  return is_look && task.owner == Owner::farmer;
}

bool is_of(const TaskRow& task, const FootSet& feet) {
  return !task.foot || feet.empty() || feet.has(*task.foot);
}

FootSet feet_of(const std::vector<TaskRow>& tasks) {
  FootSet feet;
  for (const TaskRow& task : tasks) {
    if (task.foot) feet.add(*task.foot);
  }
  return feet;
}

/// The farmer's first looks at a block that may be done by now.
std::vector<TaskRow> first_looks_at_block(const NewsSaid& news, const Rows& past, Day today) {
  std::vector<TaskRow> looks = open_tasks(past);
  std::erase_if(looks, [&](const TaskRow& task) {
    return task.kind != TaskKind::block_check || !is_farmers_look(task) || today < task.earliest ||
           !is_of(task, news.feet);
  });
  return looks;
}

/// What is asked of one that nobody knew of: of the feet that were named, or of her.
std::vector<TaskMade> asked_since_when(const NewsSaid& news, Fixture fixture, Day today) {
  std::vector<TaskMade> asked;
  for (const Foot foot : all_feet) {
    if (news.feet.has(foot)) asked.push_back(since_when(fixture, {foot, Claw::none, {}}, today));
  }
  if (asked.empty()) asked.push_back(since_when(fixture, {}, today));
  return asked;
}

/// It was told before to be on her, of no foot: now it is known where, or it is told again.
NewsEffect somewhere_still_on(const NewsSaid& news, Fixture fixture, const Rows& past,
                              const ToldOn& told) {
  NewsEffect effect;
  if (news.feet.empty()) return effect;
  for (const TaskRow& task : open_tasks(past)) {
    const std::string how = std::string(fixture_name(fixture)) + " still on";
    if (is_somewhere_on_her(fixture, task)) close_task(effect.closes, task, how);
  }
  effect.makes = asked_since_when(news, fixture, told.day);
  name_tasks(effect.makes, told.entry);
  return effect;
}

NewsEffect fixture_still_on(const NewsSaid& news, Fixture fixture, const Rows& past,
                            const ToldOn& told) {
  NewsEffect effect;
  const FootSet known = feet_carrying(fixture, past);
  const bool is_known = news.feet.empty() ? !known.empty() : !both_in(news.feet, known).empty();
  if (is_known && fixture == Fixture::block) {
    const std::vector<TaskRow> looks = first_looks_at_block(news, past, told.day);
    // One of several is still on: which was seen is not known, and nothing is lost by looking
    // again.
    const bool is_one = !news.feet.empty() || news.all || known.count() == 1;
    for (const TaskRow& look : looks) {
      if (is_one) close_task(effect.closes, look, "block still on");
    }
  }
  if (is_known) return effect;
  if (fixture == Fixture::block) close_lost_blocks(effect.closes, past, news.feet);
  if (is_one_somewhere(fixture, past)) return somewhere_still_on(news, fixture, past, told);
  effect.makes = asked_since_when(news, fixture, told.day);
  name_tasks(effect.makes, told.entry);
  const std::string where = news.feet.empty() ? "her" : spoken(news.feet);
  effect.unclear = "No " + std::string(fixture_name(fixture)) + " is known on " + where +
                   ". Since when is it on?";
  return effect;
}

/// The looks that may be done by now; when there are none, all that are planned: it was done early.
std::vector<TaskRow> looks_meant(const NewsSaid& news, const Rows& past, Day today) {
  std::vector<TaskRow> looks = open_tasks(past);
  std::erase_if(looks, [&](const TaskRow& task) {
    return (task.kind != TaskKind::look_at_foot && !is_farmers_look(task)) ||
           !is_of(task, news.feet);
  });
  std::vector<TaskRow> by_now = looks;
  std::erase_if(by_now, [&](const TaskRow& task) { return today < task.earliest; });
  return by_now.empty() ? looks : by_now;
}

NewsEffect looked_at(const NewsSaid& news, const Rows& past, Day today) {
  NewsEffect effect;
  const std::vector<TaskRow> looks = looks_meant(news, past, today);
  const FootSet feet = feet_of(looks);
  if (news.feet.empty() && feet.count() > 1) {
    effect.unclear = "Which foot was looked at: " + one_of(feet) + "?";
    return effect;
  }
  for (const TaskRow& look : looks) close_task(effect.closes, look, "looked at");
  return effect;
}

NewsEffect vet_came(const NewsSaid& news, const Rows& past) {
  NewsEffect effect;
  for (const TaskRow& task : open_tasks(past)) {
    if (task.kind == TaskKind::vet && is_of(task, news.feet)) {
      close_task(effect.closes, task, "vet came");
    }
  }
  return effect;
}

/// A look of the trimmer that is already due answers for the foot, one due only in weeks does not:
/// waiting is what a lame cow cannot afford.
bool has_look_due(const Rows& past, std::optional<Foot> foot, Day today) {
  const std::vector<TaskRow> open = open_tasks(past);
  return std::any_of(open.begin(), open.end(), [&](const TaskRow& task) {
    return task.kind == TaskKind::look_at_foot && task.owner == Owner::trimmer &&
           task.due <= today && (!task.foot || !foot || task.foot == foot);
  });
}

void look_today(NewsEffect& effect, std::optional<Foot> foot, const Rows& past, Day today) {
  if (has_look_due(past, foot, today)) return;
  TaskMade task = task_from(still_lame_rule, {foot, Claw::none, {}}, today);
  task.words = foot ? "still lame, look at " + std::string(spoken(*foot))
                    : std::string("still lame, look at her feet");
  effect.makes.push_back(task);
}

/// The farmer has looked: she was to be watched, or her foot to get better.
bool is_answered_by_lame(const TaskRow& task, const NewsSaid& news, Day today) {
  if (task.kind == TaskKind::watch_her_walk) return today >= task.earliest;
  const bool is_look = task.kind == TaskKind::look_at_foot && task.owner == Owner::farmer;
  return is_look && today >= task.earliest && is_of(task, news.feet);
}

NewsEffect still_lame(const NewsSaid& news, const Rows& past, Day today, EntryId entry) {
  NewsEffect effect;
  for (const TaskRow& task : open_tasks(past)) {
    if (is_answered_by_lame(task, news, today)) close_task(effect.closes, task, told_still_lame);
  }
  if (news.feet.empty()) look_today(effect, std::nullopt, past, today);
  for (const Foot foot : all_feet) {
    if (news.feet.has(foot)) look_today(effect, foot, past, today);
  }
  name_tasks(effect.makes, entry);
  return effect;
}

/// What was found on a foot was to be looked at, and that ended when she was told to be lame still:
/// this look stands for it.
bool stands_for_another_look(const TaskRow& task, const Rows& past) {
  return std::any_of(past.tasks.begin(), past.tasks.end(), [&](const TaskRow& look) {
    const bool is_ended_by_it =
        !look.open && look.closed_on == task.made_on && look.closed_how == told_still_lame;
    const bool is_there = !look.foot || !task.foot || look.foot == task.foot;
    return is_ended_by_it && is_there && look.kind == TaskKind::look_at_foot;
  });
}

/// Whoever tells it has seen her walk, after the day on which she was told to be lame still.
NewsEffect walks_sound(const Rows& past, Day today) {
  NewsEffect effect;
  for (const TaskRow& task : open_tasks(past)) {
    const bool was_lame = task.rule == still_lame_rule.slug && task.made_on < today &&
                          !stands_for_another_look(task, past);
    const bool is_watched = task.kind == TaskKind::watch_her_walk;
    if (was_lame || is_watched) close_task(effect.closes, task, "walks sound");
  }
  return effect;
}

NewsEffect gone(const Rows& past) {
  NewsEffect effect;
  for (const TaskRow& task : open_tasks(past)) {
    if (ends_when_she_leaves(task)) close_task(effect.closes, task, closed_as_she_left);
  }
  return effect;
}

}  // namespace

NewsEffect effect_of(const NewsSaid& news, const CowPast& past, Day today, EntryId entry,
                     bool is_of_this_visit) {
  const Held held{past, today, is_of_this_visit};
  switch (news.news) {
    case News::wrap_off:
      return fixture_off(news, Fixture::wrap, "wrap taken off", held);
    case News::wrap_came_off:
      return fixture_off(news, Fixture::wrap, "wrap came off by itself", held);
    case News::block_off:
      return fixture_off(news, Fixture::block, "block taken off", held);
    case News::block_came_off:
      return block_came_off(news, held, entry);
    case News::wrap_still_on:
      return fixture_still_on(news, Fixture::wrap, past.rows, {today, entry});
    case News::block_still_on:
      return fixture_still_on(news, Fixture::block, past.rows, {today, entry});
    case News::looked_at:
      return looked_at(news, meant_by(news, past), today);
    case News::vet_came:
      return vet_came(news, past.rows);
    case News::still_lame:
      return still_lame(news, past.rows, today, entry);
    case News::walks_sound:
      return walks_sound(meant_by(news, past), today);
    case News::gone:
      return gone(past.rows);
    case News::kicks:
    case News::jumps:
    case News::lies_down:
    case News::needs_hoist:
    case News::kicks_no_more:
    case News::jumps_no_more:
    case News::lies_down_no_more:
    case News::hoist_no_more:
      return {};
  }
  return {};
}

}  // namespace evenclaw
