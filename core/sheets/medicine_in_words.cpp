#include "core/sheets/medicine_in_words.hpp"

#include <algorithm>
#include <span>

#include "core/sheets/signs_in_words.hpp"
#include "core/sheets/words_heard.hpp"
#include "core/sheets/words_of_her.hpp"
#include "core/trade/after_leaving.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

// How a medicine, or milk that is held back, is spoken of: our judgement, no source. Brands stand
// in no table: the names of the herd's list are heard beside it.
constexpr std::string_view words_of_medicine[] = {
    // English
    "antibiotic", "antibiotics", "on abs", "painkiller", "painkillers", "injected", "injection",
    "injections", "injecting", "jabbed", "jab", "given", "gave her", "treated", "medicine",
    "medicines", "withheld", "withdrawal", "withdrawn", "tube", "tubes", "tubed", "dry cow tube",
    "wormed", "wormer", "drenched", "milk in the bucket", "milk to the calves", "milk to calves",
    "milk away", "milk out", "not sell her milk", "not sell the milk", "milk not to be sold",
    "not for sale",
    // German
    "Antibiotikum", "Antibiotika", "Schmerzmittel", "gespritzt", "Spritze", "injiziert", "gegeben",
    "verabreicht", "behandelt", "Medikament", "Medikamente", "Arznei", "Wartezeit", "Sperrmilch",
    "Trockensteller", "Injektor", "Injektoren", "Tuben", "entwurmt", "Entwurmung", "Milch gesperrt",
    "Milch in den Eimer", "Milch an die Kälber", "Milch weg", "Milch nicht verkaufen"};

// A line that was refused may have been meant to tell how long she is held back; in a note they may
// be of anything ("milk fever").
constexpr std::string_view words_of_refused[] = {  // English
    "milk", "meat", "withdraw", "inject", "injects",
    // German
    "Milch", "Fleisch", "Tube", "spritzen"};

bool holds_any_of(const std::vector<std::string>& said, std::span<const std::string_view> table) {
  return std::any_of(table.begin(), table.end(),
                     [&](std::string_view one) { return holds_phrase(said, one); });
}

bool holds_any_name(const std::vector<std::string>& said, const ProductNames& names) {
  return std::any_of(names.begin(), names.end(),
                     [&](const std::string& name) { return holds_phrase(said, name); });
}

bool is_asked_still(const VisitView& view, CowId cow) {
  const CowRow* left = who_left(view, cow);
  if (left == nullptr) return true;
  const MilkAndMeat held = held_after(way_left(left->left_words));
  return held.milk || held.meat;
}

bool is_answered(const VisitView& view, const MedicineTold& told) {
  const std::vector<ActionRow>& acts = view.input.rows.actions;
  return std::any_of(acts.begin(), acts.end(), [&](const ActionRow& row) {
    return row.cow == told.cow && tells_withdrawal(row.action) && told.on <= row.day;
  });
}

bool is_called(std::string_view product, const ProductNames& names) {
  const std::vector<std::string> called = heard_words(product);
  return std::any_of(names.begin(), names.end(),
                     [&](const std::string& name) { return called == heard_words(name); });
}

/// What was called beside the words stands in the record: who got the product that they name is
/// not asked after.
bool is_called_beside(std::string_view words, const std::vector<ProductNames>& products,
                      const std::vector<ActionRow>& acts, CowId cow, Day on) {
  const std::vector<std::string> said = heard_words(words);
  bool is_any_named = false;
  for (const ProductNames& names : products) {
    if (!holds_any_name(said, names)) continue;
    const bool is_in_record = std::any_of(acts.begin(), acts.end(), [&](const ActionRow& row) {
      return row.cow == cow && row.day == on && is_called(row.product, names);
    });
    if (!is_in_record) return false;
    is_any_named = true;
  }
  return is_any_named;
}

void add_new(std::vector<MedicineTold>& all, MedicineTold told) {
  const bool is_known = std::any_of(all.begin(), all.end(), [&](const MedicineTold& other) {
    return other.cow == told.cow && other.on == told.on && other.words == told.words;
  });
  if (!is_known) all.push_back(std::move(told));
}

}  // namespace

bool names_a_medicine(std::string_view words, const std::vector<ProductNames>& products) {
  const std::vector<std::string> said = heard_words(words);
  return std::any_of(products.begin(), products.end(),
                     [&](const ProductNames& names) { return holds_any_name(said, names); }) ||
         holds_any_of(said, words_of_medicine) ||
         (is_not_understood(words) && holds_any_of(said, words_of_refused));
}

std::vector<MedicineTold> medicine_told_in(const Rows& rows,
                                           const std::vector<ProductNames>& products,
                                           const Wording& wording) {
  std::vector<MedicineTold> all;
  const auto add = [&](const CowSeen& cow, CowId id, Day on) {
    for (const WordsOfHer& said : words_of_her(cow)) {
      if (!names_a_medicine(said.words, products)) continue;
      if (is_called_beside(said.words, products, rows.actions, id, on)) continue;
      add_new(all, {id, on, words_as_told(said, wording)});
    }
  };
  for (const TurnRow& row : rows.turns) {
    CowSeen cow;
    cow.turns = {&row};
    add(cow, row.cow, row.day);
  }
  for (const FootRow& row : rows.feet) {
    CowSeen cow;
    cow.feet = {&row};
    add(cow, row.cow, row.day);
  }
  return all;
}

std::vector<MedicineTold> medicine_to_ask(const VisitView& view) {
  const std::vector<ProductNames>& products = view.input.product_names;
  std::vector<MedicineTold> told = view.input.medicine_told_before;
  const VisitId visit = view.input.visit.visit;
  Rows today;
  for (const TurnRow& row : view.input.rows.turns) {
    if (row.visit == visit) today.turns.push_back(row);
  }
  for (const FootRow& row : view.input.rows.feet) {
    if (row.visit == visit) today.feet.push_back(row);
  }
  today.actions = view.input.rows.actions;
  for (MedicineTold& one : medicine_told_in(today, products, view.wording)) {
    add_new(told, std::move(one));
  }
  std::erase_if(told, [&](const MedicineTold& one) {
    return !is_asked_still(view, one.cow) || is_answered(view, one);
  });
  std::stable_sort(told.begin(), told.end(), [&](const MedicineTold& a, const MedicineTold& b) {
    if (a.cow != b.cow) return view.names.before(a.cow, b.cow);
    return a.on < b.on;
  });
  return told;
}

}  // namespace evenclaw
