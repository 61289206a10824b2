#include "ratio_table.hpp"

#include <algorithm>
#include <cstdio>

namespace flapdoor::bench {

namespace {

double median(std::vector<double> values)
{
    if (values.empty()) return 0.0;
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

/// Below this share of a core the machine was busy with something else, and wall times are not ours.
constexpr double quiet_enough = 0.95;

}

bool RatioTable::ReportContext(const Context& context)
{
    std::printf("%d processors, load", context.cpu_info.num_cpus);
    for (const double load : context.cpu_info.load_avg) std::printf(" %.1f", load);
    std::printf("\n");
    return true;
}

void RatioTable::ReportRuns(const std::vector<Run>& runs)
{
    for (const Run& run : runs) {
        if (run.run_type != Run::RT_Iteration || run.error_occurred) continue;
        Samples& samples = samples_[run.run_name.function_name];
        const double work = run.counters.at("work").value;
        const auto turns = static_cast<double>(run.iterations);
        samples.threads = run.counters.at("threads").value;
        samples.work_a_turn = work / turns;
        samples.turn.push_back(run.cpu_accumulated_time / turns);
        samples.wall_turn.push_back(run.real_accumulated_time / turns);
        samples.by_cpu.push_back(work / run.cpu_accumulated_time);
        samples.by_wall.push_back(work / run.real_accumulated_time);
        samples.cpu_by_wall.push_back(run.cpu_accumulated_time / run.real_accumulated_time / samples.threads);
        if (!samples.hash.empty() && samples.hash != run.report_label) agrees_ = false;
        samples.hash = run.report_label;
    }
}

std::string RatioTable::wanted(const Line& line, double value)
{
    char text[48] = "";
    if (line.least > 0.0) std::snprintf(text, sizeof text, ", at least %g: %s", line.least, value >= line.least ? "met" : "NOT MET");
    else if (line.most < std::numeric_limits<double>::infinity()) std::snprintf(text, sizeof text, ", at most %g: %s", line.most, value <= line.most ? "met" : "NOT MET");
    return text;
}

/// By the CPU time that each thread has to bear, which a busy machine does not change; all of it and the wall time beside it.
std::string RatioTable::time_ratio(const Samples& samples, const Samples& yardstick, const Line& line, bool is_quiet)
{
    char text[96];
    const double all = 100.0 * median(samples.turn) / median(yardstick.turn);
    const double value = all / samples.threads;
    std::snprintf(text, sizeof text, "%.2f %% of ", value);
    std::string told = text + line.yardstick + wanted(line, value);
    if (samples.threads <= 1.0) return told;
    std::snprintf(text, sizeof text, " (all threads %.0f %%", all);
    told += text;
    if (!is_quiet) return told + ", busy machine)";
    std::snprintf(text, sizeof text, ", wall %.0f %%)", 100.0 * median(samples.wall_turn) / median(yardstick.wall_turn));
    return told + text;
}

std::string RatioTable::ratio(const Samples& samples, const Line& line)
{
    char text[48];
    if (line.told == Told::as_work) {
        const double millions = samples.work_a_turn * 1e-6;
        std::snprintf(text, sizeof text, "%.1f M", millions);
        return text + wanted(line, millions);
    }
    const auto found = samples_.find(line.yardstick);
    if (line.told == Told::alone || found == samples_.end()) return {};
    const Samples& yardstick = found->second;
    if (line.told == Told::as_speed && yardstick.hash != samples.hash) {
        agrees_ = false;
        return "ANOTHER RESULT than " + line.yardstick;
    }
    const bool is_quiet = median(samples.cpu_by_wall) >= quiet_enough && median(yardstick.cpu_by_wall) >= quiet_enough;
    if (line.told == Told::as_time) return time_ratio(samples, yardstick, line, is_quiet);
    if (samples.threads > 1.0 && !is_quiet) return "no figure: the machine was busy";
    double value = 0.0;
    const char* form = "%.2f x ";
    switch (line.told) {
        case Told::alone:
        case Told::as_work:
        case Told::as_time: return {};
        case Told::as_speed: value = samples.threads > 1.0 ? median(samples.by_wall) / median(yardstick.by_wall) : median(samples.by_cpu) / median(yardstick.by_cpu); break;
        case Told::as_slowness:
            value = median(yardstick.by_cpu) / median(samples.by_cpu);
            form = "1/%.0f of ";
            break;
        case Told::as_bandwidth:
            value = 100.0 * median(samples.by_cpu) * line.bytes / median(yardstick.by_cpu);
            form = "%.1f %% of ";
            break;
    }
    std::snprintf(text, sizeof text, form, value);
    return text + line.yardstick + wanted(line, value);
}

void RatioTable::Finalize()
{
    std::printf("%-34s %12s %12s %12s %9s   %-56s %s\n", "benchmark", "work a turn", "M/s by CPU", "M/s by wall", "CPU/wall", "ratio", "hash");
    for (const Line& line : lines_) {
        const auto found = samples_.find(line.name);
        if (found == samples_.end()) continue;
        const Samples& samples = found->second;
        const std::string told = ratio(samples, line);
        std::printf("%-34s %12.0f %12.4g %12.4g %9.2f   %-56s %s\n", line.name.c_str(), samples.work_a_turn, median(samples.by_cpu) / 1e6, median(samples.by_wall) / 1e6,
                    median(samples.cpu_by_wall), told.c_str(), samples.hash.c_str());
    }
    std::printf("Medians of repetitions; work is parcel-steps, for the triad bytes, for flows solutions; by CPU is for each thread.\n"
                "CPU/wall below %.2f: something else ran, and the wall column is not ours.\n", quiet_enough);
}

}
