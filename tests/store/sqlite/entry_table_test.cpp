#include "store/sqlite/entry_table.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "store/sqlite/open_file.hpp"
#include "tests/store/sample_entries.hpp"
#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

namespace {

struct Filled {
  TemporaryFolder folder;
  Connection connection = opened(folder.file("records"), OpenMode::create);

  Filled() {
    Transaction transaction(connection);
    for (std::int64_t i = 1; i <= 200; ++i) {
      keep_entry(connection, sample_entry(i, sample_device(1 + i % 2), sample_herd(1 + i % 3)));
    }
    transaction.commit();
  }
};

}  // namespace

TEST_CASE("scopes are listed sorted, each once") {
  Filled filled;
  std::vector<Uuid> expected = {sample_herd(1).value, sample_herd(2).value, sample_herd(3).value};
  CHECK(scopes_of(filled.connection) == sorted_subjects(expected));
}

TEST_CASE("an empty file has no scope and no entries") {
  const TemporaryFolder folder;
  Connection connection = opened(folder.file("records"), OpenMode::create);
  CHECK(scopes_of(connection).empty());
  CHECK_FALSE(has_entries(connection));
}

TEST_CASE("the log of a herd is read in order through its index, without sorting it") {
  Filled filled;
  auto plan = filled.connection.prepared(
      "EXPLAIN QUERY PLAN SELECT e.envelope, e.body FROM entry AS e INDEXED BY entry_in_order"
      " WHERE e.scope = ? ORDER BY e.order_, e.device, e.seq, e.id, e.digest");
  while (plan->step()) {
    CHECK(plan->text_at(3).find("TEMP B-TREE") == std::string_view::npos);
    CHECK(plan->text_at(3).find("entry_in_order") != std::string_view::npos);
  }
}

TEST_CASE("entries of a subject or an id are looked up, however many the herd has") {
  Filled filled;
  std::vector<EntrySelection> selections;
  for (const Versions versions : {Versions::shown, Versions::every}) {
    selections.push_back({{}, sample_cow(1).value, {}, {}, versions});
    selections.push_back({{}, sample_cow(1).value, {"turn", "redact"}, {}, versions});
    selections.push_back({{}, {}, {"same_cow"}, {}, versions});
    selections.push_back({{}, {}, {}, sample_entry_id(1), versions});
  }
  for (const EntrySelection& selection : selections) {
    const std::string sql = selection_sql(selection);
    CAPTURE(sql);
    auto plan = filled.connection.prepared("EXPLAIN QUERY PLAN " + sql);
    int steps = 0;
    while (plan->step()) {
      ++steps;
      CHECK(plan->text_at(3).find("entry_in_order") == std::string_view::npos);
      CHECK(plan->text_at(3).find("SCAN e") == std::string_view::npos);
    }
    CHECK(steps > 0);
  }
}

TEST_CASE("a seq is taken only by another entry, and only for an entry that is new") {
  Filled filled;
  Envelope offered = sample_envelope(500, sample_device(2), sample_herd(2));
  CHECK_FALSE(is_seq_taken(filled.connection, offered));
  offered.seq = 1;
  CHECK(is_seq_taken(filled.connection, offered));
  CHECK_FALSE(
      is_seq_taken(filled.connection, sample_envelope(1, sample_device(2), sample_herd(2))));
  offered.scope = sample_herd(9).value;
  CHECK_FALSE(is_seq_taken(filled.connection, offered));
}
