#include "rehearsal.hpp"

#include "window/quiz/quiz_screen.hpp"

#include "quiz/bank.hpp"
#include "quiz/lettered.hpp"
#include "quiz/making/posing.hpp"

#include "text/language.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

const std::string scenarios = FLAPDOOR_SOURCE_DIR "/scenarios";

quiz::Paper paper_of(std::initializer_list<const char*> ids, quiz::Feedback feedback)
{
    static const quiz::Bank bank = quiz::load_bank(scenarios + "/banks/sample.toml", quiz::scenarios_in(scenarios)).value();
    quiz::Paper paper{"by-hand", {"By hand", {}, {}, {}}, 1, feedback, {}, {}};
    for (const char* id : ids) paper.items.push_back({std::string("sample/") + id, 1, *quiz::find_question(bank, id)});
    return paper;
}

/// Questions about runs, which are carried out for them.
quiz::Paper paper_of_runs(std::initializer_list<const char*> ids, quiz::Feedback feedback)
{
    static quiz::Workshop workshop(scenarios);
    quiz::Paper paper = paper_of(ids, feedback);
    for (quiz::PaperItem& item : paper.items) item.question = quiz::pose(item.question, workshop, {"back-bedroom"}, 1).value();
    return paper;
}

/// Place of the right answer, or of the first wrong one.
std::size_t place_of(const quiz::Question& question, bool is_right)
{
    const std::vector<quiz::Lettered> list = quiz::lettered(question);
    return static_cast<std::size_t>(std::find_if(list.begin(), list.end(), [&](const quiz::Lettered& one) { return one.is_right == is_right; }) - list.begin());
}

Key letter_key(std::size_t place) { return static_cast<Key>(static_cast<int>(Key::a) + static_cast<int>(place)); }

/// A screen on its stage, with what it kept.
struct Sat {
    std::shared_ptr<std::size_t> kept = std::make_shared<std::size_t>(0);
    std::shared_ptr<QuizScreen> screen;
    Rehearsal stage;

    explicit Sat(const quiz::Paper& paper, quiz::SittingResult sitting)
        : screen(std::make_shared<QuizScreen>(paper, std::move(sitting), [kept = kept](const quiz::SittingResult& now) { *kept = now.answers.size(); })),
          stage([screen = screen](Ui& ui) { screen->play(ui, ui.screen()); })
    {
        stage.input.size = {1100.0F, 800.0F};
        stage.frame();
        stage.frame();
    }
    explicit Sat(const quiz::Paper& paper) : Sat(paper, quiz::begin_sitting(paper, "p", "2026-11-29T10:00:00Z")) {}

    void type(const std::u32string& text)
    {
        stage.input.typed = text;
        stage.frame();
        stage.frame();
    }
    const quiz::Answered& last() const { return screen->sitting().answers.back(); }
};

}

TEST_CASE("a paper is sat by keyboard alone, kind by kind, and each answer is kept")
{
    Sat sat(paper_of({"floor-reach", "barred-always", "largest-single-surface", "flap-door-place", "sheeting-up"}, quiz::Feedback::after));
    sat.stage.press(Key::a);
    sat.stage.press(Key::enter);
    REQUIRE(sat.screen->sitting().answers.size() == 1);
    CHECK(*sat.kept == 1);
    CHECK(sat.last().is_right);

    sat.stage.press(Key::a);
    sat.stage.press(Key::b);
    sat.stage.press(Key::c);
    sat.stage.press(Key::c);
    sat.stage.press(Key::enter);
    CHECK(sat.last().is_right);

    sat.stage.ui->focus_on("answer");
    sat.stage.frame();
    sat.stage.press(Key::enter);
    sat.type(U"3.72 m2");
    sat.stage.press(Key::enter);
    sat.stage.press(Key::tab);
    sat.stage.press(Key::enter);
    REQUIRE(sat.screen->sitting().answers.size() == 3);
    CHECK(sat.last().is_right);

    sat.stage.press(Key::a);
    sat.stage.press(Key::enter);
    CHECK(sat.last().is_right);

    sat.stage.press(Key::enter);
    CHECK(sat.last().is_right);
    CHECK(sat.screen->sitting().is_finished);
    CHECK(sat.stage.ui->find("results") != nullptr);
    CHECK(sat.stage.ui->cut_words().empty());
}

TEST_CASE("practice tells at once how an answer came out, and goes on with Enter")
{
    Sat sat(paper_of({"floor-reach", "wipes-by-whom"}, quiz::Feedback::at_once));
    sat.stage.press(Key::b);
    sat.stage.press(Key::enter);
    CHECK_FALSE(sat.last().is_right);
    CHECK(sat.stage.ui->find("go-on") != nullptr);
    CHECK(sat.stage.ui->find("give") == nullptr);
    sat.stage.press(Key::a);        // it is too late to change
    sat.stage.press(Key::enter);
    CHECK(sat.screen->sitting().answers.size() == 1);
    CHECK(sat.last().response == quiz::Response{quiz::Chosen{{"two"}}});
    CHECK(sat.stage.ui->find("question-2") != nullptr);
}

TEST_CASE("by mouse: options, buttons and the plan")
{
    Sat sat(paper_of({"floor-reach", "flap-door-place", "wipes-by-whom"}, quiz::Feedback::after));
    CHECK_FALSE(sat.stage.ui->find("give")->is_enabled);
    sat.stage.click("answer/six");
    CHECK(sat.stage.ui->find("give")->is_enabled);
    sat.stage.click("give");
    CHECK(sat.last().is_right);

    sat.stage.frame();
    // The door in the east wall: letter A stands on it, so the plan is pointed at where the key's region is.
    const Box plan = sat.stage.ui->find("plan")->box;
    sat.stage.click(plan.center());
    sat.stage.click("give");
    const auto* pointed = std::get_if<quiz::Pointed>(&sat.last().response);
    REQUIRE(pointed != nullptr);
    CHECK(pointed->region.empty());
    // The middle of the plan is the middle of what it shows: bedroom, hall and closet, 0 to 13.5 ft and -2.5 to 16 ft, and an arch.
    CHECK(std::fabs((pointed->x - 6.75_ft) / 1.0_ft) < 1.5);
    CHECK(std::fabs((pointed->y - 6.75_ft) / 1.0_ft) < 1.5);
    sat.stage.frame();
    sat.stage.click("leave-out");
    CHECK(std::holds_alternative<quiz::LeftOut>(sat.last().response));
}

TEST_CASE("predictions and faults to spot are answered by keyboard alone, marked and explained")
{
    const quiz::Paper paper = paper_of_runs({"first-fault", "main-way-out"}, quiz::Feedback::at_once);
    Sat sat(paper);
    sat.stage.ui->keep_drawn_words();
    const auto draws = [&](const std::string& words) {
        const auto& drawn = sat.stage.ui->drawn_words();
        return std::any_of(drawn.begin(), drawn.end(), [&](const std::string& text) { return text.find(words) != std::string::npos; });
    };
    // The wrong step first: the miss is told, the right step named, with the reason and the paragraph.
    const quiz::Question& spot = paper.items[0].question;
    sat.stage.press(letter_key(place_of(spot, false)));
    sat.stage.press(Key::enter);
    sat.stage.frame();
    CHECK_FALSE(sat.last().is_right);
    CHECK(draws("Not right."));
    CHECK(draws("Nothing is broken with that step yet."));
    CHECK(draws("Right: " + quiz::key_text(spot)));
    CHECK(draws("40 CFR 745.85(a)"));
    const std::string right_step = "answer/" + quiz::lettered(spot)[place_of(spot, true)].id;
    CHECK(sat.stage.ui->find(right_step)->value == "right answer");
    CHECK(sat.stage.ui->find("answer/" + quiz::lettered(spot)[place_of(spot, false)].id)->value == "not right");
    sat.stage.press(Key::enter);
    // What the run shows is not told before the prediction, and told with its figures after it.
    const quiz::Question& predict = paper.items[1].question;
    sat.stage.frame();
    CHECK_FALSE(draws("training model, not a clearance prediction."));
    sat.stage.press(letter_key(place_of(predict, true)));
    sat.stage.press(Key::enter);
    sat.stage.frame();
    CHECK(sat.last().is_right);
    CHECK(draws("training model, not a clearance prediction."));
    CHECK(draws("the medians over several seeds decide"));
    sat.stage.press(Key::enter);
    CHECK(sat.screen->sitting().is_finished);
    CHECK(sat.stage.ui->find("results") != nullptr);
    CHECK(sat.stage.ui->cut_words().empty());
}

TEST_CASE("predictions and faults to spot are answered by mouse, and shown whole in both languages at every text size")
{
    const quiz::Paper paper = paper_of_runs({"dry-folding", "more-on-the-sill"}, quiz::Feedback::at_once);
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        text::speak(language, FLAPDOOR_CATALOGS);
        for (const float scale : {1.0F, 1.5F, 2.0F}) {
            INFO(scale << ", " << text::code_of(language));
            Sat sat(paper);
            sat.stage.ui->set_text_scale(scale);
            for (std::size_t i = 0; i < paper.items.size(); ++i) {
                sat.stage.frame();
                sat.stage.frame();
                CHECK(sat.stage.ui->cut_words() == std::vector<std::string>{});
                const quiz::Question& asked = paper.items[i].question;
                const std::string right = "answer/" + quiz::lettered(asked)[place_of(asked, true)].id;
                const std::string panel = "question-" + std::to_string(i + 1);
                for (int notch = 0; notch < 60 && sat.stage.ui->find(right)->box.center().y > sat.stage.ui->find(panel)->box.high.y - 20.0F; ++notch) {
                    sat.stage.point_at(sat.stage.ui->find(panel)->box.center());
                    sat.stage.input.wheel = -1.0F;
                    sat.stage.frame();
                }
                sat.stage.click(right);
                sat.stage.click("give");
                sat.stage.frame();
                CHECK(sat.last().is_right);
                CHECK(sat.stage.ui->find(right)->value == text::say("right answer"));
                CHECK(sat.stage.ui->cut_words() == std::vector<std::string>{});
                sat.stage.click("go-on");
            }
            CHECK(sat.screen->sitting().is_finished);
            CHECK(sat.stage.ui->cut_words() == std::vector<std::string>{});
        }
    }
    text::speak(text::Language::english);
}

TEST_CASE("a sitting goes on where it was left, and ends when the time is over")
{
    quiz::Paper paper = paper_of({"floor-reach", "wipes-by-whom", "barred-always"}, quiz::Feedback::after);
    paper.limit = 2.0_min;
    quiz::SittingResult begun = quiz::begin_sitting(paper, "p", "2026-11-29T10:00:00Z");
    begun.answers.push_back(quiz::answered(paper.items[0], quiz::Chosen{{"six"}}, 100.0_s));
    Sat sat(paper, begun);
    CHECK(sat.stage.ui->find("question-2") != nullptr);
    sat.stage.input.seconds = 15.0F;
    sat.stage.frame();
    CHECK_FALSE(sat.screen->sitting().is_finished);
    sat.stage.frame();
    CHECK(sat.screen->sitting().is_finished);
    CHECK(sat.screen->sitting().answers.size() == 3);
    CHECK(std::holds_alternative<quiz::LeftOut>(sat.last().response));
    CHECK(sat.stage.ui->find("give") == nullptr);
}

TEST_CASE("text at 200 % stays whole on the quiz screen")
{
    Sat sat(paper_of({"barred-always"}, quiz::Feedback::at_once));
    sat.stage.ui->set_text_scale(2.0F);
    sat.stage.frame();
    sat.stage.frame();
    CHECK(sat.stage.ui->cut_words().empty());
    CHECK(sat.stage.ui->find("give") != nullptr);
}
