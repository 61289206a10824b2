#include "window/run/reading.hpp"

#include "window/run/dust_pictures.hpp"
#include "window/run/plan_part.hpp"

namespace flapdoor::window {

std::optional<Reading> reading_at(const Story& story, const Moment& moment, PaperPoint at)
{
    const plan::Point p{Length{at.x}, Length{at.y}};
    for (std::size_t z = 0; z < story.film.rasters.size(); ++z) {
        const plan::Raster& raster = story.film.rasters[z];
        if (!raster.rect().contains(p)) continue;
        const std::size_t cell = raster.cell_at(p);
        Reading reading{z,
                        static_cast<double>(moment.now->lead[z][cell]),
                        static_cast<double>(moment.now->seen[z][cell]),
                        least_seen(story, *moment.now, z, cell),
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

}
