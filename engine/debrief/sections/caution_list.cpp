#include "debrief/sections/parts.hpp"

#include "debrief/wording.hpp"
#include "text/language.hpp"

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;

Element caution_list()
{
    Element section = titled(say("Cautions"));
    Element list = Element("ul").with("class", "cautions");
    for (const std::string_view caution : cautions()) list.add(Element("li").say(say(caution)));
    return section.add(std::move(list));
}

}
