#include "quiz/qti/markup.hpp"

#include "text/markup.hpp"

#include <algorithm>

namespace flapdoor::quiz {

namespace {

bool holds_only_elements(const XmlElement& element)
{
    return !element.content.empty() && std::all_of(element.content.begin(), element.content.end(), [](const auto& part) { return std::holds_alternative<XmlElement>(part); });
}

void write(const XmlElement& element, std::string indent, bool is_on_lines, std::string& out)
{
    if (is_on_lines) out += indent;
    out += "<" + element.name;
    for (const XmlAttribute& attribute : element.attributes) out += " " + attribute.name + "=\"" + text::escaped(attribute.value) + "\"";
    if (element.content.empty()) out += "/>";
    else {
        out += ">";
        const bool opens_lines = is_on_lines && holds_only_elements(element);
        if (opens_lines) out += "\n";
        for (const auto& part : element.content) {
            if (const auto* words = std::get_if<std::string>(&part)) out += text::escaped(*words);
            else write(std::get<XmlElement>(part), indent + "  ", opens_lines, out);
        }
        if (opens_lines) out += indent;
        out += "</" + element.name + ">";
    }
    if (is_on_lines) out += "\n";
}

}

XmlElement tag(std::string_view name, std::initializer_list<XmlAttribute> attributes)
{
    XmlElement element;
    element.name = std::string(name);
    element.attributes = attributes;
    return element;
}

XmlElement& add(XmlElement& to, XmlElement element)
{
    to.content.emplace_back(std::move(element));
    return std::get<XmlElement>(to.content.back());
}

void say(XmlElement& to, std::string_view words) { to.content.emplace_back(std::string(words)); }

void give(XmlElement& to, std::string_view name, std::string_view value)
{
    if (!value.empty()) to.attributes.push_back({std::string(name), std::string(value)});
}

std::string write_xml(const XmlElement& root)
{
    std::string out = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    write(root, {}, true, out);
    return out;
}

std::string identifier_of(std::string_view id)
{
    const auto is_letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_'; };
    const auto is_other = [](char c) { return (c >= '0' && c <= '9') || c == '-' || c == '.'; };
    std::string out;
    for (const char c : id) out += is_letter(c) || is_other(c) ? c : '_';
    if (out.empty() || !is_letter(out.front())) out.insert(out.begin(), '_');
    return out;
}

}
