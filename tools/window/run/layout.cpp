#include "window/run/layout.hpp"

#include <algorithm>

namespace flapdoor::window {

Layout lay_out(const Box& screen, float scale)
{
    const auto px = [&](float at_100_percent) { return at_100_percent * scale; };
    const float width = screen.width() / scale;
    const float height = screen.height() / scale;
    const float gap = px(10.0F);
    Layout layout;
    layout.is_wide = width >= 960.0F && height >= 560.0F;
    layout.is_tall = layout.is_wide && height >= 620.0F;
    layout.is_roomy = width >= 960.0F;

    Box rest = screen;
    layout.header = cut_top(rest, px(height >= 560.0F ? 68.0F : 48.0F));
    layout.time = cut_bottom(rest, px(layout.is_roomy ? 108.0F : 100.0F));
    rest = {{rest.low.x + px(14.0F), rest.low.y + gap}, {rest.high.x - px(14.0F), rest.high.y}};

    if (!layout.is_wide) {
        layout.tabs = cut_top(rest, px(40.0F));
        cut_top(rest, px(6.0F));
        layout.plan = layout.section = layout.sheet = rest;
        return layout;
    }
    Box side = cut_right(rest, px(std::clamp(width * 0.29F, 340.0F, 470.0F)));
    cut_right(rest, gap);
    layout.tabs = cut_top(side, px(40.0F));
    layout.sheet = side;
    if (layout.is_tall) {
        layout.section = cut_bottom(rest, px(std::clamp(height * 0.235F, 156.0F, 260.0F)));
        cut_bottom(rest, gap);
    }
    layout.plan = rest;
    return layout;
}

}
