#include "quiz/qti/xml.hpp"

#include "core/insist.hpp"
#include "quiz/qti/xml_scan.hpp"

#include <pugixml.hpp>

#include <algorithm>

namespace flapdoor::quiz {

namespace {

/// Line and column of rising offsets without counting from the start each time.
class Places {
public:
    Places(std::string_view text, const std::string& file_name) : text_(text)
    {
        here_.file = file_name;
        here_.line = here_.column = 1;
    }

    Place at(std::size_t offset)
    {
        insist(offset >= at_, "places are asked for in the order of the file");
        const Place onward = place_in(text_.substr(at_), offset - at_, here_.file);
        here_.column = onward.line == 1 ? here_.column + onward.column - 1 : onward.column;
        here_.line += onward.line - 1;
        at_ = offset;
        return here_;
    }

private:
    std::string_view text_;
    std::size_t at_ = 0;
    Place here_;
};

std::string without_prefix(std::string_view name)
{
    const std::size_t colon = name.find(':');
    return std::string(colon == std::string_view::npos ? name : name.substr(colon + 1));
}

XmlElement taken(const pugi::xml_node& node, Places& places)
{
    XmlElement element;
    element.name = without_prefix(node.name());
    // The parser tells where the name begins; the place of an element is its `<`.
    element.where = places.at(static_cast<std::size_t>(std::max<std::ptrdiff_t>(node.offset_debug() - 1, 0)));
    for (const pugi::xml_attribute& attribute : node.attributes()) element.attributes.push_back({attribute.name(), attribute.value()});
    for (const pugi::xml_node& child : node.children()) {
        if (child.type() == pugi::node_element) element.content.emplace_back(taken(child, places));
        else if (child.type() == pugi::node_pcdata || child.type() == pugi::node_cdata) element.content.emplace_back(std::string(child.value()));
    }
    return element;
}

}

std::optional<std::string> XmlElement::attribute(std::string_view attribute_name) const
{
    for (const XmlAttribute& one : attributes)
        if (one.name == attribute_name) return one.value;
    return std::nullopt;
}

std::vector<const XmlElement*> XmlElement::children() const
{
    std::vector<const XmlElement*> all;
    for (const auto& part : content)
        if (const auto* element = std::get_if<XmlElement>(&part)) all.push_back(element);
    return all;
}

std::vector<const XmlElement*> XmlElement::children(std::string_view child_name) const
{
    std::vector<const XmlElement*> all = children();
    std::erase_if(all, [&](const XmlElement* element) { return element->name != child_name; });
    return all;
}

const XmlElement* XmlElement::child(std::string_view child_name) const
{
    const auto all = children(child_name);
    return all.empty() ? nullptr : all.front();
}

Result<XmlElement> parse_xml(std::string_view text, const std::string& file_name)
{
    if (Problems problems = XmlScan(text, file_name).look_over(); !problems.empty()) return failed(std::move(problems));
    // The scan took the mark of UTF-8 as read; the parser is not to count it as text.
    const std::string_view body = text.starts_with("\xEF\xBB\xBF") ? text.substr(3) : text;
    pugi::xml_document document;
    constexpr unsigned int as_it_stands = pugi::parse_cdata | pugi::parse_escapes | pugi::parse_eol | pugi::parse_wconv_attribute | pugi::parse_ws_pcdata;
    const pugi::xml_parse_result parsed = document.load_buffer(body.data(), body.size(), as_it_stands, pugi::encoding_utf8);
    if (!parsed) {
        const auto offset = static_cast<std::size_t>(std::max<std::ptrdiff_t>(parsed.offset, 0));
        return failed(Problem{place_in(body, std::min(offset, body.size()), file_name), "well-formed XML", parsed.description()});
    }
    const pugi::xml_node root = document.document_element();
    if (!root) return failed(Problem{{file_name, 1, 1}, "an element", "none"});
    Places places(body, file_name);
    return taken(root, places);
}

}
