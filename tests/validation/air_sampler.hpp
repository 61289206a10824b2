#pragma once

#include "dust/exposure.hpp"
#include "stage.hpp"

#include <functional>

namespace flapdoor::validation {

/// Share of a class that the sampler takes in: inhalable, thoracic, respirable, or all of some sizes.
using Inlet = std::function<double(dust::SizeClass)>;

inline double inhalable(dust::SizeClass k) { return dust::inhalable_share(dust::typical_diameter(k)); }
inline double respirable(dust::SizeClass k) { return dust::respirable_share(dust::typical_diameter(k)); }
inline double up_to_10_um(dust::SizeClass k) { return k <= dust::SizeClass::um_5 ? 1.0 : 0.0; }
inline double up_to_2_5_um(dust::SizeClass k) { return k <= dust::SizeClass::um_1 ? 1.0 : 0.0; }

/// Dust and lead in the air of part of the work room, ug/m3: cells at some distance from a point, between two heights.
struct AirSampler {
    double nearest = 0.0, farthest = 0.75;   ///< m, from the point in plan
    double low = 0.75, high = 2.25;          ///< m; the usual column holds a standing worker's breathing zone
    Inlet inlet = inhalable;

    double lead(const site::Site& site, plan::Point where) const { return sample(site, where, &Amount::lead); }
    double dust(const site::Site& site, plan::Point where) const { return sample(site, where, &Amount::dust); }

private:
    double sample(const site::Site& site, plan::Point where, Picograms Amount::* which) const
    {
        const plan::Raster& raster = site.room().raster;
        const auto is_in = [&](plan::Point at) {
            const double away = plan::distance(at, where).si;
            return away >= nearest && away <= farthest;
        };
        double cells = 0.0;
        for (std::size_t cell = 0; cell < raster.size(); ++cell)
            if (is_in(raster.center(cell))) cells += 1.0;
        const double volume = cells * raster.cell_area().si * (high - low);
        double inside = 0.0;
        for (std::size_t i = 0; i < site.cloud.count(); ++i) {
            const plan::Point at{raster.rect().west + Length{static_cast<double>(site.cloud.x[i])}, raster.rect().south + Length{static_cast<double>(site.cloud.y[i])}};
            const auto z = static_cast<double>(site.cloud.z[i]);
            if (z >= low && z <= high && is_in(raster.center(raster.cell_at(at)))) inside += static_cast<double>((site.cloud.amount[i].*which).count) * inlet(site.cloud.size[i]);
        }
        double mixed = 0.0;
        for (const dust::SizeClass k : dust::all_classes()) mixed += static_cast<double>((site.room().air[k].*which).count) * inlet(k);
        return (inside / volume + mixed / site.room().volume.si) * 1e-6;
    }
};

/// Mean inhalable lead that the worker breathes while one card is carried out, ug/m3, as the program keeps it.
inline double breathed_lead(Stage& stage, const std::string& card)
{
    const Time start = stage.site.now;
    const dust::Dose before = stage.ana().breathed_lead;
    stage.play(card);
    return (stage.ana().breathed_lead - before) / (stage.site.now - start) / 1.0_kgpm3 * 1e9;
}

/// Mean lead around the worker by an instrument of some inlet that sees the parcels, ug/m3.
inline double sampled_lead(Stage& stage, const std::string& card, const Inlet& inlet)
{
    const AirSampler sampler{.inlet = inlet};
    double sum = 0.0;
    double ticks = 0.0;
    stage.site.watcher = [&](const site::Site& site) {
        sum += sampler.lead(site, site.crew.front().at);
        ticks += 1.0;
    };
    stage.play(card);
    stage.site.watcher = {};
    return sum / ticks;
}

}
