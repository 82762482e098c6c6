#include "core/log/body.hpp"

#include <array>
#include <cstddef>

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

std::optional<Json> body_detail::current_body(const Entry& entry) {
  const std::optional<std::int32_t> version = current_version(entry.envelope.kind);
  if (!version || !entry.body) return std::nullopt;
  auto json = json_from_text(*entry.body);
  if (!json) return std::nullopt;
  const BodyForm form{entry.envelope.kind, entry.envelope.version};
  return up_cast(*std::move(json), form, *version, all_up_casters());
}

std::optional<Uuid> id_in_body(const Entry& entry, std::string_view member) {
  const std::optional<Json> body = body_detail::current_body(entry);
  const Json* json = body ? body->member(member) : nullptr;
  const std::string* text = json == nullptr ? nullptr : json->as_string();
  return text == nullptr ? std::nullopt : uuid_from_text(*text);
}

Readable readable(const Entry& entry) {
  if (!entry.body) return Readable::redacted;
  const KindFacts* facts = find_kind(entry.envelope.kind);
  if (facts == nullptr) return Readable::unknown_kind;
  if (entry.envelope.version > facts->version) return Readable::newer_version;
  const std::optional<Json> json = body_detail::current_body(entry);
  return json && facts->understood(*json) ? Readable::yes : Readable::body_not_understood;
}

}  // namespace evenclaw
