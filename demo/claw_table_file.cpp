#include "demo/claw_table_file.hpp"

#include <array>
#include <bit>
#include <cstddef>
#include <vector>

#include "core/base/date.hpp"

namespace evenclaw::demo {

namespace {

static_assert(std::endian::native == std::endian::little, "columns are written as they lie");

constexpr std::string_view magic = "EVCLAWT1";
constexpr std::size_t rows_at_a_time = 1U << 17U;
constexpr std::uint64_t alignment = 64;
constexpr std::uint64_t bytes_before_columns = 32;
constexpr std::uint64_t bytes_a_column = 32;
constexpr std::size_t name_bytes = 16;

struct Column {
  std::string_view name;
  std::uint32_t width;  // bytes of a value
};

constexpr std::array<Column, 10> all_columns = {{{"farm", 4},
                                                 {"cow", 4},
                                                 {"parity", 1},
                                                 {"dim", 2},
                                                 {"date", 4},
                                                 {"foot", 1},
                                                 {"claw", 1},
                                                 {"zone", 1},
                                                 {"lesion", 1},
                                                 {"severity", 1}}};

constexpr std::uint64_t aligned(std::uint64_t offset) {
  return (offset + alignment - 1) / alignment * alignment;
}

constexpr std::uint64_t header_size =
    aligned(bytes_before_columns + all_columns.size() * bytes_a_column);

/// Where each column begins, and behind them the size of the file.
std::array<std::uint64_t, all_columns.size() + 1> offsets_of(std::uint64_t rows) {
  std::array<std::uint64_t, all_columns.size() + 1> offsets{};
  std::uint64_t at = header_size;
  for (std::size_t column = 0; column < all_columns.size(); ++column) {
    offsets[column] = at;
    at = aligned(at + rows * all_columns[column].width);
  }
  offsets.back() = at;
  return offsets;
}

template <class Whole>
void add_whole(std::string& bytes, Whole value) {
  for (std::size_t byte = 0; byte < sizeof value; ++byte) {
    bytes += static_cast<char>(value >> (8U * byte) & 0xFFU);
  }
}

std::string header_of(const ClawTableWanted& wanted) {
  const auto offsets = offsets_of(wanted.rows);
  std::string bytes(magic);
  add_whole(bytes, wanted.rows);
  add_whole(bytes, static_cast<std::uint32_t>(all_columns.size()));
  add_whole(bytes, static_cast<std::uint32_t>(header_size));
  add_whole(bytes, wanted.seed);
  for (std::size_t column = 0; column < all_columns.size(); ++column) {
    std::string name(all_columns[column].name);
    name.resize(name_bytes, '\0');
    bytes += name;
    add_whole(bytes, all_columns[column].width);
    add_whole(bytes, std::uint32_t{0});
    add_whole(bytes, offsets[column]);
  }
  bytes.resize(header_size, '\0');
  return bytes;
}

template <class Value>
std::string_view bytes_of(const std::vector<Value>& values) {
  // Whole numbers lie in memory as they are written: little-endian, without gaps.
  return {reinterpret_cast<const char*>(values.data()), values.size() * sizeof(Value)};
}

std::array<std::string_view, all_columns.size()> bytes_of(const ClawColumns& columns) {
  return {bytes_of(columns.farm),    bytes_of(columns.cow),  bytes_of(columns.parity),
          bytes_of(columns.dim),     bytes_of(columns.date), bytes_of(columns.foot),
          bytes_of(columns.claw),    bytes_of(columns.zone), bytes_of(columns.lesion),
          bytes_of(columns.severity)};
}

void add_number(std::string& text, std::uint32_t number) {
  std::array<char, 10> digits{};
  std::size_t at = digits.size();
  do {
    digits[--at] = static_cast<char>('0' + number % 10);
    number /= 10;
  } while (number > 0);
  text.append(digits.data() + at, digits.size() - at);
}

/// Days come again and again, so each is put into words once.
class DayWords {
 public:
  const std::string& of(std::int32_t day) {
    if (words_.empty()) first_ = day - reach;
    const auto at = static_cast<std::size_t>(day - first_);
    if (at >= words_.size()) words_.resize(at + 1);
    if (words_[at].empty()) words_[at] = to_text(Day{day});
    return words_[at];
  }

 private:
  static constexpr std::int32_t reach = 4000;  // no two days of the table are further apart
  std::int32_t first_ = 0;
  std::vector<std::string> words_;
};

void add_row(std::string& text, const ClawColumns& columns, std::size_t row, DayWords& days) {
  constexpr std::array<std::string_view, 4> feet = {",LF,", ",RF,", ",LH,", ",RH,"};
  constexpr std::array<std::string_view, 2> claws = {"outside,", "inside,"};
  add_number(text, columns.farm[row]);
  text += ',';
  add_number(text, columns.cow[row]);
  text += ',';
  add_number(text, columns.parity[row]);
  text += ',';
  add_number(text, columns.dim[row]);
  text += ',';
  text += days.of(columns.date[row]);
  text += feet[columns.foot[row]];
  text += claws[columns.claw[row]];
  add_number(text, columns.zone[row]);
  text += ',';
  add_number(text, columns.lesion[row]);
  text += ',';
  add_number(text, columns.severity[row]);
  text += "\r\n";
}

std::string heads() {
  std::string line;
  for (const Column& column : all_columns) {
    if (!line.empty()) line += ',';
    line += column.name;
  }
  return line + "\r\n";
}

}  // namespace

std::uint64_t binary_size(const ClawTableWanted& wanted) {
  return offsets_of(wanted.rows).back();
}

Outcome write_binary(const ClawTableWanted& wanted, const PutBytes& put) {
  const auto offsets = offsets_of(wanted.rows);
  Outcome written = put(0, header_of(wanted));
  ClawTable table(wanted);
  ClawColumns columns;
  std::uint64_t rows = 0;
  while (written && table.next(columns, rows_at_a_time)) {
    const auto bytes = bytes_of(columns);
    for (std::size_t column = 0; written && column < bytes.size(); ++column) {
      written = put(offsets[column] + rows * all_columns[column].width, bytes[column]);
    }
    rows += columns.size();
  }
  if (!written) return written;
  // What follows the last value up to the boundary is there too.
  const std::uint64_t end = offsets[all_columns.size() - 1] + rows * all_columns.back().width;
  return put(end, std::string(offsets.back() - end, '\0'));
}

Outcome write_csv(const ClawTableWanted& wanted, const PutBytes& put) {
  std::string text = heads();
  ClawTable table(wanted);
  ClawColumns columns;
  DayWords days;
  std::uint64_t at = 0;
  while (table.next(columns, rows_at_a_time)) {
    for (std::size_t row = 0; row < columns.size(); ++row) add_row(text, columns, row, days);
    const Outcome written = put(at, text);
    if (!written) return written;
    at += text.size();
    text.clear();
  }
  return text.empty() ? Outcome(Done{}) : put(at, text);
}

}  // namespace evenclaw::demo
