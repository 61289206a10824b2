#pragma once

#include <benchmark/benchmark.h>

#include <limits>
#include <map>
#include <string>
#include <vector>

namespace flapdoor::bench {

/// How a line stands to its yardstick.
enum class Told {
    alone,          ///< no yardstick
    as_speed,       ///< speed as a multiple; both compute the same thing, so the hashes must be equal
    as_slowness,    ///< how many times faster the yardstick is at something else of the same use; hashes differ
    as_bandwidth,   ///< work of the line in bytes, as a share of the yardstick's bytes a second
    as_time,        ///< CPU time of one turn that each thread bears as a share of the yardstick's, in percent; all of it and wall time beside it
    as_work         ///< no ratio: the work of one turn, in millions
};

/// A benchmark and what it is told as a ratio to.
struct Line {
    std::string name = {}, yardstick = {};
    Told told = Told::alone;
    double bytes = 0.0;     ///< as_bandwidth: that one piece of work would move
    double least = 0.0, most = std::numeric_limits<double>::infinity();   ///< what the ratio is wanted to be
};

/// Collects the repetitions of every benchmark and prints one line each: medians, the ratio to the yardstick of the same run, own
/// CPU time by wall time, and the hash of what was computed.
///
/// A benchmark reports the counters `work` (pieces in all its turns: parcel-steps, bytes, solutions, jobs) and `threads`, and
/// its hash as label. One thread is judged by its own CPU time. Several are judged by wall time, and only if the machine was
/// quiet: their CPU time cannot tell.
class RatioTable : public benchmark::BenchmarkReporter {
public:
    explicit RatioTable(std::vector<Line> lines) : lines_(std::move(lines)) {}

    bool ReportContext(const Context& context) override;
    void ReportRuns(const std::vector<Run>& runs) override;
    void Finalize() override;

    /// Did each benchmark give one hash in all its repetitions, and the lines told as speed that of their yardstick?
    bool agrees() const { return agrees_; }

private:
    struct Samples {
        double threads = 1.0, work_a_turn = 0.0;
        std::vector<double> by_cpu, by_wall, cpu_by_wall;   ///< work a second and thread; work a second; 1 when nothing else ran
        std::vector<double> turn, wall_turn;                ///< CPU seconds of one turn, of all threads; wall seconds
        std::string hash;
    };
    std::string ratio(const Samples& samples, const Line& line);
    static std::string time_ratio(const Samples& samples, const Samples& yardstick, const Line& line, bool is_quiet);
    static std::string wanted(const Line& line, double value);

    std::vector<Line> lines_;
    std::map<std::string, Samples> samples_;
    bool agrees_ = true;
};

}
