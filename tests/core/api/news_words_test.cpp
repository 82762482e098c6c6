#include "core/api/news_words.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

CowPast with_two_tasks() {
  CowPast past;
  past.rows.tasks.resize(2);
  past.rows.tasks[0].task = TaskId{uuid_derived("one")};
  past.rows.tasks[0].words = "block check right hind";
  past.rows.tasks[1].task = TaskId{uuid_derived("two")};
  past.rows.tasks[1].words = "block off right hind";
  return past;
}

std::vector<TaskClosed> both_of(const CowPast& past) {
  return {{past.rows.tasks[0].task, "gone"}, {past.rows.tasks[1].task, "gone"}};
}

TaskMade look() {
  TaskMade made;
  made.words = "still lame, look at her feet";
  return made;
}

}  // namespace

TEST_CASE("news names the tasks it closed and those it made") {
  const CowPast past = with_two_tasks();
  CHECK(words_of_effect(News::gone, both_of(past), {}, past) ==
        "closed: block check right hind; block off right hind");
  CHECK(words_of_effect(News::still_lame, {}, {look()}, past) ==
        "to do: still lame, look at her feet");
  CHECK(words_of_effect(News::still_lame, {both_of(past)[0]}, {look()}, past) ==
        "closed: block check right hind; to do: still lame, look at her feet");
}

TEST_CASE("news that changes no task says so, and why") {
  CHECK(words_of_effect(News::wrap_still_on, {}, {}, {}) == "noted");
  CHECK(words_of_effect(News::still_lame, {}, {}, {}) == "noted; she is to be looked at already");
  CHECK(words_of_effect(News::vet_came, {}, {}, {}) == "noted; nothing of hers was waiting for it");
}
