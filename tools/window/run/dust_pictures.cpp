#include "window/run/dust_pictures.hpp"

#include "window/run/moment.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

constexpr int heat_fineness = 3;
constexpr int grain_fineness = 6;
constexpr Color bright{0xFF, 0xEE, 0xB4, 0xD8}; // floor in the light of a flashlight
constexpr Color dimmed{0x22, 0x2E, 0x38, 0x1C}; // floor beside it, as the eye takes it then

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

double least_seen(const Story& story, const drill::Frame& frame, std::size_t zone, std::size_t cell, dust::Light light)
{
    const bool is_sheeted = zone == story.film.work_room && cell < frame.is_sheeted.size() && frame.is_sheeted[cell] != 0;
    const dust::Background background = is_sheeted ? dust::Background::plastic_film : background_of(story.film.zones[zone].floor);
    // A pile throws shadows of its own: no light along it shows more.
    const double by_light = background == dust::Background::carpet ? 1.0 : dust::light_factor(light);
    return dust::just_seen * dust::contrast_factor(background) * by_light / story.inputs.scenario.light;
}

Picture grain_picture(const Story& story, const drill::Frame& frame, std::size_t zone, Color grain, int fineness, const std::optional<Beam>& beam)
{
    const plan::Raster& raster = story.film.rasters[zone];
    const PaperBox floor = paper(raster.rect());
    const int columns = static_cast<int>(raster.columns()) * fineness;
    const int rows = static_cast<int>(raster.rows()) * fineness;
    const auto place_of = [&](int column, int row) {
        return PaperPoint{floor.low.x + floor.width() * (column + 0.5) / columns, floor.high.y - floor.height() * (row + 0.5) / rows};
    };
    const Color unlit = beam ? dimmed : Color{grain.r, grain.g, grain.b, 0};
    Picture picture(columns, rows, unlit);
    for (std::size_t cell = 0; cell < raster.size(); ++cell) {
        const auto coverage = static_cast<double>(frame.seen[zone][cell]);
        const double by_room = grain_share(coverage, least_seen(story, frame, zone, cell));
        const double by_beam = beam ? grain_share(coverage, least_seen(story, frame, zone, cell, dust::Light::raking)) : 0.0;
        const int left = static_cast<int>(raster.column(cell)) * fineness;
        const int top = rows - (static_cast<int>(raster.row(cell)) + 1) * fineness;
        for (int row = top; row < top + fineness; ++row)
            for (int column = left; column < left + fineness; ++column) {
                const bool is_lit = beam && beam->lights(place_of(column, row));
                const double share = is_lit ? by_beam : by_room;
                const double luck = speckle(zone, column, row);
                if (luck < share) picture.at(column, row) = faded(grain, 0.45 + 0.55 * (1.0 - luck / share));
                else if (is_lit) picture.at(column, row) = bright;
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

const std::vector<PictureId>& DustPictures::of(PictureShelf& shelf, const Story& story, std::size_t frame, ViewKind view, Color grain, const std::optional<Beam>& beam)
{
    const drill::Frame& shot = story.film.frames[frame];
    for (std::size_t zone = 0; zone < story.film.zones.size(); ++zone) {
        Key key{frame, view, story.edition, {}};
        if (view == ViewKind::seen && beam && paper(story.film.rasters[zone].rect()).contains(beam->spot)) key.beam = beam;
        if (zone < shown_.size() && shown_[zone] == key) continue;
        Picture picture = view == ViewKind::seen ? grain_picture(story, shot, zone, grain, grain_fineness, key.beam)
                                                 : heat_picture(heat_grid(story, shot, zone), floor_scale, dust_ramp, heat_fineness);
        if (zone < ids_.size()) {
            shelf.replace(ids_[zone], std::move(picture));
            shown_[zone] = key;
            continue;
        }
        ids_.push_back(shelf.add(std::move(picture)));
        shown_.push_back(key);
    }
    return ids_;
}

}
