#include "core/sheets/also_said.hpp"

#include <algorithm>
#include <iterator>
#include <span>
#include <utility>

#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/vet_stops.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/lesion.hpp"

namespace evenclaw {

namespace {

struct RuleForOthers {
  std::string_view rule;
  bool is_for_vet;
};

constexpr std::string_view pain_relief_rule_slug = "no-pain-relief-said";

/// What only the trimmer can mend or know is not among them, nor what the boxes ask already.
constexpr RuleForOthers rules_told[] = {{pain_relief_rule_slug, true},
                                        {"blocked-again-twice", true},
                                        {"third-visit-same-lesion", true},
                                        {"lame-cause-not-found", true},
                                        {"foul-wrapped", true},
                                        {"toe-short", false},
                                        {"near-calving", false},
                                        {"leaving-with-block-or-wrap", true},
                                        {"worst-walk-nursing", false},
                                        {"thin-sole", false},
                                        {"wrap-or-block-not-known", false}};

const RuleForOthers* rule_told(std::string_view rule) {
  const auto found = std::find_if(std::begin(rules_told), std::end(rules_told),
                                  [rule](const RuleForOthers& each) { return each.rule == rule; });
  return found == std::end(rules_told) ? nullptr : found;
}

/// What tells of a sign stands in the vet's box as long as he does not know of it.
bool tells_of_a_sign(const Warning& warning) {
  const std::span<const SignForVet> signs = signs_for_vet();
  return std::any_of(signs.begin(), signs.end(), [&](const SignForVet& sign) {
    const bool is_seen = sign.seen || sign.found || sign.urgency == VetUrgency::reportable;
    return is_seen && sign.check == warning.rule;
  });
}

std::string folded_words(std::string_view text) {
  std::string words;
  for (const Token& token : tokens_of(text)) {
    if (!token.folded.empty()) words += token.folded + ' ';
  }
  return words;
}

enum class Reader { farmer, vet };

/// Checks for the vet that nobody answered stand in his box.
bool is_told_to(Reader reader, const WarningShown& shown) {
  const std::string& rule = shown.warning.rule;
  const bool is_for_vet = calls_for_vet(shown.warning);
  if (is_for_vet) return shown.decision == went_ahead && !tells_of_a_sign(shown.warning);
  if (shown.warning.rank == Rank::stop) {
    const bool is_open = shown.decision.empty() || shown.decision == went_ahead;
    return reader == Reader::farmer && is_open;
  }
  const RuleForOthers* known = rule_told(rule);
  const bool is_open = shown.warning.rank == Rank::note || shown.decision.empty();
  return known != nullptr && is_open && (reader == Reader::farmer || known->is_for_vet);
}

/// The foot stands on her card; without it cows of whom this is told stand together.
std::string words_here(const WarningShown& shown, const Wording& wording) {
  return shown.warning.rule == pain_relief_rule_slug ? wording.say(Saying::pain_not_talked_of)
                                                     : warning_words(shown, wording);
}

bool is_told_of(ActionKind kind) {
  return kind == ActionKind::near_calving || kind == ActionKind::cull_advised;
}

void add_new_words(std::vector<std::string>& parts, std::string words) {
  if (std::find(parts.begin(), parts.end(), words) == parts.end()) {
    parts.push_back(std::move(words));
  }
}

/// "Near calving" is told already by "Near calving: only what cannot wait".
void leave_out_what_is_told(std::vector<std::string>& parts) {
  const std::vector<std::string> all = parts;
  std::erase_if(parts, [&](const std::string& part) {
    return std::any_of(all.begin(), all.end(), [&](const std::string& other) {
      return other.size() > part.size() && folded_words(other).rfind(folded_words(part), 0) == 0;
    });
  });
}

bool is_treatment(ActionKind kind) {
  constexpr ActionKind treatments[] = {ActionKind::opened,      ActionKind::loose_horn_off,
                                       ActionKind::modelled,    ActionKind::block_on,
                                       ActionKind::block_again, ActionKind::wrap_on};
  return takes_product(kind) ||
         std::find(std::begin(treatments), std::end(treatments), kind) != std::end(treatments);
}

bool hurts_her(const FindingRow& row) {
  const Hurts hurts = facts_of(row.lesion).hurts;
  return hurts == Hurts::yes || (hurts == Hurts::when_bad && row.degree == Degree::bad);
}

/// Something that hurts was treated, and nobody asked for pain relief nor gave it: the note of the
/// check is of blocks alone, and a sheet that names some of these cows would tell of the others
/// that it was.
bool is_pain_left_out(const CowSeen& cow) {
  const bool is_talked_of =
      std::any_of(cow.actions.begin(), cow.actions.end(), [](const ActionRow* row) {
        return row->action == ActionKind::pain_relief_asked ||
               row->action == ActionKind::pain_relief_given;
      });
  if (is_talked_of) return false;
  return std::any_of(cow.findings.begin(), cow.findings.end(), [&](const FindingRow* found) {
    return hurts_her(*found) &&
           std::any_of(cow.actions.begin(), cow.actions.end(), [&](const ActionRow* row) {
             return row->foot == found->foot && is_treatment(row->action);
           });
  });
}

std::vector<std::string> parts_of_cow(const CowSeen& cow, Reader reader, const VisitView& view) {
  std::vector<std::string> parts;
  for (const ActionRow* row : cow.actions) {
    const bool is_told = reader == Reader::farmer && is_told_of(row->action);
    if (is_told) add_new_words(parts, view.wording.act(*row, view.input.visit.day));
  }
  for (const WarningShown* shown : cow.warnings) {
    if (is_told_to(reader, *shown)) add_new_words(parts, words_here(*shown, view.wording));
  }
  if (is_pain_left_out(cow)) add_new_words(parts, view.wording.say(Saying::pain_not_talked_of));
  leave_out_what_is_told(parts);
  return parts;
}

bool left_the_herd(const VisitView& view, CowId cow) {
  const auto& cows = view.input.rows.cows;
  return std::any_of(cows.begin(), cows.end(),
                     [cow](const CowRow& row) { return row.cow == cow && row.left_on; });
}

/// Cows of whom the same is told.
struct ToldAlike {
  std::string words;
  std::vector<std::string> cows;
};

std::vector<Block> also_said(const VisitView& view, Reader reader, Heading heading) {
  std::vector<ToldAlike> all;
  for (const CowSeen& cow : view.cows) {
    const std::vector<std::string> parts = parts_of_cow(cow, reader, view);
    if (parts.empty() || left_the_herd(view, cow.cow)) continue;
    std::string words = as_sentence(clauses(parts));
    auto alike = std::find_if(all.begin(), all.end(),
                              [&](const ToldAlike& one) { return one.words == words; });
    if (alike == all.end()) alike = all.insert(all.end(), {std::move(words), {}});
    alike->cows.push_back(view.names.in_text(cow.cow));
  }
  if (all.empty()) return {};
  Bullets bullets;
  for (const ToldAlike& one : all) {
    bullets.items.push_back({strong(view.wording.list(one.cows)), plain(": " + one.words)});
  }
  return {std::move(heading), std::move(bullets)};
}

}  // namespace

std::vector<std::string_view> rules_for_others() {
  std::vector<std::string_view> rules;
  for (const RuleForOthers& each : rules_told) rules.push_back(each.rule);
  return rules;
}

std::string warning_words(const WarningShown& shown, const Wording& wording) {
  if (shown.warning.rank == Rank::note) return shown.warning.words;
  const std::string what = as_sentence(shown.warning.words);
  if (shown.decision.empty()) return wording.say(Saying::not_answered, {{"what", what}});
  const std::string decision =
      shown.decision == went_ahead ? wording.say(Saying::go_ahead) : shown.decision;
  return wording.say(Saying::decided, {{"what", what}, {"decision", decision}});
}

bool is_told_to_farmer(const WarningShown& shown) {
  return is_told_to(Reader::farmer, shown);
}

bool is_told_to_vet(const WarningShown& shown) {
  return is_told_to(Reader::vet, shown);
}

std::vector<Block> also_said_for_farmer(const VisitView& view) {
  return also_said(view, Reader::farmer, {2, view.wording.say(Saying::also_said_title)});
}

std::vector<Block> also_said_for_vet(const VisitView& view) {
  return also_said(view, Reader::vet, {3, view.wording.say(Saying::also_said_title)});
}

}  // namespace evenclaw
