// How fast the parcel kernel, the flow in a room and a whole job are, told as ratios to yardsticks of the same process.

#include "core/hash.hpp"
#include "core/insist.hpp"
#include "debrief/what_if.hpp"
#include "drill/run.hpp"
#include "job/files.hpp"
#include "plain_kernel.hpp"
#include "ratio_table.hpp"
#include "scenes.hpp"
#include "solver_grains.hpp"
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
/// @param solutions  in one turn
void flow(benchmark::State& state, bool is_new_each_time, std::size_t solutions)
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
    for (auto _ : state)
        for (std::size_t n = 0; n < solutions; ++n) flows = solver.solve(rooms[turn++ % rooms.size()], sources);
    flows = solver.solve(rooms.front(), sources);
    Fingerprint print;
    for (const double side : flows.east) print.add(side);
    report(state, static_cast<double>(state.iterations() * solutions), 1, print.value());
}

/// Bodies of a rigid-body solver in the place of parcels.
void grains(benchmark::State& state, std::size_t count)
{
    bench::SolverGrains scene(count);
    std::uint64_t steps = 0;
    for (auto _ : state) steps += scene.step();
    bench::SolverGrains again(count);
    again.step();
    report(state, static_cast<double>(steps), 1, again.fingerprint());
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

debrief::Inputs shipped_inputs(const std::string& plan)
{
    const std::string folder = std::string(FLAPDOOR_SOURCE_DIR) + "/scenarios/";
    auto inputs = debrief::read_inputs(folder + "back-bedroom/scenario.toml", folder + "back-bedroom/" + plan + ".toml", {folder + "rules/federal.toml"});
    if (inputs) return std::move(*inputs);
    for (const Problem& problem : inputs.error()) std::fprintf(stderr, "%s\n", describe(problem).c_str());
    std::exit(1);
}

void carry_out_job(benchmark::State& state, const Job& job, const drill::RunOptions& options)
{
    double steps = 0.0;
    std::uint64_t hash = 0;
    for (auto _ : state) {
        const drill::Run run = drill::carry_out(job.scenario, job.plan, options);
        steps += static_cast<double>(run.site.parcel_steps);
        hash = run.hashes.back().hash;
    }
    report(state, steps, 1, hash);
}

/// What the careless crew's first so many mistakes did, each repaired alone, with the runs they grow from.
void carry_out_what_ifs(benchmark::State& state, const debrief::Inputs& careless, const job::WorkPlan& careful, std::size_t count, unsigned threads)
{
    double steps = 0.0;
    std::uint64_t hash = 0;
    for (auto _ : state) {
        debrief::WhatIfOrder order;
        order.threads = threads;
        order.most = count;
        order.tries_reverse = false;
        const debrief::WhatIfs found = debrief::what_ifs(careless, &careful, 1, order);
        insist(found.list.size() == count, "the careless crew makes mistakes enough");
        steps += static_cast<double>(found.parcel_steps);
        Fingerprint print;
        for (const debrief::WhatIf& what_if : found.list) print.add_word(what_if.end_hash);
        hash = print.value();
    }
    report(state, steps, threads, hash);
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
        const std::string kernel = "kernel, " + size;
        if (parcels <= 100'000) {
            add({plain, "", Told::alone}, carry, parcels, 1U, Way::plain_loop);
            add({"kernel, one at a time, " + size, plain, Told::as_speed}, carry, parcels, 1U, Way::one_at_a_time);
            add({.name = kernel, .yardstick = plain, .told = Told::as_speed, .least = 2.5}, carry, parcels, 1U, Way::abreast);
            add({.name = "kernel on 2 threads, " + size, .yardstick = kernel, .told = Told::as_speed, .least = 1.85}, carry, parcels, 2U, Way::abreast);
        }
        else add({.name = kernel, .yardstick = "memory triad", .told = Told::as_bandwidth, .bytes = bytes_streamed, .least = 28.0}, carry, parcels, 1U, Way::abreast);
    }
    constexpr std::size_t bodies = 10'000;
    add({.name = "bodies of a solver, 10k", .yardstick = "kernel, 10k", .told = Told::as_slowness, .least = 300.0}, grains, bodies)->Iterations(3);
    const Job job = shipped_job();
    // As a study carries it out: an eighth of the parcels, flap doors known from its first run, one hash at the end.
    drill::RunOptions light{.detail = 0.125, .hashes_every_card = false};
    const drill::Run first = drill::carry_out(job.scenario, job.plan, light);
    light.flaps = first.site.flaps;
    const std::size_t barriers = first.site.room_air.solver.factored();
    add({.name = whole_job, .told = Told::as_work, .most = 200.0}, carry_out_job, job, drill::RunOptions{})->Iterations(1);
    add({.name = "light job of a study", .yardstick = whole_job, .told = Told::as_time, .most = 20.0}, carry_out_job, job, light)->Iterations(1);
    add({.name = "flow, barriers new, all of a job", .yardstick = whole_job, .told = Told::as_time, .most = 5.0}, flow, true, barriers);
    add({.name = "flow, barriers new, one", .yardstick = whole_job, .told = Told::as_time}, flow, true, std::size_t{1});
    add({.name = "flow, barriers known, one", .yardstick = "flow, barriers new, one", .told = Told::as_time}, flow, false, std::size_t{1});
    const debrief::Inputs careless = shipped_inputs("careless");
    add({.name = "whole careless job", .told = Told::alone}, carry_out_job, Job{careless.scenario, careless.plan}, drill::RunOptions{})->Iterations(1);
    add({.name = "15 what-ifs on 2 threads", .yardstick = "whole careless job", .told = Told::as_time, .most = 500.0}, carry_out_what_ifs, careless, job.plan, std::size_t{15}, 2U)->Iterations(1);
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
