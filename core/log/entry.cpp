#include "core/log/entry.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

#include "core/wire/value_json.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view digest_member = "body_sha256";
constexpr std::size_t longest_kind = 64;
// A line is an object around the body, and no JSON text is read that nests deeper than 64 levels.
constexpr int deepest_body = 63;

Fault not_canonical(std::string message, std::string token = {}) {
  return Fault{"entry-not-canonical", std::move(message), std::move(token)};
}

Faults not_canonical(const Faults& faults) {
  Faults renamed;
  for (Fault fault : faults) {
    fault.slug = "entry-not-canonical";
    renamed.push_back(std::move(fault));
  }
  return renamed;
}

bool is_kind_word(std::string_view kind) {
  if (kind.empty() || kind.size() > longest_kind || kind[0] < 'a' || kind[0] > 'z') return false;
  return std::all_of(kind.begin(), kind.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
  });
}

// What the bytes alone cannot show to be wrong.
void find_impossible(const Envelope& envelope, Faults& faults) {
  const auto refuse_if = [&](bool wrong, std::string_view member, std::string_view what) {
    if (wrong) {
      faults.push_back(
          not_canonical(std::string(member) + " " + std::string(what), std::string(member)));
    }
  };
  refuse_if(envelope.scope.is_nil(), "scope", "is nil");
  refuse_if(envelope.id.is_nil(), "id", "is nil");
  refuse_if(envelope.device.is_nil(), "device", "is nil");
  refuse_if(envelope.seq < 1, "seq", "counts from 1");
  refuse_if(envelope.order < 1, "order", "counts from 1");
  refuse_if(envelope.version < 1, "version", "counts from 1");
  refuse_if(!is_kind_word(envelope.kind), "kind", "is no snake_case word");
  refuse_if(envelope.subjects != sorted_subjects(envelope.subjects), "subjects",
            "are not sorted, each once");
}

bool holds_null(const Json& json) {
  if (json.is_null()) return true;
  if (const JsonArray* array = json.as_array()) {
    return std::any_of(array->begin(), array->end(), holds_null);
  }
  if (const JsonObject* object = json.as_object()) {
    return std::any_of(object->begin(), object->end(),
                       [](const auto& member) { return holds_null(member.second); });
  }
  return false;
}

bool is_deeper_than(int levels, const Json& json) {
  if (const JsonArray* array = json.as_array()) {
    return levels == 0 || std::any_of(array->begin(), array->end(), [&](const Json& element) {
             return is_deeper_than(levels - 1, element);
           });
  }
  if (const JsonObject* object = json.as_object()) {
    return levels == 0 || std::any_of(object->begin(), object->end(), [&](const auto& member) {
             return is_deeper_than(levels - 1, member.second);
           });
  }
  return false;
}

Result<Entry> entry_from_envelope(const Json& json) {
  auto envelope = from_json<Envelope>(json);
  if (!envelope) return not_canonical(envelope.faults());
  Faults faults;
  find_impossible(*envelope, faults);
  const Json* digest_json = json.member(digest_member);
  const std::string* digest_text = digest_json == nullptr ? nullptr : digest_json->as_string();
  const std::optional<Digest> digest =
      digest_text == nullptr ? std::nullopt : digest_from_text(*digest_text);
  if (!digest) {
    faults.push_back(not_canonical("body_sha256 is no SHA-256", std::string(digest_member)));
  }
  if (!faults.empty()) return faults;
  return Entry{*std::move(envelope), *digest, std::nullopt};
}

void find_body_faults(const Json& json, std::string_view bytes, Faults& faults) {
  if (json.as_object() == nullptr) {
    faults.push_back(not_canonical("the body is no object"));
  } else if (holds_null(json)) {
    faults.push_back(not_canonical("the body holds null; what is not there is left out"));
  } else if (is_deeper_than(deepest_body, json)) {
    faults.push_back(not_canonical("the body is nested too deeply"));
  } else if (canonical_json(json) != bytes) {
    faults.push_back(not_canonical("the body is not in canonical form"));
  }
}

void find_digest_fault(const Entry& entry, std::string_view bytes, Faults& faults) {
  if (sha256(bytes) == entry.body_digest) return;
  faults.push_back(Fault{"entry-digest-wrong", "the body does not fit the digest in the envelope",
                         to_text(entry.envelope.id)});
}

std::string line_of(std::string_view envelope, const std::optional<BodyText>& body) {
  std::string line = "{";
  if (body) {
    line += "\"body\":";
    line += body->bytes();
    line += ',';
  }
  line += "\"envelope\":";
  line += envelope;
  line += '}';
  return line;
}

}  // namespace

std::vector<Uuid> sorted_subjects(std::vector<Uuid> subjects) {
  std::sort(subjects.begin(), subjects.end());
  subjects.erase(std::unique(subjects.begin(), subjects.end()), subjects.end());
  return subjects;
}

Entry make_entry(Envelope envelope, std::string body) {
  envelope.subjects = sorted_subjects(std::move(envelope.subjects));
  const Digest digest = sha256(body);
  return Entry{std::move(envelope), digest, BodyText(std::move(body))};
}

std::string envelope_bytes(const Entry& entry) {
  Json json = to_json(entry.envelope);
  json.as_object()->emplace(std::string(digest_member), Json(to_text(entry.body_digest)));
  return canonical_json(json);
}

Digest digest_of(const Entry& entry) {
  return sha256(envelope_bytes(entry));
}

Result<Entry> entry_from_parts(std::string_view envelope, std::optional<std::string_view> body) {
  const auto envelope_json = json_from_text(envelope);
  if (!envelope_json) return not_canonical(envelope_json.faults());
  auto entry = entry_from_envelope(*envelope_json);
  if (!entry) return entry.faults();
  Faults faults;
  if (envelope_bytes(*entry) != envelope) {
    faults.push_back(not_canonical("the envelope is not in canonical form"));
  }
  if (body) {
    const auto body_json = json_from_text(*body);
    if (body_json) {
      find_body_faults(*body_json, *body, faults);
    } else {
      for (Fault& fault : not_canonical(body_json.faults())) faults.push_back(std::move(fault));
    }
    find_digest_fault(*entry, *body, faults);
    entry->body = BodyText(std::string(*body));
  }
  if (!faults.empty()) return faults;
  return entry;
}

Result<Entry> entry_from_kept_parts(std::string_view envelope, std::optional<std::string_view> body,
                                    const Digest& digest) {
  if (sha256(envelope) != digest) {
    return Fault{"entry-digest-wrong", "the envelope does not fit its digest"};
  }
  const auto envelope_json = json_from_text(envelope);
  if (!envelope_json) return not_canonical(envelope_json.faults());
  auto entry = entry_from_envelope(*envelope_json);
  if (!entry || !body) return entry;
  Faults faults;
  find_digest_fault(*entry, *body, faults);
  if (!faults.empty()) return faults;
  entry->body = BodyText(std::string(*body));
  return entry;
}

std::string entry_line(const Entry& entry) {
  return line_of(envelope_bytes(entry), entry.body);
}

Result<Entry> entry_from_line(std::string_view line) {
  const auto json = json_from_text(line);
  if (!json) return not_canonical(json.faults());
  const Json* envelope = json->member("envelope");
  if (envelope == nullptr) return not_canonical("there is no envelope", "envelope");
  auto entry = entry_from_envelope(*envelope);
  if (!entry) return entry.faults();
  Faults faults;
  if (const Json* body = json->member("body")) {
    entry->body = BodyText(canonical_json(*body));
    find_body_faults(*body, entry->body->bytes(), faults);
    find_digest_fault(*entry, entry->body->bytes(), faults);
  }
  // Also says whether anything stands in the line that is neither envelope nor body.
  if (entry_line(*entry) != line) {
    faults.push_back(not_canonical("the line is not in canonical form"));
  }
  if (!faults.empty()) return faults;
  return entry;
}

bool comes_before(const Entry& a, const Entry& b) {
  const Envelope& x = a.envelope;
  const Envelope& y = b.envelope;
  const auto left = std::tie(x.order, x.device, x.seq, x.id);
  const auto right = std::tie(y.order, y.device, y.seq, y.id);
  if (left != right) return left < right;
  return digest_of(a) < digest_of(b);
}

}  // namespace evenclaw
