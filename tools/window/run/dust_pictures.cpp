#include "window/run/dust_pictures.hpp"

#include "dust/visibility.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

constexpr int heat_fineness = 3;
constexpr int grain_fineness = 6;

/// A number from 0 to 1 that looks random and is the same for the same place.
double speckle(std::size_t zone, int column, int row)
{
    std::uint32_t h = static_cast<std::uint32_t>(column) * 0x9E3779B1U ^ static_cast<std::uint32_t>(row) * 0x85EBCA77U ^
                      static_cast<std::uint32_t>(zone) * 0xC2B2AE3DU;
    h = (h ^ (h >> 15)) * 0x2C1B3C6DU;
    h = (h ^ (h >> 12)) * 0x297A2D39U;
    return static_cast<double>(h ^ (h >> 15)) / 4294967296.0;
}

dust::Background background_of(job::FloorKind floor)
{
    if (floor == job::FloorKind::carpet) return dust::Background::carpet;
    return floor == job::FloorKind::wood ? dust::Background::dark_floor : dust::Background::light_floor;
}

/// Share of a cell's pixels that become grain: a few at the threshold, most of them three hundred times above it.
double grain_share(double coverage, double least)
{
    if (!(coverage >= least)) return 0.0;
    return std::min(0.05 + 0.32 * std::log10(coverage / least), 0.85);
}

}

double least_seen(const Story& story, const drill::Frame& frame, std::size_t zone, std::size_t cell)
{
    const bool is_sheeted = zone == story.film.work_room && cell < frame.is_sheeted.size() && frame.is_sheeted[cell] != 0;
    const dust::Background background = is_sheeted ? dust::Background::plastic_film : background_of(story.film.zones[zone].floor);
    return dust::just_seen * dust::contrast_factor(background) * dust::light_factor(dust::Light::room);
}

Picture grain_picture(const Story& story, const drill::Frame& frame, std::size_t zone, Color grain, int fineness)
{
    const plan::Raster& raster = story.film.rasters[zone];
    const int columns = static_cast<int>(raster.columns()) * fineness;
    const int rows = static_cast<int>(raster.rows()) * fineness;
    Picture picture(columns, rows, {grain.r, grain.g, grain.b, 0});
    for (std::size_t cell = 0; cell < raster.size(); ++cell) {
        const double share = grain_share(static_cast<double>(frame.seen[zone][cell]), least_seen(story, frame, zone, cell));
        if (share <= 0.0) continue;
        const int left = static_cast<int>(raster.column(cell)) * fineness;
        const int top = rows - (static_cast<int>(raster.row(cell)) + 1) * fineness;
        for (int row = top; row < top + fineness; ++row)
            for (int column = left; column < left + fineness; ++column) {
                const double luck = speckle(zone, column, row);
                if (luck < share) picture.at(column, row) = faded(grain, 0.45 + 0.55 * (1.0 - luck / share));
            }
    }
    return picture;
}

HeatGrid heat_grid(const Story& story, const drill::Frame& frame, std::size_t zone)
{
    const plan::Raster& raster = story.film.rasters[zone];
    HeatGrid grid;
    grid.columns = static_cast<int>(raster.columns());
    grid.rows = static_cast<int>(raster.rows());
    grid.low = {raster.rect().west.si, raster.rect().south.si};
    grid.cell = raster.cell_width().si;
    grid.loading = frame.lead[zone];
    grid.room.assign(raster.size(), 1);
    return grid;
}

const std::vector<PictureId>& DustPictures::of(PictureShelf& shelf, const Story& story, std::size_t frame, ViewKind view, Color grain)
{
    if (shown_ == Key{frame, view, story.edition}) return ids_;
    const drill::Frame& shot = story.film.frames[frame];
    for (std::size_t zone = 0; zone < story.film.zones.size(); ++zone) {
        Picture picture = view == ViewKind::seen ? grain_picture(story, shot, zone, grain, grain_fineness)
                                                 : heat_picture(heat_grid(story, shot, zone), floor_scale, dust_ramp, heat_fineness);
        if (zone < ids_.size())
            shelf.replace(ids_[zone], std::move(picture));
        else
            ids_.push_back(shelf.add(std::move(picture)));
    }
    shown_ = Key{frame, view, story.edition};
    return ids_;
}

}
