// A small herd's log for tests: entries are written as a device would, and pictured from all of it.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/log/body.hpp"
#include "core/log/entry.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// An id that is the same in every run: all its bytes tell `name`.
Uuid named_id(std::string_view name);
CowId cow_named(std::string_view name);

/// Whom most stories tell of, and who a wrongly heard turn was of in truth.
inline const CowId cow_412 = cow_named("412");
inline const CowId cow_421 = cow_named("421");
DeviceId device_named(std::string_view name);

/// "2026-11-24"; the text must be a day.
Day day(std::string_view text);

FootCall foot(Foot foot, std::vector<Finding> findings, std::vector<Action> actions = {});
FootCall nothing_found(Foot foot);
Finding lesion(Lesion lesion, Claw claw = Claw::outside, Place place = Place::white_line_heel);
Action act(ActionKind kind, Claw claw = Claw::none);

class Farm {
 public:
  Farm();

  [[nodiscard]] HerdId herd() const { return herd_; }

  [[nodiscard]] const std::vector<Entry>& entries() const { return entries_; }

  [[nodiscard]] const Entry& last() const { return entries_.back(); }

  /// Later entries come from this device, whose count goes on where it was.
  void write_on(std::string_view device) { device_ = device_named(device); }

  /// The clock of every device from now on.
  void set_clock(std::string_view instant);

  template <class Body>
  EntryId write(const Body& body) {
    return keep(entry_of(next_envelope(), body));
  }

  /// A correction names the subjects of what it corrects.
  template <class Body>
  EntryId correct(const Entry& wrong, const Body& body) {
    Envelope envelope = next_envelope();
    envelope.supersedes = wrong.envelope.id;
    envelope.subjects = wrong.envelope.subjects;
    return keep(entry_of(std::move(envelope), body));
  }

  EntryId redact(const Entry& entry);
  EntryId keep(Entry entry);

  /// A new envelope of this device: the next seq and order.
  Envelope next_envelope();

  /// Opens the visit of that day once, whoever asks for it.
  VisitId visit(std::string_view day);

  /// A turn of a numbered cow in the visit of that day, done.
  EntryId turn(CowId cow, std::string_view day, std::vector<FootCall> feet);

  EntryId turn(TurnRecorded body) { return write(body); }

  TurnRecorded turn_body(CowId cow, std::string_view day, std::vector<FootCall> feet);

  [[nodiscard]] const Entry& entry(EntryId id) const;

  /// Her rows from all entries, with those united with her.
  [[nodiscard]] Rows rows_of(CowId cow) const;
  [[nodiscard]] Rows rows_of(VisitId visit) const;

 private:
  HerdId herd_;
  DeviceId device_;
  Instant at_;
  std::int64_t order_ = 0;
  std::vector<Entry> entries_;
  std::vector<VisitId> opened_;
};

}  // namespace evenclaw
