// The claw table as a file: columns of binary values behind a header, or CSV.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "demo/claw_table.hpp"

namespace evenclaw::demo {

/// Puts bytes at a place in a file; places are not given in order.
using PutBytes = std::function<Outcome(std::uint64_t offset, std::string_view bytes)>;

/// Bytes of the whole file, header and columns.
std::uint64_t binary_size(const ClawTableWanted& wanted);

/// Columnar, little-endian (docs/format/claw-table.md). Holds a part of the table at a time,
/// whatever its length. Faults of `put`.
Outcome write_binary(const ClawTableWanted& wanted, const PutBytes& put);

/// RFC 4180, one line a row, heads first; from the beginning to the end.
Outcome write_csv(const ClawTableWanted& wanted, const PutBytes& put);

}  // namespace evenclaw::demo
