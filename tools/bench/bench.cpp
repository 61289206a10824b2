// How fast the parcel kernel, the flow in a room and a whole job are, told as ratios to yardsticks of the same process.

#include "core/hash.hpp"
#include "drill/run.hpp"
#include "job/files.hpp"
#include "plain_kernel.hpp"
#include "ratio_table.hpp"
#include "scenes.hpp"
#include "text/input_file.hpp"

#include <benchmark/benchmark.h>

#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

namespace {

using namespace flapdoor;
using namespace flapdoor::dust;
using bench::Told;

void report(benchmark::State& state, double work, unsigned threads, std::uint64_t hash)
{
    state.counters["work"] = work;
    state.counters["threads"] = threads;
    state.SetLabel(to_hex(hash));
}

enum class Way { plain_loop, one_at_a_time, abreast };

void carry(benchmark::State& state, std::size_t parcels, unsigned threads, Way way)
{
    const bench::CloudScene scene(parcels);
    Cloud cloud;
    std::uint64_t steps = 0;
    for (auto _ : state) {
        state.PauseTiming();
        cloud = scene.cloud;
        state.ResumeTiming();
        steps += way == Way::plain_loop ? bench::advance_plainly(cloud, scene.table, bench::seed)
                                        : advance(cloud, scene.table, bench::seed, threads, way == Way::abreast ? Abreast::as_many_as_possible : Abreast::one);
    }
    report(state, static_cast<double>(steps), threads, fingerprint(cloud));
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
    report(state, static_cast<double>(state.iterations()) * count * 24.0, 1, static_cast<std::uint64_t>(a[count / 2]));
}

/// The flow for one set of barriers after another, so that each is factored anew; or for one set again and again.
void flow(benchmark::State& state, bool is_new_each_time)
{
    const bench::FurnishedRoom furnished(Length{0.1});
    std::vector<air::RoomPlan> rooms{furnished.plan};
    std::vector<double> sources(furnished.plan.free_height.size(), 0.0);
    sources.front() = 0.047;
    sources.back() = -0.047;
    constexpr std::size_t more_than_are_kept = 6;
    for (std::size_t n = 0; is_new_each_time && n < more_than_are_kept; ++n) {
        rooms.push_back(rooms.back());
        rooms.back().free_height[n * 7 + 60] = 1.0;
    }
    air::RoomFlow solver;
    air::SideFlows flows;
    std::size_t turn = 0;
    for (auto _ : state) flows = solver.solve(rooms[turn++ % rooms.size()], sources);
    flows = solver.solve(rooms.front(), sources);
    Fingerprint print;
    for (const double side : flows.east) print.add(side);
    report(state, static_cast<double>(state.iterations()), 1, print.value());
}

struct Job {
    job::Scenario scenario;
    job::WorkPlan plan;
};

/// The shipped job; ends the program if it cannot be read.
Job shipped_job()
{
    const auto sound = [](auto result) {
        if (result) return std::move(*result);
        for (const Problem& problem : result.error()) std::fprintf(stderr, "%s\n", describe(problem).c_str());
        std::exit(1);
    };
    const std::string folder = std::string(FLAPDOOR_SOURCE_DIR) + "/scenarios/back-bedroom/";
    Job job;
    job.scenario = sound(job::read_scenario(sound(text::read_file(folder + "scenario.toml")), "scenario.toml"));
    job.plan = sound(job::read_plan(sound(text::read_file(folder + "good.toml")), "good.toml", job.scenario));
    return job;
}

void carry_out_job(benchmark::State& state, const Job& job, double detail)
{
    double steps = 0.0;
    std::uint64_t hash = 0;
    for (auto _ : state) {
        const drill::Run run = drill::carry_out(job.scenario, job.plan, {.detail = detail});
        steps += static_cast<double>(run.site.parcel_steps);
        hash = run.hashes.back().hash;
    }
    report(state, steps, 1, hash);
}

constexpr double bytes_streamed = 29.0;     // that a parcel-step would read and write if parcels were fetched for each step
const char* const whole_job = "whole job";

void register_all(std::vector<bench::Line>& lines)
{
    const auto add = [&](const bench::Line& line, auto function, auto... arguments) {
        lines.push_back(line);
        return benchmark::RegisterBenchmark(line.name.c_str(), function, arguments...)->MeasureProcessCPUTime()->UseRealTime();
    };
    add({"memory triad", "", Told::alone}, triad);
    for (const std::size_t parcels : {std::size_t{10'000}, std::size_t{100'000}, std::size_t{1'000'000}}) {
        const std::string size = std::to_string(parcels / 1000) + "k";
        const std::string plain = "plain loop, " + size;
        if (parcels <= 100'000) {
            add({plain, "", Told::alone}, carry, parcels, 1U, Way::plain_loop);
            add({"kernel, one at a time, " + size, plain, Told::as_speed}, carry, parcels, 1U, Way::one_at_a_time);
            add({"kernel, " + size, plain, Told::as_speed}, carry, parcels, 1U, Way::abreast);
            add({"kernel on 2 threads, " + size, "kernel, " + size, Told::as_speed}, carry, parcels, 2U, Way::abreast);
        }
        else add({"kernel, " + size, "memory triad", Told::as_bandwidth, bytes_streamed}, carry, parcels, 1U, Way::abreast);
    }
    const Job job = shipped_job();
    add({whole_job, "", Told::alone}, carry_out_job, job, 1.0)->Iterations(1);
    add({"light job, 1/8 of the parcels", whole_job, Told::as_time}, carry_out_job, job, 0.125)->Iterations(1);
    add({"flow, barriers new", whole_job, Told::as_time}, flow, true);
    add({"flow, barriers known", whole_job, Told::as_time}, flow, false);
}

}

int main(int count, char** arguments)
{
    std::vector<bench::Line> lines;
    register_all(lines);

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
