#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site&, const job::DeclarePaint&, const Team&) { return std::nullopt; }

Done carry_out(Site& site, const job::DeclarePaint& step, const Team&)
{
    spend(site, step.basis == job::PaintBasis::kit ? 10.0 * job::DeclarePaint::takes : job::DeclarePaint::takes);
    return {};
}

}
