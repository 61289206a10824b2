#pragma once

#include "job/run_log.hpp"
#include "job/scenario.hpp"
#include "rules/vocabulary.hpp"

#include <optional>
#include <string>

namespace flapdoor::rules {

/// A wanted value that compares: `>= 1100 F`, `< 7`, or a bare value, which asks for equality.
struct Comparison {
    enum class Sign { equal, less, at_most, greater, at_least };
    Sign sign = Sign::equal;
    std::string value;
};
Comparison comparison(const std::string& wanted);

/// The number in a text of that type: SI for quantities; nothing when it is not one.
std::optional<double> number_in(const std::string& value, const ParameterWords& words);

/// Does a card's parameter fit what a rule wants of it? `self` is the id that `this` stands for.
bool fits(const std::string& value, const std::string& wanted, const ParameterWords& words, const std::string& self, const job::Scenario& scenario);

/// Why the wanted value can never fit such a parameter; nothing when it can.
std::optional<std::string> why_unfit(const std::string& wanted, const ParameterWords& words);

/// The number in the limit of a measure, e.g. "6 ft": SI.
std::optional<double> measure_number(const std::string& limit, job::MeasureKind kind);

/// Does a measured value fit? Measured values carry rounding, so a limit is met within one part in a thousand million.
bool measure_fits(double value, const Comparison& wanted, job::MeasureKind kind);

/// A measured value as people read it: "6 ft", "yes", "0.75".
std::string show_measure(double value, job::MeasureKind kind);

}
