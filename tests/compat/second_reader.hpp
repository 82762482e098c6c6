// What the second implementation of the log (reader.py) says, and the same said by ours.
#pragma once

#include <array>
#include <cstdio>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/log/merge.hpp"
#include "core/log/picture.hpp"
#include "core/wire/json.hpp"
#include "store/memory/memory_store.hpp"
#include "tests/core/log/counting.hpp"
#include "tests/store/temporary_folder.hpp"

namespace evenclaw::test {

using Lines = std::vector<std::string>;

inline Lines lines_of(std::string_view text) {
  Lines lines;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    lines.emplace_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return lines;
}

inline std::string text_of(const Lines& lines) {
  std::string text;
  for (const std::string& line : lines) text += line + '\n';
  return text;
}

/// The lines reader.py prints; none when it fails.
inline Lines second_reader(const std::string& words, const Lines& input = {}) {
  const TemporaryFolder folder;
  write_bytes(folder.file("input"), text_of(input));
  const std::string command =
      "python3 -B tests/compat/reader.py " + words + " <" + folder.file("input");
  std::FILE* out = popen(command.c_str(), "r");
  if (out == nullptr) return {};
  std::string text;
  std::array<char, 65536> chunk{};
  while (const std::size_t got = std::fread(chunk.data(), 1, chunk.size(), out)) {
    text.append(chunk.data(), got);
  }
  return pclose(out) == 0 ? lines_of(text) : Lines{};
}

/// Its answers to several logs, from one run.
inline Lines second_answers(const std::vector<Lines>& logs) {
  const TemporaryFolder folder;
  std::string words = "answer";
  for (std::size_t i = 0; i < logs.size(); ++i) {
    const std::string file = folder.file(std::to_string(i) + ".jsonl");
    write_bytes(file, text_of(logs[i]));
    words += ' ' + file;
  }
  return second_reader(words);
}

/// Our answer to one log in the same form.
class OwnAnswer {
 public:
  explicit OwnAnswer(const Lines& lines) {
    for (std::size_t i = 0; i < lines.size(); ++i) {
      if (lines[i].empty()) continue;
      auto entry = entry_from_line(lines[i]);
      if (entry) {
        set_.add(*std::move(entry));
      } else {
        refused_.push_back(Json(i + 1));
      }
    }
  }

  [[nodiscard]] std::string text() const {
    JsonObject answer;
    answer.emplace("refused", Json(refused_));
    answer.emplace("everything", digests(set_.everything()));
    answer.emplace("redacted", digests(redacted()));
    answer.emplace("shown", digests(set_.shown()));
    answer.emplace("counting", digests(counting_among(set_.everything())));
    answer.emplace("two_versions", two_versions());
    answer.emplace("flaws", flaws());
    answer.emplace("believed", believed());
    answer.emplace("groups", groups());
    return canonical_json(Json(std::move(answer)));
  }

 private:
  static Json sorted(const std::set<std::string>& texts) {
    JsonArray array;
    for (const std::string& text : texts) array.emplace_back(text);
    return Json(std::move(array));
  }

  static Json digests(const std::vector<Entry>& entries) {
    JsonArray array;
    for (const Entry& entry : entries) array.emplace_back(to_text(digest_of(entry)));
    return Json(std::move(array));
  }

  [[nodiscard]] std::vector<Entry> redacted() const {
    std::vector<Entry> all = set_.everything();
    std::erase_if(all, [](const Entry& entry) { return entry.body.has_value(); });
    return all;
  }

  [[nodiscard]] Json two_versions() const {
    std::set<std::string> ids;
    for (const EntryId id : set_.in_two_versions()) ids.insert(to_text(id));
    return sorted(ids);
  }

  [[nodiscard]] Json flaws() const {
    std::set<std::string> told;
    for (const LogFlaw& flaw : flaws_of(set_.everything())) {
      told.insert(std::string(word_of(flaw.kind)) + ' ' + to_text(flaw.scope) + ' ' +
                  to_text(flaw.device) + ' ' + std::to_string(flaw.seq) + ' ' +
                  to_text(flaw.entry));
    }
    return sorted(told);
  }

  /// As a store believes it, for that is what the next entry builds on.
  [[nodiscard]] Json believed() const {
    MemoryStore store;
    Write write;
    write.entries = set_.everything();
    static_cast<void>(store.write(write));
    JsonObject of_scopes;
    for (const Entry& entry : write.entries) {
      const auto order = store.last_order(entry.envelope.scope);
      if (order && *order > 0) of_scopes.emplace(to_text(entry.envelope.scope), Json(*order));
    }
    return Json(std::move(of_scopes));
  }

  static std::set<Uuid> subjects_of(const std::vector<Entry>& entries) {
    std::set<Uuid> subjects;
    for (const Entry& entry : entries) {
      subjects.insert(entry.envelope.subjects.begin(), entry.envelope.subjects.end());
    }
    return subjects;
  }

  [[nodiscard]] Json groups() const {
    std::map<Uuid, std::vector<Entry>> by_scope;
    for (Entry& entry : set_.everything()) by_scope[entry.envelope.scope].push_back(entry);
    std::multiset<std::vector<CowId>> found;
    for (const auto& [scope, entries] : by_scope) {
      const CowGroups cows(entries);
      for (const Uuid& cow : subjects_of(entries)) {
        const std::vector<CowId> group = cows.group_of(CowId{cow});
        if (group.size() > 1 && group.front().value == cow) found.insert(group);
      }
    }
    JsonArray array;
    for (const std::vector<CowId>& group : found) {
      JsonArray ids;
      for (const CowId cow : group) ids.emplace_back(to_text(cow));
      array.emplace_back(std::move(ids));
    }
    return Json(std::move(array));
  }

  EntrySet set_;
  JsonArray refused_;
};

}  // namespace evenclaw::test
