#include "window/base/theme.hpp"

namespace flapdoor::window {

Theme drafting_theme()
{
    return {
        .paper = color(0xEFE9DD),
        .sheet = color(0xFBF8F1),
        .field = color(0xFFFFFF),
        .ink = color(0x222E38),
        .muted = color(0x53606A),
        .line = color(0x78828A),
        .hairline = color(0xD8D0BF),
        .accent = color(0x0B5A5C),
        .accent_deep = color(0x07464A),
        .accent_tint = color(0xDDEAE6),
        .on_accent = color(0xFFFFFF),
        .caution = color(0x7F4A00),
        .caution_fill = color(0xF0B040),
        .caution_tint = color(0xFBEBCB),
        .focus = color(0x222E38),
        .focus_gap = color(0xFFFFFF),
        .wall = color(0x33404B),
        .floor = color(0xFFFDF8),
        .grid = color(0xEDE6D8),
        .thing = color(0xE9E3D6),
        .glass = color(0xCFE0E4),
        .sheeting = color(0x7FA3A6),
        .tape = color(0x0B5A5C),
    };
}

std::vector<ContrastPromise> contrast_promises(const Theme& t)
{
    constexpr double text = 4.5;
    constexpr double mark = 3.0;
    return {
        {"ink on paper", t.ink, t.paper, text},
        {"ink on sheet", t.ink, t.sheet, text},
        {"ink in a field", t.ink, t.field, text},
        {"ink on the accent tint", t.ink, t.accent_tint, text},
        {"ink on the caution tint", t.ink, t.caution_tint, text},
        {"ink on a caution mark", t.ink, t.caution_fill, text},
        {"ink on furniture", t.ink, t.thing, text},
        {"ink on the floor", t.ink, t.floor, text},
        {"muted text on paper", t.muted, t.paper, text},
        {"muted text on sheet", t.muted, t.sheet, text},
        {"muted text in a field", t.muted, t.field, text},
        {"muted text on the accent tint", t.muted, t.accent_tint, text},
        {"muted text on the caution tint", t.muted, t.caution_tint, text},
        {"accent text on sheet", t.accent, t.sheet, text},
        {"accent text on paper", t.accent, t.paper, text},
        {"accent text on its tint", t.accent, t.accent_tint, text},
        {"label on the accent", t.on_accent, t.accent, text},
        {"label on the accent under the pointer", t.on_accent, t.accent_deep, text},
        {"label on ink", t.sheet, t.ink, text},
        {"caution text on sheet", t.caution, t.sheet, text},
        {"caution text on paper", t.caution, t.paper, text},
        {"caution text on its tint", t.caution, t.caution_tint, text},
        {"control edge on sheet", t.line, t.sheet, mark},
        {"control edge on paper", t.line, t.paper, mark},
        {"control edge around a field", t.line, t.field, mark},
        {"focus ring on its gap", t.focus, t.focus_gap, mark},
        {"focus ring on paper", t.focus, t.paper, mark},
        {"focus ring on sheet", t.focus, t.sheet, mark},
        {"chosen part of a track", t.accent, t.field, mark},
        {"wall on the floor", t.wall, t.floor, mark},
        {"tape on the floor", t.tape, t.floor, mark},
        {"tape on paper", t.tape, t.paper, mark},
    };
}

}
