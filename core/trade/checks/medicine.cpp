// What was put on or given: is its withdrawal known, is it long enough, and who may do it.
#include <algorithm>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include "core/base/text.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t longest_name_told = 22;
constexpr std::size_t most_words = 87;  // and three for what is left off

struct ActDone {
  const Action* action;
  std::optional<Foot> foot;
};

std::vector<ActDone> all_done(const Turn& turn) {
  std::vector<ActDone> done;
  for (const FootCall& call : turn.feet) {
    for (const Action& action : call.actions) done.push_back({&action, call.foot});
  }
  for (const Action& action : turn.actions) done.push_back({&action, std::nullopt});
  return done;
}

std::string name_told(const Action& action) {
  return shortened(product_or_act(action), longest_name_told);
}

Firing firing_of(const ActDone& done, std::string words) {
  Firing firing;
  firing.warning.foot = done.foot;
  firing.warning.words = std::move(words);
  return firing;
}

/// The first of every product that is a medicine and was not asked about at this visit.
template <class F>
std::vector<Firing> for_each_product(const Situation& situation, F&& firing_for) {
  std::vector<Firing> firings;
  std::set<std::string> told;
  for (const ActDone& done : all_done(situation.turn)) {
    if (!is_medicine_act(done.action->kind)) continue;
    const std::string name = product_or_act(*done.action);
    if (situation.past.medicine.was_asked(name)) continue;
    std::optional<Firing> firing = firing_for(done);
    if (firing && told.insert(fold_case(name)).second) firings.push_back(*std::move(firing));
  }
  return firings;
}

/// "bluemix 20 ml": a name of the list, and how much of it was given; "" when it does not start so.
std::string name_at_start(std::span<const ListedProduct> list, std::string_view said) {
  for (std::size_t end = said.rfind(' '); end != std::string_view::npos && end > 0;
       end = said.rfind(' ', end - 1)) {
    const ListedProduct* listed = find_product(list, said.substr(0, end));
    if (listed != nullptr) return listed->product.name;
  }
  return {};
}

std::string near_name(const Situation& situation, const Action& action) {
  if (action.medicine) return {};
  const std::span<const ListedProduct> list = situation.past.medicine.list;
  std::string near = near_product(list, action.product);
  return near.empty() ? name_at_start(list, action.product) : near;
}

/// What neither the list states nor somebody told.
MilkAndMeat not_known(const Situation& situation, const Action& action) {
  MilkAndMeat known = withdrawal_told_of(situation.turn, action);
  if (action.medicine) {
    known.milk = known.milk || action.medicine->as_listed.milk.has_value();
    known.meat = known.meat || action.medicine->as_listed.meat_days.has_value();
  }
  return {!known.milk, !known.meat};
}

/// "withdrawal" where both are missing.
std::string withdrawal_words(MilkAndMeat missing) {
  if (missing.milk && missing.meat) return "withdrawal";
  return missing.milk ? "milk withdrawal" : "meat withdrawal";
}

/// A form of which nobody said the name is asked about where the herd keeps a list; a medicine that
/// was given always.
bool wants_a_name(const Situation& situation, const Action& action) {
  const bool was_given = action.kind == ActionKind::given || action.kind == ActionKind::injected;
  return was_given || !situation.past.medicine.list.empty();
}

std::string missing_words(const Situation& situation, const Action& action) {
  const MilkAndMeat missing = not_known(situation, action);
  if (!missing.milk && !missing.meat) return {};
  const std::string what = withdrawal_words(missing);
  if (action.medicine) {
    return sentence(name_told(action)) + ": the list does not state its " + what + ". What is it?";
  }
  if (!action.product.empty()) {
    return "Not on the herd's list: " + name_told(action) + ". What " + what + "?";
  }
  if (!wants_a_name(situation, action)) return {};
  return sentence(name_told(action)) + ": with what, and what is its " + what + "?";
}

std::string_view reserved_words(ReservedAct act) {
  switch (act) {
    case ReservedAct::injection:
      return "An injection is the vet's unless local law allows it. Who gave it?";
    case ReservedAct::anaesthesia:
      return "Anaesthesia is the vet's unless local law allows it. Who gave it?";
    case ReservedAct::surgery:
      return "Surgery is the vet's unless local law allows it. Who did it?";
  }
  return {};
}

/// What a vet directed the farmer may inject; the knife and the numbing are the vet's alone.
bool is_done_by_one_who_may(const Action& action, ReservedAct act, const LocalLaw& law) {
  const bool by_farmer = action.by_whom == ByWhom::farmer && act == ReservedAct::injection;
  if (action.by_whom == ByWhom::vet || by_farmer) return true;
  const bool allowed =
      std::find(law.trimmer_may.begin(), law.trimmer_may.end(), act) != law.trimmer_may.end();
  return action.by_whom == ByWhom::not_called && allowed;
}

}  // namespace

std::vector<Firing> act_reserved_for_vet(const Situation& situation) {
  std::vector<Firing> firings;
  for (const ActDone& done : all_done(situation.turn)) {
    const std::optional<ReservedAct> act = reserved_act(done.action->kind);
    if (!act || is_done_by_one_who_may(*done.action, *act, situation.past.medicine.law)) continue;
    Firing firing = firing_of(done, std::string(reserved_words(*act)));
    firing.warning.claw = done.action->claw;
    if (done.action->by_whom == ByWhom::not_called) {
      firing.warning.answers = {offered_by_vet(done.foot, done.action->kind, situation.language)};
    }
    firing.warning.answers.push_back(offered_go_ahead(situation.language));
    firings.push_back(std::move(firing));
  }
  return firings;
}

std::vector<Firing> withdrawal_below_floor(const Situation& situation) {
  return for_each_product(situation, [&](const ActDone& done) -> std::optional<Firing> {
    if (!done.action->medicine) return std::nullopt;
    const std::string below =
        below_floor(done.action->medicine->as_listed, situation.past.medicine.law.country);
    if (below.empty()) return std::nullopt;
    Firing firing = firing_of(
        done, shortened(sentence(name_told(*done.action)) + " off label: " + below, most_words));
    firing.warning.answers = {offered_go_ahead(situation.language)};
    return firing;
  });
}

std::vector<Firing> medicine_name_near(const Situation& situation) {
  return for_each_product(situation, [&](const ActDone& done) -> std::optional<Firing> {
    const std::string near = near_name(situation, *done.action);
    if (near.empty()) return std::nullopt;
    Firing firing = firing_of(done, "Not on the herd's list: " + name_told(*done.action) + ". Is " +
                                        shortened(near, longest_name_told) + " meant?");
    firing.warning.answers = {
        offered_other_product(done.foot, done.action->kind, near, situation.language),
        offered_go_ahead(situation.language)};
    return firing;
  });
}

std::vector<Firing> withdrawal_missing(const Situation& situation) {
  return for_each_product(situation, [&](const ActDone& done) -> std::optional<Firing> {
    if (!near_name(situation, *done.action).empty()) return std::nullopt;
    std::string words = missing_words(situation, *done.action);
    if (words.empty()) return std::nullopt;
    Firing firing = firing_of(done, std::move(words));
    // That there is none would speak of both.
    const MilkAndMeat told = withdrawal_told_of(situation.turn, *done.action);
    if (!told.milk && !told.meat) {
      firing.warning.answers = {
          offered_act(std::nullopt, ActionKind::no_withdrawal, Claw::none, situation.language)};
    }
    firing.warning.answers.push_back(offered_go_ahead(situation.language));
    return firing;
  });
}

}  // namespace evenclaw
