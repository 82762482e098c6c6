// In which language the days of this business are called.
#pragma once

#include <string_view>

#include "core/api/ports.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"

namespace evenclaw {

/// What the business has settled; English where it has settled nothing, or a language that only a
/// newer version knows.
Result<const CallLanguage*> call_language_of(Store& store);

/// "de", or the name of the language. Fault "usage" for one nobody has words of, and
/// "call-impossible" while a cow is in the crush: what was said of her could not be read again.
Result<EntryId> set_call_language(const Ports& ports, std::string_view language);

}  // namespace evenclaw
