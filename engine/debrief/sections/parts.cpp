#include "debrief/sections/parts.hpp"

#include "text/language.hpp"

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;

Element titled(std::string_view title)
{
    return Element("section").with("aria-label", title).add(Element("h2").say(title));
}

Element piece(std::string_view tag, std::string_view text, std::string_view class_name)
{
    Element element(tag);
    if (!class_name.empty()) element.with("class", class_name);
    element.say(text);
    return element;
}

Element table(std::string_view caption, const std::vector<std::string_view>& heads)
{
    Element row("tr");
    for (std::string_view head : heads) {
        const bool is_right = head.starts_with('>');
        if (is_right) head.remove_prefix(1);
        row.add(piece("th", head, is_right ? "right" : "").with("scope", "col"));
    }
    return Element("table").add(Element("caption").say(caption)).add(Element("thead").add(std::move(row)));
}

Element level_table(std::string_view caption, const std::vector<std::string_view>& heads, const std::vector<std::string>& of_level)
{
    std::vector<std::string> own(heads.begin(), heads.end());
    for (const std::string& head : of_level) own.push_back(">" + head);
    own.emplace_back(say("How to read it"));
    return table(caption, std::vector<std::string_view>(own.begin(), own.end())).with("class", "levels whole");
}

void add_level(Element& row, const Report& report, const Level& level)
{
    for (const std::string& text : level_texts(report, level)) row.add(piece("td", text, "right"));
    row.add(piece("td", level.note, "note"));
}

void add_unknown(Element& row, const Report& report)
{
    for (std::size_t i = 0; i < level_heads(report).size(); ++i) row.add(piece("td", i == 0 ? say("possible") : "", "right"));
    row.add(piece("td", say("nobody has measured what bags and sheeting let go"), "note"));
}

}
