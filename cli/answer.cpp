#include "cli/answer.hpp"

#include <algorithm>
#include <sstream>

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

struct HowTo {
  std::string_view slug;
  std::string_view words;
};

/// What the remedies of core, which the screens show too, come to on the command line.
constexpr HowTo how_tos[] = {
    {"no-visit-open", "evenclaw start \"Home Farm\" starts one; --day adds to one that was ended."},
    {"two-visits-open", "--herd names the herd; evenclaw end --herd NAME ends its visit."},
    {"herd-not-found", "evenclaw herds lists them; evenclaw start NAME --new-herd enters one."},
    {"herd-ambiguous", "evenclaw herds lists them."},
    {"answer-needed", "--sure says that it is meant so."}};

/// In words of the command line: what to do about a fault.
std::string remedy_of(const Fault& fault) {
  const ErrorKind* kind = find_error(fault.slug);
  std::string remedy = fault.remedy;
  if (remedy.empty() && kind != nullptr) remedy = kind->what_to_do;
  for (const HowTo& how_to : how_tos) {
    if (how_to.slug == fault.slug)
      remedy += (remedy.empty() ? "" : "\n") + std::string(how_to.words);
  }
  return remedy;
}

void tell(const Fault& fault) {
  std::cerr << "evenclaw: " << place_of(fault) << fault.message << '\n';
  const ErrorKind* kind = find_error(fault.slug);
  std::istringstream remedy(remedy_of(fault));
  for (std::string line; std::getline(remedy, line);) std::cerr << "  " << line << '\n';
  if (kind != nullptr) std::cerr << "  " << kind->safe << " (" << fault.slug << ")\n";
}

bool among(std::string_view slug, std::initializer_list<std::string_view> slugs) {
  return std::find(slugs.begin(), slugs.end(), slug) != slugs.end();
}

}  // namespace

FaultAnswer as_answer(const Fault& fault) {
  return {fault.slug, fault.message, fault.token, fault.line, fault.column, remedy_of(fault)};
}

Exit exit_of(std::string_view slug) {
  if (among(slug, {"file-damaged", "file-newer", "not-our-file", "entry-digest-wrong",
                   "entry-not-canonical", "row-unreadable"})) {
    return Exit::damaged;
  }
  if (among(slug,
            {"file-not-found", "file-unreadable", "file-read-only", "file-too-large", "disk-full",
             "disk-failed", "store-busy", "output-exists", "rows-out-of-date"})) {
    return Exit::world;
  }
  if (slug == "usage" || slug == "date-unreadable") return Exit::usage;
  return Exit::asked;
}

Exit tell_faults(const Faults& faults, const Invocation& invocation) {
  Exit worst = Exit::asked;
  FaultsAnswer answer;
  for (const Fault& fault : faults) {
    worst = std::max(worst, exit_of(fault.slug));
    if (invocation.json) {
      answer.faults.push_back(as_answer(fault));
    } else {
      tell(fault);
    }
  }
  // On one line: it may stand behind the lines of what was recorded before.
  if (invocation.json) std::cout << canonical_json(to_json(answer)) << '\n';
  return worst;
}

}  // namespace evenclaw::cli
