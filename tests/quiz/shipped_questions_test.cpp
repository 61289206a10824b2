#include "small_bank.hpp"

#include "core/fields.hpp"

#include <map>
#include <set>
#include <variant>

namespace flapdoor::quiz {

namespace {

std::vector<Question> all_questions()
{
    std::vector<Question> all;
    for (const std::string& path : shipped_banks())
        for (Question& question : sound(load_bank(path, shipped_scenarios())).questions) all.push_back(std::move(question));
    return all;
}

}

TEST_CASE("the shipped banks ask at least 120 questions, five or more on every topic of the trade, on all levels")
{
    std::map<Topic, int> topics;
    std::map<Level, int> levels;
    int asked = 0;
    for (const Question& question : all_questions()) {
        if (std::holds_alternative<Generated>(question.kind)) continue;
        ++asked;
        ++topics[question.topic];
        ++levels[question.level];
    }
    CHECK(asked >= 120);
    for (std::size_t i = 0; i < Words<Topic>::words.size(); ++i) {
        if (static_cast<Topic>(i) == Topic::other) continue;
        INFO(Words<Topic>::words[i]);
        CHECK(topics[static_cast<Topic>(i)] >= 5);
    }
    for (const Level level : {Level::know, Level::apply, Level::judge}) CHECK(levels[level] >= 20);
}

TEST_CASE("every shipped question names where its answer stands, and that it is the trade's habit where nothing says so")
{
    for (const Question& question : all_questions()) {
        INFO(question.id.text);
        CHECK_FALSE(question.cite.empty());
        CHECK_FALSE(question.why.en.empty());
    }
}

TEST_CASE("the right option of a shipped question is not told by its length")
{
    // A trainee who always takes the longest answer must not get far: chance alone gives about a third.
    int longest_is_right = 0, asked = 0;
    for (const Question& question : all_questions()) {
        const ChooseOne* one = std::get_if<ChooseOne>(&question.kind);
        if (one == nullptr) continue;
        ++asked;
        const auto longest = std::max_element(one->options.begin(), one->options.end(),
                                              [](const Option& a, const Option& b) { return a.text.en.size() < b.text.en.size(); });
        longest_is_right += longest->is_right ? 1 : 0;
    }
    INFO(longest_is_right << " of " << asked);
    CHECK(asked > 80);
    CHECK(longest_is_right * 2 < asked);
}

}
