// Which bytes a disk may hold when its power was cut.
#pragma once

#include <cstddef>
#include <map>
#include <string>

#include "core/base/random.hpp"
#include "tests/fault/disk_record.hpp"

namespace evenclaw::test {

/// What one write is broken into: the least a disk writes at once.
inline constexpr std::size_t sector_bytes = 512;

/// Files by name after the first `acts` acts, when the power goes at that moment. What was synced
/// is there. Each act that was not synced is kept, dropped or torn by itself: of a torn write each
/// sector is new, old or junk. A file that has grown may hold junk where nothing was written. Each
/// name that was given or taken away since the folder was synced holds or does not; of two files
/// with one name the later has it.
/// After https://sqlite.org/atomiccommit.html section 2 (hardware assumptions) and
/// https://sqlite.org/psow.html: what lies beside a write in its sector is not harmed.
std::map<std::string, std::string> after_power_cut(const DiskRecord& record, std::size_t acts,
                                                   RandomStream& random);

/// The same without a cut: what whoever reads the files sees.
std::map<std::string, std::string> without_power_cut(const DiskRecord& record, std::size_t acts);

}  // namespace evenclaw::test
