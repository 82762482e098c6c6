#include "tools/demo_pages.hpp"

#include <sstream>
#include <string_view>

#include "core/wire/field_docs.hpp"
#include "demo/on_off_lesions.hpp"
#include "demo/parameters.hpp"
#include "demo/truth.hpp"

namespace evenclaw {

namespace {

template <HasFields Row>
std::string columns_of(std::string_view table) {
  std::string text = "\n## " + std::string(table) +
                     "\n\n| column | holds | may be null | meaning |\n"
                     "|---|---|---|---|\n";
  for (const FieldDoc& field : field_docs<Row>()) {
    text += "| `" + field.path + "` | " + type_told(field) + " | " +
            (field.may_be_absent ? "yes" : "") + " | " + std::string(field.doc) + " |\n";
  }
  return text;
}

std::string number_text(double number) {
  std::ostringstream text;
  text << number;
  return text.str();
}

}  // namespace

std::string demo_truth_page() {
  return "# What is true of the invented business\n\n"
         "Made from the `fields()` of demo/truth.hpp by tools/generated_docs.sh; do not edit.\n\n"
         "`evenclaw demo` writes `truth.json` beside the records: one JSON object. Whole numbers "
         "only:\neffects stand in thousandths, days as `2026-11-24`, weeks by their first day. "
         "Each "
         "table is\n`{\"columns\": [names], \"rows\": [[cells], ...]}`; an absent cell is `null`. "
         "How it was made:\n[../method/demo-model.md](../method/demo-model.md).\n\n"
         "| member | holds |\n|---|---|\n"
         "| `wanted` | seed (as text), farms, weeks, first and last day of the records, the "
         "complications that hold |\n"
         "| `parameters_in_millionths` | every parameter of "
         "[../method/demo-parameters.md](../method/demo-parameters.md), by name |\n"
         "| `farms`, `callers`, `changes`, `cows`, `episodes`, `looks` | the tables below |\n\n"
         "An episode is one lesion from its beginning to its end, whether anybody saw it or not; "
         "those\nthat were over before the records begin are left out. A look is a lesion that was "
         "there when\nthe foot was lifted, called or not, or one that was called where nothing "
         "was.\n" +
         columns_of<demo::FarmTruth>("farms") + columns_of<demo::CallerTruth>("callers") +
         columns_of<demo::ChangeTruth>("changes") + columns_of<demo::CowTruth>("cows") +
         columns_of<demo::EpisodeTruth>("episodes") + columns_of<demo::LookTruth>("looks");
}

std::string demo_parameters_page() {
  std::string page =
      "# The numbers behind the invented business\n\n"
      "Made from demo/parameters.cpp and demo/on_off_lesions.cpp by tools/generated_docs.sh; do "
      "not "
      "edit.\nWhat they do: [demo-model.md](demo-model.md). \"From memory\": the source was not "
      "seen again.\nChances are for one week where the unit does not say more.\n\n"
      "| parameter | value | unit | source |\n|---|---|---|---|\n";
  for (const demo::ParameterFacts& facts : demo::all_parameters()) {
    page += "| `" + std::string(facts.name) + "` | " + number_text(facts.value) + " | " +
            std::string(facts.unit) + " | " + std::string(facts.source) + " |\n";
  }
  page +=
      "\n## Lesions that are there or not\n\nBegins: on a hind foot, a week, on a mean farm. "
      "Heals: a "
      "week. How they heal is invented.\n\n"
      "| lesion | goes with | begins | front foot, times | heals alone | once treated | fitted to "
      "|\n"
      "|---|---|---|---|---|---|---|\n";
  for (const demo::OnOffFacts& facts : demo::all_on_off_lesions()) {
    page += "| " + std::string(word_of(facts.lesion)) + " | " +
            (facts.follows_dirt ? "dirt" : "horn") + " | " + number_text(facts.begins) + " | " +
            number_text(facts.front) + " | " + number_text(facts.heals) + " | " +
            number_text(facts.heals_treated) + " | " + std::string(facts.source) + " |\n";
  }
  return page;
}

}  // namespace evenclaw
