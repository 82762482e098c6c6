#include "core/sheets/medicine_in_words.hpp"

#include <algorithm>

#include "core/sheets/words_of_her.hpp"
#include "core/trade/after_leaving.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

// How a medicine, or milk that is held back, is spoken of: our judgement, no source.
constexpr std::string_view words_of_medicine[] = {
    // English
    "antibiotic", "antibiotics", "painkiller", "painkillers", "injected", "injection", "jabbed",
    "jab", "given", "gave her", "treated", "medicine", "medicines", "withheld", "withdrawal",
    "milk in the bucket", "milk to the calves", "milk to calves", "milk away", "milk out",
    // German
    "Antibiotikum", "Antibiotika", "Schmerzmittel", "gespritzt", "Spritze", "injiziert", "gegeben",
    "verabreicht", "behandelt", "Medikament", "Medikamente", "Arznei", "Wartezeit", "Sperrmilch",
    "Milch gesperrt", "Milch in den Eimer", "Milch an die Kälber", "Milch weg"};

/// " milk in the bucket ": whole words, as the lexer folds them.
std::string folded_words(std::string_view words) {
  std::string bare(words);
  std::replace(bare.begin(), bare.end(), '"', ' ');
  std::string folded = " ";
  for (const Token& token : tokens_of(bare)) {
    const bool is_word = token.kind == TokenKind::word;
    folded += is_word ? token.folded : bare.substr(token.offset, token.length);
    folded += ' ';
  }
  return folded;
}

bool holds_words(const std::string& folded, std::string_view words) {
  return folded.find(folded_words(words)) != std::string::npos;
}

bool holds_any_of(const std::string& folded, const ProductNames& names) {
  return std::any_of(names.begin(), names.end(),
                     [&](const std::string& name) { return holds_words(folded, name); });
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

/// What was called beside the words stands in the record: who got the product that they name is
/// not asked after.
bool is_called_beside(std::string_view words, const std::vector<ProductNames>& products,
                      const std::vector<ActionRow>& acts, CowId cow, Day on) {
  const std::string folded = folded_words(words);
  const auto is_called = [&](const ProductNames& names) {
    return std::any_of(acts.begin(), acts.end(), [&](const ActionRow& row) {
      if (row.cow != cow || row.day != on) return false;
      return std::any_of(names.begin(), names.end(), [&](const std::string& name) {
        return folded_words(row.product) == folded_words(name);
      });
    });
  };
  bool is_any_named = false;
  for (const ProductNames& names : products) {
    if (!holds_any_of(folded, names)) continue;
    if (!is_called(names)) return false;
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
  const std::string folded = folded_words(words);
  const auto is_held = [&](std::string_view one) { return holds_words(folded, one); };
  const auto is_named = [&](const ProductNames& names) { return holds_any_of(folded, names); };
  return std::any_of(products.begin(), products.end(), is_named) ||
         std::any_of(std::begin(words_of_medicine), std::end(words_of_medicine), is_held);
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
