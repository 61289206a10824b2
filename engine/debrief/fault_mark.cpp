#include "debrief/fault_mark.hpp"

#include "text/language.hpp"

#include <fmt/format.h>

#include <array>

namespace flapdoor::debrief {

namespace svg = text::svg;

namespace {

constexpr double radius = 9.0;

text::Element shape_of(const FaultLine& fault, svg::Point at)
{
    if (fault.rule.is_critical) {
        constexpr double reach = radius + 2.0;
        return svg::polygon({{at.x, at.y - reach}, {at.x + reach, at.y}, {at.x, at.y + reach}, {at.x - reach, at.y}}).with("class", "sign solid");
    }
    if (fault.is_weighed()) return svg::circle(at, radius).with("class", "sign");
    return svg::rect(at.x - radius + 1.0, at.y - radius + 1.0, 2.0 * radius - 2.0, 2.0 * radius - 2.0).with("class", "sign light");
}

}

text::Element fault_sign(const FaultLine& fault, svg::Point center)
{
    text::Element sign = svg::group("fault");
    sign.add(text::Element("title").say(fmt::format("{}: {}", name_of(fault), text::say(fault.rule.says))));
    sign.add(shape_of(fault, center));
    sign.add(svg::label({center.x, center.y + 3.8}, std::to_string(fault.number), svg::Anchor::middle, 10.5)
                 .with("class", fault.rule.is_critical ? "number on-solid" : "number"));
    return sign;
}

text::Element inline_fault_sign(const FaultLine& fault)
{
    constexpr double size = 24.0;
    text::Element drawing = svg::drawing(size, size, name_of(fault));
    drawing.with("class", "inline-sign");
    drawing.add(fault_sign(fault, {size / 2.0, size / 2.0}));
    return drawing;
}

std::string name_of(const FaultLine& fault)
{
    constexpr std::array<std::string_view, 4> names{text::to_say("Fault {}"), "Fault {}", text::to_say("Consequence {}"), text::to_say("Advice {}")};
    const std::string_view name = fault.rule.is_critical ? (fault.is_weighed() ? text::to_say("Critical fault {}") : text::to_say("Critical, a consequence {}")) : names[static_cast<std::size_t>(fault.kind)];
    return text::say_with(name, fault.number);
}

}
