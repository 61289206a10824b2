#include "debrief/pathway_chart.hpp"

#include "debrief/wording.hpp"
#include "text/svg.hpp"

#include <fmt/format.h>

#include <array>
#include <iterator>

namespace flapdoor::debrief {

namespace svg = text::svg;

namespace {

constexpr std::array<std::string_view, 6> level_words{"none", "trace", "little", "some", "much", "most"};
constexpr std::array<std::string_view, 6> level_ranges{"", "below 1 %", "1 to 5 %", "5 to 20 %", "20 to 50 %", "over 50 %"};

constexpr double width = 720.0, row_height = 28.0, bar_height = 14.0;
constexpr double label_room = 170.0, word_room = 150.0, head = 40.0;
constexpr double step = (width - label_room - word_room) / 5.0;

void draw_head(text::Element& drawing, double bottom)
{
    for (std::size_t level = 1; level < level_words.size(); ++level) {
        const double x = label_room + step * static_cast<double>(level);
        drawing.add(svg::line({x, head - 4.0}, {x, bottom}).with("class", "grid"));
        drawing.add(svg::label({x - step / 2.0, 14.0}, level_words[level], svg::Anchor::middle, 12.5));
        drawing.add(svg::label({x - step / 2.0, 29.0}, level_ranges[level], svg::Anchor::middle, 10.5).with("class", "muted"));
    }
}

void draw_row(const PathwayLine& line, double y, text::Element& drawing)
{
    const int level = share_level(line.share);
    drawing.add(svg::label({label_room - 10.0, y + 4.5}, word_of(line.pathway), svg::Anchor::end));
    // What nobody has measured is drawn as an outline.
    const char* look = is_barely_known(line.pathway) ? "bar vague" : "bar";
    if (level > 0) drawing.add(svg::rect(label_room, y - bar_height / 2.0, step * level, bar_height).with("class", look));
    drawing.add(svg::label({label_room + step * level + 8.0, y + 4.5}, told_share(line)));
}

}

int share_level(double share)
{
    const std::string word = share_in_words(share);
    for (std::size_t level = 0; level < level_words.size(); ++level)
        if (level_words[level] == word) return static_cast<int>(level);
    return 0;
}

std::string told_share(const PathwayLine& line)
{
    const std::string word = share_in_words(line.share);
    return is_barely_known(line.pathway) && line.share > 0.0 ? word + ", possible only" : word;
}

text::Element pathway_chart(const std::vector<PathwayLine>& pathways)
{
    const double bottom = head + row_height * static_cast<double>(pathways.size());
    std::string description = "Share of all lead that left the work area, in words";
    for (const PathwayLine& line : pathways) fmt::format_to(std::back_inserter(description), "; {}: {}", word_of(line.pathway), told_share(line));
    text::Element drawing = svg::drawing(width, bottom + 6.0, "Lead that left the work area, by pathway", description);
    draw_head(drawing, bottom);
    for (std::size_t i = 0; i < pathways.size(); ++i) draw_row(pathways[i], head + row_height * (static_cast<double>(i) + 0.5), drawing);
    drawing.add(svg::line({label_room, head - 4.0}, {label_room, bottom}).with("class", "axis"));
    return drawing;
}

}
