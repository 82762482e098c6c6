// Recording one visit: called lines go in, turns are saved, and whatever a careful colleague would
// say comes back.
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/api/ports.hpp"
#include "core/api/reply.hpp"
#include "core/api/visits.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

class RecordingState;

/// One visit being recorded. A cow is let out, and her turn saved, at the next cow, at "done", or
/// when the input or the visit ends. "done" with a warning nobody has answered keeps her in the
/// crush and shows it once more; a second "done" or the next cow lets her out with the warning
/// unanswered, and it is asked again when the visit closes.
///
/// A fault of a call means the store or the directory failed: nothing of that call was
/// acknowledged. What is wrong with a line is an item of the reply.
class Recording {
 public:
  /// Takes up the half-entered turn the store kept, if there is one: of this visit it goes on, of
  /// another visit it is recorded there as unfinished first (see `opening()`). `language` must
  /// outlive the recording.
  static Result<Recording> open(const Ports& ports, const Visit& visit, const Language& language);

  Recording(Recording&&) noexcept;
  Recording& operator=(Recording&&) noexcept;
  ~Recording();

  /// What opening gave: the cow that is still in the crush, a turn that was saved.
  [[nodiscard]] const Reply& opening() const;

  /// One typed line. The half-entered turn is kept in the store before it returns.
  Result<Reply> say(std::string_view line);

  /// Lines of a file or pipe: everything they give is written at once and acknowledged together,
  /// after it is durable, and the half-entered turn is kept with it. When the file is given again,
  /// what is recorded already is answered "there already" and not doubled, nor are the lines of a
  /// turn that broke off.
  Result<Reply> say_all(std::span<const std::string> lines);

  /// The input is over: a cow still in the crush is recorded as unfinished, unless she was done.
  Result<Reply> end_of_input();

  /// The visit is over: a cow still in the crush is let out as done, unless the recording broke off
  /// and more was to be called of her.
  Result<Reply> end_of_visit();

  [[nodiscard]] const Visit& visit() const;

  /// The cow in the crush as said; empty when there is none.
  [[nodiscard]] std::string in_crush() const;

  /// Should the input be over now, the cow in the crush would count as unfinished: she was neither
  /// done nor called only to answer what was asked, or a line of hers was not understood.
  [[nodiscard]] bool would_be_unfinished() const;

  /// What may follow a half line here and now.
  [[nodiscard]] std::vector<Suggestion> may_follow(std::string_view half_line) const;

 private:
  explicit Recording(std::unique_ptr<RecordingState> state);
  std::unique_ptr<RecordingState> state_;
};

}  // namespace evenclaw
