// The sheet that stays on the farm after a visit.
#pragma once

#include <string>
#include <vector>

#include "core/api/ports.hpp"
#include "core/api/visits.hpp"
#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/paper/html.hpp"

namespace evenclaw {

struct SheetMade {
  std::string suggested_name;  // "2026-10-27-home-farm.html"
  std::string html;            // one file that needs nothing else

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("suggested_name", &SheetMade::suggested_name, "a name for the file");
    visit("html", &SheetMade::html, "the page");
  }
};

struct SheetLook {
  std::string version;          // of the program, stands on the page
  std::vector<FontFile> fonts;  // travel inside the page; may be empty
};

/// The visit's sheet as it stands `today`; the visit need not be closed.
Result<SheetMade> make_sheet(const Ports& ports, const Visit& visit, Day today,
                             const SheetLook& look);

}  // namespace evenclaw
