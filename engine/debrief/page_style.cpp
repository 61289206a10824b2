#include "debrief/page_style.hpp"

#include "debrief/wording.hpp"
#include "text/color.hpp"
#include "text/language.hpp"

#include <string_view>

namespace flapdoor::debrief {

namespace {

/// Colors stand as @names and are put in by page_style().
constexpr std::string_view style = R"(
@media screen { main { max-width: 50rem; } section { overflow-x: auto; } }
.eyebrow { margin: 0 0 .15rem; letter-spacing: .12em; text-transform: uppercase; font-size: .75rem; color: @muted; }
.title-block { display: grid; grid-template-columns: repeat(4, 1fr); margin: 0 0 1.25rem; border: 1.5px solid @text; }
.title-block div { padding: .35rem .6rem; border: .5px solid @line; min-width: 0; }
.title-block .wide { grid-column: span 2; }
.title-block dt { font-size: .7rem; letter-spacing: .04em; color: @muted; }
.title-block dd { margin: 0; overflow-wrap: anywhere; line-height: 1.35; }
.title-block .to-fill { display: none; }
.result { border: 2px solid @text; padding: .6rem 1rem; margin: 1rem 0; }
.result.failed { border-width: 4px; border-style: double; }
.result .verdict { font-size: 1.15rem; font-weight: 700; margin: .2rem 0; }
.result .broken { list-style: none; margin: .3rem 0; padding: 0; }
.result .broken li { display: flex; gap: .5rem; align-items: flex-start; font-weight: 600; margin: .1rem 0; }
.result .broken .cite { font-weight: 400; white-space: nowrap; }
.result .score { font-size: 1.05rem; margin: .3rem 0; font-variant-numeric: tabular-nums; }
.small, .note { font-size: .82rem; color: @muted; }
.id { font-family: ui-monospace, "Liberation Mono", monospace; font-size: .78rem; color: @muted; overflow-wrap: anywhere; }
.cite { font-size: .85rem; color: @muted; }
.nowrap { white-space: nowrap; }
th.group { padding-top: .9rem; border-bottom: 1px solid @line; color: @accent; }
tr.total td, tr.total th { border-top: 2px solid @text; border-bottom: 0; font-weight: 700; }
tr.plain th { font-weight: 400; border-bottom: 1px solid @line; }
.fault-card { border-top: 1px solid @line; padding: .35rem 0 .5rem; }
.fault-card h3, .fault-card h4 { font-size: 1rem; margin: .4rem 0 .3rem; display: flex; gap: .5rem; align-items: flex-start; }
.fault-card dl { display: grid; grid-template-columns: 8.2rem 1fr; gap: .15rem .75rem; margin: 0; font-size: .94rem; }
.fault-card dt { color: @muted; }
.fault-card dd { margin: 0; }
.lead-in, .sure { color: @muted; }
.sure { font-size: .85rem; }
.fault-card dd p { margin: 0 0 .15rem; }
.inline-sign { width: 24px; height: 24px; flex: none; display: inline-block; vertical-align: middle; }
.maps { display: grid; grid-template-columns: repeat(auto-fit, minmax(20rem, 1fr)); gap: 1rem; align-items: start; }
.maps figure { margin: .5rem 0; }
.steps { font-size: .88rem; }
.steps td, .steps th { padding: .12rem .6rem .12rem 0; }
tbody th { font-weight: 600; border-bottom: 1px solid @line; }
.steps tbody th { font-weight: 400; }
.marks td:nth-child(1), .marks th:nth-child(1) { width: 2rem; }
.marks .cite { margin-left: .3rem; }
.marks td:nth-child(3), .marks td:nth-child(4) { width: 4rem; }
.ways td:nth-child(3), .ways td:nth-child(4) { width: 15%; }
.harmless th[scope=row] { white-space: nowrap; }
.harmless td.right { width: 27%; }
.levels { font-size: .9rem; }
.levels tbody th { width: 24%; font-weight: 500; }
.levels td, .levels th { padding-top: .16rem; padding-bottom: .16rem; }
.levels td.right { white-space: nowrap; }
.levels .note { font-size: .7rem; line-height: 1.25; width: 22%; }
details.kept { border-top: 1px solid @line; }
details.kept summary { font-weight: 400; }
details.kept dl { display: grid; grid-template-columns: 8.2rem 1fr; gap: .1rem .75rem; margin: 0 0 .4rem 1.4rem; font-size: .9rem; }
details.kept dt { color: @muted; }
details.kept dd { margin: 0; }
.tick { font-weight: 700; color: @accent; }
ol.legal { margin: .3rem 0; padding: 0; list-style: none; }
details summary { cursor: pointer; font-weight: 600; padding: .3rem 0; }
.cautions li { margin: .3rem 0; }
.hash { font-family: ui-monospace, "Liberation Mono", monospace; }
svg .strong { font-weight: 700; }
svg .note { fill: @text; font-style: italic; }
svg .sign { fill: @paper; stroke: @text; stroke-width: 1.5; }
svg .sign.solid { fill: @text; }
svg .sign.light { stroke: @line; }
svg .number { font-weight: 700; stroke: none; }
svg .on-solid { fill: @paper; stroke: none; }
svg .bar.vague { fill: @paper; stroke: @accent; stroke-width: 1.5; stroke-dasharray: 4 3; }
svg .card { fill: @accent; stroke: @paper; stroke-width: .6; }
svg .card.blamed { fill: @text; }
svg .card.idle { fill: @paper; stroke: @muted; stroke-width: 1; stroke-dasharray: 2 1.5; }
svg .drop { fill: none; stroke: @muted; stroke-width: .9; stroke-dasharray: 1.5 2.5; }
svg .row { stroke: @faint; stroke-width: 1; }
svg .cell { shape-rendering: crispEdges; }
svg .wall { stroke: @text; stroke-width: 3; stroke-linecap: square; }
svg .gap { stroke: @paper; stroke-width: 7; }
svg .cut { stroke: @line; stroke-width: 1.25; stroke-dasharray: 9 3 2 3; }
svg .thin { stroke: @text; stroke-width: 1; }
svg .leaf { stroke: @text; stroke-width: 1.75; stroke-dasharray: none; }
svg .dotted { stroke: @text; stroke-width: 1.5; stroke-dasharray: 1.5 3; }
svg .cover { stroke: @accent; stroke-width: 3; }
svg .sheet-line { stroke: @accent; stroke-width: 1.6; stroke-dasharray: 6 3; fill: none; }
svg polyline.sheet-line { stroke-dasharray: none; }
svg .register { fill: @paper; stroke: @text; stroke-width: 1.25; }
svg .register.shut { fill: @line; }
svg .thing { fill: none; stroke: @text; stroke-width: 1; }
svg .zone-name { font-style: italic; }
svg .median { stroke: @text; stroke-width: 2; }
svg .bar.light { fill: @faint; stroke: @accent; stroke-width: 1; }
.range { font-size: .78rem; color: @muted; white-space: nowrap; }
.what-ifs { font-size: .86rem; }
.what-ifs td, .what-ifs th { padding-right: .5rem; }
.what-ifs th[scope=rowgroup] { white-space: nowrap; border-bottom: 1px solid @line; }
.what-ifs:not(.harmless) tbody tr:first-child:not(:last-child) td { border-bottom: 0; padding-bottom: 0; }
.changed p { margin: 0; }
.changed .remark { color: @muted; font-style: italic; }
.sheet .run-line { margin-bottom: .3rem; }
.names { display: grid; grid-template-columns: 2fr 1fr; gap: 1rem; margin: .2rem 0 .4rem; font-size: .78rem; color: @muted; }
.names span { border-bottom: 1px solid @line; padding-bottom: 1rem; }
.told-fault { border-top: 1px solid @line; padding: .2rem 0; }
.told-fault h3 { display: flex; gap: .5rem; align-items: flex-start; margin: .25rem 0; }
.told-fault p { margin: .15rem 0; }
.effect { font-weight: 600; }
.beside tbody th { width: 27%; font-weight: 500; }
.two { display: grid; grid-template-columns: 1fr 1fr; gap: 1.25rem; align-items: start; }
.two figure { margin: 0; }
svg .run-line-a, svg .run-line-b { fill: none; stroke: @accent; stroke-width: 2.25; }
svg .run-line-b { stroke: @text; stroke-dasharray: 7 4; }
svg .paper { fill: @paper; }
svg .bar-ink { fill: @text; stroke: @text; stroke-width: 1; }
svg .bar-paper { fill: @paper; stroke: @text; stroke-width: 1; }
@media print {
  @page { margin: 16mm 15mm 18mm; @bottom-left { content: "@footer"; font: 8pt sans-serif; color: @muted; } @bottom-right { content: counter(page) "@of" counter(pages); font: 8pt sans-serif; color: @muted; } }
  html { font-size: 9pt; }
  .marks { font-size: .92rem; }
  .marks td, .marks th { padding-top: .14rem; padding-bottom: .14rem; }
  .marks .inline-sign { width: 19px; height: 19px; }
  .screen-only, details.kept dl { display: none; }
  .fault-cards, .kept-rules, ol.legal { columns: 2; column-gap: 8mm; }
  .fault-card { padding: .2rem 0 .3rem; }
  .fault-card h3, .fault-card h4 { font-size: .94rem; line-height: 1.3; margin: .25rem 0 .2rem; }
  .fault-card dl { grid-template-columns: 7rem 1fr; gap: .1rem .4rem; font-size: .88rem; line-height: 1.35; }
  .kept-rules { font-size: .88rem; line-height: 1.35; }
  details.kept { break-inside: avoid; }
  details.kept summary { list-style: none; padding: .15rem 0; }
  ol.legal { font-size: .92rem; }
  .cautions { break-inside: avoid; }
  .title-block .to-fill { display: block; min-height: 1.9rem; }
  .fault-card, figure, .result, .title-block, .whole, .intro, .small, .legal, li { break-inside: avoid; }
  tr.total { break-before: avoid; }
  .what-ifs tbody { break-inside: avoid; }
  .what-ifs thead + tbody { break-before: avoid; }
  .harmless tbody { break-inside: auto; }
  .intro, .box, summary { break-after: avoid; }
  .moment { break-inside: avoid; }
  .beside { font-size: .94rem; }
  .beside td, .beside th { padding-top: .14rem; padding-bottom: .14rem; }
  .moment svg { max-height: 55mm; width: auto; }
  .moment h3 { margin: .4rem 0 0; }
  .moment figure { margin: .2rem 0; }
  svg.key { max-height: 27mm; width: auto; }
  .maps { grid-template-columns: 1fr 1fr; }
  @page sheet { margin: 12mm 15mm 15mm; }
  .sheet { page: sheet; font-size: 8.4pt; line-height: 1.3; }
  .sheet td { white-space: nowrap; }
  .sheet .names span { padding-bottom: .7rem; }
  .sheet h1 { font-size: 15pt; margin: 0 0 .3rem; padding-bottom: .2rem; }
  .sheet h2 { font-size: 11pt; margin: .5rem 0 .15rem; }
  .sheet h3 { font-size: 9.2pt; }
  .sheet .result { margin: .3rem 0; padding: .2rem .7rem; }
  .sheet .result p { margin: .1rem 0; }
  .sheet table { margin: .2rem 0; }
  .sheet td, .sheet th { padding-top: .08rem; padding-bottom: .08rem; }
  .sheet ol { margin: .2rem 0; }
  .sheet .box { margin: .4rem 0 0; padding: .1rem .7rem; }
  .sheet figure svg { max-height: 64mm; width: auto; margin: 0 auto; }
  .sheet svg.key { max-height: 27mm; width: auto; }
  .sheet .two { gap: .8rem; }
  .sheet .effect { font-size: 8.2pt; }
  .sheet .told-fault { padding: .05rem 0; }
  .sheet .told-fault h3 { margin: .12rem 0; }
  .sheet .inline-sign { width: 20px; height: 20px; }
  details::details-content { content-visibility: visible; display: block; height: auto; }
}
)";

void replace_all(std::string& text, std::string_view name, std::string_view value)
{
    for (std::size_t at = text.find(name); at != std::string::npos; at = text.find(name, at + value.size())) text.replace(at, name.size(), value);
}

}

std::string page_style()
{
    using namespace text;
    std::string css(style);
    replace_all(css, "@paper", to_hex(ink::paper));
    replace_all(css, "@text", to_hex(ink::text));
    replace_all(css, "@muted", to_hex(ink::muted));
    replace_all(css, "@line", to_hex(ink::line));
    replace_all(css, "@faint", to_hex(ink::faint));
    replace_all(css, "@accent", to_hex(ink::accent));
    replace_all(css, "@footer", text::say("Training model, not a clearance prediction"));
    replace_all(css, "@of", text::say(" of "));
    return css;
}

}
