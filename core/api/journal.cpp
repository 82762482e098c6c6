#include "core/api/journal.hpp"

#include <utility>

#include "core/api/pictures.hpp"

namespace evenclaw {

namespace {

std::optional<PersonId> unless_nil(PersonId person) {
  if (person.is_nil()) return std::nullopt;
  return person;
}

}  // namespace

Result<Journal> Journal::open(const Ports& ports, const Uuid& scope) {
  auto identity = ports.store.identity();
  if (!identity) return identity.faults();
  if (identity->business.is_nil() || identity->device.is_nil() || identity->copied) {
    return Fault{.slug = "usage",
                 .message = "The store has no device of its own yet, so nothing can be written.",
                 .remedy = "Name the device first."};
  }
  return Journal(ports, scope, *identity);
}

EntryId Journal::fresh_id() {
  return EntryId{ports_.ids.next()};
}

Outcome Journal::read_counters() {
  const auto seq = ports_.store.last_seq(device_, scope_);
  if (!seq) return seq.faults();
  const auto order = ports_.store.last_order(scope_);
  if (!order) return order.faults();
  seq_ = *seq;
  order_ = *order;
  return Done{};
}

Outcome Journal::count_one() {
  if (unwritten_.empty()) {
    const Outcome read = read_counters();
    if (!read) return read;
  }
  ++seq_;
  ++order_;
  return Done{};
}

Outcome Journal::count_anew() {
  const Outcome read = read_counters();
  if (!read) return read;
  for (Entry& entry : unwritten_) {
    entry.envelope.seq = ++seq_;
    entry.envelope.order = ++order_;
  }
  return Done{};
}

Envelope Journal::envelope_of(const EntryFacts& facts) {
  Envelope envelope;
  envelope.business = business_;
  envelope.scope = scope_;
  envelope.subjects = facts.subjects;
  envelope.id = facts.id;
  envelope.device = device_;
  envelope.seq = seq_;
  envelope.order = order_;
  envelope.at = ports_.clock.now();
  envelope.caller = unless_nil(facts.by.caller);
  envelope.writer = unless_nil(facts.by.writer);
  envelope.supersedes = facts.supersedes;
  return envelope;
}

Result<std::vector<Kept>> Journal::write_counted(const std::optional<std::string>& draft) {
  Write write;
  write.entries = unwritten_;
  write.draft = draft;
  const Outcome pictured = add_pictures(ports_.store, write);
  if (!pictured) return pictured.faults();
  return ports_.store.write(write);
}

Result<std::vector<Kept>> Journal::write(const std::optional<std::string>& draft) {
  auto kept = write_counted(draft);
  if (!kept && !unwritten_.empty() && kept.faults().front().slug == "store-busy") {
    const Outcome counted = count_anew();
    if (!counted) return counted.faults();
    kept = write_counted(draft);
  }
  if (kept) unwritten_.clear();
  return kept;
}

}  // namespace evenclaw
