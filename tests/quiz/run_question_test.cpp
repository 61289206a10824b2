#include "small_bank.hpp"

#include "quiz/lettered.hpp"
#include "quiz/making/moment.hpp"
#include "quiz/making/posing.hpp"
#include "text/language.hpp"

namespace flapdoor::quiz {

namespace {

Question posed(const char* id) { return sound(pose(question_of(shipped_bank("sample"), id), workshop(), {"back-bedroom"}, 1)); }

}

TEST_CASE("the first fault of the hurried crew is the card that the marking names")
{
    const Question question = posed("first-fault");
    const auto& spot = std::get<SpotFault>(question.kind);
    const auto played = sound(workshop().play("back-bedroom", "careless", 1));
    const auto faults = card_faults(*played);
    REQUIRE_FALSE(faults.empty());
    int right = 0;
    for (const Option& option : spot.moments) {
        right += option.is_right;
        if (option.is_right) CHECK(option.id.text == "card-" + std::to_string(played->log.entries[static_cast<std::size_t>(faults.front().entry)].card + 1));
    }
    CHECK(right == 1);
    const std::string why = in_english(question.why); // names the rule, with its reason
    CHECK(why.find('{') == std::string::npos);
    CHECK(why.find(faults.front().rule->says) != std::string::npos);
    CHECK(why.find(faults.front().rule->reason) != std::string::npos);
    CHECK(spot.moments.size() == 6);
    CHECK(mark(question, right_response(question)).is_right);
}

TEST_CASE("the sheeting that was not misted goes wrong when it is folded")
{
    const Question question = posed("dry-folding");
    // Card 31 of the plan file, counted by hand: "Fold the sheeting".
    for (const Option& option : std::get<SpotFault>(question.kind).moments)
        if (option.is_right) CHECK(in_english(option.text).find("Fold the sheeting") != std::string::npos);
    CHECK(mark(question, right_response(question)).is_right);
}

TEST_CASE("a rule that the run keeps cannot be asked for")
{
    Question question = question_of(shipped_bank("sample"), "dry-folding");
    std::get<SpotFault>(question.kind).rule->text = "pamphlet-before-dust";
    const auto posed = pose(question, workshop(), {"back-bedroom"}, 1);
    REQUIRE_FALSE(posed.has_value());
    CHECK(told(posed.error()).find("a rule that a card of the run breaks") != std::string::npos);
}

TEST_CASE("predictions are judged by the medians of runs, with figures that say what they are not")
{
    for (const char* id : {"main-way-out", "more-on-the-sill"}) {
        INFO(id);
        const Question question = posed(id);
        const auto& predict = std::get<Predict>(question.kind);
        CHECK(predict.options.size() >= 3);
        CHECK(mark(question, right_response(question)).is_right);
        const std::string reveal = in_english(predict.reveal);
        CHECK(reveal.find("training model, not a clearance prediction") != std::string::npos);
        CHECK(reveal.find('{') == std::string::npos);
    }
    // What the hurried crew leaves on the sill is more: the plan neither covers nor wipes it well.
    const Question sill = posed("more-on-the-sill");
    CHECK(std::get<Chosen>(right_response(sill)).options == std::vector<std::string>{"careless"});
}

}
