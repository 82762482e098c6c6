#include "core/api/recording/time_said_anew.hpp"

#include <algorithm>
#include <optional>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

struct TimedActs {
  const std::vector<Action>& before;
  const std::vector<Action>& now;
  std::string where;  // ", left hind"; empty of the whole cow
};

void add_told(std::vector<std::string>& told, const TimedActs& acts, Day visit_day,
              const Language& language) {
  const auto is_there = [](const std::vector<Action>& all, const Action& act) {
    return std::find(all.begin(), all.end(), act) != all.end();
  };
  for (const Action& act : acts.now) {
    const std::optional<Day> right = day_meant(act.when, visit_day);
    if (!right || is_there(acts.before, act)) continue;
    const auto first =
        std::find_if(acts.before.begin(), acts.before.end(), [&](const Action& each) {
          return each.kind == act.kind && claws_agree(each.claw, act.claw) && each.when.said() &&
                 !is_there(acts.now, each);
        });
    const auto wrong =
        first == acts.before.end() ? std::nullopt : day_meant(first->when, visit_day);
    if (!wrong || *wrong == *right) continue;
    told.push_back(offered_act(std::nullopt, act.kind, act.claw, language) + acts.where + ": by " +
                   spoken_with_weekday(*right) + " now, not " + spoken_with_weekday(*wrong));
  }
}

}  // namespace

std::vector<std::string> times_said_anew(const Turn& before, const Turn& now, Day visit_day,
                                         const Language& language) {
  std::vector<std::string> told;
  add_told(told, {before.actions, now.actions, ""}, visit_day, language);
  for (const FootCall& call : now.feet) {
    const auto then =
        std::find_if(before.feet.begin(), before.feet.end(),
                     [&call](const FootCall& each) { return each.foot == call.foot; });
    if (then == before.feet.end()) continue;
    add_told(told, {then->actions, call.actions, ", " + std::string(spoken(call.foot))}, visit_day,
             language);
  }
  return told;
}

std::vector<std::string> shorter_times_said(const Turn& before, const Turn& now, Day visit_day,
                                            const Language& language) {
  std::vector<std::string> told;
  for (const Action& act : now.actions) {
    const bool is_withheld = facts_of(act.kind).said_as == TermKind::withheld_act;
    const std::optional<Day> said = day_meant(act.when, visit_day);
    const bool is_new =
        std::find(before.actions.begin(), before.actions.end(), act) == before.actions.end();
    if (!is_withheld || !said || !is_new) continue;
    const auto longer =
        std::find_if(before.actions.begin(), before.actions.end(), [&](const Action& each) {
          return each.kind == act.kind && day_meant(each.when, visit_day) > said;
        });
    if (longer == before.actions.end()) continue;
    told.push_back(offered_act(std::nullopt, act.kind, Claw::none, language) + ": " +
                   spoken_with_weekday(*day_meant(longer->when, visit_day)) + " holds, not " +
                   spoken_with_weekday(*said) + "; to make it shorter say it behind \"" +
                   std::string(language.say(TermKind::correction)) + ",\"");
  }
  return told;
}

}  // namespace evenclaw
