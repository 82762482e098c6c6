#include "core/api/recording/recorded_batches.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include "core/base/text.hpp"
#include "core/log/body.hpp"
#include "core/log/standing.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/offered.hpp"

namespace evenclaw {

namespace {

/// The words and numbers of a line, without what parts them.
std::vector<std::string> words_alone(std::string_view line) {
  std::vector<std::string> words;
  for (const Token& token : tokens_of(line)) {
    const bool is_word = token.kind == TokenKind::word || token.kind == TokenKind::number;
    if (is_word) words.push_back(fold_case(line.substr(token.offset, token.length)));
  }
  return words;
}

}  // namespace

std::string name_of(const Batch& batch, const Language& language) {
  return std::to_string(batch.counted) + ' ' +
         std::string(language.say(TermKind::animals, batch.animals));
}

std::string told_of(const Batch& batch, const Language& language) {
  std::vector<std::string> parts;
  if (!batch.place.empty()) parts.push_back(batch.place);
  if (!batch.lifted.empty()) parts.push_back(offered_feet(batch.lifted, language) + " lifted");
  const std::string together = std::to_string(batch.together());
  if (batch.nothing_found) parts.push_back(together + " with nothing found");
  if (batch.trimmed == Trimmed::yes) parts.push_back(together + " trimmed");
  if (batch.trimmed == Trimmed::no) parts.push_back(together + " not trimmed");
  for (const std::string& apart : batch.apart) parts.push_back(apart + " on her own");
  std::string words;
  for (const std::string& part : parts) words += (words.empty() ? "" : ", ") + part;
  return words;
}

Result<RecordedBatches> RecordedBatches::open(Store& store, const Visit& visit) {
  std::vector<Entry> entries;
  const std::vector<std::string> kinds = {std::string(BatchRecorded::kind)};
  const Outcome read =
      store.read_entries({visit.herd.value, visit.visit.value, kinds}, [&](const Entry& entry) {
        entries.push_back(entry);
        return true;
      });
  if (!read) return read.faults();
  RecordedBatches recorded;
  for (const Entry* entry : standing_among(entries).entries) {
    auto body = body_as<BatchRecorded>(*entry);
    if (body) recorded.batches_.push_back({entry->envelope.id, *std::move(body), false});
  }
  return recorded;
}

const RecordedBatch* RecordedBatches::again(std::string_view words) {
  const auto same = std::find_if(batches_.begin(), batches_.end(), [&](const RecordedBatch& batch) {
    return !batch.matched && !batch.body.words.empty() &&
           batch.body.words.front() == trimmed(words);
  });
  if (same == batches_.end()) return nullptr;
  same->matched = true;
  told_last_ = same->entry;
  return &*same;
}

const RecordedBatch* RecordedBatches::at_the_place_of(const Batch& batch) const {
  if (batch.place.empty()) return nullptr;
  const std::string place = fold_case(batch.place);
  const auto same =
      std::find_if(batches_.rbegin(), batches_.rend(), [&](const RecordedBatch& told) {
        const Batch& other = told.body.batch;
        return told.counts() && other.animals == batch.animals && fold_case(other.place) == place;
      });
  return same == batches_.rend() ? nullptr : &*same;
}

const RecordedBatch* RecordedBatches::in_words(std::string_view words) const {
  const auto same = std::find_if(batches_.begin(), batches_.end(), [&](const RecordedBatch& told) {
    return told.counts() && !told.body.words.empty() &&
           words_alone(told.body.words.front()) == words_alone(words);
  });
  return same == batches_.end() ? nullptr : &*same;
}

const RecordedBatch* RecordedBatches::named(std::string_view name, const Language& language) const {
  const auto same =
      std::find_if(batches_.rbegin(), batches_.rend(), [&](const RecordedBatch& told) {
        return told.counts() && fold_case(name_of(told.body.batch, language)) == fold_case(name);
      });
  return same == batches_.rend() ? nullptr : &*same;
}

const RecordedBatch* RecordedBatches::last() const {
  const auto told = std::find_if(batches_.begin(), batches_.end(), [&](const RecordedBatch& batch) {
    return told_last_ && batch.entry == *told_last_ && batch.counts();
  });
  if (told != batches_.end()) return &*told;
  const auto last = std::find_if(batches_.rbegin(), batches_.rend(),
                                 [](const RecordedBatch& batch) { return batch.counts(); });
  return last == batches_.rend() ? nullptr : &*last;
}

const RecordedBatch* RecordedBatches::meant_by(const Batch& right) const {
  const RecordedBatch* told_last = last();
  const auto is_such = [&](const RecordedBatch& told) {
    const Batch& batch = told.body.batch;
    const bool is_there = right.place.empty() || fold_case(batch.place) == fold_case(right.place);
    return told.counts() && batch.animals == right.animals && is_there;
  };
  if (told_last == nullptr || is_such(*told_last)) return told_last;
  const auto such = std::find_if(batches_.rbegin(), batches_.rend(), is_such);
  return such == batches_.rend() ? told_last : &*such;
}

const RecordedBatch* RecordedBatches::counted_twice(const Batch& said) const {
  std::vector<const RecordedBatch*> same;
  for (const RecordedBatch& told : batches_) {
    const Batch& batch = told.body.batch;
    const bool is_there = said.place.empty() || fold_case(batch.place) == fold_case(said.place);
    const bool is_meant = batch.counted == said.counted && batch.animals == said.animals;
    if (told.counts() && is_meant && is_there) same.push_back(&told);
  }
  const bool at_one_place = std::all_of(same.begin(), same.end(), [&](const RecordedBatch* told) {
    return fold_case(told->body.batch.place) == fold_case(same.front()->body.batch.place);
  });
  return same.size() > 1 && at_one_place ? same.back() : nullptr;
}

const RecordedBatch* RecordedBatches::taken_back_in(std::string_view words) const {
  const auto back = std::find_if(batches_.begin(), batches_.end(), [&](const RecordedBatch& told) {
    return !told.counts() && !told.body.words.empty() &&
           words_alone(told.body.words.back()) == words_alone(words);
  });
  return back == batches_.end() ? nullptr : &*back;
}

void RecordedBatches::add(EntryId entry, BatchRecorded body) {
  batches_.push_back({entry, std::move(body), true});
  told_last_ = entry;
}

void RecordedBatches::mend(EntryId wrong, EntryId right, BatchRecorded body) {
  const auto at = std::find_if(batches_.begin(), batches_.end(),
                               [&](const RecordedBatch& batch) { return batch.entry == wrong; });
  if (at != batches_.end()) *at = {right, std::move(body), true};
  told_last_ = right;
}

}  // namespace evenclaw
