#include "cli/page_file.hpp"

#include "cli/shipped.hpp"

namespace evenclaw::cli {

Outcome write_sheet(const std::string& path, PageForm form, const SheetMade& sheet) {
  switch (form) {
    case PageForm::html:
      return write_page(path, form, sheet.html);
    case PageForm::pdf: {
      const auto page = to_pdf(sheet.document, print_fonts());
      if (!page) return page.faults();
      return write_page(path, form, *page);
    }
  }
  return Done{};
}

}  // namespace evenclaw::cli
