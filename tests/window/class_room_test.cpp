// A class votes: what may come next, where the dust will go.
#include "look.hpp"
#include "played_run.hpp"

#include "window/class_room/class_room.hpp"

#include "text/language.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

std::shared_ptr<const Story> careful_story()
{
    static const auto story = [] {
        const debrief::Inputs inputs = inputs_of_the_house("good.toml");
        return std::make_shared<const Story>(tell(inputs, debrief::carry_through(inputs, 1, true)));
    }();
    return story;
}

struct Lesson {
    ClassRoom room{careless_story(), inputs_of_the_house("good.toml"), 1};
    Rehearsal stage;

    explicit Lesson(float scale = 1.5F, Point size = {1280.0F, 800.0F}) : stage([this](Ui& ui) { room.play(ui, ui.screen().inset(ui.px(8.0F)), true); }, scale)
    {
        room.careful().wait();
        stage.input.size = size;
        settle();
    }
    void settle()
    {
        for (int i = 0; i < 3; ++i) stage.frame();
    }
    void go_to(double hour)
    {
        room.playback().go_to(Time{hour * 3600.0});
        settle();
    }
    int votes(std::size_t answer) const { return room.question()->answers[answer].votes; }
};

}

TEST_CASE("every answer to what may come next is what the rule book says of the careful plan")
{
    const Story& careful = *careful_story();
    // Playing the careful plan itself: at any time the card that comes next is among the right ones, and a wrong one names
    // a card that is still to be done.
    std::size_t asked = 0, wrong = 0;
    for (std::size_t i = 0; i + 1 < careful.log.entries.size(); i += 5) {
        const auto question = what_next(careful, careful, careful.log.entries[i].end);
        if (!question) continue;
        ++asked;
        const auto& answers = question->answers;
        CHECK(std::any_of(answers.begin(), answers.end(), [](const ClassAnswer& a) { return a.is_right; }));
        CHECK(answers.size() <= 4);
        std::set<std::string> labels;
        for (const ClassAnswer& a : answers) {
            CHECK(labels.insert(a.label.english()).second);
            CHECK_FALSE(a.reason.empty());
            if (a.is_right) continue;
            ++wrong;
            CHECK(a.reason.english().find("First: ") == 0);
        }
    }
    CHECK(asked > 4);
    CHECK(wrong > asked);
}

TEST_CASE("before anything is covered, work on the paint is a wrong answer wherever it is offered")
{
    const Story& careful = *careful_story();
    const auto question = what_next(careful, careful, careful.start + 1.0_s);
    REQUIRE(question);
    for (const ClassAnswer& a : question->answers)
        if (a.name.find("disturb-paint") == 0) CHECK_FALSE(a.is_right);
}

TEST_CASE("where the dust will go is read off the run: zones that gain lead until then")
{
    const Story& careless = *careless_story();
    const auto sanding = std::find_if(careless.log.entries.begin(), careless.log.entries.end(), [](const job::LogEntry& e) { return e.step == "disturb-paint"; });
    REQUIRE(sanding != careless.log.entries.end());
    const ClassQuestion question = where_will_it_go(careless, sanding->start);
    const drill::Frame& before = careless.film.at(sanding->start);
    const drill::Frame& after = careless.film.at(std::max(sanding->end, sanding->start + 10.0_min));
    for (const ClassAnswer& a : question.answers) {
        if (a.name == "stays") continue;
        const auto zone = static_cast<std::size_t>(std::find_if(careless.film.zones.begin(), careless.film.zones.end(), [&](const job::Zone& z) { return z.id.name == a.name; }) - careless.film.zones.begin());
        REQUIRE(zone < careless.film.zones.size());
        const double gain = lead_in_zone(careless, after, zone) - lead_in_zone(careless, before, zone);
        if (a.is_right) CHECK(gain >= 1.0);
    }
    CHECK(std::any_of(question.answers.begin(), question.answers.end(), [](const ClassAnswer& a) { return a.is_right; }));
    // Before any work nothing moves.
    const ClassQuestion quiet = where_will_it_go(*careful_story(), careful_story()->start);
    CHECK(quiet.answers.front().name == "stays");
    CHECK(quiet.answers.front().is_right);
}

TEST_CASE("a lesson by mouse: freeze, vote, reveal, play on")
{
    Lesson lesson;
    lesson.go_to(9.9);
    lesson.stage.click("ask-where");
    lesson.settle();
    REQUIRE(lesson.room.question());
    CHECK_FALSE(lesson.room.playback().is_playing());
    CHECK(lesson.stage.ui->find("class-play") == nullptr); // the day stands still
    const std::string first = "answer/" + lesson.room.question()->answers[0].name;
    lesson.stage.click(lesson.stage.ui->find(first)->box.low + Point{60.0F, 30.0F});
    lesson.stage.click(lesson.stage.ui->find(first)->box.low + Point{60.0F, 30.0F});
    CHECK(lesson.votes(0) == 2);
    lesson.stage.click("less/" + lesson.room.question()->answers[0].name);
    CHECK(lesson.votes(0) == 1);
    lesson.stage.ui->focus_on("reveal");
    lesson.settle();
    lesson.stage.click("reveal");
    lesson.settle();
    CHECK(lesson.room.question()->is_revealed);
    lesson.stage.click(lesson.stage.ui->find(first)->box.low + Point{60.0F, 30.0F});
    CHECK(lesson.votes(0) == 1); // the vote is over
    lesson.stage.ui->focus_on("play-on");
    lesson.settle();
    lesson.stage.click("play-on");
    CHECK_FALSE(lesson.room.question());
    CHECK(lesson.room.playback().is_playing());
}

TEST_CASE("a lesson by keyboard alone: N asks, digits vote or are typed, R reveals, Space plays on")
{
    Lesson lesson;
    lesson.go_to(9.0);
    lesson.stage.press(Key::n);
    lesson.settle();
    REQUIRE(lesson.room.question());
    lesson.stage.press(Key::digit_2);
    lesson.stage.press(Key::digit_2);
    lesson.stage.press(Key::digit_1);
    CHECK(lesson.votes(1) == 2);
    CHECK(lesson.votes(0) == 1);
    lesson.stage.press(Key::digit_2, {.shift = true});
    CHECK(lesson.votes(1) == 1);
    // Typed onto an answer that the keyboard is on.
    lesson.stage.ui->focus_on("answer/" + lesson.room.question()->answers[1].name);
    lesson.settle();
    for (const auto& [key, letter] : {std::pair{Key::digit_1, U'1'}, std::pair{Key::digit_4, U'4'}}) {
        lesson.stage.input.typed = std::u32string(1, letter);
        lesson.stage.press(key);
    }
    CHECK(lesson.votes(1) == 14);
    CHECK(lesson.votes(0) == 1);
    lesson.stage.press(Key::r);
    CHECK(lesson.room.question()->is_revealed);
    lesson.stage.press(Key::space);
    CHECK(lesson.room.playback().is_playing());
}

TEST_CASE("on a wall the question, its answers and what ends it are seen at once, before and after the reveal")
{
    for (const Point size : {Point{1280.0F, 736.0F}, Point{1920.0F, 1008.0F}}) // what the head of the screen leaves of 800 and 1080
        for (const text::Language language : {text::Language::english, text::Language::spanish}) {
            text::speak(language, FLAPDOOR_CATALOGS);
            Lesson lesson(1.5F, size);
            lesson.go_to(9.9);
            for (const Key ask : {Key::n, Key::w}) {
                lesson.stage.press(ask);
                lesson.settle();
                INFO(size.x << " " << text::code_of(language) << (ask == Key::n ? " next" : " where"));
                REQUIRE(lesson.room.question());
                const auto is_seen = [&](const std::string& name) {
                    const Spot* spot = lesson.stage.ui->find(name);
                    return spot != nullptr && spot->box.low.y >= 0.0F && spot->box.high.y <= lesson.stage.ui->find("votes-foot")->box.low.y + (name == "reveal" || name == "play-on" ? 200.0F : 0.0F);
                };
                for (const ClassAnswer& answer : lesson.room.question()->answers) CHECK(is_seen("answer/" + answer.name));
                CHECK(is_seen("reveal"));
                lesson.stage.press(Key::r);
                lesson.settle();
                CHECK(is_seen("play-on"));
                if (ask == Key::n)
                    for (const ClassAnswer& answer : lesson.room.question()->answers) CHECK(is_seen("answer/" + answer.name));
                lesson.room.drop_question();
                lesson.settle();
            }
        }
    text::speak(text::Language::english);
}

TEST_CASE("a class votes again after talking it over: the first count stays beside the second")
{
    Lesson lesson;
    lesson.go_to(9.9);
    lesson.stage.press(Key::n);
    lesson.settle();
    CHECK_FALSE(lesson.stage.ui->find("vote-again")->is_enabled); // nobody voted yet
    for (int i = 0; i < 3; ++i) lesson.stage.press(Key::digit_1);
    lesson.stage.press(Key::digit_2);
    lesson.settle();
    lesson.stage.click("vote-again");
    lesson.settle();
    CHECK(lesson.votes(0) == 0);
    CHECK(lesson.room.question()->answers[0].first_votes == 3);
    CHECK(lesson.room.question()->first_votes() == 4);
    lesson.stage.press(Key::digit_2);
    lesson.stage.press(Key::v); // only once
    CHECK(lesson.votes(1) == 1);
    CHECK(lesson.room.question()->answers[1].first_votes == 1);
    lesson.settle();
    CHECK(lesson.stage.ui->find("votes/count")->label == "1 vote, first 4");
    lesson.stage.press(Key::r);
    CHECK(lesson.room.question()->is_revealed);
}

TEST_CASE("a class screen cuts no words at 100, 150 and 200 % in both languages")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        text::speak(language, FLAPDOOR_CATALOGS);
        for (const float scale : {1.0F, 1.5F, 2.0F}) {
            INFO("scale " << scale << ", " << text::code_of(language));
            Lesson lesson(scale);
            lesson.go_to(9.9);
            CHECK(lesson.stage.ui->cut_words() == std::vector<std::string>{});
            for (const Key ask : {Key::n, Key::w}) {
                lesson.stage.press(ask);
                lesson.settle();
                CHECK(lesson.stage.ui->cut_words() == std::vector<std::string>{});
                lesson.stage.press(Key::r);
                lesson.settle();
                CHECK(lesson.stage.ui->cut_words() == std::vector<std::string>{});
            }
        }
    }
    text::speak(text::Language::english);
}

TEST_CASE("a second vote on a large wall looks as it did")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        text::speak(language, FLAPDOOR_CATALOGS);
        Lesson lesson(1.5F, {1920.0F, 1080.0F});
        lesson.go_to(9.75);
        lesson.stage.press(Key::w);
        lesson.settle();
        for (int i = 0; i < 5; ++i) lesson.stage.press(Key::digit_1);
        for (int i = 0; i < 3; ++i) lesson.stage.press(Key::digit_2);
        lesson.stage.press(Key::v);
        for (int i = 0; i < 6; ++i) lesson.stage.press(Key::digit_2);
        lesson.stage.press(Key::digit_3);
        lesson.settle();
        compare(lesson.stage.ui->picture_of_frame(), "class-wall-" + std::string(text::code_of(language)));
    }
    text::speak(text::Language::english);
}

TEST_CASE("the class screen looks as it did")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        text::speak(language, FLAPDOOR_CATALOGS);
        Lesson lesson;
        lesson.go_to(9.9);
        lesson.stage.press(Key::n);
        lesson.settle();
        for (int i = 0; i < 3; ++i) lesson.stage.press(Key::digit_1);
        lesson.stage.press(Key::digit_2);
        lesson.stage.press(Key::r);
        lesson.settle();
        compare(lesson.stage.ui->picture_of_frame(), "class-" + std::string(text::code_of(language)));
    }
    text::speak(text::Language::english);
}
