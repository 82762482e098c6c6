#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/log/entry.hpp"

using namespace evenclaw;

// A line of an exported log is an entry whose line is the same bytes, or it is refused.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view line(reinterpret_cast<const char*>(data), size);
  const auto entry = entry_from_line(line);
  if (entry && entry_line(*entry) != line) std::abort();
  return 0;
}
