#include "quiz/terminal/asking.hpp"

#include "quiz/lettered.hpp"
#include "text/language.hpp"
#include "text/quote.hpp"
#include "text/show.hpp"
#include "text/table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

namespace flapdoor::quiz {
namespace {

using text::say;
using text::say_with;

std::string upper(std::string_view text)
{
    std::string up(text);
    for (char& c : up) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    return up;
}

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && std::isspace(static_cast<unsigned char>(text.front())) != 0) text.remove_prefix(1);
    while (!text.empty() && std::isspace(static_cast<unsigned char>(text.back())) != 0) text.remove_suffix(1);
    return text;
}

/// Ids of the letters in a line, in its order; what is no letter of the question.
tl::expected<std::vector<std::string>, std::string> ids_in(const std::vector<Lettered>& list, std::string_view line)
{
    std::vector<std::string> ids;
    for (const char c : upper(line)) {
        if (std::isspace(static_cast<unsigned char>(c)) != 0 || c == ',' || c == ';') continue;
        const auto found = std::find_if(list.begin(), list.end(), [&](const Lettered& one) { return one.letter == std::string(1, c); });
        if (found == list.end()) return tl::unexpected(say_with("{} is no letter of this question.", text::quoted(std::string(1, c))));
        if (std::find(ids.begin(), ids.end(), found->id) != ids.end()) return tl::unexpected(say_with("{} stands there twice.", found->letter));
        ids.push_back(found->id);
    }
    return ids;
}

/// `3 ft, 2 ft 6 in`: east and north of the drill's corner.
std::optional<Pointed> point_in(std::string_view line)
{
    const std::size_t comma = line.find(',');
    if (comma == std::string_view::npos) return std::nullopt;
    const auto x = text::parse_quantity<Length>(trimmed(line.substr(0, comma))), y = text::parse_quantity<Length>(trimmed(line.substr(comma + 1)));
    if (!x || !y) return std::nullopt;
    return Pointed{{}, *x, *y};
}

std::string mark_words(const Mark& mark, const Response& response)
{
    if (std::holds_alternative<LeftOut>(response)) return std::string(say("Left out."));
    if (mark.is_right) return std::string(say("Right."));
    if (mark.share.numerator > 0) return say_with("Partly right: {} of the points.", rules::percent_text(mark.share));
    return std::string(say("Not right."));
}

std::string last_letter(const std::vector<Lettered>& list) { return list.empty() ? std::string() : list.back().letter; }

}

std::string heading_text(const Paper& paper, std::size_t width)
{
    std::string text = shown(paper.title) + "\n";
    const auto line = [&](const std::string& words) { text += text::paragraph(words, width); };
    line(say_with("Seed {0}. {1}, {2}.", std::to_string(paper.seed), text::say_number("{} question", "{} questions", paper.items.size()),
                  text::say_number("{} point", "{} points", static_cast<unsigned long>(points_of(paper)))));
    if (paper.limit) line(say_with("Time: {}.", text::show(*paper.limit)));
    line(std::string(say(paper.feedback == Feedback::at_once ? "Practice: feedback after each answer." : "Sitting: feedback when all is done.")));
    line(std::string(say("Type `skip` to leave a question out, `stop` to stop: what you have answered is kept.")));
    line(std::string(say("A practice quiz. It is no certification, no clearance and no legal advice; local codes may ask for more.")));
    return text;
}

std::string wanted_text(const Question& question)
{
    const std::vector<Lettered> list = lettered(question);
    if (std::holds_alternative<ChooseSeveral>(question.kind)) return say_with("Every right letter, such as `a c`, from A to {}; `none` when none is right.", last_letter(list));
    if (std::holds_alternative<PutInOrder>(question.kind)) return say_with("All letters in order, first to last, from A to {}.", last_letter(list));
    if (std::holds_alternative<PointAtPlan>(question.kind)) return say_with("The letter of the place, from A to {}.", last_letter(list));
    if (const auto* number = std::get_if<Number>(&question.kind)) {
        if (number->answer.unit.is_percent) return std::string(say("A number with a percent sign."));
        if (!number->answer.unit.kind) return std::string(say("A number."));
        return say_with("A number with its unit, such as `{}`.", std::string(text::example(*number->answer.unit.kind)));
    }
    return say_with("One letter, from A to {}.", last_letter(list));
}

std::string question_text(const PaperItem& item, std::size_t number, std::size_t of, std::size_t width)
{
    const Question& question = item.question;
    std::string text = fmt::format("\n{}/{}  {}  ({})\n", number, of, say(title_of(question.topic)), text::say_number("{} point", "{} points", static_cast<unsigned long>(question.points)));
    text += text::paragraph(shown(question.text), width);
    text += text::paragraph(say(how_to_answer(question)), width);
    for (const Lettered& one : lettered(question)) {
        const std::vector<std::string> lines = text::wrap(shown(one.text), width - 6);
        for (std::size_t i = 0; i < lines.size(); ++i) text += i == 0 ? fmt::format("  {}  {}\n", one.letter, lines[i]) : fmt::format("     {}\n", lines[i]);
    }
    return text;
}

tl::expected<Response, std::string> read_answer(const Question& question, std::string_view line)
{
    line = trimmed(line);
    if (upper(line) == "SKIP") return LeftOut{};
    if (line.empty()) return tl::unexpected(std::string(say("Nothing was typed.")));
    if (std::holds_alternative<Number>(question.kind)) {
        if (!number_in(line) && !std::isdigit(static_cast<unsigned char>(line.front()))) return tl::unexpected(say_with("{} is no number.", text::quoted(line)));
        return Typed{std::string(line.substr(0, 80))};
    }
    const std::vector<Lettered> list = lettered(question);
    if (std::holds_alternative<PointAtPlan>(question.kind))
        if (const auto point = point_in(line)) return *point;
    if (std::holds_alternative<ChooseSeveral>(question.kind) && upper(line) == "NONE") return Chosen{};
    auto ids = ids_in(list, line);
    if (!ids) return tl::unexpected(ids.error());
    if (std::holds_alternative<ChooseSeveral>(question.kind)) return Chosen{std::move(*ids)};
    if (std::holds_alternative<PutInOrder>(question.kind)) {
        if (ids->size() != list.size()) return tl::unexpected(say_with("{0} of {1} letters.", ids->size(), list.size()));
        return Laid{std::move(*ids)};
    }
    if (ids->size() != 1) return tl::unexpected(std::string(say("More than one letter.")));
    if (std::holds_alternative<PointAtPlan>(question.kind)) return Pointed{ids->front(), {}, {}};
    return Chosen{std::move(*ids)};
}

std::string feedback_text(const Question& question, const Response& response, std::size_t width)
{
    const Mark mark = quiz::mark(question, response);
    std::string text = text::paragraph(mark_words(mark, response), width);
    for (const Phrase& told : mark.told) text += text::paragraph("- " + shown(told), width, 2);
    if (!mark.is_right) text += text::paragraph(say_with("Right: {}", key_text(question)), width);
    if (const auto* predict = std::get_if<Predict>(&question.kind)) text += text::paragraph(shown(predict->reveal), width, 2);
    text += text::paragraph(fmt::format("{} [{}]", shown(question.why), say(question.cite)), width);
    return text;
}

std::string result_text(const Paper& paper, const SittingResult& sitting, std::size_t width)
{
    const Points points = points_of(sitting);
    const auto right = std::count_if(sitting.answers.begin(), sitting.answers.end(), [](const Answered& answer) { return answer.is_right; });
    std::string text = "\n" + text::paragraph(say_with("{0} of {1} points; {2} of {3} questions all right.", text::show_number(points.reached), points.of, right, paper.items.size()), width);
    if (paper.feedback == Feedback::at_once) return text;
    for (std::size_t i = 0; i < sitting.answers.size(); ++i) {
        if (sitting.answers[i].is_right) continue;
        text += question_text(paper.items[i], i + 1, paper.items.size(), width);
        text += text::paragraph(say_with("Your answer: {}", response_text(paper.items[i].question, sitting.answers[i].response)), width);
        text += feedback_text(paper.items[i].question, sitting.answers[i].response, width);
    }
    return text;
}

}
