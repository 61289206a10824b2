#include "quiz/figure.hpp"

#include "text/leaf_reading.hpp"
#include "text/writing.hpp"

#include <fmt/format.h>

namespace flapdoor::quiz {
namespace {

std::string text_of(const text::Node& node)
{
    if (const auto* text = std::get_if<std::string>(&node.value)) return *text;
    if (const auto* whole = std::get_if<std::int64_t>(&node.value)) return std::to_string(*whole);
    if (const auto* number = std::get_if<double>(&node.value)) return text::canonical_text(*number);
    return {};
}

}

void Figure::from_node(const text::Node& node, Figure& into, Problems& problems)
{
    into.where = node.where;
    into.text = text_of(node);
    const auto number = number_in(into.text);
    if (!number) return text::refuse(node, {}, "a number with its unit such as \"6 ft\", \"75 %\" or a plain \"4\"", problems);
    into.unit = number->unit;
    into.si = number->si;
}

text::Node Figure::to_node(const Figure& figure) { return text::leaf_node(figure.text); }

void Tolerance::from_node(const text::Node& node, Tolerance& into, Problems& problems)
{
    into.where = node.where;
    into.text = text_of(node);
    if (into.text.empty() && std::holds_alternative<std::string>(node.value)) return;
    const auto number = difference_in(into.text);
    if (!number || number->si < 0.0) return text::refuse(node, {}, "a tolerance such as \"1 in\" or \"5 %\"", problems);
    into.unit = number->unit;
    into.si = number->si;
    into.is_share = number->unit.is_percent;
}

text::Node Tolerance::to_node(const Tolerance& tolerance) { return text::leaf_node(tolerance.text); }

}
