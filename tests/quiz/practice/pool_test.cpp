#include "quiz/practice/pool.hpp"

#include "../small_bank.hpp"
#include "practices.hpp"

#include "quiz/lettered.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace flapdoor::quiz {

TEST_CASE("practice may ask every question of every shipped bank")
{
    const PracticePool pool = sound(load_pool(shipped_scenarios()));
    std::size_t questions = 0;
    for (const std::string& file : shipped_banks()) questions += sound(load_bank(file, shipped_scenarios())).questions.size();
    CHECK(pool.items.size() == questions);
    CHECK(std::is_sorted(pool.topics.begin(), pool.topics.end()));
    for (const PoolItem& one : pool.items) CHECK(std::find(pool.topics.begin(), pool.topics.end(), one.question->topic) != pool.topics.end());
}

TEST_CASE("a bank that does not read is told, and nothing is practised from the others")
{
    namespace fs = std::filesystem;
    const fs::path folder = fs::temp_directory_path() / "flapdoor-pool-test";
    fs::remove_all(folder);
    fs::create_directories(folder / "banks");
    std::ofstream(folder / "banks/a.toml") << "format = 1\nid = \"a\nquest";
    const auto pool = load_pool(scenarios_in(folder.string()));
    REQUIRE_FALSE(pool.has_value());
    CHECK(told(pool.error()).find("a.toml:2") != std::string::npos);
    fs::remove_all(folder);
}

TEST_CASE("the next question of a topic is one that was not asked yet, with figures of its own")
{
    const PracticePool pool = sound(load_pool(shipped_scenarios()));
    Workshop workshop(scenario_folder);
    Practice practice = toward(7);
    const auto first = question_of(practice, pool.items, Topic::containment, workshop);
    REQUIRE(first);
    CHECK(first->from.question->topic == Topic::containment);
    CHECK(first->item.seed == 1);
    CHECK_FALSE(std::holds_alternative<Generated>(first->item.question.kind)); // its blanks are filled
    practice.attempts.push_back(attempt_of(first->from, first->item.question, first->item.seed, right_response(first->item.question), first_day));
    const auto second = question_of(practice, pool.items, Topic::containment, workshop);
    REQUIRE(second);
    CHECK(second->item.item != first->item.item);
    CHECK(second->item.seed == 2);
    CHECK_FALSE(question_of(practice, {}, Topic::containment, workshop)); // there is none
}

}
