#include "quiz/qti/import.hpp"

#include "../small_bank.hpp"
#include "foreign_items.hpp"
#include "quiz/qti/export_item.hpp"
#include "text/writing.hpp"

#include <rapidcheck.h>

namespace flapdoor::quiz {

namespace {

Imported taken(const std::string& xml) { return sound(import_item(xml, "f.xml", shipped_scenarios())); }

Question question_in(const std::string& xml)
{
    const Imported imported = taken(xml);
    std::string notes;
    for (const ImportNote& note : imported.notes) notes += note.what + "\n";
    INFO(notes);
    REQUIRE(imported.questions.size() == 1);
    return imported.questions[0];
}

/// All notes, one a line, with a mark where the question is lost.
std::string notes_of(const std::string& xml)
{
    std::string lines;
    for (const ImportNote& note : taken(xml).notes) lines += std::to_string(note.where.line) + ":" + std::to_string(note.where.column) + (note.is_question_lost ? " lost: " : " ") + note.what + "\n";
    return lines;
}

}

TEST_CASE("a choice from elsewhere is asked and marked here")
{
    const Question question = question_in(foreign::choose_one);
    CHECK(question.id.text == "f-1");
    CHECK(in_english(question.text) == "A register is left open {see note}. Where does the dust go?");
    const auto& asked = std::get<ChooseOne>(question.kind);
    REQUIRE(asked.options.size() == 3);
    CHECK(in_english(asked.options[1].text) == "To every room the duct serves");
    CHECK(in_english(asked.options[0].told) == "Air carries it.");
    CHECK(mark(question, Chosen{{"B"}}).is_right);
    CHECK_FALSE(mark(question, Chosen{{"A"}}).is_right);
    CHECK(notes_of(foreign::choose_one).empty());
}

TEST_CASE("several right answers come from the mapping where there is no key, in version 2 as well")
{
    const Question question = question_in(foreign::choose_several_2_1);
    CHECK(question.points == 2);
    CHECK(mark(question, Chosen{{"a", "c"}}).is_right);
    CHECK_FALSE(mark(question, Chosen{{"a", "b"}}).is_right);
}

TEST_CASE("an order from elsewhere is a chain, and that is told")
{
    const Question question = question_in(foreign::order);
    CHECK(mark(question, Laid{{"v", "w", "i"}}).is_right);
    const Mark one_off = mark(question, Laid{{"w", "v", "i"}});
    CHECK_FALSE(one_off.is_right);
    CHECK(points(one_off) > 0.0);
    CHECK(says(notes_of(foreign::order), "one order only"));
}

TEST_CASE("a number from elsewhere keeps its tolerance, and the unit behind the blank becomes part of the answer")
{
    const Question question = question_in(foreign::number_2_2);
    CHECK(in_english(question.text) == "Six feet in metres: ____ m");
    CHECK(mark(question, Typed{"1.83 m"}).is_right);
    CHECK(mark(question, Typed{"6 ft"}).is_right);         // 1.8288 m
    CHECK(mark(question, Typed{"183.9 cm"}).is_right);
    CHECK_FALSE(mark(question, Typed{"1.85 m"}).is_right);
    CHECK(says(notes_of(foreign::number_2_2), "\"m\" behind the blank"));
}

TEST_CASE("areas of a picture become answers with their place in words")
{
    const Question question = question_in(foreign::hotspot);
    const auto& asked = std::get<ChooseOne>(question.kind);
    CHECK(in_english(asked.options[0].text) == "below left (12 % from the left, 89 % from the top)");
    CHECK(in_english(asked.options[1].text) == "The window");
    CHECK(mark(question, Chosen{{"door"}}).is_right);
    CHECK(says(notes_of(foreign::hotspot), "\"plan1.svg\" does not come along"));
}

TEST_CASE("whatever is left out is named with its place")
{
    using foreign::item_3;
    CHECK(says(notes_of(item_3("<qti-item-body/>", "adaptive=\"true\"")), "2:1 lost: It changes with the answers"));
    CHECK(says(notes_of(item_3("<qti-template-declaration identifier=\"X\"/><qti-item-body/>")), "3:1 lost: It draws its figures"));
    CHECK(says(notes_of(item_3("<qti-item-body>\n<qti-extended-text-interaction response-identifier=\"R\"/></qti-item-body>")), "4:1 lost: \"extendedTextInteraction\" has no counterpart"));
    CHECK(says(notes_of(item_3("<qti-item-body><p>Read.</p></qti-item-body>")), "3:1 lost: It asks nothing"));
    CHECK(says(notes_of(item_3("")), "lost: It has no body"));
    const std::string two = "<qti-text-entry-interaction response-identifier=\"R\"/>";
    CHECK(says(notes_of(item_3("<qti-item-body><p>" + two + " " + two + "</p></qti-item-body>")), "lost: It asks several things"));
    CHECK(says(notes_of(item_3("<qti-item-body><p>" + two + "</p></qti-item-body>")), "lost: It has no key"));
    CHECK(says(notes_of(item_3("<qti-response-declaration identifier=\"R\"><qti-correct-response><qti-value>lead</qti-value></qti-correct-response></qti-response-declaration><qti-item-body><p>" + two + "</p></qti-item-body>")),
               "lost: Its answer is \"lead\"; only numbers"));
    std::string one_wrong = foreign::choose_one;
    one_wrong.replace(one_wrong.find("<qti-value>B"), 12, "<qti-value>X");
    CHECK(says(notes_of(one_wrong), "lost: Its key names \"X\""));
    std::string same = foreign::choose_one;
    same.replace(same.find(">Up<"), 4, ">Nowhere<");
    CHECK(says(notes_of(same), "lost: Not taken: expected a text that no other option has"));
    CHECK(says(notes_of("<manifest xmlns=\"http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1\"/>"), "\"manifest\" holds no question"));
    std::string with_parts = foreign::choose_one;
    with_parts.replace(with_parts.find("<p>A register"), 3, "<p><math/><img src=\"r.png\" alt=\"a register\"/>");
    CHECK(says(notes_of(with_parts), "A formula was left out"));
    CHECK(says(notes_of(with_parts), "A picture became its description, \"a register\""));
}

TEST_CASE("a file that is no item, or of another standard, is a problem with its place")
{
    const auto told_of = [](const std::string& xml) {
        const auto imported = import_item(xml, "f.xml", shipped_scenarios());
        REQUIRE_FALSE(imported);
        return describe(imported.error().front());
    };
    CHECK(told_of("<html/>") == "f.xml:1:1: expected a question item (qti-assessment-item or assessmentItem), found \"html\"");
    CHECK(says(told_of("<assessmentItem/>"), "f.xml:1:1: expected the namespace"));
    CHECK(says(told_of("<!DOCTYPE x SYSTEM \"file:///x\">" + foreign::choose_one), "f.xml:1:1: expected a file without DOCTYPE"));
    CHECK(says(told_of("<assessmentItem xmlns=\"http://www.imsglobal.org/xsd/imsqti_v2p2\">"), "expected `</assessmentItem>`, opened in line 1, found the end of the file"));
}

TEST_CASE("questions with one id get a number behind it")
{
    const Question question = question_in(foreign::choose_one);
    const Bank bank = bank_of_imported("theirs", "Theirs", {question, question, question});
    CHECK(bank.questions[1].id.text == "f-1-2");
    CHECK(bank.questions[2].id.text == "f-1-3");
    CHECK(sound(read_bank(text::write_toml(bank), "theirs.toml", shipped_scenarios())).questions.size() == 3);
}

TEST_CASE("an item that is cut off or has bytes flipped gives problems, notes or a sound question", "[property][fuzz]")
{
    const auto whole = std::vector{foreign::choose_one, foreign::choose_several_2_1, foreign::order, foreign::number_2_2, foreign::hotspot};
    const auto look = [](const std::string& xml) {
        const auto imported = import_item(xml, "f.xml", shipped_scenarios());
        if (!imported) return !imported.error().empty() && imported.error().front().where.line >= 1;
        return !imported->questions.empty() || !imported->notes.empty();
    };
    for (const std::string& xml : whole)
        for (std::size_t size = 0; size < xml.size(); size += 7) CHECK(look(xml.substr(0, size)));
    CHECK(rc::check([&] {
        std::string xml = *rc::gen::elementOf(whole);
        const auto flips = *rc::gen::inRange(1, 6);
        for (int i = 0; i < flips; ++i) {
            // Letters, so that most stay well-formed and reach the reader.
            const auto at = *rc::gen::inRange<std::size_t>(0, xml.size());
            xml[at] = *rc::gen::elementOf(std::string("abzAZ019 -.,;:#&<>\"'/="));
        }
        RC_ASSERT(look(xml));
    }));
    CHECK(rc::check([&] {
        // Whole pieces taken out or doubled.
        std::string xml = *rc::gen::elementOf(whole);
        const auto from = *rc::gen::inRange<std::size_t>(0, xml.size()), size = *rc::gen::inRange<std::size_t>(0, 120);
        if (*rc::gen::arbitrary<bool>()) xml.erase(from, size);
        else xml.insert(from, xml.substr(from, size));
        RC_ASSERT(look(xml));
    }));
}

}
