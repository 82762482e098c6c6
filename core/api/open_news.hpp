// News of a herd that nobody could be sure of and nobody has made clear since.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

struct OpenNews {
  VisitId visit;
  std::optional<CowId> cow;  // as her rows name her; none when nobody carried the number
  std::string number;        // as said, where it was not understood or nobody carried it
  std::optional<News> news;  // none when it was not understood, or nobody carried the number
  std::string words;
  std::string asked;
  std::optional<PersonId> person;  // whom a doubtful name of a caller or writer was read as
  EntryId entry;                   // that asked it
};

/// In the order they were told. The same news told plainly of her settles hers, "off" told plainly
/// one that was said to be still on. What was not understood is settled piece by piece, by news
/// that tells it (still_untold.hpp); that she is gone settles no more than that. An answer in words
/// settles either. A number that nobody carried counts as hers once she carries it. What was told
/// between visits is not asked about.
Result<std::vector<OpenNews>> open_news(Store& store, HerdId herd);

}  // namespace evenclaw
