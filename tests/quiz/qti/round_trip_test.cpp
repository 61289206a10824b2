#include "quiz/qti/export_item.hpp"
#include "quiz/qti/import.hpp"
#include "quiz/qti/markup.hpp"
#include "quiz/qti/package.hpp"

#include "../small_bank.hpp"
#include "quiz/each_phrase.hpp"
#include "scorer.hpp"
#include "text/writing.hpp"

#include <rapidcheck.h>

#include <numeric>
#include <set>

namespace flapdoor::quiz {

namespace {

/// Questions of the shipped banks that need no playing and no drawing.
std::vector<Question> shipped_questions()
{
    std::vector<Question> all;
    for (const std::string& path : shipped_banks())
        for (const Question& question : sound(load_bank(path, shipped_scenarios())).questions) {
            const std::string_view kind = kind_name(question);
            if (kind != Generated::name && kind != SpotFault::name && kind != Predict::name) all.push_back(question);
        }
    return all;
}

/// An item carries one language.
Question in_one_language(Question question)
{
    each_phrase(question, [](Phrase& phrase) { phrase.es.clear(); });
    return question;
}

XmlElement parsed(const QtiItem& item) { return sound(parse_xml(item.xml, item.identifier + ".xml")); }

std::vector<std::string> identifiers(std::vector<std::string> ids)
{
    for (std::string& id : ids) id = identifier_of(id);
    return ids;
}

}

TEST_CASE("a question that goes out comes back as it was, in the language it went out")
{
    const std::vector<Question> questions = shipped_questions();
    CHECK(questions.size() >= 8);
    std::set<std::string_view> kinds;
    for (const Question& question : questions) {
        INFO(question.id.text);
        const QtiItem item = export_item(question, "bank/" + question.id.text);
        const Imported back = sound(import_item(item.xml, item.identifier + ".xml", shipped_scenarios()));
        std::string notes;
        for (const ImportNote& note : back.notes) notes += note.what + "\n";
        INFO(notes);
        REQUIRE(back.questions.size() == 1);
        CHECK(notes.empty());
        CHECK(text::write_toml(back.questions[0]) == text::write_toml(in_one_language(question)));
        kinds.insert(kind_name(question));
    }
    CHECK(kinds == std::set<std::string_view>{"choose-one", "choose-several", "put-in-order", "number", "point-at-plan"});
}

TEST_CASE("an exported choice scores there as it does here")
{
    for (const Question& question : shipped_questions()) {
        const auto* one = std::get_if<ChooseOne>(&question.kind);
        const auto* several = std::get_if<ChooseSeveral>(&question.kind);
        if (one == nullptr && several == nullptr) continue;
        INFO(question.id.text);
        const XmlElement xml = parsed(export_item(question, "b/q"));
        Scorer scorer(xml);
        const auto& options = one ? one->options : several->options;
        for (unsigned picked = 0; picked < (1u << options.size()); ++picked) {
            std::vector<std::string> chosen;
            for (std::size_t i = 0; i < options.size(); ++i)
                if (picked >> i & 1u) chosen.push_back(options[i].id.text);
            if (one && chosen.size() > 1) continue;
            const Response response = chosen.empty() ? Response(LeftOut{}) : Response(Chosen{chosen});
            CHECK(scorer.score(identifiers(chosen)) == Approx(points(mark(question, response))).margin(1e-6));
        }
    }
}

TEST_CASE("an exported number scores there as it does here, in its own unit")
{
    int tried = 0;
    for (const Question& question : shipped_questions()) {
        const auto* asked = std::get_if<Number>(&question.kind);
        if (asked == nullptr) continue;
        INFO(question.id.text);
        const XmlElement xml = parsed(export_item(question, "b/q"));
        Scorer scorer(xml);
        const std::string key = std::get<std::string>(xml.child("qti-response-declaration")->child("qti-correct-response")->child("qti-value")->content[0]);
        const std::string unit = unit_of(asked->answer);
        for (const double factor : {1.0, 0.5, 2.0, 0.97, 1.03, 0.999, 1.001, 0.0}) {
            const std::string typed = factor == 1.0 ? key : std::to_string(std::stod(key) * factor);
            const Response response = Typed{unit.empty() ? typed : typed + " " + unit};
            CHECK(scorer.score({typed}) == Approx(points(mark(question, response))).margin(1e-6));
            tried += 1;
        }
    }
    CHECK(tried >= 8);
}

TEST_CASE("an exported order gives all points to right orders, none past a critical rule, and never right to wrong ones", "[property]")
{
    for (const Question& question : shipped_questions()) {
        const auto* asked = std::get_if<PutInOrder>(&question.kind);
        if (asked == nullptr) continue;
        INFO(question.id.text);
        const XmlElement xml = parsed(export_item(question, "b/q"));
        Scorer scorer(xml);
        std::vector<std::string> cards;
        for (const LayCard& card : asked->cards) cards.push_back(card.id.text);
        CHECK(scorer.score(identifiers(one_right_order(*asked).cards)) == Approx(question.points));
        CHECK(scorer.score({}) == Approx(0.0).margin(1e-9));
        CHECK(rc::check([&] {
            std::vector<std::string> laid = cards;
            for (std::size_t i = laid.size(); i > 1; --i) std::swap(laid[i - 1], laid[*rc::gen::inRange<std::size_t>(0, i)]);
            const Mark here = mark(question, Laid{laid});
            const double there = scorer.score(identifiers(laid));
            RC_ASSERT(here.is_right == (std::fabs(there - question.points) < 1e-6));
            RC_ASSERT(there >= -1e-9);
            RC_ASSERT(there <= question.points + 1e-6);
            double weights = 0.0, kept = 0.0;
            bool is_gated = false;
            for (const LayRule& rule : asked->rules) {
                const auto at = [&](const rules::Marked& id) { return std::find(laid.begin(), laid.end(), id.text); };
                const bool is_kept = std::is_sorted(rule.order.begin(), rule.order.end(), [&](const auto& a, const auto& b) { return at(a) < at(b); });
                weights += rule.weight;
                kept += is_kept ? rule.weight : 0.0;
                is_gated = is_gated || (rule.is_critical && !is_kept);
            }
            RC_ASSERT(std::fabs(there - (is_gated ? 0.0 : question.points * kept / weights)) < 1e-4);
        }));
    }
}

TEST_CASE("an exported place on the plan scores there as it does here, and its picture lies beside it")
{
    for (const Question& question : shipped_questions()) {
        const auto* asked = std::get_if<PointAtPlan>(&question.kind);
        if (asked == nullptr) continue;
        INFO(question.id.text);
        const QtiItem item = export_item(question, "b/q");
        const XmlElement xml = parsed(item);
        Scorer scorer(xml);
        for (const Region& region : asked->regions) {
            Pointed pointed;
            pointed.region = region.id.text;
            CHECK(scorer.score(identifiers({region.id.text})) == Approx(points(mark(question, pointed))).margin(1e-9));
        }
        REQUIRE(item.pictures.size() == 1);
        CHECK(sound(parse_xml(item.pictures[0].bytes, "plan.svg")).name == "svg");
        // Each hotspot has a size and lies inside the picture.
        const XmlElement& interaction = *xml.child("qti-item-body")->child("div")->child("qti-hotspot-interaction");
        const int width = std::stoi(*interaction.child("img")->attribute("width")), height = std::stoi(*interaction.child("img")->attribute("height"));
        for (const XmlElement* spot : interaction.children("qti-hotspot-choice")) {
            int x1 = 0, y1 = 0, x2 = 0, y2 = 0;
            REQUIRE(std::sscanf(spot->attribute("coords")->c_str(), "%d,%d,%d,%d", &x1, &y1, &x2, &y2) == 4);
            CHECK((x1 >= 0 && x1 < x2 && x2 <= width && y1 >= 0 && y1 < y2 && y2 <= height));
        }
    }
}

TEST_CASE("what a program elsewhere changed counts, not what stood here before")
{
    Question question;
    question.id.text = "reach";
    question.cite = "c";
    question.text = phrase("How far?");
    question.why = phrase("So.");
    Number asked;
    asked.answer.text = "6 ft";
    asked.answer.unit = text::Kind::length;
    asked.answer.si = 1.8288;
    question.kind = asked;
    std::string xml = export_item(question, "b/q").xml;
    xml.replace(xml.find("<qti-value>6<"), 13, "<qti-value>7<");
    const Imported back = sound(import_item(xml, "q.xml", shipped_scenarios()));
    REQUIRE(back.questions.size() == 1);
    CHECK(std::get<Number>(back.questions[0].kind).answer.text == "7 ft");
}

TEST_CASE("played runs and predictions go out as a choice, and what is lost is said")
{
    const std::vector<Option> options = std::get<ChooseOne>(question_of(shipped_bank("sample"), "floor-reach").kind).options;
    Question question = question_of(shipped_bank("sample"), "floor-reach");
    SpotFault spot;
    spot.scenario.text = spot.plan.text = "x";
    spot.moments = options;
    question.kind = spot;
    const QtiItem item = export_item(question, "b/q");
    REQUIRE(item.losses.size() == 1);
    const Imported back = sound(import_item(item.xml, "q.xml", shipped_scenarios()));
    REQUIRE(back.questions.size() == 1);
    CHECK(kind_name(back.questions[0]) == "choose-one");
    REQUIRE(back.notes.size() == 1);
    CHECK(back.notes[0].what.find("spot-the-fault") != std::string::npos);
}

TEST_CASE("a paper becomes a test that asks its items in order, and the manifest lists every file")
{
    Paper paper;
    paper.blueprint = "short";
    paper.title = phrase("Short & sweet");
    paper.seed = 7;
    paper.limit = 20.0_min;
    for (const Question& question : shipped_questions())
        if (paper.items.size() < 30) paper.items.push_back({"bank-" + std::to_string(paper.items.size()) + "/" + question.id.text, 1, question});
    const QtiPackage package = export_paper(paper);
    std::map<std::string, std::string> files;
    for (const QtiFile& file : package.files) CHECK(files.emplace(file.path, file.bytes).second);
    const XmlElement test = sound(parse_xml(files.at("test.xml"), "test.xml"));
    CHECK(test.attribute("title") == "Short & sweet");
    CHECK(test.child("qti-time-limits")->attribute("max-time") == "1200");
    const auto refs = test.child("qti-test-part")->child("qti-assessment-section")->children("qti-assessment-item-ref");
    REQUIRE(refs.size() == paper.items.size());
    for (const XmlElement* ref : refs) CHECK(files.contains(*ref->attribute("href")));
    const XmlElement manifest = sound(parse_xml(files.at("imsmanifest.xml"), "imsmanifest.xml"));
    std::set<std::string> listed{"imsmanifest.xml"};
    for (const XmlElement* resource : manifest.child("resources")->children("resource"))
        for (const XmlElement* file : resource->children("file")) listed.insert(*file->attribute("href"));
    std::set<std::string> there;
    for (const auto& [path, bytes] : files) there.insert(path);
    CHECK(listed == there);
}

TEST_CASE("the same questions give the same files")
{
    for (const Question& question : shipped_questions()) CHECK(export_item(question, "b/q").xml == export_item(question, "b/q").xml);
}

}
