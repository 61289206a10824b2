#include "small_bank.hpp"

#include "quiz/sitting.hpp"

#include "text/writing.hpp"

namespace flapdoor::quiz {

TEST_CASE("a sitting is written and read back with every form of answer")
{
    const Bank bank = shipped_bank("sample");
    Paper paper;
    paper.blueprint = "by-hand";
    for (const char* id : {"floor-reach", "barred-always", "set-up", "largest-single-surface", "flap-door-place", "wipes-by-whom"})
        paper.items.push_back({"sample/" + std::string(id), 7, question_of(bank, id)});
    SittingResult sitting = begin_sitting(paper, "person 3", "2026-11-29T10:00:00Z");
    const std::vector<Response> responses{Chosen{{"six"}}, Chosen{{"torch"}}, Laid{{"signs", "close"}}, Typed{"40 ft2"}, Pointed{"", 10.0_ft, 11.0_ft}, LeftOut{}};
    for (std::size_t i = 0; i < responses.size(); ++i) sitting.answers.push_back(answered(paper.items[i], responses[i], 12.5_s));

    const SittingResult again = sound(read_sitting(text::write_toml(sitting), "s.toml"));
    REQUIRE(again.answers.size() == responses.size());
    for (std::size_t i = 0; i < responses.size(); ++i) CHECK(again.answers[i].response == responses[i]);
    CHECK(again.answers[1].share.part == 1);
    CHECK(again.answers[1].share.whole == 2);
    CHECK(again.answers[0].is_right);
    CHECK(text::write_toml(again) == text::write_toml(sitting));
    CHECK(points_of(again).of == 6);
}

TEST_CASE("papers with other questions, another order or another seed have other fingerprints")
{
    const Bank bank = shipped_bank("sample");
    Paper paper{"by-hand", {}, 1, Feedback::after, {}, {{"sample/floor-reach", 7, question_of(bank, "floor-reach")}, {"sample/set-up", 7, question_of(bank, "set-up")}}};
    const auto before = fingerprint(paper);
    CHECK(fingerprint(paper) == before);
    std::swap(paper.items[0], paper.items[1]);
    CHECK(fingerprint(paper) != before);
    std::swap(paper.items[0], paper.items[1]);
    std::swap(std::get<ChooseOne>(paper.items[0].question.kind).options[0], std::get<ChooseOne>(paper.items[0].question.kind).options[1]);
    CHECK(fingerprint(paper) != before);
}

}
