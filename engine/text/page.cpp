#include "text/page.hpp"

#include "core/insist.hpp"
#include "text/color.hpp"

#include <fmt/format.h>

#include <string>

namespace flapdoor::text {
namespace {

/// Colors stand as @names and are put in by page_style().
constexpr std::string_view style = R"(
html { font-size: 16px; }
body { margin: 0; background: @paper; color: @text; font: 1rem/1.5 system-ui, -apple-system, "Segoe UI", "Liberation Sans", Arial, sans-serif; }
main { max-width: 47rem; margin: 0 auto; padding: 1.5rem 1.25rem 3rem; }
h1 { font-size: 1.75rem; line-height: 1.2; margin: 0 0 1rem; padding-bottom: .5rem; border-bottom: 3px solid @accent; }
h2 { font-size: 1.25rem; margin: 2rem 0 .5rem; color: @accent; }
h3 { font-size: 1rem; margin: 1.25rem 0 .25rem; }
p { margin: .5rem 0; }
table { border-collapse: collapse; width: 100%; margin: .75rem 0; }
caption { text-align: left; font-weight: 600; padding: .25rem 0; }
th { text-align: left; font-weight: 600; border-bottom: 2px solid @text; }
th, td { padding: .3rem .75rem .3rem 0; vertical-align: top; }
td { border-bottom: 1px solid @line; }
.right { text-align: right; font-variant-numeric: tabular-nums; }
th:last-child, td:last-child { padding-right: 0; }
figure { margin: 1rem 0; }
figcaption { font-weight: 600; margin-bottom: .25rem; }
svg:root { font-family: system-ui, -apple-system, "Segoe UI", "Liberation Sans", Arial, sans-serif; }
svg { max-width: 100%; height: auto; display: block; }
svg text { fill: @text; font-family: inherit; paint-order: stroke; stroke: @paper; stroke-width: 3px; stroke-linejoin: round; }
svg .muted, .muted { fill: @muted; color: @muted; }
svg .caution { fill: @caution; }
svg .accent { fill: @accent; }
svg .grid { stroke: @faint; stroke-width: 1; }
svg .axis, svg .ink { stroke: @text; stroke-width: 1.25; fill: none; }
svg .frame { stroke: @line; stroke-width: 1; fill: none; }
svg .bar { fill: @accent; }
svg .marked { fill: @paper; stroke: @caution; stroke-width: 2; stroke-dasharray: 5 3; }
svg .halo { stroke: @paper; stroke-width: 4.5; }
svg .whisker { stroke: @text; stroke-width: 1.5; }
svg .level { stroke: @caution; stroke-width: 1.75; stroke-dasharray: 7 4; }
.box { border-left: 4px solid @accent; padding: .4rem .9rem; margin: 1rem 0; background: @paper; outline: 1px solid @faint; }
.box.caution { border-left: 4px double @caution; }
.box .word { font-weight: 700; margin-right: .4rem; color: @accent; }
.box.caution .word { color: @caution; }
.new-page { break-before: page; }
@media print {
  @page { margin: 18mm 16mm; }
  html { font-size: 10.5pt; }
  main { max-width: none; padding: 0; }
  h1, h2, h3, figcaption, caption { break-after: avoid; }
  figure, tr, .box { break-inside: avoid; }
  thead { display: table-header-group; }
  * { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
}
)";

void replace_all(std::string& text, std::string_view name, std::string_view value)
{
    for (std::size_t at = text.find(name); at != std::string::npos; at = text.find(name, at + value.size())) text.replace(at, name.size(), value);
}

Element cell(std::string_view tag, std::string_view text, Align align)
{
    Element cell(tag);
    if (align == Align::right) cell.with("class", "right");
    cell.say(text);
    return cell;
}

}

std::string page_style()
{
    std::string css(style);
    replace_all(css, "@paper", to_hex(ink::paper));
    replace_all(css, "@text", to_hex(ink::text));
    replace_all(css, "@muted", to_hex(ink::muted));
    replace_all(css, "@line", to_hex(ink::line));
    replace_all(css, "@faint", to_hex(ink::faint));
    replace_all(css, "@accent", to_hex(ink::accent));
    replace_all(css, "@caution", to_hex(ink::caution));
    return css;
}

std::string make_page(const PageHead& head, Element content)
{
    Element top("head");
    top.add(Element("meta").with("charset", "utf-8"));
    top.add(Element("meta").with("name", "viewport").with("content", "width=device-width, initial-scale=1"));
    // Nothing may be fetched, whatever stands in the text.
    top.add(Element("meta").with("http-equiv", "Content-Security-Policy").with("content", "default-src 'none'; style-src 'unsafe-inline'; img-src data:"));
    top.add(Element("title").say(head.title));
    top.add(Element("style").say(page_style()));

    Element html = Element("html").with("lang", head.language);
    html.add(std::move(top));
    html.add(Element("body").add(std::move(content)));
    return "<!DOCTYPE html>\n" + html.html() + "\n";
}

Element page_table(const TextTable& table, std::string_view caption)
{
    Element heads("tr");
    for (const Column& column : table.columns) heads.add(cell("th", column.head, column.align).with("scope", "col"));
    Element body("tbody");
    for (const auto& row : table.rows) {
        insist(row.size() <= table.columns.size(), "a row has no more cells than the table has columns");
        Element line("tr");
        for (std::size_t i = 0; i < table.columns.size(); ++i) line.add(cell("td", i < row.size() ? row[i] : std::string{}, table.columns[i].align));
        body.add(std::move(line));
    }
    Element element("table");
    if (!caption.empty()) element.add(Element("caption").say(caption));
    element.add(Element("thead").add(std::move(heads)));
    element.add(std::move(body));
    return element;
}

Element box(Tone tone, std::string_view word, std::string_view text)
{
    const bool is_caution = tone == Tone::caution;
    Element paragraph("p");
    paragraph.add(Element("span").with("class", "word").say(is_caution ? fmt::format("! {}", word) : std::string(word)));
    paragraph.say(" ").say(text);
    return Element("div").with("class", is_caution ? "box caution" : "box").add(std::move(paragraph));
}

}
