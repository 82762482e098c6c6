#include <doctest/doctest.h>

#include "core/log/selection.hpp"
#include "tests/conformance/every_store.hpp"
#include "tests/store/sample_rows.hpp"

using namespace evenclaw;

namespace {

/// The same pictures in every store, the memory store's answers being the measure.
struct Filled {
  TemporaryFolder folder;
  EmptyStore memory = empty_memory_store();
  EmptyStore sqlite = empty_sqlite_store(folder);

  void write(const Write& write) const {
    taken(memory.store->write(write));
    taken(sqlite.store->write(write));
  }

  void check_same(const RowSelection& selection) const {
    CAPTURE(selection.table);
    CHECK(taken(memory.store->select(selection)) == taken(sqlite.store->select(selection)));
  }

  void check_all_tables_same() const {
    for (const TableShape& shape : all_tables()) {
      check_same({std::string(shape.name), std::nullopt, {}, {}});
    }
  }
};

CowRow cow_row(HerdId herd, CowId cow) {
  CowRow row;
  row.herd = herd;
  row.cow = cow;
  return row;
}

Cell drawn_cell(RandomStream& random, const std::vector<Cells>& rows, std::size_t column) {
  // Mostly a value that occurs.
  if (!rows.empty() && random.chance(0.8)) {
    return rows[random.below(static_cast<std::uint32_t>(rows.size()))][column];
  }
  return random.chance(0.5) ? Cell{std::int64_t{3}} : Cell{std::string("b")};
}

Filter drawn_filter(RandomStream& random, const TableShape& shape, const std::vector<Cells>& rows) {
  static constexpr Compare compares[] = {Compare::equal,    Compare::not_equal, Compare::at_most,
                                         Compare::at_least, Compare::is_empty,  Compare::not_empty};
  const std::uint32_t column = random.below(static_cast<std::uint32_t>(shape.columns.size()));
  const Compare compare = compares[random.below(6)];
  Filter filter{std::string(shape.columns[column].name), compare, {}};
  if (compare != Compare::is_empty && compare != Compare::not_empty) {
    filter.cell = drawn_cell(random, rows, column);
  }
  return filter;
}

std::vector<std::string> drawn_columns(RandomStream& random, const TableShape& shape) {
  std::vector<std::string> columns;
  const std::uint32_t count = random.below(4);
  for (std::uint32_t i = 0; i < count; ++i) {
    const std::uint32_t at = random.below(static_cast<std::uint32_t>(shape.columns.size()));
    columns.emplace_back(shape.columns[at].name);
  }
  return columns;
}

const TableShape& drawn_table(RandomStream& random) {
  return all_tables()[random.below(static_cast<std::uint32_t>(all_tables().size()))];
}

std::vector<Filter> drawn_filters(RandomStream& random, const TableShape& shape, Store& store) {
  const auto rows = taken(store.select({std::string(shape.name), std::nullopt, {}, {}}));
  std::vector<Filter> filters;
  const std::uint32_t count = random.below(3);
  for (std::uint32_t i = 0; i < count; ++i) filters.push_back(drawn_filter(random, shape, rows));
  return filters;
}

}  // namespace

TEST_CASE("every row comes back as it was written") {
  const Write pictures = drawn_pictures(1);
  for_every_store([&](EmptyStore& opened) {
    taken(opened.store->write(pictures));
    for (const PictureOfCow& cow : pictures.cows) {
      const auto read = taken(select_as<CowRow>(
          *opened.store, cow.herd, {{"cow", Compare::equal, Cell(to_text(cow.group.front()))}}));
      // Of several rows with one key the first is kept.
      REQUIRE(read.size() == (cow.rows.cows.empty() ? 0U : 1U));
      if (!read.empty()) CHECK(to_cells(read.front()) == to_cells(cow.rows.cows.front()));
    }
  });
}

TEST_CASE("both stores hold the same rows after pictures were replaced many times") {
  const Filled filled;
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    CAPTURE(seed);
    filled.write(drawn_pictures(seed));
    filled.check_all_tables_same();
  }
}

TEST_CASE("a picture of cows that were united replaces the rows of all of them") {
  for_every_store([](EmptyStore& opened) {
    taken(opened.store->write(drawn_pictures(2)));
    RandomStream random(3, 1);
    const CowId first = sample_cow(10);
    const CowId second = sample_cow(11);
    const HerdId herd = sample_herd(1);
    Write united;
    united.cows.push_back({herd, {first, second}, drawn_rows(random, herd, first)});
    united.cows.front().rows.cows.resize(1, cow_row(herd, first));
    taken(opened.store->write(united));
    const auto cows_with = [&](CowId cow) {
      return taken(select_as<CowRow>(*opened.store, herd,
                                     {{"cow", Compare::equal, Cell(to_text(cow))}}))
          .size();
    };
    CHECK(cows_with(first) == 1);
    CHECK(cows_with(second) == 0);
  });
}

TEST_CASE("of two pictures of one cow in one write the later one stands") {
  for_every_store([](EmptyStore& opened) {
    const HerdId herd = sample_herd(1);
    const CowId cow = sample_cow(10);
    Write twice;
    for (const char* number : {"412", "413"}) {
      Rows rows;
      rows.cows.push_back(cow_row(herd, cow));
      rows.cows.front().number = number;
      rows.cow_numbers.push_back({herd, cow, number, Day{20'000}, std::nullopt});
      twice.cows.push_back({herd, {cow}, rows});
    }
    taken(opened.store->write(twice));
    const auto cows = taken(select_as<CowRow>(*opened.store, herd));
    REQUIRE(cows.size() == 1);
    CHECK(cows.front().number == "413");
    CHECK(taken(select_as<CowNumberRow>(*opened.store, herd)).size() == 1);
  });
}

TEST_CASE("a picture of one herd leaves the cow of that id in another herd alone") {
  for_every_store([](EmptyStore& opened) {
    const CowId cow = sample_cow(1);
    Write write;
    for (const HerdId herd : {sample_herd(1), sample_herd(2)}) {
      Rows rows;
      rows.cows.push_back(cow_row(herd, cow));
      write.cows.push_back({herd, {cow}, rows});
    }
    taken(opened.store->write(write));
    Write gone;
    gone.cows.push_back({sample_herd(1), {cow}, {}});
    taken(opened.store->write(gone));
    CHECK(taken(select_as<CowRow>(*opened.store, sample_herd(1))).empty());
    CHECK(taken(select_as<CowRow>(*opened.store, sample_herd(2))).size() == 1);
  });
}

TEST_CASE("random selections give the same rows in the same order from both stores") {
  const Filled filled;
  filled.write(drawn_pictures(4));
  RandomStream random(4, 2);
  int answered = 0;
  for (int i = 0; answered < 200; ++i) {
    CAPTURE(i);
    const TableShape& shape = drawn_table(random);
    RowSelection selection{std::string(shape.name), std::nullopt, {}, {}};
    if (random.chance(0.6)) selection.herd = sample_herd(1 + random.below(3));
    selection.where = drawn_filters(random, shape, *filled.memory.store);
    selection.sorted_by = drawn_columns(random, shape);
    if (!check_selection(selection)) {
      CHECK_FALSE(filled.memory.store->select(selection).ok());
      CHECK_FALSE(filled.sqlite.store->select(selection).ok());
      continue;
    }
    filled.check_same(selection);
    ++answered;
  }
}

TEST_CASE("the named counts are equal from both stores") {
  const Filled filled;
  filled.write(drawn_pictures(5));
  REQUIRE(named_counts().size() > 5);
  for (const CountQuery& query : named_counts()) {
    CAPTURE(query.name);
    const auto counted = taken(filled.memory.store->count(query));
    CHECK(counted == taken(filled.sqlite.store->count(query)));
  }
}

TEST_CASE("random counts are equal from both stores, and some of them count something") {
  const Filled filled;
  filled.write(drawn_pictures(6));
  RandomStream random(6, 2);
  int answered = 0;
  int with_rows = 0;
  for (int i = 0; answered < 200; ++i) {
    CAPTURE(i);
    const TableShape& shape = drawn_table(random);
    CountQuery query{"drawn", std::string(shape.name), drawn_columns(random, shape), {}, {}};
    query.where = drawn_filters(random, shape, *filled.memory.store);
    query.sums = drawn_columns(random, shape);
    if (!check_count(query)) {
      CHECK_FALSE(filled.memory.store->count(query).ok());
      CHECK_FALSE(filled.sqlite.store->count(query).ok());
      continue;
    }
    const auto counted = taken(filled.memory.store->count(query));
    CHECK(counted == taken(filled.sqlite.store->count(query)));
    ++answered;
    if (!counted.empty()) ++with_rows;
  }
  CHECK(with_rows > 50);
}

TEST_CASE("a question about a table or column that does not exist is refused") {
  for_every_store([](EmptyStore& opened) {
    const auto no_table = opened.store->select({"udder", std::nullopt, {}, {}});
    REQUIRE_FALSE(no_table.ok());
    CHECK(no_table.faults().front().slug == "selection-impossible");
    CHECK_FALSE(opened.store->select({"cow", std::nullopt, {}, {"udder"}}).ok());
    CHECK_FALSE(opened.store->count({"x", "cow", {"udder\" FROM meta --"}, {}, {}}).ok());
  });
}

TEST_CASE("forgotten pictures are asked for until they were made anew") {
  for_every_store([](EmptyStore& opened) {
    Store& store = *opened.store;
    Write write = drawn_pictures(7);
    taken(store.forget_pictures());
    CHECK_FALSE(taken(store.needs_rebuild()));
    write.entries.push_back(sample_entry(1, sample_device(1), sample_herd(1)));
    taken(store.write(write));
    CHECK_FALSE(taken(store.needs_rebuild()));
    taken(store.forget_pictures());
    CHECK(taken(store.needs_rebuild()));
    CHECK(taken(store.select({"cow", std::nullopt, {}, {}})).empty());
    taken(store.write(write));
    CHECK(taken(store.needs_rebuild()));
    taken(store.rebuilt());
    CHECK_FALSE(taken(store.needs_rebuild()));
  });
}
