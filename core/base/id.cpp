#include "core/base/id.hpp"

#include <algorithm>
#include <cstddef>

#include "core/base/digest.hpp"
#include "core/base/hex.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t text_length = 36;

bool hyphen_before_byte(std::size_t byte) {
  return byte == 4 || byte == 6 || byte == 8 || byte == 10;
}

// RFC 9562, 4.1 and 4.2: the version is the high half of byte 6, the variant the top of byte 8.
void mark_version(Uuid& uuid, unsigned version) {
  uuid.bytes[6] = static_cast<std::uint8_t>((uuid.bytes[6] & 0x0FU) | version << 4U);
  uuid.bytes[8] = static_cast<std::uint8_t>((uuid.bytes[8] & 0x3FU) | 0x80U);
}

}  // namespace

std::string to_text(const Uuid& uuid) {
  std::string text;
  text.reserve(text_length);
  for (std::size_t i = 0; i < uuid.bytes.size(); ++i) {
    if (hyphen_before_byte(i)) text += '-';
    append_hex(text, uuid.bytes[i]);
  }
  return text;
}

std::optional<Uuid> uuid_from_text(std::string_view text) {
  if (text.size() != text_length) return std::nullopt;
  Uuid uuid;
  std::size_t at = 0;
  for (std::size_t i = 0; i < uuid.bytes.size(); ++i) {
    if (hyphen_before_byte(i) && text[at++] != '-') return std::nullopt;
    const int high = hex_value(text[at], HexCase::either);
    const int low = hex_value(text[at + 1], HexCase::either);
    if (high < 0 || low < 0) return std::nullopt;
    uuid.bytes[i] = static_cast<std::uint8_t>(high * 16 + low);
    at += 2;
  }
  return uuid;
}

Uuid uuid_v7(std::int64_t unix_ms, const std::array<std::uint8_t, 10>& random_bytes) {
  Uuid uuid;
  const auto ms = static_cast<std::uint64_t>(unix_ms);
  for (std::size_t i = 0; i < 6; ++i) {
    uuid.bytes[i] = static_cast<std::uint8_t>(ms >> (40 - 8 * i) & 0xFFU);
  }
  std::copy(random_bytes.begin(), random_bytes.end(), uuid.bytes.begin() + 6);
  mark_version(uuid, 7);
  return uuid;
}

Uuid uuid_derived(std::string_view name) {
  const Digest digest = sha256(name);
  Uuid uuid;
  std::copy_n(digest.bytes.begin(), uuid.bytes.size(), uuid.bytes.begin());
  mark_version(uuid, 8);
  return uuid;
}

}  // namespace evenclaw
