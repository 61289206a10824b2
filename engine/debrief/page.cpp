#include "debrief/page.hpp"

#include "debrief/page_style.hpp"
#include "debrief/sections/parts.hpp"
#include "text/language.hpp"
#include "text/page.hpp"

#include <fmt/format.h>

namespace flapdoor::debrief {

namespace {

std::string dressed(const Report& report, text::Element content)
{
    std::string html = text::make_page({fmt::format("{}: {}", text::say(report.scenario.title), text::say(report.plan)), std::string(text::code_of(text::spoken()))}, std::move(content));
    // Texts are escaped, so the first end of a style is that of the page's own sheet.
    html.insert(html.find("</style>"), page_style());
    return html;
}

}

std::string trainee_page(const Report& report)
{
    text::Element content("main");
    content.add(sections::trainee_sheet(report));
    return dressed(report, std::move(content));
}

std::string page(const Report& report)
{
    text::Element content("main");
    content.add(sections::heading(report));
    content.add(sections::result(report));
    if (!report.faults.empty()) content.add(sections::practise_list(report));
    content.add(sections::marks(report));
    content.add(sections::faults(report));
    if (report.what_ifs) content.add(sections::what_ifs(report));
    content.add(sections::pathways(report));
    if (report.trace.is_kept()) content.add(sections::sources(report));
    content.add(sections::places(report));
    content.add(sections::breathed(report));
    content.add(sections::maps(report));
    content.add(sections::steps(report));
    content.add(sections::model(report));
    content.add(sections::kept_rules(report));
    content.add(sections::repeat(report));
    content.add(sections::caution_list());

    return dressed(report, std::move(content));
}

}
