#include "core/trade/call_line/known_of_her.hpp"

#include <algorithm>
#include <utility>

#include "core/base/quotation.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/quoted_words.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

using K = TermKind;

std::string code_of(Foot foot, const Language& language) {
  return std::string(language.say(K::foot, foot));
}

Fault not_known(const KnownSaid& said, std::string message, const std::string& remedy,
                const Language& language) {
  Fault fault;
  fault.slug = "call-impossible";
  fault.message = std::move(message);
  fault.token = said.words;
  fault.remedy = with_quoted_words(remedy, language);
  return fault;
}

Fault which_foot(const KnownSaid& said, const FootSet& feet, const std::string& message,
                 const Language& language) {
  std::string lines;
  for (const Foot foot : all_feet) {
    if (!feet.has(foot)) continue;
    if (!lines.empty()) lines += ", ";
    lines += quoted(code_of(foot, language) + ' ' + said.words);
  }
  return not_known(said, message, "say the foot first: " + lines, language);
}

Foot only_one(const FootSet& feet) {
  for (const Foot foot : all_feet) {
    if (feet.has(foot)) return foot;
  }
  return Foot::lf;
}

template <class F>
FootSet feet_where(F holds) {
  FootSet feet;
  for (const Foot foot : all_feet) {
    if (holds(foot)) feet.add(FootSet{foot});
  }
  return feet;
}

/// Put on before today and told today to be off.
std::vector<OnFootRow> off_today(const KnownPast& past, Foot foot, Fixture fixture) {
  std::vector<OnFootRow> off;
  for (const OnFootRow& row : past.rows.on_feet) {
    const bool is_meant = row.foot == foot && row.fixture == fixture;
    if (is_meant && row.since < past.today && row.ended_on == past.today) off.push_back(row);
  }
  return off;
}

FootSet carrying(const KnownPast& past, Fixture fixture) {
  const FootSet feet =
      feet_where([&](Foot foot) { return !fixtures_left(past.rows, foot, fixture).empty(); });
  if (!feet.empty()) return feet;
  return feet_where([&](Foot foot) { return !off_today(past, foot, fixture).empty(); });
}

FootSet carrying_from_before(const KnownPast& past, Fixture fixture) {
  return feet_where([&](Foot foot) {
    const std::vector<OnFootRow> left = fixtures_left(past.rows, foot, fixture);
    return std::any_of(left.begin(), left.end(),
                       [&](const OnFootRow& row) { return row.since < past.today; });
  });
}

/// An amputated claw is missing from then on, also where nobody said so in these words.
bool tells_of_amputation(const ActionRow& row, Foot foot) {
  return row.foot == foot && row.action == ActionKind::amputated;
}

/// The claws known to be missing, by earlier turns or this one.
ClawPair missing_claws(const TurnDraft& draft, const Rows& rows, Foot foot) {
  ClawPair claws = missing_before(rows, foot);
  for (const ActionRow& row : rows.actions) {
    if (tells_of_amputation(row, foot)) claws.add(row.claw);
  }
  const FootCall* call = find_foot(draft.turn, foot);
  if (call == nullptr) return claws;
  for (const Action& action : call->actions) {
    if (action.kind == ActionKind::claw_missing) claws.add(action.claw);
  }
  return claws;
}

bool has_stump(const TurnDraft& draft, const Rows& rows, Foot foot) {
  const bool is_on_record = std::any_of(
      rows.feet.begin(), rows.feet.end(),
      [&](const FootRow& row) { return row.foot == foot && row.missing != Claw::none; });
  const bool is_amputated =
      std::any_of(rows.actions.begin(), rows.actions.end(),
                  [&](const ActionRow& row) { return tells_of_amputation(row, foot); });
  return is_on_record || is_amputated || !missing_claws(draft, rows, foot).none();
}

Result<PutPlainly> of_fixture(const TurnDraft& draft, const KnownSaid& said, const KnownPast& past,
                              const Language& language) {
  // Whoever names the foot tells what stands there.
  if (!draft.feet_named.empty()) return PutPlainly{};
  const Fixture fixture = said.what == KnownOfHer::wrapped_foot ? Fixture::wrap : Fixture::block;
  const std::string what(name_of(fixture));
  const FootSet feet = carrying(past, fixture);
  if (feet.empty()) {
    return not_known(said, "no " + what + " of hers is known to be on",
                     "say the foot it is on: \"{LH} " + said.words + "\"", language);
  }
  if (feet.count() > 1)
    return which_foot(said, feet, "she carries more than one " + what, language);
  const Foot foot = only_one(feet);
  return PutPlainly{{FeetNamed{feet}}, {told_of_fixture(past, foot, fixture, language)}};
}

/// The one foot with a claw missing that is meant.
Result<Foot> stump_meant(const TurnDraft& draft, const KnownSaid& said, const KnownPast& past,
                         const Language& language) {
  const bool is_named = !draft.feet_named.empty();
  const FootSet feet = feet_where([&](Foot foot) {
    return (!is_named || draft.feet_named.has(foot)) && has_stump(draft, past.rows, foot);
  });
  const FootSet elsewhere =
      feet_where([&](Foot foot) { return has_stump(draft, past.rows, foot); });
  if (feet.empty() && !elsewhere.empty())
    return which_foot(said, elsewhere, "no claw of hers is known to be missing there", language);
  if (feet.empty()) {
    return not_known(
        said, "no claw of hers is known to be missing" + std::string(is_named ? " there" : ""),
        "say first which one: \"{LH} {inside} {claw missing}\"", language);
  }
  if (feet.count() > 1) {
    return which_foot(said, feet, "a claw is missing on more than one foot", language);
  }
  return only_one(feet);
}

std::string told_of_stump(const TurnDraft& draft, const KnownPast& past, Foot foot,
                          const Language& language) {
  std::optional<Day> since;
  for (const FootRow& row : past.rows.feet) {
    const bool is_meant = row.foot == foot && row.missing != Claw::none;
    if (is_meant) since = since ? std::min(*since, row.day) : row.day;
  }
  for (const ActionRow& row : past.rows.actions) {
    if (tells_of_amputation(row, foot)) since = since ? std::min(*since, row.day) : row.day;
  }
  const Claw claw = missing_claws(draft, past.rows, foot).claw();
  const std::string which = is_called(claw) ? std::string(language.say(K::claw, claw)) + ' ' : "";
  std::string told = code_of(foot, language) + ' ' +
                     std::string(language.say(K::opened_act, ActionKind::claw_missing)) + ' ' +
                     which;
  told += since ? "(known since " + spoken(*since) + ")" : "(told today)";
  return told;
}

Result<PutPlainly> of_stump(const TurnDraft& draft, const KnownSaid& said, const KnownPast& past,
                            const Language& language) {
  const Result<Foot> foot = stump_meant(draft, said, past, language);
  if (!foot) return foot.faults();
  PutPlainly plain;
  if (draft.feet_named != FootSet{*foot}) plain.clauses.emplace_back(FeetNamed{FootSet{*foot}});
  plain.learned = {told_of_stump(draft, past, *foot, language)};
  if (said.what == KnownOfHer::stump) {
    plain.clauses.emplace_back(NoteSaid{said.words});
    return plain;
  }
  const Claw missing = missing_claws(draft, past.rows, *foot).claw();
  const bool is_one = missing == Claw::outside || missing == Claw::inside;
  const std::string which =
      is_one ? " (" + std::string(language.say(K::claw, partner(missing))) + ")" : std::string();
  plain.clauses.emplace_back(TrimmedSaid{Trimmed::yes});
  plain.clauses.emplace_back(NoteSaid{said.words + which});
  return plain;
}

/// The nick of last time is no lesion that stays the same.
bool stays_a_finding(const FindingRow& row) {
  return row.lesion != Lesion::blood_drawn;
}

Finding finding_in(const FindingRow& row) {
  Finding finding;
  finding.claw = row.claw;
  finding.lesion = row.lesion;
  finding.words = row.words;
  finding.place = row.place;
  finding.zone = row.zone;
  finding.degree = row.degree;
  finding.stage = row.stage;
  finding.dd_infected = row.dd_infected;
  return finding;
}

struct LastCall {
  FootCall call;
  Day day;
};

/// The foot as it was called when it was lifted last, before this visit.
std::optional<LastCall> last_call(const KnownPast& past, Foot foot) {
  const FootRow* last = nullptr;
  for (const FootRow& row : past.rows.feet) {
    const bool was_called =
        row.state == FootState::finding || row.state == FootState::nothing_found;
    const bool is_before = row.visit != past.visit && row.day <= past.today;
    if (row.foot != foot || !was_called || !is_before) continue;
    if (last == nullptr || last->day <= row.day) last = &row;
  }
  if (last == nullptr) return std::nullopt;
  LastCall found{{}, last->day};
  found.call.foot = foot;
  found.call.state = last->state;
  for (const FindingRow& row : past.rows.findings) {
    if (row.turn != last->turn || row.foot != foot || !stays_a_finding(row)) continue;
    found.call.findings.push_back(finding_in(row));
  }
  return found;
}

std::string in_call_words(const LastCall& last, const Language& language) {
  Turn turn;
  turn.cow.number = "0";
  turn.feet = {last.call};
  return print_turn(turn, language).back() + " (" + spoken(last.day) + ")";
}

bool is_a_comparison(std::string_view words, const Language& language) {
  return holds_phrase(words, K::compared, 0, language) ||
         holds_phrase(words, K::as_last_time, 0, language);
}

/// What was kept beside it then stays, a comparison with a time before that does not.
void keep_words(Finding& finding, const std::string& said, const Language& language) {
  const bool is_bare = finding.words.empty() || is_a_comparison(finding.words, language);
  finding.words = is_bare ? said : finding.words + ", " + said;
}

Outcome take_over(PutPlainly& plain, const KnownSaid& said, Foot foot, const KnownPast& past,
                  const Language& language) {
  const std::optional<LastCall> last = last_call(past, foot);
  const std::string where(spoken(foot));
  if (!last) {
    return not_known(said, "nothing is known of the " + where + " from an earlier visit",
                     "say what is found: \"{LH sole ulcer}\", \"{LH} {nothing found}\"", language);
  }
  plain.learned.push_back(in_call_words(*last, language));
  if (last->call.state == FootState::nothing_found) {
    plain.clauses.emplace_back(FootStateSaid{FootState::nothing_found});
    plain.clauses.emplace_back(NoteSaid{said.words});
    return Done{};
  }
  if (last->call.findings.empty()) {
    return not_known(said, "no lesion was found on the " + where + " last time",
                     "say what is found: \"{LH sole ulcer}\", \"{LH} {nothing found}\"", language);
  }
  bool is_kept = false;
  for (Finding finding : last->call.findings) {
    if (!is_named_by_words(finding.lesion)) {
      keep_words(finding, said.words, language);
      is_kept = true;
    }
    plain.clauses.emplace_back(FindingSaid{finding});
  }
  if (!is_kept) plain.clauses.emplace_back(NoteSaid{said.words});
  return Done{};
}

std::optional<Day> last_visit(const KnownPast& past) {
  std::optional<Day> day;
  for (const TurnRow& row : past.rows.turns) {
    const bool is_before = row.visit != past.visit && row.day <= past.today;
    if (is_before) day = day ? std::max(*day, row.day) : row.day;
  }
  return day;
}

/// Where no foot is named: the foot with a finding at her last visit, when it is one.
Result<FootSet> feet_of_last_time(const KnownSaid& said, const KnownPast& past,
                                  const Language& language) {
  const std::optional<Day> day = last_visit(past);
  if (!day) {
    return not_known(said, "nothing is known of her from an earlier visit",
                     "say the foot and what is found: \"{LH sole ulcer}\"", language);
  }
  const FootSet feet = feet_where([&](Foot foot) {
    const std::optional<LastCall> last = last_call(past, foot);
    return last && last->day == *day && !last->call.findings.empty();
  });
  if (feet.empty()) {
    return not_known(said, "no lesion was found on her last time (" + spoken(*day) + ")",
                     "say what is found now: \"{LH sole ulcer}\", \"{rest fine}\"", language);
  }
  if (feet.count() == 1) return feet;
  std::string lines;
  for (const Foot foot : all_feet) {
    if (!feet.has(foot)) continue;
    lines += (lines.empty() ? "" : ", ") + in_call_words(*last_call(past, foot), language);
  }
  return which_foot(said, feet, "more than one foot had something last time: " + lines, language);
}

Result<PutPlainly> of_last_time(const TurnDraft& draft, const KnownSaid& said,
                                const KnownPast& past, const Language& language) {
  FootSet feet = draft.feet_named;
  if (feet.empty()) {
    const Result<FootSet> found = feet_of_last_time(said, past, language);
    if (!found) return found.faults();
    feet = *found;
  }
  PutPlainly plain;
  const bool each_by_itself = feet.count() > 1;
  for (const Foot foot : all_feet) {
    if (!feet.has(foot)) continue;
    if (each_by_itself || draft.feet_named.empty()) {
      plain.clauses.emplace_back(FeetNamed{FootSet{foot}});
    }
    const Outcome taken = take_over(plain, said, foot, past, language);
    if (!taken) return taken.faults();
  }
  if (each_by_itself) plain.clauses.emplace_back(FeetNamed{feet});
  return plain;
}

}  // namespace

Result<PutPlainly> put_plainly(const TurnDraft& draft, const KnownSaid& said, const KnownPast& past,
                               const Language& language) {
  switch (said.what) {
    case KnownOfHer::wrapped_foot:
    case KnownOfHer::blocked_foot:
      return of_fixture(draft, said, past, language);
    case KnownOfHer::stump:
    case KnownOfHer::other_claw:
      return of_stump(draft, said, past, language);
    case KnownOfHer::as_last_time:
      return of_last_time(draft, said, past, language);
  }
  return PutPlainly{};
}

bool concerns_one_from_before(ActionKind act) {
  const std::optional<FixtureSaid> told = fixture_said(act);
  return told && (is_off_after(told->step) || told->step == FixtureStep::left_on ||
                  told->step == FixtureStep::not_known || act == ActionKind::block_refitted);
}

FootSet feet_that_carry_it(const TurnDraft& draft, const ActionSaid& said, const KnownPast& past) {
  const std::optional<FixtureSaid> told = fixture_said(said.action.kind);
  if (!concerns_one_from_before(said.action.kind) || said.whole_cow || !draft.feet_named.empty())
    return {};
  const FootSet feet = carrying(past, told->fixture);
  if (feet.count() == 1) return feet;
  return said.all ? carrying_from_before(past, told->fixture) : FootSet{};
}

std::string told_of_fixture(const KnownPast& past, Foot foot, Fixture fixture,
                            const Language& language) {
  std::vector<OnFootRow> left = fixtures_left(past.rows, foot, fixture);
  if (left.empty()) left = off_today(past, foot, fixture);
  if (left.empty()) return {};
  const Day since = left.back().since;
  const int days = past.today - since;
  std::string told = code_of(foot, language) + ": " + std::string(name_of(fixture)) + " on since " +
                     spoken(since) + ", " + std::to_string(days) + (days == 1 ? " day" : " days");
  const TaskKind kind = fixture == Fixture::wrap ? TaskKind::wrap_off : TaskKind::block_off;
  for (const TaskRow& task : past.rows.tasks) {
    const bool is_its = task.open && task.kind == kind && task.foot == foot;
    if (is_its && task.due < past.today) {
      told += ", " + std::to_string(past.today - task.due) + " late";
      break;
    }
  }
  return told;
}

std::string told_of_last(const KnownPast& past, Foot foot, const Finding& finding,
                         const Language& language) {
  const Lesion family = facts_of(finding.lesion).family;
  std::optional<LastCall> last = last_call(past, foot);
  if (last) {
    std::vector<Finding>& all = last->call.findings;
    all.erase(std::remove_if(
                  all.begin(), all.end(),
                  [&](const Finding& known) { return facts_of(known.lesion).family != family; }),
              all.end());
  }
  if (last && !last->call.findings.empty()) return in_call_words(*last, language);
  return code_of(foot, language) + (last ? ": none of that was found when it was lifted last"
                                         : ": nothing is known of it from an earlier visit");
}

bool holds_phrase(std::string_view words, TermKind kind, int value, const Language& language) {
  const std::vector<Token> tokens = spoken_tokens(words, language);
  for (std::size_t at = 0; at < tokens.size(); ++at) {
    const Phrase* phrase = language.longest_match(tokens, at).phrase;
    if (phrase != nullptr && phrase->kind == kind && phrase->value == value) return true;
  }
  return false;
}

/// "stump's healed; square up the other one (inside)".
bool tells_of_a_stump_only(std::string_view note, const Language& language) {
  const std::vector<Token> tokens = spoken_tokens(note, language);
  bool tells = false;
  for (std::size_t at = 0; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    const bool is_word = tokens[at].kind == TokenKind::word;
    if (is_word && match.phrase == nullptr) return false;
    const K kind = is_word ? match.phrase->kind : K::claw;
    if (kind != K::stump_known && kind != K::other_claw && kind != K::claw) return false;
    tells |= kind != K::claw;
    at += std::max<std::size_t>(match.word_count, 1);
  }
  return tells;
}

}  // namespace evenclaw
