#include <algorithm>

#include "core/trade/follow_up.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_after_all.hpp"
#include "core/trade/on_foot.hpp"
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

/// What can be meant: where no foot is named, what was there when she came, and nothing that was
/// put on or asked for at this very visit.
Rows meant_by(const NewsSaid& news, const CowPast& known) {
  Rows past = known.rows;
  if (known.same_visit.empty() || !news.feet.empty()) return past;
  const VisitId now = known.same_visit.front().visit;
  std::erase_if(past.tasks, [&](const TaskRow& task) { return task.visit == now; });
  std::erase_if(past.on_feet, [&](const OnFootRow& row) { return row.visit == now; });
  return past;
}

FootSet feet_with(Fixture fixture, const Rows& past) {
  FootSet feet;
  for (const TaskRow& task : open_tasks(past)) {
    if (task.foot && is_task_of(fixture, task.kind)) feet.add(*task.foot);
  }
  for (const Foot foot : all_feet) {
    if (!fixtures_left(past, foot, fixture).empty()) feet.add(foot);
  }
  return feet;
}

/// What has to be asked before "block off" can be taken to mean these feet; nothing when clear.
std::optional<std::string> question_about(const NewsSaid& news, Fixture fixture, const Rows& past) {
  const FootSet known = feet_with(fixture, past);
  const std::string what(fixture_name(fixture));
  const bool is_on_them = !both_in(news.feet, known).empty();
  if (is_one_somewhere(fixture, past) && !is_on_them && (known.empty() || !news.feet.empty())) {
    return std::nullopt;
  }
  if (known.empty()) return "No " + what + " is known on her. Was it another cow?";
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

NewsEffect fixture_off(const NewsSaid& news, Fixture fixture, std::string_view how,
                       const CowPast& known, Day today) {
  NewsEffect effect;
  const Rows past = meant_by(news, known);
  const FootSet on_now = feet_with(fixture, known.rows);
  const bool is_told = both_in(news.feet, feet_with(fixture, past)).empty() &&
                       is_off_since_today(news, fixture, past, today);
  if (is_told) return effect;
  if (feet_with(fixture, past).empty() && !on_now.empty()) {
    effect.unclear = "Her " + std::string(fixture_name(fixture)) + " on " + spoken(on_now) +
                     " was put on at this visit. Is that one off? Then say the foot.";
    return effect;
  }
  effect.unclear = question_about(news, fixture, past);
  if (effect.unclear) return effect;
  const bool is_on_them = !both_in(news.feet, feet_with(fixture, past)).empty();
  for (const TaskRow& task : open_tasks(past)) {
    const bool is_named = task.foot ? news.feet.has(*task.foot) : !is_on_them;
    const bool foot_meant = news.feet.empty() || is_named;
    if (foot_meant && is_task_of(fixture, task.kind)) close_task(effect.closes, task, how);
  }
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
  const FootSet known = feet_with(fixture, past);
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
    if (is_answered_by_lame(task, news, today)) close_task(effect.closes, task, "still lame");
  }
  if (news.feet.empty()) look_today(effect, std::nullopt, past, today);
  for (const Foot foot : all_feet) {
    if (news.feet.has(foot)) look_today(effect, foot, past, today);
  }
  name_tasks(effect.makes, entry);
  return effect;
}

NewsEffect walks_sound(const Rows& past) {
  NewsEffect effect;
  for (const TaskRow& task : open_tasks(past)) {
    if (task.kind == TaskKind::watch_her_walk) close_task(effect.closes, task, "walks sound");
  }
  return effect;
}

NewsEffect gone(const Rows& past) {
  NewsEffect effect;
  for (const TaskRow& task : open_tasks(past)) close_task(effect.closes, task, "gone");
  return effect;
}

}  // namespace

NewsEffect effect_of(const NewsSaid& news, const CowPast& past, Day today, EntryId entry) {
  switch (news.news) {
    case News::wrap_off:
      return fixture_off(news, Fixture::wrap, "wrap taken off", past, today);
    case News::wrap_came_off:
      return fixture_off(news, Fixture::wrap, "wrap came off by itself", past, today);
    case News::block_off:
      return fixture_off(news, Fixture::block, "block taken off", past, today);
    case News::block_came_off:
      return fixture_off(news, Fixture::block, "block came off by itself", past, today);
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
      return walks_sound(meant_by(news, past));
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
