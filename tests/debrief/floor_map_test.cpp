#include "debrief/floor_map.hpp"

#include "debrief/picture.hpp"
#include "debrief/wording.hpp"
#include "small_job.hpp"

using namespace flapdoor;
using namespace flapdoor::debrief;
using small_job::count;

namespace {

MapScene scene_of(const Report& report, std::size_t map) { return {report.scenario, report.rasters, report.work_room, report.maps.at(map).frame, "Map"}; }

std::size_t loaded_cells(const Report& report, std::size_t map, const plan::Rect& window)
{
    std::size_t loaded = 0;
    for (std::size_t zone = 0; zone < report.rasters.size(); ++zone) {
        const plan::Raster& raster = report.rasters[zone];
        const std::vector<float>& lead = report.maps.at(map).frame.lead[zone];
        REQUIRE(lead.size() == raster.size());
        for (std::size_t cell = 0; cell < lead.size(); ++cell) {
            const plan::Point center = raster.center(cell);
            const plan::Rect where{center.x - raster.cell_width() * 0.5, center.y - raster.cell_depth() * 0.5, raster.cell_width(), raster.cell_depth()};
            if (lead[cell] > 0.0F && plan::overlap(where, window)) ++loaded;
        }
    }
    return loaded;
}

}

TEST_CASE("a floor map has one rectangle for each cell with a load")
{
    const auto made = small_job::make(small_job::careless);
    for (std::size_t map = 0; map < made.report.maps.size(); ++map) {
        const MapScene scene = scene_of(made.report, map);
        for (const bool shows_all : {true, false}) {
            const MapLook look{400.0, shows_all, false};
            const std::size_t loaded = loaded_cells(made.report, map, map_window(scene, look));
            CHECK(loaded > 100);
            CHECK(count(floor_map(scene, look).html(), "class=\"cell\"") == loaded);
        }
    }
}

TEST_CASE("cells without a load are left blank")
{
    auto made = small_job::make(small_job::careless);
    drill::Frame& frame = made.report.maps.front().frame;
    for (auto& zone : frame.lead) zone.assign(zone.size(), 0.0F);
    frame.lead[0][17] = 3.0F;
    CHECK(count(floor_map(scene_of(made.report, 0), {}).html(), "class=\"cell\"") == 1);
}

TEST_CASE("the map shows the work room and what lies next to it, or everything")
{
    const auto made = small_job::make(small_job::signs);
    const MapScene scene = scene_of(made.report, 0);
    const plan::Rect near = map_window(scene, {400.0, false, false}), all = map_window(scene, {400.0, true, false});
    CHECK(all.width.si == Approx((28.0_ft).si));
    CHECK(near.width.si == Approx((16.0_ft).si));   // room 8 ft, hall 4 ft, and 4 ft of the far room
    CHECK(all.contains(near));
}

TEST_CASE("a picture stands alone: its own style, scale, unit and note, and nothing from elsewhere")
{
    const auto made = small_job::make(small_job::careless, small_job::hostile);
    const std::string svg = picture(made.report, 0);
    CHECK(svg.find("svg:root { font-family: ") != std::string::npos);     // alone it has no page to take its letters from
    CHECK(svg.starts_with("<?xml"));
    CHECK(count(svg, "xmlns=\"http://www.w3.org/2000/svg\"") == 1);
    CHECK(count(svg, "<style>") == 1);
    CHECK(count(svg, "http") == 1);
    CHECK(count(svg, ">lead, ug/ft2<") >= 1);
    CHECK(count(svg, std::string(loading_note)) >= 1);
    CHECK(count(svg, "<script") == 0);
    CHECK(picture(made.scenario, made.film, made.film.frames.back(), "End").find("End") != std::string::npos);
    CHECK_THROWS_AS(picture(made.report, 9), BrokenPromise);
}

TEST_CASE("the plan shows how openings stand in that frame")
{
    auto made = small_job::make(small_job::signs);
    drill::Frame& frame = made.report.maps.back().frame;
    const auto signs_of = [&](const char* look) { return count(floor_map(scene_of(made.report, 0), {}).html(), look); };
    const std::size_t covers = signs_of("class=\"cover\"");
    const std::size_t flaps = signs_of("<polyline");
    frame.openings[3].is_covered = true;
    frame.openings[1].has_flap = true;
    CHECK(signs_of("class=\"cover\"") == covers + 1);
    CHECK(signs_of("<polyline") == flaps + 1);
    CHECK(signs_of("Return, open, covered") == 1);

    const std::size_t things = signs_of("class=\"thing\"");
    frame.is_object_there[0] = 0;
    CHECK(signs_of("class=\"thing\"") == things - 1);
}
