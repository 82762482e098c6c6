#include "core/api/herd_export.hpp"

#include <cstdint>
#include <utility>
#include <vector>

#include "core/api/herds.hpp"
#include "core/exchange/ade_written.hpp"
#include "core/exchange/csv_written.hpp"
#include "core/log/selection.hpp"

namespace evenclaw {

namespace {

Cell word_cell(std::string_view word) {
  return Cell(std::string(word));
}

Result<std::string> table_csv(Store& store, std::optional<HerdId> herd, const TableShape& shape) {
  Cells head;
  for (const Column& column : shape.columns) head.push_back(word_cell(column.name));
  std::string csv = csv_line(head);
  const auto rows = store.select({std::string(shape.name), herd, {}, {}});
  if (!rows) return rows.faults();
  for (const Cells& row : *rows) csv += csv_line(row);
  return csv;
}

Result<std::string> herds_csv(Store& store, std::optional<HerdId> herd) {
  const auto herds = all_herds(store);
  if (!herds) return herds.faults();
  std::vector<Herd> told;
  for (const Herd& one : *herds) {
    if (!herd || one.herd == *herd) told.push_back(one);
  }
  return csv_of(told);
}

struct PersonLine {
  PersonId person;
  std::string name;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("person", &PersonLine::person, "person");
    visit("name", &PersonLine::name, "name; empty once removed");
  }
};

void add_columns(std::string_view table, int key_columns, const std::vector<Column>& columns,
                 std::string& csv) {
  int at = 0;
  for (const Column& column : columns) {
    csv +=
        csv_line({word_cell(table), word_cell(column.name),
                  Cell(std::int64_t{at++ < key_columns ? 1 : 0}), word_cell(column.unit_or_words),
                  Cell(std::int64_t{column.may_be_empty ? 1 : 0}), word_cell(column.doc)});
  }
}

template <HasFields Row>
Outcome read_into(std::vector<Row>& rows, Store& store, HerdId herd) {
  auto selected = select_as<Row>(store, herd);
  if (!selected) return selected.faults();
  rows = *std::move(selected);
  return Done{};
}

}  // namespace

Outcome export_tables(Store& store, std::optional<HerdId> herd, const TableSink& sink) {
  for (const TableShape& shape : all_tables()) {
    auto csv = table_csv(store, herd, shape);
    if (!csv) return csv.faults();
    const Outcome taken = sink(shape.name, *std::move(csv));
    if (!taken) return taken;
  }
  auto herds = herds_csv(store, herd);
  if (!herds) return herds.faults();
  return sink("herd", *std::move(herds));
}

Result<std::string> export_people(Directory& directory) {
  const auto everybody = directory.everybody();
  if (!everybody) return everybody.faults();
  std::vector<PersonLine> people;
  people.reserve(everybody->size());
  for (const Person& person : *everybody) people.push_back({person.id, person.name});
  return csv_of(people);
}

std::string data_dictionary_csv() {
  std::string csv = "table,column,is_key,holds,may_be_empty,meaning\r\n";
  for (const TableShape& shape : all_tables()) {
    add_columns(shape.name, shape.key_columns, shape.columns, csv);
  }
  add_columns("herd", 1, columns_of<Herd>(), csv);
  add_columns("person", 1, columns_of<PersonLine>(), csv);
  return csv;
}

Result<std::string> export_ade(Store& store, HerdId herd, Instant made_at) {
  AdeRows rows;
  Outcome read = read_into(rows.cows, store, herd);
  if (read) read = read_into(rows.tags, store, herd);
  if (read) read = read_into(rows.names, store, herd);
  if (read) read = read_into(rows.facts, store, herd);
  if (read) read = read_into(rows.life, store, herd);
  if (read) read = read_into(rows.findings, store, herd);
  if (read) read = read_into(rows.actions, store, herd);
  if (!read) return read.faults();
  return ade_file(herd, made_at, rows);
}

}  // namespace evenclaw
