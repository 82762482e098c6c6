#include "store/sqlite/count_sql.hpp"

#include <cassert>
#include <cstddef>
#include <string_view>

namespace evenclaw {

namespace {

constexpr std::string_view herd = "herd";

std::string_view sign_of(Compare compare) {
  switch (compare) {
    case Compare::equal:
      return " = ?";
    case Compare::not_equal:
      return " <> ?";
    case Compare::at_most:
      return " <= ?";
    case Compare::at_least:
      return " >= ?";
    case Compare::is_empty:
      return " IS NULL";
    case Compare::not_empty:
      return " IS NOT NULL";
  }
  return {};
}

bool takes_parameter(Compare compare) {
  return compare != Compare::is_empty && compare != Compare::not_empty;
}

void add_conditions(SqlText& sql, const std::vector<Filter>& where) {
  for (const Filter& filter : where) {
    sql.text += sql.text.find(" WHERE ") == std::string::npos ? " WHERE " : " AND ";
    sql.text += quoted_name(filter.column);
    sql.text += sign_of(filter.compare);
    if (takes_parameter(filter.compare)) sql.parameters.push_back(filter.cell);
  }
}

std::string listed(const std::vector<std::string>& names) {
  std::string list;
  for (const std::string& name : names) {
    if (!list.empty()) list += ", ";
    list += quoted_name(name);
  }
  return list;
}

std::vector<std::string> sort_columns(const RowSelection& selection, const TableShape& shape) {
  std::vector<std::string> columns = selection.sorted_by;
  for (std::size_t i = 0; i < static_cast<std::size_t>(shape.key_columns); ++i) {
    columns.emplace_back(shape.columns.at(i).name);
  }
  return columns;
}

std::vector<std::string> groups_of(const CountQuery& query) {
  std::vector<std::string> groups{std::string(herd)};
  groups.insert(groups.end(), query.group_by.begin(), query.group_by.end());
  return groups;
}

}  // namespace

std::string quoted_name(std::string_view name) {
  std::string quoted = "\"";
  for (const char c : name) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + '"';
}

SqlText select_sql(const RowSelection& selection) {
  const TableShape* shape = find_table(selection.table);
  assert(shape != nullptr);
  SqlText sql;
  for (const Column& column : shape->columns) {
    sql.text += sql.text.empty() ? "SELECT " : ", ";
    sql.text += quoted_name(column.name);
  }
  sql.text += " FROM " + quoted_name(selection.table);
  if (selection.herd) {
    sql.text += " WHERE " + quoted_name(herd) + " = ?";
    sql.parameters.emplace_back(to_text(*selection.herd));
  }
  add_conditions(sql, selection.where);
  sql.text += " ORDER BY " + listed(sort_columns(selection, *shape));
  return sql;
}

SqlText count_sql(const CountQuery& query) {
  const std::string groups = listed(groups_of(query));
  SqlText sql;
  sql.text = "SELECT " + groups + ", count(*)";
  for (const std::string& column : query.sums) {
    sql.text += ", sum(" + quoted_name(column) + ")";
  }
  sql.text += " FROM " + quoted_name(query.table);
  add_conditions(sql, query.where);
  sql.text += " GROUP BY " + groups + " ORDER BY " + groups;
  return sql;
}

}  // namespace evenclaw
