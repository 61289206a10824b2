#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site&, const job::WriteRecord&, const Team&) { return std::nullopt; }

Done carry_out(Site& site, const job::WriteRecord&, const Team&)
{
    measure(site, "wet-cloths", "", job::MeasureKind::number, site.verification.wet_cloths);
    measure(site, "dry-cloths", "", job::MeasureKind::number, site.verification.dry_cloths);
    spend(site, job::WriteRecord::takes);
    return {};
}

}
