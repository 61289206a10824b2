#include "debrief/sections/parts.hpp"

#include "debrief/wording.hpp"

namespace flapdoor::debrief::sections {

using text::Element;

Element caution_list()
{
    Element section = titled("Cautions");
    Element list = Element("ul").with("class", "cautions");
    for (const std::string_view caution : cautions()) list.add(Element("li").say(caution));
    return section.add(std::move(list));
}

}
