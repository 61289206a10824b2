#include "text/svg.hpp"

#include "text/utf8.hpp"

#include <algorithm>
#include <string>

namespace flapdoor::text::svg {
namespace {

std::string list_of(const std::vector<Point>& points)
{
    std::string out;
    for (const Point& point : points) {
        if (!out.empty()) out += ' ';
        out += coordinate(point.x);
        out += ',';
        out += coordinate(point.y);
    }
    return out;
}

/// Width of a letter in the em, rounded up over common sans-serif faces: the reader's machine chooses among them.
double letter_width(char32_t code)
{
    const auto within = [code](std::u32string_view letters) { return letters.find(code) != std::u32string_view::npos; };
    if (within(U"iljI|!.,:;'`")) return 0.34;
    if (within(U"ftr()[]/ -\"")) return 0.42;
    if (within(U"mwMW%@")) return 0.98;
    if (code >= 'A' && code <= 'Z') return 0.75;
    return 0.63;
}

}

Element drawing(double width, double height, std::string_view title, std::string_view description)
{
    Element svg = Element("svg").with("viewBox", "0 0 " + coordinate(width) + " " + coordinate(height)).with("width", width).with("role", "img").with("aria-label", title);
    svg.add(Element("title").say(title));
    if (!description.empty()) svg.add(Element("desc").say(description));
    return svg;
}

Element rect(double x, double y, double width, double height)
{
    return Element("rect")
        .with("x", std::min(x, x + width))
        .with("y", std::min(y, y + height))
        .with("width", std::max(width, -width))
        .with("height", std::max(height, -height));
}

Element line(Point from, Point to) { return Element("line").with("x1", from.x).with("y1", from.y).with("x2", to.x).with("y2", to.y); }

Element polyline(const std::vector<Point>& points) { return Element("polyline").with("points", list_of(points)).with("fill", "none"); }

Element polygon(const std::vector<Point>& points) { return Element("polygon").with("points", list_of(points)); }

Element circle(Point center, double radius) { return Element("circle").with("cx", center.x).with("cy", center.y).with("r", radius); }

Element path(std::string_view commands) { return Element("path").with("d", commands); }

Element group(std::string_view class_name)
{
    Element g("g");
    if (!class_name.empty()) g.with("class", class_name);
    return g;
}

Element label(Point at, std::string_view text, Anchor anchor, double size)
{
    Element label = Element("text").with("x", at.x).with("y", at.y).with("font-size", size);
    if (anchor != Anchor::start) label.with("text-anchor", anchor == Anchor::middle ? "middle" : "end");
    label.say(text);
    return label;
}

double text_width(std::string_view text, double size)
{
    double ems = 0.0;
    while (!text.empty()) {
        const Letter letter = first_letter(text);
        ems += letter_width(letter.code);
        text.remove_prefix(letter.bytes);
    }
    return ems * size;
}

std::string fitted(std::string_view text, double room, double size)
{
    if (text_width(text, size) <= room) return std::string(text);
    constexpr std::string_view dots = "\xE2\x80\xA6";
    std::size_t letters = columns(text);
    while (letters > 0 && text_width(first_columns(text, letters), size) + text_width(dots, size) > room) --letters;
    return std::string(first_columns(text, letters)).append(dots);
}

}
