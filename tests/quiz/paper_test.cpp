#include "small_bank.hpp"

#include "quiz/blueprint.hpp"
#include "quiz/lettered.hpp"
#include "quiz/making/dice.hpp"
#include "quiz/print/pages.hpp"
#include "quiz/terminal/asking.hpp"

#include <map>
#include <set>

namespace flapdoor::quiz {

namespace {

/// Without questions that need many runs, so that drawing is quick.
BlueprintFiles small_files()
{
    BlueprintFiles files;
    files.blueprint = sound(read_blueprint(R"(
format = 1
id = "small"
title = { en = "Small paper", es = "Prueba breve" }
banks = ["sample"]
drills = ["back-bedroom"]
limit = "20 min"
[[part]]
topic = "containment"
level = "know"
questions = 1
[[part]]
topic = "openings"
questions = 2
[[part]]
level = "know"
questions = 3
[[part]]
level = "apply"
questions = 2
)", "small.toml"));
    files.banks.push_back(shipped_bank("sample"));
    return files;
}

Paper drawn(std::uint64_t seed) { return sound(draw_paper(small_files(), workshop(), seed)); }

std::vector<std::string> items_of(const Paper& paper)
{
    std::vector<std::string> items;
    for (const PaperItem& item : paper.items) items.push_back(item.item);
    return items;
}

/// A paper with one question of the sample bank.
PaperItem sample_item(const char* id) { return {"sample/" + std::string(id), 1, question_of(shipped_bank("sample"), id)}; }

}

TEST_CASE("dice fall evenly and stay in their range")
{
    Dice dice(7, "test");
    std::map<int, int> count;
    for (int i = 0; i < 6000; ++i) ++count[dice.between(1, 6)];
    CHECK(count.size() == 6);
    // 1000 each, standard deviation 29; five of them either way.
    for (const auto& [face, times] : count) CHECK(times == Approx(1000).margin(145));
    CHECK(Dice(7, "test").between(0, 1'000'000) == Dice(7, "test").between(0, 1'000'000));
    CHECK(Dice(7, "test").between(0, 1'000'000) != Dice(7, "other").between(0, 1'000'000));
}

TEST_CASE("a paper has what its blueprint asks, no question twice, and the same again with the same seed")
{
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const Paper paper = drawn(seed);
        const auto items = items_of(paper);
        CHECK(items.size() == 8);
        CHECK(std::set<std::string>(items.begin(), items.end()).size() == 8);
        int openings = 0, containment = 0;
        for (const PaperItem& item : paper.items) {
            openings += item.question.topic == Topic::openings;
            containment += item.question.topic == Topic::containment && item.question.level == Level::know;
        }
        CHECK(openings >= 2);
        CHECK(containment >= 1);
        CHECK(fingerprint(drawn(seed)) == fingerprint(paper));
    }
    std::set<std::uint64_t> prints;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) prints.insert(fingerprint(drawn(seed)));
    CHECK(prints.size() == 12);
}

TEST_CASE("options stand in every place, and cards never lie in a right order")
{
    std::set<std::string> first;
    for (std::uint64_t seed = 1; seed <= 30; ++seed)
        for (const PaperItem& item : drawn(seed).items) {
            if (item.item == "sample/floor-reach") first.insert(key_text(item.question));
            const auto* order = std::get_if<PutInOrder>(&item.question.kind);
            if (order == nullptr) continue;
            Laid as_shown;
            for (const LayCard& card : order->cards) as_shown.cards.push_back(card.id.text);
            CHECK_FALSE(mark(item.question, as_shown).is_right);
        }
    CHECK(first == std::set<std::string>{"A", "B", "C"});
}

TEST_CASE("a blueprint that asks for more than there is says so")
{
    BlueprintFiles files = small_files();
    files.blueprint.parts = {{Topic::tack_pad, std::nullopt, 3}};
    const auto paper = draw_paper(files, workshop(), 1);
    REQUIRE_FALSE(paper.has_value());
    CHECK(told(paper.error()).find("3 questions about \"tack-pad\"") != std::string::npos);
    CHECK(told(paper.error()).find("0 that can be asked") != std::string::npos);
}

TEST_CASE("of the templates of one generator a paper has one")
{
    BlueprintFiles files = small_files();
    files.banks = {shipped_bank("generated")};
    files.blueprint.parts = {{Topic::verification, std::nullopt, 4}};
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        const auto items = items_of(sound(draw_paper(files, workshop(), seed)));
        const auto has = [&](const char* item) { return std::find(items.begin(), items.end(), item) != items.end(); };
        CHECK_FALSE((has("generated/cloths-for-floor") && has("generated/cloths-for-floor-number")));
    }
}

TEST_CASE("shipped blueprints are in order")
{
    for (const auto& entry : std::filesystem::directory_iterator(scenario_folder + "/papers")) {
        INFO(entry.path());
        const auto files = sound(load_blueprint(entry.path().string(), shipped_scenarios()));
        CHECK_FALSE(files.banks.empty());
    }
}

TEST_CASE("typed lines are read as answers, or what they should have been is said")
{
    const Question one = sample_item("floor-reach").question, several = sample_item("barred-always").question, order = sample_item("sheeting-up").question,
                   number = sample_item("largest-single-surface").question, place = sample_item("flap-door-place").question;
    const auto read = [](const Question& question, const char* line) { return read_answer(question, line); };
    CHECK(*read(one, " b ") == Response{Chosen{{"two"}}});
    CHECK(*read(one, "skip") == Response{LeftOut{}});
    CHECK_FALSE(read(one, "d").has_value());
    CHECK_FALSE(read(one, "ab").has_value());
    CHECK_FALSE(read(one, "").has_value());
    CHECK(*read(several, "a C") == Response{Chosen{{"torch", "misted-scraping"}}});
    CHECK(*read(several, "ca") == Response{Chosen{{"misted-scraping", "torch"}}});
    CHECK(*read(several, "none") == Response{Chosen{}});
    CHECK_FALSE(read(several, "aa").has_value());
    CHECK(*read(order, "a, b, c, d") == Response{Laid{{"mist", "fold", "seal", "out"}}});
    CHECK(read(order, "abc").error().find("3 of 4") != std::string::npos);
    CHECK(*read(number, "40 ft2") == Response{Typed{"40 ft2"}});
    CHECK_FALSE(read(number, "forty").has_value());
    CHECK(*read(place, "a") == Response{Pointed{"entrance", {}, {}}});
    CHECK(*read(place, "10 ft, 11 ft") == Response{Pointed{"", 10.0_ft, 11.0_ft}});
    CHECK_FALSE(read(place, "10, 11").has_value());
}

TEST_CASE("the answer that a key shows is read as right")
{
    for (std::uint64_t seed = 1; seed <= 12; ++seed)
        for (const PaperItem& item : drawn(seed).items) {
            INFO(item.item << ": " << key_text(item.question));
            const auto response = read_answer(item.question, key_text(item.question));
            REQUIRE(response.has_value());
            CHECK(mark(item.question, *response).is_right);
        }
}

TEST_CASE("feedback names the mistake, the reason and the paragraph")
{
    const Question question = sample_item("floor-reach").question;
    const std::string text = feedback_text(question, Chosen{{"ten"}}, 80);
    CHECK(text.find("Not right.") != std::string::npos);
    CHECK(text.find("Ten feet is the figure for the ground outdoors.") != std::string::npos);
    CHECK(text.find("Right: A") != std::string::npos);
    CHECK(text.find("40 CFR 745.85(a)(2)(i)(D)") != std::string::npos);
    CHECK(feedback_text(question, Chosen{{"six"}}, 80).find("Right.") != std::string::npos);
}

TEST_CASE("pages carry the seed; the key stands on its own page only; every text is escaped")
{
    Paper paper = drawn(3);
    paper.items.push_back(sample_item("flap-door-place"));
    paper.items.front().question.text = phrase("<script>alert(1)</script>");
    const std::string questions = paper_page(paper), answers = answer_page(paper), key = key_page(paper);
    for (const std::string* page : {&questions, &answers, &key}) {
        CHECK(page->find("seed 3") != std::string::npos);
        CHECK(page->find("<script>") == std::string::npos);
        CHECK(page->find("no clearance and no legal advice") != std::string::npos);
        CHECK(page->find("http:") == std::string::npos);
        CHECK(page->find("https:") == std::string::npos);
    }
    CHECK(questions.find("<svg") != std::string::npos);
    for (const PaperItem& item : paper.items) {
        const std::string why = in_english(item.question.why);
        CHECK(questions.find(why) == std::string::npos);
        CHECK(answers.find(why) == std::string::npos);
    }
    CHECK(key.find("Six feet beyond the perimeter") == key.rfind("Six feet beyond the perimeter"));
}

}
