#include "debrief/harm.hpp"

#include <algorithm>

namespace flapdoor::debrief {

namespace {

// What counts as harm: judgment.
constexpr double worth_telling = 0.1;                   // of the worse of the two
constexpr double worth_explaining = 0.05;               // where it looks better with the mistake

double difference(const WhatIf& what_if, const Figures& before, const Figures& after, Compared what)
{
    const double less = value_of(before, what) - value_of(after, what);
    return what_if.kind == WhatIf::Kind::put_in ? -less : less;
}

/// What is too little to be told, whatever share it is.
double trifle_of(Compared what) { return what == Compared::outside ? static_cast<double>(trifle_outside.count) : trifle_on_surface.si; }

/// More with the mistake (or less, turned round), by a share of the larger of the two that is worth telling.
bool shows(const WhatIf& what_if, const Figures& before, const Figures& after, Compared what, double sign = 1.0, double share = worth_telling)
{
    const double more = sign * difference(what_if, before, after, what);
    return more > trifle_of(what) && more >= share * std::max(value_of(before, what), value_of(after, what));
}

bool is_harm(const WhatIf& what_if, const Figures& before, const Figures& after)
{
    return shows(what_if, before, after, Compared::outside) || shows(what_if, before, after, Compared::floor) || shows(what_if, before, after, Compared::sill);
}

}

double value_of(const Figures& figures, Compared what)
{
    switch (what) {
        case Compared::outside: return static_cast<double>(figures.outside.lead.count);
        case Compared::floor: return figures.floor.si;
        case Compared::sill: return figures.sill.si;
        case Compared::hall_floor: return figures.hall_floor.si;
        case Compared::breathed: return figures.breathed.si;
        case Compared::took: return figures.took.si;
    }
    return 0.0;
}

double harm_of(const WhatIf& what_if, Compared what) { return difference(what_if, what_if.before, what_if.after, what); }

std::optional<Band> harm_band(const WhatIf& what_if, Compared what)
{
    std::vector<double> all;
    for (std::size_t i = 0; i < what_if.paired_before.size(); ++i) all.push_back(difference(what_if, what_if.paired_before[i], what_if.paired_after[i], what));
    if (all.empty()) return std::nullopt;
    return band_of(all);
}

std::size_t harmful_runs(const WhatIf& what_if)
{
    std::size_t count = 0;
    for (std::size_t i = 0; i < what_if.paired_before.size(); ++i) count += is_harm(what_if, what_if.paired_before[i], what_if.paired_after[i]) ? 1 : 0;
    return count;
}

bool did_harm(const WhatIf& what_if) { return is_harm(what_if, what_if.before, what_if.after); }

bool did_harm(const WhatIf& what_if, Compared what) { return shows(what_if, what_if.before, what_if.after, what); }

bool did_good(const WhatIf& what_if, Compared what) { return shows(what_if, what_if.before, what_if.after, what, -1.0, worth_explaining); }

}
