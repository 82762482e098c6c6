// What recording answers: one flat list of things to print, show or speak, in the order they arose.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"

namespace evenclaw {

enum class ReplyKind {
  saved,          // a turn has reached the store; `entry` names it
  there_already,  // the same was recorded before; nothing was written
  told,           // news or a setting has reached the store
  stop,           // a warning, most urgent
  ask,            // a warning, one line
  note,           // a warning for the sheet
  question,       // something only a person can settle
  mark,           // not called yet: place, degree, stage, claw
  refused         // the line, or a part of it, was not recorded
};

template <>
struct EnumWords<ReplyKind> {
  static constexpr EnumWord<ReplyKind> table[] = {
      {ReplyKind::saved, "saved"},       {ReplyKind::there_already, "there_already"},
      {ReplyKind::told, "told"},         {ReplyKind::stop, "stop"},
      {ReplyKind::ask, "ask"},           {ReplyKind::note, "note"},
      {ReplyKind::question, "question"}, {ReplyKind::mark, "mark"},
      {ReplyKind::refused, "refused"}};
};

struct ReplyItem {
  ReplyKind kind = ReplyKind::mark;
  std::int32_t line = 0;             // the line it arose at, from 1; 0 when at none
  std::string cow;                   // as said; "" when it concerns none
  std::string words;                 // for people, one line
  std::vector<std::string> answers;  // as call line words
  std::optional<EntryId> entry;
  std::string slug;         // of docs/errors.md when refused, of the check when a warning
  std::int32_t column = 0;  // of the token a refusal points at, from 1; 0 for none
  std::string token;
  std::string remedy;  // the nearest right word, or what to do

  friend bool operator==(const ReplyItem&, const ReplyItem&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("kind", &ReplyItem::kind, "what kind of answer");
    visit("line", &ReplyItem::line, "the line it arose at, from 1");
    visit("cow", &ReplyItem::cow, "the cow as said");
    visit("words", &ReplyItem::words, "for people");
    visit("answers", &ReplyItem::answers, "what could be said to it");
    visit("entry", &ReplyItem::entry, "the entry, once it is durable");
    visit("slug", &ReplyItem::slug, "the error or the check");
    visit("column", &ReplyItem::column, "where in the line, from 1");
    visit("token", &ReplyItem::token, "the word in question");
    visit("remedy", &ReplyItem::remedy, "what to say instead");
  }
};

struct Reply {
  std::vector<ReplyItem> items;
  std::string in_crush;  // the cow that is in the crush now, as said; "" for none

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("items", &Reply::items, "what is to be said");
    visit("in_crush", &Reply::in_crush, "the cow in the crush now");
  }
};

/// The words with what to say instead, parted so that both can be read.
std::string with_remedy(std::string words, const std::string& remedy);

/// One item as a plain line. "saved 412 0190..." exactly so for a saved turn, the acknowledgement
/// other programs read; "there already 412 0190..."; else "stop 412: words (answer: a / b)", and
/// for a refusal "refused line 7: words remedy".
std::string to_line(const ReplyItem& item);

}  // namespace evenclaw
