#include "scenes.hpp"

namespace flapdoor::bench {

using namespace flapdoor::dust;

FurnishedRoom::FurnishedRoom(Length cell) : room{.raster = plan::Raster({{}, {}, Length{5.0}, Length{4.0}}, cell), .ceiling = 2.4F, .top = {}, .leaving = {}}
{
    const plan::Raster& raster = room.raster;
    constexpr double flow = 0.047;     // 170 m3/h
    const plan::Rect chest{Length{0.8}, Length{0.5}, Length{1.2}, Length{0.9}};
    const plan::Rect cupboard{Length{2.6}, Length{3.0}, Length{0.8}, Length{0.6}};
    const plan::Rect near_register{Length{4.2}, Length{2.6}, Length{0.8}, Length{1.0}};
    const plan::Rect west{Length{0.0}, Length{0.0}, Length{0.2}, Length{4.0}};
    room.top.assign(raster.size(), 0.0F);
    room.leaving.assign(raster.size(), 0.0F);
    sources.assign(raster.size(), 0.0);
    for (const std::size_t c : raster.cells_in(chest)) room.top[c] = 0.8F;
    for (const std::size_t c : raster.cells_in(cupboard)) room.top[c] = room.ceiling;
    const auto outlet = raster.cells_in(near_register);
    const auto inlet = raster.cells_in(west);
    const double rate = flow / (static_cast<double>(outlet.size()) * raster.cell_area().si * 2.4);
    for (const std::size_t c : outlet) {
        room.leaving[c] = static_cast<float>(rate);
        sources[c] -= flow / static_cast<double>(outlet.size());
    }
    for (const std::size_t c : inlet) sources[c] += flow / static_cast<double>(inlet.size());
    plan = {raster, {}};
    for (std::size_t c = 0; c < raster.size(); ++c) plan.free_height.push_back(static_cast<double>(room.free_height(c)));
    room.flow = air::RoomFlow().solve(plan, sources);
}

CloudScene::CloudScene(std::size_t parcels)
{
    const FurnishedRoom furnished(Length{0.1});
    PerClass<Motion> motions;
    const Speed wind = air::fastest(furnished.plan, furnished.room.flow);
    for (const SizeClass k : all_classes())
        motions[k] = motion(Time{10.0}, Diffusivity{0.005}, Length{0.1}, Length{2.4}, Speed{8e-5}, Speed{1e-5}, Time{0.1}, wind);
    table = step_table(furnished.room, motions);
    const Luck luck{seed, Stream::emission};
    for (std::uint64_t tried = 0; cloud.count() < parcels; ++tried) {
        const auto part = [&](std::uint32_t axis) { return static_cast<float>(luck.uniform(tried, axis)); };
        const float x = part(0) * table.width;
        const float y = part(1) * table.depth;
        const float z = 1.0F + part(2);
        const std::size_t below = furnished.room.raster.cell_at({Length{static_cast<double>(x)}, Length{static_cast<double>(y)}});
        if (z > furnished.room.top[below]) cloud.add(x, y, z, SizeClass::um_1, tried, {{1}, {}});
    }
}

}
