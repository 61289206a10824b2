#include "window/run/reading.hpp"

#include "window/run/dust_pictures.hpp"
#include "window/run/plan_part.hpp"

#include "text/show.hpp"

#include <fmt/format.h>

namespace flapdoor::window {

std::optional<Reading> reading_at(const Story& story, const Moment& moment, PaperPoint at, const std::optional<Beam>& beam)
{
    const plan::Point p{Length{at.x}, Length{at.y}};
    for (std::size_t z = 0; z < story.film.rasters.size(); ++z) {
        const plan::Raster& raster = story.film.rasters[z];
        if (!raster.rect().contains(p)) continue;
        const std::size_t cell = raster.cell_at(p);
        const bool is_lit = beam && beam->lights(at) && raster.rect().contains(plan::Point{Length{beam->spot.x}, Length{beam->spot.y}});
        Reading reading{z,
                        static_cast<double>(moment.now->lead[z][cell]),
                        static_cast<double>(moment.now->seen[z][cell]),
                        least_seen(story, *moment.now, z, cell, is_lit ? dust::Light::raking : dust::Light::room),
                        is_lit,
                        moment.now->air_lead[z],
                        "floor"};
        if (z == story.film.work_room && moment.now->is_sheeted[cell] != 0) reading.surface = "sheeting";
        const auto& objects = story.inputs.scenario.objects;
        for (std::size_t i = 0; i < objects.size(); ++i)
            if (moment.now->is_object_there[i] != 0 && footprint_of(objects[i]).contains(at))
                reading.surface = reading.surface == "sheeting" ? "cover of " + objects[i].title : objects[i].title;
        return reading;
    }
    return std::nullopt;
}

std::string fine_percent(double share) { return fmt::format("{} %", text::show_number(share * 100.0, 2)); }

}
