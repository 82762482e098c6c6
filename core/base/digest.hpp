// SHA-256 (FIPS 180-4), which names entries and derives the ids two tablets must agree on.
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace evenclaw {

struct Digest {
  std::array<std::uint8_t, 32> bytes{};
  // NOLINTNEXTLINE(modernize-use-nullptr): the 0 of a rewritten a < b is no null pointer.
  friend std::strong_ordering operator<=>(const Digest&, const Digest&) = default;
};

Digest sha256(std::string_view bytes);

/// 64 lower-case hex digits; reading accepts exactly these.
std::string to_text(const Digest& digest);
std::optional<Digest> digest_from_text(std::string_view text);

}  // namespace evenclaw
