#include "debrief/sections/parts.hpp"

#include "debrief/wording.hpp"
#include "text/show.hpp"

namespace flapdoor::debrief::sections {

using text::Element;

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

Element loading_cell(Loading loading)
{
    Element cell("td");
    cell.add(piece("span", text::show(loading), "nowrap"));
    cell.say(" ").add(piece("span", loading_note, "note"));
    return cell;
}

}
