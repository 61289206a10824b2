#include "debrief/sections/parts.hpp"

#include "debrief/what_if_line.hpp"
#include "debrief/wording.hpp"
#include "text/language.hpp"

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;

Element practise_list(const Report& report)
{
    Element section = titled(say("Practise next"));
    section.add(piece("p", say("First what let a tenth or more of the lead out, then critical rules, then what cost most points."), "small intro"));
    Element list("ol");
    for (const Practice& practice : practise_next(report, 8)) {
        std::string cards;
        for (const std::string& card : practice.cards) cards += (cards.empty() ? "" : ", ") + std::string(say(card));
        const std::string rule = as_sentence(std::string(say(practice.rule)));
        list.add(Element("li").say(cards.empty() ? say_with("{} (fault {}).", rule, practice.fault) : say_with("{} (fault {}); cards: {}.", rule, practice.fault, cards)));
    }
    return section.add(std::move(list));
}

}
