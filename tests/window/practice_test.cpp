// Practice toward a field day in the window: whose plan, what is due, a session of it, and where the person then stands.
#include "look.hpp"
#include "played_shell.hpp"

#include "quiz/lettered.hpp"
#include "quiz/practice/outlook.hpp"
#include "quiz/practice/practice_file.hpp"
#include "quiz/practice/session.hpp"
#include "window/quiz/learners.hpp"
#include "window/quiz/practice_screen.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>

using namespace flapdoor;
using namespace flapdoor::window;
namespace fs = std::filesystem;

namespace {

constexpr quiz::Day first_day{20786}; // 2026-11-29

quiz::Attempt answered(quiz::Topic topic, int day, bool is_right, std::uint64_t seed)
{
    quiz::Attempt attempt;
    attempt.day = first_day + day;
    attempt.topic = topic;
    attempt.item = "sample/by-hand";
    attempt.seed = seed;
    attempt.is_right = is_right;
    return attempt;
}

/// The shipped questions and drills, a folder for what is kept, and a day that stands still.
struct Desk {
    fs::path root;
    Places places;
    std::unique_ptr<PlayedShell> played;

    explicit Desk(const std::string& name, float scale = 1.0F, Point size = {1440.0F, 900.0F}, const fs::path& under = fs::temp_directory_path()) : root(under / ("flapdoor-practice-" + name))
    {
        fs::remove_all(root);
        places = {FLAPDOOR_SOURCE_DIR "/scenarios", root / "own", "federal", "2026-11-29"};
        played = std::make_unique<PlayedShell>(places, scale, size);
    }
    ~Desk()
    {
        played.reset();
        fs::remove_all(root);
    }

    /// Somebody who has practised for two days: weak in one topic, good in another.
    void keep(const std::string& who)
    {
        quiz::Practice practice;
        practice.begun = first_day + -2;
        practice.field_day = first_day + 7;
        std::uint64_t seed = 1;
        for (int i = 0; i < 3; ++i) practice.attempts.push_back(answered(quiz::Topic::flap_door, -2, i == 0, seed++));
        for (int i = 0; i < 9; ++i) practice.attempts.push_back(answered(quiz::Topic::containment, -1, true, seed++));
        fs::create_directories(places.own / "practice");
        REQUIRE(quiz::save_practice(practice, practice_file(places, who).string()));
    }
    void open(const std::string& who = {})
    {
        played->go_to(quiz_start_screen(played->shell, who));
        REQUIRE(played->wait_until([&] { return !played->shell.is_moving(); }));
        played->settle();
    }
    const Spot* find(const std::string& name) { return played->find(name); }
    quiz::Practice kept(const std::string& who)
    {
        const auto practice = quiz::load_practice(practice_file(places, who).string());
        REQUIRE(practice);
        return *practice;
    }
    void type(const std::u32string& text)
    {
        played->stage.input.typed = text;
        played->stage.frame();
        played->settle();
    }
    bool waits_for(const std::string& name)
    {
        return played->wait_until([&] { return find(name) != nullptr; });
    }
};

std::string first_option(const PlayedShell& played)
{
    for (const Spot& spot : played.stage.ui->spots())
        if (spot.role == Role::choice && spot.name.rfind("answer/", 0) == 0) return spot.name;
    return {};
}

}

TEST_CASE("a learner's plan tells what is due today, which days come after, and what is weak first")
{
    Desk desk("plan");
    desk.keep("Ana");
    desk.open();
    CHECK(desk.find("practise") == nullptr); // nobody is chosen yet
    REQUIRE(desk.played->click("learner/Ana", "practice-plan"));
    REQUIRE(desk.played->wait_until([&] { return desk.find("practise") != nullptr; }));
    CHECK(desk.find("field-day")->value == "2026-12-06");
    CHECK(desk.find("who")->value == "Ana");

    const quiz::Practice practice = desk.kept("Ana");
    const auto pool = quiz::load_pool(quiz::scenarios_in(desk.places.scenarios.string()));
    REQUIRE(pool);
    // The topic with two misses stands first and is called weak; the days are those of the engine.
    const Spot* weak = desk.find("topic/flap-door");
    REQUIRE(weak != nullptr);
    CHECK(weak->value == "weak");
    for (const Spot& spot : desk.played->stage.ui->spots())
        if (spot.name.rfind("topic/", 0) == 0 && spot.name != "topic/flap-door") CHECK(spot.box.low.y > weak->box.low.y);
    CHECK(desk.find("topic/containment")->value == "on track");
    REQUIRE(desk.played->click("each/1", "practice-plan"));
    REQUIRE(desk.played->wait_until([&] { return desk.find("ahead/2026-11-29") != nullptr; }));
    CHECK(std::stoul(desk.find("ahead/2026-11-29")->value) * 3 == quiz::questions_left(desk.kept("Ana"), quiz::load_pool(quiz::scenarios_in(desk.places.scenarios.string()))->topics, first_day));
    REQUIRE(desk.played->click("each/3", "practice-plan"));
    REQUIRE(desk.played->wait_until([&] { return desk.find("practise") != nullptr && !desk.played->shell.is_moving(); }));
    desk.played->settle();
    const auto sessions = quiz::sessions_ahead(practice, pool->topics, first_day);
    REQUIRE(sessions.size() > 2);
    for (const quiz::SessionDay& session : sessions) {
        const Spot* row = desk.find("ahead/" + quiz::text_of(session.day));
        REQUIRE(row != nullptr);
        CHECK(row->value.rfind(std::to_string(session.questions) + " question", 0) == 0);
    }
    CHECK(desk.played->stage.ui->cut_words().empty());
}

TEST_CASE("what is due is practised by keyboard alone, each answer is told and kept, and the plan follows")
{
    Desk desk("keys");
    desk.open();
    REQUIRE(desk.played->walk_to("who"));
    desk.played->stage.press(Key::enter);
    desk.type(U"Ana");
    desk.played->stage.press(Key::tab);
    desk.played->settle();
    REQUIRE(desk.played->walk_to("field-day"));
    desk.played->stage.press(Key::enter);
    desk.type(U"2026-12-0");
    CHECK(desk.find("practise") == nullptr); // no date yet: nothing begins
    desk.type(U"6");
    desk.played->stage.press(Key::tab);
    REQUIRE(desk.played->press_on("practise"));
    REQUIRE(desk.waits_for("question-1"));
    CHECK(fs::exists(practice_file(desk.places, "Ana")));
    CHECK(desk.kept("Ana").field_day == first_day + 7);

    for (int i = 1; i <= 3; ++i) {
        REQUIRE(desk.waits_for("question-" + std::to_string(i)));
        if (first_option(*desk.played).empty()) REQUIRE(desk.played->press_on("leave-out"));
        else {
            desk.played->stage.press(Key::a);
            desk.played->stage.press(Key::enter);
        }
        desk.played->settle();
        REQUIRE(desk.find("go-on") != nullptr); // how it came out is told
        CHECK(desk.kept("Ana").attempts.size() == static_cast<std::size_t>(i));
        desk.played->stage.press(Key::enter);
        desk.played->settle();
    }
    const quiz::Practice practice = desk.kept("Ana");
    CHECK(std::all_of(practice.attempts.begin(), practice.attempts.end(), [](const quiz::Attempt& a) { return a.day == first_day; }));
    CHECK(practice.attempts[0].topic != practice.attempts[1].topic); // topics take turns
    desk.played->stage.press(Key::escape);
    REQUIRE(desk.waits_for("practise"));
    CHECK(desk.find("who")->value == "Ana");
}

TEST_CASE("a missed topic comes again within the session, and the end is told")
{
    Desk desk("session");
    quiz::Practice practice;
    practice.begun = first_day;
    practice.each = 1;
    std::uint64_t seed = 1;
    // All topics but three were asked today already.
    const auto pool = quiz::load_pool(quiz::scenarios_in(desk.places.scenarios.string()));
    REQUIRE(pool);
    for (std::size_t i = 3; i < pool->topics.size(); ++i) practice.attempts.push_back(answered(pool->topics[i], 0, true, seed++));
    const std::size_t due = quiz::questions_left(practice, pool->topics, first_day);
    REQUIRE(due == 3);
    auto shared = std::make_shared<const quiz::PracticePool>(std::move(*quiz::load_pool(quiz::scenarios_in(desk.places.scenarios.string()))));
    desk.played->go_to(practice_screen(desk.played->shell, "Ana", practice, shared));
    REQUIRE(desk.waits_for("question-1"));
    CHECK(desk.find("result")->label == "1 / 3");
    REQUIRE(desk.played->press_on("leave-out")); // a miss
    desk.played->settle();
    CHECK(desk.kept("Ana").attempts.size() == pool->topics.size() - 2);
    CHECK_FALSE(desk.kept("Ana").attempts.back().is_right);
    desk.played->stage.press(Key::enter);
    REQUIRE(desk.waits_for("question-2"));
    const std::string told = desk.find("result")->label;
    CHECK(told.rfind("2 / ", 0) == 0);
    CHECK(std::stoi(told.substr(4)) > 3); // it is asked again
}

TEST_CASE("by mouse a session goes from the first screen to an answer that is explained")
{
    Desk desk("mouse");
    desk.keep("Ana");
    desk.played->go_to(start_screen(desk.played->shell));
    REQUIRE(desk.played->click("questions", "choices"));
    REQUIRE(desk.waits_for("learner/Ana"));
    REQUIRE(desk.played->click("learner/Ana", "practice-plan"));
    REQUIRE(desk.waits_for("practise"));
    REQUIRE(desk.played->click("practise", "practice-plan"));
    REQUIRE(desk.waits_for("question-1"));
    const std::string option = first_option(*desk.played);
    if (!option.empty()) REQUIRE(desk.played->click(option, "question-1"));
    desk.played->stage.click(desk.find("give")->is_enabled ? "give" : "leave-out");
    desk.played->settle();
    CHECK(desk.find("go-on") != nullptr);
    CHECK(desk.kept("Ana").attempts.size() == 13);
    desk.played->stage.click("back");
    desk.played->settle();
    CHECK(desk.find("practice-plan") != nullptr);
}

TEST_CASE("names that no file can have, damaged files and a clock that runs behind are told and keep nothing from working")
{
    CHECK(is_learner_name("Ana 2"));
    CHECK(is_learner_name("Jos\xC3\xA9"));
    for (const char* bad : {"", " Ana", "Ana ", "../Ana", "a/b", "a.b", "what?"}) CHECK_FALSE(is_learner_name(bad));
    CHECK_FALSE(is_learner_name(std::string(41, 'a')));

    Desk desk("damaged");
    fs::create_directories(desk.places.own / "practice");
    std::ofstream(practice_file(desk.places, "Bo")) << "format = 1\nbegun = \"2026-1";
    quiz::Practice ahead;
    ahead.begun = first_day + 3;
    REQUIRE(quiz::save_practice(ahead, practice_file(desk.places, "Cy").string()));
    desk.open("Bo");
    CHECK(desk.find("practise") == nullptr);
    CHECK(desk.find("paper/short") != nullptr);
    REQUIRE(desk.played->click("learner/Cy", "practice-plan"));
    desk.played->settle();
    CHECK(desk.find("practise") == nullptr);
    std::ifstream stays(practice_file(desk.places, "Bo"));
    CHECK(stays.good());
}

TEST_CASE("questions that do not read are told, and the papers stay")
{
    Desk desk("broken-bank");
    fs::create_directories(desk.root / "scenarios/banks");
    std::ofstream(desk.root / "scenarios/banks/a.toml") << "format = 1\nid = \"a\nquest";
    Places broken = desk.places;
    broken.scenarios = desk.root / "scenarios";
    PlayedShell played(broken);
    played.stage.ui->keep_drawn_words();
    played.go_to(quiz_start_screen(played.shell, "Ana"));
    REQUIRE(played.wait_until([&] { return !played.shell.is_moving(); }));
    played.settle();
    const auto& drawn = played.stage.ui->drawn_words();
    CHECK(std::any_of(drawn.begin(), drawn.end(), [](const std::string& text) { return text.find("a.toml:2") != std::string::npos; }));
    CHECK(played.find("practise") == nullptr);
}

TEST_CASE("the plan shows its words whole at every text size in both languages, and looks as it did")
{
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        text::speak(language, FLAPDOOR_CATALOGS);
        for (const float scale : {1.0F, 1.5F, 2.0F})
            for (const Point size : {Point{1280.0F, 800.0F}, Point{1024.0F, 700.0F}}) {
                Desk desk("fit", scale, size, "."); // the picture shows where answers are kept
                desk.keep("Ana");
                desk.open("Ana");
                INFO(scale << ", " << size.x << ", " << text::code_of(language));
                CHECK(desk.played->stage.ui->cut_words() == std::vector<std::string>{});
                REQUIRE(desk.find("practise") != nullptr);
                CHECK(desk.find("practise")->box.high.x <= size.x);
                if (scale == 1.0F && size.x == 1280.0F) compare(desk.played->stage.ui->picture_of_frame(), "quiz-start-" + std::string(text::code_of(language)));
            }
    }
    text::speak(text::Language::english);
}
