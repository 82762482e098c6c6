// Seeded entries of several devices for the tests of stores: versions, redactions, jumps, repeats.
#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "core/base/random.hpp"
#include "core/log/bodies.hpp"
#include "core/log/body.hpp"
#include "core/log/entry.hpp"

namespace evenclaw {

inline Uuid sample_id(std::string_view kind, std::int64_t number) {
  return uuid_derived(std::string(kind) + " " + std::to_string(number));
}

inline HerdId sample_herd(std::int64_t number) {
  return HerdId{sample_id("herd", number)};
}

inline CowId sample_cow(std::int64_t number) {
  return CowId{sample_id("cow", number)};
}

inline VisitId sample_visit(std::int64_t number) {
  return VisitId{sample_id("visit", number)};
}

inline DeviceId sample_device(std::int64_t number) {
  return DeviceId{sample_id("device", number)};
}

inline EntryId sample_entry_id(std::int64_t number) {
  return EntryId{sample_id("entry", number)};
}

/// The envelope of entry `number` of a device in a herd: its seq, order and time are its number.
inline Envelope sample_envelope(std::int64_t number, DeviceId device, HerdId herd) {
  Envelope envelope;
  envelope.business = BusinessId{sample_id("business", 1)};
  envelope.scope = herd.value;
  envelope.id = EntryId{sample_id("entry " + to_text(device) + to_text(herd), number)};
  envelope.device = device;
  envelope.seq = number;
  envelope.order = number;
  envelope.at = {1'790'000'000'000 + number * 60'000, 120};
  return envelope;
}

/// A cow of the herd gets a number.
inline Entry sample_entry(std::int64_t number, DeviceId device, HerdId herd) {
  const NumberGiven body{sample_cow(number % 5), std::to_string(400 + number), Day{20'000}};
  return entry_of(sample_envelope(number, device, herd), body);
}

/// Takes the body of `target` away.
inline Entry sample_redact(std::int64_t number, DeviceId device, const Entry& target) {
  Envelope envelope = sample_envelope(number, device, HerdId{target.envelope.scope});
  envelope.subjects = target.envelope.subjects;
  return entry_of(std::move(envelope), Redact{target.envelope.id, "asked for by the farmer"});
}

inline Entry without_body(Entry entry) {
  entry.body.reset();
  return entry;
}

/// The same id with another number in the body.
inline Entry other_version(const Entry& entry, std::int64_t by) {
  Envelope envelope = entry.envelope;
  const NumberGiven body{sample_cow(by % 5), std::to_string(900 + by), Day{20'001}};
  return entry_of(std::move(envelope), body);
}

/// Makes entries of four devices in three herds in any order: among them repeats, redacted forms,
/// second versions, corrections, redactions before and after their targets, unknown kinds, seqs
/// used twice, gaps and orders that jump.
class SampleHistory {
 public:
  explicit SampleHistory(std::uint64_t seed) : random_(seed, 7) {}

  Entry next() {
    const std::uint32_t what = random_.below(100);
    if (made_.empty() || what < 55) return added(fresh());
    const Entry& before = made_[random_.below(static_cast<std::uint32_t>(made_.size()))];
    if (what < 65) return before;
    if (what < 75) return without_body(before);
    if (what < 82) return added(other_version(before, random_.below(3)));
    return added(redaction_of(before));
  }

  std::vector<Entry> batch(std::size_t size) {
    std::vector<Entry> entries;
    for (std::size_t i = 0; i < size; ++i) entries.push_back(next());
    return entries;
  }

 private:
  Entry added(Entry entry) {
    made_.push_back(entry);
    return entry;
  }

  Envelope fresh_envelope() {
    ++number_;
    const DeviceId device = sample_device(1 + random_.below(4));
    const HerdId herd = sample_herd(1 + random_.below(3));
    Envelope envelope = sample_envelope(number_, device, herd);
    envelope.seq = 1 + random_.below(60);
    envelope.order = 1 + random_.below(80);
    const std::uint32_t jump = random_.below(40);
    if (jump == 0) envelope.order += largest_jump_drawn;
    return envelope;
  }

  Entry fresh() {
    Envelope envelope = fresh_envelope();
    const std::uint32_t kind = random_.below(10);
    if (kind == 0) {
      envelope.kind = "milk_tested";
      envelope.version = 3;
      envelope.subjects = {sample_cow(random_.below(5)).value, envelope.scope};
      return make_entry(std::move(envelope), R"({"cells":180000})");
    }
    if (kind == 1 && !made_.empty()) envelope.supersedes = made_.back().envelope.id;
    const CowId cow = sample_cow(random_.below(5));
    if (kind < 4) return entry_of(std::move(envelope), CowLeft{cow, Day{20'100}, "sold", {}});
    const std::uint32_t number = random_.below(50);
    return entry_of(std::move(envelope), NumberGiven{cow, std::to_string(number), Day{20'000}});
  }

  Entry redaction_of(const Entry& before) {
    Envelope envelope = fresh_envelope();
    // Sometimes of an entry that has not come yet, sometimes of another scope, where it does
    // nothing.
    const bool same_scope = random_.chance(0.8);
    if (same_scope) envelope.scope = before.envelope.scope;
    const bool later = random_.chance(0.3);
    const Entry target = later ? fresh() : before;
    if (later) made_.push_back(target);
    return entry_of(std::move(envelope), Redact{target.envelope.id, "asked"});
  }

  static constexpr std::int64_t largest_jump_drawn = 3'000'000;

  RandomStream random_;
  std::int64_t number_ = 0;
  std::vector<Entry> made_;
};

}  // namespace evenclaw
