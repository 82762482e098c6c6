#include "cli/answer.hpp"

#include <algorithm>
#include <array>

#include "core/base/errors.hpp"

namespace evenclaw::cli {
namespace {

std::string place_of(const Fault& fault) {
  std::string place;
  if (fault.line > 0) place += "line " + std::to_string(fault.line);
  if (fault.column > 0) {
    place += (place.empty() ? "column " : ", column ") + std::to_string(fault.column);
  }
  return place.empty() ? place : place + ": ";
}

void tell(const Fault& fault) {
  std::cerr << "evenclaw: " << place_of(fault) << fault.message << '\n';
  const ErrorKind* kind = find_error(fault.slug);
  if (!fault.remedy.empty()) {
    std::cerr << "  " << fault.remedy << '\n';
  } else if (kind != nullptr) {
    std::cerr << "  " << kind->what_to_do << '\n';
  }
  if (kind != nullptr) std::cerr << "  " << kind->safe << " (" << fault.slug << ")\n";
}

Json as_json(const Fault& fault) {
  JsonObject object;
  object["slug"] = Json(fault.slug);
  object["message"] = Json(fault.message);
  object["token"] = Json(fault.token);
  object["line"] = Json(std::int64_t{fault.line});
  object["column"] = Json(std::int64_t{fault.column});
  object["remedy"] = Json(fault.remedy);
  return Json(std::move(object));
}

bool among(std::string_view slug, std::initializer_list<std::string_view> slugs) {
  return std::find(slugs.begin(), slugs.end(), slug) != slugs.end();
}

}  // namespace

Exit exit_of(std::string_view slug) {
  if (among(slug, {"file-damaged", "file-newer", "not-our-file", "entry-digest-wrong",
                   "entry-not-canonical", "row-unreadable"})) {
    return Exit::damaged;
  }
  if (among(slug, {"file-not-found", "file-unreadable", "file-read-only", "file-too-large",
                   "disk-full", "disk-failed", "store-busy", "output-exists"})) {
    return Exit::world;
  }
  if (slug == "usage" || slug == "date-unreadable") return Exit::usage;
  return Exit::asked;
}

Exit tell_faults(const Faults& faults, const Invocation& invocation) {
  Exit worst = Exit::asked;
  JsonArray array;
  for (const Fault& fault : faults) {
    worst = std::max(worst, exit_of(fault.slug));
    if (invocation.json) {
      array.push_back(as_json(fault));
    } else {
      tell(fault);
    }
  }
  if (invocation.json) {
    JsonObject object;
    object["faults"] = Json(std::move(array));
    std::cout << pretty_json(Json(std::move(object))) << '\n';
  }
  return worst;
}

void tell_done(const Invocation& invocation, std::string_view words, const JsonObject& members) {
  if (invocation.json) {
    std::cout << pretty_json(Json(members)) << '\n';
  } else {
    std::cout << words << '\n';
  }
}

}  // namespace evenclaw::cli
