#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/call_language.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"LANGUAGE", "in which days are called from now on", false}};
constexpr Example examples[] = {
    {"evenclaw language", "in which language days are called, and which there are"},
    {"evenclaw language de", "from now on lines are called in German"}};

struct LanguageOffered {
  std::string code;
  std::string name;
  bool is_settled = false;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("code", &LanguageOffered::code, "how it is named in short");
    visit("name", &LanguageOffered::name, "what those call it who speak it");
    visit("is_settled", &LanguageOffered::is_settled, "days of this business are called in it");
  }
};

constexpr JsonAnswer answers[] = {{"without LANGUAGE", JsonForm::list, field_docs<LanguageOffered>},
                                  {"with it", JsonForm::document, field_docs<EntryAnswer>}};

Exit list(const Records& records, const Invocation& invocation) {
  std::vector<LanguageOffered> all;
  for (const CallLanguage& each : call_languages()) {
    const bool is_settled = &each.words() == &records.language();
    all.push_back({std::string(each.code), std::string(each.name), is_settled});
  }
  if (invocation.json) {
    print_json(all);
    return Exit::fine;
  }
  for (const LanguageOffered& each : all) {
    std::cout << each.code << "  " << each.name
              << (each.is_settled ? "  (days are called in it)\n" : "\n");
  }
  return Exit::fine;
}

Exit run(const Invocation& invocation) {
  const bool only_asks = invocation.operands.empty();
  auto records = Records::open(invocation, only_asks ? Opening::look : Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  if (only_asks) return list(**records, invocation);
  const std::string& wanted = invocation.operands.front();
  auto entry = set_call_language((*records)->ports(), wanted);
  if (!entry) return tell_faults(entry.faults(), invocation);
  tell_done(invocation, "Days are called in " + wanted + " from now on.", EntryAnswer{*entry});
  return Exit::fine;
}

}  // namespace

extern const Command language_command = {
    "language", "in which language days are called", operands, {}, examples, run, answers};

}  // namespace evenclaw::cli
