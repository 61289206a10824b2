#include "dust/clothing.hpp"
#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::CleanTools&, const Team& by) { return must_be_inside(site, by); }

Done carry_out(Site& site, const job::CleanTools& step, const Team& by)
{
    work_at(site, by, site.room().raster.rect().center(), job::CleanTools::takes);
    const double wiped = dust::wiped_off_tool.typical;
    if (step.care == job::ToolCare::wipe) pour(site, site.tools, site.cloths, wiped, dust::Pathway::recovered);
    if (step.care == job::ToolCare::vacuum_and_wipe) {
        pour(site, site.tools, site.vacuum, wiped, dust::Pathway::recovered);
        pour(site, site.tools, site.cloths, wiped, dust::Pathway::recovered);
    }
    return {};
}

}
