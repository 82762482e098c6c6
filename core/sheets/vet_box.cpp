#include "core/sheets/vet_box.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <utility>

#include "core/sheets/foot_lines.hpp"
#include "core/sheets/left_for_vet.hpp"
#include "core/sheets/notifiable.hpp"
#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/signs_in_words.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/sheets/vet_calls.hpp"
#include "core/sheets/vet_stops.hpp"
#include "core/sheets/vet_urgency.hpp"
#include "core/sheets/who_has_her.hpp"

namespace evenclaw {

namespace {

std::vector<std::string> left_alone(const VisitView& view, CowId id,
                                    const std::vector<VetCall>& calls) {
  std::vector<std::string> words;
  const auto add = [&](std::vector<std::string> left) {
    for (std::string& one : left) {
      const bool is_new = std::find(words.begin(), words.end(), one) == words.end();
      if (is_new) words.push_back(std::move(one));
    }
  };
  const CowSeen* cow = find_cow(view, id);
  for (const VetCall& call : calls) {
    if (cow != nullptr && call.is_of_today) add(left_for_vet(view, *cow, call.foot));
    add(left_from_before(view, id, call.foot));
  }
  return words;
}

std::string when_to_ring(const VetCall& call) {
  return call.status.empty() ? call.when : clauses({call.when, call.status});
}

std::string where_called(const VetCall& call, const Wording& wording) {
  return call.foot ? wording.foot(*call.foot) : wording.say(Saying::the_cow);
}

/// What the checks said of that place and no sign tells.
void add_warnings(NoticeItem& item, const VetCall& call, const VisitView& view, const CowSeen& cow,
                  const std::vector<const Warning*>& stops) {
  if (!call.is_of_today) return;
  for (const Warning* stop : stops) {
    const bool is_there = stop->foot == call.foot;
    if (is_there && !is_told_by_sign(view, cow, *stop))
      item.lines.push_back({strong(as_sentence(stop->words))});
  }
}

/// She stands once; when to ring is said once where it is the same of all that is hers.
NoticeItem vet_item(const VisitView& view, CowId cow) {
  const Wording& wording = view.wording;
  const CowSeen* seen = find_cow(view, cow);
  const auto stops = seen == nullptr ? std::vector<const Warning*>() : open_vet_stops(view, *seen);
  const std::vector<VetCall> calls = vet_calls(view, cow);
  NoticeItem item{view.names.label(cow), {}};
  const CowRow* left = who_left(view, cow);
  const std::string looks = view.names.beside_label(cow);
  for (std::size_t i = 0; i < calls.size(); ++i) {
    const VetCall& call = calls[i];
    if (i == 0 && !looks.empty()) item.lines.push_back({strong(looks)});
    if (i == 0 && left != nullptr) {
      item.lines.push_back({strong(as_sentence(who_has_her_and_authority(*left, view)))});
    }
    item.lines.push_back(
        {strong(capitalised(where_called(call, wording))), plain(as_sentence(", " + call.why))});
    if (seen != nullptr) add_warnings(item, call, view, *seen, stops);
    const std::string when = when_to_ring(call);
    const bool is_last_of_day = i + 1 == calls.size() || when_to_ring(calls[i + 1]) != when;
    if (is_last_of_day) item.lines.push_back({plain(as_sentence(when))});
  }
  for (const std::string& words : left_alone(view, cow, calls)) {
    item.lines.push_back({strong(as_sentence(words))});
  }
  return item;
}

bool leaves_something_alone(const VisitView& view, CowId cow) {
  return !left_alone(view, cow, vet_calls(view, cow)).empty();
}

/// News nobody could read, or of which nobody could be sure, that may tell of a sign.
std::vector<NoticeItem> asked_items(const VisitView& view) {
  const Wording& wording = view.wording;
  std::vector<NoticeItem> items;
  for (const AskedOnSheet& asked : view.input.asked) {
    const bool is_sign = !signs_in_words(asked.words).empty();
    if (!is_sign && !names_the_vet(asked.words)) continue;
    const std::string ask = is_sign ? wording.say(Saying::ask_what_was_meant)
                                    : wording.say(BoxSaying::ask_what_vet_is_to_see);
    items.push_back({asked.cow, {{plain(as_sentence(asked.words))}, {plain(as_sentence(ask))}}});
  }
  return items;
}

/// That nobody leaves is read before any cow.
std::optional<Runs> standstill(const VisitView& view, const std::vector<CowForVet>& cows) {
  const bool is_told = !cows.empty() && cows.front().urgency == VetUrgency::reportable;
  if (!is_told) return std::nullopt;
  return Runs{strong(as_sentence(view.wording.say(Saying::nothing_leaves)))};
}

Saying title_of(const std::vector<CowForVet>& cows) {
  const bool is_later = cows.empty() || cows.front().urgency == VetUrgency::later;
  return is_later ? Saying::vet_title : Saying::vet_today_title;
}

/// "None was asked for" is not true of a visit at which he was, and came.
std::string nobody_waits_words(const VisitView& view) {
  const VisitId visit = view.input.visit.visit;
  const Rows& rows = view.input.rows;
  const bool is_in_hand =
      std::any_of(rows.actions.begin(), rows.actions.end(),
                  [visit](const ActionRow& row) {
                    const bool is_his = row.action == ActionKind::vet || row.by_whom == ByWhom::vet;
                    return row.visit == visit && is_his;
                  }) ||
      std::any_of(rows.tasks.begin(), rows.tasks.end(),
                  [visit](const TaskRow& task) { return task.visit == visit && is_for_vet(task); });
  return is_in_hand ? view.wording.say(BoxSaying::nobody_waits_for_vet)
                    : view.wording.say(Saying::no_vet);
}

}  // namespace

std::vector<Block> standstill_box(const VisitView& view) {
  const Wording& wording = view.wording;
  std::vector<std::string> who;
  for (const CowForVet& called : cows_for_vet(view)) {
    if (called.urgency == VetUrgency::reportable) who.push_back(notifiable_words(view, called.cow));
  }
  if (who.empty()) return {};
  BoxedNotice box{wording.say(BoxSaying::could_be_notifiable_title), {}, {}};
  const std::string words = wording.say(BoxSaying::standstill, {{"who", wording.list(who)}});
  box.items.push_back({"", {{strong(as_sentence(words))}}});
  return {std::move(box)};
}

bool is_vet_told_of_any(const VisitView& view) {
  return !cows_for_vet(view).empty() || !asked_items(view).empty();
}

bool is_vet_needed_today(const VisitView& view) {
  const std::vector<CowForVet> cows = cows_for_vet(view);
  return !cows.empty() && cows.front().urgency != VetUrgency::later;
}

std::vector<Block> vet_box(const VisitView& view) {
  const Wording& wording = view.wording;
  const std::vector<CowForVet> cows = cows_for_vet(view);
  std::vector<NoticeItem> asked = asked_items(view);
  const Saying title = asked.empty() ? title_of(cows) : Saying::vet_today_title;
  BoxedNotice box{wording.say(title), {}, {}};
  if (cows.empty() && asked.empty()) return {Paragraph{{plain(nobody_waits_words(view))}}};
  bool is_left_alone = false;
  for (const CowForVet& called : cows) {
    box.items.push_back(vet_item(view, called.cow));
    is_left_alone = is_left_alone || leaves_something_alone(view, called.cow);
  }
  std::move(asked.begin(), asked.end(), std::back_inserter(box.items));
  box.title_continued = wording.say(Saying::box_continued, {{"what", box.title}});
  box.foot = {plain(wording.say(Saying::vet_decides))};
  if (is_left_alone) box.foot.push_back(plain(' ' + wording.say(Saying::left_alone_status)));
  return {std::move(box)};
}

std::vector<Block> called_to(const VisitView& view) {
  const Wording& wording = view.wording;
  const std::vector<CowForVet> cows = cows_for_vet(view);
  Bullets bullets;
  if (auto lead = standstill(view, cows)) bullets.items.push_back(*std::move(lead));
  for (const auto& [cow, urgency] : cows) {
    const CowSeen* seen = find_cow(view, cow);
    const auto stops =
        seen == nullptr ? std::vector<const Warning*>() : open_vet_stops(view, *seen);
    std::vector<std::string> parts;
    for (const VetCall& call : vet_calls(view, cow)) {
      parts.push_back(where_called(call, wording) + ", " + call.why);
    }
    for (const Warning* stop : stops) {
      if (!is_told_by_sign(view, *seen, *stop)) parts.push_back(stop->words);
    }
    bullets.items.push_back(
        {strong(view.names.in_text(cow)), plain(": " + as_sentence(clauses(parts)))});
  }
  if (bullets.items.empty()) return {};
  return {Heading{3, wording.say(title_of(cows))}, std::move(bullets)};
}

}  // namespace evenclaw
