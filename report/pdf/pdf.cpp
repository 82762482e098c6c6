#include "report/pdf/pdf.hpp"

#include "report/pdf/layout.hpp"
#include "report/pdf/painting.hpp"
#include "report/pdf/typesetter.hpp"

namespace evenclaw {

Result<std::string> to_pdf(const Document& document, const std::vector<PrintFont>& fonts) {
  auto shipped = Typesetter::with(fonts, FontReach::shipped, document.language);
  if (!shipped) return shipped.faults();
  const auto pages = laid_out(document, *shipped);
  if (!shipped->lacks_letters()) return painted(pages, document.title);
  auto machine = Typesetter::with(fonts, FontReach::machine, document.language);
  if (!machine) return machine.faults();
  return painted(laid_out(document, *machine), document.title);
}

}  // namespace evenclaw
