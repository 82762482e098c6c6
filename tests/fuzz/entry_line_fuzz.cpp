// Fuzz target: a line of a log is an entry whose line is the same bytes, or it is refused; and any
// bytes as the body of an entry, with the digest they have, are stored and given out alike.
#include <cstdint>
#include <cstdlib>
#include <optional>
#include <string>
#include <string_view>

#include "core/log/body.hpp"
#include "core/log/entry.hpp"

namespace {

using namespace evenclaw;

Entry with_body(std::string_view kind, std::string_view body) {
  Envelope envelope;
  envelope.scope = uuid_derived("scope");
  envelope.id = EntryId{uuid_derived("entry")};
  envelope.device = DeviceId{uuid_derived("device")};
  envelope.seq = 1;
  envelope.order = 1;
  envelope.kind = kind;
  return make_entry(std::move(envelope), std::string(body));
}

void check_line(std::string_view line) {
  const auto entry = entry_from_line(line);
  if (entry && entry_line(*entry) != line) std::abort();
}

void check_body(const Entry& entry) {
  std::optional<std::string_view> body;
  if (entry.body) body = entry.body->bytes();
  const auto from_parts = entry_from_parts(envelope_bytes(entry), body);
  const auto from_line = entry_from_line(entry_line(entry));
  if (from_parts.ok() != from_line.ok()) std::abort();
  if (from_line && !(*from_line == entry)) std::abort();
  static_cast<void>(readable(entry));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  check_line(bytes);
  check_body(with_body("turn", bytes));
  return 0;
}
