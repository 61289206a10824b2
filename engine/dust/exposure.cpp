#include "dust/exposure.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>

namespace flapdoor::dust {

namespace {

constexpr Time shift = 8.0_h;

double passing(Length d_ae, Length half_passes)
{
    return 1.0 - steady::normal_cdf(steady::log(d_ae / half_passes) / steady::log(1.5));
}

}

double inhalable_share(Length d_ae)
{
    insist(d_ae.si > 0.0, "a diameter is above zero");
    if (d_ae > 100.0_um) return 0.0;
    return 0.5 * (1.0 + steady::exp(-0.06 * (d_ae / 1.0_um)));
}

double thoracic_share(Length d_ae) { return inhalable_share(d_ae) * passing(d_ae, 11.64_um); }

double respirable_share(Length d_ae) { return inhalable_share(d_ae) * passing(d_ae, 4.25_um); }

Concentration far_field(MassRate source, AirFlow cleared)
{
    insist(cleared.si > 0.0, "a room's air is cleared somehow");
    return source / cleared;
}

Concentration near_field(MassRate source, AirFlow cleared, AirFlow exchange)
{
    insist(exchange.si > 0.0, "the breathing zone has a wind of its own");
    return far_field(source, cleared) + source / exchange;
}

Dose dose_of_puff(Mass puff, AirFlow exchange)
{
    insist(puff.si >= 0.0 && exchange.si > 0.0, "the breathing zone has a wind of its own");
    return puff / exchange;
}

Concentration eight_hour_average(std::span<const Spell> spells)
{
    Dose sum{};
    for (const Spell& spell : spells) sum += spell.concentration * spell.time;
    return eight_hour_average(sum);
}

Concentration eight_hour_average(Dose dose) { return dose / shift; }

Time time_to_reach(Concentration limit, Concentration concentration)
{
    if (concentration <= limit) return shift;
    return shift * (limit / concentration);
}

}
