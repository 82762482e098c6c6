#include "core/trade/call_line/offered.hpp"

#include <initializer_list>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/free_text.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

using K = TermKind;

std::string in_a_row(std::initializer_list<std::string_view> words) {
  std::string line;
  for (const std::string_view word : words) {
    if (word.empty()) continue;
    if (!line.empty()) line += ' ';
    line += word;
  }
  return line;
}

std::string_view words_for(Claw claw, const Language& language) {
  return is_called(claw) ? language.say(K::claw, claw) : std::string_view();
}

}  // namespace

std::string offered_go_ahead(const Language& language) {
  return std::string(language.say(K::go_ahead));
}

std::string offered_act(std::optional<Foot> foot, ActionKind act, Claw claw,
                        const Language& language) {
  return in_a_row({foot ? language.say(K::foot, *foot) : std::string_view(),
                   language.say(facts_of(act).said_as, act), words_for(claw, language)});
}

std::string offered_finding(Foot foot, Claw claw, Lesion lesion, const Language& language) {
  return in_a_row(
      {language.say(K::foot, foot), words_for(claw, language), language.say(K::lesion, lesion)});
}

std::string offered_by_vet(std::optional<Foot> foot, ActionKind act, const Language& language) {
  return in_a_row(
      {offered_act(foot, act, Claw::none, language), language.say(K::by_whom, ByWhom::vet)});
}

std::string offered_other_product(std::optional<Foot> foot, ActionKind act, std::string_view name,
                                  const Language& language) {
  const std::string_view words = language.say(facts_of(act).said_as, act);
  const std::string no(language.say(K::correction));
  const std::string taken_back = offered_correction(in_a_row({no, words}), language);
  const std::string named = printed_text(name, TextExtent::to_separator, language);
  return in_a_row({foot ? language.say(K::foot, *foot) : std::string_view(), taken_back + ";",
                   words, language.say(K::with), named});
}

std::string offered_other_day(Foot foot, ActionKind act, Claw claw, int days,
                              const Language& language) {
  const std::string taken_back = offered_taking_back(foot, act, claw, language);
  const std::string unit(language.say(K::day_unit));
  return in_a_row({taken_back + ";", offered_act({}, act, claw, language) + ",",
                   language.say(K::off), std::to_string(days) + unit});
}

std::string offered_correction(Foot right, const Language& language) {
  return offered_correction(language.say(K::foot, right), language);
}

std::string offered_correction(Claw right, const Language& language) {
  return offered_correction(language.say(K::claw, right), language);
}

std::string offered_correction(std::string_view right_number, const Language& language) {
  return std::string(language.say(K::correction)) + ", " + std::string(right_number);
}

std::string offered_correction(const MobilitySaid& right, const Language& language) {
  return offered_correction(
      in_a_row({language.say(K::mobility), std::to_string(*right.score), language.say(K::out_of),
                std::to_string(facts_of(*right.scale).highest)}),
      language);
}

std::string offered_taking_back(Foot foot, const Finding& finding, const Language& language) {
  const std::string no(language.say(K::correction));
  const std::string said =
      in_a_row({no, words_for(finding.claw, language), language.say(K::lesion, finding.lesion),
                language.say(K::stage, finding.stage), language.say(K::degree, finding.degree)});
  return in_a_row({language.say(K::foot, foot), offered_correction(said, language)});
}

std::string offered_taking_back(Foot foot, ActionKind act, Claw claw, const Language& language) {
  const std::string said =
      in_a_row({language.say(K::correction), offered_act({}, act, claw, language)});
  return in_a_row({language.say(K::foot, foot), offered_correction(said, language)});
}

std::string offered_taking_back(Foot foot, const Measure& measure, const Language& language) {
  const std::string length = to_text(measure.length);
  const std::string said = in_a_row({language.say(K::correction), words_for(measure.claw, language),
                                     length.substr(0, length.find(' ')), language.say(K::mm)});
  return in_a_row({language.say(K::foot, foot), offered_correction(said, language)});
}

std::string offered_not_lame(const Language& language) {
  return offered_correction(in_a_row({language.say(K::negation), language.say(K::lame)}), language);
}

std::string offered_lame(const FootSet& feet, const Language& language) {
  return offered_correction(in_a_row({language.say(K::lame), offered_feet(feet, language)}),
                            language);
}

std::string offered_taking_back(ActionKind act, const Language& language) {
  return offered_correction(
      in_a_row({language.say(K::negation), offered_act({}, act, Claw::none, language)}), language);
}

std::string offered_feet(const FootSet& feet, const Language& language) {
  std::string words;
  for (const Foot foot : all_feet) {
    if (feet.has(foot)) words = in_a_row({words, language.say(K::foot, foot)});
  }
  return words;
}

std::string offered_person(TermKind who, std::string_view name, const Language& language) {
  return in_a_row({language.say(who), name});
}

std::string offered_todays_feet(FeetGroup feet, const Language& language) {
  return in_a_row({language.say(K::today), language.say(K::feet, feet)});
}

}  // namespace evenclaw
