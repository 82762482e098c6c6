#include "store/sqlite/count_sql.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/random.hpp"
#include "store/sqlite/picture_tables.hpp"
#include "tests/store/sample_entries.hpp"

using namespace evenclaw;

namespace {

/// SQL cut into words, quoted names and signs.
std::vector<std::string> tokens_of(std::string_view sql) {
  std::vector<std::string> tokens;
  while (!sql.empty()) {
    std::size_t length = 1;
    if (sql.front() == '"') {
      length = sql.find('"', 1) + 1;
    } else if (std::isalnum(static_cast<unsigned char>(sql.front())) != 0) {
      while (length < sql.size() && (std::isalnum(static_cast<unsigned char>(sql[length])) != 0)) {
        ++length;
      }
    }
    if (sql.front() != ' ') tokens.emplace_back(sql.substr(0, length));
    sql.remove_prefix(length);
  }
  return tokens;
}

std::size_t times(const std::vector<std::string>& tokens, std::string_view word) {
  return static_cast<std::size_t>(std::count(tokens.begin(), tokens.end(), word));
}

/// The tokens between GROUP BY and ORDER BY.
std::vector<std::string> groups_in(const std::vector<std::string>& tokens) {
  const auto group = std::find(tokens.begin(), tokens.end(), "GROUP");
  const auto order = std::find(tokens.begin(), tokens.end(), "ORDER");
  REQUIRE(group != tokens.end());
  REQUIRE(order != tokens.end());
  return {group + 2, order};
}

bool is_bare_column(const TableShape& shape, const std::string& token) {
  return std::any_of(shape.columns.begin(), shape.columns.end(), [&](const Column& column) {
    return evenclaw::quoted_name(column.name) == token;
  });
}

void expect_plain_count(const CountQuery& query) {
  CAPTURE(query.name);
  const SqlText sql = count_sql(query);
  CAPTURE(sql.text);
  const auto tokens = tokens_of(sql.text);
  CHECK(times(tokens, "JOIN") == 0);
  CHECK(times(tokens, "SELECT") == 1);
  const auto from = std::find(tokens.begin(), tokens.end(), "FROM");
  CHECK(*(from + 1) == evenclaw::quoted_name(query.table));
  CHECK(*(from + 2) != ",");

  const auto groups = groups_in(tokens);
  CHECK(groups.front() == "\"herd\"");
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const bool separates = i % 2 == 1;
    CHECK((separates ? groups[i] == "," : is_bare_column(*find_table(query.table), groups[i])));
  }
  CHECK(times(tokens, "?") == sql.parameters.size());
}

}  // namespace

TEST_CASE("every named count is one table, no join, bare columns as groups, the herd first") {
  REQUIRE_FALSE(named_counts().empty());
  for (const CountQuery& query : named_counts()) expect_plain_count(query);
}

TEST_CASE("so is every count that can be asked for") {
  RandomStream random(11, 1);
  for (int i = 0; i < 500; ++i) {
    const auto& shape = all_tables()[random.below(static_cast<std::uint32_t>(all_tables().size()))];
    CountQuery query{"drawn", std::string(shape.name), {}, {}, {}};
    for (std::uint32_t more = random.below(5); more > 0; --more) {
      const std::uint32_t at = random.below(static_cast<std::uint32_t>(shape.columns.size()));
      const Column& column = shape.columns[at];
      if (column.name != "herd") query.group_by.emplace_back(column.name);
      if (column.kind == CellKind::integer) query.sums.emplace_back(column.name);
      if (column.may_be_empty) {
        query.where.push_back({std::string(column.name), Compare::is_empty, {}});
      }
    }
    REQUIRE(check_count(query).ok());
    expect_plain_count(query);
  }
}

TEST_CASE("the herd leads the key of every table of the picture") {
  for (const TableShape& shape : all_tables()) {
    CAPTURE(shape.name);
    CHECK(shape.columns.front().name == "herd");
    CHECK(create_sql(shape).find("PRIMARY KEY (\"herd\", ") != std::string::npos);
  }
}

TEST_CASE("a count is written out as it is meant") {
  const CountQuery query{"lesions",
                         "finding",
                         {"lesion", "foot"},
                         {{"day", Compare::at_least, Cell(std::string("2026-01-01"))},
                          {"zone", Compare::is_empty, {}},
                          {"position", Compare::not_equal, Cell(std::int64_t{2})}},
                         {"position"}};
  const SqlText sql = count_sql(query);
  CHECK(sql.text ==
        "SELECT \"herd\", \"lesion\", \"foot\", count(*), sum(\"position\") FROM \"finding\""
        " WHERE \"day\" >= ? AND \"zone\" IS NULL AND \"position\" <> ?"
        " GROUP BY \"herd\", \"lesion\", \"foot\" ORDER BY \"herd\", \"lesion\", \"foot\"");
  CHECK(sql.parameters == std::vector<Cell>{std::string("2026-01-01"), std::int64_t{2}});
}

TEST_CASE("a selection names its columns and sorts by what was asked and then by the key") {
  const SqlText sql = select_sql({"cow_number",
                                  sample_herd(1),
                                  {{"number", Compare::at_most, Cell(std::string("9"))}},
                                  {"valid_from"}});
  CHECK(sql.text ==
        "SELECT \"herd\", \"cow\", \"number\", \"valid_from\", \"valid_to\" FROM \"cow_number\""
        " WHERE \"herd\" = ? AND \"number\" <= ?"
        " ORDER BY \"valid_from\", \"herd\", \"cow\", \"number\", \"valid_from\"");
  CHECK(sql.parameters == std::vector<Cell>{to_text(sample_herd(1)), std::string("9")});
}

TEST_CASE("a name is quoted whatever stands in it") {
  CHECK(evenclaw::quoted_name("end") == "\"end\"");
  CHECK(evenclaw::quoted_name("a\"b") == "\"a\"\"b\"");
}
