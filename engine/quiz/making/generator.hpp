#pragma once

#include "quiz/making/dice.hpp"
#include "quiz/making/made.hpp"
#include "quiz/making/workshop.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// What a generator works with.
struct Setting {
    const job::Scenario& scenario;
    std::string drill;              ///< the scenario's folder
    Workshop& workshop;
    std::uint64_t seed;

    /// Throws that differ from scenario to scenario.
    Dice dice(std::string_view purpose) const { return Dice(seed, scenario.id + "/" + std::string(purpose)); }
};

/// Makes questions of one sort: the answer is worked out, never typed.
struct Generator {
    std::string_view name;
    std::vector<std::string_view> blanks;       ///< what the texts of a template may use
    std::vector<std::string_view> mistakes;     ///< what the template must have something to say about
    std::optional<Made> (*make)(const Setting&);    ///< nothing where the scenario, or these figures, are no good for it
};

/// All of them, in the order of their files.
const std::vector<Generator>& generators();

/// The one of that name, or null.
const Generator* find_generator(std::string_view name);

/// One table a file in generators/; a new file is one line here and one in generator.cpp.
std::vector<Generator> section_generators();
std::vector<Generator> sheeting_generators();
std::vector<Generator> opening_generators();
std::vector<Generator> pass_generators();
std::vector<Generator> air_generators();
std::vector<Generator> sample_generators();
std::vector<Generator> unit_generators();
std::vector<Generator> crew_generators();
std::vector<Generator> supply_generators();
std::vector<Generator> scope_generators();
std::vector<Generator> waiting_generators();
std::vector<Generator> bag_generators();
std::vector<Generator> settling_generators();
std::vector<Generator> run_generators();

}
