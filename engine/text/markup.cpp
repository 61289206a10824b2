#include "text/markup.hpp"

#include "core/insist.hpp"
#include "text/utf8.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>

namespace flapdoor::text {
namespace {

bool is_token(std::string_view word)
{
    const auto fits = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == ':'; };
    return !word.empty() && std::all_of(word.begin(), word.end(), fits);
}

template <std::size_t N>
bool is_one_of(std::string_view name, const std::array<std::string_view, N>& names)
{
    return std::find(names.begin(), names.end(), name) != names.end();
}

/// HTML elements that have no content and no end.
bool is_void(std::string_view name)
{
    return is_one_of(name, std::array<std::string_view, 6>{"meta", "br", "hr", "img", "link", "col"});
}

/// Elements inside which line ends mean nothing.
bool is_container(std::string_view name)
{
    return is_one_of(name, std::array<std::string_view, 18>{"html", "head", "body", "main", "header", "footer", "section", "figure", "div", "table",
                                                            "thead", "tbody", "tr", "ul", "ol", "dl", "svg", "g"});
}

}

std::string escaped(std::string_view text)
{
    std::string out;
    out.reserve(text.size());
    while (!text.empty()) {
        const Letter letter = first_letter(text);
        const bool is_control = (letter.code < 0x20 && letter.code != '\n' && letter.code != '\t') || (letter.code >= 0x7F && letter.code < 0xA0);
        if (letter.code == '&') out += "&amp;";
        else if (letter.code == '<') out += "&lt;";
        else if (letter.code == '>') out += "&gt;";
        else if (letter.code == '"') out += "&quot;";
        else if (letter.code == '\'') out += "&#39;";
        else if (is_control || letter.code == 0xFFFD) out += "\xEF\xBF\xBD";
        else out += text.substr(0, letter.bytes);
        text.remove_prefix(letter.bytes);
    }
    return out;
}

std::string coordinate(double value)
{
    insist(std::isfinite(value), "a coordinate of a drawing is a number");
    std::string text = fmt::format("{:.2f}", value);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

Element::Element(std::string_view name) : name_(name)
{
    insist(is_token(name), "an element is called by letters and digits");
    insist(name != "script", "a page of ours runs no script");
}

Element& Element::with(std::string_view attribute, std::string_view value) &
{
    insist(is_token(attribute), "an attribute is called by letters and digits");
    attributes_.emplace_back(attribute, value);
    return *this;
}

Element& Element::with(std::string_view attribute, double value) & { return with(attribute, coordinate(value)); }

Element& Element::say(std::string_view text) &
{
    content_.emplace_back(std::in_place_type<std::string>, text);
    return *this;
}

Element& Element::add(Element child) &
{
    content_.emplace_back(std::in_place_type<Element>, std::move(child));
    return *this;
}

std::string Element::html() const
{
    std::string out;
    write(out);
    return out;
}

void Element::write(std::string& out) const
{
    (out += '<') += name_;
    for (const auto& [attribute, value] : attributes_) fmt::format_to(std::back_inserter(out), " {}=\"{}\"", attribute, escaped(value));
    out += '>';
    if (is_void(name_)) return;

    const bool has_lines = is_container(name_);
    for (const auto& part : content_) {
        if (has_lines) out += '\n';
        if (const auto* child = std::get_if<Element>(&part)) {
            child->write(out);
            continue;
        }
        const std::string& text = std::get<std::string>(part);
        // A style sheet is no text: escaping would break it. It is ours, and ends at its own end tag only.
        if (name_ == "style") insist(text.find('<') == std::string::npos, "a style sheet opens no element");
        out += name_ == "style" ? text : escaped(text);
    }
    if (has_lines && !content_.empty()) out += '\n';
    fmt::format_to(std::back_inserter(out), "</{}>", name_);
}

}
