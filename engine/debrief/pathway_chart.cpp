#include "debrief/pathway_chart.hpp"

#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "text/svg.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>

namespace flapdoor::debrief {

namespace svg = text::svg;
using text::say;
using text::to_say;
using text::say_with;

namespace {

constexpr std::array<std::string_view, 6> level_words{"none", "trace", "little", "some", "much", "most"};
constexpr std::array<std::string_view, 6> level_ranges{"", to_say("below 1 %"), to_say("1 to 5 %"), to_say("5 to 20 %"), to_say("20 to 50 %"), to_say("over 50 %")};

constexpr double width = 740.0, row_height = 28.0, bar_height = 14.0;
constexpr double label_room = 164.0, word_room = 248.0, head = 40.0;     // "la mayoría (mucho a la mayoría)" has to fit
constexpr double step = (width - label_room - word_room) / 5.0;

void draw_head(text::Element& drawing, double bottom)
{
    for (std::size_t level = 1; level < level_words.size(); ++level) {
        const double x = label_room + step * static_cast<double>(level);
        drawing.add(svg::line({x, head - 4.0}, {x, bottom}).with("class", "grid"));
        drawing.add(svg::label({x - step / 2.0, 14.0}, text::say_of("share", level_words[level]), svg::Anchor::middle, 12.5));
        drawing.add(svg::label({x - step / 2.0, 29.0}, say(level_ranges[level]), svg::Anchor::middle, 10.5).with("class", "muted"));
    }
}

/// A row of the chart, however it was come by.
struct Row {
    dust::Pathway pathway = dust::Pathway::none;
    int level = 0;              ///< to which the bar reaches
    int low = 0, high = 0;      ///< of the whisker; none when both are `level`
    std::string told;
};

Row row_of(const PathwayLine& line)
{
    const int level = share_level(line.share);
    return {line.pathway, level, level, level, told_share(line)};
}

Row row_of(const PathwayBand& band)
{
    const int median = share_level(band.share.median), high = share_level(band.share.high);
    if (is_barely_known(band.pathway)) return {band.pathway, high, high, high, told_share(band)};
    return {band.pathway, median, share_level(band.share.low), high, told_share(band)};
}

void draw_whisker(const Row& row, double y, text::Element& drawing)
{
    for (const char* look : {"halo", "whisker"}) {
        text::Element whisker = svg::group(look);
        const double low = label_room + step * row.low, high = label_room + step * row.high;
        whisker.add(svg::line({low, y}, {high, y}));
        for (const double x : {low, high}) whisker.add(svg::line({x, y - 4.5}, {x, y + 4.5}));
        drawing.add(std::move(whisker));
    }
}

void draw_row(const Row& row, double y, text::Element& drawing)
{
    drawing.add(svg::label({label_room - 10.0, y + 4.5}, say(word_of(row.pathway)), svg::Anchor::end));
    // What nobody has measured is drawn as an outline.
    const char* look = is_barely_known(row.pathway) ? "bar vague" : "bar";
    if (row.level > 0) drawing.add(svg::rect(label_room, y - bar_height / 2.0, step * row.level, bar_height).with("class", look));
    if (row.low < row.high) draw_whisker(row, y, drawing);
    drawing.add(svg::label({label_room + step * std::max(row.level, row.high) + 8.0, y + 4.5}, row.told));
}

text::Element chart_of(const std::vector<Row>& rows)
{
    const double bottom = head + row_height * static_cast<double>(rows.size());
    std::string description(say("Share of all lead that left the work area, in words"));
    for (const Row& row : rows) fmt::format_to(std::back_inserter(description), "; {}: {}", say(word_of(row.pathway)), row.told);
    text::Element drawing = svg::drawing(width, bottom + 6.0, say("Lead that left the work area, by pathway"), description);
    draw_head(drawing, bottom);
    for (std::size_t i = 0; i < rows.size(); ++i) draw_row(rows[i], head + row_height * (static_cast<double>(i) + 0.5), drawing);
    drawing.add(svg::line({label_room, head - 4.0}, {label_room, bottom}).with("class", "axis"));
    return drawing;
}

template <class Line>
text::Element chart_of_lines(const std::vector<Line>& lines)
{
    std::vector<Row> rows;
    for (const Line& line : lines) rows.push_back(row_of(line));
    return chart_of(rows);
}

}

int share_level(double share)
{
    const std::string_view word = share_in_words(share);
    for (std::size_t level = 0; level < level_words.size(); ++level)
        if (level_words[level] == word) return static_cast<int>(level);
    return 0;
}

std::string told_share(const PathwayLine& line)
{
    const std::string_view word = said_share(line.share);
    return is_barely_known(line.pathway) && line.share > 0.0 ? say_with("{}, possible only", word) : std::string(word);
}

std::string told_share(const PathwayBand& band)
{
    const std::string_view low = said_share(band.share.low), median = said_share(band.share.median), high = said_share(band.share.high);
    if (!(band.share.high > 0.0)) return std::string(said_share(0.0));
    if (is_barely_known(band.pathway)) return say_with("possible, up to {}", high);
    if (band.share.runs == 1) return say_with("{} (one run)", median);
    return low == high ? say_with("{} (steady)", median) : say_with("{} ({} to {})", median, low, high);
}

text::Element pathway_chart(const std::vector<PathwayLine>& pathways) { return chart_of_lines(pathways); }

text::Element pathway_chart(const std::vector<PathwayBand>& pathways) { return chart_of_lines(pathways); }

}
