#include <algorithm>

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/products.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"WHAT", "country, injection, anaesthesia or surgery", false},
                                {"ANSWER", "the country; yes or no for an act", false}};
constexpr Example examples[] = {
    {"evenclaw allowed", "whose injections, anaesthesia and surgery are, and why"},
    {"evenclaw allowed country GB", "where the business works; GB-NIR for Northern Ireland"},
    {"evenclaw allowed injection yes", "local law lets the trimmer: no Stop is shown for it"}};

struct ActAllowed {
  ReservedAct act = ReservedAct::injection;
  bool trimmer_may = false;
  std::string country;
  std::string source;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("act", &ActAllowed::act, "which act");
    visit("trimmer_may", &ActAllowed::trimmer_may, "the business says that its trimmers may");
    visit("country", &ActAllowed::country, "where the business works; empty when not said");
    visit("source", &ActAllowed::source, "why it is the vet's otherwise, and how sure that is");
  }
};

constexpr JsonAnswer answers[] = {{"without WHAT", JsonForm::list, field_docs<ActAllowed>},
                                  {"with it", JsonForm::document, field_docs<EntryAnswer>}};

Exit usage(const Invocation& invocation) {
  return tell_faults({{"usage", "say the country, or an act and yes or no",
                       invocation.operands.empty() ? "" : invocation.operands.front(), 0, 0,
                       "See: evenclaw help allowed"}},
                     invocation);
}

Exit list(const LocalLaw& law, const Invocation& invocation) {
  std::vector<ActAllowed> all;
  for (const auto& row : EnumWords<ReservedAct>::table) {
    const bool may = std::find(law.trimmer_may.begin(), law.trimmer_may.end(), row.value) !=
                     law.trimmer_may.end();
    all.push_back(
        {row.value, may, law.country, std::string(rule_for(row.value, law.country).source)});
  }
  if (invocation.json) {
    print_json(all);
    return Exit::fine;
  }
  std::cout << "Country: " << (law.country.empty() ? "not said" : law.country) << '\n';
  for (const ActAllowed& act : all) {
    std::cout << word_of(act.act)
              << (act.trimmer_may ? ": the trimmer may, says this business\n" : ": the vet's\n")
              << "  " << act.source << '\n';
  }
  std::cout << "Local law decides; this list only says when to stop and ask.\n";
  return Exit::fine;
}

Result<EntryId> settle(Records& records, const Invocation& invocation, ReservedAct act) {
  return set_trimmer_may(records.ports(), act, invocation.operands[1] == "yes");
}

Exit run(const Invocation& invocation) {
  const std::vector<std::string>& said = invocation.operands;
  if (said.size() == 1) return usage(invocation);
  auto records = Records::open(invocation, said.empty() ? Opening::look : Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  if (said.empty()) {
    auto law = local_law((*records)->store());
    if (!law) return tell_faults(law.faults(), invocation);
    return list(*law, invocation);
  }
  const auto act = enum_of<ReservedAct>(said[0]);
  const bool is_answer = said[1] == "yes" || said[1] == "no";
  if (said[0] != "country" && (!act || !is_answer)) return usage(invocation);
  auto entry =
      act ? settle(**records, invocation, *act) : set_country((*records)->ports(), said[1]);
  if (!entry) return tell_faults(entry.faults(), invocation);
  tell_done(invocation, "Settled: " + said[0] + " " + said[1] + ".", EntryAnswer{*entry});
  return Exit::fine;
}

}  // namespace

extern const Command allowed_command = {
    "allowed", "what local law lets the trimmer do", operands, {}, examples, run, answers};

}  // namespace evenclaw::cli
