// Fuzz target: any bytes as a list of another program are read or refused; every record names a
// cow and lies in the file, and every fault says what to do.
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/exchange/decoded_text.hpp"
#include "core/exchange/herd_table.hpp"

namespace {

using namespace evenclaw;

void check_faults(const Faults& faults) {
  for (const Fault& fault : faults) {
    if (fault.slug.empty() || fault.message.empty() || fault.remedy.empty()) std::abort();
  }
}

void check_records(const HerdTable& herd) {
  for (const HerdRecord& record : herd.records) {
    const bool is_named =
        !record.number.empty() || !record.tag.empty() || !record.electronic.empty();
    if (!is_named || record.line < 1) std::abort();
    if (record.finding && record.finding->words.empty()) std::abort();
  }
  check_faults(herd.row_faults);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto text = decoded_text({reinterpret_cast<const char*>(data), size});
  if (!text) {
    check_faults(text.faults());
    return 0;
  }
  const CsvTable table = csv_table(text->text);
  TableWish wish;
  wish.today = Day{20'000};
  // Also with words explained, without which no list of findings is read.
  for (const char* lesions : {"", "icar, A=DD, X=ignore"}) {
    wish.findings = lesions_said(lesions).value();
    const auto herd = herd_table(table, wish);
    if (herd) check_records(*herd);
    if (!herd) check_faults(herd.faults());
  }
  return 0;
}
