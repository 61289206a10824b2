#include "../dust/moving_air.hpp"

#include <catch2/catch.hpp>

#include <array>
#include <cmath>
#include <cstdio>
#include <string>
#include <vector>

// Is what comes out of the parcels a property of the model, or of its steps, its cells and its number of parcels? The same puff
// in the same draughty, furnished room four times over.

namespace flapdoor::dust {

namespace {

constexpr std::array classes{SizeClass::um_1, SizeClass::um_5, SizeClass::um_20, SizeClass::um_80};
constexpr std::array settling{Speed{7e-5}, Speed{1.5e-3}, Speed{0.024}, Speed{0.28}};
constexpr std::array moments{30.0_s, 120.0_s, 600.0_s};
constexpr std::array rings{0.5, 1.0, 2.0};          // m from the source
constexpr double source_x = 1.0;
constexpr double source_y = 1.5;

struct Resolution {
    std::string name;
    Length cell;
    double steps = 1.0;         ///< as many as usual, times this
    std::size_t parcels = 16'000;   ///< of each class
    std::uint64_t seed = 1;
};

struct Figure {
    std::string name;
    double share = 0.0;
};

CloudRoom draughty_room(Length cell)
{
    CloudRoom room = still_room(4.0_m, 3.0_m, 2.4_m, cell);
    const auto cells = [&](double west, double south, double width, double depth) { return room.raster.cells_in({Length{west}, Length{south}, Length{width}, Length{depth}}); };
    for (const std::size_t c : cells(1.6, 0.4, 0.8, 1.0)) room.top[c] = 0.8F;
    for (const std::size_t c : cells(2.6, 2.0, 0.4, 1.0)) room.top[c] = room.ceiling;
    blow(room, cells(0.0, 0.0, 0.2, 3.0), cells(3.4, 0.6, 0.6, 1.0), 170.0 / 3600.0);
    return room;
}

/// Shares of each class: still in the air after each moment; drawn out, kept by walls and landed within each ring at the end.
std::vector<Figure> figures(const Resolution& how)
{
    const CloudRoom room = draughty_room(how.cell);
    std::vector<Figure> all;
    for (std::size_t c = 0; c < classes.size(); ++c) {
        Cloud cloud;
        const Luck luck{how.seed, Stream::emission};
        for (std::uint64_t i = 0; i < how.parcels; ++i) {
            const auto jitter = [&](std::uint32_t axis) { return static_cast<float>(0.6 * luck.uniform(i, axis) - 0.3); };
            cloud.add(static_cast<float>(source_x) + jitter(0), static_cast<float>(source_y) + jitter(1), 1.2F + jitter(2), classes[c], i, {{1}, {}});
        }
        const std::string name(word_of(classes[c]));
        Time now{};
        for (const Time moment : moments) {
            const Time spell = moment - now;
            const auto steps = [&](Time longest) { return motion(spell, 0.005_m2ps, how.cell, 2.4_m, settling[c], settling[c] * 0.01, longest, wind(room)); };
            const Motion usual = steps(0.5_s);
            advance(cloud, room, alike(how.steps > 1.0 ? steps(Time{static_cast<double>(usual.dt) / how.steps}) : usual), how.seed, 2);
            now = moment;
            all.push_back({name + ": airborne after " + std::to_string(static_cast<int>(moment.si)) + " s", share(cloud, Fate::airborne)});
        }
        all.push_back({name + ": drawn out", share(cloud, Fate::left)});
        all.push_back({name + ": on walls", share(cloud, Fate::on_wall)});
        for (const double ring : rings) {
            std::size_t within = 0;
            for (std::size_t i = 0; i < cloud.count(); ++i) {
                const double east = static_cast<double>(cloud.x[i]) - source_x;
                const double north = static_cast<double>(cloud.y[i]) - source_y;
                within += cloud.fate[i] == Fate::landed && east * east + north * north <= ring * ring;
            }
            all.push_back({name + ": landed within " + std::to_string(ring).substr(0, 3) + " m", static_cast<double>(within) / static_cast<double>(how.parcels)});
        }
    }
    return all;
}

/// Three standard errors of the difference of two counts, and what the resolution itself may change.
double allowed(double share, const Resolution& one, const Resolution& other)
{
    constexpr double by_resolution = 0.01;
    const double variance = share * (1.0 - share) * (1.0 / static_cast<double>(one.parcels) + 1.0 / static_cast<double>(other.parcels));
    return by_resolution + 3.0 * std::sqrt(variance);
}

}

TEST_CASE("half the step, half the cell or twice the parcels changes no share by more than 1 % and chance", "[convergence]")
{
    const Resolution usual{"as shipped", 0.1_m};
    const std::array others{Resolution{"half the step", 0.1_m, 2.0, 16'000, 2}, Resolution{"half the cell", 0.05_m, 1.0, 16'000, 3},
                            Resolution{"twice the parcels", 0.1_m, 1.0, 32'000, 4}};
    const std::vector<Figure> base = figures(usual);
    std::vector<std::vector<Figure>> found;
    for (const Resolution& other : others) found.push_back(figures(other));
    std::printf("%-34s %12s %14s %14s %18s %9s\n", "share of a class", "as shipped", "half the step", "half the cell", "twice the parcels", "allowed");
    for (std::size_t f = 0; f < base.size(); ++f) {
        std::printf("%-34s %12.4f %14.4f %14.4f %18.4f %9.4f\n", base[f].name.c_str(), base[f].share, found[0][f].share, found[1][f].share, found[2][f].share,
                    allowed(base[f].share, usual, others[0]));
        for (std::size_t o = 0; o < others.size(); ++o) {
            INFO(base[f].name << ", " << others[o].name);
            CHECK(std::abs(found[o][f].share - base[f].share) <= allowed(base[f].share, usual, others[o]));
        }
    }
    // The figures tell something: every fate has its share somewhere.
    const auto largest = [&](const std::string& what) {
        double most = 0.0;
        for (const Figure& figure : base)
            if (figure.name.find(what) != std::string::npos) most = std::max(most, figure.share);
        return most;
    };
    for (const char* what : {"airborne after 600", "drawn out", "within 0.5", "within 2.0"}) CHECK(largest(what) > 0.1);
}

}
