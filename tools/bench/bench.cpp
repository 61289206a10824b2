// How fast the parcel kernel is, told as ratios to a plain loop and to memory in the same process.

#include "core/hash.hpp"
#include "dust/cloud.hpp"
#include "plain_kernel.hpp"
#include "ratio_table.hpp"

#include <benchmark/benchmark.h>

#include <string>
#include <vector>

namespace {

using namespace flapdoor;
using namespace flapdoor::dust;

constexpr std::uint64_t seed = 7;

/// A furnished room in which fine dust stays in the air, so that every parcel makes nearly every step.
struct Scene {
    CloudRoom room{.raster = plan::Raster({{}, {}, Length{5.0}, Length{4.0}}, Length{0.1}), .ceiling = 2.4F, .top = {}, .leaving = {}};
    PerClass<Motion> motions;
    Cloud cloud;

    explicit Scene(std::size_t parcels)
    {
        room.top.assign(room.raster.size(), 0.0F);
        room.leaving.assign(room.raster.size(), 0.0F);
        for (std::size_t row = 5; row < 14; ++row)
            for (std::size_t column = 8; column < 20; ++column) room.top[row * room.raster.columns() + column] = 0.8F;
        for (std::size_t row = 30; row < 38; ++row) room.leaving[row * room.raster.columns() + 49] = 0.2F;
        for (const SizeClass k : all_classes())
            motions[k] = motion(Time{10.0}, Diffusivity{0.005}, Length{0.1}, Length{2.4}, Speed{8e-5}, Speed{1e-5}, Time{0.1});
        const Luck luck{seed, Stream::emission};
        for (std::size_t i = 0; i < parcels; ++i) {
            const auto part = [&](std::uint32_t axis) { return static_cast<float>(luck.uniform(i, axis)); };
            cloud.add(part(0) * room.width(), part(1) * room.depth(), 1.0F + part(2), SizeClass::um_1, i, {{1}, {}});
        }
    }
};

void carry(benchmark::State& state, std::size_t parcels, unsigned threads, bool is_plain)
{
    const Scene scene(parcels);
    Cloud cloud;
    std::uint64_t steps = 0;
    for (auto _ : state) {
        state.PauseTiming();
        cloud = scene.cloud;
        state.ResumeTiming();
        steps += is_plain ? bench::advance_plainly(cloud, scene.room, scene.motions, seed) : advance(cloud, scene.room, scene.motions, seed, threads);
    }
    state.counters["work"] = static_cast<double>(steps);
    state.counters["threads"] = threads;
    state.SetLabel(to_hex(fingerprint(cloud)));
}

/// a = b + s c over three arrays far larger than the caches: 24 bytes an element.
void triad(benchmark::State& state)
{
    constexpr std::size_t count = 4'000'000;
    std::vector<double> a(count, 0.0);
    const std::vector<double> b(count, 1.0);
    const std::vector<double> c(count, 2.0);
    for (auto _ : state) {
        for (std::size_t i = 0; i < count; ++i) a[i] = b[i] + 3.0 * c[i];
        benchmark::DoNotOptimize(a.data());
        benchmark::ClobberMemory();
    }
    state.counters["work"] = static_cast<double>(state.iterations()) * count * 24.0;
    state.counters["threads"] = 1;
    state.SetLabel(to_hex(static_cast<std::uint64_t>(a[count / 2])));
}

}

int main(int count, char** arguments)
{
    std::vector<bench::Line> lines{{"memory triad", ""}};
    benchmark::RegisterBenchmark("memory triad", triad);
    for (const std::size_t parcels : {std::size_t{10'000}, std::size_t{100'000}}) {
        const std::string size = std::to_string(parcels / 1000) + "k";
        const auto add = [&](const std::string& name, unsigned threads, bool is_plain, const std::string& yardstick) {
            lines.push_back({name, yardstick});
            benchmark::RegisterBenchmark(name.c_str(), carry, parcels, threads, is_plain)->MeasureProcessCPUTime()->UseRealTime();
        };
        add("plain loop, " + size, 1, true, "");
        add("kernel, " + size, 1, false, "plain loop, " + size);
        add("kernel on 2 threads, " + size, 2, false, "kernel, " + size);
    }

    // Turn by turn, so that a busy minute of the machine meets all lines alike. Options given by hand come last and win.
    std::vector<std::string> words{arguments[0], "--benchmark_repetitions=9", "--benchmark_min_time=0.2", "--benchmark_enable_random_interleaving=true"};
    words.insert(words.end(), arguments + 1, arguments + count);
    std::vector<char*> pointers;
    for (std::string& word : words) pointers.push_back(word.data());
    int used = static_cast<int>(pointers.size());
    benchmark::Initialize(&used, pointers.data());
    if (benchmark::ReportUnrecognizedArguments(used, pointers.data())) return 2;

    bench::RatioTable table(lines);
    benchmark::RunSpecifiedBenchmarks(&table);
    return table.agrees() ? 0 : 1;
}
