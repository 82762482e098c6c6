#include "core/sheets/yard_list.hpp"

#include <string>
#include <utility>

#include "core/trade/leaving_yard.hpp"

namespace evenclaw {

std::vector<Block> before_leaving(const Wording& wording) {
  TaskItem item;
  for (const YardTask& task : before_leaving_the_yard()) {
    const std::string source(task.source);
    item.lines.push_back({plain(std::string(task.words)), quiet(" (" + source + ')')});
  }
  return {Heading{2, wording.say(Saying::yard_title)}, TaskList{"", {std::move(item)}}};
}

}  // namespace evenclaw
