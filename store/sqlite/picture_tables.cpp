#include "store/sqlite/picture_tables.hpp"

#include <algorithm>
#include <cassert>
#include <string_view>

#include "core/base/digest.hpp"
#include "store/sqlite/count_sql.hpp"
#include "store/sqlite/entry_table.hpp"
#include "store/sqlite/meta.hpp"

namespace evenclaw {

namespace {

struct PictureTable {
  std::string_view name;
  RowsOf of;
  std::string insert_sql;
  std::string remove_sql;
  std::string any_sql;
};

PictureTable table_of(const TableShape& shape) {
  PictureTable table{shape.name, rows_of(shape), {}, {}, {}};
  std::string marks;
  for (std::size_t i = 0; i < shape.columns.size(); ++i) marks += i == 0 ? "?" : ", ?";
  const std::string name = quoted_name(shape.name);
  // Two rows with one key would be a mistake of the picture: it must not cost a saved entry.
  table.insert_sql = "INSERT INTO " + name + " VALUES (" + marks + ") ON CONFLICT DO NOTHING";
  table.remove_sql = "DELETE FROM " + name + " WHERE \"herd\" = ? AND " +
                     quoted_name(shape.columns.at(1).name) + " = ?";
  table.any_sql = "SELECT 1 FROM " + name + " WHERE \"herd\" = ? LIMIT 1";
  return table;
}

std::vector<PictureTable> tables_of_all() {
  std::vector<PictureTable> tables;
  for (const TableShape& shape : all_tables()) tables.push_back(table_of(shape));
  return tables;
}

const std::vector<PictureTable>& picture_tables() {
  static const std::vector<PictureTable> tables = tables_of_all();
  return tables;
}

const PictureTable& picture_table(std::string_view name) {
  const auto& tables = picture_tables();
  const auto at = std::find_if(tables.begin(), tables.end(),
                               [&](const PictureTable& table) { return table.name == name; });
  assert(at != tables.end() && "a row type that is not in all_tables()");
  return *at;
}

std::string names_of_all() {
  std::string names;
  for (const TableShape& shape : all_tables()) {
    if (!names.empty()) names += ' ';
    names += shape.name;
  }
  return names;
}

void drop_tables(Connection& connection, std::string_view names) {
  while (!names.empty()) {
    const std::size_t end = std::min(names.find(' '), names.size());
    connection.run("DROP TABLE IF EXISTS " + quoted_name(names.substr(0, end)));
    names.remove_prefix(std::min(end + 1, names.size()));
  }
}

}  // namespace

std::string create_sql(const TableShape& shape) {
  std::string sql = "CREATE TABLE " + quoted_name(shape.name) + " (";
  for (const Column& column : shape.columns) {
    sql += quoted_name(column.name);
    sql += column.kind == CellKind::integer ? " INTEGER" : " TEXT";
    if (!column.may_be_empty) sql += " NOT NULL";
    sql += ", ";
  }
  sql += "PRIMARY KEY (";
  for (int i = 0; i < shape.key_columns; ++i) {
    if (i > 0) sql += ", ";
    sql += quoted_name(shape.columns.at(static_cast<std::size_t>(i)).name);
  }
  return sql + ")) STRICT, WITHOUT ROWID";
}

std::string shape_of_all() {
  std::string all;
  for (const TableShape& shape : all_tables()) all += create_sql(shape) + "\n";
  return to_text(sha256(all));
}

bool has_own_shape(Connection& connection) {
  return meta_value(connection, meta_name::picture_shape) == shape_of_all();
}

void make_picture_tables(Connection& connection) {
  if (has_own_shape(connection)) return;
  const auto there = meta_value(connection, meta_name::picture_tables);
  if (there) drop_tables(connection, *there);
  for (const TableShape& shape : all_tables()) connection.run(create_sql(shape));
  set_meta(connection, meta_name::picture_shape, shape_of_all());
  set_meta(connection, meta_name::picture_tables, names_of_all());
  set_picture_stale(connection, has_entries(connection));
}

void PictureWriting::replace_cow(const PictureOfCow& picture) {
  for (const CowId cow : picture.group) remove_rows(RowsOf::cow, picture.herd, to_text(cow));
  insert_rows(RowsOf::cow, picture.rows);
}

void PictureWriting::replace_visit(const PictureOfVisit& picture) {
  remove_rows(RowsOf::visit, picture.herd, to_text(picture.visit));
  insert_rows(RowsOf::visit, picture.rows);
}

void PictureWriting::remember_written(const std::string& herd, const std::string& subject) {
  // Row after row is of one subject.
  if (subject == last_written_.second && herd == last_written_.first) return;
  last_written_ = {herd, subject};
  written_.insert(last_written_);
}

const PictureWriting::HadRows& PictureWriting::had_rows(HerdId herd) {
  const auto [at, is_new] = had_rows_.try_emplace(herd);
  if (!is_new) return at->second;
  for (const PictureTable& table : picture_tables()) {
    auto any = connection_.prepared(table.any_sql);
    at->second.push_back(any->text(to_text(herd)).step());
  }
  return at->second;
}

void PictureWriting::remove_rows(RowsOf of, HerdId herd, const std::string& subject) {
  const HadRows& had = had_rows(herd);
  const std::string herd_text = to_text(herd);
  const bool is_written = written_.count({herd_text, subject}) > 0;
  const auto& tables = picture_tables();
  for (std::size_t i = 0; i < tables.size(); ++i) {
    if (tables[i].of != of || !(had[i] || is_written)) continue;
    connection_.prepared(tables[i].remove_sql)->text(herd_text).text(subject).run();
  }
}

void PictureWriting::insert_rows(RowsOf of, const Rows& rows) {
  for_each_table(rows, [&]<class Row>(const std::vector<Row>& of_table) {
    if (of_table.empty()) return;
    const PictureTable& table = picture_table(Row::table);
    if (table.of != of) return;
    auto insert = connection_.prepared(table.insert_sql);
    for (const Row& row : of_table) {
      const Cells cells = to_cells(row);
      for (const Cell& cell : cells) insert->lasting_cell(cell);
      insert->run();
      remember_written(std::get<std::string>(cells[0]), std::get<std::string>(cells[1]));
    }
  });
}

void empty_pictures(Connection& connection) {
  for (const PictureTable& table : picture_tables()) {
    connection.run("DELETE FROM " + quoted_name(table.name));
  }
  set_picture_stale(connection, has_entries(connection));
}

bool is_picture_stale(Connection& connection) {
  return meta_value(connection, meta_name::picture_stale).has_value();
}

void set_picture_stale(Connection& connection, bool stale) {
  if (stale) {
    set_meta(connection, meta_name::picture_stale, "yes");
  } else {
    forget_meta(connection, meta_name::picture_stale);
  }
}

}  // namespace evenclaw
