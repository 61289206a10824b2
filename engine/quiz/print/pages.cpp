#include "quiz/print/pages.hpp"

#include "quiz/lettered.hpp"
#include "quiz/print/plan_figure.hpp"
#include "text/language.hpp"
#include "text/page.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

namespace flapdoor::quiz {

using text::Element;
using text::say;
using text::say_with;

namespace {

constexpr std::string_view style = R"(
.paper-head { display: grid; grid-template-columns: 1fr 1fr 1fr; gap: .25rem 1.5rem; margin: 0 0 1rem; }
.paper-head div { border-bottom: 1px solid; padding: .9rem 0 .1rem; font-size: .85rem; }
.question { break-inside: avoid; margin: 1.4rem 0 0; padding: .8rem 0 0; border-top: 1px solid; }
.question h2 { margin: 0 0 .3rem; display: flex; justify-content: space-between; gap: 1rem; font-size: 1rem; }
.question h2 span:last-child { font-weight: 400; font-size: .85rem; }
.question .how { font-style: italic; font-size: .9rem; margin: .2rem 0 .4rem; }
.choices { list-style: none; margin: .3rem 0; padding: 0; }
.choices li { display: grid; grid-template-columns: 1.8rem 1fr; padding: .12rem 0; }
.choices b { font-weight: 700; }
.answer { display: inline-flex; align-items: center; justify-content: center; width: 1.7rem; height: 1.7rem; border: 1.5px solid; border-radius: 50%; margin-right: .55rem; font-size: .85rem; }
.answer.square { border-radius: 0; }
.answer.slot { border-radius: 0; border-width: 0 0 1.5px; width: 2.2rem; }
.sheet td { padding: .45rem .9rem .45rem 0; vertical-align: middle; }
.sheet .blank { display: inline-block; width: 16rem; height: 1.4rem; border-bottom: 1.5px solid; }
.key td:nth-child(2) { white-space: nowrap; }
.foot { margin-top: 2rem; font-size: .8rem; }
.question svg { display: block; height: 4.4in; width: auto; max-width: 100%; }
svg .door { fill: none; stroke: currentColor; stroke-width: 2.5; stroke-dasharray: 5 3; }
svg .window { fill: #fff; stroke: currentColor; stroke-width: 1.5; }
svg .register { fill: currentColor; stroke: none; }
svg .spot { fill: #fff; stroke: currentColor; stroke-width: 1.5; }
)";

std::string make(const std::string& title, Element content)
{
    std::string html = text::make_page({title, std::string(text::code_of(text::spoken()))}, std::move(content));
    html.insert(html.find("</style>"), style);
    return html;
}

/// Title, and what tells this paper from any other.
Element head(const Paper& paper, std::string_view what)
{
    Element header("header");
    header.add(Element("h1").say(fmt::format("{}: {}", shown(paper.title), what)));
    std::string line = say_with("Paper {0}, seed {1}. {2}, {3}.", paper.blueprint, std::to_string(paper.seed), text::say_number("{} question", "{} questions", paper.items.size()),
                                text::say_number("{} point", "{} points", static_cast<unsigned long>(points_of(paper))));
    if (paper.limit) line += " " + say_with("Time: {}.", text::show(*paper.limit));
    header.add(Element("p").say(line));
    return header;
}

Element to_fill()
{
    Element block = Element("div").with("class", "paper-head");
    for (const std::string_view what : {say("Name or number"), say("Date"), say("Instructor")}) block.add(Element("div").say(what));
    return block;
}

Element foot()
{
    return Element("p").with("class", "foot").say(say("A practice quiz. It is no certification, no clearance and no legal advice; local codes may ask for more."));
}

Element choices(const std::vector<Lettered>& list)
{
    Element choices = Element("ol").with("class", "choices");
    for (const Lettered& one : list) choices.add(Element("li").add(Element("b").say(one.letter)).add(Element("span").say(shown(one.text))));
    return choices;
}

Element question_block(const PaperItem& item, std::size_t number)
{
    const Question& question = item.question;
    Element block = Element("section").with("class", "question");
    block.add(Element("h2").add(Element("span").say(fmt::format("{}  {}", number, say(title_of(question.topic))))).add(Element("span").say(text::say_number("{} point", "{} points", static_cast<unsigned long>(question.points)))));
    block.add(Element("p").say(shown(question.text)));
    block.add(Element("p").with("class", "how").say(say(how_to_answer(question))));
    if (const auto* place = std::get_if<PointAtPlan>(&question.kind)) block.add(plan_figure(*place, 460.0));
    const std::vector<Lettered> list = lettered(question);
    if (!list.empty()) block.add(choices(list));
    return block;
}

Element answer_cell(const Question& question)
{
    Element cell("td");
    const std::vector<Lettered> list = lettered(question);
    if (std::holds_alternative<Number>(question.kind)) return cell.add(Element("span").with("class", "blank")), cell;
    if (std::holds_alternative<PutInOrder>(question.kind)) {
        for (std::size_t i = 0; i < list.size(); ++i) cell.add(Element("span").with("class", "answer slot"));
        return cell;
    }
    const char* look = std::holds_alternative<ChooseSeveral>(question.kind) ? "answer square" : "answer";
    for (const Lettered& one : list) cell.add(Element("span").with("class", look).say(one.letter));
    return cell;
}

}

std::string paper_page(const Paper& paper)
{
    Element content("main");
    content.add(head(paper, say("questions")));
    content.add(Element("p").say(say("Write your answers on the answer sheet.")));
    for (std::size_t i = 0; i < paper.items.size(); ++i) content.add(question_block(paper.items[i], i + 1));
    content.add(foot());
    return make(shown(paper.title), std::move(content));
}

std::string answer_page(const Paper& paper)
{
    Element content("main");
    content.add(head(paper, say("answer sheet")));
    content.add(to_fill());
    content.add(Element("p").say(say("Round: one answer. Square: every right one. Lines: letters in order, first to last. A long line: a number with its unit.")));
    Element table = Element("table").with("class", "sheet");
    for (std::size_t i = 0; i < paper.items.size(); ++i)
        table.add(Element("tr").add(Element("td").with("class", "right").say(std::to_string(i + 1))).add(answer_cell(paper.items[i].question)));
    content.add(std::move(table));
    content.add(foot());
    return make(shown(paper.title), std::move(content));
}

std::string key_page(const Paper& paper)
{
    text::TextTable table{{{"", text::Align::right}, {std::string(say("Right"))}, {std::string(say("Points")), text::Align::right}, {std::string(say("Why"))}}, {}};
    for (std::size_t i = 0; i < paper.items.size(); ++i) {
        const Question& question = paper.items[i].question;
        std::string why = shown(question.why);
        if (const auto* predict = std::get_if<Predict>(&question.kind)) why += " " + shown(predict->reveal);
        if (std::holds_alternative<PutInOrder>(question.kind)) why += " " + std::string(say("Other orders that keep the rules are right too."));
        table.rows.push_back({std::to_string(i + 1), key_text(question), std::to_string(question.points), why + " [" + std::string(say(question.cite)) + "]"});
    }
    Element content = Element("main").with("class", "key");
    content.add(head(paper, say("key")));
    content.add(text::box(text::Tone::caution, say("Keep apart"), say("The key is for whoever corrects.")));
    content.add(text::page_table(table));
    content.add(foot());
    return make(shown(paper.title), std::move(content));
}

}
