#include "quiz/practice/choosing.hpp"

#include "../small_bank.hpp"
#include "practices.hpp"

namespace flapdoor::quiz {

namespace {

struct Pool {
    Bank bank = shipped_bank("sample");
    std::vector<PoolItem> items;

    Pool()
    {
        for (const Question& question : bank.questions) items.push_back({"sample/" + question.id.text, &question});
    }
};

}

TEST_CASE("topics of a pool come once each, in their own order")
{
    const Pool pool;
    const auto topics = topics_of(pool.items);
    CHECK(topics.size() > 1);
    CHECK(std::is_sorted(topics.begin(), topics.end()));
    CHECK(std::adjacent_find(topics.begin(), topics.end()) == topics.end());
}

TEST_CASE("the question that was asked least comes first, then the one asked longest ago")
{
    const Question a = question_of(shipped_bank("sample"), "floor-reach");
    const std::vector<PoolItem> pool{{"x/a", &a}, {"x/b", &a}, {"x/c", &a}};
    Practice practice = toward(7);
    const auto first = [&] { return by_turn(practice, pool, a.topic).front().item; };
    CHECK(first() == "x/a");
    for (const char* item : {"x/a", "x/b"}) {
        add(practice, a.topic, 0, true);
        practice.attempts.back().item = item;
    }
    CHECK(first() == "x/c");
    add(practice, a.topic, 0, true);
    practice.attempts.back().item = "x/c";
    CHECK(first() == "x/a");
    CHECK(by_turn(practice, pool, Topic::other).empty());
}

TEST_CASE("an answer is kept with what it tells")
{
    const Question question = question_of(shipped_bank("sample"), "floor-reach");
    const Attempt attempt = attempt_of({"sample/floor-reach", &question}, question, 3, Chosen{{"six"}}, first_day);
    CHECK(attempt.is_right);
    CHECK(attempt.topic == question.topic);
    CHECK(attempt.guess == Approx(1.0 / 3.0));
    CHECK_FALSE(attempt_of({"sample/floor-reach", &question}, question, 3, LeftOut{}, first_day).is_right);
}

TEST_CASE("an order that breaks a critical rule is told from one that breaks another")
{
    Question question;
    PutInOrder asked;
    for (const char* id : {"a", "b", "c"}) asked.cards.push_back({{id, {}}, phrase(id)});
    asked.rules.push_back({{{"a", {}}, {"b", {}}}, phrase("x"), 3, true});
    asked.rules.push_back({{{"b", {}}, {"c", {}}}, phrase("x"), 3, false});
    question.kind = asked;
    CHECK(breaks_critical(question, Laid{{"b", "a", "c"}}));
    CHECK_FALSE(breaks_critical(question, Laid{{"a", "c", "b"}}));
    CHECK_FALSE(breaks_critical(question, LeftOut{}));
    CHECK(guess_of(question) == 0.05);
}

}
