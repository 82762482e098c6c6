// An entry of the append-only log: who, where, when and what kind in the envelope, the matter in
// the body, both as canonical bytes that never change. Format: docs/format/log.md.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/digest.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/body_text.hpp"

namespace evenclaw {

struct Envelope {
  BusinessId business;
  Uuid scope;                  // a herd, or the business itself; never nil
  std::vector<Uuid> subjects;  // every cow, visit and herd it touches, sorted, each once
  EntryId id;
  DeviceId device;
  std::int64_t seq = 0;    // 1, 2, 3 ... without a gap per device and scope
  std::int64_t order = 0;  // Lamport counter of the scope
  Instant at;
  std::optional<PersonId> caller;
  std::optional<PersonId> writer;
  std::string kind;  // snake_case word; kinds this version does not know are kept
  std::int32_t version = 1;
  std::optional<EntryId> supersedes;
  std::string signature;  // reserved, empty

  friend bool operator==(const Envelope&, const Envelope&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("business", &Envelope::business, "the trimming business");
    visit("scope", &Envelope::scope, "the herd, or the business itself");
    visit("subjects", &Envelope::subjects, "every cow, visit and herd it touches, sorted");
    visit("id", &Envelope::id, "UUID version 7");
    visit("device", &Envelope::device, "the device that made it");
    visit("seq", &Envelope::seq, "count per device and scope, without gaps, from 1");
    visit("order", &Envelope::order, "Lamport counter of the scope");
    visit("at", &Envelope::at, "wall time of the device with its offset");
    visit("caller", &Envelope::caller, "who judged and trimmed");
    visit("writer", &Envelope::writer, "who typed");
    visit("kind", &Envelope::kind, "what kind of entry");
    visit("version", &Envelope::version, "version of that kind's body");
    visit("supersedes", &Envelope::supersedes, "the entry this one corrects");
    visit("signature", &Envelope::signature, "reserved");
  }
};

struct Entry {
  Envelope envelope;
  Digest body_digest;            // SHA-256 of the body's bytes, kept when the body is redacted
  std::optional<BodyText> body;  // canonical JSON object; nothing when redacted

  friend bool operator==(const Entry&, const Entry&) = default;
};

/// Sorted by their bytes, each once, as the canonical form demands.
std::vector<Uuid> sorted_subjects(std::vector<Uuid> subjects);

/// Makes an entry from an envelope and canonical body bytes; sorts the subjects.
Entry make_entry(Envelope envelope, std::string body);

/// The canonical envelope bytes, which hold the body's digest as "body_sha256".
std::string envelope_bytes(const Entry& entry);

/// SHA-256 over envelope_bytes(): the same with and without the body, so that a redacted entry
/// still verifies. Identity of an entry is (scope, id, digest).
Digest digest_of(const Entry& entry);

/// The entry from its two stored parts. Faults: "entry-not-canonical" when the bytes are not the
/// canonical form of what they say, "entry-digest-wrong" when the body does not fit its digest.
Result<Entry> entry_from_parts(std::string_view envelope, std::optional<std::string_view> body);

/// The entry from parts that were in canonical form when they were kept under `digest`, as a store
/// reads them back: what still has its digests still is in that form, so no body is read. Fault
/// "entry-digest-wrong", and "entry-not-canonical" when the envelope is none.
Result<Entry> entry_from_kept_parts(std::string_view envelope, std::optional<std::string_view> body,
                                    const Digest& digest);

/// One line of an exported log: {"body":{...},"envelope":{...}}, without "body" when redacted.
std::string entry_line(const Entry& entry);
Result<Entry> entry_from_line(std::string_view line);

/// The total order of a scope: (order, device, seq, id, digest). Wall time plays no part.
bool comes_before(const Entry& a, const Entry& b);

/// Lamport counters further ahead than this of what the device has seen do not advance its own
/// and are flagged: one broken device must not use up the counter.
inline constexpr std::int64_t largest_order_jump = 1'000'000;

}  // namespace evenclaw
