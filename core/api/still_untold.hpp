// What of news that nobody could read has not been told of her since in words that were understood.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

/// The same news, or of the same wrap or block that it is off.
bool tells_the_same(News a, News b);

/// "300 wrap off, stil lame" says two things, and both have to be told before nothing of it is left
/// to be asked. Slips are taken as what they look like. A line that is no news even so has to be
/// said again, word by word.
class StillUntold {
 public:
  /// The whole line, and of which number it is held here.
  StillUntold(std::string_view words, std::string number, Day day, const Language& language);

  /// News of her, in the words of its whole line; what nobody could be sure of is asked about by
  /// itself. Where a foot was named it must be that one,
  /// and where all were meant no foot.
  void tell(const NewsSaid& news, std::string_view words);

  /// That was told before the line, too, and holds still.
  void was_told(const NewsSaid& news);

  [[nodiscard]] bool is_all_told() const { return is_all_told_; }

 private:
  void take_out(const NewsSaid& news);

  const Language* language_;
  std::string number_;
  std::string words_;                            // of her
  std::optional<std::vector<NewsSaid>> pieces_;  // not told yet; nothing when it is no news
  std::string told_since_;
  bool is_all_told_ = false;
};

}  // namespace evenclaw
