// From a typed body to an entry and back again.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include "core/base/id.hpp"
#include "core/log/batch_bodies.hpp"
#include "core/log/bodies.hpp"
#include "core/log/entry.hpp"
#include "core/log/farm_bodies.hpp"
#include "core/log/life_bodies.hpp"
#include "core/log/news_bodies.hpp"
#include "core/log/past_bodies.hpp"
#include "core/log/product_bodies.hpp"
#include "core/log/upcast.hpp"

namespace evenclaw {

using AllBodies =
    std::tuple<HerdRegistered, VisitOpened, VisitClosed, VisitCorrected, TurnRecorded,
               TaskClosedBody, TaskMoved, CowRegistered, NumberGiven, CowLeft, SameCow,
               SameCowTakenBack, Setting, Redact, DeviceNamed, PersonAllowed, NewsUnread,
               QuestionSettled, ProductListed, ProductDropped, BatchRecorded, LifeTold,
               MobilityScoring, FarmWalk, FarmChange, PastFindingsTold>;

/// Every kind this program writes and reads.
std::vector<std::string_view> all_kinds();

/// The version in which this program writes a kind; nothing for a kind it does not know.
std::optional<std::int32_t> current_version(std::string_view kind);

/// Whether this program can picture an entry. Whatever the answer, the entry is kept and relayed.
enum class Readable { yes, redacted, unknown_kind, newer_version, body_not_understood };

template <>
struct EnumWords<Readable> {
  static constexpr EnumWord<Readable> table[] = {
      {Readable::yes, "yes"},
      {Readable::redacted, "redacted"},
      {Readable::unknown_kind, "unknown_kind"},
      {Readable::newer_version, "newer_version"},
      {Readable::body_not_understood, "body_not_understood"}};
};

Readable readable(const Entry& entry);

/// Written out for each of AllBodies in body.cpp and nowhere else: what JSON of a body costs to
/// compile is paid once. A new body gets its line there.
template <class Body>
struct BodyForms {
  static std::optional<Body> read(const Entry& entry);
  static std::string bytes(const Body& body);
  static std::vector<Uuid> subjects(const Body& body);
  static Entry entry(Envelope envelope, const Body& body);
};

/// The body in the form this version writes; nothing when the entry is of another kind, redacted,
/// newer, or holds what this version does not understand.
template <class Body>
std::optional<Body> body_as(const Entry& entry) {
  return BodyForms<Body>::read(entry);
}

/// The id a body holds under that name, without reading the rest; nothing as for body_as().
std::optional<Uuid> id_in_body(const Entry& entry, std::string_view member);

/// The canonical bytes of a body.
template <class Body>
std::string body_bytes(const Body& body) {
  return BodyForms<Body>::bytes(body);
}

/// The cows and visits a body names itself, sorted, each once. What an entry refers to by another
/// entry's id (a redaction, the taking back of a union, a correction) has to be added by its maker:
/// such an entry names every subject of the entry it refers to.
template <class Body>
std::vector<Uuid> subjects_named(const Body& body) {
  return BodyForms<Body>::subjects(body);
}

/// An entry of that body: sets kind and version, and adds the scope and the subjects the body names
/// to those of the envelope.
template <class Body>
Entry entry_of(Envelope envelope, const Body& body) {
  return BodyForms<Body>::entry(std::move(envelope), body);
}

}  // namespace evenclaw
