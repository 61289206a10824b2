#include "quiz/kinds/number.hpp"

#include "quiz/complaints.hpp"
#include "quiz/option.hpp"
#include "text/language.hpp"
#include "text/quote.hpp"

namespace flapdoor::quiz {
namespace {

NumberKey key_of(const Figure& figure, const Tolerance& tolerance)
{
    return {figure.unit, figure.si, tolerance.is_share ? 0.0 : tolerance.si, tolerance.is_share ? tolerance.si : 0.0};
}

std::string_view kind_noun(const NumberUnit& unit)
{
    if (unit.is_percent) return "a percentage";
    return unit.kind ? text::noun(*unit.kind) : "a plain number";
}

}

NumberKey key_of(const Number& asked) { return key_of(asked.answer, asked.tolerance); }

std::string unit_of(const Figure& figure)
{
    // What follows the last number that stands by itself: "in" of "6 ft 3 in", "ug/m3" of "30 ug/m3".
    const std::string& text = figure.text;
    std::size_t begin = std::string::npos;
    for (std::size_t at = 0; at < text.size(); ++at)
        if (text.find_first_of("0123456789.", at) == at && (at == 0 || text[at - 1] == ' ' || text[at - 1] == '+' || text[at - 1] == '-')) begin = at;
    if (begin == std::string::npos) return {};
    const std::size_t end = text.find_first_not_of("0123456789.,", begin);
    const std::size_t unit = end == std::string::npos ? end : text.find_first_not_of(' ', end);
    return unit == std::string::npos ? std::string() : text.substr(unit);
}

Mark mark(const Number& asked, const Response& response)
{
    Mark mark;
    const auto* typed = std::get_if<Typed>(&response);
    if (typed == nullptr) return mark;
    switch (mark_number(typed->text, key_of(asked))) {
        case NumberMark::right:
            mark.share = {1, 1};
            mark.is_right = true;
            return mark;
        case NumberMark::no_unit:
            mark.misconceptions.push_back("unit-left-out");
            mark.told.push_back(phrase(text::to_say("The unit is part of the answer.")));
            return mark;
        case NumberMark::wrong_kind:
            mark.misconceptions.push_back("other-kind-of-unit");
            mark.told.push_back(phrase(text::to_say("That is no number of the kind that was asked for.")));
            return mark;
        case NumberMark::wrong: break;
    }
    for (const WrongFigure& wrong : asked.wrong)
        if (mark_number(typed->text, key_of(wrong.figure, asked.tolerance)) == NumberMark::right) {
            mark.misconceptions.push_back(wrong.misconception);
            mark.told.push_back(wrong.told);
            break;
        }
    return mark;
}

void check(const Number& asked, const Place&, Complaints& complaints)
{
    const Tolerance& tolerance = asked.tolerance;
    if (!tolerance.text.empty() && !tolerance.is_share && tolerance.unit != asked.answer.unit)
        complaints.add(tolerance.where, "a tolerance in the kind of the answer, or in percent", text::quoted(tolerance.text));
    if (tolerance.is_share && tolerance.si > 0.5) complaints.add(tolerance.where, "a tolerance of at most 50 %", text::quoted(tolerance.text));
    for (const WrongFigure& wrong : asked.wrong) {
        if (wrong.figure.unit != asked.answer.unit)
            complaints.add(wrong.figure.where, "a figure of the answer's kind, " + std::string(kind_noun(asked.answer.unit)), text::quoted(wrong.figure.text));
        else if (mark_number(wrong.figure.text, key_of(asked)) == NumberMark::right)
            complaints.add(wrong.figure.where, "a wrong figure outside the tolerance of the answer", text::quoted(wrong.figure.text));
    }
}

}
