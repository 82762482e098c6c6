#include "demo/claw_table_file.hpp"

#include <doctest/doctest.h>

#include <cstring>
#include <string>

namespace evenclaw::demo {

namespace {

/// A file in memory.
struct Bytes {
  std::string held;

  PutBytes put() {
    return [this](std::uint64_t offset, std::string_view bytes) -> Outcome {
      if (held.size() < offset + bytes.size()) held.resize(offset + bytes.size());
      held.replace(offset, bytes.size(), bytes);
      return Done{};
    };
  }

  template <class Value>
  [[nodiscard]] Value at(std::uint64_t offset) const {
    Value value{};
    std::memcpy(&value, held.data() + offset, sizeof value);
    return value;
  }
};

constexpr ClawTableWanted wanted{6, 3'000};

std::string csv() {
  Bytes file;
  REQUIRE(write_csv(wanted, file.put()).ok());
  return file.held;
}

}  // namespace

TEST_CASE("a reader finds every column by its name in the header") {
  Bytes file;
  REQUIRE(write_binary(wanted, file.put()).ok());
  CHECK(file.held.size() == binary_size(wanted));
  CHECK(file.held.substr(0, 8) == "EVCLAWT1");
  CHECK(file.at<std::uint64_t>(8) == wanted.rows);
  CHECK(file.at<std::uint64_t>(24) == wanted.seed);
  const auto columns = file.at<std::uint32_t>(16);
  REQUIRE(columns == 10);
  std::string names;
  for (std::uint64_t column = 0; column < columns; ++column) {
    const std::uint64_t about = 32 + column * 32;
    names += std::string(file.held.data() + about) + " ";
    CHECK(file.at<std::uint64_t>(about + 24) % 64 == 0);
  }
  CHECK(names == "farm cow parity dim date foot claw zone lesion severity ");
}

TEST_CASE("the columns hold what the table holds") {
  Bytes file;
  REQUIRE(write_binary(wanted, file.put()).ok());
  ClawTable table(wanted);
  ClawColumns columns;
  REQUIRE(table.next(columns, wanted.rows));
  const auto offset_of = [&](int column) {
    return file.at<std::uint64_t>(32 + static_cast<std::uint64_t>(column) * 32 + 24);
  };
  for (const std::size_t row : {std::size_t{0}, std::size_t{17}, columns.size() - 1}) {
    CHECK(file.at<std::uint32_t>(offset_of(0) + row * 4) == columns.farm[row]);
    CHECK(file.at<std::uint16_t>(offset_of(3) + row * 2) == columns.dim[row]);
    CHECK(file.at<std::int32_t>(offset_of(4) + row * 4) == columns.date[row]);
    CHECK(file.at<std::uint8_t>(offset_of(9) + row) == columns.severity[row]);
  }
}

TEST_CASE("CSV has one line of heads and one for each row") {
  const std::string text = csv();
  std::size_t lines = 0;
  for (const char letter : text) lines += letter == '\n' ? 1 : 0;
  CHECK(lines == wanted.rows + 1);
  CHECK(text.substr(0, text.find('\r')) ==
        "farm,cow,parity,dim,date,foot,claw,zone,lesion,severity");
  const std::size_t second = text.find('\n') + 1;
  const std::string row = text.substr(second, text.find('\r', second) - second);
  CHECK(row.substr(0, 4) == "1,1,");
  CHECK(row.find(",LF,outside,") != std::string::npos);
}

TEST_CASE("a disk that takes no more ends the writing with its fault") {
  const auto full = [](std::uint64_t, std::string_view) -> Outcome {
    return Fault{.slug = "disk-full", .message = "No room."};
  };
  CHECK(!write_binary(wanted, full).ok());
  CHECK(!write_csv(wanted, full).ok());
}

}  // namespace evenclaw::demo
