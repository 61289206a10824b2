#pragma once

#include "job/run_log.hpp"
#include "job/scenario.hpp"
#include "rules/spot.hpp"

#include <optional>
#include <string>
#include <vector>

namespace flapdoor::rules {

/// Something a rule spoke of, found in the log.
struct Occurrence {
    int entry = -1;     ///< position in the log's entries; -1 when no card was being carried out
    Time start{}, end{};
};

/// A stretch of time, both ends in it.
struct Span {
    Time from{}, to{};
};

/// A run as rules see it: looks up what a Spot names. Refers to scenario and log, which must outlive it.
class Evidence {
public:
    Evidence(const job::Scenario& scenario, const job::RunLog& log);

    const job::Scenario& scenario() const { return scenario_; }
    const job::RunLog& log() const { return log_; }
    const job::LogEntry& entry(int index) const { return log_.entries[static_cast<std::size_t>(index)]; }

    /// Cards that count where something had to be done: one that was not needed found its aim already reached.
    enum class Count { done, done_or_not_needed };

    /// Everything the spot names, earliest start first. `self` is the id that `this` stands for. Refused cards never count.
    std::vector<Occurrence> find(const Spot& spot, const std::string& self, Count count = Count::done) const;

    /// When the state held, as spans; with an empty object, when it held for any object.
    std::vector<Span> spans(const std::string& state, const std::string& object) const;
    bool holds_at(const std::string& state, const std::string& object, Time at) const;

    /// The card that was being carried out at that time; -1 when none was. At a border between cards the one whose step
    /// changes that state, else the one just ending.
    int entry_at(Time at, const std::string& state = {}) const;

    Time start() const { return start_; }
    Time end() const { return end_; }

private:
    bool is_match(const Spot& spot, const job::LogEntry& entry, const std::string& self) const;
    bool is_measure_match(const Spot& spot, const job::LogEntry& entry, const std::string& self) const;
    std::vector<Occurrence> find_moment(Moment moment) const;
    std::vector<Occurrence> find_state(const Spot& spot, const std::string& self) const;

    const job::Scenario& scenario_;
    const job::RunLog& log_;
    std::vector<int> order_;    ///< entries by start, then by place in the log
    Time start_{}, end_{};
};

/// `this` replaced by the id it stands for.
const std::string& resolved(const std::string& name, const std::string& self);

}
