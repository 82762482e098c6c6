// 128-bit identifiers (RFC 9562): version 7 for what is new, derived version 8 for what two
// tablets must name alike without talking.
#pragma once

#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace evenclaw {

struct Uuid {
  std::array<std::uint8_t, 16> bytes{};

  [[nodiscard]] bool is_nil() const { return *this == Uuid{}; }

  // NOLINTNEXTLINE(modernize-use-nullptr): the 0 of a rewritten a < b is no null pointer.
  friend std::strong_ordering operator<=>(const Uuid&, const Uuid&) = default;
};

/// A Uuid that says what it names, so that a cow is never passed for a herd.
template <class Tag>
struct Id {
  Uuid value{};

  [[nodiscard]] bool is_nil() const { return value.is_nil(); }

  // NOLINTNEXTLINE(modernize-use-nullptr): the 0 of a rewritten a < b is no null pointer.
  friend auto operator<=>(const Id&, const Id&) = default;
};

using BusinessId = Id<struct BusinessTag>;
using HerdId = Id<struct HerdTag>;
using CowId = Id<struct CowTag>;
using VisitId = Id<struct VisitTag>;
using EntryId = Id<struct EntryTag>;
using DeviceId = Id<struct DeviceTag>;
using PersonId = Id<struct PersonTag>;
using TaskId = Id<struct TaskTag>;
using CaseId = Id<struct CaseTag>;
using ProductId = Id<struct ProductTag>;

/// 36 characters, lower case; reading accepts exactly this form in either case.
std::string to_text(const Uuid& uuid);
std::optional<Uuid> uuid_from_text(std::string_view text);

template <class Tag>
std::string to_text(const Id<Tag>& id) {
  return to_text(id.value);
}

/// Version 7: 48 bits of Unix milliseconds, then 74 of the 80 given random bits.
Uuid uuid_v7(std::int64_t unix_ms, const std::array<std::uint8_t, 10>& random_bytes);

/// Version 8 from the first 16 bytes of SHA-256(name); equal names give equal ids everywhere.
Uuid uuid_derived(std::string_view name);

}  // namespace evenclaw

template <>
struct std::hash<evenclaw::Uuid> {
  std::size_t operator()(const evenclaw::Uuid& uuid) const noexcept {
    // FNV-1a, 64 bits, folded so that 32-bit targets use all of it.
    std::uint64_t mixed = 14695981039346656037U;
    for (const std::uint8_t byte : uuid.bytes) mixed = (mixed ^ byte) * 1099511628211U;
    return static_cast<std::size_t>(mixed ^ (mixed >> 32U));
  }
};

template <class Tag>
struct std::hash<evenclaw::Id<Tag>> {
  std::size_t operator()(const evenclaw::Id<Tag>& id) const noexcept {
    return std::hash<evenclaw::Uuid>{}(id.value);
  }
};
