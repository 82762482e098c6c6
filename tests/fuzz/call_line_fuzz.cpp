#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

using namespace evenclaw;

// Any line is understood whole or refused with a place that lies within it; no half line breaks
// what may follow.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  LineContext context;
  context.visit_day = {20'000};
  context.cow_open = size % 2 == 0;
  const auto line = read_line(text, context, english());
  if (!line) {
    for (const Fault& fault : line.faults()) {
      if (fault.slug.empty() || fault.column < 0) std::abort();
      if (fault.column > static_cast<int>(size) + 1) std::abort();
    }
  }
  (void)what_may_follow(text, context, english());
  return 0;
}
