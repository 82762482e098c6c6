#include "core/api/recording/answers_due.hpp"

#include <algorithm>
#include <utility>

namespace evenclaw {

namespace {

ReplyKind kind_of(Rank rank) {
  switch (rank) {
    case Rank::note:
      return ReplyKind::note;
    case Rank::ask:
      return ReplyKind::ask;
    case Rank::stop:
      return ReplyKind::stop;
  }
  return ReplyKind::note;
}

bool concerns_her_in_the_crush(ReplyKind kind) {
  switch (kind) {
    case ReplyKind::stop:
    case ReplyKind::ask:
    case ReplyKind::note:
    case ReplyKind::question:
    case ReplyKind::mark:
      return true;
    case ReplyKind::saved:
    case ReplyKind::there_already:
    case ReplyKind::told:
    case ReplyKind::refused:
      return false;
  }
  return false;
}

}  // namespace

ReplyItem& AnswersDue::add(ReplyKind kind, std::string words) {
  ReplyItem item;
  item.kind = kind;
  item.line = line_;
  item.words = std::move(words);
  items_.push_back(std::move(item));
  return items_.back();
}

void AnswersDue::add_there_already(std::string cow, EntryId entry) {
  ReplyItem& item = add(ReplyKind::there_already, "");
  item.cow = std::move(cow);
  item.entry = entry;
}

void AnswersDue::show(const std::vector<Warning>& warnings, const std::string& cow) {
  for (const Warning& warning : warnings) {
    if (warning.rank == Rank::note) continue;
    ReplyItem& item = add(kind_of(warning.rank), warning.words);
    item.cow = cow;
    item.slug = warning.rule;
    item.answers = warning.answers;
  }
}

bool AnswersDue::shows(const Warning& warning, const std::string& cow) const {
  return std::any_of(items_.begin(), items_.end(), [&](const ReplyItem& item) {
    return item.slug == warning.rule && item.words == warning.words && item.cow == cow;
  });
}

void AnswersDue::forget_of(const std::string& cow, std::size_t first) {
  const auto from = items_.begin() + static_cast<std::ptrdiff_t>(std::min(first, items_.size()));
  items_.erase(std::remove_if(from, items_.end(),
                              [&](const ReplyItem& item) {
                                return item.cow == cow && concerns_her_in_the_crush(item.kind);
                              }),
               items_.end());
}

std::vector<ReplyItem> AnswersDue::given() {
  return std::exchange(items_, {});
}

}  // namespace evenclaw
