#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site&, const job::Repaint&, const Team&) { return std::nullopt; }

Done carry_out(Site& site, const job::Repaint&, const Team&)
{
    spend(site, job::Repaint::takes);
    return {};
}

}
