#include "core/api/transfer.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "core/api/herds.hpp"
#include "core/api/pictures.hpp"
#include "core/base/errors.hpp"
#include "core/base/text.hpp"
#include "core/log/bodies.hpp"
#include "core/log/body.hpp"
#include "core/log/picture.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t entries_a_write = 1000;
constexpr std::size_t most_reasons = 100;

/// Takes lines in and remembers which subjects have to be pictured anew.
class TakingIn {
 public:
  TakingIn(const Ports& ports, BusinessId business) : ports_(ports), business_(business) {}

  Outcome take(std::string_view line) {
    ++line_number_;
    if (line.empty()) return Done{};
    auto entry = entry_from_line(line);
    if (!entry) return set_aside(entry.faults().front());
    if (entry->envelope.business != business_ && !business_.is_nil()) {
      const auto herd = body_as<HerdRegistered>(*entry);
      if (herd) names_elsewhere_.insert(fold_case(herd->name));
      // One reason stands for all of them.
      if (++taken_.other_business > 1) {
        ++taken_.set_aside;
        return Done{};
      }
      return set_aside(
          {.slug = "entry-set-aside", .message = "The entry belongs to another business."});
    }
    const auto ring = closes_ring(entry->envelope);
    if (!ring) return ring.faults();
    if (*ring) return set_aside(ring_told(*entry));
    count_if_newer(entry->envelope);
    batch_.push_back(*std::move(entry));
    return batch_.size() < entries_a_write ? Outcome(Done{}) : write_batch();
  }

  Outcome see_whether_whole() {
    const auto needs_rebuild = ports_.store.needs_rebuild();
    if (!needs_rebuild) return needs_rebuild.faults();
    was_whole_ = !*needs_rebuild;
    return Done{};
  }

  Result<TakenIn> finish() {
    Outcome done = write_batch();
    if (done) done = picture();
    if (done) done = find_same_names();
    if (!done) return done.faults();
    return taken_;
  }

 private:
  Outcome set_aside(const Fault& fault) {
    ++taken_.set_aside;
    if (taken_.reasons.size() < most_reasons) {
      const ErrorKind* kind = find_error(fault.slug);
      const bool is_told = !fault.remedy.empty() || kind == nullptr;
      taken_.reasons.push_back({line_number_, fault.column, fault.slug, fault.message,
                                is_told ? fault.remedy : std::string(kind->what_to_do)});
    }
    return Done{};
  }

  static Fault ring_told(const Entry& entry) {
    return {.slug = "entry-set-aside",
            .message = "The entry " + to_text(entry.envelope.id) +
                       " corrects one that corrects it: the corrections go round in a ring",
            .remedy = "Nobody records so: get the log anew from the device that made it."};
  }

  void count_if_newer(const Envelope& envelope) {
    const auto known = current_version(envelope.kind);
    if (!known || envelope.version > *known) ++taken_.newer;
  }

  /// Whether its correction leads back to itself, over what came before and what is here.
  Result<bool> closes_ring(const Envelope& envelope) {
    std::optional<EntryId> at = envelope.supersedes;
    std::set<EntryId> seen;
    while (at && *at != envelope.id && seen.insert(*at).second) {
      auto next = superseded_by(envelope.scope, *at);
      if (!next) return next.faults();
      at = *next;
    }
    const bool is_ring = at && *at == envelope.id;
    if (envelope.supersedes && !is_ring) {
      corrections_[{envelope.scope, envelope.id}] = *envelope.supersedes;
    }
    return is_ring;
  }

  Result<std::optional<EntryId>> superseded_by(const Uuid& scope, EntryId id) {
    const auto arrived = corrections_.find({scope, id});
    if (arrived != corrections_.end()) return std::optional(arrived->second);
    const auto here = ports_.store.find_entry(id);
    if (!here) return here.faults();
    const bool is_here = *here && (*here)->envelope.scope == scope;
    return is_here ? (*here)->envelope.supersedes : std::nullopt;
  }

  void count(Kept kept) {
    switch (kept) {
      case Kept::stored:
        ++taken_.stored;
        break;
      case Kept::already:
        ++taken_.already;
        break;
      case Kept::redacted_now:
        ++taken_.redacted;
        break;
      case Kept::two_versions:
        ++taken_.two_versions;
        break;
    }
  }

  Outcome write_batch() {
    if (batch_.empty()) return Done{};
    Write write;
    write.entries = std::move(batch_);
    write.arrived = true;
    batch_.clear();
    const auto kept = ports_.store.write(write);
    if (!kept) return kept.faults();
    std::map<HerdId, std::vector<Entry>> arrived;
    for (std::size_t i = 0; i < kept->size(); ++i) {
      count((*kept)[i]);
      Entry& entry = write.entries[i];
      if ((*kept)[i] == Kept::already) continue;
      arrived[HerdId{entry.envelope.scope}].push_back(std::move(entry));
    }
    for (const auto& [herd, entries] : arrived) {
      const Outcome touched = add_touched(ports_.store, herd, entries, subjects_[herd]);
      if (!touched) return touched;
    }
    return Done{};
  }

  /// Each device that begins a herd makes another one of it, whatever its name.
  Outcome find_same_names() {
    const auto herds = all_herds(ports_.store);
    if (!herds) return herds.faults();
    std::set<std::string> here;
    std::set<std::string> told;
    for (const Herd& herd : *herds) {
      const std::string name = fold_case(herd.name);
      const bool is_two = !here.insert(name).second || names_elsewhere_.count(name) > 0;
      if (is_two && told.insert(name).second) taken_.same_name.push_back(herd.name);
    }
    return Done{};
  }

  Outcome picture() {
    for (const auto& [herd, subjects] : subjects_) {
      const Outcome done = picture_anew(ports_.store, herd, subjects);
      if (!done) return done;
    }
    // Rows that were missing before are still missing.
    return was_whole_ ? ports_.store.rebuilt() : Outcome(Done{});
  }

  Ports ports_;
  BusinessId business_;
  bool was_whole_ = false;
  std::int64_t line_number_ = 0;
  std::vector<Entry> batch_;
  std::map<HerdId, SubjectsToPicture> subjects_;
  std::map<std::pair<Uuid, EntryId>, EntryId> corrections_;  // that arrived, and what they correct
  std::set<std::string> names_elsewhere_;                    // of herds of another business
  TakenIn taken_;
};

}  // namespace

Result<TakenIn> take_in(const Ports& ports, const LineSource& next_line) {
  const auto identity = ports.store.identity();
  if (!identity) return identity.faults();
  TakingIn taking(ports, identity->business);
  const Outcome seen = taking.see_whether_whole();
  if (!seen) return seen.faults();
  for (;;) {
    const auto line = next_line();
    if (!line) return line.faults();
    if (!*line) break;
    const Outcome taken = taking.take(**line);
    if (!taken) return taken.faults();
  }
  return taking.finish();
}

std::optional<BusinessId> business_of_line(std::string_view line) {
  const auto entry = entry_from_line(line);
  return entry ? std::optional(entry->envelope.business) : std::nullopt;
}

Result<GivenOut> give_out(Store& store, const LineSink& sink) {
  GivenOut given;
  Outcome sunk = Done{};
  const Outcome read = store.read_what_can_be(
      [&](const Entry& entry) {
        sunk = sink(entry_line(entry));
        if (sunk) ++given.entries;
        return sunk.ok();
      },
      [&](const Fault& fault) { given.damaged.push_back(fault); });
  if (!sunk) return sunk.faults();
  if (!read) return read.faults();
  return given;
}

namespace {

/// The cows and visits of a whole log. Its visits are those that were opened, so that no body has
/// to be read to tell them from cows.
class AllSubjects {
 public:
  void add(const Entry& entry) {
    const Envelope& envelope = entry.envelope;
    const bool is_of_visit =
        envelope.kind == VisitOpened::kind || envelope.kind == VisitCorrected::kind ||
        envelope.kind == VisitClosed::kind || envelope.kind == BatchRecorded::kind;
    const bool is_of_farm = envelope.kind == MobilityScoring::kind ||
                            envelope.kind == FarmWalk::kind || envelope.kind == FarmChange::kind;
    Named& named = of_herds_[HerdId{envelope.scope}];
    std::set<Uuid>& to = is_of_visit || is_of_farm ? named.visits : named.others;
    for (const Uuid& subject : envelope.subjects) {
      if (subject == envelope.scope) continue;
      to.insert(subject);
      if (is_of_farm) of_farm_.insert(subject);
    }
  }

  /// How many are pictured as a visit is and are none.
  [[nodiscard]] std::int64_t of_the_farm() const {
    return static_cast<std::int64_t>(of_farm_.size());
  }

  std::map<HerdId, SubjectsToPicture> take() && {
    std::map<HerdId, SubjectsToPicture> all;
    for (const auto& [herd, named] : of_herds_) {
      SubjectsToPicture& subjects = all[herd];
      for (const Uuid& visit : named.visits) subjects.visits.insert(VisitId{visit});
      for (const Uuid& other : named.others) {
        if (named.visits.count(other) == 0) subjects.cows.insert(CowId{other});
      }
    }
    return all;
  }

 private:
  struct Named {
    std::set<Uuid> visits;
    std::set<Uuid> others;
  };

  std::map<HerdId, Named> of_herds_;
  std::set<Uuid> of_farm_;
};

}  // namespace

Result<Rebuilt> rebuild_picture(
    Store& store, const std::function<void(std::int64_t, std::int64_t)>& said_progress) {
  Rebuilt rebuilt;
  AllSubjects all;
  // Also versions that are not shown: one that cannot be read is met before any row is thrown away.
  const Outcome read = store.read_everything([&](const Entry& entry) {
    ++rebuilt.entries;
    all.add(entry);
    return true;
  });
  if (!read) return read.faults();
  rebuilt.visits = -all.of_the_farm();
  const std::map<HerdId, SubjectsToPicture> subjects = std::move(all).take();
  const Outcome forgotten = store.forget_pictures();
  if (!forgotten) return forgotten.faults();
  std::int64_t done = 0;
  std::int64_t to_do = 0;
  for (const auto& [herd, of_herd] : subjects) {
    to_do += static_cast<std::int64_t>(of_herd.cows.size() + of_herd.visits.size());
  }
  for (const auto& [herd, of_herd] : subjects) {
    const Outcome pictured = picture_anew(store, herd, of_herd);
    if (!pictured) return pictured.faults();
    rebuilt.cows += static_cast<std::int64_t>(of_herd.cows.size());
    rebuilt.visits += static_cast<std::int64_t>(of_herd.visits.size());
    done += static_cast<std::int64_t>(of_herd.cows.size() + of_herd.visits.size());
    if (said_progress) said_progress(done, to_do);
  }
  const Outcome complete = store.rebuilt();
  if (!complete) return complete.faults();
  return rebuilt;
}

}  // namespace evenclaw
