// The file with the records, opened, and the ports that lead to it.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "cli/command.hpp"
#include "cli/system_device.hpp"
#include "core/api/herds.hpp"
#include "core/api/ports.hpp"
#include "core/api/recording.hpp"
#include "core/api/visits.hpp"
#include "core/base/date.hpp"
#include "core/base/result.hpp"

namespace evenclaw::cli {

enum class Opening {
  create,    // a new file is made when there is none
  existing,  // refused when there is none
  look,      // nothing will be written, unless rows have to be made anew to be looked at
  salvage    // a damaged file, for what can be read of its log; its rows are not to be trusted
};

enum class VisitState { open, any };

class Records {
 public:
  /// Opens the invocation's file; a new or copied file gets its business and device, and pictures
  /// made by another version are made anew. A new file belongs to the business it `joins`, else to
  /// one of its own.
  static Result<std::unique_ptr<Records>> open(const Invocation& invocation, Opening opening,
                                               std::optional<BusinessId> joins = std::nullopt);

  ~Records();
  Records(const Records&) = delete;
  Records& operator=(const Records&) = delete;

  [[nodiscard]] Ports ports();
  [[nodiscard]] Store& store();

  [[nodiscard]] Day today() const { return today_; }

  [[nodiscard]] const std::string& file() const { return file_; }

  /// The language in which the business calls its days.
  [[nodiscard]] const Language& language() const { return *language_; }

  /// The herd named with --herd; else the one of the open visit; else the only one there is.
  [[nodiscard]] Result<Herd> herd_meant(const Invocation& invocation);
  /// As herd_meant(), but nothing when no herd was named: then all are meant.
  [[nodiscard]] Result<std::optional<Herd>> herd_named(const Invocation& invocation);
  /// The visit of --herd and --day; the open one when no day is given; when none is open the
  /// latest, unless it must be open ("no-visit-open").
  [[nodiscard]] Result<Visit> visit_meant(const Invocation& invocation, VisitState state);

 private:
  struct Parts;
  explicit Records(std::unique_ptr<Parts> parts);

  std::unique_ptr<Parts> parts_;
  const Language* language_ = &english();
  Day today_;
  std::string file_;
};

/// Faults of opening records; those of records that are not there say how the first come to be.
Faults with_way_to_begin(Faults faults);

/// The day an option holds; nothing when it was not given; fault "date-unreadable".
Result<std::optional<Day>> day_option(const Invocation& invocation, std::string_view option);

/// As they are called: "all four", "both hinds", "both fronts", else the feet: "LH RH".
std::string feet_words(const FootSet& feet, const Language& language);

/// "all", "hinds", "fronts" or feet such as "LH RH"; fault "usage".
Result<FootSet> feet_option(const Invocation& invocation, std::string_view option);

}  // namespace evenclaw::cli
