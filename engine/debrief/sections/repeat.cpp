#include "debrief/sections/parts.hpp"

#include "core/hash.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief::sections {

using text::Element;
using text::say;
using text::say_with;

Element repeat(const Report& report)
{
    Element section = titled(say("How to repeat this run")).with("class", "whole");
    section.add(piece("p", say_with("Carry out the same work plan on the same scenario with seed {}. The program of the same version comes to the same marks and "
                                       "the same dust, bit for bit, on any machine; the hashes show whether it did.",
                                       report.seed)));
    Element list = table(say("What the run was made from and what came of it"), {say("What"), say("Name"), say("Hash")});
    Element body("tbody");
    const auto add = [&](std::string_view what, std::string_view name, std::uint64_t hash) {
        Element row("tr");
        row.add(piece("th", what).with("scope", "row")).add(piece("td", name)).add(piece("td", to_hex(hash), "hash"));
        body.add(std::move(row));
    };
    for (const InputHash& input : report.inputs) add(say(input.what), say(input.name), input.hash);
    add(say("site at the end"), say_with("after {} steps", report.steps.size()), report.end_hash);
    return section.add(list.add(std::move(body)));
}

}
