#include "core/log/body.hpp"

#include <array>
#include <cstddef>
#include <functional>
#include <map>
#include <type_traits>
#include <utility>

#include "core/wire/value_json.hpp"

namespace evenclaw {

namespace {

struct KindFacts {
  std::string_view kind;
  std::int32_t version;
  bool (*understood)(const Json& json);
};

template <class Body>
bool understood(const Json& json) {
  return from_json<Body>(json).ok();
}

template <class... Bodies>
constexpr auto facts_of_all(std::type_identity<std::tuple<Bodies...>>) {
  return std::array<KindFacts, sizeof...(Bodies)>{
      KindFacts{Bodies::kind, Bodies::version, understood<Bodies>}...};
}

constexpr auto kind_table = facts_of_all(std::type_identity<AllBodies>{});

const KindFacts* find_kind(std::string_view kind) {
  for (const KindFacts& facts : kind_table) {
    if (facts.kind == kind) return &facts;
  }
  return nullptr;
}

}  // namespace

std::vector<std::string_view> all_kinds() {
  std::vector<std::string_view> kinds;
  kinds.reserve(kind_table.size());
  for (const KindFacts& facts : kind_table) kinds.push_back(facts.kind);
  return kinds;
}

std::optional<std::int32_t> current_version(std::string_view kind) {
  const KindFacts* facts = find_kind(kind);
  if (facts == nullptr) return std::nullopt;
  return facts->version;
}

namespace {

/// The body at the version this program writes; nothing as for body_as().
std::optional<Json> current_body(const Entry& entry) {
  const std::optional<std::int32_t> version = current_version(entry.envelope.kind);
  if (!version || !entry.body) return std::nullopt;
  auto json = json_from_text(entry.body->bytes());
  if (!json) return std::nullopt;
  const BodyForm form{entry.envelope.kind, entry.envelope.version};
  return up_cast(*std::move(json), form, *version, all_up_casters());
}

/// The ids a body holds itself, by the names of its members.
using IdsInBody = std::map<std::string, Uuid, std::less<>>;

IdsInBody ids_in(const Json& body) {
  IdsInBody ids;
  const JsonObject* members = body.as_object();
  if (members == nullptr) return ids;
  for (const auto& [name, value] : *members) {
    const std::string* text = value.as_string();
    const auto id = text == nullptr ? std::nullopt : uuid_from_text(*text);
    if (id) ids.emplace(name, *id);
  }
  return ids;
}

IdsInBody ids_in(const Entry& entry) {
  if (!entry.body) return {};
  const std::int32_t version = entry.envelope.version;
  if (auto remembered = entry.body->remembered<IdsInBody>(version)) return *std::move(remembered);
  const std::optional<Json> body = current_body(entry);
  IdsInBody ids = body ? ids_in(*body) : IdsInBody();
  entry.body->remember(version, ids);
  return ids;
}

template <class Member>
void add_subjects(const Member& member, std::vector<Uuid>& subjects) {
  if constexpr (is_optional<Member>) {
    if (member) add_subjects(*member, subjects);
  } else if constexpr (std::is_same_v<Member, CowId> || std::is_same_v<Member, VisitId>) {
    subjects.push_back(member.value);
  }
}

}  // namespace

std::optional<Uuid> id_in_body(const Entry& entry, std::string_view member) {
  const IdsInBody ids = ids_in(entry);
  const auto found = ids.find(member);
  return found == ids.end() ? std::nullopt : std::optional(found->second);
}

Readable readable(const Entry& entry) {
  if (!entry.body) return Readable::redacted;
  const KindFacts* facts = find_kind(entry.envelope.kind);
  if (facts == nullptr) return Readable::unknown_kind;
  if (entry.envelope.version > facts->version) return Readable::newer_version;
  const std::optional<Json> json = current_body(entry);
  return json && facts->understood(*json) ? Readable::yes : Readable::body_not_understood;
}

template <class Body>
std::optional<Body> BodyForms<Body>::read(const Entry& entry) {
  if (entry.envelope.kind != Body::kind || !entry.body) return std::nullopt;
  const std::int32_t version = entry.envelope.version;
  if (auto remembered = entry.body->remembered<Body>(version)) return remembered;
  const std::optional<Json> json = current_body(entry);
  if (!json) return std::nullopt;
  auto body = from_json<Body>(*json);
  if (!body) return std::nullopt;
  entry.body->remember(version, *body);
  entry.body->remember(version, ids_in(*json));
  return *std::move(body);
}

template <class Body>
std::string BodyForms<Body>::bytes(const Body& body) {
  return canonical_json(to_json(body));
}

template <class Body>
std::vector<Uuid> BodyForms<Body>::subjects(const Body& body) {
  std::vector<Uuid> subjects;
  for_each_field(body, [&](std::string_view, const auto& member, std::string_view) {
    add_subjects(member, subjects);
  });
  return sorted_subjects(std::move(subjects));
}

template <class Body>
Entry BodyForms<Body>::entry(Envelope envelope, const Body& body) {
  envelope.kind = Body::kind;
  envelope.version = Body::version;
  const std::vector<Uuid> named = subjects(body);
  envelope.subjects.insert(envelope.subjects.end(), named.begin(), named.end());
  envelope.subjects.push_back(envelope.scope);
  const Json json = to_json(body);
  Entry entry = make_entry(std::move(envelope), canonical_json(json));
  entry.body->remember(Body::version, ids_in(json));
  return entry;
}

template struct BodyForms<HerdRegistered>;
template struct BodyForms<VisitOpened>;
template struct BodyForms<VisitClosed>;
template struct BodyForms<VisitCorrected>;
template struct BodyForms<TurnRecorded>;
template struct BodyForms<TaskClosedBody>;
template struct BodyForms<TaskMoved>;
template struct BodyForms<CowRegistered>;
template struct BodyForms<NumberGiven>;
template struct BodyForms<CowLeft>;
template struct BodyForms<SameCow>;
template struct BodyForms<SameCowTakenBack>;
template struct BodyForms<Setting>;
template struct BodyForms<Redact>;
template struct BodyForms<DeviceNamed>;
template struct BodyForms<PersonAllowed>;
template struct BodyForms<NewsUnread>;
template struct BodyForms<QuestionSettled>;
template struct BodyForms<ProductListed>;
template struct BodyForms<ProductDropped>;
template struct BodyForms<BatchRecorded>;
template struct BodyForms<LifeTold>;
template struct BodyForms<MobilityScoring>;
template struct BodyForms<FarmWalk>;
template struct BodyForms<FarmChange>;
template struct BodyForms<PastFindingsTold>;

}  // namespace evenclaw
