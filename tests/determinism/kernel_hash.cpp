// Runs the parcel kernel with and without flow, one parcel at a time and eight abreast, the flow in a room and the elementary
// functions on fixed cases and compares the fingerprints with the committed ones. Built in many ways (CMakeLists.txt beside it); every way must give the same bits, and the one that fuses multiply and
// add must not, or this check could not see what it is here for.
//
//   kernel_hash THREADS                      prints the fingerprints
//   kernel_hash THREADS FILE same|different  compares them with FILE as well

#include "air/room_flow.hpp"
#include "core/hash.hpp"
#include "core/steady.hpp"
#include "dust/cloud.hpp"
#include "dust/eight_parcels.hpp"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <iterator>
#include <sstream>
#include <string>
#include <vector>

namespace {

using namespace flapdoor;
using namespace flapdoor::dust;

constexpr std::size_t parcels = 20'011;   // a prime: no share of it is even
constexpr int spells = 4;
constexpr int steps_a_spell = 100;
constexpr std::uint64_t seed = 0x1ead5afe;

/// 4.0 m x 3.0 m x 2.4 m with a dresser, a tall cupboard, a screen to the ceiling, an opening and sticking walls.
CloudRoom furnished_room()
{
    CloudRoom room{.raster = plan::Raster({{}, {}, Length{4.0}, Length{3.0}}, Length{0.1}), .ceiling = 2.4F, .top = {}, .leaving = {}};
    room.top.assign(room.raster.size(), 0.0F);
    room.leaving.assign(room.raster.size(), 0.0F);
    const auto block = [&](std::size_t west, std::size_t south, std::size_t east, std::size_t north, std::vector<float>& field, float value) {
        for (std::size_t row = south; row <= north; ++row)
            for (std::size_t column = west; column <= east; ++column) field[row * room.raster.columns() + column] = value;
    };
    block(3, 4, 9, 8, room.top, 0.85F);
    block(30, 20, 34, 29, room.top, 1.95F);
    block(20, 0, 20, 17, room.top, 2.4F);
    block(37, 5, 39, 12, room.leaving, 0.31F);
    return room;
}

/// Air blown in along the west wall and drawn out near the opening, by the solver.
air::SideFlows draught(const CloudRoom& room)
{
    air::RoomPlan plan{room.raster, {}};
    std::vector<double> sources;
    for (std::size_t cell = 0; cell < room.raster.size(); ++cell) {
        plan.free_height.push_back(static_cast<double>(room.free_height(cell)));
        double source = room.leaving[cell] > 0.0F ? -0.04 : 0.0;
        if (room.raster.column(cell) == 0) source += 0.025;
        sources.push_back(source);
    }
    return air::RoomFlow().solve(plan, sources);
}

Cloud cloud_at_the_window(const CloudRoom& room)
{
    Cloud cloud;
    const Luck luck{seed, Stream::emission};
    constexpr SizeClass sizes[] = {SizeClass::um_1, SizeClass::um_5, SizeClass::um_20, SizeClass::um_80};
    for (std::size_t i = 0; i < parcels; ++i) {
        const auto part = [&](std::uint32_t axis) { return static_cast<float>(luck.uniform(i, axis)); };
        const std::int64_t pg = 1'000 + static_cast<std::int64_t>(i % 977);
        cloud.add(part(0) * room.width(), part(1) * room.depth(), 1.0F + part(2), sizes[i % 4], i, {{pg}, {pg / 20}});
    }
    return cloud;
}

struct Outcome {
    std::uint64_t kernel = 0;
    std::uint64_t flow = 0;
    std::uint64_t functions = 0;
    std::size_t by_fate[4] = {};
    bool is_complete = true;    ///< in every run each fate occurred and every picogram was accounted for
};

/// @return  hash of the states of all parcels after each spell, and of what landed where
std::uint64_t run_kernel(Outcome& outcome, const CloudRoom& room, unsigned threads, Abreast abreast)
{
    std::fill(std::begin(outcome.by_fate), std::end(outcome.by_fate), 0);
    Cloud cloud = cloud_at_the_window(room);
    PerClass<Motion> motions;
    for (const auto& [k, fall] : {std::pair{SizeClass::um_1, 3.5e-6F}, {SizeClass::um_5, 7.8e-5F}, {SizeClass::um_20, 1.2e-3F}, {SizeClass::um_80, 1.7e-2F}})
        motions[k] = {.steps = steps_a_spell, .dt = 0.1F, .spread = 0.0331F, .fall = fall, .wall_stick = 0.013F};

    Fingerprint print;
    std::vector<Amount> landed(room.raster.size());
    std::vector<bool> is_counted(parcels, false);
    Amount flying;
    Amount gone;
    for (int spell = 0; spell < spells; ++spell) {
        print.add(advance(cloud, room, motions, seed, threads, abreast));
        print.add(fingerprint(cloud));
        for (std::size_t i = 0; i < cloud.count(); ++i) {
            if (is_counted[i] || cloud.fate[i] == Fate::airborne) continue;
            is_counted[i] = true;
            const std::size_t cell = room.raster.cell_at({Length{static_cast<double>(cloud.x[i])}, Length{static_cast<double>(cloud.y[i])}});
            (cloud.fate[i] == Fate::landed ? landed[cell] : gone) += cloud.amount[i];
        }
    }
    Amount all;
    Amount accounted = gone;
    for (std::size_t i = 0; i < cloud.count(); ++i) {
        all += cloud.amount[i];
        ++outcome.by_fate[static_cast<std::size_t>(cloud.fate[i])];
        if (cloud.fate[i] == Fate::airborne) flying += cloud.amount[i];
    }
    for (const Amount& amount : landed) {
        print.add(amount.dust.count);
        print.add(amount.lead.count);
        accounted += amount;
    }
    accounted += flying;
    outcome.is_complete = outcome.is_complete && accounted == all && cloud.count() == parcels;
    for (const std::size_t count : outcome.by_fate) outcome.is_complete = outcome.is_complete && count > 100;
    return print.value();
}

/// Still air and moving air, each both ways. Ways that do not agree spoil the hash.
void run_kernels(Outcome& outcome, unsigned threads)
{
    CloudRoom room = furnished_room();
    Fingerprint print;
    for (const bool is_moving : {false, true}) {
        if (is_moving) {
            room.flow = draught(room);
            Fingerprint flow;
            for (std::size_t cell = 0; cell < room.raster.size(); ++cell) {
                flow.add(room.flow.east[cell]);
                flow.add(room.flow.north[cell]);
            }
            outcome.flow = flow.value();
        }
        const std::uint64_t one = run_kernel(outcome, room, threads, Abreast::one);
        const std::uint64_t many = run_kernel(outcome, room, threads, Abreast::as_many_as_possible);
        if (one != many) std::cerr << "one parcel at a time and eight abreast differ\n";
        print.add_word(one == many ? one : 0);
        std::cerr << (is_moving ? "moving air: " : "still air: ") << "airborne " << outcome.by_fate[0] << ", landed " << outcome.by_fate[1] << ", on walls "
                  << outcome.by_fate[2] << ", left " << outcome.by_fate[3] << (can_carry_eight() ? "" : " (this processor carries one at a time)") << '\n';
    }
    outcome.kernel = print.value();
}

void run_functions(Outcome& outcome)
{
    Fingerprint print;
    for (int i = 1; i <= 4'001; ++i) {
        const double x = i * 0.0173;
        print.add(steady::exp(x - 40.0));
        print.add(steady::expm1(x / 100.0));
        print.add(steady::log(x));
        print.add(steady::pow(x, 2.0 / 3.0));
        print.add(steady::sin(x));
        print.add(steady::cos(x));
        print.add(steady::atan(x - 30.0));
        print.add(steady::normal_cdf(x / 5.0 - 7.0));
    }
    outcome.functions = print.value();
}

}

int main(int count, char** arguments)
{
    const std::vector<std::string> words(arguments + 1, arguments + count);
    if (words.size() != 1 && words.size() != 3) {
        std::cerr << "expected: kernel_hash THREADS [FILE same|different]\n";
        return 2;
    }
    Outcome outcome;
    run_kernels(outcome, static_cast<unsigned>(std::atoi(words[0].c_str())));
    run_functions(outcome);
    const std::string found = "kernel " + to_hex(outcome.kernel) + "\nflow " + to_hex(outcome.flow) + "\nfunctions " + to_hex(outcome.functions) + "\n";
    std::cout << found;
    if (!outcome.is_complete) {
        std::cerr << "the run itself is not sound: a fate is missing, or mass\n";
        return 1;
    }
    if (words.size() == 1) return 0;

    std::ifstream file(words[1]);
    const std::string committed((std::istreambuf_iterator<char>(file)), {});
    const auto line = [](const std::string& text, const std::string& label) {
        std::istringstream all(text);
        for (std::string word, value; all >> word >> value;)
            if (word == label) return value;
        return std::string();
    };
    for (const std::string label : {"kernel", "flow", "functions"}) {
        if (line(committed, label).empty()) {
            std::cerr << words[1] << ": expected a line \"" << label << " ...\"\n";
            return 1;
        }
        if (words[2] == "same" && line(committed, label) != line(found, label)) return 1;
        if (words[2] == "different" && line(committed, label) == line(found, label)) return 1;
    }
    if (words[2] == "same" || words[2] == "different") return 0;
    std::cerr << "expected same or different, found " << words[2] << '\n';
    return 2;
}
