// Logs going in and out: entries of other devices, the whole log as lines, pictures made anew, and
// the checks a store can be put to.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/merge.hpp"

namespace evenclaw {

/// The next line of a log, or nothing at its end; a fault when the source failed.
using LineSource = std::function<Result<std::optional<std::string>>()>;
/// Takes one line without its line feed; a fault stops the giving out.
using LineSink = std::function<Outcome(std::string_view)>;

/// A line that was received but does not count.
struct SetAside {
  std::int64_t line = 0;    // from 1
  std::int32_t column = 0;  // from 1; 0 when it is none alone
  std::string slug;
  std::string reason;
  std::string remedy;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("line", &SetAside::line, "which line, from 1");
    visit("column", &SetAside::column, "at which place in it, from 1; 0 for none");
    visit("slug", &SetAside::slug, "the error");
    visit("reason", &SetAside::reason, "why it does not count");
    visit("remedy", &SetAside::remedy, "what to do");
  }
};

struct TakenIn {
  std::int64_t stored = 0;
  std::int64_t already = 0;
  std::int64_t redacted = 0;      // were here in full, their bodies are gone now
  std::int64_t two_versions = 0;  // same id with other bytes: both kept, flagged
  std::int64_t set_aside = 0;
  std::int64_t other_business = 0;     // of these, from a device that began on its own
  std::int64_t newer = 0;              // kept, and not understood by this program
  std::vector<std::string> same_name;  // herds that two devices began apart under one name
  std::vector<SetAside> reasons;       // of the first 100; of another business one

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("stored", &TakenIn::stored, "new entries");
    visit("already", &TakenIn::already, "were here before");
    visit("redacted", &TakenIn::redacted, "were here in full and lost their bodies now");
    visit("two_versions", &TakenIn::two_versions, "same id with other bytes, both kept");
    visit("set_aside", &TakenIn::set_aside, "received but do not count");
    visit("other_business", &TakenIn::other_business,
          "of those set aside, from a device that began on its own");
    visit("newer", &TakenIn::newer,
          "kept, but written by a newer version of this program: not shown until it is updated");
    visit("same_name", &TakenIn::same_name,
          "names of herds that two devices began apart: they stay two");
    visit("reasons", &TakenIn::reasons, "why, for the first hundred; of another business once");
  }
};

/// Takes in a log line by line, 1,000 entries a write, then makes the pictures they touch anew. One
/// bad line is set aside and stops nothing; entries of another business are set aside too, and of
/// corrections that go round in a ring the one that closes it. What a newer version wrote is kept.
/// Memory does not grow with the log, only with the number of cows and visits it touches and of
/// corrections.
Result<TakenIn> take_in(const Ports& ports, const LineSource& next_line);

/// The business whose entry stands in a line; nothing when none does.
std::optional<BusinessId> business_of_line(std::string_view line);

struct GivenOut {
  std::int64_t entries = 0;
  Faults damaged;  // entries that cannot be read any more, with where they lie
};

/// Gives out every version of every entry, one line each, and goes on past what is damaged.
Result<GivenOut> give_out(Store& store, const LineSink& sink);

struct Rebuilt {
  std::int64_t entries = 0;
  std::int64_t cows = 0;
  std::int64_t visits = 0;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("entries", &Rebuilt::entries, "entries read, every version");
    visit("cows", &Rebuilt::cows, "cows pictured");
    visit("visits", &Rebuilt::visits, "visits pictured");
  }
};

/// Makes the whole picture anew from the log, herd by herd and subject by subject. Where an entry
/// cannot be read any more the rows stay as they are. `said_progress`
/// (may be empty) hears the number of subjects done and to do.
Result<Rebuilt> rebuild_picture(
    Store& store, const std::function<void(std::int64_t, std::int64_t)>& said_progress);

/// One thing that is not as it should be.
struct CheckFinding {
  std::string what;  // gap, seq_used_twice, order_jump, supersedes_cycle, two_versions ...
  std::string words;
  std::optional<EntryId> entry;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("what", &CheckFinding::what, "kind of flaw");
    visit("words", &CheckFinding::words, "for people");
    visit("entry", &CheckFinding::entry, "the entry concerned, if one");
  }
};

/// "an entry is missing: device ..., count 7, scope ...".
CheckFinding finding_of(const LogFlaw& flaw);

struct CheckedStore {
  std::int64_t entries = 0;
  std::int64_t redacted = 0;
  std::int64_t unknown_kinds = 0;      // kept, not shown by this version
  std::vector<CheckFinding> findings;  // empty: all is well

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("entries", &CheckedStore::entries, "entries read");
    visit("redacted", &CheckedStore::redacted, "whose bodies were taken away");
    visit("unknown_kinds", &CheckedStore::unknown_kinds, "of kinds this version does not know");
    visit("findings", &CheckedStore::findings, "what is not as it should be");
  }
};

/// Verifies every digest, every device's count, the chains of corrections, and tells numbers that
/// two cows of a herd carry at once. Reads the whole log; of the bodies it holds next to nothing.
Result<CheckedStore> check_store(Store& store);

}  // namespace evenclaw
