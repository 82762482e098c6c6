#include "core/api/importing/import_memory.hpp"

#include <algorithm>
#include <map>
#include <string_view>
#include <utility>

#include "core/base/text.hpp"
#include "core/log/bodies.hpp"
#include "core/wire/json.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view setting_of_lists = "lists-of-the-herd";
constexpr std::string_view columns_member = "columns";
constexpr std::string_view dates_member = "dates";
constexpr std::string_view codes_member = "lesions_are_icar_codes";
constexpr std::string_view words_member = "words";  // by column

void add_words(HerdColumn column, const JsonObject& words, FindingScheme& scheme) {
  for (const auto& [word, means] : words) {
    const std::string* text = means.as_string();
    if (text != nullptr) scheme.words.push_back({column, word, *text});
  }
}

FindingScheme scheme_in(const Json& json) {
  FindingScheme scheme;
  const Json* codes = json.member(codes_member);
  const bool* is_icar = codes == nullptr ? nullptr : codes->as_bool();
  if (is_icar != nullptr) scheme.icar = *is_icar;
  const Json* words = json.member(words_member);
  const JsonObject* by_column = words == nullptr ? nullptr : words->as_object();
  if (by_column == nullptr) return scheme;
  for (const auto& [name, said] : *by_column) {
    const auto column = enum_of<HerdColumn>(name);
    const JsonObject* of_column = said.as_object();
    if (column && of_column != nullptr) add_words(*column, *of_column, scheme);
  }
  // In the order in which with_words_said() keeps them.
  return with_words_said(std::move(scheme), {});
}

void put_scheme(const FindingScheme& scheme, JsonObject& value) {
  if (scheme.icar) value.emplace(codes_member, Json(*scheme.icar));
  std::map<HerdColumn, JsonObject> by_column;
  for (const WordSaid& said : scheme.words) {
    by_column[said.column].insert_or_assign(said.word, Json(said.means));
  }
  if (by_column.empty()) return;
  JsonObject words;
  for (auto& [column, said] : by_column) {
    words.emplace(word_of(column), Json(std::move(said)));
  }
  value.emplace(words_member, Json(std::move(words)));
}

ImportMemory memory_in(const std::string& value) {
  ImportMemory memory;
  const auto json = json_from_text(value);
  if (!json) return memory;
  const Json* columns = json->member(columns_member);
  const JsonObject* heads = columns == nullptr ? nullptr : columns->as_object();
  if (heads != nullptr) {
    for (const auto& [head, word] : *heads) {
      const std::string* text = word.as_string();
      const auto holds = text == nullptr ? std::nullopt : enum_of<HerdColumn>(*text);
      if (holds) memory.columns.push_back({head, *holds});
    }
  }
  const Json* dates = json->member(dates_member);
  const std::string* order = dates == nullptr ? nullptr : dates->as_string();
  if (order != nullptr) memory.dates = enum_of<DayOrder>(*order);
  memory.findings = scheme_in(*json);
  return memory;
}

std::string value_of(const ImportMemory& memory) {
  JsonObject columns;
  for (const ColumnSaid& said : memory.columns) {
    columns.insert_or_assign(said.head, Json(std::string(word_of(said.holds))));
  }
  JsonObject value;
  value.emplace(columns_member, Json(std::move(columns)));
  if (memory.dates) value.emplace(dates_member, Json(std::string(word_of(*memory.dates))));
  put_scheme(memory.findings, value);
  return canonical_json(Json(std::move(value)));
}

}  // namespace

Result<ImportMemory> import_memory_of(Store& store, HerdId herd) {
  ImportMemory memory;
  const Outcome read = store.read_entries({herd.value, std::nullopt, {std::string(Setting::kind)}},
                                          [&](const Entry& entry) {
                                            const auto setting = body_as<Setting>(entry);
                                            if (setting && setting->name == setting_of_lists)
                                              memory = memory_in(setting->value);
                                            return true;
                                          });
  if (!read) return read.faults();
  return memory;
}

ImportMemory with_said(ImportMemory memory, const std::vector<ColumnSaid>& columns,
                       std::optional<DayOrder> dates, const FindingScheme& findings) {
  for (const ColumnSaid& said : columns) {
    std::erase_if(memory.columns, [&](const ColumnSaid& known) {
      return fold_case(known.head) == fold_case(said.head);
    });
    memory.columns.push_back(said);
  }
  std::sort(memory.columns.begin(), memory.columns.end(),
            [](const ColumnSaid& a, const ColumnSaid& b) { return a.head < b.head; });
  if (dates) memory.dates = dates;
  memory.findings = with_words_said(std::move(memory.findings), findings);
  return memory;
}

Outcome remember(Journal& journal, const ImportMemory& memory) {
  return journal.add(Setting{std::string(setting_of_lists), value_of(memory)},
                     {.id = journal.fresh_id()});
}

}  // namespace evenclaw
