#include "rules/mending.hpp"

#include "rules/telling.hpp"

namespace flapdoor::rules {
namespace {

/// A place that moves while the log goes on: its end, the last work on paint, the last card of a kind.
bool moves(const Spot& spot) { return spot.moment == Moment::end || spot.moment == Moment::last_dust || spot.which == Which::last; }

bool can_mend(const Before& before, const Fault&, Time) { return moves(before.then); }
bool can_mend(const NotBefore& not_before, const Fault&, Time) { return moves(not_before.what); }
bool can_mend(const While& condition, const Fault&, Time) { return condition.from && moves(*condition.from); }
bool can_mend(const AfterEach& condition, const Fault&, Time) { return !condition.until || moves(condition.event); }
bool can_mend(const Within& condition, const Fault& fault, Time end) { return condition.counted.empty() && !fault.missing.empty() && end <= fault.at; }
bool can_mend(const OnlyBy&, const Fault&, Time) { return false; }
bool can_mend(const Never&, const Fault&, Time) { return false; }

bool can_mend(const AtLeast& condition, const Fault&, Time)
{
    if (condition.done) return !condition.by || moves(*condition.by);
    return condition.which == Which::last || (condition.at && moves(*condition.at));
}

/// The check may be repeated yet; what came in between stays.
bool can_mend(const RepeatUntil& condition, const Fault& fault, Time) { return fault.missing == missing_key(condition.check, fault.object); }
bool can_mend(const ExactlyOneOf&, const Fault& fault, Time) { return fault.first < 0 && fault.second < 0; }

}

bool can_be_mended(const Condition& condition, const Fault& fault, Time end)
{
    return std::visit([&](const auto& kind) { return can_mend(kind, fault, end); }, condition.kind);
}

}
