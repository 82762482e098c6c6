#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/wire/json.hpp"

using namespace evenclaw;

// Any bytes are read or refused; what was read is the same after a turn through canonical bytes.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto json = json_from_text({reinterpret_cast<const char*>(data), size});
  if (!json) return 0;
  const std::string bytes = canonical_json(*json);
  const auto again = json_from_text(bytes);
  if (!again || !(*again == *json) || canonical_json(*again) != bytes) std::abort();
  return 0;
}
