#pragma once

#include <benchmark/benchmark.h>

#include <map>
#include <string>
#include <vector>

namespace flapdoor::bench {

/// A benchmark and what its speed is told as a ratio to; no name, no ratio.
struct Line {
    std::string name, yardstick;
};

/// Collects the repetitions of every benchmark and prints one line each: medians, speed as a ratio to the yardstick of the same
/// run, own CPU time by wall time, and the hash of what was computed.
///
/// A benchmark reports the counters `work` (parcel-steps, or bytes) and `threads`, and its hash as label. One thread is judged by
/// its own CPU time. Several are judged by wall time, and only if the machine was quiet: their CPU time cannot tell.
class RatioTable : public benchmark::BenchmarkReporter {
public:
    explicit RatioTable(std::vector<Line> lines) : lines_(std::move(lines)) {}

    bool ReportContext(const Context& context) override;
    void ReportRuns(const std::vector<Run>& runs) override;
    void Finalize() override;

    /// Did each benchmark give the hash of its yardstick, every time?
    bool agrees() const { return agrees_; }

private:
    struct Samples {
        double threads = 1.0;
        std::vector<double> by_cpu, by_wall, cpu_by_wall;   ///< work a second and thread; work a second; 1 when nothing else ran
        std::string hash;
    };
    std::string ratio(const Samples& samples, const Line& line);

    std::vector<Line> lines_;
    std::map<std::string, Samples> samples_;
    bool agrees_ = true;
};

}
